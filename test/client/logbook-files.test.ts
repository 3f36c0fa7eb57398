import { parse } from "csv-parse/sync";
import {
  array,
  assert,
  asyncProperty,
  constant,
  constantFrom,
  double,
  integer,
  option,
  property,
  record,
  string,
  tuple,
} from "fast-check";
import { expect, test } from "vitest";
import { ENTRY_KINDS, type Logbook, type LogbookEntry } from "../../client/app/records/entry.ts";
import { caution } from "../../client/base/csv.ts";
import { Refused } from "../../client/base/refused.ts";
import { merge } from "../../client/logbook/merge.ts";
import { dataUrlOf } from "../../client/logbook/photo.ts";
import { logbookOfText } from "../../client/logbook/read-file.ts";
import { csvOfLogbook, jsonOfLogbook } from "../../client/logbook/write-file.ts";
import { logbookWords } from "../../client/texts/logbook.ts";
import { FOUND } from "../../model/fit/row.ts";
import { METER_KINDS } from "../../model/tune.ts";

const figure = (min: number, max: number) =>
  double({ min, max, noNaN: true, noDefaultInfinity: true });
const maybe = <T>(of: Parameters<typeof option<T>>[0]) => option(of, { nil: undefined });
const letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
const id = string({ unit: constantFrom(...letters), minLength: 8, maxLength: 24 });
const when = integer({ min: 0, max: 1e10 }).map((s) => new Date(1.7e12 + s).toISOString());
/** Whatever people write, formulas and line breaks too. */
const words = string({ minLength: 1, maxLength: 30, unit: "grapheme" });
const text = constantFrom("=1+1", "'quoted'", 'a "b", c;\r\n-d', "-").chain((odd) =>
  words.map((rest) => odd + rest),
);

const setting = record({ pump_Hz: figure(0.1, 20), fan_rpm: figure(100, 20_000) });
const heater = record({
  id,
  name: text,
  heat_kW: integer({ min: 2, max: 30 }).map((n) => n / 2),
  dose_uL: maybe(figure(1, 500)),
  tank_L: maybe(figure(0.1, 1000)),
  step_Hz: maybe(figure(0.01, 0.5)),
  step_rpm: maybe(figure(1, 500)),
  settings: maybe(record({ at: when, low: setting, high: setting })),
  meter: maybe(
    record({
      kind: constantFrom(...METER_KINDS),
      name: maybe(text),
      distance_m: maybe(figure(0.01, 10)),
      floor_ppm: maybe(figure(0, 100)),
      lag_s: maybe(figure(1, 300)),
    }),
  ),
  hours: maybe(figure(0, 1e6)),
  changed_at: when,
});
const sweep = record({
  minimum_Hz: figure(0.1, 20),
  lower_Hz: figure(0, 20),
  upper_Hz: figure(0, 40),
  level: constant(0.8),
  flat_lower_Hz: maybe(figure(0, 20)),
});
const end = tuple(
  figure(0.1, 20),
  figure(100, 20_000),
  constantFrom("co_ppm", "co_below_ppm", "co_above_ppm"),
  integer({ min: 1, max: 100 }),
  maybe(sweep),
).map(([pump_Hz, fan_rpm, reading, ppm, found]) => ({
  pump_Hz,
  fan_rpm,
  [reading]: ppm,
  ...(found && { sweep: found }),
}));
const photo = array(integer({ min: 0, max: 255 }), { minLength: 1, maxLength: 40 }).map(
  (bytes) => new Blob([new Uint8Array(bytes)], { type: "image/jpeg" }),
);
const entryOf = (heater_id: string) =>
  record({
    id,
    heater_id: constant(heater_id),
    kind: constantFrom(...ENTRY_KINDS),
    at: when,
    site: record({
      place: maybe(text),
      elevation_m: figure(-500, 6000),
      elevation_sd_m: maybe(figure(0, 2000)),
    }),
    air: maybe(record({ temperature_C: figure(-60, 50), humidity_pct: maybe(figure(0, 100)) })),
    low: end,
    high: end,
    found: maybe(constantFrom(...FOUND)),
    meter: maybe(record({ kind: constantFrom(...METER_KINDS), distance_m: figure(0.01, 10) })),
    hours: maybe(figure(0, 1e6)),
    notes: maybe(text),
    photo: maybe(photo),
    shared: maybe(record({ id: id, receipt: id })),
    changed_at: when,
  });
const book = array(heater, { minLength: 1, maxLength: 3 })
  .chain((heaters) =>
    tuple(constant(heaters), array(entryOf(heaters[0]?.id ?? ""), { maxLength: 5 })),
  )
  .map(([heaters, entries]): Logbook => {
    const ids = [...heaters, ...entries].map((one) => one.id);
    const first = <T extends { id: string }>(list: T[]) =>
      list.filter(
        (one, i) => ids.indexOf(one.id) === ids.lastIndexOf(one.id) && list.indexOf(one) === i,
      );
    const kept = first(heaters);
    const there = new Set(kept.map((one) => one.id));
    return plain({
      heaters: kept,
      entries: first(entries as LogbookEntry[]).filter((e) => there.has(e.heater_id)),
    });
  });

/** Without fields that are undefined, as a file has it; photos stay. */
function plain({ heaters, entries }: Logbook): Logbook {
  return {
    heaters: JSON.parse(JSON.stringify(heaters)),
    entries: entries.map(({ photo: picture, ...entry }) => ({
      ...JSON.parse(JSON.stringify(entry)),
      ...(picture && { photo: picture }),
    })),
  };
}

const bare = ({ heaters, entries }: Logbook) =>
  plain({ heaters, entries: entries.map(({ photo: _, ...entry }) => entry) });
const photosOf = ({ entries }: Logbook) =>
  Promise.all(entries.map(({ photo: picture }) => picture && dataUrlOf(picture)));

test("out as JSON and in again: the same, photos too", async () => {
  await assert(
    asyncProperty(book, async (kept) => {
      const again = logbookOfText(await jsonOfLogbook(kept));
      expect(bare(again)).toEqual(bare(kept));
      expect(await photosOf(again)).toEqual(await photosOf(kept));
    }),
    { numRuns: 60 },
  );
});

test("out as CSV and in again: the same without photos, whatever the texts hold", () => {
  assert(
    property(book, (kept) => {
      expect(bare(logbookOfText(csvOfLogbook(kept)))).toEqual(bare(kept));
    }),
    { numRuns: 60 },
  );
});

test("no cell of text begins like a formula", () => {
  assert(
    property(book, (kept) => {
      const lines: string[][] = parse(csvOfLogbook(kept), { bom: true });
      for (const cell of lines.flat()) expect(cell).not.toMatch(/^[=+@\t\r]/);
    }),
    { numRuns: 30 },
  );
});

test("the cautions go along in every row and at the head of the JSON file", async () => {
  await assert(
    asyncProperty(book, async (kept) => {
      const rows = parse(csvOfLogbook(kept), { columns: true }) as Record<string, string>[];
      expect(rows).toHaveLength(kept.heaters.length + kept.entries.length);
      for (const row of rows) expect(row.caution).toBe(caution());
      expect(JSON.parse(await jsonOfLogbook(kept)).caution).toBe(caution());
    }),
    { numRuns: 10 },
  );
});

test("bringing the same again changes nothing, from either file; half of it brought first gives the same", async () => {
  await assert(
    asyncProperty(book, async (kept) => {
      const total = kept.heaters.length + kept.entries.length;
      for (const file of [await jsonOfLogbook(kept), csvOfLogbook(kept)]) {
        expect(merge(kept, logbookOfText(file))).toEqual({
          put: { heaters: [], entries: [] },
          added: 0,
          changed: 0,
          same: total,
        });
      }
      const half = { heaters: kept.heaters, entries: kept.entries.slice(1) };
      const { put, added } = merge(half, kept);
      expect([put.heaters, put.entries]).toEqual([[], kept.entries.slice(0, 1)]);
      expect(added).toBe(Math.min(1, kept.entries.length));
    }),
    { numRuns: 40 },
  );
});

const HEATER = { id: "heater-01", name: "van", heat_kW: 5, changed_at: "2026-11-01T00:00:00.000Z" };
const NOTE: LogbookEntry = {
  id: "entry-001",
  heater_id: HEATER.id,
  kind: "note",
  at: "2026-11-02T18:00:00.000Z",
  notes: "old",
  changed_at: "2026-11-02T18:00:00.000Z",
};

test("the newer edit wins whichever side it is on, and keeps photo and receipt that only the other has", () => {
  const shared = { id: "tune", receipt: "secret" };
  const picture = new Blob(["x"], { type: "image/png" });
  const here: Logbook = { heaters: [HEATER], entries: [{ ...NOTE, photo: picture, shared }] };
  const newer = { ...NOTE, notes: "new", changed_at: "2026-11-03T00:00:00.000Z" };
  const { put, changed } = merge(here, { heaters: [], entries: [newer] });
  expect(changed).toBe(1);
  expect(put.entries).toEqual([{ ...newer, photo: picture, shared }]);
  const back = merge({ heaters: [HEATER], entries: [newer] }, here);
  expect([back.put.entries, back.same]).toEqual([[], 2]);
});

const good = () => jsonOfLogbook({ heaters: [HEATER], entries: [NOTE] });
const why = (text: string): { message: string; line: number | undefined } => {
  try {
    logbookOfText(text);
  } catch (error) {
    if (error instanceof Refused) return { message: error.message, line: error.line };
    throw error;
  }
  throw new Error("It was taken.");
};

test("what is wrong with a JSON file is said with its line", async () => {
  const json = await good();
  const { files, check } = logbookWords;
  expect(why("")).toMatchObject({ message: files.empty });
  expect(why(json.slice(0, -8)).message).toBe(files.notJson);
  expect(why('{"heaters": [], "entries": []}').message).toBe(files.notLogbook);
  expect(why(json.replace('"version": 1', '"version": 2')).message).toBe(files.newer);
  expect(why(json.replace('"note"', '"dance"'))).toEqual({
    message: files.field("kind", check.choice),
    line: 6,
  });
  expect(why(json.replace('"notes":"old"', '"found":"by ear"')).message).toBe(
    files.field("found", check.choice),
  );
  expect(why(json.replace('"heat_kW":5', '"heat_kW":500'))).toEqual({
    message: files.field("heat_kW", check.between("1", "15")),
    line: 3,
  });
  expect(why(json.replace('"notes"', '"nots"')).message).toBe(files.field("nots", check.unknown));
  expect(why(json.replace('"note"', '"tune"')).message).toBe(files.field("kind", check.bothEnds));
  expect(why(json.replace("entry-001", "heater-01")).message).toBe(files.twice("heater-01"));
  const bad = json.replace('"notes":"old"', '"photo":"data:text/html;base64,AAAA"');
  expect(why(bad)).toEqual({ message: files.field("photo", check.photo), line: 6 });
});

test("what is wrong with a CSV file is said with its line; decimal commas between semicolons are read", () => {
  const csv = csvOfLogbook({ heaters: [HEATER], entries: [{ ...NOTE, hours: 12.5 }] });
  const { files, check } = logbookWords;
  expect(why("name,elevation_m\na,2")).toEqual({ message: files.head, line: 1 });
  expect(why(csv.replace("12.5", "a dozen"))).toEqual({
    message: files.field("hours", check.number),
    line: 3,
  });
  expect(why(csv.replace("\r\nnote,", "\r\ndance,"))).toEqual({ message: files.kind, line: 3 });
  expect(why(`${csv}note,only\r\n`)).toMatchObject({ message: files.badCsv, line: 4 });
  const german = csv.replaceAll(",", ";").replace("12.5", "12,5");
  expect(logbookOfText(german).entries[0]?.hours).toBe(12.5);
  const cold = { ...NOTE, site: { elevation_m: -390 }, air: { temperature_C: -10.5 } };
  const written = csvOfLogbook({ heaters: [HEATER], entries: [cold] });
  const trueMinus = written.replace("-390", "−390").replace("-10.5", "−10.5");
  expect(trueMinus).not.toBe(written);
  expect(logbookOfText(trueMinus).entries).toEqual([cold]);
});

test("an entry whose heater is nowhere is refused, and nothing of the file is taken", () => {
  const brought = { heaters: [HEATER], entries: [{ ...NOTE, heater_id: "nobody-00" }] };
  expect(() => merge({ heaters: [], entries: [] }, brought)).toThrow(
    logbookWords.files.noHeater("nobody-00"),
  );
});
