import { type Seeded, seeded } from "../../seed-demo/random.ts";

export { type Seeded, seeded };

/**
 * A population of heaters that tune along ln(Hz per 1,000 rpm) = intercept + slope·x, x = ln(density/1.225).
 * All invented; near what the physics prior expects.
 */
export interface Population {
  intercept: number;
  slope: number;
  /** Standard deviation between heaters, and between tunes of one heater, in ln. */
  between: number;
  within: number;
  /** Standard deviation of the slope between heaters. */
  slope_sd: number;
  /** Degrees of freedom of Student's t between heaters and within one; infinite for the normal distribution. */
  between_df: number;
  within_df: number;
  /** Every second heater's spread is this many times the other's; 1 for equal care. */
  careless: number;
}

/** The same truth in every run. */
export const FIXED: Population = {
  intercept: Math.log(0.66),
  slope: 0.85,
  between: 0.08,
  within: 0.05,
  slope_sd: 0,
  between_df: Number.POSITIVE_INFINITY,
  within_df: Number.POSITIVE_INFINITY,
  careless: 1,
};

const SLOPE_WITHIN = [0.55, 1.18] as const;

/** A truth drawn from what is believed before the first tune, one for each run. */
export function drawnPopulation(random: Seeded): Population {
  let slope = Number.NaN;
  while (!(slope >= SLOPE_WITHIN[0] && slope <= SLOPE_WITHIN[1])) {
    slope = 0.92 + 0.1 * random.normal();
  }
  return {
    ...FIXED,
    slope,
    intercept: Math.log(1.15 / 1.7) + 0.2 * random.normal(),
    between: 0.08 * Math.exp(0.25 * random.normal()),
  };
}

/** One heater's own deviation: of its intercept, its slope, and how carefully its owner tunes. */
export interface Heater {
  own: number;
  slope: number;
  care: number;
}

export function heaterOf(random: Seeded, p: Population): Heater {
  const care = p.careless !== 1 && random.uniform() < 0.5 ? p.careless : 1;
  return {
    own: care * p.between * deviate(random, p.between_df),
    slope: p.slope + (p.slope_sd > 0 ? p.slope_sd * random.normal() : 0),
    care,
  };
}

/** ln(Hz per 1,000 rpm) that this heater's owner ends at in air of x = ln(density/1.225). */
export function tuned(random: Seeded, p: Population, heater: Heater, x: number): number {
  const noise = heater.care * p.within * deviate(random, p.within_df);
  return p.intercept + heater.slope * x + heater.own + noise;
}

/** The average tune at x: what the mean band should hold. */
export function trueMean(p: Population, x: number): number {
  return p.intercept + p.slope * x;
}

/** A deviate of standard deviation 1: normal, or Student's t of so many whole degrees of freedom above 2. */
function deviate({ normal }: Seeded, df: number): number {
  const z = normal();
  if (df === Number.POSITIVE_INFINITY) return z;
  let chiSquare = 0;
  for (let k = 0; k < df; k++) chiSquare += normal() ** 2;
  return z * Math.sqrt((df - 2) / chiSquare);
}
