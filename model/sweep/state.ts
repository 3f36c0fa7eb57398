import { blindWindowOf, type Limits, limitsOf, windowOf } from "./limits.ts";
import {
  requireReadings,
  type Sweep,
  type SweepReading,
  type SweepSetup,
  sweepOf,
} from "./setup.ts";
import { type Level, type Stay, staysOf } from "./stays.ts";

/** A rate that was read, with the mean of what the meter settled at there. */
export interface ReadRate {
  pump_Hz: number;
  ppm: number;
  beyond?: "floor" | "ceiling";
}

/** What the meter tells of the bottom: its figure, that it lies below the floor, or nothing but the end of its scale. */
export type Sight = "shown" | "below floor" | "above scale";

/** All that is known after these readings; everything else follows from it. */
export interface SweepState {
  sweep: Sweep;
  stays: Stay[];
  /** What settled, in order of time. */
  levels: Level[];
  /** From lean to rich. */
  rates: ReadRate[];
  /** The rate with the lowest CO; missing before anything has settled. */
  best?: ReadRate;
  sight: Sight;
  limits: Limits;
  flame_outs: number;
  relights_used: number;
}

/** @throws RangeError naming what is wrong with the setup or a reading */
export function stateOf(setup: SweepSetup, readings: readonly SweepReading[]): SweepState {
  const sweep = sweepOf(setup);
  requireReadings(readings);
  const stays = staysOf(sweep, readings);
  const levels = stays.flatMap(({ level }) => (level ? [level] : []));
  const rates = ratesOf(levels);
  const [first] = rates;
  const best = first && rates.reduce((a, b) => (b.ppm < a.ppm ? b : a));
  const sight = sightOf(levels);
  const flame_outs = stays.filter(({ flame_out }) => flame_out).length;
  const isBlind = levels.every(({ beyond }) => beyond);
  const window = levels.length > 0 && isBlind ? blindWindowOf(sweep) : windowOf(sweep);
  return {
    sweep,
    stays,
    levels,
    rates,
    ...(best && { best }),
    sight,
    limits: limitsOf(sweep, stays, window),
    flame_outs,
    relights_used: Math.max(sweep.relights_used, flame_outs),
  };
}

function ratesOf(levels: readonly Level[]): ReadRate[] {
  return [...new Set(levels.map(({ pump_Hz }) => pump_Hz))]
    .sort((a, b) => a - b)
    .map((pump_Hz) => {
      const here = levels.filter((level) => level.pump_Hz === pump_Hz);
      // Once below the floor or above the scale, the mean is not known.
      const beyond = here.find((level) => level.beyond === "floor") ?? here.find((l) => l.beyond);
      if (beyond)
        return { pump_Hz, ppm: beyond.ppm, ...(beyond.beyond && { beyond: beyond.beyond }) };
      return { pump_Hz, ppm: here.reduce((sum, { ppm }) => sum + ppm, 0) / here.length };
    });
}

function sightOf(levels: readonly Level[]): Sight {
  if (levels.some(({ beyond }) => beyond === "floor")) return "below floor";
  const isOff = levels.length > 0 && levels.every(({ beyond }) => beyond === "ceiling");
  return isOff ? "above scale" : "shown";
}
