import { PUMP_STEP_Hz } from "../heater.ts";
import { ln } from "../numerics/ln-exp.ts";

/**
 * Every number of the estimator that was chosen and not fitted, with its origin. Published with each version of the
 * fit; the sensitivity of the results to each is part of the study's report.
 */
export const SETTINGS = {
  /** ln(Hz per 1,000 rpm) at density 1.225 by end, and its sd: common practice, no source (1.15 Hz at 1,700 rpm, 4.3 Hz at 4,400 rpm). */
  level_low: ln(1.15 / 1.7),
  level_high: ln(4.3 / 4.4),
  level_sd: 0.3,
  /** Slope on ln density: 1 by the fan law at an equal burn, a little less in crowds; our own value. */
  slope: 0.92,
  slope_sd: 0.1,
  /** Sd of ln between heaters, between tunes of one heater beyond the pump's steps, and of heaters' own slopes: common practice, no source. Heater sizes differ as heaters do. */
  between: 0.08,
  within: 0.05,
  own_slope: 0.05,
  /** Any belief about a spread or a share is worth so many (scaled inverse χ², Dirichlet; Gelman et al. 2013, ch. 3): our own value. */
  worth: 8,
  /** Degrees of freedom of Student's t between heaters, median of the belief: our own value. */
  tail_df: 20,
  /** Sd of a log-odds or the logarithm of degrees of freedom of which little is known: weakly informative, as in Gelman et al. 2008; our own value. */
  weak_sd: 2,
  /** Expected share of each kind of mistake: our own value. */
  mistake_share: 0.03,
  /** A mistaken row may lie anywhere in so wide a range of ln: a factor of e^±1.2, what the door lets through. */
  mistake_range: 2.4,
  /** Rise of the log-odds of an elevation in feet over one sd of air, and its sd: the higher the stated site, the fewer people really tune there; our own value. */
  feet_rise: 1,
  /** Intraclass correlation of owners at one place in one month (Kish 1965), and of owners who may have copied the atlas's suggestion: our own values. */
  place_correlation: 0.25,
  copy_correlation: 0.05,
  /** Sd of ln density that even a complete record leaves open: instruments (1 °C and 3 hPa are 0.5 %, a wind-blown intake as much). */
  density_sd: 0.01,
  /** Sd of ln density that all nights of unstated temperature share against the standard atmosphere: 6 K, our own value. */
  night_sd: 0.02,
  /** Steps in which a pump is set: common practice, no source. */
  step_Hz: PUMP_STEP_Hz,
  /** CO of a good tune, ppm, and how far from the best in ln a doubling means: common practice, no source. */
  co_ppm: 30,
  co_doubling: 0.1,
} as const;

/** Numbers of the computation: finer ones change no published digit that matters (a test says which). */
export const NUMERICS = {
  /** Nodes of the quadrature over a heater's own level: spacing for one row and reach, in standard deviations. */
  node_step: 0.4,
  node_reach: 5.6,
  /** Of one owner's rows so many are taken at most. */
  rows_of_one: 8,
  /** Starts are searched for, models compared, and their curvature looked at, among so many owners at most. */
  part: 2000,
} as const;

/** Density of a mistaken row: anywhere in the range. */
export const MISTAKEN = 1 / SETTINGS.mistake_range;
