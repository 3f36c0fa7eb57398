import { ENDS, type End } from "../end.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import { withoutDust } from "../rounding.ts";
import { type Choice, choiceAt, isEmpty, rankOf, settableIn, together } from "./choice.ts";
import { type Expected, type KeptTune, tuneOf } from "./one-tune.ts";
import { type MixtureWindow, requireWindow, worstShift } from "./window.ts";

/** A tune and the stops in a row it serves, first to last, both within. */
export interface Leg {
  first: number;
  last: number;
  tune: KeptTune;
}

/** The best way on from a stop: how many tunes still, how the worst of them ranks, its shift, and the last stop of the first of them. */
interface WayOn {
  tunes: number;
  rank: number;
  worst_pct: number;
  last: number;
}

/**
 * The fewest tunes, as they can be set, that keep every stop within the window, stops in their order; among plans with as
 * few, one with room in the window; among those, one whose worst shift is the least; among those, the one that changes
 * over latest. Exact: the best way on from each stop is found from the last backwards, and each count can only grow by
 * what comes before. A stop where the pump's steps are too coarse for the window gets the nearest of them.
 */
export function fewestTunes(
  expected: Expected,
  window: MixtureWindow,
  step_Hz = PUMP_STEP_Hz,
): Leg[] {
  requireWindow(window);
  const stops = expected.low.length;
  const choicesAt = (end: End) => expected[end].map((at) => choiceAt(at, window, step_Hz));
  const choices = { low: choicesAt("low"), high: choicesAt("high") };
  const from: WayOn[] = new Array(stops + 1);
  from[stops] = { tunes: 0, rank: 0, worst_pct: 0, last: stops };
  for (let first = stops - 1; first >= 0; first--) {
    from[first] = bestFrom(first, choices, from);
  }
  const legs: Leg[] = [];
  for (let first = 0; first < stops; ) {
    const { last } = from[first] as WayOn;
    legs.push({ first, last, tune: tuneAlong(first, last, choices, expected, window) });
    first = last + 1;
  }
  return legs;
}

type Choices = Record<End, readonly Choice[]>;

function bestFrom(first: number, choices: Choices, from: readonly WayOn[]): WayOn {
  let best: WayOn | undefined;
  let so_far: Record<End, Choice> | undefined;
  for (let last = first; last < choices.low.length; last++) {
    const here = { low: choices.low[last] as Choice, high: choices.high[last] as Choice };
    const joined: Record<End, Choice> = so_far
      ? { low: together(so_far.low, here.low), high: together(so_far.high, here.high) }
      : here;
    // More stops only narrow the choice.
    if (ENDS.some((end) => isEmpty(joined[end]))) break;
    so_far = joined;
    const rest = from[last + 1] as WayOn;
    const way: WayOn = {
      tunes: 1 + rest.tunes,
      rank: Math.max(rest.rank, ...ENDS.map((end) => rankOf(joined[end]))),
      // One shift at two ends or stops may differ in its last digits, and that must not decide.
      worst_pct: withoutDust(
        Math.max(
          rest.worst_pct,
          ...ENDS.map((end) => worstShift(settableIn(joined[end]), joined[end].span)),
        ),
      ),
      last,
    };
    // Later ones win where all is equal: the tune is kept as long as it serves.
    if (best === undefined || compared(way, best) <= 0) best = way;
  }
  return best as WayOn;
}

function compared(a: WayOn, b: WayOn): number {
  return a.tunes - b.tunes || a.rank - b.rank || a.worst_pct - b.worst_pct;
}

function tuneAlong(
  first: number,
  last: number,
  choices: Choices,
  expected: Expected,
  window: MixtureWindow,
): KeptTune {
  const part = <T>(all: readonly T[]) => all.slice(first, last + 1);
  const along = {
    low: part(choices.low).reduce(together),
    high: part(choices.high).reduce(together),
  };
  const tune = tuneOf(along, { low: part(expected.low), high: part(expected.high) }, window);
  return { ...tune, edge: { ...tune.edge, stop: first + tune.edge.stop } };
}
