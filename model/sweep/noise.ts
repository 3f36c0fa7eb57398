import type { Sweep } from "./setup.ts";

/** A flame and the air around the exhaust waver by this share of the reading (our own working value). */
const WAVER = 0.055;
/** What is left at zero, ppm. */
const LEAST_ppm = 0.4;

/** Standard deviation of a settled reading: the exhaust's wavering, and half a step of the meter, since less is not seen to move. */
export function noise_ppm({ meter }: Pick<Sweep, "meter">, co_ppm: number): number {
  return Math.hypot(WAVER * co_ppm, LEAST_ppm, meter.resolution_ppm / 2);
}

/** More than expected by this factor, and by the noise twice over, is poor (our own working values). */
const POOR = 1.5;
const NOISES = 2;

/** Above this a settled reading is not what was expected, ppm. */
export function poorAbove_ppm(sweep: Pick<Sweep, "meter">, expected_ppm: number): number {
  const seen = Math.max(expected_ppm, sweep.meter.floor_ppm);
  return Math.max(POOR * seen, seen + NOISES * noise_ppm(sweep, seen));
}
