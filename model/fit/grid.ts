import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { ln } from "../ln-exp.ts";
import type { End } from "./group.ts";
import { PRIOR } from "./prior.ts";

/**
 * The grid on which rows are counted. x = ln(density/1.225); r is what is left of
 * y = ln(Hz per 1,000 rpm) after a fixed reference line, so that r stays small whatever the density.
 */
export const BANDS = 24;
const BAND_STEP = 0.05;
const BAND_FROM = -0.8;
/** Bins of r; rows farther out are counted in the outermost. */
const BINS_WITHIN = 32;
/** One more at each end, for rows that lie beyond all tunes. */
export const BINS = BINS_WITHIN + 2;
const BIN_STEP = 0.04;
const BINS_FROM = -(BINS_WITHIN / 2) * BIN_STEP;
/** No tune is farther from the reference line than this; what is has its r taken as this. */
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
  if (Math.abs(r) >= R_MOST) return band * BINS + (r < 0 ? 0 : BINS - 1);
  return band * BINS + 1 + index((r - BINS_FROM) / BIN_STEP, BINS_WITHIN);
}

/** Whether a cell's rows lie beyond all tunes, and on which side. */
export function beyondTunes(cell: number): -1 | 0 | 1 {
  const bin = cell % BINS;
  if (bin === 0) return -1;
  return bin === BINS - 1 ? 1 : 0;
}

/** x at a place on the scale of bands: 3 is where band 3 begins, 3.5 its middle. */
export function xAtBand(place: number): number {
  return BAND_FROM + place * BAND_STEP;
}

/** Where an x lies on the scale of bands, no farther than its ends. */
export function placeOnBands(x: number): number {
  return Math.max(0, Math.min(BANDS, (x - BAND_FROM) / BAND_STEP));
}

export function stepCellOf(dx: number, dr: number): number {
  return (
    index(dx / STEP_BAND, STEP_BANDS) * STEP_BINS + index((dr + STEP_MOST) / STEP_BIN, STEP_BINS)
  );
}

function index(position: number, count: number): number {
  return Math.max(0, Math.min(count - 1, Math.floor(position)));
}
