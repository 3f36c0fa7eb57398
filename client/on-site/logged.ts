import { coReadingOf } from "../../model/co-reading.ts";
import { ENDS, type End } from "../../model/end.ts";
import { chooseHeater } from "../app/heater/my-heater.ts";
import type { LogbookEntry, LogbookHeater, LoggedEnd } from "../app/records/entry.ts";
import { withMeter } from "../app/records/last-meter.ts";
import { logbook, putAll } from "../app/records/store.ts";
import { foundIn, runOf } from "./run.ts";
import type { Session } from "./session.ts";

/** The id of the heater that a sweep brings into the logbook: one that was not in it. */
export const broughtBy = (session: Session): string => `heater-${session.id}`;

/**
 * Puts a finished sweep into the logbook, in place of an earlier copy of the same sweep. Its heater becomes the chosen one:
 * that it was begun for, or a new one with this name.
 * @returns heaters of its size where it was begun for none: their owner is to say which, and nothing is kept until then
 * @throws NotKept when the browser does not keep it
 */
export async function logSweep(
  session: Session,
  name: string,
  now: Date,
): Promise<LogbookHeater[]> {
  const { heaters, entries } = await logbook();
  const { heater_id, heater: swept } = session.plan;
  const earlier = entries.find(({ id }) => id === session.id);
  const heater = heaters.find(({ id }) => id === (earlier?.heater_id ?? heater_id));
  const alike = heaters.filter(({ heat_kW }) => heat_kW === swept.heat_kW);
  if (!heater && alike.length > 0 && heater_id !== broughtBy(session)) return alike;
  const made = withMeter(heater ?? heaterOf(session, name, now), session.plan.meter, now);
  await putAll({
    heaters: made === heater ? [] : [made],
    entries: [{ ...earlier, ...entryOf(session, made.id, now) }],
  });
  if (!earlier) chooseHeater(made.id);
  return [];
}

function heaterOf(session: Session, name: string, now: Date): LogbookHeater {
  const { plan } = session;
  const { heat_kW, dose_uL, supply_V } = plan.heater;
  return {
    id: broughtBy(session),
    name,
    heat_kW,
    dose_uL,
    supply_V,
    low_fan_rpm: plan.ends.low.fan_rpm,
    high_fan_rpm: plan.ends.high.fan_rpm,
    changed_at: now.toISOString(),
  };
}

/** The logbook's entry of a finished sweep. */
export function entryOf(session: Session, heater_id: string, now: Date): LogbookEntry {
  const { plan, presses, begun_at, id, shared } = session;
  const run = runOf(session);
  const end = (which: End): LoggedEnd => {
    const { before_Hz, fan_rpm } = plan.ends[which];
    const { pump_Hz = before_Hz, sweep, ...result } = run.results[which] ?? {};
    return { pump_Hz, fan_rpm, ...coReadingOf(result), sweep };
  };
  const [low, high] = ENDS.map(end) as [LoggedEnd, LoggedEnd];
  const { place, lat, lon, elevation_m, elevation_sd_m, air, meter } = plan;
  return {
    id,
    heater_id,
    kind: "tune",
    at: new Date(presses.at(-1)?.at ?? begun_at).toISOString(),
    site: {
      elevation_m,
      ...(elevation_sd_m !== undefined && { elevation_sd_m }),
      ...(place !== null && { place }),
      ...(lat !== null && lon !== null && { lat, lon }),
    },
    air,
    low,
    high,
    found: foundIn(run),
    meter: { name: meter.name, kind: meter.kind, distance_m: meter.distance_m },
    ...(shared === "waits" && { shared: { key: id } }),
    ...(shared !== undefined &&
      shared !== "waits" && { shared: { id: shared.id, receipt: shared.receipt } }),
    changed_at: now.toISOString(),
  };
}
