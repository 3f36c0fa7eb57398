import type { Seeded } from "../../../seed-demo/random.ts";

/**
 * Invented heaters at one end: CO over pump rate at the meter's spot, and where the flame goes out. Written from what may
 * happen at a heater, not from the sweep, which holds no curve of CO at all.
 */
export interface Heater {
  minimum_Hz: number;
  lowest_ppm: number;
  /** Relative distance at which CO doubles, per side. */
  lean_width: number;
  rich_width: number;
  shape: Shape;
  /** Relative reach to each side over which CO does not rise at all. */
  flat?: { lean: number; rich: number };
  /** A stretch of a limb on which CO stands still: from this relative distance, so long. */
  shelf?: { side: "lean" | "rich"; from: number; length: number };
  flame_out_Hz: number;
}

/** ln of CO against the distance from the minimum in widths: 0 there, ln 2 at 1. */
const RISE = {
  quadratic: (x: number) => Math.LN2 * x * x,
  straight: (x: number) => Math.LN2 * x,
  "straight in ppm": (x: number) => Math.log1p(x),
  power: (x: number) => Math.log1p(x * x),
  steep: (x: number) => Math.LN2 * x ** 3,
};
export type Shape = keyof typeof RISE;
export const SHAPES = Object.keys(RISE) as Shape[];

const MOST_ppm = 8000;

export function co_ppm(heater: Heater, pump_Hz: number): number {
  const u = Math.log(pump_Hz / heater.minimum_Hz);
  const side = u < 0 ? "lean" : "rich";
  let away = Math.max(0, Math.abs(u) - (heater.flat?.[side] ?? 0));
  const { shelf } = heater;
  if (shelf?.side === side && away > shelf.from) {
    away = Math.max(shelf.from, away - shelf.length);
  }
  const width = side === "lean" ? heater.lean_width : heater.rich_width;
  return Math.min(MOST_ppm, heater.lowest_ppm * Math.exp(RISE[heater.shape](away / width)));
}

/** How far a rate is from the nearest one with the lowest CO, Hz. */
export function offMinimum_Hz({ minimum_Hz, flat }: Heater, pump_Hz: number): number {
  const lower = minimum_Hz * Math.exp(-(flat?.lean ?? 0));
  const upper = minimum_Hz * Math.exp(flat?.rich ?? 0);
  return Math.max(0, lower - pump_Hz, pump_Hz - upper);
}

/** From a to b, evenly in ln. */
export function logBetween({ uniform }: Seeded, a: number, b: number): number {
  return a * (b / a) ** uniform();
}

export function heaterOf(random: Seeded, minimum_Hz: number, lowest: [number, number]): Heater {
  const { uniform } = random;
  const one = <T>(list: readonly T[]) => list[Math.floor(uniform() * list.length)] as T;
  const width = logBetween(random, 0.03, 0.16);
  const skew = logBetween(random, 0.25, 4);
  const kind = one(["plain", "plain", "flat", "shelf"] as const);
  return {
    minimum_Hz,
    lowest_ppm: logBetween(random, ...lowest),
    lean_width: width * Math.sqrt(skew),
    rich_width: width / Math.sqrt(skew),
    shape: one(SHAPES),
    ...(kind === "flat" && { flat: { lean: 0.12 * uniform(), rich: 0.12 * uniform() } }),
    ...(kind === "shelf" && {
      shelf: {
        side: one(["lean", "rich"] as const),
        from: 0.02 + 0.1 * uniform(),
        length: 0.04 + 0.16 * uniform(),
      },
    }),
    // Anywhere from far on the lean side to richer than the minimum, which then cannot be reached.
    flame_out_Hz: minimum_Hz * logBetween(random, 0.6, 1.08),
  };
}
