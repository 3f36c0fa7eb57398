import { usualFans } from "../heater.ts";
import { exp, ln } from "../numerics/ln-exp.ts";
import { studentFactor } from "../numerics/student.ts";
import { BAND_LEVELS, type GroupFit } from "./group.ts";
import { stepVariance, xOf } from "./row.ts";

/** An interval that should hold the truth with probability `level`. */
export interface Band {
  level: number;
  lower: number;
  upper: number;
}

export interface BandOptions {
  /** Standard deviation of the query's own ln density (unknown temperature, vague elevation). */
  ln_density_sd?: number;
  /** Fuel per pulse of the heater asked about, µL. */
  dose_uL?: number | undefined;
  mean_levels?: readonly number[];
  new_heater_levels?: readonly number[];
}

/** Expected pump rate per fan speed at one density, Hz per 1,000 rpm, with its bands. */
export interface Bands {
  pump_Hz_per_krpm: number;
  /** Confidence bands of the average heater's tune. */
  mean_bands: Band[];
  /** Prediction bands for one more heater. */
  new_heater_bands: Band[];
}

/** Student's t in ln: variance at infinite degrees of freedom, and how many there are. */
export interface Student {
  centre: number;
  variance: number;
  df: number;
}

/** What of a published group the bands are made from. */
export type Line = Pick<
  GroupFit,
  | "heat_kW"
  | "end"
  | "intercept"
  | "slope"
  | "covariance"
  | "line_df"
  | "between"
  | "own_slope"
  | "within"
  | "step_Hz"
  | "spread_df"
  | "tail_df"
  | "dose"
>;

/**
 * Bands of one heater size and end at a density. Both widen with the uncertainty of the query's density through the
 * slope; a known dose moves them and narrows those of a new heater.
 * @throws RangeError when the density is not a positive number
 */
export function bandsAt(group: Line, density_kg_m3: number, options: BandOptions = {}): Bands {
  if (!(Number.isFinite(density_kg_m3) && density_kg_m3 > 0)) {
    throw new RangeError(`density_kg_m3 must be a positive number, not ${density_kg_m3}.`);
  }
  const {
    ln_density_sd = 0,
    dose_uL,
    mean_levels = BAND_LEVELS,
    new_heater_levels = BAND_LEVELS,
  } = options;
  const x = xOf(density_kg_m3);
  const query = (group.slope * ln_density_sd) ** 2;
  const mean = averageAt(group, x, dose_uL);
  const heater = newHeaterAt(group, x, dose_uL);
  return {
    pump_Hz_per_krpm: exp(mean.centre),
    mean_bands: mean_levels.map((level) => bandOf(withKnown(mean, query), level)),
    new_heater_bands: new_heater_levels.map((level) => bandOf(withKnown(heater, query), level)),
  };
}

/** The average heater's tune at x = ln(density/1.225), of one dose if it is known. */
export function averageAt(group: Line, x: number, dose_uL?: number): Student {
  const [[aa, ab], [, bb]] = group.covariance;
  const df = group.line_df ?? Number.POSITIVE_INFINITY;
  const line = {
    centre: group.intercept + group.slope * x,
    variance: aa + x * (2 * ab + x * bb),
    df,
  };
  if (dose_uL === undefined || !group.dose) return line;
  const [dd, ad, bd] = group.dose.covariance;
  return {
    centre: line.centre + group.dose.ln_uL - ln(dose_uL),
    variance: line.variance + dd + 2 * (ad + x * bd),
    df,
  };
}

/** Variance between heaters at x: of one dose, or of all doses. */
export function heaterVariance(group: Line, x: number, dose_uL?: number): number {
  const doses = dose_uL === undefined && group.dose ? group.dose.ln_sd ** 2 : 0;
  return group.between ** 2 + doses + (group.own_slope * x) ** 2;
}

/** Variance between tunes of one heater where they lie about `y` = ln(Hz per 1,000 rpm): a step counts the more the lower the rate, here that of the usual fan. */
export function withinVariance({ heat_kW, end, within, step_Hz }: Line, y: number): number {
  const { low_fan_rpm, high_fan_rpm } = usualFans(heat_kW);
  const fan_rpm = end === "low" ? low_fan_rpm : high_fan_rpm;
  return within ** 2 + stepVariance((exp(y) * fan_rpm) / 1000, step_Hz);
}

/**
 * One more heater's tune at x. The spread's own uncertainty and the heavy tails between heaters both make the normal
 * distribution a Student's t; together 1/df = 1/n + 1/ν, with ν such that the kurtosis of the sum is matched.
 */
export function newHeaterAt(group: Line, x: number, dose_uL?: number): Student {
  const mean = averageAt(group, x, dose_uL);
  const between = heaterVariance(group, x, dose_uL);
  const variance = mean.variance + between + withinVariance(group, mean.centre);
  const tail = tailFreedom(group, group.between ** 2 / variance);
  return {
    centre: mean.centre,
    variance: (variance * (tail - 2)) / tail,
    df: 1 / (1 / group.spread_df + 1 / tail),
  };
}

/** Degrees of freedom of a sum of which so large a share of the variance is Student's t: its excess kurtosis, 6/(ν − 4), falls with the share's square. */
export function tailFreedom({ tail_df }: Line, share: number): number {
  return 4 + (tail_df - 4) / share ** 2;
}

/** Half-width in ln of a band. */
export function halfWidth({ variance, df }: Student, level: number): number {
  return studentFactor(level, df) * Math.sqrt(variance);
}

function bandOf(student: Student, level: number): Band {
  const half = halfWidth(student, level);
  return { level, lower: exp(student.centre - half), upper: exp(student.centre + half) };
}

/** Degrees of freedom are known to no better than a part in a thousand; so few of them are worth remembering. */
const DF_STEPS = 1024;

/** Adds a variance that is known; degrees of freedom of the sum by Satterthwaite (1946). */
function withKnown({ centre, variance, df }: Student, known: number): Student {
  if (known === 0 || df === Number.POSITIVE_INFINITY)
    return { centre, variance: variance + known, df };
  const sum = variance + known;
  const together = df * (sum / variance) ** 2;
  return { centre, variance: sum, df: exp(Math.round(ln(together) * DF_STEPS) / DF_STEPS) };
}
