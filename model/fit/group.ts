/** One of the two ends of a heater's power range. */
export type End = "low" | "high";
export const ENDS: readonly End[] = ["low", "high"];

/** Levels at which bands are printed and published. */
export const BAND_LEVELS = [0.5, 0.8, 0.9, 0.95, 0.99] as const;

/** One end of one accepted tune, as the fit sees it. */
export interface FitRow {
  /** Whatever names the row to its reader: a tune's id, or the row number in a file. */
  row: string | number;
  /** Pseudonym of the contributor: all rows of one contributor share one vote. */
  contributor: string;
  /** H3 cell of the site (any resolution), or any other name of a place; contributors of one place share votes. */
  cell?: string | undefined;
  /** When it was tuned, or shared, "YYYY-MM". */
  month?: string | undefined;
  /** Heat class, kW. */
  heat_kW: number;
  end: End;
  /** Moist air density at the intake, kg/m³. */
  density_kg_m3: number;
  /** Standard deviation of its logarithm: no temperature, a vague elevation; 0 when all is given. */
  ln_density_sd?: number | undefined;
  /** Pump pulses per second, Hz. */
  pump_Hz: number;
  /** Combustion fan speed, rpm. */
  fan_rpm: number;
  /** Final CO at this end, ppm. */
  co_ppm?: number | undefined;
}

/** A row the fit set aside, with a reason a person can act on. */
export interface RejectedRow {
  row: string | number;
  heat_kW: number;
  end: End;
  reason: string;
}

/**
 * The published fit of one heat class and end:
 * ln(pump_Hz ÷ (fan_rpm/1000)) = intercept + slope · ln(density/1.225).
 * A few dozen numbers, enough to draw every band at any density without the rows.
 */
export interface GroupFit {
  heat_kW: number;
  end: End;
  intercept: number;
  slope: number;
  /** Covariance of (intercept, slope): mostly from how contributors' folds scatter. */
  covariance: [[number, number], [number, number]];
  /** Degrees of freedom by which the covariance is known; null where it is a belief. */
  line_df: number | null;
  /** Standard deviations of intercept and slope for rows that agree on something untrue and cannot be told from honest ones. */
  bias: { intercept: number; slope: number };
  /** Slope of the rows less that of contributors' own steps between elevations, in standard errors. */
  against_steps: number;
  /** Spread between heaters in ln(pump rate per fan speed) at sea-level density: scale of Student's t. */
  spread: number;
  /** What heaters' own slopes add away from there: scale² = spread² + (spread_per_x · ln(density/1.225))². */
  spread_per_x: number;
  /** Degrees of freedom by which the spread is known. */
  spread_df: number;
  /** Degrees of freedom of the scatter between heaters; null for the normal distribution. */
  tail_df: number | null;
  /** Contributors and the votes they have together, places and months with many sharing √ of theirs. */
  contributors: number;
  votes: number;
  /** Rows kept, and rows set aside. */
  tunes: number;
  rejected: number;
  /** What the votes are taken to be: honest tunes, elevations in the wrong unit, never re-tuned, anything else. */
  shares: { honest: number; elevation_unit: number; never_retuned: number; other: number };
  /** A second crowd beside the first that would explain the residuals best: log-likelihood gained, shift in ln, share. */
  second_population: { gain: number; shift: number; share: number };
  /** Votes lost to doubt about the air (no temperature, vague elevation) and to a final CO above the usual. */
  discounts: { air: number; co: number };
  /** New-heater bands against the rows kept, each judged without its own fold of contributors: claimed and observed share. */
  held: { level: number; observed: number }[];
  /** Lowest and highest density among the rows kept, kg/m³; null when nothing but the prior speaks. */
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
  /** Version of the code that made it. */
  code: string;
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
  code: "drift" | "many_new_keys" | "slope_against_own_steps" | "two_populations";
  heat_kW: number;
  end: End;
  sentence: string;
  /** The figure tested, and the threshold that simulated honest crowds cross once in a hundred. */
  value: number;
  threshold: number;
}
