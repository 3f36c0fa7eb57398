import { ENDS, type End } from "../end.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import { settablePump } from "../rounding.ts";
import { type Choice, choiceAt, settableIn, together } from "./choice.ts";
import {
  type ExpectedAt,
  type MixtureWindow,
  requireWindow,
  roomNeeded,
  roomOf,
  type Standing,
  shiftAt,
  standingOf,
} from "./window.ts";

/** What is expected at the stops of a trip, by end, in their order. */
export type Expected = Record<End, readonly ExpectedAt[]>;

/** One end of a tune that is kept over several stops. */
export interface KeptEnd {
  /** As a controller can be set to it. */
  pump_Hz: number;
  /** At each stop, whole %: plus is rich, minus is lean. */
  shifts_pct: number[];
}

/** Where a kept tune comes nearest to the window's edge for what is sure, or goes farthest beyond it. */
export interface Edge {
  end: End;
  stop: number;
  shift_pct: number;
  unsure_pct: number;
  /** Left to the edge, %; negative beyond it. */
  room_pct: number;
  standing: Standing;
}

/** A tune kept over several stops, and how it stands in the window. */
export interface KeptTune {
  low: KeptEnd;
  high: KeptEnd;
  edge: Edge;
}

/**
 * The one tune for all stops, among those that can be set: with room in the window if there is such a tune, else within
 * it, and of these the one whose worst shift is the least. Where none stays within, the least worst shift of all. Where all
 * stops expect the same it is their start tune.
 */
export function oneTune(
  expected: Expected,
  window: MixtureWindow,
  step_Hz = PUMP_STEP_Hz,
): KeptTune {
  requireWindow(window);
  return keptTune(expected, window, (end) =>
    settableIn(expected[end].map((at) => choiceAt(at, window, step_Hz)).reduce(together)),
  );
}

/** The tune that choices at both ends leave. */
export function tuneOf(
  choices: Record<End, Choice>,
  expected: Expected,
  window: MixtureWindow,
): KeptTune {
  return keptTune(expected, window, (end) => settableIn(choices[end]));
}

/** The tune of one of the stops, as it would be set there, kept at all of them. */
export function tuneKeptFrom(
  expected: Expected,
  stop: number,
  step_Hz = PUMP_STEP_Hz,
): Record<End, KeptEnd> {
  return keptEnds(expected, (end) => {
    const at = expected[end][stop];
    if (at === undefined) throw new RangeError(`stop must be one of the trip's, not ${stop}.`);
    return settablePump(at.pump_Hz, step_Hz);
  });
}

function keptTune(
  expected: Expected,
  window: MixtureWindow,
  pumpAt: (end: End) => number,
): KeptTune {
  const ends = keptEnds(expected, pumpAt);
  const shifts = { low: ends.low.shifts_pct, high: ends.high.shifts_pct };
  return { ...ends, edge: edgeOf(shifts, expected, window) };
}

function keptEnds(expected: Expected, pumpAt: (end: End) => number): Record<End, KeptEnd> {
  const keptEnd = (end: End): KeptEnd => {
    const pump_Hz = pumpAt(end);
    return { pump_Hz, shifts_pct: expected[end].map((at) => shiftAt(pump_Hz, at)) };
  };
  return { low: keptEnd("low"), high: keptEnd("high") };
}

/** Of the shifts at each stop, by end, the one nearest to the window's edge for what is sure, or farthest beyond it. */
export function edgeOf(
  shifts_pct: Record<End, readonly number[]>,
  expected: Expected,
  window: MixtureWindow,
): Edge {
  const places = ENDS.flatMap((end) =>
    shifts_pct[end].map((shift_pct, stop) => {
      const { unsure_pct } = expected[end][stop] as ExpectedAt;
      const room_pct = roomOf(shift_pct, window);
      const standing = standingOf(shift_pct, unsure_pct, window);
      // Outside is outside however unsure; inside it counts what is left beyond that.
      const slack = standing === "beyond" ? room_pct - FAR : room_pct - roomNeeded(unsure_pct);
      return { slack, edge: { end, stop, shift_pct, unsure_pct, room_pct, standing } };
    }),
  );
  return places.reduce((a, b) => (b.slack < a.slack ? b : a)).edge;
}

/** More than any uncertainty, %. */
const FAR = 1e6;
