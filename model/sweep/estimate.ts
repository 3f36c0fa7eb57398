import type { Band } from "../fit/bands.ts";
import { BOWLS, ln_rise } from "./bowl.ts";
import type { Draw, Posterior } from "./posterior.ts";

/** The minimum as far as it is known. */
export interface MinimumEstimate {
  minimum_Hz: number;
  /** Credible intervals at 80 and 95 %. */
  intervals_Hz: Band[];
}

const LEVELS = [0.8, 0.95] as const;

/** The middle of the posterior: half of it on either side. */
export function estimateOf({ places_Hz, probability }: Posterior): MinimumEstimate {
  const at = (share: number) => quantile(places_Hz, probability, share);
  return {
    minimum_Hz: at(0.5),
    intervals_Hz: LEVELS.map((level) => ({
      level,
      lower: at((1 - level) / 2),
      upper: at((1 + level) / 2),
    })),
  };
}

/** Quantile of an even grid, each cell's probability spread evenly over it. */
function quantile(places_Hz: Float64Array, probability: Float64Array, share: number): number {
  const width = (places_Hz[1] as number) - (places_Hz[0] as number);
  let sum = 0;
  for (let i = 0; i < places_Hz.length; i++) {
    const p = probability[i] as number;
    if (sum + p >= share) return (places_Hz[i] as number) + width * ((share - sum) / p - 0.5);
    sum += p;
  }
  return places_Hz.at(-1) as number;
}

/** Probability that the minimum lies between two rates. */
export function between({ places_Hz, probability }: Posterior, from: number, to: number): number {
  const width = (places_Hz[1] as number) - (places_Hz[0] as number);
  return places_Hz.reduce((sum, m, i) => {
    const inside = Math.min(to, m + width / 2) - Math.max(from, m - width / 2);
    return inside > 0 ? sum + (probability[i] as number) * Math.min(1, inside / width) : sum;
  }, 0);
}

/** CO at a rate if this draw is the truth, ln ppm. */
export function ln_coAt({ bowl, minimum_Hz, ln_lowest }: Draw, pump_Hz: number): number {
  const shape = BOWLS[bowl] as (typeof BOWLS)[number];
  return ln_lowest + ln_rise(shape, Math.log(pump_Hz / minimum_Hz));
}

/** CO expected at a rate, ppm; draws that run off the meter's scale count as its end. */
export function expected_ppm(draws: readonly Draw[], pump_Hz: number, ceiling_ppm: number): number {
  const sum = draws.reduce((s, d) => s + Math.min(ceiling_ppm, Math.exp(ln_coAt(d, pump_Hz))), 0);
  return sum / draws.length;
}
