import { bisquareLoss, bisquareWeight } from "./bisquare.ts";
import { type Cells, votesByBand } from "./cells.ts";
import { R_MOST, REFERENCE_SLOPE } from "./grid.ts";
import type { Line } from "./normal-equations.ts";
import type { GroupPrior } from "./prior.ts";
import { PRIOR } from "./prior.ts";

/** Spreads assumed while looking for a start, in ln: known beforehand, so a tight crowd of fakes gains nothing. */
export const START_SPREAD = 0.1;
export const START_STEP_SPREAD = 0.05;
/** Heaters' own slopes scatter by this much. */
export const OWN_SLOPE = 0.08;
/** A band of density is worth at most (0.1/0.03)² votes in the search: one crowded place is one voice among many. */
const BAND_SPREAD = 0.03;

/** So many bands away from the crowd a vote on the level is worth half. */
export const NEAR_BANDS = 2;

const C = 3;
const SLOPES = 15;
const QUANTILES = 17;
const LOCATION_STEPS = 4;
/** Bins of the one-dimensional histogram in which intercepts are looked for. */
const BIN = 0.0125;
const HALF = Math.ceil((R_MOST + 0.4) / BIN);

/**
 * A robust start by consensus. For each slope of a grid the rows become a histogram of intercepts, in which a few
 * redescending steps from each quantile find the crowds; the line is kept that leaves the least loss of rows, steps
 * and prior. Because the spread is taken as known, it holds against 40 % of votes that agree on something else; a
 * start by smallest robust scale breaks earlier.
 */
export function startLine(levels: Cells, steps: Cells, prior: GroupPrior): Line {
  const levelAt = levelSearch(levels, bandCaps(levels), prior);
  const [least, most] = PRIOR.slope_bounds;
  let best: Line = { a: 0, c: 0 };
  let bestLoss = Number.POSITIVE_INFINITY;
  for (let i = 0; i < SLOPES; i++) {
    const slope = least + ((most - least) * i) / (SLOPES - 1);
    const c = slope - REFERENCE_SLOPE;
    const known = 0.5 * ((slope - prior.slope) / prior.slope_sd) ** 2 + stepLoss(steps, c);
    if (known >= bestLoss) continue;
    const { a, loss } = levelAt(c);
    if (known + loss < bestLoss) [best, bestLoss] = [{ a, c }, known + loss];
  }
  return best;
}

/**
 * The level that most votes agree on along a known slope, those counting most that are near the air most are from. What
 * is asserted far from the crowd has the slope in its hand, and should not have the level too.
 */
export function levelNearCrowd(levels: Cells, prior: GroupPrior, c: number): number {
  return levelSearch(levels, nearCrowd(votesByBand(levels)), prior)(c).a;
}

/** A level and what it leaves of the votes' and the prior's loss. */
interface Agreed {
  a: number;
  loss: number;
}

/** @param worth of a vote in each band */
function levelSearch(
  { w, x, r, band }: Cells,
  worth: Float64Array,
  prior: GroupPrior,
): (c: number) => Agreed {
  const histogram = new Float64Array(2 * HALF + 1);
  return (c) => {
    histogram.fill(0);
    for (let k = 0; k < w.length; k++) {
      const offset = (r[k] as number) - c * (x[k] as number);
      const at = HALF + Math.round(offset / BIN);
      if (at < 0 || at > 2 * HALF) continue;
      const voice = (w[k] as number) * (worth[band[k] as number] as number);
      histogram[at] = (histogram[at] as number) + voice;
    }
    let best: Agreed = { a: 0, loss: Number.POSITIVE_INFINITY };
    for (const start of quantiles(histogram)) {
      const a = settle(histogram, start, prior);
      const loss = rowLoss(histogram, a, prior);
      if (loss < best.loss) best = { a, loss };
    }
    return best;
  };
}

function bandCaps(levels: Cells): Float64Array {
  return votesByBand(levels).map((v) => 1 / (1 + v * (BAND_SPREAD / START_SPREAD) ** 2));
}

/** Less for each band by its distance from the one in which the middle vote lies, as of Mallows (1975). */
function nearCrowd(votes: Float64Array): Float64Array {
  const half = votes.reduce((sum, v) => sum + v, 0) / 2;
  let below = 0;
  const middle = votes.findIndex((v) => {
    below += v;
    return below >= half;
  });
  return votes.map((_, band) => 1 / (1 + ((band - middle) / NEAR_BANDS) ** 2));
}

function stepLoss({ w, x, r }: Cells, c: number): number {
  let loss = 0;
  for (let k = 0; k < w.length; k++) {
    const dx = x[k] as number;
    const sd = Math.sqrt(2 * START_STEP_SPREAD ** 2 + (OWN_SLOPE * dx) ** 2);
    loss += 2 * (w[k] as number) * bisquareLoss(((r[k] as number) - c * dx) / sd, C);
  }
  return loss;
}

/** Weighted quantiles at the middles of equal shares. */
function quantiles(histogram: Float64Array): number[] {
  const total = histogram.reduce((sum, w) => sum + w, 0);
  const found: number[] = [];
  let below = 0;
  histogram.forEach((w, i) => {
    below += w;
    const before = found.length;
    while (found.length < QUANTILES && below >= (total * (found.length + 0.5)) / QUANTILES) {
      found.push((i - HALF) * BIN);
    }
    // Several quantiles in one bin start the same search.
    if (found.length > before + 1) found.fill(Number.NaN, before + 1);
  });
  return found.filter((q) => !Number.isNaN(q));
}

const REACH = Math.ceil((C * START_SPREAD) / BIN);

function settle(histogram: Float64Array, start: number, prior: GroupPrior): number {
  const priorVoice = (START_SPREAD / prior.intercept_sd) ** 2;
  let at = start;
  for (let step = 0; step < LOCATION_STEPS; step++) {
    let voices = priorVoice;
    let sum = priorVoice * prior.above_reference;
    const middle = Math.round(at / BIN) + HALF;
    for (let i = Math.max(0, middle - REACH); i <= Math.min(2 * HALF, middle + REACH); i++) {
      const offset = (i - HALF) * BIN;
      const voice = (histogram[i] as number) * bisquareWeight((offset - at) / START_SPREAD, C);
      voices += voice;
      sum += voice * offset;
    }
    at = sum / voices;
  }
  return at;
}

function rowLoss(histogram: Float64Array, a: number, prior: GroupPrior): number {
  let loss = 0.5 * ((a - prior.above_reference) / prior.intercept_sd) ** 2;
  for (let i = 0; i < histogram.length; i++) {
    const w = histogram[i] as number;
    if (w > 0) loss += w * bisquareLoss(((i - HALF) * BIN - a) / START_SPREAD, C);
  }
  return loss;
}
