import { ENDS, type End } from "../../model/end.ts";
import type { EndSetting } from "../../model/mixture.ts";
import { type Edge, edgeOf, tuneKeptFrom } from "../../model/trip/one-tune.ts";
import type { StopAnswer, TripAnswer } from "../../model/trip/trip.ts";
import {
  type MixtureWindow,
  roomOf,
  type Standing,
  shiftAt,
  standingOf,
} from "../../model/trip/window.ts";
import { trip } from "../texts/trip.ts";
import { formatPercent, formatTenths } from "../units.ts";
import type { Trip } from "./trip.ts";

/** What is set along the trip: the fewest tunes, one for all, each stop's own, what is set now, or the tune of the stop with this number. */
export type Shown = "fewest" | "one" | "each" | "now" | number;

/** What my heater is set to. */
export type SetNow = Record<End, EndSetting> | undefined;

/** Shifts at each stop, by end, whole %. */
export type Shifts = Record<End, readonly number[]>;

/** What is set at each stop, and how that stands. */
export interface ShownPlan {
  shown: Shown;
  rates_Hz: Record<End, readonly number[]>;
  /** The fan speeds that go with the rates. */
  fans_rpm: Record<End, number>;
  shifts: Shifts;
  /** Where it comes nearest to the window's edge, or goes farthest beyond it. */
  edge: Edge;
  /** Stops before whose night something else is set than before. */
  changes: number[];
}

/** What is chosen as long as the trip has it; else what serves it with the fewest tunes. */
export function shownStill(shown: Shown | null, { stops, legs }: TripAnswer, now: SetNow): Shown {
  const best = legs.length > 1 ? "fewest" : "one";
  if (shown === null || (shown === "fewest" && legs.length === 1)) return best;
  if (shown === "now" && !now) return best;
  return typeof shown === "string" || shown < stops.length ? shown : best;
}

/** @throws RangeError when what is set now is asked for and not known */
export function planShown(
  answer: TripAnswer,
  shown: Shown,
  { window, heater }: Trip,
  now?: SetNow,
): ShownPlan {
  const { stops, expected } = answer;
  const rates = (end: End) => ratesOf(answer, shown, end, { now, step_Hz: heater.step_Hz });
  const rates_Hz = { low: rates("low"), high: rates("high") };
  const usual_rpm = (end: End) => (stops[0] as StopAnswer).start[end].fan_rpm;
  const fan = (end: End) => (shown === "now" && now?.[end].fan_rpm) || usual_rpm(end);
  const fans_rpm = { low: fan("low"), high: fan("high") };
  // What is expected holds for the fan of the trip: at another one the same mixture takes another rate.
  const shiftsOf = (end: End) =>
    expected[end].map((at, i) =>
      shiftAt(((rates_Hz[end][i] as number) * usual_rpm(end)) / fans_rpm[end], at),
    );
  const shifts = { low: shiftsOf("low"), high: shiftsOf("high") };
  return {
    ...{ shown, rates_Hz, fans_rpm, shifts },
    edge: edgeOf(shifts, expected, window),
    changes: stops.flatMap((_, i) =>
      i > 0 && ENDS.some((end) => rates_Hz[end][i] !== rates_Hz[end][i - 1]) ? [i] : [],
    ),
  };
}

function ratesOf(
  { stops, legs, one, expected }: TripAnswer,
  shown: Shown,
  end: End,
  { now, step_Hz }: { now: SetNow; step_Hz: number | undefined },
): number[] {
  if (shown === "each") return stops.map(({ start }) => start[end].pump_Hz);
  if (shown === "fewest") {
    return legs.flatMap(({ first, last, tune }) =>
      new Array<number>(last - first + 1).fill(tune[end].pump_Hz),
    );
  }
  const kept =
    shown === "one" ? one : shown === "now" ? now : tuneKeptFrom(expected, shown, step_Hz);
  if (!kept) throw new RangeError("It is not known what is set now.");
  return stops.map(() => kept[end].pump_Hz);
}

/** A shift in words: rich or lean, never by sign or colour alone. */
export function shiftInWords(shift_pct: number): string {
  if (shift_pct === 0) return trip.result.none;
  const size = formatPercent(Math.abs(shift_pct));
  return shift_pct > 0 ? trip.result.rich(size) : trip.result.lean(size);
}

/** How far inside or outside the window's edge, in words, where it is not well inside. */
export function edgeInWords(
  shift_pct: number,
  unsure_pct: number,
  window: MixtureWindow,
): string | null {
  const standing = standingOf(shift_pct, unsure_pct, window);
  if (standing === "roomy") return null;
  return standing === "tight"
    ? trip.result.tight(roomInWords(roomOf(shift_pct, window)))
    : trip.result.beyond;
}

/** What is left to the window's edge, or what is beyond it, %. */
export const roomInWords = (room_pct: number) => formatTenths(Math.abs(room_pct));

/** How the shifts of both ends stand at a stop: as the worse of them. */
export function standingAt(
  { stops }: TripAnswer,
  shifts: Shifts,
  stop: number,
  window: MixtureWindow,
): Standing {
  const ends = ENDS.map((end) =>
    standingOf(shifts[end][stop] ?? 0, stops[stop]?.shift_95_pct[end] ?? 0, window),
  );
  return (["beyond", "tight"] as const).find((standing) => ends.includes(standing)) ?? "roomy";
}
