import { PRIOR } from "./prior.ts";

/** y = intercept + slope·x. */
export interface Line {
  intercept: number;
  slope: number;
}

/** Where the prior puts the line before any data. */
export interface LinePrior {
  intercept: number;
}

/** Weighted sums from which a line follows. */
export interface Sums {
  w: number;
  x: number;
  y: number;
  xx: number;
  xy: number;
}

/** (XᵀWX)/s² plus the prior's precision, as its inverse: the posterior covariance of (intercept, slope). */
export type Covariance = [[number, number], [number, number]];

/**
 * Least squares with a normal prior on both coefficients and the slope kept within its physical bounds:
 * minimises Σw(y − a − bx)²/s² + ((a − a₀)/σₐ)² + ((b − b₀)/σ_b)².
 * @param scale s, standard deviation of y at weight 1
 */
export function lineFrom(sums: Sums, scale: number, prior: LinePrior): Line {
  const { A, B, C, D, E } = normalEquations(sums, scale, prior);
  const [least, most] = PRIOR.slope_bounds;
  const free = (A * E - B * D) / (A * C - B * B);
  const slope = Math.min(most, Math.max(least, free));
  return { intercept: (D - B * slope) / A, slope };
}

/** Posterior covariance of (intercept, slope) at a standard deviation s, bounds apart. */
export function posteriorCovariance(sums: Sums, scale: number): Covariance {
  const { A, B, C } = normalEquations(sums, scale, PRIOR_AT_ZERO);
  const k = scale ** 2 / (A * C - B * B);
  return [
    [k * C, -k * B],
    [-k * B, k * A],
  ];
}

const PRIOR_AT_ZERO: LinePrior = { intercept: 0 };

function normalEquations({ w, x, y, xx, xy }: Sums, scale: number, prior: LinePrior) {
  const forIntercept = (scale / PRIOR.intercept_sd) ** 2;
  const forSlope = (scale / PRIOR.slope_sd) ** 2;
  return {
    A: w + forIntercept,
    B: x,
    C: xx + forSlope,
    D: y + forIntercept * prior.intercept,
    E: xy + forSlope * PRIOR.slope,
  };
}
