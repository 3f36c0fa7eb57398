import type { HeaterMeter, LogbookEntry, LogbookHeater } from "./entry.ts";
import { logbook, putAll, putHeater } from "./store.ts";

/** All of a meter, in the order in which it is kept. */
const FIELDS = [
  "name",
  "kind",
  "distance_m",
  "resolution_ppm",
  "floor_ppm",
  "ceiling_ppm",
  "lag_s",
] as const satisfies readonly (keyof HeaterMeter)[];

/** The heater with the meter it was read with last; what was known of another kind of meter is not this one's. */
export function withMeter(heater: LogbookHeater, read: HeaterMeter, now: Date): LogbookHeater {
  const known = heater.meter?.kind === read.kind ? heater.meter : undefined;
  const all = FIELDS.map((field) => [field, read[field] ?? known?.[field]] as const);
  const meter: HeaterMeter = Object.fromEntries(all.filter(([, value]) => value !== undefined));
  const isKnown = FIELDS.every((field) => meter[field] === heater.meter?.[field]);
  if (isKnown || Object.keys(read).length === 0) return heater;
  // In the order in which a file brings it back.
  const { changed_at: _, ...rest } = heater;
  return { ...rest, meter, changed_at: now.toISOString() };
}

/** Keeps a meter with its heater, for every view to begin from. @throws NotKept */
export async function keepMeter(heater_id: string, read: HeaterMeter): Promise<void> {
  const heater = (await logbook()).heaters.find(({ id }) => id === heater_id);
  const next = heater && withMeter(heater, read, new Date());
  if (next && next !== heater) await putHeater(next);
}

/** Keeps an entry, and with its heater the meter of its newest tune. @throws NotKept */
export async function putRead(entry: LogbookEntry): Promise<void> {
  const { heaters, entries } = await logbook();
  const heater = heaters.find(({ id }) => id === entry.heater_id);
  const isNewest = entries.every(
    ({ id, heater_id, kind, at }) =>
      id === entry.id || heater_id !== entry.heater_id || kind !== "tune" || at <= entry.at,
  );
  const next =
    heater && entry.meter && isNewest ? withMeter(heater, entry.meter, new Date()) : heater;
  await putAll({ heaters: next && next !== heater ? [next] : [], entries: [entry] });
}
