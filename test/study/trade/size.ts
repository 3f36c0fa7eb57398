import { ANY_DOSE_SD, type Burning } from "./burning.ts";
import { between, type Seeded } from "./draws.ts";
import type { End } from "./row.ts";

/** Heater sizes: each has its pump and its fan for its heat, so that sizes differ as physics has it. */

/** Air for burning 1 kg of diesel completely, kg (test/reference/combustion.json: 14.5). */
export const AIR_PER_FUEL = 14.5;
/** Diesel, kg/L at 15 °C (EN 590: 0.820–0.845). */
export const FUEL_kg_L = 0.835;
/** Net heat of diesel, kWh/kg (42.7 MJ/kg, usual value), and how much of it reaches the room. */
const FUEL_kWh_kg = 42.7 / 3.6;
const EFFICIENCY = 0.8;
/** Pumps sold, µL per pulse (common practice, no source). */
const PUMPS_uL = [16, 18, 22, 28, 35, 44, 56];

/** One heater size. */
export interface HeaterSize {
  heat_kW: number;
  /** Nominal doses sold with it, and their shares. */
  dose_uL: readonly number[];
  dose_shares: readonly number[];
  /** Air moved per turn of a new fan, L. */
  airPerTurn_L: number;
  usual_rpm: Record<End, number>;
  excessAir: Record<End, number>;
  /** Fall of the best excess air with fan speed, as a power. */
  fallByFan: number;
}

/** Sizes of one run share a burner's manner; each has its pump and its fan for its heat. */
export function drawSize(
  random: Seeded,
  heat_kW: number,
  excessAir: Record<End, number>,
  burning: Burning,
): HeaterSize {
  const usual_rpm = {
    low: between(random, [1400, 2000]),
    high: between(random, [4100, 4700]),
  };
  const best = {
    low: excessAir.low * Math.exp(0.04 * random.normal()),
    high: excessAir.high * Math.exp(0.04 * random.normal()),
  };
  // Labels promise more than heaters give.
  const fuel_kg_h = (heat_kW * between(random, [0.72, 0.95])) / (FUEL_kWh_kg * EFFICIENCY);
  const fuel_uL_s = ((fuel_kg_h / FUEL_kg_L) * 1e6) / 3600;
  const wanted_uL = fuel_uL_s / between(random, [4.2, 5.6]);
  const first = nearest(PUMPS_uL, wanted_uL);
  const second = first + 1 < PUMPS_uL.length ? first + 1 : first - 1;
  const air_kg_s = (fuel_kg_h / 3600) * AIR_PER_FUEL * best.high;
  const share = between(random, [0.35, 0.65]);
  const two = burning.doses === "two sizes";
  return {
    heat_kW,
    dose_uL: two ? [PUMPS_uL[first] ?? 22, PUMPS_uL[second] ?? 28] : [PUMPS_uL[first] ?? 22],
    dose_shares: two ? [share, 1 - share] : [1],
    airPerTurn_L: (air_kg_s / 1.225 / (usual_rpm.high / 60)) * 1000,
    usual_rpm,
    excessAir: best,
    fallByFan:
      (burning.airByFan * Math.log(best.low / best.high)) /
      Math.log(usual_rpm.high / usual_rpm.low),
  };
}

function nearest(list: readonly number[], wanted: number): number {
  let best = 0;
  for (let i = 1; i < list.length; i++) {
    if (Math.abs((list[i] ?? 0) - wanted) < Math.abs((list[best] ?? 0) - wanted)) best = i;
  }
  return best;
}

/** Mean of ln nominal dose over the heaters of a size, and the variance of ln ratio that heaters bring to it. */
export function doseMean({ dose_uL, dose_shares }: HeaterSize): number {
  return dose_uL.reduce((sum, d, i) => sum + (dose_shares[i] ?? 0) * Math.log(d), 0);
}

export function heaterVariance(size: HeaterSize, burning: Burning): number {
  const { dose_uL, dose_shares } = size;
  const mean = doseMean(size);
  const sizes = dose_uL.reduce(
    (sum, d, i) => sum + (dose_shares[i] ?? 0) * (Math.log(d) - mean) ** 2,
    burning.doses === "lognormal" ? ANY_DOSE_SD ** 2 : 0,
  );
  const { dose_sd, fan_sd, excessAir_sd, wear } = burning;
  return sizes + dose_sd ** 2 + fan_sd ** 2 + excessAir_sd ** 2 + wear ** 2 / 12;
}
