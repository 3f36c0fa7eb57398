import { shiftsAlong } from "../../model/trip/fewest-tunes.ts";
import { tuneKeptFrom } from "../../model/trip/one-tune.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import type { MixtureWindow } from "../../model/trip/window.ts";
import { trip } from "../texts/trip.ts";
import { format } from "../units.ts";

/** Which tunes the shifts on screen are of: one for all, the fewest, or that of the stop with this number. */
export type Shown = "one" | "fewest" | number;

/** Shifts at each stop, by end, %. */
export type Shifts = Record<"low" | "high", readonly number[]>;

export function shiftsShown(answer: TripAnswer, shown: Shown): Shifts {
  if (shown === "fewest") return shiftsAlong(answer.legs);
  const tune = shown === "one" ? answer.one : tuneKeptFrom(answer.expected, shown);
  return { low: tune.low.shifts_pct, high: tune.high.shifts_pct };
}

/** A shift in words: rich or lean, never by sign or colour alone. */
export function shiftInWords(shift_pct: number): string {
  const whole = Math.round(Math.abs(shift_pct));
  if (whole === 0) return trip.result.none;
  return shift_pct > 0 ? trip.result.rich(format(whole)) : trip.result.lean(format(whole));
}

/** Beyond the window by more than rounding. */
export function isBeyond(shift_pct: number, { rich_pct, lean_pct }: MixtureWindow): boolean {
  return shift_pct > rich_pct + 1e-9 || shift_pct < -lean_pct - 1e-9;
}
