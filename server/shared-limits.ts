import type { Tune } from "../model/tune.ts";
import type { Challenge } from "./contract/proof-of-work.ts";
import { INSIDE, type ObjectNamespace, type ObjectState, theOne } from "./durable.ts";
import { type Bindings, keysAtEdge, limitsOf } from "./edge-settings.ts";
import { type Limits, limitsHere } from "./limits.ts";
import { RequestProblem } from "./problem.ts";

/** What is asked: about a write or a dear read of an address, or about a tune. */
type Question =
  | { of: "write" | "read"; address: string }
  | { tune: Tune; proof: string | undefined };

/** A refusal, on its way from the one who counts. */
interface Refused {
  status: 429;
  detail: string;
  title?: string;
  challenge?: Challenge;
  headers: Record<string, string>;
}

/**
 * Counts in memory are gone once an object sleeps, which it does ten seconds after the last request unless a timer runs. The longest
 * that is counted is five minutes, ms.
 */
const AWAKE_ms = 300_000;

/** A Durable Object that counts for all isolates, in memory alone: addresses are never stored. */
export class WriteLimits {
  readonly #limits: Promise<Limits>;
  #awake: ReturnType<typeof setTimeout> | undefined;

  constructor(_: ObjectState, env: Bindings) {
    this.#limits = keysAtEdge(env).then((keys) =>
      limitsHere(limitsOf(env), keys, () => new Date()),
    );
  }

  async fetch(request: Request): Promise<Response> {
    clearTimeout(this.#awake);
    this.#awake = setTimeout(() => {}, AWAKE_ms);
    const question = (await request.json()) as Question;
    const limits = await this.#limits;
    try {
      await ("address" in question
        ? limits[question.of](question.address)
        : limits.tune(question.tune, question.proof));
      return Response.json(null);
    } catch (error) {
      if (!(error instanceof RequestProblem)) throw error;
      const { status, message: detail, title, challenge, headers } = error;
      return Response.json({ status, detail, title, challenge, headers });
    }
  }
}

/**
 * Limits that one object counts for all isolates.
 * @param here counts where that object does not answer: nothing ever fails for it
 */
export function sharedLimits(objects: ObjectNamespace, here: Limits): Limits {
  const ask = async (question: Question, otherwise: () => Promise<void>) => {
    let refused: Refused | null;
    try {
      const body = JSON.stringify(question);
      const answer = await theOne(objects).fetch(INSIDE, { method: "POST", body });
      if (!answer.ok) throw new Error(`The limits answered ${answer.status}.`);
      refused = (await answer.json()) as Refused | null;
    } catch (error) {
      console.error("Limits are counted by this isolate alone:", error);
      return otherwise();
    }
    if (refused) throw new RequestProblem(refused.status, refused.detail, refused);
  };
  return {
    write: (address) => ask({ of: "write", address }, () => here.write(address)),
    read: (address) => ask({ of: "read", address }, () => here.read(address)),
    tune: (tune, proof) => ask({ tune, proof }, () => here.tune(tune, proof)),
  };
}
