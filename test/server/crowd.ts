import { airAt } from "../../model/air.ts";
import type { Tune } from "../../model/tune.ts";
import { seeded } from "../../seed-demo/random.ts";

/** ln(pump rate) changes with ln(density) by so much, as in the model's prior. */
const SLOPE = 0.92;
/** Between heaters, and between tunes of one: what owners' heaters usually differ by. */
const BETWEEN = 0.06;
const WITHIN = 0.03;

/** A tune that is right for an invented heater at some elevation and night, to the two decimals that are typed. */
export function tuneAt(
  elevation_m: number,
  times: number,
  contributor: string,
  site: Partial<Tune["site"]> = {},
): Tune {
  const temperature_C = Math.round(10 - elevation_m / 160);
  const { density_kg_m3 } = airAt(elevation_m, { temperature_C, humidity_pct: 60 });
  const set = (sea_Hz: number) =>
    Number((sea_Hz * times * (density_kg_m3 / 1.225) ** SLOPE).toFixed(2));
  return {
    heater: { heat_kW: 5 },
    site: { elevation_m, ...site },
    air: { temperature_C, humidity_pct: 60 },
    low: { pump_Hz: set(1.25), fan_rpm: 1700, co_ppm: 14 },
    high: { pump_Hz: set(4.4), fan_rpm: 4400, co_ppm: 11 },
    found: "bracketed",
    contributor,
  };
}

/** Invented owners with a tune each, from the sea to 3,500 m. */
export function honestCrowd(size: number, seed: number): Tune[] {
  const { uniform, normal } = seeded(seed);
  return Array.from({ length: size }, (_, n) => {
    const elevation_m = 10 * Math.round(350 * uniform());
    const heater = Math.exp(BETWEEN * normal() + WITHIN * normal());
    return {
      ...tuneAt(elevation_m, heater, `honest-owner-${String(n).padStart(4, "0")}`),
      tuned_on: `2026-${String(1 + Math.floor(10 * uniform())).padStart(2, "0")}`,
    };
  });
}
