import { STANDARD_DENSITY_kg_m3 } from "./air.ts";

/**
 * Mixture: fuel per mass of air, up to a constant, and what follows from it.
 * The fan moves volume in proportion to its speed whatever the density (fan laws, ISO 5801 similarity),
 * so air mass ∝ fan speed × density; the pump moves volume in proportion to its pulses.
 */

/** One end of the power range as set on a heater. */
export interface EndSetting {
  pump_Hz: number;
  fan_rpm: number;
}

/** Our own working window of mixture shift around a good tune, %: 12 rich to 25 lean. Adjustable, not a limit of safety. */
export const WORKING_WINDOW_pct = { rich: 12, lean: 25 } as const;

/** Mixture, Hz per 1,000 rpm at density ratio 1: pump_Hz ÷ (fan_rpm/1000 × density ratio). */
export function mixture({ pump_Hz, fan_rpm }: EndSetting, density_kg_m3: number): number {
  return pump_Hz / ((fan_rpm / 1000) * (density_kg_m3 / STANDARD_DENSITY_kg_m3));
}

/** Mixture shift, %, of `now` against `reference`: plus is rich, minus is lean. */
export function mixtureShift(now: number, reference: number): number {
  return (now / reference - 1) * 100;
}

/** Mixture shift, %, of a tune carried unchanged from air A to air B: ρA/ρB − 1. */
export function carryOverShift(from_kg_m3: number, to_kg_m3: number): number {
  return mixtureShift(from_kg_m3, to_kg_m3);
}

/** What a controller runs at a share of the power range, 0 at the low end and 1 at the high: linear in both. */
export function settingAt(low: EndSetting, high: EndSetting, share: number): EndSetting {
  return {
    pump_Hz: low.pump_Hz + (high.pump_Hz - low.pump_Hz) * share,
    fan_rpm: low.fan_rpm + (high.fan_rpm - low.fan_rpm) * share,
  };
}

/** Net heat of diesel, kWh/L: 42.7 MJ/kg × 0.835 kg/L ÷ 3.6 (net heating value and EN 590 density, usual mid values). */
export const FUEL_kWh_per_L = (42.7 * 0.835) / 3.6;

/** Share of the fuel's heat that reaches the room (common practice, no source: 75–85 %). */
export const EFFICIENCY = 0.8;

/** Fuel flow, L/h, of a pump rate, Hz, and a dose per pulse, µL. */
export function fuelFlow(pump_Hz: number, dose_uL: number): number {
  return pump_Hz * dose_uL * 3600e-6;
}

/** Heat to the room, kW, of a fuel flow, L/h, at an efficiency of 0–1. */
export function heatOutput(fuel_L_h: number, efficiency = EFFICIENCY): number {
  return fuel_L_h * FUEL_kWh_per_L * efficiency;
}
