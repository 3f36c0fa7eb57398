import type { End } from "../end.ts";
import type { GroupFit } from "./group.ts";
import { SETTINGS as S } from "./settings.ts";

/** What is believed of one heater size and end before its own rows. */
export interface Prior {
  level: number;
  level_sd: number;
  slope: number;
  slope_sd: number;
  /** Student's t of level and slope; infinite for the normal distribution. */
  df: number;
  between: number;
  within: number;
  own_slope: number;
  /** Owners that the belief about a spread is worth. */
  spread_worth: number;
}

/** Physics and common practice alone. */
export function physicsPrior(end: End): Prior {
  return {
    level: end === "low" ? S.level_low : S.level_high,
    level_sd: S.level_sd,
    slope: S.slope,
    slope_sd: S.slope_sd,
    df: Number.POSITIVE_INFINITY,
    between: S.between,
    within: S.within,
    own_slope: S.own_slope,
    spread_worth: S.worth,
  };
}

/**
 * The fit of a heater size that nobody has tuned yet: the belief alone, with wide bands. It takes the place of a
 * published group, so every view and answer works from none.
 */
export function priorGroup(heat_kW: number, end: End, prior: Prior = physicsPrior(end)): GroupFit {
  return {
    heat_kW,
    end,
    intercept: prior.level,
    slope: prior.slope,
    covariance: [
      [prior.level_sd ** 2, 0],
      [0, prior.slope_sd ** 2],
    ],
    line_df: null,
    spread: Math.sqrt(prior.between ** 2 + prior.within ** 2),
    between: prior.between,
    own_slope: prior.own_slope,
    within: prior.within,
    step_Hz: S.step_Hz,
    spread_df: 2 * prior.spread_worth,
    tail_df: S.tail_df,
    dose: null,
    night: 0,
    shares: { honest: 1, never_retuned: 0, anything: 0, second_crowd: 0, feet: 0, slips: 0 },
    second_crowd: null,
    contributors: 0,
    votes: 0,
    tunes: 0,
    rejected: 0,
    may_copy: 0,
    density_range: null,
  };
}
