import { REFERENCE_SLOPE } from "./grid.ts";
import { leastSquares } from "./least-squares.ts";
import { type GroupPrior, PRIOR } from "./prior.ts";

/** r = a + c·x above the reference line: the slope of y is {@link REFERENCE_SLOPE} + c. */
export interface Line {
  a: number;
  c: number;
}

/** A symmetric matrix of (a, c). */
export interface Symmetric {
  aa: number;
  ac: number;
  cc: number;
}

/** Covariance of (intercept, slope), as published. */
export type Covariance = [[number, number], [number, number]];

/** Information on (a, c) and the score that goes with it: the normal equations of weighted least squares. */
export interface Normal extends Symmetric {
  /** Σ of weight × r and of weight × x·r. */
  ra: number;
  rc: number;
}

/** What the prior alone knows. */
export function priorNormal(prior: GroupPrior): Normal {
  const [aa, cc] = [1 / prior.intercept_sd ** 2, 1 / prior.slope_sd ** 2];
  const c = prior.slope - REFERENCE_SLOPE;
  return { aa, ac: 0, cc, ra: aa * prior.above_reference, rc: cc * c };
}

/**
 * The line that solves the equations, its slope kept within physical bounds: least squares over the two rows that hold
 * all that the equations say (their Cholesky factor).
 */
export function solve({ aa, ac, cc, ra, rc }: Normal): Line {
  const root = Math.sqrt(aa);
  const rest = Math.sqrt(cc - ac ** 2 / aa);
  const design = [
    [root, ac / root],
    [0, rest],
  ];
  const target = [ra / root, (rc - (ac * ra) / aa) / rest];
  const [a, free] = leastSquares(design, target, { constant: false }).coefficients as [
    number,
    number,
  ];
  const [least, most] = PRIOR.slope_bounds;
  const c = Math.min(most - REFERENCE_SLOPE, Math.max(least - REFERENCE_SLOPE, free));
  return { a: c === free ? a : (ra - ac * c) / aa, c };
}

export function inverse({ aa, ac, cc }: Symmetric): Symmetric {
  const determinant = aa * cc - ac * ac;
  return { aa: cc / determinant, ac: -ac / determinant, cc: aa / determinant };
}

export function plus(p: Symmetric, q: Symmetric): Symmetric {
  return { aa: p.aa + q.aa, ac: p.ac + q.ac, cc: p.cc + q.cc };
}

/** A variance of the slope alone, the line turned about a place: what it is of (a, c). */
export function ofSlope(variance: number, middle: number): Symmetric {
  return { aa: variance * middle ** 2, ac: -variance * middle, cc: variance };
}

export function asCovariance({ aa, ac, cc }: Symmetric): Covariance {
  return [
    [aa, ac],
    [ac, cc],
  ];
}
