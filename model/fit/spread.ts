import { exp, ln, power } from "../ln-exp.ts";
import type { Cells } from "./cells.ts";
import { R_MOST } from "./grid.ts";
import { degreesOfFreedom, type GroupPrior } from "./prior.ts";
import { type Summit, summitOf } from "./summit.ts";

/** How heaters scatter about the line: Student's t of scale² = spread² + (spread_per_x·x)² and tail_df. */
export interface Scatter {
  spread: number;
  spread_per_x: number;
  /** Degrees of freedom by which the spread is known. */
  spread_df: number;
  /** Degrees of freedom of the scatter itself: infinite for the normal distribution. */
  tail_df: number;
}

/** The posterior is summed over all spreads and over these candidates of the rest, with their prior weights. */
const PER_X: [number, number][] = [
  [0, 0.8],
  [0.1, 0.1],
  [0.2, 0.1],
];
const TAILS: [number, number][] = [
  [200, 0.97],
  [8, 0.02],
  [4.5, 0.007],
  [3, 0.003],
];

/**
 * Of so many votes the growth counts by half, of more by more: in a small crowd the line's own doubt up high and all of
 * the growth that is believed in would together hold too much. From simulated crowds.
 */
export const GROWTH_VOTES = 20;

/** Residuals are counted in four ranges of x², to 3 %, and from 30 % on, where few are, to 10 %. */
const BIN = 0.03;
const FINE_BINS = 10;
const COARSE_BIN = 0.1;
const BINS = FINE_BINS + 5;
const RANGES = [0.01, 0.05, 0.12, Number.POSITIVE_INFINITY];

interface Residuals {
  votes: Float64Array;
  /** Mean squared residual of each bin, and mean x² of each range. */
  square: Float64Array;
  xx: Float64Array;
}

/**
 * Posterior of the spread, of its growth away from x = 0 (heaters' own slopes), and of how heavy its tails are;
 * residuals are of such a scatter or, by the background's share, anything at all.
 * @param residual of each cell; `genuine` the probability that its rows are of no slip that a name explains
 * @param inflate by how much residuals are smaller for having been fitted: √(n/(n − p))
 */
export function scatterOf(
  cells: Cells,
  residual: Float64Array,
  genuine: Float64Array,
  background: number,
  inflate: number,
  prior: GroupPrior,
): Scatter {
  const seen = count(cells, residual, genuine, inflate);
  const candidates: (Candidate & Summit)[] = [];
  const expected = ln(prior.spread);
  let from = expected;
  for (const [tail, tailWeight] of TAILS) {
    const norm = heightOf(tail);
    const shape = SHAPES.get(tail) as Float64Array;
    for (const [perX, perXWeight] of PER_X) {
      const weight = ln(tailWeight * perXWeight);
      const log = (lnSpread: number) =>
        weight -
        0.5 * ((lnSpread - expected) / prior.spread_log_sd) ** 2 +
        likelihood(seen, { spread: exp(lnSpread), perX, shape, norm, background });
      const summit = summitOf(log, from);
      from = summit.at;
      candidates.push({ perX, tail, log, ...summit });
    }
  }
  const highest = Math.max(...candidates.map(({ height }) => height));
  let total = 0;
  let sum = 0;
  let squares = 0;
  let perX2 = 0;
  let thin = 0;
  for (const { log, at, sd, height, perX, tail } of candidates) {
    if (height < highest - NEGLIGIBLE) continue;
    for (let k = -REACH; k <= REACH; k++) {
      const lnSpread = at + k * STEP * sd;
      const p = sd * exp(log(lnSpread) - highest);
      total += p;
      sum += p * lnSpread;
      squares += p * lnSpread * lnSpread;
      perX2 += p * perX ** 2;
      thin += p / tail;
    }
  }
  const mean = sum / total;
  const votes = seen.votes.reduce((all, v) => all + v, 0);
  const variance = Math.max(1e-4, squares / total - mean ** 2);
  return {
    spread: exp(mean),
    spread_per_x: Math.sqrt((perX2 / total) * (votes / (votes + GROWTH_VOTES))),
    spread_df: degreesOfFreedom(Math.sqrt(variance)),
    tail_df: total / thin,
  };
}

/** A growth and a tail, and the logarithm of their posterior over ln spread. */
interface Candidate {
  perX: number;
  tail: number;
  log: (lnSpread: number) => number;
}

/** Steps of a summit's standard deviation in which the posterior is summed, and how many to either side. */
const STEP = 0.75;
const REACH = 5;
/** A candidate whose summit is so far below the highest, in ln, adds nothing. */
const NEGLIGIBLE = 14;

function count(
  { w, x, rr }: Cells,
  residual: Float64Array,
  genuine: Float64Array,
  inflate: number,
): Residuals {
  const votes = new Float64Array(RANGES.length * BINS);
  const square = new Float64Array(RANGES.length * BINS);
  const xx = new Float64Array(RANGES.length);
  const inRange = new Float64Array(RANGES.length);
  for (let k = 0; k < w.length; k++) {
    const q = (residual[k] as number) * inflate;
    const weight = (w[k] as number) * (genuine[k] as number);
    const bin = binOf(Math.abs(q));
    if (bin >= BINS) continue;
    const x2 = (x[k] as number) ** 2;
    const range = RANGES.findIndex((most) => x2 < most);
    const at = range * BINS + bin;
    votes[at] = (votes[at] as number) + weight;
    const within = ((rr[k] as number) / (w[k] as number)) * inflate ** 2;
    square[at] = (square[at] as number) + weight * (q * q + within);
    inRange[range] = (inRange[range] as number) + weight;
    xx[range] = (xx[range] as number) + weight * x2;
  }
  for (let i = 0; i < votes.length; i++) square[i] = (square[i] as number) / (votes[i] || 1);
  for (let i = 0; i < xx.length; i++) xx[i] = (xx[i] as number) / (inRange[i] || 1);
  return { votes, square, xx };
}

function binOf(q: number): number {
  const fine = Math.floor(q / BIN);
  return fine < FINE_BINS ? fine : FINE_BINS + Math.floor((q - FINE_BINS * BIN) / COARSE_BIN);
}

interface Scattered {
  spread: number;
  perX: number;
  shape: Float64Array;
  norm: number;
  background: number;
}

/** Shapes of Student's t, (1 + z²/ν)^(−(ν + 1)/2), each 1/64 of a spread: between them a straight line will do. */
const PER_SPREAD = 64;
const SHAPE_ENDS = 40;
const SHAPES = new Map(
  TAILS.map(([df]) => [
    df,
    Float64Array.from({ length: SHAPE_ENDS * PER_SPREAD + 2 }, (_, i) =>
      power(1 + (i / PER_SPREAD) ** 2 / df, -0.5 * (df + 1)),
    ),
  ]),
);

function read(shape: Float64Array, z: number): number {
  const at = z * PER_SPREAD;
  if (!(at < SHAPE_ENDS * PER_SPREAD)) return 0;
  const i = Math.floor(at);
  const here = shape[i] as number;
  return here + (at - i) * ((shape[i + 1] as number) - here);
}

function likelihood({ votes, square, xx }: Residuals, c: Scattered): number {
  const flat = c.background / (2 * R_MOST);
  let log = 0;
  for (let range = 0; range < RANGES.length; range++) {
    const variance = c.spread ** 2 + c.perX ** 2 * (xx[range] as number);
    const height = ((1 - c.background) * c.norm) / Math.sqrt(variance);
    for (let at = range * BINS; at < (range + 1) * BINS; at++) {
      const v = votes[at] as number;
      if (v === 0) continue;
      const z = Math.sqrt((square[at] as number) / variance);
      log += v * ln(height * read(c.shape, z) + flat);
    }
  }
  return log;
}

/** Γ((ν + 1)/2) ÷ (√(νπ)·Γ(ν/2)): the height of Student's t at zero, by Stirling's series in 1/ν. */
function heightOf(df: number): number {
  return exp(-1 / (4 * df) + 1 / (24 * df * df * df)) / Math.sqrt(2 * Math.PI);
}

/** Density of Student's t. */
export function studentDensity(z: number, df: number): number {
  return heightOf(df) * power(1 + (z * z) / df, -0.5 * (df + 1));
}
