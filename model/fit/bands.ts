import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { exp, ln } from "../ln-exp.ts";
import { BAND_LEVELS, type GroupFit } from "./group.ts";
import { studentFactor } from "./student.ts";

/** An interval that should hold the truth with probability `level`. */
export interface Band {
  level: number;
  lower: number;
  upper: number;
}

export interface BandOptions {
  /** Standard deviation of the query's own ln density (unknown temperature, vague elevation). */
  ln_density_sd?: number;
  mean_levels?: readonly number[];
  new_heater_levels?: readonly number[];
}

/** Expected pump rate per fan speed at one density, Hz per 1,000 rpm, with its bands. */
export interface Bands {
  pump_Hz_per_krpm: number;
  /** Confidence bands of the average tune. */
  mean_bands: Band[];
  /** Prediction bands for one more heater. */
  new_heater_bands: Band[];
}

/** A variance with the degrees of freedom of the Student's t that goes with it. */
interface Variance {
  value: number;
  df: number;
}

/**
 * Bands of one heat class and end at a density. Both widen with the uncertainty of the query's density
 * through the slope.
 * @throws RangeError when the density is not a positive number
 */
export function bandsAt(group: GroupFit, density_kg_m3: number, options: BandOptions = {}): Bands {
  if (!(Number.isFinite(density_kg_m3) && density_kg_m3 > 0)) {
    throw new RangeError(`density_kg_m3 must be a positive number, not ${density_kg_m3}.`);
  }
  const { ln_density_sd = 0, mean_levels = BAND_LEVELS, new_heater_levels = BAND_LEVELS } = options;
  const x = ln(density_kg_m3 / STANDARD_DENSITY_kg_m3);
  const centre = group.intercept + group.slope * x;
  const query = (group.slope * ln_density_sd) ** 2;
  const mean = ofMean(group, x, query);
  const heater = ofNewHeater(group, x, query);
  return {
    pump_Hz_per_krpm: exp(centre),
    mean_bands: mean_levels.map((level) => band(level, centre, mean)),
    new_heater_bands: new_heater_levels.map((level) => band(level, centre, heater)),
  };
}

/** Half-width of the new-heater band in ln at x = ln(density/1.225). */
export function newHeaterHalf(group: GroupFit, x: number, level: number): number {
  return half(level, ofNewHeater(group, x, 0));
}

function band(level: number, centre: number, of: Variance): Band {
  const width = half(level, of);
  return { level, lower: exp(centre - width), upper: exp(centre + width) };
}

function half(level: number, { value, df }: Variance): number {
  return studentFactor(level, df) * Math.sqrt(value);
}

/** Variance of the average tune at x: of the line, and of what untold lies may have done to its slope. */
function ofMean(group: GroupFit, x: number, query: number): Variance {
  return withQuery(
    { value: lineVariance(group, x), df: group.line_df ?? Number.POSITIVE_INFINITY },
    query,
  );
}

/**
 * Variance of one more heater at x. Line and spread rest on the same estimate of the spread and share its degrees of
 * freedom, as in the textbook's prediction interval; heavier tails of the scatter itself add theirs, 1/df = 1/n + 1/ν.
 */
function ofNewHeater(group: GroupFit, x: number, query: number): Variance {
  const value = lineVariance(group, x) + group.spread ** 2 + (group.spread_per_x * x) ** 2;
  const df = 1 / (1 / group.spread_df + (group.tail_df === null ? 0 : 1 / group.tail_df));
  return withQuery({ value, df }, query);
}

/** Variance of the line at x, bias that cannot be told from honest tunes in it. */
export function lineVariance(
  { covariance: [[aa, ab], [ba, bb]], bias }: GroupFit,
  x: number,
): number {
  return aa + bias.intercept ** 2 + x * (ab + ba + x * (bb + bias.slope ** 2));
}

/** Degrees of freedom are known to no better than a part in a thousand; so few of them are worth remembering. */
const DF_STEPS = 1024;

/** Adds the query's own variance, which is known; degrees of freedom of the sum by Satterthwaite (1946). */
function withQuery({ value, df }: Variance, query: number): Variance {
  if (query === 0) return { value, df };
  const sum = value + query;
  const together = df * (sum / value) ** 2;
  return { value: sum, df: exp(Math.round(ln(together) * DF_STEPS) / DF_STEPS) };
}
