import type { End } from "../end.ts";

/** Levels at which bands are printed and published. */
export const BAND_LEVELS = [0.5, 0.8, 0.9, 0.95, 0.99] as const;

/**
 * The published fit of one heater size and end:
 * ln(pump_Hz ÷ (fan_rpm/1000)) = intercept + slope · ln(density/1.225).
 * A few dozen numbers, enough to draw every band at any density without the rows.
 */
export interface GroupFit {
  heat_kW: number;
  end: End;
  intercept: number;
  slope: number;
  /** Covariance of (intercept, slope): inverse observed information, and what the averaged models disagree by. */
  covariance: [[number, number], [number, number]];
  /** Degrees of freedom of the mean bands; null where all is belief. */
  line_df: number | null;
  /** Standard deviation in ln of one tune of one heater at sea-level density, whatever its dose, beside the pump's steps: all of the following together. */
  spread: number;
  /** Standard deviations in ln: between heaters of one dose, of their own slopes, between tunes of one heater beyond the pump's steps. */
  between: number;
  own_slope: number;
  within: number;
  /** Root mean square of the steps in which the pumps were set, Hz. */
  step_Hz: number;
  /** Degrees of freedom by which the spread is known, and of Student's t between heaters. */
  spread_df: number;
  tail_df: number;
  /** Mean and standard deviation of ln dose (µL) between heaters, and the mean's (co)variances with itself, intercept and slope; null where nobody stated one. */
  dose: { ln_uL: number; ln_sd: number; covariance: [number, number, number] } | null;
  /** Mean ln density of nights without a temperature against the standard atmosphere. */
  night: number;
  /** Mixing proportions, of owners: honest, never re-tuned, anything, second crowd; and of honest owners' rows: in feet, other slips. */
  shares: {
    honest: number;
    never_retuned: number;
    anything: number;
    second_crowd: number;
    feet: number;
    slips: number;
  };
  /** The crowd beside the honest one: probability that there is one, its shift in ln at sea-level density, change of the shift per unit of ln density, its sd. */
  second_crowd: { probability: number; shift: number; tilt: number; sd: number } | null;
  /** Owners, their weights' sum, rows that count and rows set aside. */
  contributors: number;
  votes: number;
  tunes: number;
  rejected: number;
  /** Votes of owners who may have copied the atlas, as a share of all. */
  may_copy: number;
  /** Lowest and highest density among the rows that count, kg/m³; null when nothing but the prior speaks. */
  density_range: [number, number] | null;
}

/** Numbers that were chosen, not fitted, by name. */
export type FitSettings = Record<string, number>;

/** Everything the atlas publishes as one immutable version. */
export interface PublishedFit {
  /** Day and running number, e.g. "2026-11-25.3"; "prior" before the first tune. */
  version: string;
  /** ISO 8601 time of publication, UTC; null for "prior". */
  published_at: string | null;
  /** Version of the code that made it, and what tells one estimator from another: see `fingerprint.ts`. */
  code: string;
  estimator: string;
  /** Settings of the estimator that made it. */
  settings: FitSettings;
  /** Sum modulo 2²⁵⁶ of the SHA-256 of each row, hex; null for "prior". */
  rows_sha256: string | null;
  /** True when the data are an invented demonstration. */
  demo: boolean;
  groups: GroupFit[];
  /** What a steward should look at; see {@link Alarm}. */
  alarms: Alarm[];
}

/** A test that the published fit failed: something changed that honest tunes seldom change so. */
export interface Alarm {
  code: "drift" | "second_crowd" | "copies" | "curvature";
  heat_kW: number;
  end: End;
  sentence: string;
  /** The figure tested, and the threshold it has crossed. */
  value: number;
  threshold: number;
}
