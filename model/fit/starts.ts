import { weightedQuantile } from "simple-statistics";
import { ln } from "../numerics/ln-exp.ts";
import { LEAST_TAIL_DF } from "./nodes.ts";
import { ONE_CROWD, PARAMETERS, type Parameter } from "./parameters.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";
import { SETTINGS as S } from "./settings.ts";

const SLOPES = [0.6, 0.75, 0.9, 1.05];
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9];
/** A second crowd is looked for this far to either side, in ln. */
const SHIFTS = [0.3, -0.3];

/** Lines through quantiles of the rows along a few slopes, and what is believed: consensus starts of the level and slope. */
export function lineStarts(sample: Sample, prior: Prior): Float64Array[] {
  const { x, y, first, weight } = sample;
  const share = new Array<number>(x.length);
  weight.forEach((w, i) => {
    const from = first[i] as number;
    const to = first[i + 1] as number;
    for (let j = from; j < to; j++) share[j] = w / (to - from);
  });
  const lines = SLOPES.flatMap((slope) => {
    const levels = Array.from(x, (v, j) => (y[j] as number) - slope * v);
    return QUANTILES.map((p) => ({ level: weightedQuantile(levels, share, p), slope }));
  });
  return [...lines, prior].map(({ level, slope }) => startAt(level, slope, sample, prior));
}

/** The same start with a second crowd to either side. */
export function crowdStarts(t: Float64Array): Float64Array[] {
  const odds = ln(S.mistake_share / (1 - 3 * S.mistake_share));
  return SHIFTS.map((shift) =>
    Float64Array.of(...t.subarray(0, ONE_CROWD), odds, 0, shift, 0, ln(S.between)),
  );
}

/** Honest and second crowd in each other's place. */
export function exchanged(t: Float64Array): Float64Array {
  const [level, slope] = [0, 1];
  const [odds, change, shift, tilt] = [ONE_CROWD, ONE_CROWD + 1, ONE_CROWD + 2, ONE_CROWD + 3];
  const other = t.slice();
  other[level] = (t[level] as number) + (t[shift] as number);
  other[slope] = (t[slope] as number) + (t[tilt] as number);
  for (const p of [odds, change, shift, tilt]) other[p] = -(t[p] as number);
  return other;
}

function startAt(
  level: number,
  slope: number,
  { x_mean, dose }: Sample,
  prior: Prior,
): Float64Array {
  const odds = ln(S.mistake_share / (1 - 2 * S.mistake_share));
  const logit = ln(S.mistake_share / (1 - S.mistake_share));
  const start: Partial<Record<Parameter, number>> = {
    level,
    slope,
    ln_between: ln(prior.between),
    ln_within: ln(prior.within),
    ln_own_slope: ln(prior.own_slope),
    ln_tail: ln(S.tail_df - LEAST_TAIL_DF),
    logit_never: odds,
    logit_other: odds,
    logit_feet: logit,
    feet_rise: S.feet_rise,
    logit_slip: logit,
    never_level: S.slope * x_mean,
    night: 0,
    ln_dose: dose?.mean ?? 0,
  };
  return Float64Array.from(PARAMETERS.slice(0, ONE_CROWD), (name) => start[name] as number);
}
