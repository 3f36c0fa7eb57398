import { weightedQuantile } from "simple-statistics";
import { ln } from "../ln-exp.ts";
import { LEAST_TAIL_DF } from "./nodes.ts";
import { ONE_CROWD, PARAMETERS, type Parameter, TWO_CROWDS } from "./parameters.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";
import { SETTINGS as S } from "./settings.ts";

const SLOPES = [0.6, 0.75, 0.9, 1.05];
const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9];
/** A second crowd is looked for this far to either side, in ln. */
const SHIFTS = [0.3, -0.3];
const NEVER_LEVEL = -0.05;

/** Lines through quantiles of the rows along a few slopes, and what is believed: consensus starts of the level and slope. */
export function lineStarts({ x, y, first, weight }: Sample, prior: Prior): Float64Array[] {
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
  return [...lines, prior].map(({ level, slope }) => startAt(level, slope, prior));
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

function startAt(level: number, slope: number, prior: Prior): Float64Array {
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
    feet_rise: 0,
    logit_slip: logit,
    never_level: NEVER_LEVEL,
    night: 0,
    ln_dose: 0,
  };
  return Float64Array.from(PARAMETERS.slice(0, ONE_CROWD), (name) => start[name] as number);
}

/** No step of the maximiser is longer than this, by parameter. */
const LONGEST: Record<Parameter, number> = {
  level: 0.1,
  slope: 0.1,
  ln_between: 0.4,
  ln_within: 0.4,
  ln_own_slope: 0.5,
  ln_tail: 0.5,
  logit_never: 1,
  logit_other: 1,
  logit_feet: 1,
  feet_rise: 0.5,
  logit_slip: 1,
  never_level: 0.1,
  night: 0.02,
  ln_dose: 0.2,
  logit_crowd: 1,
  crowd_odds: 1,
  crowd_shift: 0.2,
  crowd_tilt: 0.2,
  ln_crowd: 0.4,
};

export const longestSteps = Float64Array.from(PARAMETERS, (name) => LONGEST[name]);

/** A guess of the observed information of each parameter: what so many votes usually know, and the prior. */
export function usualInformation(
  { votes, dose }: Sample,
  prior: Prior,
  length: number,
): Float64Array {
  const variance = prior.between ** 2 + prior.within ** 2;
  const guess: Record<Parameter, number> = {
    level: votes / variance + prior.level_sd ** -2,
    slope: (0.02 * votes) / variance + prior.slope_sd ** -2,
    ln_between: votes + 2 * prior.spread_worth,
    ln_within: votes + 2 * prior.spread_worth,
    ln_own_slope: 2 * prior.spread_worth + 0.1 * votes,
    ln_tail: S.tail_log_sd ** -2 + 0.05 * votes,
    logit_never: 1 + 0.05 * votes,
    logit_other: 1 + 0.05 * votes,
    logit_feet: 1 + 0.05 * votes,
    feet_rise: 1 + 0.05 * votes,
    logit_slip: 1 + 0.05 * votes,
    never_level: 70 + 3 * votes,
    night: S.night_sd ** -2 + 10 * votes,
    ln_dose: dose ? votes / variance + votes / dose.sd ** 2 : 1,
    logit_crowd: 1 + 0.05 * votes,
    crowd_odds: 0.2 + 0.03 * votes,
    crowd_shift: 6 + 5 * votes,
    crowd_tilt: 6 + 0.2 * votes,
    ln_crowd: 2 * S.spread_worth + 0.3 * votes,
  };
  return Float64Array.from(PARAMETERS.slice(0, length), (name) => guess[name]);
}

export { TWO_CROWDS };
