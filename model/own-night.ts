import { ENDS, type End } from "./end.ts";
import type { EndSetting } from "./mixture.ts";
import { settablePump } from "./rounding.ts";
import type { StartTune } from "./start.ts";
import { type Supply, supplyOf } from "./supply.ts";
import type { Night } from "./trip/nights.ts";

/** Both ends as they stand on a heater. */
export type EndsSet = Record<End, EndSetting>;

/**
 * Fuel, heat and charge of a night as a heater is set and with its own dose: the pump moves the same fuel in any air.
 * Without a dose its pump rates say nothing of the fuel: between heaters they differ most where doses do.
 * @throws RangeError naming the number that cannot be used
 */
export function nightAsSet(
  { low, high }: EndsSet,
  heater: { heat_kW: number; dose_uL: number; tank_L?: number | undefined },
  night: Night,
): Supply {
  const { heat_kW, dose_uL, tank_L } = heater;
  // With a dose the air has no say in the fuel.
  return supplyOf({ heat_kW, dose_uL, tank_L, density_ratio: 1, low, high, ...night });
}

/**
 * What a heater would be set to in other air, its fans left alone: its own pump rates, changed as the average heater's are.
 * @param then the start tune in the air it was tuned in
 * @param now the start tune in the other air, at the same fan speeds
 * @param step_Hz the smallest step of its pump rate; the usual one when not given
 */
export function retunedFor(
  ends: EndsSet,
  then: StartTune,
  now: StartTune,
  step_Hz?: number,
): EndsSet {
  const moved = ENDS.map((end) => {
    const { pump_Hz, fan_rpm } = ends[end];
    const change = now[end].pump_Hz_exact / then[end].pump_Hz_exact;
    return [end, { pump_Hz: settablePump(pump_Hz * change, step_Hz), fan_rpm }] as const;
  });
  return Object.fromEntries(moved) as EndsSet;
}
