import { aboveReference, R_MOST, REFERENCE_SLOPE, STEP_MOST, within, xOf } from "./grid.ts";
import type { FitRow } from "./group.ts";
import type { Step, Voice } from "./tally.ts";

/** Variance between heaters, and within one, against which a row's own doubt is weighed. */
const BETWEEN = 0.1 ** 2;
const WITHIN = 0.05 ** 2;

/** Final CO, ppm, up to which a tune counts in full: "below 30 is usual" (common practice, no source). */
export const USUAL_CO_ppm = 30;
/** Mixture error, in ln, at which CO is twice the usual. */
export const DOUBLES_AT = 0.1;
const CO_VARIANCE_MOST = 0.3 ** 2;

/** Rows of one contributor of which steps are made; more add nothing that can be told apart. */
const STEPPING_ROWS = 8;
/** The steps of one contributor count at most as those of so many rows. */
const STEPS_AS_OF_ROWS = 4;

/**
 * Variance that a row brings along, in ln of pump rate per fan speed.
 * From the air: an error of x moves the row along the line, so the variance of ln density comes in times the slope
 * squared (errors in variables). From the CO: about its minimum CO rises with the square of the distance from it, so
 * a final reading of C against the usual 30 ppm says the tune may lie √(C/30 − 1) × 10 % from the heater's best.
 */
export function ownVariance({ ln_density_sd = 0, co_ppm = 0 }: FitRow): {
  air: number;
  co: number;
} {
  const air = (REFERENCE_SLOPE * ln_density_sd) ** 2;
  const above = Math.max(0, co_ppm / USUAL_CO_ppm - 1);
  return { air, co: Math.min(CO_VARIANCE_MOST, DOUBLES_AT ** 2 * above) };
}

/** A row's x, and r above the reference line. */
export function pointOf({ end, density_kg_m3, pump_Hz, fan_rpm }: FitRow): {
  x: number;
  r: number;
} {
  const x = xOf(density_kg_m3);
  return { x, r: aboveReference(end, x, Math.log((pump_Hz * 1000) / fan_rpm)) };
}

/** A row's place and the variance it brings along. */
interface Placed {
  x: number;
  r: number;
  variance: number;
  trust: number;
  /** Trust lost to doubt about the air, and to the CO. */
  lost: { air: number; co: number };
}

function place(row: FitRow): Placed {
  const { x, r } = pointOf(row);
  const { air, co } = ownVariance(row);
  const variance = air + co;
  const trust = BETWEEN / (BETWEEN + variance);
  const part = variance > 0 ? (1 - trust) / variance : 0;
  return { x, r, variance, trust, lost: { air: part * air, co: part * co } };
}

interface Said {
  voices: Voice[];
  steps: Step[];
  /** Votes lost to doubt about the air, and to the CO. */
  lost: { air: number; co: number };
}

/**
 * What one contributor says of one heat class and end: its rows share its vote, each worth less by the doubt it
 * brings; and its steps, weighted so that together they know as much of the slope as the rows' own scatter in x.
 */
export function voicesOf(rows: readonly FitRow[], vote: number): Said {
  const placed = rows.map(place);
  const share = vote / rows.length;
  return {
    voices: placed.map(({ x, r, trust }) => ({
      x,
      r: within(r, R_MOST),
      weight: share * trust,
    })),
    steps: rows.length > 1 ? stepsOf(placed, vote) : [],
    lost: {
      air: placed.reduce((sum, { lost }) => sum + share * lost.air, 0),
      co: placed.reduce((sum, { lost }) => sum + share * lost.co, 0),
    },
  };
}

function stepsOf(placed: Placed[], vote: number): Step[] {
  const some = evenly(placed.toSorted((a, b) => a.x - b.x || a.r - b.r || a.variance - b.variance));
  const share = (vote / some.length) * Math.min(1, (STEPS_AS_OF_ROWS - 1) / (some.length - 1));
  return some.flatMap((from, i) =>
    some.slice(i + 1).map((to) => ({
      dx: to.x - from.x,
      dr: within(to.r - from.r, STEP_MOST),
      weight: (share * 2 * WITHIN) / (2 * WITHIN + from.variance + to.variance),
    })),
  );
}

/** At most so many of a sorted list, first and last among them. */
function evenly<T>(sorted: T[]): T[] {
  if (sorted.length <= STEPPING_ROWS) return sorted;
  const gap = (sorted.length - 1) / (STEPPING_ROWS - 1);
  return Array.from({ length: STEPPING_ROWS }, (_, k) => sorted[Math.round(k * gap)] as T);
}
