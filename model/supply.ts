import {
  EFFICIENCY,
  type EndSetting,
  FUEL_kWh_per_L,
  fuelFlow,
  heatOutput,
  runTime,
  settingAt,
} from "./mixture.ts";
import { requireFinite, requirePositive } from "./numerics/finite.ts";

/** Fuel and charge: what a heater takes from tank and battery. */

/** Running current of a 12 V heater at the low and the high end, A (common practice, no source). */
export const RUN_CURRENT_A = { low: 0.6, high: 3.5 } as const;
/** Current of each start at 12 V, A (common practice, no source), and for how long (our own working value). */
export const START_CURRENT_A = { least: 8, most: 12 } as const;
export const START_MINUTES = 4;
/**
 * Fuel at the low end, as a share of that at the high. Common practice, no source: a 2 kW heater burns 0.08–0.28 L/h,
 * one of 5 kW 0.12–0.65 L/h; this lies between.
 */
export const LOW_FUEL_SHARE = 0.24;

/** What is known of the heater and of how it runs. */
export interface SupplyQuestion {
  heat_kW: number;
  dose_uL?: number | undefined;
  /** Both ends as set, or as the start tune has them for tonight's air. */
  low: EndSetting;
  high: EndSetting;
  /** Against 1.225 kg/m³: without a dose, fuel goes with the air there is. */
  density_ratio: number;
  hours: number;
  /** Where in the power range on average: 0 at the low end, 1 at the high. */
  power_share: number;
  tank_L?: number | undefined;
}

export interface Supply {
  fuel_L_h: number;
  /** From pump rate and dose, or from the heat class's usual burn. */
  fuel_from: "dose" | "class";
  fuel_L: number;
  heat_kW: number;
  /** How long the tank lasts, h; null where its size is not given. */
  tank_h: number | null;
  /** One start and the hours after it. The same power at 24 V takes half the current. */
  battery_Ah: { at_12_V: number; at_24_V: number };
  start_A: { at_12_V: { least: number; most: number }; at_24_V: { least: number; most: number } };
}

/**
 * Fuel, heat, run time and charge of a night with power steady at its average.
 * @throws RangeError naming the number that cannot be used
 */
export function supplyOf(question: SupplyQuestion): Supply {
  const { heat_kW, dose_uL, low, high, density_ratio, hours, power_share, tank_L } = question;
  requirePositive({ heat_kW, dose_uL, density_ratio, hours, tank_L });
  const { pump_Hz } = settingAt(low, high, requireShare(power_share));
  const fuel_L_h =
    dose_uL === undefined
      ? usualFlow(heat_kW, power_share) * density_ratio
      : fuelFlow(pump_Hz, dose_uL);
  const at_12_V = hours * runCurrent(power_share) + startCharge();
  return {
    fuel_L_h,
    fuel_from: dose_uL === undefined ? "class" : "dose",
    fuel_L: fuel_L_h * hours,
    heat_kW: heatOutput(fuel_L_h),
    tank_h: tank_L === undefined ? null : runTime(tank_L, fuel_L_h),
    battery_Ah: { at_12_V, at_24_V: at24V(at_12_V) },
    start_A: {
      at_12_V: START_CURRENT_A,
      at_24_V: { least: at24V(START_CURRENT_A.least), most: at24V(START_CURRENT_A.most) },
    },
  };
}

/** Running current at 12 V, A, at a share of the power range: linear between the ends. */
export function runCurrent(power_share: number): number {
  return RUN_CURRENT_A.low + (RUN_CURRENT_A.high - RUN_CURRENT_A.low) * requireShare(power_share);
}

/** Charge of one start at 12 V, Ah: the middle of its range for its minutes. */
export function startCharge(): number {
  return (((START_CURRENT_A.least + START_CURRENT_A.most) / 2) * START_MINUTES) / 60;
}

/** The same power at twice the voltage. @example at24V(8) // 4 */
export function at24V(at_12_V: number): number {
  return at_12_V / 2;
}

/**
 * Fuel flow, L/h, that a heat class usually has in standard air at sea level: at the high end what its nominal heat
 * takes at the usual efficiency, at the low end {@link LOW_FUEL_SHARE} of that.
 */
export function usualFlow(heat_kW: number, power_share: number): number {
  requirePositive({ heat_kW });
  const most = heat_kW / (FUEL_kWh_per_L * EFFICIENCY);
  return most * (LOW_FUEL_SHARE + (1 - LOW_FUEL_SHARE) * requireShare(power_share));
}

function requireShare(power_share: number): number {
  requireFinite({ power_share });
  if (power_share < 0 || power_share > 1) {
    throw new RangeError(`power_share must be from 0 to 1, not ${power_share}.`);
  }
  return power_share;
}
