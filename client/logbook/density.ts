import { possibleAir } from "../../model/screen/possible-air.ts";
import type { LogbookEntry } from "../app/records/entry.ts";

/** Air density of an entry, kg/m³; undefined where no site is given or its figures cannot stand together. */
export function densityOf({ site, air }: LogbookEntry): number | undefined {
  if (!site) return undefined;
  try {
    return possibleAir(site.elevation_m, air ?? {}).density_kg_m3;
  } catch {
    return undefined;
  }
}
