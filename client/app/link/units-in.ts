import { z } from "zod";

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
