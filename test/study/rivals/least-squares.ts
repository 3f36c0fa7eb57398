import { linearRegression, sum } from "simple-statistics";
import type { Point } from "./estimator.ts";
import { type StraightLine, spreadOfX } from "./straight-line.ts";

/** Least squares with the textbook's variances. */
export function leastSquaresLine(points: Point[]): StraightLine | null {
  const spread = spreadOfX(points);
  if (!spread) return null;
  const { x_mean, squares } = spread;
  const { m, b } = linearRegression(points);
  const df = points.length - 2;
  const variance = sum(points.map(([x, y]) => (y - b - m * x) ** 2)) / df;
  return {
    x_mean,
    level: b + m * x_mean,
    level_variance: variance / points.length,
    slope: m,
    slope_variance: variance / squares,
    point_variance: variance,
    df,
  };
}
