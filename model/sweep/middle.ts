import type { CoReading } from "../co-reading.ts";
import type { EndSetting } from "../mixture.ts";
import { requirePositive } from "../numerics/finite.ts";
import { poorAbove_ppm } from "./noise.ts";
import { meterOf, type SweepSetup } from "./setup.ts";

/** An end as the sweep left it: what is set and what the meter showed there. */
export interface MatchedEnd extends EndSetting, CoReading {}

/** What to expect of the meter at a power between or at the ends. */
export interface CheckExpectation {
  pump_Hz: number;
  fan_rpm: number;
  /** The middle of what is expected; missing where the meter showed nothing at either end. */
  co_ppm?: number;
  /** Above this the check is poor. */
  upper_ppm: number;
}

/**
 * Half way between the ends, pump and fan alike, as a controller runs that is linear between them. With both ends at
 * their lowest the mixture there lies between theirs, so CO between theirs is expected.
 * @throws RangeError naming what is not positive
 */
export function middleOf(
  low: MatchedEnd,
  high: MatchedEnd,
  meter: SweepSetup["meter"],
): CheckExpectation {
  requirePositive({ low_pump_Hz: low.pump_Hz, low_fan_rpm: low.fan_rpm });
  requirePositive({ high_pump_Hz: high.pump_Hz, high_fan_rpm: high.fan_rpm });
  const shown = [low.co_ppm, high.co_ppm].filter((ppm) => ppm !== undefined);
  return {
    pump_Hz: (low.pump_Hz + high.pump_Hz) / 2,
    fan_rpm: (low.fan_rpm + high.fan_rpm) / 2,
    ...(shown.length === 2 && { co_ppm: Math.sqrt((shown[0] as number) * (shown[1] as number)) }),
    upper_ppm: poorAbove(Math.max(0, ...shown), meter),
  };
}

/** At full power: what the high end settled at, met once more by running up to it. */
export function fullPowerOf(high: MatchedEnd, meter: SweepSetup["meter"]): CheckExpectation {
  const { pump_Hz, fan_rpm, co_ppm } = high;
  const upper_ppm = poorAbove(co_ppm ?? 0, meter);
  return { pump_Hz, fan_rpm, ...(co_ppm !== undefined && { co_ppm }), upper_ppm };
}

/** "unseen": the meter shows nothing, and nothing can be said. */
export function judgeCheck(
  { upper_ppm }: CheckExpectation,
  { co_ppm, co_above_ppm }: CoReading,
): "good" | "poor" | "unseen" {
  if (co_above_ppm !== undefined) return "poor";
  if (co_ppm === undefined) return "unseen";
  return co_ppm > upper_ppm ? "poor" : "good";
}

function poorAbove(highest_ppm: number, meter: SweepSetup["meter"]): number {
  return poorAbove_ppm({ meter: meterOf(meter) }, highest_ppm);
}
