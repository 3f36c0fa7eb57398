import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { type CoReading, coReadingOf } from "../co-reading.ts";
import type { End } from "../end.ts";
import { type EndSetting, mixture } from "../mixture.ts";
import { requireFinite, requirePositive } from "../numerics/finite.ts";
import { ln } from "../numerics/ln-exp.ts";

/** One end of a tune as it was left, and what the meter showed there. */
export interface LoggedReading extends EndSetting, CoReading {}

/** A tune of one's own heater, in the order of `at`. */
export interface LoggedTune {
  kind: "tune";
  id: string;
  /** Sorts by time: ISO 8601, all in one time zone. */
  at: string;
  density_kg_m3: number;
  low?: LoggedReading | undefined;
  high?: LoggedReading | undefined;
  /** The same text only for the same meter at the same spot; missing where that is not known. */
  meter?: string | undefined;
  hours?: number | undefined;
  /** Burnt since the entry before. */
  fuel_L?: number | undefined;
}

/** The heater was cleaned: what came before is another stretch. */
export interface LoggedCleaning {
  kind: "cleaning";
  id: string;
  at: string;
  hours?: number | undefined;
  fuel_L?: number | undefined;
}

export type Logged = LoggedTune | LoggedCleaning;

/** One end of one tune, ready to compare. */
export interface Point {
  id: string;
  at: string;
  /** 1 until the first cleaning, 2 until the second. */
  stretch: number;
  meter: string | undefined;
  hours: number | undefined;
  fuel_L: number | undefined;
  /** ln of pump rate per 1,000 rpm, and of the density ratio: mixture is their difference. */
  ln_rate: number;
  ln_density: number;
  pump_Hz: number;
  reading: CoReading;
}

/**
 * One end's points in order of time, whatever order they come in; fuel counted up from the first.
 * @throws RangeError naming the entry and the number that cannot be used
 */
export function pointsOf(logged: readonly Logged[], end: End): Point[] {
  const inOrder = [...logged].sort((a, b) => order(a.at, b.at) || order(a.id, b.id));
  const points: Point[] = [];
  let stretch = 1;
  let fuel_L: number | undefined = 0;
  for (const [i, one] of inOrder.entries()) {
    requireFinite({ [`${one.id}.hours`]: one.hours, [`${one.id}.fuel_L`]: one.fuel_L });
    // What the first burnt before it does not count; a gap later on breaks the count.
    if (i > 0)
      fuel_L = one.fuel_L === undefined || fuel_L === undefined ? undefined : fuel_L + one.fuel_L;
    if (one.kind === "cleaning") {
      stretch += 1;
      fuel_L = 0;
      continue;
    }
    const set = one[end];
    if (!set) continue;
    requirePositive({ [`${one.id}.density_kg_m3`]: one.density_kg_m3 });
    requireFinite({ [`${one.id}.co_ppm`]: set.co_ppm });
    const ln_density = ln(one.density_kg_m3 / STANDARD_DENSITY_kg_m3);
    points.push({
      id: one.id,
      at: one.at,
      stretch,
      meter: one.meter,
      hours: one.hours,
      fuel_L,
      ln_rate: ln(mixture(set, STANDARD_DENSITY_kg_m3)),
      ln_density,
      pump_Hz: set.pump_Hz,
      reading: coReadingOf(set),
    });
  }
  return points;
}

const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
