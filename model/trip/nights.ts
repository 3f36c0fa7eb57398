import { requirePositive } from "../finite.ts";
import { fuelFlow, settingAt } from "../mixture.ts";
import type { StartTune } from "../start.ts";
import { runCurrent } from "../supply.ts";

/** How a night is heated. */
export interface Night {
  hours: number;
  /** Where in the power range on average: 0 at the low end, 1 at the high. */
  power_share: number;
}

/** Our own working values, no source: ten hours, mostly low. */
export const USUAL_NIGHT: Night = { hours: 10, power_share: 0.3 };

/** What a night, or several, take: fuel when the dose is known, and charge of a 12 V battery. */
export interface NightNeeds {
  fuel_L: number | null;
  battery_Ah: number;
}

/**
 * Fuel and charge for a night, or several alike, at a stop's start tune, power steady at its average. Not in it: the glow at each start
 * (8–12 A for some minutes), and hours at another power.
 * @throws RangeError naming the number that cannot be used
 */
export function nightNeeds(
  start: Pick<StartTune, "low" | "high">,
  dose_uL: number | undefined,
  { hours, power_share }: Night,
  nights = 1,
): NightNeeds {
  requirePositive({ hours, dose_uL });
  const current_A = runCurrent(power_share);
  const end = ({ pump_Hz_exact, fan_rpm }: StartTune["low"]) => ({
    pump_Hz: pump_Hz_exact,
    fan_rpm,
  });
  const { pump_Hz } = settingAt(end(start.low), end(start.high), power_share);
  return {
    fuel_L: dose_uL === undefined ? null : nights * hours * fuelFlow(pump_Hz, dose_uL),
    battery_Ah: nights * hours * current_A,
  };
}
