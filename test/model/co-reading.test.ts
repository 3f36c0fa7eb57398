import { expect, test } from "vitest";
import { entrySchema } from "../../client/app/records/schema.ts";
import {
  CO_READINGS,
  type CoReading,
  finalCoOf,
  isFinalCo,
  kindOfReading,
} from "../../model/co-reading.ts";
import { tuneSchema } from "../../model/tune.ts";

test("a reading off the meter's scale is kept in the logbook and is no final CO: neither of a tune nor of an own tune", () => {
  const end: { pump_Hz: number; fan_rpm: number } & CoReading = { pump_Hz: 1.1, fan_rpm: 1700 };
  const ppm = { co_ppm: 12, co_below_ppm: 30, co_above_ppm: 999 };
  for (const kind of CO_READINGS) {
    const set: typeof end = { ...end, [kind]: ppm[kind] };
    const entry = {
      id: "invented-1",
      heater_id: "invented-2",
      kind: "tune",
      at: "2026-10-01T18:00:00Z",
    };
    const kept = {
      ...entry,
      changed_at: entry.at,
      site: { elevation_m: 900 },
      low: set,
      high: set,
    };
    expect(entrySchema.safeParse(kept).success, kind).toBe(true);
    const sent = { heater: { heat_kW: 5 }, site: { elevation_m: 900 }, low: set, high: set };
    const contributor = "an-invented-contributor";
    const isFinal = kind !== "co_above_ppm";
    expect(kindOfReading(set)).toBe(kind);
    expect(isFinalCo(set)).toBe(isFinal);
    expect(finalCoOf(set)).toEqual(isFinal ? { [kind]: ppm[kind] } : {});
    expect(tuneSchema.safeParse({ ...sent, contributor }).success, kind).toBe(isFinal);
  }
});
