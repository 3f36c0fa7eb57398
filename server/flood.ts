import { createChallenge, verifySolution } from "altcha-lib";
import { deriveKey } from "altcha-lib/algorithms/web/pbkdf2";
import type { Tune } from "../model/tune.ts";
import { type Challenge, challenge, proof } from "./contract/proof-of-work.ts";
import { type Keys, sha256 } from "./keys.ts";
import { RequestProblem } from "./problem.ts";

/** Tunes within five minutes that an atlas takes without a proof of work, unless told otherwise. */
export const FLOOD_LIMIT = 100;

const MINUTES = 5;
/** A challenge can be solved for so long, s: many times what a slow phone should need. */
const GOOD_FOR_s = 600;
/**
 * The work of one tune: so many iterations a try, one try in 256 succeeds. About a second for a processor's core
 * (our own working value). The atlas checks a proof with one try.
 */
const WORK = { algorithm: "PBKDF2/SHA-256", cost: 20_000, keyPrefix: "00" };
/** Proofs remembered at most: each took a second to find. */
const USED_MOST = 50_000;

/**
 * Takes tunes freely until too many come at once, from wherever. From then on each needs a proof of work, which costs somebody
 * with one tune a moment and somebody with ten thousand some hours. Challenges are signed and
 * not kept; proofs that were used are, in memory, for as long as they would hold.
 * @param most tunes within five minutes that are taken without; 0 for any number
 * @param onFlood told of each tune that comes beyond
 * @throws a 429 with a challenge, where a proof is needed and there is none that holds
 */
export function floodGate(most: number, keys: Keys, now: () => Date, onFlood = () => {}) {
  const arrivals = new Map<number, number>();
  const used = new Map<string, number>();
  const now_s = () => Math.floor(now().getTime() / 1000);

  /** Counts one more. @returns how many came within the last minutes */
  function arrived(): number {
    const minute = Math.floor(now_s() / 60);
    arrivals.set(minute, (arrivals.get(minute) ?? 0) + 1);
    // Later ones than now are from before the clock was set back.
    for (const one of arrivals.keys())
      if (one > minute || one <= minute - MINUTES) arrivals.delete(one);
    return [...arrivals.values()].reduce((sum, count) => sum + count, 0);
  }

  /** @returns why a proof does not hold; undefined when it does, which it does once */
  async function whyNot(sent: string, tune: string): Promise<string | undefined> {
    const read = proof.safeParse(jsonOf(sent));
    if (!read.success) return "cannot be read";
    const { parameters, signature } = read.data.challenge;
    const { verified, invalidSignature } = await verifySolution({
      ...read.data,
      deriveKey,
      hmacSignatureSecret: await secret(),
    });
    if (invalidSignature) return "is of no challenge of this atlas";
    if (!verified) return "does not solve its challenge";
    if (parameters.data.tune !== tune) return "is for another tune";
    if (parameters.data.until < now_s()) return "is too late";
    if (used.has(signature)) return "was used before";
    for (const [one, until] of used)
      if (until < now_s() || used.size >= USED_MOST) used.delete(one);
      else break;
    used.set(signature, parameters.data.until);
    return undefined;
  }

  async function challengeFor(tune: string): Promise<Challenge> {
    const data = { until: now_s() + GOOD_FOR_s, tune };
    const hmacSignatureSecret = await secret();
    return challenge.parse(
      await createChallenge({ ...WORK, data, deriveKey, hmacSignatureSecret }),
    );
  }

  const secret = () => keys.hash("challenge", "");

  return async (tune: Tune, sent: string | undefined): Promise<void> => {
    if (most === 0 || arrived() <= most) return;
    onFlood();
    const hash = await sha256(JSON.stringify(tune));
    const why = sent === undefined ? undefined : await whyNot(sent, hash);
    if (sent !== undefined && why === undefined) return;
    throw new RequestProblem(
      429,
      `${why ? `The Proof-Of-Work ${why}. ` : ""}Far more tunes come in than usual, so each needs a proof of work. ` +
        "Nothing was stored; solve the challenge and send the tune again with its Proof-Of-Work, or without one once fewer come.",
      {
        title: "A proof of work is needed",
        challenge: await challengeFor(hash),
        headers: { "Retry-After": String(MINUTES * 60) },
      },
    );
  };
}

function jsonOf(base64: string): unknown {
  try {
    return JSON.parse(atob(base64));
  } catch {
    return undefined;
  }
}
