import { mean, median, sampleVariance, sum, weightedLinearRegression } from "simple-statistics";
import type { Point } from "./estimator.ts";
import { leastSquaresLine } from "./least-squares.ts";
import { type StraightLine, spreadOfX } from "./straight-line.ts";

/** 95 % efficient at the normal distribution. */
const K = 1.345;
/** Scale is the median absolute residual over this, the normal's (to four digits, by custom). */
const MAD_OF_NORMAL = 0.6745;
const ROUNDS = 100;
const CLOSE = 1e-10;

/**
 * Huber's M-estimator by reweighted least squares from the least-squares line, its scale renewed at each step; covariance
 * of the coefficients by Huber's formula with his small-sample factor (Huber, Robust Statistics, 1981, § 7.6).
 */
export function huberLine(points: Point[]): StraightLine | null {
  const spread = spreadOfX(points);
  const start = leastSquaresLine(points);
  if (!spread || !start) return null;
  let line = { m: start.slope, b: start.level - start.slope * start.x_mean };
  let residual = residuals(points, line);
  let scale = scaleOf(residual);
  for (let round = 0; round < ROUNDS && scale > 0; round++) {
    const weights = residual.map((r) => Math.min(1, (K * scale) / Math.abs(r)));
    line = weightedLinearRegression(points, weights);
    const next = residuals(points, line);
    const change = sum(next.map((r, i) => (r - (residual[i] as number)) ** 2));
    const size = sum(residual.map((r) => r * r));
    residual = next;
    if (Math.sqrt(change / size) < CLOSE) break;
    scale = scaleOf(residual);
  }
  const unit = coefficientVariance(residual, scale);
  return {
    x_mean: spread.x_mean,
    level: line.b + line.m * spread.x_mean,
    level_variance: unit / points.length,
    slope: line.m,
    slope_variance: unit / spread.squares,
    point_variance: scale ** 2,
    df: points.length - 2,
  };
}

function residuals(points: readonly Point[], { m, b }: { m: number; b: number }): number[] {
  return points.map(([x, y]) => y - b - m * x);
}

function scaleOf(residual: readonly number[]): number {
  return median(residual.map(Math.abs)) / MAD_OF_NORMAL;
}

/**
 * What takes the residual variance's place before (XᵀX)⁻¹, for so many coefficients.
 * ψ′ is 1 for residuals inside and 0 outside.
 */
export function coefficientVariance(residual: readonly number[], scale: number, p = 2): number {
  const n = residual.length;
  const bent = residual.map((r) => Math.max(-K * scale, Math.min(K * scale, r)) ** 2);
  const inside = residual.map((r) => Number(Math.abs(r) <= K * scale));
  const share = mean(inside);
  const factor = 1 + (p * sampleVariance(inside)) / (n * share ** 2);
  return (sum(bent) / (n - p)) * (factor / share) ** 2;
}
