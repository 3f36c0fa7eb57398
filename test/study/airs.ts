import type { StudyAir } from "../../client/atlas/bands/report.ts";
import { airAt, STANDARD_DENSITY_kg_m3, standardDensity } from "../../model/air.ts";

/** The air that errors and bands are looked at. */
export const AIRS: readonly StudyAir[] = [
  { label: "0 m, −20 °C", density_kg_m3: airAt(0, { temperature_C: -20 }).density_kg_m3 },
  { label: "0 m", density_kg_m3: standardDensity(0) },
  { label: "1,500 m", density_kg_m3: standardDensity(1500) },
  { label: "3,000 m", density_kg_m3: standardDensity(3000) },
  { label: "4,500 m", density_kg_m3: standardDensity(4500) },
];

/** Nominal levels at which bands are judged. */
export const LEVELS = [0.5, 0.8, 0.9, 0.95, 0.99] as const;

/** x of the model: ln(density/1.225). */
export function lnRatio(density_kg_m3: number): number {
  return Math.log(density_kg_m3 / STANDARD_DENSITY_kg_m3);
}
