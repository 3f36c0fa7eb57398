import { densityAltitude, STANDARD_DENSITY_kg_m3, standardDensity } from "../air.ts";
import type { End } from "./group.ts";
import { PRIOR } from "./prior.ts";

/**
 * The grid on which rows are counted. x = ln(density/1.225); r is what is left of
 * y = ln(Hz per 1,000 rpm) after a fixed reference line, so that r stays small whatever the density.
 */
export const BANDS = 30;
const BAND_STEP = 0.04;
const BAND_FROM = -0.8;
export const BINS = 96;
const BIN_STEP = 0.025;
/** Rows farther than this from the reference line are no tunes; they are counted in the outermost bins. */
export const R_MOST = (BINS / 2) * BIN_STEP;

/** Steps between two rows of one contributor: their difference in x, always ≥ 0, and in r. */
export const STEP_BANDS = 20;
const STEP_BAND = 0.04;
export const STEP_BINS = 64;
const STEP_BIN = 0.02;
export const STEP_MOST = (STEP_BINS / 2) * STEP_BIN;

/** Slope of the reference line; its height is the prior's intercept of the end. */
export const REFERENCE_SLOPE = 0.9;

export function xOf(density_kg_m3: number): number {
  return Math.log(density_kg_m3 / STANDARD_DENSITY_kg_m3);
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
  return band * BINS + index((r + R_MOST) / BIN_STEP, BINS);
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
/** Nobody heats a tent above this, m. */
const HIGHEST_m = 7000;

/**
 * How far in x, for each band, the true air lies from the stated one when an elevation in feet was stated as metres
 * (the true site is lower, its air denser), or one in metres as feet (the true site is higher).
 */
export const SLIP_IN_X = {
  feet_as_metres: byBand((elevation_m) => elevation_m / FEET_PER_M),
  metres_as_feet: byBand((elevation_m) => elevation_m * FEET_PER_M),
};

function byBand(truth: (elevation_m: number) => number): Float64Array {
  return Float64Array.from({ length: BANDS }, (_, band) => {
    const x = BAND_FROM + (band + 0.5) * BAND_STEP;
    const stated = densityAltitude(STANDARD_DENSITY_kg_m3 * Math.exp(x));
    if (stated <= 0) return 0;
    const true_m = truth(stated);
    // Where no site can be, no row can be of that slip: it lies infinitely far.
    return true_m > HIGHEST_m ? Number.NEGATIVE_INFINITY : xOf(standardDensity(true_m)) - x;
  });
}
