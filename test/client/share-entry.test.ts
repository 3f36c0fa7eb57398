import { expect, test } from "vitest";
import { slipsOfEntry } from "../../client/app/heater/mistyped.ts";
import type { LogbookEntry, LogbookHeater } from "../../client/app/records/entry.ts";
import { FIRST_QUESTION, type Question } from "../../client/base/question.ts";
import { draftOfEntry, entryOf, newDraft, withSuggestions } from "../../client/logbook/draft.ts";
import { shareable } from "../../client/logbook/share-entry.ts";
import { EMPTY_ATLAS } from "../model/invented-fit.ts";

const NOW = new Date("2026-11-20T20:00:00Z");
const heater: LogbookHeater = {
  id: "heater-1",
  name: "Trailer",
  heat_kW: 5,
  changed_at: NOW.toISOString(),
};
const end = (pump_Hz: number, fan_rpm: number) => ({ pump_Hz, fan_rpm, co_ppm: 12 });
const entry: LogbookEntry = {
  id: "entry-0001",
  heater_id: heater.id,
  kind: "tune",
  at: NOW.toISOString(),
  site: { elevation_m: 2243, elevation_sd_m: 31, lat: 41.2, lon: 74.9 },
  low: end(0.9, 1700),
  high: end(3.7, 4500),
  changed_at: NOW.toISOString(),
};
const siteSent = async (of: LogbookEntry) => {
  const said = await shareable(of, heater, "key-made-on-sending");
  return "tune" in said ? said.tune.site : said.why;
};

test("an entry's estimated elevation is shared with its uncertainty, both to 10 m", async () => {
  expect(await siteSent(entry)).toMatchObject({ elevation_m: 2240, elevation_sd_m: 40 });
  const known = { ...entry, site: { ...entry.site, elevation_m: 2243, elevation_sd_m: undefined } };
  expect(await siteSent(known)).toMatchObject({ elevation_m: 2243 });
  expect(await siteSent(known)).not.toHaveProperty("elevation_sd_m");
});

test("it stays with the entry through the form, and with the next entry at the same place", () => {
  const again = entryOf(draftOfEntry(entry), NOW);
  expect("entry" in again && again.entry.site).toEqual(entry.site);
  const next = newDraft("tune", heater, [entry], NOW, undefined);
  expect(next).toMatchObject({ elevation_m: 2243, elevation_sd_m: 31 });
});

test("what Start was asked about is not asked again: a new tune is at that place until it is changed", () => {
  const asked: Question = {
    ...FIRST_QUESTION,
    site: { elevation_m: 3094.4, elevation_sd_m: 12, elevation_source: "known point" },
    place: "Flatfield",
    lat: 41.2,
    lon: 74.9,
  };
  const draft = (question: Question | undefined) =>
    newDraft("tune", heater, [entry], NOW, question);
  const site = { place: "Flatfield", elevation_m: 3094, elevation_sd_m: 12, lat: 41.2, lon: 74.9 };
  expect(draft(asked)).toMatchObject(site);
  // A position without a name may be the device's: its elevation alone goes along.
  const unnamed = draft({ ...asked, place: null });
  expect(unnamed).toMatchObject({ place: null, elevation_m: 3094, elevation_sd_m: 12 });
  expect([unnamed.lat, unnamed.lon]).toEqual([undefined, undefined]);
  // Nothing was asked yet: the elevation that Start begins with is nobody's. The last tune's place stands.
  for (const question of [undefined, FIRST_QUESTION, { ...FIRST_QUESTION, heat_kW: 2 }])
    expect(draft(question)).toMatchObject({ elevation_m: 2243, lat: 41.2 });
  const note = newDraft("note", heater, [entry], NOW, asked);
  expect(note.place).toBeNull();
  expect(note.elevation_m).toBeUndefined();
});

test("how it was found is shared with it, stays through the form, and is not said of the next tune or of a note", async () => {
  const swept: LogbookEntry = { ...entry, found: "bracketed" };
  const foundSent = async (of: LogbookEntry) => {
    const said = await shareable(of, heater, "key-made-on-sending");
    return "tune" in said ? said.tune.found : said.why;
  };
  expect(await foundSent(swept)).toBe("bracketed");
  expect(await foundSent(entry)).toBeUndefined();
  const again = entryOf(draftOfEntry(swept), NOW);
  expect("entry" in again && again.entry.found).toBe("bracketed");
  expect(newDraft("tune", heater, [swept], NOW, undefined).found).toBeUndefined();
  const note = entryOf({ ...draftOfEntry(swept), kind: "note" }, NOW);
  expect("entry" in note && note.entry).not.toHaveProperty("found");
});

test("a slip is no error of the form's: pulses a minute and feet are asked about, and the suggestions put them right", () => {
  const draft = draftOfEntry({
    ...entry,
    site: { ...entry.site, elevation_m: 9800, elevation_sd_m: 31 },
    low: end(54, 1700),
    high: end(222, 4500),
  });
  const made = entryOf(draft, NOW);
  if (!("entry" in made)) throw new Error(JSON.stringify(made.errors));
  const slips = slipsOfEntry(made.entry, heater.heat_kW, { fit: EMPTY_ATLAS });
  expect(Object.fromEntries(slips.map(({ field, suggestion }) => [field, suggestion]))).toEqual({
    "site.elevation_m": 2987,
    "low.pump_Hz": 0.9,
    "high.pump_Hz": 3.7,
  });
  const meant = slips.map(({ field, suggestion = 0 }) => ({ field, value: suggestion }));
  const mended = entryOf(withSuggestions(draft, meant), NOW);
  if (!("entry" in mended)) throw new Error(JSON.stringify(mended.errors));
  expect(mended.entry).toMatchObject({ low: end(0.9, 1700), high: end(3.7, 4500) });
  expect(mended.entry.site).toMatchObject({ elevation_m: 2987 });
  // What was typed is no estimate.
  expect(mended.entry.site?.elevation_sd_m).toBeUndefined();
  expect(slipsOfEntry(mended.entry, heater.heat_kW, { fit: EMPTY_ATLAS })).toEqual([]);
});
