import { requireFinite } from "../finite.ts";
import { mixtureShift } from "../mixture.ts";

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

/** The least and the most that is expected at any of some stops, one end: all that their worst shift depends on. */
export interface Span {
  least_Hz: number;
  most_Hz: number;
}

export function spanOf(expected_Hz: readonly number[]): Span {
  return { least_Hz: Math.min(...expected_Hz), most_Hz: Math.max(...expected_Hz) };
}

/** Pump rates that stay within the window at all stops of a span; null when there are none. */
export function pumpsWithin(
  { least_Hz, most_Hz }: Span,
  { rich_pct, lean_pct }: MixtureWindow,
): { from_Hz: number; to_Hz: number } | null {
  const from_Hz = most_Hz * (1 - lean_pct / 100);
  const to_Hz = least_Hz * (1 + rich_pct / 100);
  return from_Hz <= to_Hz ? { from_Hz, to_Hz } : null;
}

/**
 * Mixture shift at each stop, %, of one pump rate kept at one end with the fan unchanged. What the fit expects in
 * the air of a stop is no shift there: fan speed and density stand on both sides and fall out.
 */
export function shiftsOf(pump_Hz: number, expected_Hz: readonly number[]): number[] {
  return expected_Hz.map((expected) => mixtureShift(pump_Hz, expected));
}

/** The largest shift of a pump rate at any stop of a span, rich and lean alike, %. */
export function worstShift(pump_Hz: number, { least_Hz, most_Hz }: Span): number {
  return Math.max(
    Math.abs(mixtureShift(pump_Hz, least_Hz)),
    Math.abs(mixtureShift(pump_Hz, most_Hz)),
  );
}
