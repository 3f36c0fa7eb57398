import type { Logged, LoggedTune } from "../../model/drift/logged.ts";
import type { LogbookEntry, LoggedMeter } from "../app/records/entry.ts";
import { densityOf } from "./density.ts";

/** One heater's entries as the drift is told from them; notes say nothing of it but their fuel. */
export function loggedOf(entries: readonly LogbookEntry[]): Logged[] {
  let fuelOfNotes = 0;
  return entries.flatMap((entry): Logged[] => {
    const { id, at, hours } = entry;
    const fuel_L = entry.fuel_L === undefined ? undefined : entry.fuel_L + fuelOfNotes;
    if (entry.kind === "note") {
      fuelOfNotes = fuel_L ?? fuelOfNotes;
      return [];
    }
    fuelOfNotes = 0;
    if (entry.kind === "cleaning") return [{ kind: "cleaning", id, at, hours, fuel_L }];
    const density_kg_m3 = densityOf(entry);
    if (density_kg_m3 === undefined) return [];
    const { low, high } = entry;
    const tune: LoggedTune = { kind: "tune", id, at, density_kg_m3, low, high, hours, fuel_L };
    return [{ ...tune, meter: meterKey(entry.meter) }];
  });
}

/** The same text only for the same meter at the same spot; a meter or a distance not named is not known. */
function meterKey(meter: LoggedMeter | undefined): string | undefined {
  const { name, kind, distance_m } = meter ?? {};
  if ((name === undefined && kind === undefined) || distance_m === undefined) return undefined;
  return JSON.stringify([name?.trim().toLowerCase(), kind, distance_m]);
}
