import quantile from "@stdlib/stats-base-dists-t-quantile";
import { mean, sum } from "simple-statistics";
import { LEVELS } from "../airs.ts";
import type { Answer, Interval, Point } from "./estimator.ts";

/** A line through the points' mean x, with the variances that its intervals need. */
export interface StraightLine {
  x_mean: number;
  /** Of the line at x_mean, and of its slope; independent there. */
  level: number;
  level_variance: number;
  slope: number;
  slope_variance: number;
  /** Of one more point about the line. */
  point_variance: number;
  df: number;
}

/** Confidence and prediction intervals by Student's t, as in any textbook. */
export function answers(line: StraightLine): (x: number) => Answer {
  const factors = LEVELS.map((level) => quantile((1 + level) / 2, line.df));
  return (x) => {
    const centre = line.level + line.slope * (x - line.x_mean);
    const variance = line.level_variance + line.slope_variance * (x - line.x_mean) ** 2;
    const within = (v: number): Interval[] =>
      factors.map((factor) => {
        const half = factor * Math.sqrt(v);
        return { lower: centre - half, upper: centre + half };
      });
    return { centre, mean: within(variance), another: within(variance + line.point_variance) };
  };
}

/** Mean of x and sum of squares about it; null when they are too few, or too alike, for a line with intervals. */
export function spreadOfX(points: readonly Point[]): { x_mean: number; squares: number } | null {
  if (points.length < 3) return null;
  const x = points.map(([value]) => value);
  const x_mean = mean(x);
  const squares = sum(x.map((value) => (value - x_mean) ** 2));
  return squares > 0 ? { x_mean, squares } : null;
}
