import type { End, GroupFit } from "./group.ts";

/**
 * What physics and common practice say before the first tune.
 * At an equal burn pump rate ∝ fan speed × density, so the slope would be 1 for perfect re-tuning; a crowd
 * shows a little less. The rest are our own working values, drawn from plausible settings
 * (low end 0.8–2.5 Hz at 1,200–2,400 rpm, high end 3–7 Hz at 3,500–5,000 rpm: common practice, no source).
 */
export const PRIOR = {
  /** Mean and standard deviation of ln(Hz per 1,000 rpm) at density 1.225, by end. */
  intercept: { low: Math.log(1.15 / 1.7), high: Math.log(4.3 / 4.4) },
  intercept_sd: 0.3,
  slope: 0.95,
  slope_sd: 0.15,
  slope_bounds: [0.5, 1.2] as const,
  /** Spread between heaters, in ln, and how many observations that belief is worth. */
  spread: 0.11,
  spread_df: 4,
} as const;

/**
 * The fit of a class nobody has tuned yet: the prior predictive, with wide bands.
 * It takes the place of a published group, so every view and answer works from none.
 */
export function priorGroup(heat_kW: number, end: End): GroupFit {
  const posterior: GroupFit["posterior"] = [
    [PRIOR.intercept_sd ** 2, 0],
    [0, PRIOR.slope_sd ** 2],
  ];
  return {
    heat_kW,
    end,
    intercept: PRIOR.intercept[end],
    slope: PRIOR.slope,
    covariance: [
      [0, 0],
      [0, 0],
    ],
    posterior,
    fourth_moments: [0, 0, 0, 0, 0],
    spread: PRIOR.spread,
    spread_df: PRIOR.spread_df,
    contributors: 0,
    tunes: 0,
    rejected: 0,
    density_range: null,
  };
}
