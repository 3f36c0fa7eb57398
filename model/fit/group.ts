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
  /** Heat class, kW. */
  heat_kW: number;
  end: End;
  /** Moist air density at the intake, kg/m³. */
  density_kg_m3: number;
  /** Pump pulses per second, Hz. */
  pump_Hz: number;
  /** Combustion fan speed, rpm. */
  fan_rpm: number;
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
  /** Covariance of (intercept, slope) behind the mean band: Σ of outer products of left-one-contributor-out deviations. */
  covariance: [[number, number], [number, number]];
  /** Covariance of (intercept, slope) under the model itself (prior and residual spread); a floor for small groups. */
  posterior: [[number, number], [number, number]];
  /** Σd⁴ of the left-out deviations d = δa + δb·x as a polynomial in x: coefficients of 1, x, x², x³, x⁴ (for the degrees of freedom). */
  fourth_moments: [number, number, number, number, number];
  /** Standard deviation of ln(pump rate per fan speed) between heaters. */
  spread: number;
  /** Degrees of freedom of the spread. */
  spread_df: number;
  /** Contributors with at least one row kept, and rows kept. */
  contributors: number;
  tunes: number;
  /** Rows set aside by the fit. */
  rejected: number;
  /** Lowest and highest density among the rows kept, kg/m³; null when nothing but the prior speaks. */
  density_range: [number, number] | null;
}

/** Everything the atlas publishes as one immutable version. */
export interface PublishedFit {
  /** Day and running number, e.g. "2026-11-25.3"; "prior" before the first tune. */
  version: string;
  /** ISO 8601 time of publication, UTC; null for "prior". */
  published_at: string | null;
  /** Version of the code that made it. */
  code: string;
  /** SHA-256 over the rows in canonical order, hex; null for "prior". */
  rows_sha256: string | null;
  /** True when the data are an invented demonstration. */
  demo: boolean;
  groups: GroupFit[];
}
