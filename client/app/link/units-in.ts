import { z } from "zod";
import type { Unit } from "../../units.ts";

/** Units as an address writes them: letters alone. */
const NAMES: Record<string, string> = { C: "°C", F: "°F" };

/** "m,C" and the like: the unit of elevations, then that of temperatures. */
export const units = z
  .string()
  .regex(/^(m|ft),[CF]$/)
  .transform((text) => {
    const [elevation = "", temperature = ""] = text.split(",");
    return { elevation, temperature: NAMES[temperature] ?? temperature };
  });

export type UnitNames = z.infer<typeof units>;

export function unitsText(elevation: Unit, temperature: Unit): string {
  return `${elevation.name},${temperature.name.replace("°", "")}`;
}
