import { averageAt, heaterVariance, type Student, withinVariance } from "./fit/bands.ts";
import type { GroupFit } from "./fit/group.ts";
import { MISTAKEN, SETTINGS } from "./fit/settings.ts";
import { exp } from "./numerics/ln-exp.ts";
import { studentCdf } from "./numerics/student-cdf.ts";

/** A tune of the heater itself, at one end. */
export interface OwnRow {
  /** ln(density/1.225) and ln(Hz per 1,000 rpm). */
  x: number;
  y: number;
  /** Variance of y that the row brings along beside σ²: of its air, of the pump's steps, of its CO. */
  variance: number;
}

/** A mixture of Student's t; the weights sum to 1. */
export type Mixture = (Student & { weight: number })[];

export interface OwnHeater {
  /** Of the heater's next tune, and of its best setting. */
  next: Mixture;
  best: Mixture;
  /** By row: the probability that it is a mistake. */
  mistaken: number[];
}

/** So many own rows at most: their subsets are gone through. */
export const MOST_OWN_ROWS = 10;

/**
 * A heater with tunes of its own: best linear unbiased prediction of its level and slope (Henderson 1975; Robinson 1991)
 * with the line's own uncertainty, mixed over which of the rows are mistakes.
 * @param x ln(density/1.225) of the question
 * @param dose_uL fuel per pulse, where known
 * @throws RangeError for more than {@link MOST_OWN_ROWS} rows
 */
export function ownHeaterAt(
  group: GroupFit,
  rows: readonly OwnRow[],
  x: number,
  dose_uL?: number,
): OwnHeater {
  if (rows.length > MOST_OWN_ROWS) {
    throw new RangeError(`At most ${MOST_OWN_ROWS} own tunes are taken, not ${rows.length}.`);
  }
  const slip = Math.max(SETTINGS.mistake_share / 2, group.shares.slips);
  const subsets = Array.from({ length: 2 ** rows.length }, (_, set) => {
    const isMistake = (j: number) => ((set >> j) & 1) === 1;
    return { isMistake, ...updated(group, rows, isMistake, slip, dose_uL) };
  });
  const all = subsets.reduce((sum, s) => sum + s.weight, 0);
  const mixture = (extra: (centre: number) => number): Mixture =>
    subsets.map(({ weight, level, slope, p: [aa, ab, bb] }) => {
      const centre = level + slope * x;
      const variance = aa + x * (2 * ab + x * bb) + extra(centre);
      return { weight: weight / all, centre, variance, df: group.spread_df };
    });
  return {
    next: mixture((centre) => withinVariance(group, centre)),
    best: mixture(() => 0),
    mistaken: rows.map(
      (_, j) => subsets.reduce((sum, s) => sum + (s.isMistake(j) ? s.weight : 0), 0) / all,
    ),
  };
}

/** Level and slope of the heater after its good rows, one at a time (Kalman's update), and how probable the rows are so. */
function updated(
  group: GroupFit,
  rows: readonly OwnRow[],
  isMistake: (row: number) => boolean,
  slip: number,
  dose_uL: number | undefined,
) {
  const [[, ab], [, bb]] = group.covariance;
  const at0 = averageAt(group, 0, dose_uL);
  let [level, slope, weight] = [at0.centre, group.slope, 1];
  let [paa, pab, pbb] = [
    at0.variance + heaterVariance(group, 0, dose_uL),
    ab,
    bb + group.own_slope ** 2,
  ];
  rows.forEach((row, j) => {
    if (isMistake(j)) {
      weight *= slip * MISTAKEN;
      return;
    }
    const ka = paa + row.x * pab;
    const kb = pab + row.x * pbb;
    const variance = ka + row.x * kb + group.within ** 2 + row.variance;
    const residual = row.y - level - slope * row.x;
    weight *=
      ((1 - slip) * exp((-0.5 * residual * residual) / variance)) /
      Math.sqrt(2 * Math.PI * variance);
    level += (ka * residual) / variance;
    slope += (kb * residual) / variance;
    paa -= (ka * ka) / variance;
    pab -= (ka * kb) / variance;
    pbb -= (kb * kb) / variance;
  });
  return { level, slope, weight, p: [paa, pab, pbb] as const };
}

const HALVINGS = 50;
const FAR = 3;

/** Quantile of a mixture, by bisection. */
export function quantileOf(mixture: Mixture, share: number): number {
  const centre = mixture.reduce((sum, m) => sum + m.weight * m.centre, 0);
  let [low, high] = [centre - FAR, centre + FAR];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (shareBelow(mixture, middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shareBelow(mixture: Mixture, y: number): number {
  return mixture.reduce(
    (sum, { weight, centre, variance, df }) =>
      weight < 1e-9 ? sum : sum + weight * studentCdf((y - centre) / Math.sqrt(variance), df),
    0,
  );
}
