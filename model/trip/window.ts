import { mixtureShift } from "../mixture.ts";
import { requireFinite } from "../numerics/finite.ts";
import { onStep, stepsFrom, stepsUpTo, wholePercent, withoutDust } from "../rounding.ts";

/** How far the mixture may shift from a good tune before it needs a new one, %. */
export interface MixtureWindow {
  rich_pct: number;
  lean_pct: number;
}

/** Our own working values, no source: towards lean there is more room than towards soot and carbon monoxide. */
export const WORKING_WINDOW: MixtureWindow = { rich_pct: 12, lean_pct: 25 };

/** @throws RangeError when a side is negative, or so lean that no fuel is left */
export function requireWindow({ rich_pct, lean_pct }: MixtureWindow): void {
  requireFinite({ rich_pct, lean_pct });
  if (rich_pct < 0) throw new RangeError(`rich_pct must be 0 or more, not ${rich_pct}.`);
  if (lean_pct < 0 || lean_pct >= 100) {
    throw new RangeError(`lean_pct must be from 0 to below 100, not ${lean_pct}.`);
  }
}

/** What a tune made at a stop would have at one end, and how far any shift there may be off, whole %, 95 in 100. */
export interface ExpectedAt {
  pump_Hz: number;
  unsure_pct: number;
}

/**
 * Mixture shift, whole %, of a pump rate kept at a stop with the fan unchanged: plus is rich, minus is lean. This is the
 * figure that is shown, and the window is held against it and no other. What the fit expects in the air of a stop is no
 * shift there: fan speed and density stand on both sides and fall out.
 */
export function shiftAt(pump_Hz: number, expected: ExpectedAt): number {
  return wholePercent(mixtureShift(pump_Hz, expected.pump_Hz));
}

/** With less room than this to the window's edge a tune is tight, % (our own working value, no source). */
export const TIGHT_pct = 3;

/** How a shift stands in the window: with room; inside, but nearer to the edge than is sure; outside. */
export type Standing = "roomy" | "tight" | "beyond";

/** What is left to the nearer edge of the window, %; negative beyond it. @example roomOf(10, WORKING_WINDOW) // 2 */
export function roomOf(shift_pct: number, { rich_pct, lean_pct }: MixtureWindow): number {
  return withoutDust(Math.min(rich_pct - shift_pct, lean_pct + shift_pct));
}

/** Room that makes a shift more than tight: what it may be off, and never less than {@link TIGHT_pct}. */
export function roomNeeded(unsure_pct: number): number {
  return Math.max(TIGHT_pct, unsure_pct);
}

/** How a shift, and what it may be off, stand in the window. */
export function standingOf(shift_pct: number, unsure_pct: number, window: MixtureWindow): Standing {
  const room_pct = roomOf(shift_pct, window);
  if (room_pct < 0) return "beyond";
  return room_pct < roomNeeded(unsure_pct) ? "tight" : "roomy";
}

/** Pump rates in a controller's steps, both ends included; none where `from` is above `to`. */
export interface Steps {
  from: number;
  to: number;
}

/** The steps whose shift at a stop leaves at least so much room in the window, %. */
export function stepsWithRoom(
  expected: ExpectedAt,
  window: MixtureWindow,
  room_pct: number,
  step_Hz: number,
): Steps {
  const shift = (steps: number) => shiftAt(onStep(steps, step_Hz), expected);
  const lean_pct = window.lean_pct - room_pct;
  const rich_pct = window.rich_pct - room_pct;
  // From just outside, where rounding to whole percents cannot matter, inwards.
  let from = Math.max(1, stepsFrom(expected.pump_Hz * (1 - (lean_pct + 1) / 100), step_Hz));
  while (shift(from) < -lean_pct) from++;
  let to = stepsUpTo(expected.pump_Hz * (1 + (rich_pct + 1) / 100), step_Hz);
  while (to >= 1 && shift(to) > rich_pct) to--;
  return { from, to };
}

/** The least and the most that is expected at any of some stops, one end: all that their worst shift depends on. */
export interface Span {
  least_Hz: number;
  most_Hz: number;
}

/** The largest shift of a pump rate at any stop of a span, rich and lean alike, %, unrounded. */
export function worstShift(pump_Hz: number, { least_Hz, most_Hz }: Span): number {
  return Math.max(
    Math.abs(mixtureShift(pump_Hz, least_Hz)),
    Math.abs(mixtureShift(pump_Hz, most_Hz)),
  );
}
