import { riseOn } from "./bracket.ts";
import type { SweepReading, SweepSetup } from "./setup.ts";
import { type ReadRate, stateOf } from "./state.ts";
import type { Level } from "./stays.ts";

/** CO over pump rate as it was read, for a chart. */
export interface Picture {
  /** What each stay settled at, in order of time. */
  levels: Level[];
  /** The mean at each rate, from lean to rich: the line through the readings. */
  rates: ReadRate[];
  /** The lowest so far. */
  best?: ReadRate;
  /** The nearest rates with clearly more CO than the lowest, where they were seen. */
  risen_Hz: { lean?: number; rich?: number };
}

/** @throws RangeError naming what is wrong with the setup or a reading */
export function pictureOf(setup: SweepSetup, readings: readonly SweepReading[]): Picture {
  const { levels, rates, best } = stateOf(setup, readings);
  const lean = best && riseOn(levels, best.pump_Hz, "lean");
  const rich = best && riseOn(levels, best.pump_Hz, "rich");
  return {
    levels,
    rates,
    ...(best && { best }),
    risen_Hz: { ...(lean !== undefined && { lean }), ...(rich !== undefined && { rich }) },
  };
}
