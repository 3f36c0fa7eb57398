import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
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

/** Below so many contributors the mean band is never narrower than the model's own posterior. */
const POSTERIOR_FLOOR_CONTRIBUTORS = 100;

/** A variance with the degrees of freedom it is known by. */
interface Variance {
  value: number;
  df: number;
}

/**
 * Bands of one heat class and end at a density. Both widen with the uncertainty of the query's density
 * through the slope. Degrees of freedom of a sum of variances by Satterthwaite (1946).
 * @throws RangeError when the density is not a positive number
 */
export function bandsAt(group: GroupFit, density_kg_m3: number, options: BandOptions = {}): Bands {
  if (!(Number.isFinite(density_kg_m3) && density_kg_m3 > 0)) {
    throw new RangeError(`density_kg_m3 must be a positive number, not ${density_kg_m3}.`);
  }
  const { ln_density_sd = 0, mean_levels = BAND_LEVELS, new_heater_levels = BAND_LEVELS } = options;
  const x = Math.log(density_kg_m3 / STANDARD_DENSITY_kg_m3);
  const centre = group.intercept + group.slope * x;
  const query = { value: (group.slope * ln_density_sd) ** 2, df: Number.POSITIVE_INFINITY };
  const { average, another } = variances(group, x);
  const mean = sum([average, query]);
  const heater = sum([another, query]);
  return {
    pump_Hz_per_krpm: Math.exp(centre),
    mean_bands: mean_levels.map((level) => band(level, centre, mean)),
    new_heater_bands: new_heater_levels.map((level) => band(level, centre, heater)),
  };
}

function band(level: number, centre: number, { value, df }: Variance): Band {
  const half = studentFactor(level, df) * Math.sqrt(value);
  return { level, lower: Math.exp(centre - half), upper: Math.exp(centre + half) };
}

/**
 * Variances at x = ln(density/1.225) of the average tune and of one more heater.
 *
 * The average's is Σd² over contributors left out one at a time, known by as many degrees of freedom as those
 * squares are spread over, (Σd²)²/Σd⁴ + 2; in small groups, where too few deviations exist to trust, not below the
 * posterior variance. That one scales with the spread, so both then rest on the same estimate and its degrees of
 * freedom, as in the textbook's prediction interval.
 */
function variances(group: GroupFit, x: number): { average: Variance; another: Variance } {
  const between = { value: group.spread ** 2, df: group.spread_df };
  const left = quadratic(group.covariance, x);
  const floor = quadratic(group.posterior, x);
  if (group.contributors >= POSTERIOR_FLOOR_CONTRIBUTORS || left >= floor) {
    const [f0, f1, f2, f3, f4] = group.fourth_moments;
    const fourth = f0 + x * (f1 + x * (f2 + x * (f3 + x * f4)));
    const concentration = fourth > 0 ? left ** 2 / fourth + 2 : group.spread_df;
    const average = { value: left, df: Math.min(concentration, group.spread_df) };
    return { average, another: sum([average, between]) };
  }
  if (group.contributors === 0) {
    // Nothing but the prior: its variance is a stated belief, not an estimate.
    const average = { value: floor, df: Number.POSITIVE_INFINITY };
    return { average, another: sum([average, between]) };
  }
  const average = { value: floor, df: group.spread_df };
  return { average, another: { value: floor + between.value, df: group.spread_df } };
}

function quadratic([[aa, ab], [ba, bb]]: GroupFit["covariance"], x: number): number {
  return aa + x * (ab + ba + x * bb);
}

/** Degrees of freedom of a sum are known to no better than a part in a thousand; so few of them are worth remembering. */
const DF_STEPS = 1024;

/** Independent variances added up, by Satterthwaite's degrees of freedom. */
function sum(parts: readonly [Variance, Variance]): Variance {
  const [only, ...more] = parts.filter(({ value }) => value > 0);
  if (only === undefined || more.length === 0) return only ?? parts[0];
  const value = parts[0].value + parts[1].value;
  const df = value ** 2 / (parts[0].value ** 2 / parts[0].df + parts[1].value ** 2 / parts[1].df);
  return { value, df: Math.exp(Math.round(Math.log(df) * DF_STEPS) / DF_STEPS) };
}
