import type { Level } from "./stays.ts";

/** One level is clearly above another when they differ by so many standard deviations of their difference. */
const CLEARLY = 3;

/** Whether what the meter settled at is higher, beyond its noise. Off the scale it is known on one side alone. */
export function clearlyAbove(higher: Level, lower: Level): boolean {
  if (higher.stuck || higher.beyond === "floor" || lower.beyond === "ceiling") return false;
  return higher.ppm - lower.ppm > CLEARLY * Math.hypot(higher.sd_ppm, lower.sd_ppm);
}

export type Way = "lean" | "rich";

/** Whether a rate lies on that side of another. */
export function isOn(way: Way, pump_Hz: number, of_Hz: number): boolean {
  return way === "lean" ? pump_Hz < of_Hz - 1e-6 : pump_Hz > of_Hz + 1e-6;
}

/**
 * The nearest rate on that side of a rate where CO is clearly higher: every level there above every level here, so that
 * neither a gust nor a drifting meter makes a rise out of none. Undefined where none was seen.
 */
export function riseOn(levels: readonly Level[], pump_Hz: number, way: Way): number | undefined {
  const here = levels.filter((level) => Math.abs(level.pump_Hz - pump_Hz) < 1e-6);
  if (here.length === 0) return undefined;
  const rates = levels.map((level) => level.pump_Hz).filter((rate) => isOn(way, rate, pump_Hz));
  const risen = rates.filter((rate) =>
    levels
      .filter((level) => Math.abs(level.pump_Hz - rate) < 1e-6)
      .every((there) => here.every((level) => clearlyAbove(there, level))),
  );
  if (risen.length === 0) return undefined;
  return way === "lean" ? Math.max(...risen) : Math.min(...risen);
}

/** A minimum is bracketed when the meter showed it, and CO was clearly higher at a leaner and at a richer rate. */
export function bracketed(levels: readonly Level[], pump_Hz: number): boolean {
  const here = levels.filter((level) => Math.abs(level.pump_Hz - pump_Hz) < 1e-6);
  const isShown = here.length > 0 && here.every(({ beyond }) => beyond === undefined);
  return (
    isShown &&
    riseOn(levels, pump_Hz, "lean") !== undefined &&
    riseOn(levels, pump_Hz, "rich") !== undefined
  );
}
