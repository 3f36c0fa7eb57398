import { leastSquares } from "./least-squares.ts";
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

/** Covariance of (intercept, slope). */
export type Covariance = [[number, number], [number, number]];

/** A line, and its covariance under the model: residuals of standard deviation s at weight 1, and the prior. */
export interface FittedLine {
  line: Line;
  posterior: Covariance;
}

/**
 * Least squares with a normal prior on both coefficients and the slope kept within its physical bounds:
 * minimises Σw(y − a − bx)²/s² + ((a − a₀)/σₐ)² + ((b − b₀)/σ_b)². The prior comes in as two observations of its
 * own, the sums as the two rows that hold all they say (the QR factor of the weighted data).
 * @param scale s, standard deviation of y at weight 1
 */
export function fitLine(sums: Sums, scale: number, prior: LinePrior): FittedLine {
  const { design, target } = observations(sums, scale, prior);
  const { coefficients, unscaled_covariance } = leastSquares(design, target, { constant: false });
  const [intercept, free] = coefficients as [number, number];
  const slope = withinBounds(free);
  const line = slope === free ? { intercept, slope } : throughSlope(design, target, slope);
  const posterior = unscaled_covariance.map((row) => row.map((v) => v * scale ** 2));
  return { line, posterior: posterior as Covariance };
}

type Row = readonly [number, number];

function observations({ w, x, y, xx, xy }: Sums, scale: number, prior: LinePrior) {
  const root = Math.sqrt(w);
  const spreadOfX = Math.sqrt(Math.max(0, w > 0 ? xx - (x * x) / w : 0));
  const design: Row[] = [
    [scale / PRIOR.intercept_sd, 0],
    [0, scale / PRIOR.slope_sd],
  ];
  const target = [
    (scale / PRIOR.intercept_sd) * prior.intercept,
    (scale / PRIOR.slope_sd) * PRIOR.slope,
  ];
  if (w > 0) {
    design.push([root, x / root]);
    target.push(y / root);
  }
  if (spreadOfX > 0) {
    design.push([0, spreadOfX]);
    target.push((xy - (x * y) / w) / spreadOfX);
  }
  return { design, target };
}

/** The best intercept for a slope at its bound. */
function throughSlope(design: readonly Row[], target: readonly number[], slope: number): Line {
  const [intercept] = leastSquares(
    design.map(([one]) => [one]),
    target.map((value, i) => value - slope * (design[i] as Row)[1]),
    { constant: false },
  ).coefficients as [number];
  return { intercept, slope };
}

function withinBounds(slope: number): number {
  const [least, most] = PRIOR.slope_bounds;
  return Math.min(most, Math.max(least, slope));
}

/**
 * The same line by Cramer's rule, for the tens of thousands of lines that leaving out one contributor at a time
 * asks for; a test holds it to {@link fitLine}.
 */
export function lineInClosedForm({ w, x, y, xx, xy }: Sums, scale: number, prior: LinePrior): Line {
  const forIntercept = (scale / PRIOR.intercept_sd) ** 2;
  const forSlope = (scale / PRIOR.slope_sd) ** 2;
  const A = w + forIntercept;
  const C = xx + forSlope;
  const D = y + forIntercept * prior.intercept;
  const E = xy + forSlope * PRIOR.slope;
  const slope = withinBounds((A * E - x * D) / (A * C - x * x));
  return { intercept: (D - x * slope) / A, slope };
}
