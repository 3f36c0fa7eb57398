import { densityAltitude, STANDARD_DENSITY_kg_m3, standardDensity } from "../air.ts";
import { exp, ln } from "../ln-exp.ts";
import type { End } from "./group.ts";
import { PRIOR } from "./prior.ts";

/**
 * The grid on which rows are counted. x = ln(density/1.225); r is what is left of
 * y = ln(Hz per 1,000 rpm) after a fixed reference line, so that r stays small whatever the density.
 */
export const BANDS = 24;
const BAND_STEP = 0.05;
const BAND_FROM = -0.8;
export const BINS = 32;
const BIN_STEP = 0.04;
/** Rows farther than the outermost bins are counted in them: no tune is. */
const BINS_FROM = -(BINS / 2) * BIN_STEP;
/** Nor is any farther from the reference line than this; their r is taken as this. */
export const R_MOST = 1.2;

/** Steps between two rows of one contributor: their difference in x, always ≥ 0, and in r. */
export const STEP_BANDS = 16;
const STEP_BAND = 0.05;
export const STEP_BINS = 26;
const STEP_BIN = 0.05;
export const STEP_MOST = (STEP_BINS / 2) * STEP_BIN;

/** Slope of the reference line; its height is the prior's intercept of the end. */
export const REFERENCE_SLOPE = 0.9;

export function xOf(density_kg_m3: number): number {
  return ln(density_kg_m3 / STANDARD_DENSITY_kg_m3);
}

/** y = ln(Hz per 1,000 rpm) less the reference line. */
export function aboveReference(end: End, x: number, y: number): number {
  return y - PRIOR.intercept[end] - REFERENCE_SLOPE * x;
}

export function within(value: number, most: number): number {
  return Math.max(-most, Math.min(most, value));
}

export function cellOf(x: number, r: number): number {
  const band = index((x - BAND_FROM) / BAND_STEP, BANDS);
  return band * BINS + index((r - BINS_FROM) / BIN_STEP, BINS);
}

/** x in the middle of a band. */
export function middleOf(band: number): number {
  return BAND_FROM + (band + 0.5) * BAND_STEP;
}

export function stepCellOf(dx: number, dr: number): number {
  return (
    index(dx / STEP_BAND, STEP_BANDS) * STEP_BINS + index((dr + STEP_MOST) / STEP_BIN, STEP_BINS)
  );
}

function index(position: number, count: number): number {
  return Math.max(0, Math.min(count - 1, Math.floor(position)));
}

const FEET_PER_M = 3.280_84;

/**
 * How far in x, for each band, the true air lies from the stated one when an elevation in feet was stated as metres: the
 * true site is lower, its air denser.
 */
export const FEET_AS_METRES = Float64Array.from({ length: BANDS }, (_, band) => {
  const x = middleOf(band);
  const stated_m = densityAltitude(STANDARD_DENSITY_kg_m3 * exp(x));
  return stated_m > 0 ? xOf(standardDensity(stated_m / FEET_PER_M)) - x : 0;
});
