import { ENDS } from "../fit/group.ts";
import { type Expected, type KeptTune, leastShiftPumpWithin, oneTuneWithin } from "./one-tune.ts";
import { type MixtureWindow, requireWindow, type Span, worstShift } from "./window.ts";

/** A tune and the stops in a row it serves, first to last, both within. */
export interface Leg {
  first: number;
  last: number;
  tune: KeptTune;
}

/** The best way on from a stop: how many tunes still, their worst shift, and the last stop of the first of them. */
interface WayOn {
  tunes: number;
  worst_pct: number;
  last: number;
}

/**
 * The fewest tunes that keep every stop within the window, stops in their order; among plans with as few, one whose worst
 * shift is the least; among those, the one that changes over latest. Exact: the best way on from each stop is found from
 * the last backwards, and both counts, number first and worst shift second, can only grow by what comes before.
 * A stop alone is always within: its own tune shifts nothing.
 */
export function fewestTunes(expected: Expected, window: MixtureWindow): Leg[] {
  requireWindow(window);
  const stops = expected.low.length;
  const from: WayOn[] = new Array(stops + 1);
  from[stops] = { tunes: 0, worst_pct: 0, last: stops };
  for (let first = stops - 1; first >= 0; first--) {
    from[first] = bestFrom(first, expected, window, from);
  }
  const legs: Leg[] = [];
  for (let first = 0; first < stops; ) {
    const last = (from[first] as WayOn).last;
    const low = expected.low.slice(first, last + 1);
    const high = expected.high.slice(first, last + 1);
    const tune = oneTuneWithin({ low, high }, window) as KeptTune;
    legs.push({ first, last, tune });
    first = last + 1;
  }
  return legs;
}

function bestFrom(
  first: number,
  expected: Expected,
  window: MixtureWindow,
  from: readonly WayOn[],
): WayOn {
  let best: WayOn = { tunes: Number.POSITIVE_INFINITY, worst_pct: 0, last: first };
  const spans = { low: NO_STOPS, high: NO_STOPS };
  for (let last = first; last < expected.low.length; last++) {
    let worst_pct = 0;
    for (const end of ENDS) {
      const span = widened(spans[end], expected[end][last] as number);
      const pump_Hz = leastShiftPumpWithin(span, window);
      // More stops only narrow what is within.
      if (pump_Hz === null) return best;
      spans[end] = span;
      worst_pct = Math.max(worst_pct, worstShift(pump_Hz, span));
    }
    const rest = from[last + 1] as WayOn;
    const way = { tunes: 1 + rest.tunes, worst_pct: Math.max(worst_pct, rest.worst_pct), last };
    // Later ones win where all is equal: the tune is kept as long as it serves.
    if (way.tunes < best.tunes || (way.tunes === best.tunes && way.worst_pct <= best.worst_pct))
      best = way;
  }
  return best;
}

const NO_STOPS: Span = { least_Hz: Number.POSITIVE_INFINITY, most_Hz: 0 };

function widened({ least_Hz, most_Hz }: Span, expected_Hz: number): Span {
  return { least_Hz: Math.min(least_Hz, expected_Hz), most_Hz: Math.max(most_Hz, expected_Hz) };
}

/** Shift at each stop, by end, of the tune that serves it, %. */
export function shiftsAlong(legs: readonly Leg[]): Record<"low" | "high", number[]> {
  return {
    low: legs.flatMap(({ tune }) => tune.low.shifts_pct),
    high: legs.flatMap(({ tune }) => tune.high.shifts_pct),
  };
}
