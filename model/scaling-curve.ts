import { densityAltitude, geometric } from "./air.ts";
import { type Band, bandsAt } from "./fit/bands.ts";
import type { GroupFit } from "./fit/group.ts";
import { MEAN_LEVEL, NEW_HEATER_LEVELS } from "./start.ts";

/** A point of the fitted curve: pump rate per fan speed with both bands in air of one density. */
export interface ScalingCurvePoint {
  density_kg_m3: number;
  /** Elevation at which the standard atmosphere has this density. */
  elevation_m: number;
  pump_Hz_per_krpm: number;
  mean_band: Band;
  new_heater_bands: Band[];
}

/** From the thinnest air people sleep in to the densest, in even steps of ln density. */
export const THINNEST_kg_m3 = 0.64;
export const DENSEST_kg_m3 = 1.5;
const CURVE_STEPS = 48;

/** How settings scale with the air by the fit of one heat class and end. */
export function scalingCurve(group: GroupFit): ScalingCurvePoint[] {
  return Array.from({ length: CURVE_STEPS + 1 }, (_, i) => {
    const density_kg_m3 = THINNEST_kg_m3 * (DENSEST_kg_m3 / THINNEST_kg_m3) ** (i / CURVE_STEPS);
    const bands = bandsAt(group, density_kg_m3, {
      mean_levels: [MEAN_LEVEL],
      new_heater_levels: NEW_HEATER_LEVELS,
    });
    return {
      density_kg_m3,
      elevation_m: geometric(densityAltitude(density_kg_m3)),
      pump_Hz_per_krpm: bands.pump_Hz_per_krpm,
      mean_band: bands.mean_bands[0] as Band,
      new_heater_bands: bands.new_heater_bands,
    };
  });
}
