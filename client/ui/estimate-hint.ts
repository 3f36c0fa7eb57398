import { t } from "../texts/app.ts";
import { formatIn, type Unit } from "../units.ts";

/** Half-width of a normal distribution's 95 % interval, standard deviations. */
export const NORMAL_95 = 1.96;

/** How good an estimated elevation is, for the hint at its field; nothing of one that was typed. */
export function estimateHint(elevation_sd_m: number | undefined, unit: Unit): string | undefined {
  return elevation_sd_m ? t.site.estimate(formatIn(NORMAL_95 * elevation_sd_m, unit)) : undefined;
}
