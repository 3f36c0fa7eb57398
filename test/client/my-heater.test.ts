import { expect, test } from "vitest";
import { askedFor, keptOf } from "../../client/app/heater/facts.ts";
import { slipsOfEntry, slipsOfSettings, withoutSlips } from "../../client/app/heater/mistyped.ts";
import {
  MOST_OWN_TUNES,
  type MyHeater,
  myHeaters,
  NO_HEATER,
} from "../../client/app/heater/my-heater.ts";
import { withMine } from "../../client/app/heater/with-mine.ts";
import type { LogbookEntry, LogbookHeater } from "../../client/app/records/entry.ts";
import { withMeter } from "../../client/app/records/last-meter.ts";
import { FIRST_QUESTION } from "../../client/base/question.ts";
import { firstPreparation, preparationFor, usualMeter } from "../../client/on-site/plan.ts";
import { draftFor, emptyDraft } from "../../client/share/draft.ts";
import { MOST_OWN_ROWS } from "../../model/own-heater.ts";
import { ownTuneSchema } from "../../model/tune.ts";
import { EMPTY_ATLAS } from "../model/invented-fit.ts";

const changed_at = "2026-11-01T00:00:00.000Z";
const VAN: LogbookHeater = {
  id: "van-heater",
  name: "Van",
  heat_kW: 2,
  dose_uL: 18,
  low_fan_rpm: 1800,
  supply_V: 24,
  changed_at,
};
const BOAT: LogbookHeater = { id: "boat-heater", name: "Boat", heat_kW: 8, changed_at };

function tune(day: number, part: Partial<LogbookEntry> = {}): LogbookEntry {
  return {
    id: `tune-of-day-${day}`,
    heater_id: VAN.id,
    kind: "tune",
    at: `2026-10-${String(day).padStart(2, "0")}T18:00:00.000Z`,
    site: { place: "Hut", elevation_m: 1500, elevation_sd_m: 20, lat: 46.5, lon: 8.5 },
    air: { temperature_C: -4 },
    low: { pump_Hz: (90 + day) / 100, fan_rpm: 1800, co_ppm: 12 },
    high: { pump_Hz: 3.7, fan_rpm: 4600, co_below_ppm: 30, power: 8 },
    changed_at,
    ...part,
  };
}

test("the chosen heater, else the first; none where the average one was asked for", () => {
  const book = { heaters: [BOAT, VAN], entries: [] };
  expect(myHeaters(book, VAN.id, EMPTY_ATLAS).mine?.heater).toEqual(VAN);
  expect(myHeaters(book, undefined, EMPTY_ATLAS).mine?.heater).toEqual(BOAT);
  expect(myHeaters(book, "removed-since", EMPTY_ATLAS).mine?.heater).toEqual(BOAT);
  expect(myHeaters(book, NO_HEATER, EMPTY_ATLAS)).toEqual({ heaters: [BOAT, VAN], mine: null });
  expect(myHeaters({ heaters: [], entries: [] }, VAN.id, EMPTY_ATLAS).mine).toBeNull();
});

test("own tunes are the heater's newest with a CO at both ends, as the model takes them, no place among them", () => {
  const entries = [
    tune(1, { found: "bracketed" }),
    tune(2, { heater_id: BOAT.id }),
    tune(3, { low: { pump_Hz: 1, fan_rpm: 1800, co_above_ppm: 1000 } }),
    tune(4, { kind: "note" }),
    tune(5, { found: "stopped early" }),
  ];
  const { mine } = myHeaters({ heaters: [VAN, BOAT], entries }, VAN.id, EMPTY_ATLAS);
  expect(mine?.found_at.map((at) => at.slice(8, 10))).toEqual(["05", "01"]);
  expect(mine?.bracketed).toBe(1);
  expect(mine?.own_tunes[0]).toEqual({
    site: { elevation_m: 1500, elevation_sd_m: 20 },
    air: { temperature_C: -4 },
    low: { pump_Hz: 0.95, fan_rpm: 1800, co_ppm: 12 },
    high: { pump_Hz: 3.7, fan_rpm: 4600, co_below_ppm: 30 },
    tuned_on: "2026-10",
  });
  for (const own of mine?.own_tunes ?? []) expect(ownTuneSchema.safeParse(own).success).toBe(true);
});

test("no more own tunes than the model takes, the newest of them", () => {
  expect(MOST_OWN_TUNES).toBe(MOST_OWN_ROWS);
  const entries = Array.from({ length: 14 }, (_, i) => tune(i + 1));
  const { mine } = myHeaters({ heaters: [VAN], entries }, VAN.id, EMPTY_ATLAS);
  expect(mine?.own_tunes).toHaveLength(MOST_OWN_TUNES);
  expect(mine?.found_at.at(-1)?.slice(8, 10)).toBe("05");
});

test("what it is set to: by the newest tune, or by what was kept without a meter since", () => {
  const at = "2026-10-10T00:00:00.000Z";
  const low = { pump_Hz: 1.4, fan_rpm: 1700 };
  const high = { pump_Hz: 5, fan_rpm: 4500 };
  const van = { ...VAN, settings: { at, low, high } };
  const set = (...entries: LogbookEntry[]) =>
    myHeaters({ heaters: [van], entries }, van.id, EMPTY_ATLAS).mine;
  expect(set()?.settings).toEqual(van.settings);
  expect(set()?.heater).toMatchObject({ low_fan_rpm: 1800, high_fan_rpm: 4500 });
  expect(set()?.own_tunes).toEqual([]);
  expect(set(tune(9))?.settings).toEqual(van.settings);
  expect(set(tune(11))?.settings).toEqual({
    at: tune(11).at,
    low: { pump_Hz: 1.01, fan_rpm: 1800 },
    high: { pump_Hz: 3.7, fan_rpm: 4600 },
  });
  expect(
    myHeaters({ heaters: [VAN], entries: [] }, VAN.id, EMPTY_ATLAS).mine?.settings,
  ).toBeUndefined();
});

test("what looks mistyped lends neither fans nor settings, and its fuel counts as a note's would", () => {
  const slipped = tune(12, {
    high: { pump_Hz: 15, fan_rpm: 450, co_ppm: 9 },
    found: "bracketed",
    fuel_L: 3,
  });
  expect(slipsOfEntry(slipped, 2, { fit: EMPTY_ATLAS }).length).toBeGreaterThan(0);
  const { heat_kW, name, id } = VAN;
  const untold: LogbookHeater = { id, name, heat_kW, changed_at };
  const { mine } = myHeaters(
    { heaters: [untold], entries: [tune(9), slipped] },
    VAN.id,
    EMPTY_ATLAS,
  );
  expect(mine?.settings?.at).toBe(tune(9).at);
  expect(mine?.heater).toMatchObject({ low_fan_rpm: 1800, high_fan_rpm: 4600 });
  // The model sets it aside and says why; a minimum seen there narrows nothing.
  expect(mine?.own_tunes).toHaveLength(2);
  expect(mine?.bracketed).toBe(0);
  const [sound, told] = withoutSlips([tune(9), slipped], 2, { fit: EMPTY_ATLAS });
  expect(sound).toEqual(tune(9));
  expect(told).toMatchObject({ kind: "note", fuel_L: 3 });
  expect(told).not.toHaveProperty("low");
  // Settings that no meter found are held to the same.
  const low = { pump_Hz: 1.4, fan_rpm: 1700 };
  const high = { pump_Hz: 15, fan_rpm: 450 };
  expect(slipsOfSettings({ low, high }, 2, { fit: EMPTY_ATLAS }).map((one) => one.field)).toContain(
    "high.pump_Hz",
  );
  const settings = { at: changed_at, low, high };
  const guessed = myHeaters(
    { heaters: [{ ...untold, settings }], entries: [] },
    VAN.id,
    EMPTY_ATLAS,
  );
  expect(guessed.mine?.settings).toBeUndefined();
  expect(guessed.mine?.heater.low_fan_rpm).toBeUndefined();
});

test("the meter read with last stays with the heater; before it was kept there it is that of the newest tune that has one", () => {
  const meter = { name: "Blue", kind: "portable meter" as const, distance_m: 0.3 };
  const now = new Date("2026-11-20T20:00:00Z");
  const van = withMeter(VAN, { ...meter, floor_ppm: 5 }, now);
  expect(van).toEqual({
    ...VAN,
    meter: { ...meter, floor_ppm: 5 },
    changed_at: now.toISOString(),
  });
  // The same one says nothing new, and what a form does not ask stays; another kind's figures are its own.
  expect(withMeter(van, meter, new Date())).toBe(van);
  expect(withMeter(van, {}, new Date())).toBe(van);
  const other = { kind: "room alarm" as const, distance_m: 0.5 };
  expect(withMeter(van, other, now).meter).toEqual(other);
  const mineOf = (heater: LogbookHeater, ...entries: LogbookEntry[]) =>
    myHeaters({ heaters: [heater], entries }, VAN.id, EMPTY_ATLAS).mine;
  const entries = [tune(3, { meter }), tune(1, { meter: other }), tune(5)];
  expect(mineOf(VAN, ...entries)?.heater.meter).toEqual(meter);
  expect(mineOf(withMeter(VAN, other, now), ...entries)?.heater.meter).toEqual(other);

  // On site takes it until something else is typed, and again once more is known.
  const first = firstPreparation();
  const known = preparationFor(first, mineOf(van));
  expect(known.meter).toEqual({ ...usualMeter("portable meter"), ...meter, floor_ppm: 5 });
  const typed = { ...known, meter: { ...known.meter, lag_s: 60 } };
  expect(preparationFor(typed, mineOf(van)).meter.lag_s).toBe(60);
  expect(preparationFor(typed, mineOf(withMeter(van, other, now))).meter).toEqual({
    ...usualMeter("room alarm"),
    ...other,
  });
  // So does Share, which sends its kind and its distance.
  const mine = mineOf(van) as MyHeater;
  const draft = draftFor(emptyDraft(), mine);
  expect(draft.meter).toEqual({ kind: meter.kind, distance_m: 0.3 });
  const changed = { ...draft, meter: { kind: "other" as const } };
  expect(draftFor(changed, mine).meter).toEqual({ kind: "other" });
  const next = mineOf(withMeter(van, other, now)) as MyHeater;
  expect(draftFor(changed, next).meter).toEqual(other);
});

test("views take the heater's facts, and what was typed for the average heater stays as it was", () => {
  const van = { ...VAN, step_Hz: 0.05, step_rpm: 50 };
  const { mine } = myHeaters({ heaters: [van], entries: [] }, VAN.id, EMPTY_ATLAS);
  const typed = { ...FIRST_QUESTION, low_fan_rpm: 1500, high_fan_rpm: 4000, dose_uL: 30 };
  const asked = askedFor(typed, mine);
  const facts = { heat_kW: 2, low_fan_rpm: 1800, high_fan_rpm: undefined, dose_uL: 18 };
  const steps = { step_Hz: 0.05, step_rpm: 50 };
  expect(asked).toEqual({ ...typed, ...facts, ...steps });
  expect(askedFor(typed, null)).toBe(typed);
  const colder = { ...asked, air: { temperature_C: -20 } };
  expect(keptOf(colder, typed, mine)).toEqual({ ...typed, air: { temperature_C: -20 } });
  // A view that asks what the heater does not say keeps what was typed of that.
  const trip = { heat_kW: 5, high_fan_rpm: 4100, dose_uL: 30, tank_L: 10 };
  expect(withMine(trip, mine)).toEqual({
    heat_kW: 2,
    low_fan_rpm: 1800,
    high_fan_rpm: 4100,
    dose_uL: 18,
    tank_L: 10,
    ...steps,
  });
  expect(withMine(trip, null)).toBe(trip);
});
