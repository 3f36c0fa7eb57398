import { median, sampleCorrelation } from "simple-statistics";
import { seeded } from "../population.ts";
import type { Point } from "./estimator.ts";
import { MAD_TO_SD } from "./mad-cut.ts";
import { type StraightLine, spreadOfX } from "./straight-line.ts";

/** All pairs up to so many points; beyond, so many pairs drawn at random. */
const ALL_PAIRS_UP_TO = 2000;
const PAIRS = 200_000;

/**
 * Theil–Sen: median of the slopes between pairs of points with different x, median of what is left.
 * Variances are the large-sample ones under normal errors (Sen, 1968): π/3 of least squares' for the slope, over the
 * squared correlation of x with its ranks; π/2 of the mean's for the median. Scale by the MAD.
 */
export function theilSenLine(points: Point[]): StraightLine | null {
  const spread = spreadOfX(points);
  if (!spread) return null;
  const { x_mean, squares } = spread;
  const slope = median(points.length <= ALL_PAIRS_UP_TO ? allSlopes(points) : someSlopes(points));
  const left = points.map(([x, y]) => y - slope * (x - x_mean));
  const level = median(left);
  const variance = (MAD_TO_SD * median(left.map((v) => Math.abs(v - level)))) ** 2;
  return {
    x_mean,
    level,
    level_variance: ((Math.PI / 2) * variance) / points.length,
    slope,
    slope_variance: ((Math.PI / 3) * variance) / (squares * rankCorrelation(points) ** 2),
    point_variance: variance,
    df: points.length - 2,
  };
}

function allSlopes(points: readonly Point[]): number[] {
  const slopes: number[] = [];
  for (let i = 0; i < points.length; i++) {
    const [xi, yi] = points[i] as Point;
    for (let j = 0; j < i; j++) {
      const [xj, yj] = points[j] as Point;
      if (xi !== xj) slopes.push((yi - yj) / (xi - xj));
    }
  }
  return slopes;
}

function someSlopes(points: readonly Point[]): number[] {
  const { uniform } = seeded(points.length);
  const any = () => points[Math.floor(points.length * uniform())] as Point;
  const slopes: number[] = [];
  while (slopes.length < PAIRS) {
    const [[xi, yi], [xj, yj]] = [any(), any()];
    if (xi !== xj) slopes.push((yi - yj) / (xi - xj));
  }
  return slopes;
}

/** Correlation of x with its own ranks: 1 where x is spread evenly. */
function rankCorrelation(points: readonly Point[]): number {
  const x = points.map(([value]) => value).sort((a, b) => a - b);
  return sampleCorrelation(x, [...x.keys()]);
}
