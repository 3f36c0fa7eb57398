import type { Level } from "./settling.ts";

/** How much of the exhaust reaches the meter is unknown: the lowest CO it will show, ln ppm (our own working values). */
const USUAL_LN = Math.log(18);
const LN_SD = 1;
const LEAST_LN = Math.log(1.5);
const MOST_LN = Math.log(400);
/** The lowest reading may be a noisy one. */
const ABOVE_READING = 3;
const ALMOST_NONE = 1e-4;

/** A grid of what the meter would show at the minimum, ln ppm, with its log prior. */
export class LnLevels {
  readonly at: Float64Array;
  readonly prior: Float64Array;
  readonly step: number;
  readonly count: number;

  constructor(from: number, to: number, count: number) {
    this.count = count;
    this.step = (to - from) / count;
    this.at = Float64Array.from({ length: count }, (_, i) => from + (i + 0.5) * this.step);
    this.prior = this.at.map((l) => -(((l - USUAL_LN) / LN_SD) ** 2) / 2);
  }

  /** A finer grid over the part that holds the mass. */
  around(mass: Float64Array, count: number): LnLevels {
    let first = 0;
    let last = this.count - 1;
    while (first < last && (mass[first] as number) < ALMOST_NONE) first++;
    while (last > first && (mass[last] as number) < ALMOST_NONE) last--;
    const from = (this.at[first] as number) - this.step;
    return new LnLevels(from, (this.at[last] as number) + this.step, count);
  }
}

/** All levels that these readings allow. */
export function levelsOver(levels: readonly Level[], count: number): LnLevels {
  const tops = levels
    .filter(({ beyond }) => beyond !== "ceiling")
    .map(({ ppm, ln_sd }) => Math.log(ppm) + ABOVE_READING * Math.min(0.5, ln_sd));
  return new LnLevels(LEAST_LN, Math.max(LEAST_LN + 0.5, Math.min(MOST_LN, ...tops)), count);
}
