import type { Line, LinePrior } from "./line.ts";
import type { Points } from "./points.ts";
import { PRIOR } from "./prior.ts";
import { bisquareLoss, bisquareWeight } from "./reweighting.ts";

/** Spread assumed while looking for a start, in ln: known beforehand, so a tight crowd of fakes gains nothing. */
export const START_SPREAD = 0.1;
/** Tuning constant of the start's bisquare. */
const START_C = 3;
const SLOPES = 15;
const QUANTILES = 17;
const LOCATION_STEPS = 4;

/**
 * A robust start by consensus: over a grid of slopes and of intercept quantiles, a few redescending location
 * steps each, and the line kept that leaves the least Σ vote·ρ(r/s₀) plus the prior's own loss. Because the
 * spread is taken as known, it holds against 40 % of votes that agree on something else; a start by smallest
 * robust scale breaks earlier.
 */
export function consensusStart(points: Points, prior: LinePrior): Line {
  const [least, most] = PRIOR.slope_bounds;
  let best: Line = { intercept: prior.intercept, slope: PRIOR.slope };
  let bestLoss = Number.POSITIVE_INFINITY;
  for (let i = 0; i < SLOPES; i++) {
    const slope = least + ((most - least) * i) / (SLOPES - 1);
    const offsets = points.y.map((y, k) => y - slope * (points.x[k] as number));
    for (const quantile of quantiles(offsets, points.weight)) {
      const intercept = settle(offsets, points.weight, quantile, prior);
      const loss = totalLoss(offsets, points.weight, { intercept, slope }, prior, bestLoss);
      if (loss < bestLoss) {
        bestLoss = loss;
        best = { intercept, slope };
      }
    }
  }
  return best;
}

/** Weighted quantiles at the middles of equal shares. */
function quantiles(values: Float64Array, weight: Float64Array): number[] {
  const order = Uint32Array.from(values, (_, i) => i).sort(
    (a, b) => (values[a] as number) - (values[b] as number),
  );
  const total = weight.reduce((sum, w) => sum + w, 0);
  const found: number[] = [];
  let below = 0;
  for (const i of order) {
    below += weight[i] as number;
    while (found.length < QUANTILES && below >= (total * (found.length + 0.5)) / QUANTILES) {
      found.push(values[i] as number);
    }
  }
  return found;
}

function settle(
  offsets: Float64Array,
  weight: Float64Array,
  start: number,
  prior: LinePrior,
): number {
  const priorVoice = (START_SPREAD / PRIOR.intercept_sd) ** 2;
  let at = start;
  for (let step = 0; step < LOCATION_STEPS; step++) {
    let voices = priorVoice;
    let sum = priorVoice * prior.intercept;
    for (let i = 0; i < offsets.length; i++) {
      const offset = offsets[i] as number;
      const voice = (weight[i] as number) * bisquareWeight((offset - at) / START_SPREAD, START_C);
      voices += voice;
      sum += voice * offset;
    }
    at = sum / voices;
  }
  return at;
}

/** Loss of a line; given up once it is beyond `enough`, since it only grows. */
function totalLoss(
  offsets: Float64Array,
  weight: Float64Array,
  { intercept, slope }: Line,
  prior: LinePrior,
  enough: number,
): number {
  let loss =
    0.5 * ((slope - PRIOR.slope) / PRIOR.slope_sd) ** 2 +
    0.5 * ((intercept - prior.intercept) / PRIOR.intercept_sd) ** 2;
  for (let i = 0; i < offsets.length && loss < enough; i++) {
    const scaled = ((offsets[i] as number) - intercept) / START_SPREAD;
    loss += (weight[i] as number) * bisquareLoss(scaled, START_C);
  }
  return loss;
}
