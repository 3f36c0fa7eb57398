import { ln } from "../ln-exp.ts";
import type { End, GroupFit } from "./group.ts";

/**
 * What physics and common practice say before the first tune.
 * At an equal burn pump rate ∝ fan speed × density, so the slope would be 1 for perfect re-tuning; a crowd
 * shows a little less. The rest are our own working values, drawn from plausible settings
 * (low end 0.8–2.5 Hz at 1,200–2,400 rpm, high end 3–7 Hz at 3,500–5,000 rpm: common practice, no source).
 */
export const PRIOR = {
  /** Mean and standard deviation of ln(Hz per 1,000 rpm) at density 1.225, by end. */
  intercept: { low: ln(1.15 / 1.7), high: ln(4.3 / 4.4) },
  intercept_sd: 0.3,
  slope: 0.92,
  slope_sd: 0.1,
  slope_bounds: [0.5, 1.2] as const,
  /** Spread between heaters, in ln, and the standard deviation of its logarithm. */
  spread: 0.091,
  spread_log_sd: 0.18,
} as const;

/** What is believed of one heat class and end before its own rows: the above, or what other classes make of it. */
export interface GroupPrior {
  /** Intercept less PRIOR.intercept of the end, and its standard deviation. */
  above_reference: number;
  intercept_sd: number;
  slope: number;
  slope_sd: number;
  spread: number;
  spread_log_sd: number;
}

export const PHYSICS: GroupPrior = {
  above_reference: 0,
  intercept_sd: PRIOR.intercept_sd,
  slope: PRIOR.slope,
  slope_sd: PRIOR.slope_sd,
  spread: PRIOR.spread,
  spread_log_sd: PRIOR.spread_log_sd,
};

/** Degrees of freedom of a spread whose logarithm is known with that standard deviation. */
export function degreesOfFreedom(log_sd: number): number {
  return 1 / (2 * log_sd ** 2);
}

/**
 * The fit of a class nobody has tuned yet: the prior predictive, with wide bands.
 * It takes the place of a published group, so every view and answer works from none.
 */
export function priorGroup(heat_kW: number, end: End, prior: GroupPrior = PHYSICS): GroupFit {
  return {
    heat_kW,
    end,
    intercept: PRIOR.intercept[end] + prior.above_reference,
    slope: prior.slope,
    covariance: [
      [prior.intercept_sd ** 2, 0],
      [0, prior.slope_sd ** 2],
    ],
    line_df: null,
    bias: { intercept: 0, slope: 0 },
    against_steps: 0,
    spread: prior.spread,
    spread_per_x: 0,
    spread_df: degreesOfFreedom(prior.spread_log_sd),
    tail_df: null,
    contributors: 0,
    tunes: 0,
    rejected: 0,
    votes: 0,
    shares: { honest: 1, elevation_unit: 0, never_retuned: 0, other: 0 },
    second_population: { gain: 0, shift: 0, share: 0 },
    discounts: { air: 0, co: 0 },
    held: [],
    density_range: null,
  };
}
