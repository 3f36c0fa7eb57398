import { ENDS, type End } from "../fit/group.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import {
  type MixtureWindow,
  pumpsWithin,
  type Span,
  shiftsOf,
  spanOf,
  worstShift,
} from "./window.ts";

/** Expected pump rates at the stops, by end: what a tune made there would have. */
export type Expected = Record<End, readonly number[]>;

/** One end of a tune that is kept over several stops. */
export interface KeptEnd {
  pump_Hz_exact: number;
  /** The best that can be set on a controller: the step above or below, within the window first, then whichever shifts less. */
  pump_Hz: number;
  /** Of the exact pump rate at each stop: plus is rich, minus is lean. */
  shifts_pct: number[];
  worst_pct: number;
  /** The worst when set to a controller's step. */
  settable_worst_pct: number;
}

export type KeptTune = Record<End, KeptEnd>;

/**
 * The pump rate, one end, whose worst shift over the stops is the least possible. Only the two outermost stops count:
 * rich by as much where least is expected as lean where most is, p/least − 1 = 1 − p/most, is their harmonic mean.
 */
function leastShiftPump({ least_Hz, most_Hz }: Span): number {
  return least_Hz === most_Hz ? least_Hz : 2 / (1 / least_Hz + 1 / most_Hz);
}

/** The same among pump rates that stay within the window; null when none does. */
export function leastShiftPumpWithin(span: Span, window: MixtureWindow): number | null {
  const within = pumpsWithin(span, window);
  // The worst shift falls towards its minimum from both sides: the nearest pump rate allowed is the best allowed.
  return within && Math.min(within.to_Hz, Math.max(within.from_Hz, leastShiftPump(span)));
}

/** The one tune whose worst shift, at either end, is the least possible. */
export function oneTune(expected: Expected): KeptTune {
  return byEnd((end) => keptEnd(leastShiftPump(spanOf(expected[end])), expected[end]));
}

/** The same among tunes that stay within the window at every stop; null when no tune does. */
export function oneTuneWithin(expected: Expected, window: MixtureWindow): KeptTune | null {
  const pumps = byEnd((end) => leastShiftPumpWithin(spanOf(expected[end]), window));
  const { low, high } = pumps;
  if (low === null || high === null) return null;
  return {
    low: keptEnd(low, expected.low, window),
    high: keptEnd(high, expected.high, window),
  };
}

/** The tune of one of the stops, kept at all of them. */
export function tuneKeptFrom(expected: Expected, stop: number): KeptTune {
  return byEnd((end) => {
    const pump_Hz = expected[end][stop];
    if (pump_Hz === undefined) throw new RangeError(`stop must be one of the trip's, not ${stop}.`);
    return keptEnd(pump_Hz, expected[end]);
  });
}

/** The larger of both ends' worst shifts, %. */
export function worstOf(tune: KeptTune): number {
  return Math.max(tune.low.worst_pct, tune.high.worst_pct);
}

function keptEnd(
  pump_Hz_exact: number,
  expected_Hz: readonly number[],
  window?: MixtureWindow,
): KeptEnd {
  const span = spanOf(expected_Hz);
  const pump_Hz = settable(pump_Hz_exact, span, window);
  return {
    pump_Hz_exact,
    pump_Hz,
    shifts_pct: shiftsOf(pump_Hz_exact, expected_Hz),
    worst_pct: worstShift(pump_Hz_exact, span),
    settable_worst_pct: worstShift(pump_Hz, span),
  };
}

/** Of the steps beside an exact pump rate one within the window, then the one that shifts less; never no fuel at all. */
function settable(pump_Hz: number, span: Span, window: MixtureWindow | undefined): number {
  const below = Math.max(1, Math.floor(pump_Hz / PUMP_STEP_Hz + 1e-9));
  const steps = [below, below + 1].map((n) => Number((n * PUMP_STEP_Hz).toFixed(6)));
  const within = window && pumpsWithin(span, window);
  const kept = within ? steps.filter((s) => s >= within.from_Hz && s <= within.to_Hz) : [];
  return (kept.length > 0 ? kept : steps).reduce((a, b) =>
    worstShift(b, span) < worstShift(a, span) ? b : a,
  );
}

function byEnd<T>(of: (end: End) => T): Record<End, T> {
  return Object.fromEntries(ENDS.map((end) => [end, of(end)])) as Record<End, T>;
}
