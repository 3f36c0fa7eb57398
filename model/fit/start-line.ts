import { bisquareLoss, bisquareWeight } from "./bisquare.ts";
import type { Cells } from "./cells.ts";
import { BANDS, R_MOST, REFERENCE_SLOPE } from "./grid.ts";
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
  const cap = bandCaps(levels);
  const [least, most] = PRIOR.slope_bounds;
  let best: Line = { a: 0, c: 0 };
  let bestLoss = Number.POSITIVE_INFINITY;
  const histogram = new Float64Array(2 * HALF + 1);
  for (let i = 0; i < SLOPES; i++) {
    const slope = least + ((most - least) * i) / (SLOPES - 1);
    const c = slope - REFERENCE_SLOPE;
    const known = 0.5 * ((slope - prior.slope) / prior.slope_sd) ** 2 + stepLoss(steps, c);
    if (known >= bestLoss) continue;
    histogram.fill(0);
    for (let k = 0; k < levels.w.length; k++) {
      const offset = (levels.r[k] as number) - c * (levels.x[k] as number);
      const at = HALF + Math.max(-HALF, Math.min(HALF, Math.round(offset / BIN)));
      const w = (levels.w[k] as number) * (cap[levels.band[k] as number] as number);
      histogram[at] = (histogram[at] as number) + w;
    }
    for (const start of quantiles(histogram)) {
      const a = settle(histogram, start, prior);
      const loss = known + rowLoss(histogram, a, prior);
      if (loss < bestLoss) [best, bestLoss] = [{ a, c }, loss];
    }
  }
  return best;
}

function bandCaps({ band, w }: Cells): Float64Array {
  const votes = new Float64Array(BANDS);
  for (let k = 0; k < w.length; k++) {
    const j = band[k] as number;
    votes[j] = (votes[j] as number) + (w[k] as number);
  }
  return votes.map((v) => 1 / (1 + v * (BAND_SPREAD / START_SPREAD) ** 2));
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
