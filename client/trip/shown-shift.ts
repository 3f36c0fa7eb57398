import { ENDS, type End } from "../../model/fit/group.ts";
import { shiftsAlong } from "../../model/trip/fewest-tunes.ts";
import { tuneKeptFrom } from "../../model/trip/one-tune.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { type MixtureWindow, roomOf, type Standing, standingOf } from "../../model/trip/window.ts";
import { trip } from "../texts/trip.ts";
import { formatPercent, formatTenths } from "../units.ts";

/** Which tunes the shifts on screen are of: one for all, the fewest, or that of the stop with this number. */
export type Shown = "one" | "fewest" | number;

/** Shifts at each stop, by end, whole %. */
export type Shifts = Record<End, readonly number[]>;

export function shiftsShown(answer: TripAnswer, shown: Shown): Shifts {
  if (shown === "fewest") return shiftsAlong(answer.legs);
  const tune = shown === "one" ? answer.one : tuneKeptFrom(answer.expected, shown);
  return { low: tune.low.shifts_pct, high: tune.high.shifts_pct };
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
