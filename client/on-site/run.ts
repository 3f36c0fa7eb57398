import type { CoReading } from "../../model/co-reading.ts";
import type { End } from "../../model/end.ts";
import type { Found } from "../../model/fit/row.ts";
import { foundTogether } from "../../model/sweep/answer.ts";
import type { SweepReading } from "../../model/sweep/setup.ts";
import type { EndResult, Press, Session } from "./session.ts";

export type Phase = "checklist" | "warm-up" | "low" | "high" | "middle" | "full" | "done";
export type StopReason = "alarm" | "flame" | "abort";

/** How far a sweep has come, as its presses tell. */
export interface Run {
  phase: Phase;
  stopped?: StopReason;
  lit_at?: number;
  /** The present setting of the pump, and whether nothing has been read there yet. */
  set?: { at: number; pump_Hz: number; confirming: boolean; fresh: boolean };
  read_at?: number;
  /** Where an end that is begun again begins: the pump was left there, and the heater burns. */
  present_Hz: Partial<Record<End, number>>;
  /** Where the flame went out before an end was begun again. */
  flame_outs_Hz: Record<End, number[]>;
  readings: Record<End, SweepReading[]>;
  results: Partial<Record<End, EndResult>>;
  checks: Partial<Record<"middle" | "full", CoReading | "skipped">>;
  /** The flame is out; whether an attempt to relight is under way. */
  out?: { lighting: boolean };
  attempts: number;
}

/** Attempts to relight in one sweep; after them it is the manual's turn. */
export const ATTEMPTS_MOST = 2;

const NEXT: Record<Phase, Phase> = {
  checklist: "warm-up",
  "warm-up": "low",
  low: "high",
  high: "middle",
  middle: "full",
  full: "done",
  done: "done",
};

export function runOf({ presses, begun_at }: Session): Run {
  const first: Run = {
    phase: "checklist",
    present_Hz: {},
    flame_outs_Hz: { low: [], high: [] },
    readings: { low: [], high: [] },
    results: {},
    checks: {},
    attempts: 0,
  };
  return presses.reduce((run, press) => after(run, press, begun_at), first);
}

function after(run: Run, press: Press, begun_at: number): Run {
  const { at } = press;
  switch (press.is) {
    case "lit":
      return { ...run, phase: "warm-up", lit_at: at };
    case "warm":
    case "finish":
      return onward(run);
    case "set": {
      const { pump_Hz, confirming = false } = press;
      return { ...run, set: { at, pump_Hz, confirming, fresh: true } };
    }
    case "read":
      return read(run, press, begun_at);
    case "out":
      return out(run, seconds(at, begun_at), begun_at);
    case "relight":
      return { ...run, attempts: run.attempts + 1, out: { lighting: true } };
    case "no light":
      return run.attempts >= ATTEMPTS_MOST
        ? { ...run, stopped: "flame" }
        : { ...run, out: { lighting: false } };
    case "burns":
      return burning(run, at, press.pump_Hz);
    case "accept":
      return onward({ ...run, results: { ...run.results, [press.end]: press.result } });
    case "again":
      return isEnd(run.phase) ? begunAgain(run, run.phase) : standing(run);
    case "skip":
      return isCheck(run.phase)
        ? onward({ ...run, checks: { ...run.checks, [run.phase]: "skipped" } })
        : run;
    case "alarm":
    case "abort":
      return { ...run, stopped: press.is };
  }
}

/** Begun again, an end forgets what was read, keeps where the flame went out, and begins where the pump stands. */
function begunAgain(run: Run, end: End): Run {
  const last = run.readings[end].findLast(({ flame_out }) => !flame_out);
  const out = run.readings[end].filter(({ flame_out }) => flame_out).map((one) => one.pump_Hz);
  return {
    ...standing(run),
    readings: { ...run.readings, [end]: [] },
    present_Hz: { ...run.present_Hz, ...(last && { [end]: last.pump_Hz }) },
    flame_outs_Hz: { ...run.flame_outs_Hz, [end]: [...run.flame_outs_Hz[end], ...out] },
  };
}

function read(run: Run, press: Press & { is: "read" }, begun_at: number): Run {
  const { set, phase } = run;
  if (!set) return run;
  const next: Run = { ...run, read_at: press.at, set: { ...set, fresh: false } };
  if (isCheck(phase)) return { ...next, checks: { ...run.checks, [phase]: press.reading } };
  if (!isEnd(phase)) return run;
  const reading: SweepReading = {
    pump_Hz: set.pump_Hz,
    time_s: seconds(press.at, begun_at),
    set_s: seconds(set.at, begun_at),
    ...press.reading,
    still: press.still,
    confirming: set.confirming,
  };
  return { ...next, readings: { ...run.readings, [phase]: [...run.readings[phase], reading] } };
}

function out(run: Run, time_s: number, begun_at: number): Run {
  const { set, phase, attempts } = run;
  const next: Run = { ...run, out: { lighting: false } };
  if (attempts >= ATTEMPTS_MOST) next.stopped = "flame";
  if (!set || !isEnd(phase)) return next;
  const set_s = seconds(set.at, begun_at);
  const reading: SweepReading = { pump_Hz: set.pump_Hz, time_s, set_s, flame_out: true };
  return { ...next, readings: { ...run.readings, [phase]: [...run.readings[phase], reading] } };
}

function burning(run: Run, at: number, pump_Hz: number | undefined): Run {
  const { out: _, set: __, ...lit } = run;
  if (run.phase === "warm-up") return { ...lit, lit_at: at };
  if (pump_Hz === undefined) return lit;
  return { ...lit, set: { at, pump_Hz, confirming: false, fresh: true } };
}

function onward(run: Run): Run {
  return { ...standing(run), phase: NEXT[run.phase] };
}

/** Nothing has been set yet here. */
function standing({ set: _, read_at: __, ...run }: Run): Run {
  return run;
}

/** How both ends came about; unknown while one is missing, or from before this was kept. */
export function foundIn({ results: { low, high } }: Run): Found | undefined {
  return low?.found && high?.found && foundTogether(low.found, high.found);
}

export function isEnd(phase: Phase): phase is End {
  return phase === "low" || phase === "high";
}

export function isCheck(phase: Phase): phase is "middle" | "full" {
  return phase === "middle" || phase === "full";
}

function seconds(at: number, begun_at: number): number {
  return (at - begun_at) / 1000;
}
