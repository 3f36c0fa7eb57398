import type { CoReading } from "../co-reading.ts";
import { FOUND, type Found as TuneFound } from "../fit/row.ts";

/** How far one side has been looked at: CO was seen to rise there, the flame went out first, the limit was reached first, or not yet. */
export type Side = "rose" | "flame-out" | "limit" | "open";

/** What every answer carries. */
interface Said {
  /** Settings of the pump so far, with the one that is asked for, and at most; those to relight are not counted. */
  step: number;
  steps_most: number;
  lean: Side;
  rich: Side;
  /** No leaner and no richer rate is asked for as things stand. */
  limits_Hz: { lean: number; rich: number };
  /** Settled readings so far. */
  settled: number;
}

/** Set the pump to this rate, wait, read. */
export interface SetRate extends Said {
  kind: "set";
  pump_Hz: number;
  wait_s: number;
  why:
    | "start"
    | "leaner"
    | "richer"
    | "between"
    | "confirm"
    | "spike"
    | "flame-out"
    /** The rate looked for is farther away than one move may be. */
    | "on the way";
}

/** The figure has not stood still: read again after this, at the same rate. */
export interface Wait extends Said {
  kind: "wait";
  pump_Hz: number;
  wait_s: number;
}

/** Where an end is left, and what the meter showed there last. */
interface Left extends Said, CoReading {
  pump_Hz: number;
  /** The flame went out at this rate, only a little leaner than where the pump is left. */
  flame_out_Hz?: number;
}

/** CO was clearly higher at a leaner and at a richer rate. */
export interface Found extends Left {
  kind: "found";
  /** The lowest CO, between the readings. */
  minimum_Hz: number;
  /** The nearest rates with clearly more CO: the minimum lies between them. */
  between_Hz: { lower: number; upper: number };
  /** Rates read whose CO is the same within the meter's noise. */
  flat_Hz: { lower: number; upper: number };
}

/** The best rate that was seen; on one side at least CO was not seen to rise, so it is no minimum. */
export interface NotBracketed extends Left {
  kind: "not bracketed";
  /** The leanest and the richest rate that was read. */
  read_Hz: { lower: number; upper: number };
}

/** The bottom lies below what the meter shows: a range, and a sensible place in it. */
export interface BelowFloor extends Left {
  kind: "below floor";
  /** From the leanest to the richest rate at which the meter showed nothing. */
  below_Hz: { lower: number; upper: number };
}

/** The meter was at its end everywhere. */
export interface AboveScale extends Left {
  kind: "above scale";
}

/** The flame has gone out too often: no further attempt. */
export interface Stopped extends Said {
  kind: "stopped";
  flame_outs: number;
}

export type Outcome = Found | NotBracketed | BelowFloor | AboveScale;
export type SweepAnswer = SetRate | Wait | Outcome | Stopped;

/** Whether an end's setting is a minimum that was seen, one the sweep was left at, or the suggestion with nothing measured against it. */
export function foundBy(outcome: Outcome): TuneFound {
  if (outcome.kind === "found") return "bracketed";
  const isBlind =
    outcome.kind === "below floor" && outcome.lean !== "rose" && outcome.rich !== "rose";
  return isBlind ? "as suggested" : "stopped early";
}

/** How a tune of both ends came about: no better than its worse end. */
export function foundTogether(low: TuneFound, high: TuneFound): TuneFound {
  return FOUND[Math.max(FOUND.indexOf(low), FOUND.indexOf(high))] as TuneFound;
}
