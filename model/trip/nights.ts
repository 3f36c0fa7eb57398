import type { StartTune } from "../start.ts";
import { type Supply, supplyOf } from "../supply.ts";

/** How a night is heated. */
export interface Night {
  hours: number;
  /** Where in the power range on average: 0 at the low end, 1 at the high. */
  power_share: number;
}

/** Our own working values, no source: ten hours, mostly low. */
export const USUAL_NIGHT: Night = { hours: 10, power_share: 0.3 };

/** What a heater is fed from, V. */
export const SUPPLIES_V = [12, 24] as const;
export type Supply_V = (typeof SUPPLIES_V)[number];

/** What a night, or several, take: fuel, and charge at the voltage asked for. */
export interface NightNeeds {
  fuel_L: number;
  battery_Ah: number;
}

/**
 * Fuel, heat and charge of a night at a start tune as it can be set, in its air: one start, then power steady at its average.
 * @throws RangeError naming the number that cannot be used
 */
export function nightAt(
  { low, high, air }: StartTune,
  heater: { heat_kW: number; dose_uL?: number | undefined; tank_L?: number | undefined },
  night: Night,
): Supply {
  const end = ({ pump_Hz, fan_rpm }: StartTune["low"]) => ({ pump_Hz, fan_rpm });
  const { heat_kW, dose_uL, tank_L } = heater;
  const { density_ratio } = air;
  return supplyOf({
    ...{ heat_kW, dose_uL, tank_L, density_ratio },
    low: end(low),
    high: end(high),
    ...night,
  });
}

/** What so many nights alike take. */
export function needsOf(
  { fuel_L, battery_Ah }: Supply,
  supply_V: Supply_V,
  nights: number,
): NightNeeds {
  const night_Ah = supply_V === 24 ? battery_Ah.at_24_V : battery_Ah.at_12_V;
  return { fuel_L: nights * fuel_L, battery_Ah: nights * night_Ah };
}
