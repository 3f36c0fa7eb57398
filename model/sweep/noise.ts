import type { Sweep } from "./setup.ts";

/** A flame and the air around the exhaust waver by this share of the reading (our own working value). */
export const WAVER = 0.055;
/** What is left at zero, ppm. */
const LEAST_ppm = 0.4;

/** Standard deviation of a settled reading: the exhaust's wavering and the meter's rounding. */
export function noise_ppm({ meter }: Sweep, co_ppm: number): number {
  return Math.hypot(WAVER * co_ppm, restNoise_ppm(meter.resolution_ppm));
}

/** The part of the noise that does not grow with the reading; rounding is spread evenly over a step. */
export function restNoise_ppm(resolution_ppm: number): number {
  return Math.hypot(LEAST_ppm, resolution_ppm / Math.sqrt(12));
}

/** More than expected by this factor, and by the noise twice over, is poor (our own working values). */
const POOR = 1.5;
const NOISES = 2;

/** Above this a settled reading is not what was expected, ppm. */
export function poorAbove_ppm(sweep: Sweep, expected_ppm: number): number {
  const seen = Math.max(expected_ppm, sweep.meter.floor_ppm);
  return Math.max(POOR * seen, seen + NOISES * noise_ppm(sweep, seen));
}
