import { standardDensity, standardPressure, standardTemperature } from "../../model/air.ts";
import { SETTINGS } from "../../model/fit/settings.ts";
import type { SimulatedRow } from "./crowd.ts";
import type { Seeded } from "./population.ts";

type Slip = (row: SimulatedRow, random: Seeded) => Partial<SimulatedRow>;

/** ln of the high end's mixture over the low end's. */
const ENDS_APART = SETTINGS.level_high - SETTINGS.level_low;

const ICE_POINT_K = 273.15;

const pump = (row: SimulatedRow, times: number) => ({ pump_Hz: row.pump_Hz * times });
const upOrDown = ({ uniform }: Seeded, times: number) => (uniform() < 0.5 ? times : 1 / times);

/** Slips of the pen that nobody screened. */
export const SLIPS = {
  /** Elevation in feet stated as metres: the density is that of more than three times the height. */
  feet: ({ elevation_m, night }) => ({
    density_kg_m3: standardDensity(Math.min(6000, elevation_m * 3.28)) * night,
  }),
  decimal: (row, random) => pump(row, upOrDown(random, 10)),
  half_or_double: (row, random) => pump(row, upOrDown(random, 2)),
  pulses_a_minute: (row) => pump(row, 60),
  /** The row holds the other end's mixture, which differs as common practice says, scatter and all. */
  ends_swapped: (row, random) =>
    pump(row, Math.exp((row.end === "low" ? ENDS_APART : -ENDS_APART) + 0.1 * random.normal())),
  fan_in_tens: (row) => ({ fan_rpm: row.fan_rpm / 10 }),
  fan_in_hundreds: (row) => ({ fan_rpm: row.fan_rpm / 100 }),
  /** The density of a night as many °C warm as it was °F. */
  fahrenheit: ({ density_kg_m3, elevation_m, night }) => {
    const K = (standardTemperature(elevation_m) + ICE_POINT_K) / night;
    const read_K = ICE_POINT_K + 1.8 * (K - ICE_POINT_K) + 32;
    return { density_kg_m3: (density_kg_m3 * K) / read_K };
  },
  /** A pressure reduced to sea level stated as the station's: all places lie by the sea. */
  sea_level_pressure: ({ density_kg_m3, elevation_m }) => ({
    density_kg_m3: (density_kg_m3 * standardPressure(0)) / standardPressure(elevation_m),
  }),
  junk: (row, random) => pump(row, Math.exp(random.normal())),
} as const satisfies Record<string, Slip>;

export type SlipName = keyof typeof SLIPS;

/** The mix of slips that crowds make when nothing is known of which: equal parts. */
export const EVERYDAY: readonly SlipName[] = ["half_or_double", "decimal", "feet", "junk"];

/** The rows, of which a share carries one of the slips, each as likely. */
export function withSlips(
  random: Seeded,
  rows: readonly SimulatedRow[],
  share: number,
  kinds: readonly SlipName[] = EVERYDAY,
): SimulatedRow[] {
  return rows.map((row) => {
    if (random.uniform() >= share) return row;
    const kind = kinds[Math.floor(kinds.length * random.uniform())] as SlipName;
    return { ...row, ...(SLIPS[kind] as Slip)(row, random), honest: false };
  });
}
