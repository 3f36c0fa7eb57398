/**
 * What people who tune such heaters usually do and see. Common practice, no source: shown to people as that, never a
 * limit, and never a reason for the sweep to stop.
 */
export const COMMON_PRACTICE = {
  coarse_step_Hz: [0.2, 0.4],
  fine_step_Hz: 0.1,
  /** Final CO is usually below this, ppm, as the meter near the exhaust shows it. */
  usual_below_ppm: 30,
  good_ppm: [7, 15],
  meter_distance_m: 0.3,
} as const;

/** Whether the reading an end is left at is higher than usual: then it is no good tune, whatever the sweep found. */
export function isHigh(co_ppm: number | undefined): boolean {
  return co_ppm !== undefined && co_ppm > COMMON_PRACTICE.usual_below_ppm;
}
