import { USUAL_VOTES } from "./feet-for-metres.ts";
import {
  BIAS_AGAINST_STEPS,
  BIAS_PER_SHARE,
  FOLDS_AS_ONE,
  HARMLESS,
  HARMLESS_AGAINST_STEPS,
  LEVEL_BIAS,
  LEVEL_BIAS_HALF_AT,
  MODEL_FOLDS,
  UNTOLD_SLOPE,
} from "./fit-group.ts";
import { CORRECTED_FROM, LEFT_AS_VARIANCE, UNSTATED_DENSITY_SD } from "./flattening.ts";
import type { FitSettings } from "./group.ts";
import { MOST_BAND_SCATTER, STEPS_SURPRISE, TELLING_FEET } from "./joint.ts";
import { LONGEST_LEAP } from "./leap.ts";
import { MOST_FEET, SHARE_PRIOR } from "./mixture-of-rows.ts";
import { PRIOR } from "./prior.ts";
import { GROWTH_VOTES } from "./spread.ts";
import { KEPT_SHARE } from "./standing.ts";
import { NEAR_BANDS, OWN_SLOPE, START_SPREAD, START_STEP_SPREAD } from "./start-line.ts";
import { FOLDS } from "./tally.ts";
import { DOUBLES_AT, USUAL_CO_ppm } from "./voices.ts";

/** The numbers that were chosen, not fitted: published with every version. */
export const FIT_SETTINGS: FitSettings = {
  prior_intercept_low: PRIOR.intercept.low,
  prior_intercept_high: PRIOR.intercept.high,
  prior_intercept_sd: PRIOR.intercept_sd,
  prior_slope: PRIOR.slope,
  prior_slope_sd: PRIOR.slope_sd,
  least_slope: PRIOR.slope_bounds[0],
  most_slope: PRIOR.slope_bounds[1],
  prior_spread: PRIOR.spread,
  prior_spread_log_sd: PRIOR.spread_log_sd,
  start_spread: START_SPREAD,
  start_step_spread: START_STEP_SPREAD,
  own_slope_sd: OWN_SLOPE,
  prior_share_feet: SHARE_PRIOR.feet.share,
  prior_share_feet_votes: SHARE_PRIOR.feet.votes,
  prior_share_never_retuned: SHARE_PRIOR.never_retuned.share,
  prior_share_never_retuned_votes: SHARE_PRIOR.never_retuned.votes,
  prior_share_other: SHARE_PRIOR.background.share,
  prior_share_other_votes: SHARE_PRIOR.background.votes,
  most_feet: MOST_FEET,
  feet_votes_everywhere: USUAL_VOTES,
  feet_tell_from_spreads: TELLING_FEET,
  most_band_scatter: MOST_BAND_SCATTER,
  steps_surprise: STEPS_SURPRISE,
  near_bands: NEAR_BANDS,
  longest_leap_level: LONGEST_LEAP.a,
  longest_leap_slope: LONGEST_LEAP.c,
  model_folds: MODEL_FOLDS,
  folds_as_one: FOLDS_AS_ONE,
  untold_slope: UNTOLD_SLOPE,
  growth_votes: GROWTH_VOTES,
  unstated_density_sd: UNSTATED_DENSITY_SD,
  flattening_corrected_from: CORRECTED_FROM,
  flattening_left_as_variance: LEFT_AS_VARIANCE,
  level_bias: LEVEL_BIAS,
  level_bias_half_at: LEVEL_BIAS_HALF_AT,
  harmless_share: HARMLESS,
  bias_per_share: BIAS_PER_SHARE,
  bias_against_steps: BIAS_AGAINST_STEPS,
  harmless_against_steps: HARMLESS_AGAINST_STEPS,
  kept_share: KEPT_SHARE,
  usual_co_ppm: USUAL_CO_ppm,
  co_doubles_at: DOUBLES_AT,
  folds: FOLDS,
};
