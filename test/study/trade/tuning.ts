import type { Seeded } from "./draws.ts";
import { bestPumpRate, fanSpeed } from "./heater.ts";
import { exhaustCO, reading } from "./meter.ts";
import type { Night } from "./nights.ts";
import type { Owner } from "./owner.ts";
import type { End, Found } from "./row.ts";
import { onStep, stopEarly, sweepProperly } from "./sweeping.ts";
import type { Trade } from "./trade.ts";

/** What an owner ends up with at one end in one night. */
export interface Tuned {
  pump_Hz: number;
  fan_rpm: number;
  best_Hz: number;
  found: Found | undefined;
}

/** How the owner goes about it: as the owner does, properly, early, or by what the atlas suggests (Hz). */
export type Manner = "own" | "properly" | "early";

/** The heater's best pump rate at this end, this night, with what differs from one tune to the next. */
export function bestTonight(
  random: Seeded,
  trade: Trade,
  owner: Owner,
  end: End,
  night: Night,
  fan_rpm: number,
): number {
  const best_Hz = bestPumpRate(owner.heater, trade.burning, end, fan_rpm, night);
  return best_Hz * Math.exp(trade.burning.again_sd * random.normal());
}

export function tuneEnd(
  random: Seeded,
  trade: Trade,
  owner: Owner,
  end: End,
  night: Night,
  manner: Manner = "own",
  start_Hz = owner.set_Hz[end],
): Tuned {
  const fan_rpm = fanSpeed(owner.heater, end, night.x);
  const best_Hz = bestTonight(random, trade, owner, end, night, fan_rpm);
  const at = { random, meter: owner.meter, bowl: owner.bowl[end], end, best_Hz };
  const early = manner === "early" || (manner === "own" && random.uniform() < owner.stopsEarly);
  let pump_Hz = early
    ? stopEarly(at, start_Hz, owner.goodEnough_ppm)
    : sweepProperly(at, start_Hz, owner.habit[end]);
  if (owner.factor !== 1) pump_Hz = onStep(pump_Hz * owner.factor);
  if (owner.careless > 0) pump_Hz = onStep(pump_Hz * Math.exp(owner.careless * random.normal()));
  return { pump_Hz, fan_rpm, best_Hz, found: early ? "stopped early" : "bracketed" };
}

/** The CO that the owner's meter shows at a setting. */
export function finalCO(
  random: Seeded,
  owner: Owner,
  end: End,
  pump_Hz: number,
  best_Hz: number,
): number {
  // Far off the heater would smoke or go out: nobody writes such a reading down.
  const off = Math.max(-0.35, Math.min(0.8, pump_Hz / best_Hz - 1));
  return reading(random, owner.meter, exhaustCO(owner.bowl[end], off));
}
