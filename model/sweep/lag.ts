import { noise_ppm } from "./noise.ts";
import type { Sweep } from "./setup.ts";
import type { Stay } from "./stays.ts";

/** The meter's time constant as far as it is known. */
export interface Lag {
  lag_s: number;
  /** Standard deviation of its logarithm. */
  ln_sd: number;
}

/** How far a time constant usually is from what is assumed, in ln (our own working value). */
const LN_SD_ASSUMED = 0.45;
const LAGS_s = Array.from({ length: 25 }, (_, i) => 5 * 1.14 ** i);

/**
 * Time constant from the readings themselves: within a stay the meter goes from what it showed to an
 * unknown level along an exponential. Two looks at a stay with a large change tell most.
 */
export function lagOf(sweep: Sweep, stays: readonly Stay[]): Lag {
  const curves = stays
    .map((stay) => ({ ...stay, looks: stay.looks.filter(({ beyond }) => !beyond) }))
    .filter(({ looks, from_sd_ppm }) => looks.length > 1 && from_sd_ppm === 0);
  const logs = LAGS_s.map((lag_s) => {
    const prior = Math.log(lag_s / sweep.meter.lag_s) / LN_SD_ASSUMED;
    return curves.reduce((sum, stay) => sum + misfit(sweep, stay, lag_s), prior * prior);
  });
  const least = Math.min(...logs);
  const weights = logs.map((l) => Math.exp((least - l) / 2));
  const all = weights.reduce((a, b) => a + b, 0);
  const mean =
    LAGS_s.reduce((sum, lag, i) => sum + Math.log(lag) * (weights[i] as number), 0) / all;
  const variance =
    LAGS_s.reduce((s, lag, i) => s + (Math.log(lag) - mean) ** 2 * (weights[i] as number), 0) / all;
  return { lag_s: Math.exp(mean), ln_sd: Math.max(0.08, Math.sqrt(variance)) };
}

/** Squared misfit of a stay's looks, in noise units, to the best level under this time constant. */
function misfit(sweep: Sweep, { from_ppm, looks }: Stay, lag_s: number): number {
  let up = 0;
  let down = 1e-9;
  const terms = looks.map(({ after_s, ppm }) => {
    const left = Math.exp(-after_s / lag_s);
    const weight = 1 / noise_ppm(sweep, ppm) ** 2;
    up += weight * (1 - left) * (ppm - from_ppm * left);
    down += weight * (1 - left) ** 2;
    return { left, weight, ppm };
  });
  const level = Math.max(0, up / down);
  return terms.reduce(
    (sum, { left, weight, ppm }) => sum + weight * (ppm - level + (level - from_ppm) * left) ** 2,
    0,
  );
}
