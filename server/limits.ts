import type { Tune } from "../model/tune.ts";
import { readLimit, writeLimit } from "./client-limit.ts";
import { floodGate } from "./flood.ts";
import type { Keys } from "./keys.ts";

/** Writes, and dear reads, of a client a minute, unless told otherwise. */
export const CLIENT_LIMIT = 30;

/** What holds back those who send too much. */
export interface Limits {
  /** Counts a write of whoever has this address. Throws a 429 when it is one too many. */
  write(address: string): Promise<void>;
  /** Counts a question or a download that is dear to answer. Throws a 429 when it is one too many. */
  read(address: string): Promise<void>;
  /** Counts a tune. Throws a 429 with a challenge when it needs a proof of work, and there is none that holds. */
  tune(tune: Tune, proof: string | undefined): Promise<void>;
}

/**
 * Limits that this process counts, in memory.
 * @param most writes and dear reads a minute per client, and tunes within five minutes from which on each needs a proof of work; 0 for no limit
 * @param onFlood told of each tune beyond those
 */
export function limitsHere(
  most: { writes: number; reads: number; tunes: number },
  keys: Keys,
  now: () => Date,
  onFlood?: () => void,
): Limits {
  return {
    write: writeLimit(most.writes, keys, now),
    read: readLimit(most.reads, keys, now),
    tune: floodGate(most.tunes, keys, now, onFlood),
  };
}
