import type { SweepMeter } from "../../../model/sweep/setup.ts";
import type { Seeded } from "../../../seed-demo/random.ts";

/** An invented heater at one end: CO over pump rate at the meter's spot, and where its flame goes out. */
export interface Exhaust {
  minimum_Hz: number;
  lowest_ppm: number;
  /** Relative distance at which CO doubles, per side. */
  lean_width: number;
  rich_width: number;
  shape: (typeof SHAPES)[number];
  flame_out_Hz: number;
}

/** None of them is quite the bowl that the sweep believes in. */
export const SHAPES = ["power", "bell", "chain", "straight"] as const;

export function co_ppm(e: Exhaust, pump_Hz: number): number {
  const u = Math.log(pump_Hz / e.minimum_Hz);
  const x = Math.abs(u) / (u < 0 ? e.lean_width : e.rich_width);
  return Math.min(5000, e.lowest_ppm * RISE[e.shape](x));
}

/** All 1 at the minimum and 2 at x = 1. */
const RISE: Record<Exhaust["shape"], (x: number) => number> = {
  power: (x) => 1 + x ** 2,
  bell: (x) => 2 ** (x ** 1.7),
  chain: (x) => Math.cosh(1.317 * x),
  straight: (x) => Math.sqrt(1 + 3 * x * x),
};

export function exhaustOf(random: Seeded, minimum_Hz: number, lowest: [number, number]): Exhaust {
  const { uniform } = random;
  const logBetween = (a: number, b: number) => a * (b / a) ** uniform();
  const width = logBetween(0.05, 0.13);
  const ratio = logBetween(0.5, 2.2);
  return {
    minimum_Hz,
    lowest_ppm: logBetween(...lowest),
    lean_width: width * Math.sqrt(ratio),
    rich_width: width / Math.sqrt(ratio),
    shape: SHAPES[Math.floor(uniform() * SHAPES.length)] as Exhaust["shape"],
    flame_out_Hz: minimum_Hz * logBetween(0.62, 0.8),
  };
}

/** An invented meter: first-order lag, rounding, floor, ceiling, drift. */
export interface Meter extends Required<{ [K in keyof SweepMeter]: number }> {
  drift_per_min: number;
}

export function meterOf({ uniform, normal }: Seeded): Meter {
  const one = <T>(list: readonly T[]) => list[Math.floor(uniform() * list.length)] as T;
  const floor_ppm = one([0, 10, 30]);
  return {
    lag_s: 10 * 6 ** uniform(),
    resolution_ppm: one([1, 2, 5]),
    floor_ppm,
    ceiling_ppm: one([300, 1000]),
    drift_per_min: 0.003 * normal(),
  };
}
