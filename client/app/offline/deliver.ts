import type { Problem, Submitted } from "../../../server/contract.ts";
import { AtlasProblem, api, Unreachable } from "../../base/answers/api.ts";
import { type KeptReceipt, keepReceipt, receiptOf } from "../../base/receipts.ts";
import {
  dropWaiting,
  keepWaiting,
  tellWaiting,
  type WaitingTune,
  waitingTunes,
} from "./waiting-tunes.ts";

/** What became of a try to send. */
export type Sent = { answer: Submitted; receiptKept: boolean } | "waits";

/**
 * Sends a tune that is kept as waiting, or may not be.
 * @throws the atlas's own refusal, or that it cannot be reached when nothing was kept
 */
export async function send(waiting: WaitingTune): Promise<Sent> {
  const kept = await keepWaiting(waiting);
  return alone(async () => {
    try {
      const answer = await submit(waiting);
      const receiptKept = keepReceipt(receiptFor(answer, waiting));
      await dropWaiting(waiting.key);
      return { answer, receiptKept };
    } catch (error) {
      if (kept && mayHelpLater(error)) {
        tellWaiting();
        return "waits";
      }
      await dropWaiting(waiting.key);
      throw error;
    }
  });
}

/** Sends everything that waits. @returns how many arrived; how many are left to try */
export function sendWaiting(): Promise<{ arrived: Submitted[]; left: number }> {
  return alone(async () => {
    const arrived: Submitted[] = [];
    for (const waiting of await waitingTunes()) {
      if (waiting.problem !== null) continue;
      try {
        const answer = await submit(waiting);
        // A receipt that could not be kept comes again with the next try.
        if (!keepReceipt(receiptFor(answer, waiting))) continue;
        await dropWaiting(waiting.key);
        arrived.push(answer);
      } catch (error) {
        if (mayHelpLater(error)) break;
        await keepWaiting({ ...waiting, problem: refusalOf(error) });
        tellWaiting();
      }
    }
    const left = (await waitingTunes()).filter(({ problem }) => problem === null).length;
    return { arrived, left };
  });
}

/** In a flood the atlas asks for a proof of work first, which is found here without a word. */
async function submit({ tune, key }: WaitingTune): Promise<Submitted> {
  try {
    return await api.submit(tune, key);
  } catch (error) {
    const challenge = error instanceof AtlasProblem && error.problem.challenge;
    if (!challenge) throw error;
    // Where it cannot be found the atlas's own refusal says what to do.
    const proof = await import("./proof-of-work.ts")
      .then(({ proofOf }) => proofOf(challenge))
      .catch(() => Promise.reject(error));
    return api.submit(tune, key, proof);
  }
}

function receiptFor(answer: Submitted, { key, tune, place }: WaitingTune): KeptReceipt {
  return { ...receiptOf(answer, answer.receipt ?? "", tune, place), key };
}

/** Too early, too many, broken down or not reached at all: the same tune may be taken another time. */
function mayHelpLater(error: unknown): boolean {
  if (error instanceof Unreachable) return true;
  const status = error instanceof AtlasProblem ? error.problem.status : 0;
  return status === 429 || status >= 500;
}

function refusalOf(error: unknown): Problem | string {
  return error instanceof AtlasProblem ? error.problem : (error as Error).message;
}

/** One tab sends at a time; where there are no locks the keys alone see to it that nothing is stored twice. */
function alone<T>(work: () => Promise<T>): Promise<T> {
  if (!navigator.locks) return work();
  return navigator.locks.request("hypsotune-sending", work) as Promise<T>;
}
