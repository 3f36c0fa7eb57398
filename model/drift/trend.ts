import { requireFinite } from "../numerics/finite.ts";
import { exp, ln, power } from "../numerics/ln-exp.ts";

/** A straight line through points, what it says, and how far it can be trusted however often one looks. */
export interface Trend {
  /** Change of y for 1 of x, the nuisance `z` held. */
  slope: number;
  standard_error: number;
  /** Points less what is estimated. */
  free: number;
  /** Evidence against "no change", valid at every look; see {@link trendOf}. */
  evidence: number;
  /** Where the slope lies, valid at every look at once; infinite while there is too little. */
  interval: { level: number; lower: number; upper: number };
}

export interface TrendPoint {
  x: number;
  y: number;
  /** Something else that moves y; its own slope is estimated beside. */
  z: number;
  /** Variance that reading y off a scale brings at the least. */
  reading_variance: number;
}

/** The slope beforehand, in standard deviations of the noise for 1 of x (our own working value). */
const SLOPE_SD = 1.5;
/** Below this share of its sum of squares a column is rounding alone. */
const SAME = 1e-12;
export const INTERVAL_LEVEL = 0.95;

/**
 * Least squares of y on x, with intercept and the slope of z beside, and the evidence that x counts.
 *
 * The evidence is a Bayes factor: slope ~ N(0, 1.5² · noise variance) against slope 0, intercept, slope of z and noise
 * under their right Haar prior. With S the sum of squares of x left by intercept and z, r = 1 + 1.5² S, RSS the residual
 * sum of squares and m = points less nuisances: r^(−½) · ((RSS + slope²S)/(RSS + slope²S/r))^(m/2). For independent normal
 * noise of any variance it is a test martingale under "no change": the chance that it ever passes 1/α is at most α,
 * however often one looks (Ville's inequality; Pérez-Ortiz, Lardy, de Heide and Grünwald 2024; Lindon et al. 2022:
 * both from memory, the bound is measured in test/study/drift). The interval holds the slopes that the same evidence
 * does not speak against, so it too holds at every look at once.
 * @returns null when x does not vary beside z, or fewer than one point is left free
 * @throws RangeError when a number is not finite
 */
export function trendOf(points: readonly TrendPoint[]): Trend | null {
  for (const { x, y, z, reading_variance } of points) requireFinite({ x, y, z, reading_variance });
  const x = centred(points.map((p) => p.x));
  const y = centred(points.map((p) => p.y));
  const z = centred(points.map((p) => p.z));
  const zz = dot(z, z);
  const zMoves = zz > SAME * points.reduce((sum, p) => sum + p.z * p.z, 0);
  const xLeft = zMoves ? without(x, z) : x;
  const yLeft = zMoves ? without(y, z) : y;
  const S = dot(xLeft, xLeft);
  const nuisances = zMoves ? 2 : 1;
  const free = points.length - nuisances - 1;
  if (free < 1 || S <= SAME * points.reduce((sum, p) => sum + p.x * p.x, 0)) return null;
  const slope = dot(xLeft, yLeft) / S;
  const residual = yLeft.reduce((sum, value, i) => sum + (value - slope * (xLeft[i] ?? 0)) ** 2, 0);
  // A scale read in steps can show no noise at all; what the steps hide is added, which only lowers the evidence.
  const hidden = points.reduce((sum, p) => sum + p.reading_variance, 0);
  const RSS = residual + hidden;
  const m = points.length - nuisances;
  const r = 1 + SLOPE_SD * SLOPE_SD * S;
  const explained = slope * slope * S;
  const evidence =
    RSS > 0
      ? exp((m / 2) * (ln(RSS + explained) - ln(RSS + explained / r)) - ln(r) / 2)
      : explained > 0
        ? power(r, (m - 1) / 2)
        : power(r, -1 / 2);
  const share = largestShare(r, m);
  const half = Number.isFinite(share) ? Math.sqrt((share * RSS) / S) : share;
  return {
    slope,
    standard_error: Math.sqrt(residual / free / S),
    free,
    evidence,
    interval: { level: INTERVAL_LEVEL, lower: slope - half, upper: slope + half },
  };
}

/** The largest explained ÷ residual sum of squares that evidence of 1/(1 − level) allows. */
function largestShare(r: number, m: number): number {
  const A = power(Math.sqrt(r) / (1 - INTERVAL_LEVEL), 2 / m);
  return A < r ? (A - 1) / (1 - A / r) : Number.POSITIVE_INFINITY;
}

function centred(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
}

function without(values: readonly number[], z: readonly number[]): number[] {
  const share = dot(values, z) / dot(z, z);
  return values.map((value, i) => value - share * (z[i] ?? 0));
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}
