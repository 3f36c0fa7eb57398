import type { PublishedFit } from "../fit/group.ts";

/** Accepted into the fit, or held with reasons. */
export type Verdict = "accepted" | "held";

/** One reason for a hold, or one caution beside an acceptance, as a sentence; with the repaired value when there is one. */
export interface Reason {
  /** Stable short name, e.g. "elevation_in_feet". */
  code: string;
  /** Path of the field it speaks of, e.g. "site.elevation_m". */
  field: string;
  sentence: string;
  /** What the field would be once the slip is undone. */
  suggestion?: number | undefined;
}

/** What the caller knows beside the tune itself; everything is optional. */
export interface ScreenContext {
  /** Elevation of the ground at the stated place, with the half-width of its 95 % band. */
  terrain?: { elevation_m: number; uncertainty_95_m: number; sd_m: number } | null | undefined;
  /** The current month, "YYYY-MM". */
  month?: string | undefined;
  fit?: PublishedFit | null | undefined;
}

/** By decimals: making one takes thirty times as long as using it. */
const formats = new Map<number, Intl.NumberFormat>();

/** A number for a sentence: thousands parted by commas, a fixed count of decimals without trailing zeros. */
export function say(value: number, decimals = 0): string {
  let format = formats.get(decimals);
  if (!format) {
    format = new Intl.NumberFormat("en-GB", { maximumFractionDigits: decimals });
    formats.set(decimals, format);
  }
  return format.format(value);
}

/** Without the dust of binary fractions: 12 / 10 × 10 is 12. */
export function tidy(value: number): number {
  return Number(value.toPrecision(10));
}
