import type { End } from "../fit/group.ts";
import { expected_ppm } from "./estimate.ts";
import { noise_ppm } from "./noise.ts";
import type { Posterior } from "./posterior.ts";
import type { Sweep } from "./setup.ts";

/** The flat bottom of the bowl and where in it to sit. */
export interface Basin {
  lower_Hz: number;
  upper_Hz: number;
  sit_Hz: number;
  sit_ppm: number;
  lowest_ppm: number;
}

/** Where to sit costs no more CO than this above the lowest, however noisy the meter (our own working value). */
const SIT_COST_ppm = 1;
/** From the rich edge at the low end (flame stability), lean of the centre at the high end (soot margin). */
const SIT_FROM_LEAN: Record<End, number> = { low: 0.75, high: 0.4 };

/** Over rates that may be recommended: those expected within the meter's noise of the lowest. */
export function basinOf(sweep: Sweep, { draws }: Posterior, rates: readonly number[]): Basin {
  const expected = rates.map((pump_Hz) => ({
    pump_Hz,
    ppm: expected_ppm(draws, pump_Hz, sweep.meter.ceiling_ppm),
  }));
  const best = expected.reduce((a, b) => (b.ppm < a.ppm ? b : a));
  const around = (cost: number) => {
    // Noisy expectations could leave holes: only the run of rates around the best counts.
    let first = expected.indexOf(best);
    let last = first;
    while (first > 0 && (expected[first - 1]?.ppm as number) <= best.ppm + cost) first--;
    while (last + 1 < expected.length && (expected[last + 1]?.ppm as number) <= best.ppm + cost)
      last++;
    return expected.slice(first, last + 1);
  };
  const noise = noise_ppm(sweep, best.ppm);
  const flat = around(noise);
  const seats = around(Math.min(noise, SIT_COST_ppm));
  const seat = seats[Math.round(SIT_FROM_LEAN[sweep.end] * (seats.length - 1))] ?? best;
  return {
    lower_Hz: flat[0]?.pump_Hz as number,
    upper_Hz: flat.at(-1)?.pump_Hz as number,
    sit_Hz: seat.pump_Hz,
    sit_ppm: seat.ppm,
    lowest_ppm: best.ppm,
  };
}
