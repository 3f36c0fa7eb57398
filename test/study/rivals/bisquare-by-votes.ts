import quantile from "@stdlib/stats-base-dists-t-quantile";
import { sum } from "simple-statistics";
import type { FitRow } from "../../../model/fit/row.ts";
import { LEVELS, lnRatio } from "../airs.ts";
import { bisquareLoss, bisquareWeight } from "./bisquare.ts";
import type { Estimator, Fitted } from "./estimator.ts";
import { isOf } from "./hypsotune.ts";

/** What is believed of the slope, and where it must lie. */
const SLOPE = 0.95;
const SLOPE_SD = 0.15;
const SLOPE_BOUNDS = [0.5, 1.2] as const;
/** Spread taken as known while a start is looked for, and what the scale is shrunk to, as so many votes. */
const SPREAD = 0.1;
const SPREAD_VOTES = 8;
const LEAST_SPREAD = 0.03;
const SLOPES = 15;
const QUANTILES = 17;
const LOCATION_STEPS = 4;
const START_C = 3;
const C = 4;
const NEAR = 3.5;
const MAD_TO_SD = 1.4826;
const ROUNDS = 100;
const SETTLED = 1e-8;
/** Rows farther than so many scales are set aside; the normal's variance within them. */
const CUT = 3;
const VARIANCE_WITHIN_CUT = 0.9733;
/** Spread between tunes before any is known, worth so many degrees of freedom. */
const PRIOR_SPREAD = 0.11;
const PRIOR_DF = 4;
/** With fewer contributors the line is held to be no surer than its posterior variance says. */
const JACKKNIFE_ALONE_FROM = 100;

interface Voted {
  row: FitRow;
  x: number;
  y: number;
  v: number;
}

interface Line {
  a: number;
  b: number;
}

/** Sums that a line is solved from. */
type Sums = [v: number, vx: number, vy: number, vxx: number, vxy: number];

/**
 * The usual robust remedies put together: one vote for each contributor, √k for k at one place; a consensus start under a
 * known spread; Tukey's bisquare with a prior on the slope; a cut at three scales and least squares on the rest; the mean
 * band by leaving out one contributor at a time.
 */
export const bisquareByVotes: Estimator = {
  name: "Bisquare by votes",
  fit: (rows, target) => {
    const own = voted(rows.filter(isOf(target)));
    return own.length > 0 ? fitted(own) : null;
  },
};

function fitted(rows: readonly Voted[]): Fitted {
  const { line, scale } = reweighted(rows);
  const isKept = ({ x, y }: Voted) => Math.abs(y - line.a - line.b * x) <= CUT * scale;
  const kept = rows.filter(isKept);
  const sums = sumsOf(kept);
  const { a, b } = solved(sums, scale);
  const votes = sums[0];
  const squares = sum(kept.map(({ x, y, v }) => v * (y - a - b * x) ** 2));
  const df = PRIOR_DF + Math.max(0, votes - 2);
  const variance =
    (PRIOR_DF * PRIOR_SPREAD ** 2 + squares / VARIANCE_WITHIN_CUT) / (PRIOR_DF + votes);
  const left = linesWithoutOne(kept, sums, scale);
  return {
    setAside: new Set(rows.filter((row) => !isKept(row)).map(({ row }) => row.row)),
    at: (x) => {
      const centre = a + b * x;
      const off = left.map((l) => (l.a + l.b * x - centre) ** 2);
      const total = sum(off);
      const jackknife = total > 0 ? (1 - 1 / left.length) * total : 0;
      const least = left.length < JACKKNIFE_ALONE_FROM ? posterior(sums, variance, x) : 0;
      const line_df = total > 0 ? total ** 2 / sum(off.map((d) => d * d)) + 2 : df;
      const interval = (level: number, of: number, n: number) => {
        const half = quantile((1 + level) / 2, n) * Math.sqrt(of);
        return { lower: centre - half, upper: centre + half };
      };
      const mean = Math.max(jackknife, least);
      return {
        centre,
        mean: LEVELS.map((level) => interval(level, mean, Math.min(df, line_df))),
        another: LEVELS.map((level) => interval(level, mean + variance, df)),
      };
    },
  };
}

/** The line that bisquare reweighting settles at, and the scale it ends with. */
function reweighted(rows: readonly Voted[]): { line: Line; scale: number } {
  let line = startLine(rows);
  let scale = SPREAD;
  for (let round = 0; round < ROUNDS; round++) {
    const { a, b } = line;
    const weighted = rows.map((row) => {
      const weight = bisquareWeight((row.y - a - b * row.x) / scale, C);
      return { ...row, v: row.v * weight };
    });
    line = solved(sumsOf(weighted), scale);
    scale = scaleOf(rows, line, scale);
    if (Math.abs(line.a - a) + Math.abs(line.b - b) < SETTLED) break;
  }
  return { line, scale };
}

/** Rows with their votes: those of one contributor share one, k contributors whose first row lies at one place share √k. */
function voted(rows: readonly FitRow[]): Voted[] {
  const byContributor = Map.groupBy(rows, ({ contributor }) => contributor);
  const home = (c: FitRow["contributor"]) => byContributor.get(c)?.[0]?.cell;
  const there = Map.groupBy(byContributor.keys(), home);
  return rows.map((row) => {
    const place = home(row.contributor);
    const k = place ? (there.get(place)?.length ?? 1) : 1;
    const n = byContributor.get(row.contributor)?.length ?? 1;
    const y = Math.log((row.pump_Hz * 1000) / row.fan_rpm);
    return { row, x: lnRatio(row.density_kg_m3), y, v: 1 / Math.sqrt(k) / n };
  });
}

function startLine(rows: readonly Voted[]): Line {
  const [least, most] = SLOPE_BOUNDS;
  const votes = sum(rows.map(({ v }) => v));
  let best: Line = { a: 0, b: SLOPE };
  let bestLoss = Number.POSITIVE_INFINITY;
  for (let i = 0; i < SLOPES; i++) {
    const b = least + ((most - least) * i) / (SLOPES - 1);
    const level = rows.map(({ x, y, v }) => ({ at: y - b * x, v })).sort((p, q) => p.at - q.at);
    const belief = 0.5 * ((b - SLOPE) / SLOPE_SD) ** 2;
    for (let k = 0, below = 0, next = 0; next < level.length; next++) {
      below += level[next]?.v as number;
      if (below < (votes * (k + 0.5)) / QUANTILES) continue;
      while (below >= (votes * (k + 0.5)) / QUANTILES) k++;
      let a = level[next]?.at as number;
      for (let step = 0; step < LOCATION_STEPS; step++) {
        const w = level.map(({ at, v }) => v * bisquareWeight((at - a) / SPREAD, START_C));
        a = sum(level.map(({ at }, j) => at * (w[j] as number))) / sum(w);
      }
      const loss =
        belief + sum(level.map(({ at, v }) => v * bisquareLoss((at - a) / SPREAD, START_C)));
      if (loss < bestLoss) [best, bestLoss] = [{ a, b }, loss];
    }
  }
  return best;
}

function sumsOf(rows: readonly Voted[]): Sums {
  const sums: Sums = [0, 0, 0, 0, 0];
  for (const row of rows) add(sums, row, 1);
  return sums;
}

function add(sums: Sums, { x, y, v }: Voted, sign: 1 | -1): void {
  const w = sign * v;
  sums[0] += w;
  sums[1] += w * x;
  sums[2] += w * y;
  sums[3] += w * x * x;
  sums[4] += w * x * y;
}

/** The line of these sums under the prior on the slope, within its bounds. */
function solved([v, vx, vy, vxx, vxy]: Sums, scale: number): Line {
  const belief = (scale / SLOPE_SD) ** 2;
  const free = (vxy - (vx * vy) / v + belief * SLOPE) / (vxx - (vx * vx) / v + belief);
  const b = Math.max(SLOPE_BOUNDS[0], Math.min(SLOPE_BOUNDS[1], free));
  return { a: (vy - b * vx) / v, b };
}

/** Variance at x that the model itself expects. */
function posterior([v, vx, , vxx]: Sums, variance: number, x: number): number {
  const middle = vx / v;
  const information = (vxx - vx * middle) / variance + 1 / SLOPE_SD ** 2;
  return variance / v + (x - middle) ** 2 / information;
}

/** 1.4826 × the median distance, by votes, of the rows within some of the last scales; shrunk. */
function scaleOf(rows: readonly Voted[], { a, b }: Line, last: number): number {
  const near = rows
    .map(({ x, y, v }) => ({ r: Math.abs(y - a - b * x), v }))
    .filter(({ r }) => r <= NEAR * last)
    .sort((p, q) => p.r - q.r);
  const votes = sum(near.map(({ v }) => v));
  let below = 0;
  const median = near.find(({ v }) => {
    below += v;
    return below >= votes / 2;
  });
  const own = MAD_TO_SD * (median?.r ?? SPREAD);
  const scale = (SPREAD_VOTES * SPREAD + votes * own) / (SPREAD_VOTES + votes);
  return Math.max(LEAST_SPREAD, Math.min(2 * SPREAD, scale));
}

/** The lines without each contributor in turn. */
function linesWithoutOne(rows: readonly Voted[], all: Sums, scale: number): Line[] {
  return [...Map.groupBy(rows, ({ row }) => row.contributor).values()]
    .filter((own) => own.length < rows.length)
    .map((own) => {
      const sums: Sums = [...all];
      for (const row of own) add(sums, row, -1);
      return solved(sums, scale);
    });
}
