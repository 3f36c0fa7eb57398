import { ANY_DOSE_SD, type Burning } from "./burning.ts";
import { chance, pick, type Seeded } from "./draws.ts";
import type { End } from "./row.ts";
import { AIR_PER_FUEL, FUEL_kg_L, type HeaterSize } from "./size.ts";

/**
 * One heater. Fuel and air are masses: a pulse moves a dose of fuel, a turn of the fan moves a volume of air, and the
 * burner wants so much air for its fuel. The best pump rate follows; nothing is fitted.
 */

/** Expansion of diesel per K (combustion.json, ISO 91 Table 54B: 0.00085 at 835 kg/m³). */
const FUEL_EXPANSION_per_K = 8.5e-4;
/** Fans end at about this speed (common practice, no source). */
const FAN_LIMIT_rpm = 5000;

export interface Heater {
  size: HeaterSize;
  nominal_uL: number;
  /** Factors on nominal: 1 is as built on average. */
  dose: number;
  air: number;
  excessAir: Record<End, number>;
  rpm: Record<End, number>;
  raise: number;
  /** How far the fuel follows the night's temperature. */
  fuelOutdoors: number;
}

export function drawHeater(random: Seeded, size: HeaterSize, burning: Burning): Heater {
  const burner = random.normal() * Math.sqrt(burning.ends_share);
  const own = Math.sqrt(1 - burning.ends_share);
  const excess = () => Math.exp(burning.excessAir_sd * (burner + own * random.normal()));
  const rpm = (usual: number) =>
    Math.round((usual * (1 + 0.06 * (2 * random.uniform() - 1))) / 50) * 50;
  const nominal_uL =
    burning.doses === "lognormal"
      ? Math.round((size.dose_uL[0] ?? 22) * Math.exp(ANY_DOSE_SD * random.normal()) * 10) / 10
      : (size.dose_uL[pick(random, size.dose_shares)] ?? 22);
  return {
    size,
    nominal_uL,
    dose: Math.exp(burning.dose_sd * random.normal()),
    // The read-out's error, the wheel's tolerance and wear all change the air per shown turn.
    air: Math.exp(burning.fan_sd * random.normal() - burning.wear * random.uniform()),
    excessAir: { low: excess(), high: excess() },
    rpm: { low: rpm(size.usual_rpm.low), high: rpm(size.usual_rpm.high) },
    raise: chance(random, burning.raisesFan) ? burning.raise * (0.5 + random.uniform()) : 0,
    fuelOutdoors: 0.4 + 0.5 * random.uniform(),
  };
}

/** Fan speed, as shown, that this owner runs an end at in air of this x. */
export function fanSpeed(heater: Heater, end: End, x: number): number {
  const home = heater.rpm[end];
  if (heater.raise === 0 || x >= 0) return home;
  const raised = Math.min(home * Math.exp(-heater.raise * x), Math.max(home, FAN_LIMIT_rpm));
  return Math.round(raised / 50) * 50;
}

/**
 * Best pump rate, Hz: (air per second ÷ best air per fuel) ÷ fuel per pulse. At an equal burn it is proportional to
 * fan speed and density; thin air's mixing, the fan's own load and cold fuel bend that a little.
 */
export function bestPumpRate(
  { size, nominal_uL, dose, air, excessAir, fuelOutdoors }: Heater,
  { airInThinAir }: Burning,
  end: End,
  fan_rpm: number,
  at: { density_kg_m3: number; temperature_C: number; x: number },
): number {
  const air_kg_s = (fan_rpm / 60) * (size.airPerTurn_L / 1000) * air * at.density_kg_m3;
  const wanted =
    size.excessAir[end] *
    excessAir[end] *
    Math.exp(airInThinAir * at.x - size.fallByFan * Math.log(fan_rpm / size.usual_rpm[end]));
  const fuel_C = 15 + fuelOutdoors * (at.temperature_C - 15);
  const fuel_kg_L = FUEL_kg_L * (1 - FUEL_EXPANSION_per_K * (fuel_C - 15));
  const pulse_kg = nominal_uL * dose * 1e-6 * fuel_kg_L;
  return air_kg_s / (AIR_PER_FUEL * wanted * pulse_kg);
}

/** How far ln of this heater's best ratio is from that of the average heater of its size, at the same air and dose. */
export function deviation(heater: Heater, burning: Burning, end: End): number {
  const air = Math.log(heater.air) + burning.wear / 2;
  return air - Math.log(heater.dose) - Math.log(heater.excessAir[end]);
}
