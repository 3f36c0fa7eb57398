import type { Seeded } from "../../../seed-demo/random.ts";
import { logBetween } from "./heater.ts";

/** An invented meter with the air around it: first-order lag, rounding, ends of its scale, drift, wavering, gusts. */
export interface Meter {
  lag_s: number;
  resolution_ppm: number;
  floor_ppm: number;
  ceiling_ppm: number;
  drift_per_min: number;
  /** Wavering of the exhaust at the meter, as a share of the reading. */
  waver: number;
  /** A gust every so many seconds. */
  gust_every_s: number;
}

/** A meter in still air. */
export const CALM = { drift_per_min: 0, waver: 0.04, gust_every_s: 600 };

export function meterOf(random: Seeded): Meter {
  const { uniform, normal } = random;
  const one = <T>(list: readonly T[]) => list[Math.floor(uniform() * list.length)] as T;
  return {
    lag_s: logBetween(random, 8, 80),
    resolution_ppm: one([1, 1, 2, 5]),
    floor_ppm: one([0, 0, 10, 30, 50]),
    ceiling_ppm: one([200, 300, 1000, 2000]),
    drift_per_min: (uniform() < 0.15 ? 0.012 : 0.003) * normal(),
    waver: logBetween(random, 0.03, 0.12),
    gust_every_s: logBetween(random, 60, 600),
  };
}
