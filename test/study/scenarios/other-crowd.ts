import { crowd, type Reporting, type SimulatedRow, USUAL } from "../crowd.ts";
import { FIXED, type Population, type Seeded } from "../population.ts";

/** Simulated by other means: heavier tails, own slopes, half the temperatures unknown, unequal numbers of tunes. */
export const OTHER: Population = { ...FIXED, between_df: 5, slope_sd: 0.1 };
const REPORTING: Reporting = { ...USUAL, tunes: "geometric", no_temperature: 0.5 };

export function otherCrowd(random: Seeded, contributors: number): SimulatedRow[] {
  return crowd(random, OTHER, contributors, REPORTING);
}
