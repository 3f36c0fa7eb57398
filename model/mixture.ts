import { STANDARD_DENSITY_kg_m3 } from "./air.ts";
import { requireFinite, requirePositive } from "./numerics/finite.ts";

/**
 * Mixture: fuel per mass of air, up to a constant, and what follows from it.
 * The fan moves volume in proportion to its speed whatever the density (fan laws, ISO 5801 similarity),
 * so air mass ∝ fan speed × density; the pump moves volume in proportion to its pulses.
 * All functions throw a RangeError naming the argument when it is not a number they can use.
 */

/** One end of the power range as set on a heater. */
export interface EndSetting {
  pump_Hz: number;
  fan_rpm: number;
}

/**
 * Mixture, Hz per 1,000 rpm at density ratio 1: pump_Hz ÷ (fan_rpm/1000 × density ratio).
 * @example mixture({ pump_Hz: 4.4, fan_rpm: 4400 }, 1.225) // 1
 */
export function mixture({ pump_Hz, fan_rpm }: EndSetting, density_kg_m3: number): number {
  requirePositive({ pump_Hz, fan_rpm, density_kg_m3 });
  return pump_Hz / ((fan_rpm / 1000) * (density_kg_m3 / STANDARD_DENSITY_kg_m3));
}

/**
 * Mixture shift, %, of `now` against `reference`: plus is rich, minus is lean.
 * @example mixtureShift(1.5, 1.2) // 25
 */
export function mixtureShift(now: number, reference: number): number {
  requirePositive({ now, reference });
  return (now / reference - 1) * 100;
}

/**
 * Mixture shift, %, of a tune carried unchanged from air A to air B: ρA/ρB − 1.
 * @example carryOverShift(1.25, 1) // 25
 */
export function carryOverShift(from_kg_m3: number, to_kg_m3: number): number {
  return mixtureShift(from_kg_m3, to_kg_m3);
}

/**
 * What a controller runs at a share of the power range, 0 at the low end and 1 at the high: linear in both.
 * @example settingAt({ pump_Hz: 1, fan_rpm: 1600 }, { pump_Hz: 4, fan_rpm: 4400 }, 0.5) // { pump_Hz: 2.5, fan_rpm: 3000 }
 */
export function settingAt(low: EndSetting, high: EndSetting, share: number): EndSetting {
  requireFinite({ share });
  return {
    pump_Hz: low.pump_Hz + (high.pump_Hz - low.pump_Hz) * share,
    fan_rpm: low.fan_rpm + (high.fan_rpm - low.fan_rpm) * share,
  };
}

/**
 * Net heat of diesel, kWh/L: 42.7 MJ/kg × 0.835 kg/L ÷ 3.6 (net heating value and EN 590 density, usual mid values).
 * Per litre as pumped: fuel at −20 °C holds about 3 % more than at 15 °C, which is left out, its temperature being unknown.
 */
export const FUEL_kWh_per_L = (42.7 * 0.835) / 3.6;

/** Share of the fuel's heat that reaches the room (common practice, no source: 75–85 %). */
export const EFFICIENCY = 0.8;

/**
 * Fuel flow, L/h, of a pump rate, Hz, and a dose per pulse, µL.
 * @example fuelFlow(5, 25) // 0.45
 */
export function fuelFlow(pump_Hz: number, dose_uL: number): number {
  requirePositive({ pump_Hz, dose_uL });
  return (pump_Hz * dose_uL * 3600) / 1e6;
}

/**
 * Heat to the room, kW, of a fuel flow, L/h, at an efficiency of 0–1.
 * @example heatOutput(0.5, 1) // 4.952
 */
export function heatOutput(fuel_L_h: number, efficiency = EFFICIENCY): number {
  requirePositive({ fuel_L_h, efficiency });
  return fuel_L_h * FUEL_kWh_per_L * efficiency;
}

/**
 * Hours a tank lasts at a fuel flow, L/h.
 * @example runTime(10, 0.2) // 50
 */
export function runTime(tank_L: number, fuel_L_h: number): number {
  requirePositive({ tank_L, fuel_L_h });
  return tank_L / fuel_L_h;
}

/** Oxygen in dry air, % by volume, as flue gas practice rounds it. */
const OXYGEN_IN_AIR_pct = 20.9;

/**
 * Real excess-air ratio λ (air burned with ÷ air needed) from the oxygen in the dry exhaust, %, as a flue analyser
 * in undiluted exhaust shows it: 20.9/(20.9 − O₂). Pump rate, dose and fan speed cannot give it: the volume a fan
 * moves in one turn is unknown.
 * @example excessAirRatio(10.45) // 2
 */
export function excessAirRatio(oxygen_pct: number): number {
  requireFinite({ oxygen_pct });
  if (oxygen_pct < 0 || oxygen_pct >= OXYGEN_IN_AIR_pct) {
    throw new RangeError(`oxygen_pct must be from 0 to below 20.9, not ${oxygen_pct}.`);
  }
  return OXYGEN_IN_AIR_pct / (OXYGEN_IN_AIR_pct - oxygen_pct);
}
