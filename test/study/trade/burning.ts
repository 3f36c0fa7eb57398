import { between, type Seeded } from "./draws.ts";

/** How heaters burn and differ: what is true of all of a run. Ranges are common practice, no source. */

export type Doses = "one size" | "two sizes" | "lognormal";

/** What is true of all heaters of this run; drawn from ranges of the trade (common practice, no source). */
export interface Burning {
  /** The best excess air grows with density to this power: a burner may mix a little worse or better in thin air. */
  airInThinAir: number;
  /** How much of the fall of best excess air from low to high power also holds for fans set off the usual speed. */
  airByFan: number;
  excessAir_sd: number;
  /** Of a burner's deviation, what its two ends share. */
  ends_share: number;
  dose_sd: number;
  fan_sd: number;
  /** Most that soot and a worn fan wheel take from the air, as a share. */
  wear: number;
  /** From tune to tune of one heater: wind at the exhaust, winter fuel, the battery. */
  again_sd: number;
  /** Share of owners who raise the fan in thin air, and how far: 1 would keep the mass of air. */
  raisesFan: number;
  raise: number;
  doses: Doses;
}

export const drawBurning = (random: Seeded, doses: Doses): Burning => ({
  airInThinAir: between(random, [-0.05, 0.1]),
  airByFan: between(random, [0.2, 0.7]),
  excessAir_sd: between(random, [0.045, 0.075]),
  ends_share: between(random, [0.3, 0.7]),
  dose_sd: between(random, [0.025, 0.05]),
  fan_sd: between(random, [0.02, 0.045]),
  wear: between(random, [0.02, 0.08]),
  again_sd: between(random, [0.012, 0.025]),
  raisesFan: between(random, [0.15, 0.5]),
  raise: between(random, [0.3, 0.7]),
  doses,
});

/** Spread of ln dose where pumps come in any size. */
export const ANY_DOSE_SD = 0.15;
