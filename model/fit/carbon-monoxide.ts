import type { FitRow } from "./row.ts";
import { SETTINGS } from "./settings.ts";

/**
 * By row: variance of ln(pump rate) because the tune was not at the lowest CO. Near its minimum CO rises with the
 * square of the distance, so an excess of so many times the usual CO is a distance of its root, until it says no more than
 * common practice does: common practice, no source. "Below 100 ppm" counts as half of it (Hornung & Reed 1990), a missing CO as the mean of the stated ones.
 */
export function carbonMonoxideVariances(rows: readonly FitRow[]): Float64Array {
  const variance = SETTINGS.co_doubling ** 2;
  const most = SETTINGS.level_sd ** 2 / variance;
  const excess = Float64Array.from(rows, (row) => Math.min(most, excessOf(row)));
  let [stated, sum] = [0, 0];
  for (const v of excess) {
    if (Number.isNaN(v)) continue;
    stated++;
    sum += v;
  }
  const mean = stated > 0 ? sum / stated : 0;
  return excess.map((v) => variance * (Number.isNaN(v) ? mean : v));
}

function excessOf({ co_ppm, co_below_ppm }: FitRow): number {
  const ppm = co_ppm ?? (co_below_ppm === undefined ? Number.NaN : co_below_ppm / 2);
  return Math.max(0, ppm / SETTINGS.co_ppm - 1);
}
