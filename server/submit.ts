import { findIdempotencyKey } from "../db/kept-answers.ts";
import { findTune, insertTune, type TuneRow } from "../db/tunes.ts";
import { adviceOn } from "../model/advice.ts";
import type { Tune } from "../model/tune.ts";
import type { Services } from "./context.ts";
import type { Submitted } from "./contract/tunes.ts";
import { keptTuneOf } from "./kept-tune.ts";
import { randomId, randomReceipt, sha256 } from "./keys.ts";
import type { NewKeys } from "./new-keys.ts";
import { RequestProblem } from "./problem.ts";
import { type Judged, type Judging, judge } from "./submission.ts";

/** What storing a tune stands on. */
export type Storing = Judging & Pick<Services, "db" | "commit">;

/** How a tune came. */
interface Arrival {
  /** Address of whoever sent it, for telling crowds of new contributors. */
  address: string;
  /** Under which it is stored once, however often it is sent. */
  idempotencyKey?: string | undefined;
  /** Keyed hash of the name of the import that it came with. */
  imported?: string | undefined;
}

/** Whether and how a tune was sent under its key before. */
interface KeyOfTune {
  hash: string;
  body: string;
}

/**
 * Judges a tune and stores it with all that hangs on it, at once or not at all: from the network and from a file.
 * @returns the answer, and whether it is stored now: under the same key it is stored once, and answered the same again
 * @throws RequestProblem when it is refused
 */
export async function submit(
  services: Storing,
  newKeys: NewKeys,
  tune: Tune,
  { address, idempotencyKey, imported }: Arrival,
): Promise<{ answer: Submitted; isNew: boolean }> {
  const { db, commit, keys, now } = services;
  const key =
    idempotencyKey === undefined ? undefined : await keyOfTune(keys, tune, idempotencyKey);
  const again = key && (await answeredBefore(services, newKeys, key, tune));
  if (again) return { answer: again, isNew: false };
  const id = randomId();
  const receipt = key ? await keys.receiptFor(key.hash) : randomReceipt();
  const { kept, answer: judged } = await judge(services, tune);
  const receipt_sha256 = await sha256(receipt);
  const row: TuneRow = { id, receipt_sha256, ...kept, imported: imported ?? null };
  const { statements, ...waits } = await newKeys.arrival(row, address);
  const answer = { ...judged, ...waits };
  const decision = screeningDecision(id, answer, now());
  const used = key && {
    key: key.hash,
    body_sha256: key.body,
    tune: id,
    answer: JSON.stringify(answer),
  };
  try {
    await commit([...insertTune(db, row, decision, used), ...statements]);
  } catch (error) {
    // The same key may have been used at the same moment; then the first answer holds for both.
    const first = key && (await answeredBefore(services, newKeys, key, tune));
    if (!first) throw error;
    return { answer: first, isNew: false };
  }
  return { answer: { id, receipt, ...answer }, isNew: true };
}

export function screeningDecision(
  tune: string,
  { verdict, reasons }: Pick<Judged["answer"], "verdict" | "reasons">,
  now: Date,
) {
  return {
    tune,
    by: "screening",
    verdict,
    reasons: JSON.stringify(reasons),
    decided_on: now.toISOString().slice(0, 10),
  };
}

/** An Idempotency-Key is its contributor's own. */
export async function keyOfTune(
  keys: Services["keys"],
  tune: Tune,
  idempotencyKey: string,
): Promise<KeyOfTune> {
  return {
    hash: await keys.hash("idempotency", `${tune.contributor}|${idempotencyKey}`),
    body: await sha256(JSON.stringify(tune)),
  };
}

async function answeredBefore(
  services: Storing,
  newKeys: NewKeys,
  key: KeyOfTune,
  tune: Tune,
): Promise<Submitted | undefined> {
  const { db, keys } = services;
  const used = await findIdempotencyKey(db, key.hash);
  if (!used) return undefined;
  // Withdrawn, a key is all that is left.
  const row = used.tune === "" ? undefined : await findTune(db, used.tune);
  if (!row) {
    throw new RequestProblem(
      409,
      "The tune sent with this Idempotency-Key was withdrawn. Use a new key to share it again.",
      { title: "The tune was withdrawn" },
    );
  }
  if (used.body_sha256 !== key.body) {
    throw new RequestProblem(
      409,
      "This Idempotency-Key was sent with another tune. Use a new key for a new tune.",
    );
  }
  return {
    id: used.tune,
    receipt: await keys.receiptFor(key.hash),
    ...(used.answer === ""
      ? await answerAnew(services, newKeys, row)
      : // An answer kept by an earlier version has neither of these.
        {
          ...{ advice: adviceOn(tune), counts_from: null, owners_needed: null },
          ...JSON.parse(used.answer),
        }),
  };
}

/** The answer to a submission whose own is not kept any more: the same verdict, beside today's fit. */
async function answerAnew(
  services: Storing,
  newKeys: NewKeys,
  row: TuneRow,
): Promise<Omit<Submitted, "id" | "receipt">> {
  const { counts_from, owners_needed, ...kept } = await keptTuneOf(services, newKeys, row);
  const { verdict, reasons, advice, air, compared, accepted_means, safety } = kept;
  return {
    // A submission is answered with one of the two; reading the tune tells more.
    verdict: verdict === "accepted" ? verdict : "held",
    ...{ reasons, counts_from, owners_needed, advice, air, compared, accepted_means, safety },
  };
}
