import { consensusStart, START_SPREAD } from "./consensus.ts";
import { fitLine, type Line, type LinePrior } from "./line.ts";
import type { Points } from "./points.ts";
import { bisquareWeight, reweight } from "./reweighting.ts";

/** A line that most votes agree on, and the robust spread about it. */
export interface RobustLine {
  line: Line;
  scale: number;
}

/** Tuning constant of the main bisquare. */
const BISQUARE_C = 4;
/** Residuals beyond so many scales say nothing about the scale. */
const SCALE_WINDOW = 3.5;
/** Median absolute deviation to standard deviation at the normal. */
const MAD_TO_SD = 1.4826;
/** How many votes the start's spread is worth beside the data's. */
const START_SPREAD_VOTES = 8;
const LEAST_SCALE = 0.03;
const MOST_SCALE = 2 * START_SPREAD;

/** Bisquare reweighting from the consensus start; the scale shrunk to the start's spread and kept within bounds. */
export function robustLine(points: Points, prior: LinePrior): RobustLine {
  const { x, y, weight } = points;
  const { fit, scale } = reweight<Line>({
    start: consensusStart(points, prior),
    residuals: ({ intercept, slope }) =>
      y.map((yi, i) => yi - intercept - slope * (x[i] as number)),
    scale: (residuals, before) => robustScale(residuals, weight, before || START_SPREAD),
    weight: (scaled) => bisquareWeight(scaled, BISQUARE_C),
    solve: (trust, s) => fitLine(sumsOf(points, trust), s, prior).line,
  });
  return { line: fit, scale };
}

/** Vote-weighted median absolute residual within the window, as a standard deviation, shrunk and bounded. */
function robustScale(residuals: Float64Array, weight: Float64Array, before: number): number {
  const inside: [size: number, weight: number][] = [];
  let votes = 0;
  for (let i = 0; i < residuals.length; i++) {
    const size = Math.abs(residuals[i] as number);
    if (size > SCALE_WINDOW * before) continue;
    inside.push([size, weight[i] as number]);
    votes += weight[i] as number;
  }
  const own = MAD_TO_SD * weightedMedian(inside, votes);
  const variance =
    (votes * own ** 2 + START_SPREAD_VOTES * START_SPREAD ** 2) / (votes + START_SPREAD_VOTES);
  return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, Math.sqrt(variance)));
}

function weightedMedian(values: [size: number, weight: number][], total: number): number {
  values.sort(([a], [b]) => a - b);
  let below = 0;
  for (const [size, weight] of values) {
    below += weight;
    if (below >= total / 2) return size;
  }
  return 0;
}

function sumsOf({ x, y, weight }: Points, trust: Float64Array) {
  const sums = { w: 0, x: 0, y: 0, xx: 0, xy: 0 };
  for (let i = 0; i < x.length; i++) {
    const w = (weight[i] as number) * (trust[i] as number);
    const wx = w * (x[i] as number);
    sums.w += w;
    sums.x += wx;
    sums.y += w * (y[i] as number);
    sums.xx += wx * (x[i] as number);
    sums.xy += wx * (y[i] as number);
  }
  return sums;
}
