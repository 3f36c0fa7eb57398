import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, expect, test } from "vitest";
import { claimDatabase } from "../../db/claim.ts";
import { decisions, idempotencyKeys, tunes, waiting, waitingSizes } from "../../db/schema.ts";
import type { Tune } from "../../model/tune.ts";
import { importFile, takeBack } from "../../server/import/atlas-file.ts";
import { runImport } from "../../server/import/command.ts";
import { importText } from "../../server/import/import-text.ts";
import { mappingOf } from "../../server/import/mapping.ts";
import { readRow } from "../../server/import/row.ts";
import { ImportError, parseSpreadsheet } from "../../server/import/spreadsheet.ts";
import { openKeys } from "../../server/keys.ts";
import { requireOwnSecret } from "../../server/secret-check.ts";
import { settingsFrom } from "../../server/settings.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

/** An invented club's spreadsheet, as clubs write them: its own words and units, decimal commas, names, and mistakes. */
const INVENTED_CLUB = `Member;Size;Height (ft);Frost (F);Slow beat;Slow fan;Slow CO;Fast beat;Fast fan;Fast CO;Day;Remarks
Invented Ada;5;4265;26;66;1700;14;234;4400;11;2026-10-03;invented
invented  ada;5;7350;14;62;1700;<30;221;4400;18;04.10.2026;"invented,
over two lines"
Invented Ben;5;4300;23,5;67,5;1700;12;238;4400;9;2026-09;invented
Invented Cleo;5;4265;26;66;170;14;234;440;11;;fan in tens
Invented Cleo;5;4265;26;many;1700;14;234;4400;11;;not a number
Invented Ben;5;4.265;26;66;1700;14;234;4400;;;thousands, and nothing read
;;;;;;;;;;;
Invented Ben;5;4300;23,5;67,5;1700;12;238;4400;9;2026-09;the same again
`;
const MAPPING = {
  heat_kW: "Size",
  elevation_ft: "Height (ft)",
  temperature_F: "Frost (F)",
  low_pump_per_min: "Slow beat",
  low_fan_rpm: "Slow fan",
  low_co_ppm: "Slow CO",
  high_pump_per_min: "Fast beat",
  high_fan_rpm: "Fast fan",
  high_co_ppm: "Fast CO",
  tuned_on: "Day",
};
const BY_MEMBER = { ...MAPPING, contributor: "Member" };
const STORED = 4;
const OPENED = "2026-11-25T12:00:00Z";
const now = () => new Date(OPENED);
const SECRET = "a secret for tests only";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ newKeyDays: 6, opened: OPENED });
  await requireOwnSecret(atlas.db, await openKeys(SECRET));
  for (let n = 0; n < 3; n++) {
    const headers = { "Idempotency-Key": `somebody-${n}` };
    expect((await post(atlas.app, goodTune(n), headers)).status).toBe(201);
  }
  await atlas.fit.settle();
});
afterEach(() => atlas.close());

const settings = (env: NodeJS.ProcessEnv = {}) =>
  settingsFrom({ ATLAS_DB: atlas.file, ATLAS_SECRET: SECRET, ...env }, false);

async function run(
  text: string,
  options: { write?: boolean; countsNow?: boolean; name?: string } = {},
  given: Record<string, string> = BY_MEMBER,
  env: NodeJS.ProcessEnv = {},
  geographyDir = join("data", "geography"),
) {
  const all = { name: "club", write: false, countsNow: false, ...options };
  const sheet = parseSpreadsheet(text, "club.csv");
  const mapping = mappingOf(given, sheet.columns);
  const done = await importFile({ ...settings(env), geographyDir }, sheet, mapping, all, now);
  return { ...done, text: importText(done, sheet, mapping, all) };
}

const verdicts = ({ rows }: Awaited<ReturnType<typeof run>>) =>
  rows.map(({ line, verdict }) => [line, verdict]);

const bytes = () =>
  Buffer.concat(
    ["", "-wal", "-journal"]
      .map((end) => `${atlas.file}${end}`)
      .filter(existsSync)
      .map((file) => readFileSync(file)),
  ).toString("latin1");

/** All that the database holds; the log without its running numbers. */
async function everything() {
  const { db } = atlas;
  return {
    tunes: await db.select().from(tunes).orderBy(tunes.id),
    waiting: await db.select().from(waiting).orderBy(waiting.contributor),
    keys: await db.select().from(idempotencyKeys).orderBy(idempotencyKeys.key),
    log: (await db.select().from(decisions).orderBy(decisions.id)).map(({ id, ...rest }) => rest),
  };
}

const importedRows = async () =>
  (await atlas.db.select().from(tunes)).filter(({ imported }) => imported !== null);

test("a dry run says a verdict and why for each row, and changes no byte, beside an atlas that runs", async () => {
  const letGo = claimDatabase(atlas.file);
  const before = bytes();
  const done = await run(INVENTED_CLUB);
  expect(bytes()).toBe(before);
  letGo();
  expect(verdicts(done)).toEqual([
    [2, "accepted"],
    [3, "accepted"],
    [5, "accepted"],
    [6, "held"],
    [7, "refused"],
    [8, "refused"],
    [10, "repeated"],
  ]);
  const said = Object.fromEntries(done.rows.map(({ line, sentences }) => [line, sentences]));
  expect(said[6]?.join(" ")).toMatch(/"Slow fan": .*tens of rpm/);
  expect(said[7]).toEqual([
    '"Slow beat": "many" is not a number. Write the digits alone, without a unit.',
  ]);
  expect(said[8]?.[0]).toBe(
    '"Height (ft)": "4.265" may be 4265 or 4.265. Write it as 4265 or as 4.2650.',
  );
  expect(said[8]?.[1]).toMatch(/^"Fast CO": Give the final CO/);
  expect(said[8]).toHaveLength(2);
  expect(said[10]).toEqual(["It is the same as line 5."]);
  expect(done).toMatchObject({ contributors: 3, stored: 0 });
  expect(done.text).toContain("7 rows: 3 accepted, 1 held, 2 refused, 1 repeated. 3 contributors");
  expect(done.text).toContain("Columns not used: Remarks.");
  expect(done.text).toContain("Nothing was stored");
  expect(done.text).not.toMatch(/Ada|Ben|Cleo/i);
});

test("places are held against the ground as at the door; where its elevations are not built, that is said", async () => {
  // Leadville lies at 3,094 m (from memory; the place in the text is a real one, the tunes are invented).
  const placed = `${INVENTED_CLUB.split("\n", 1)[0]};North;East
;5;10150;26;56;1700;14;199;4400;11;;invented;39,25;-106,29
;5;300;26;66;1700;14;234;4400;11;;invented;39,25;-106,29
`;
  const given = { ...MAPPING, lat: "North", lon: "East" };
  const done = await run(placed, {}, given);
  expect(verdicts(done)).toEqual([
    [2, "accepted"],
    [3, "refused"],
  ]);
  expect(done.rows[1]?.sentences[0]).toMatch(
    /^"Height \(ft\)": The ground at this place is near 3,\d{3} m/,
  );
  expect(done.text).not.toContain("held against the ground");
  const groundless = await run(placed, {}, given, {}, "no such folder");
  expect(groundless.text).toContain("Elevations were not held against the ground");
});

test("where there is no atlas yet a dry run judges as a new one would, and makes no file", async () => {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-none-")), "atlas.db");
  const done = await run(INVENTED_CLUB, {}, BY_MEMBER, { ATLAS_DB: file });
  expect(verdicts(done)[0]).toEqual([2, "accepted"]);
  for (const end of ["", ".lock", ".secret", "-wal"])
    expect(existsSync(`${file}${end}`)).toBe(false);
});

test("what is stored is what POST /api/tunes would have stored, waits like it, and counts at once when that is said", async () => {
  const before = await atlas.db.select().from(waiting);
  const done = await run(INVENTED_CLUB, { write: true });
  expect(done.stored).toBe(STORED);
  const rows = await importedRows();
  expect(rows).toHaveLength(STORED);
  const waits = (await atlas.db.select().from(waiting)).map(({ contributor }) => contributor);
  expect(new Set(waits)).toEqual(
    new Set([...before, ...rows].map(({ contributor }) => contributor)),
  );
  expect(done.counts_from).toMatch(/^20\d\d-/);
  expect(done.text).toContain(`expected to count from ${done.counts_from}`);
  expect(done.text).toContain("New sizes: 5 kW. Tunes of a new size count once three");
  // The first row, worked out by hand: 4,265 ft = 1,299.97 m, 26 °F = −3.3 °C, 66 and 234 pulses a minute = 1.1 and 3.9 Hz.
  const sent: Tune = {
    heater: { heat_kW: 5 },
    site: { elevation_m: 1299.972 },
    air: { temperature_C: -10 / 3 },
    low: { pump_Hz: 1.1, fan_rpm: 1700, co_ppm: 14 },
    high: { pump_Hz: 3.9, fan_rpm: 4400, co_ppm: 11 },
    tuned_on: "2026-10",
    contributor: "contributor-key-0099",
  };
  const { id } = await (await post(atlas.app, sent)).json();
  const posted = (await atlas.db.select().from(tunes)).find((row) => row.id === id);
  const ofAtlas = {
    id: "",
    receipt_sha256: "",
    contributor: "",
    pseudonym: "",
    imported: "",
    submitted_on: "",
    judged_version: "",
  };
  const stripped = rows.map(({ sent: json, ...row }) => ({
    ...row,
    sent: JSON.parse(json),
    ...ofAtlas,
  }));
  const { sent: json, ...row } = posted as NonNullable<typeof posted>;
  expect(stripped).toContainEqual({ ...row, sent: JSON.parse(json), ...ofAtlas });
  const log = (await everything()).log.filter(({ tune }) => rows.some((one) => one.id === tune));
  expect(log.map(({ by, verdict }) => `${by} ${verdict}`).toSorted()).toEqual([
    "screening accepted",
    "screening accepted",
    "screening accepted",
    "screening held",
  ]);
  // Nobody's name, however it was typed, is anywhere in the file.
  expect(bytes()).not.toMatch(/Invented|ada\b|"club"/);

  const counted = await run(INVENTED_CLUB, { write: true, countsNow: true });
  expect(counted).toMatchObject({ stored: 0, counts_from: null });
  // Whom whoever runs the atlas knows speaks for a size.
  expect(await atlas.db.$count(waitingSizes)).toBe(0);
  const left = (await atlas.db.select().from(waiting)).map(({ contributor }) => contributor);
  expect(rows.filter(({ contributor }) => left.includes(contributor))).toEqual([]);
  expect(left).toHaveLength(before.length + 1);
  const said = (await everything()).log.filter(({ by }) => by === "steward");
  expect(said.map(({ verdict }) => verdict)).toEqual(["accepted", "accepted", "accepted"]);
});

test("done again it changes nothing and says so; what was added is stored, and an interrupted one goes on", async () => {
  const half = INVENTED_CLUB.split("\n").slice(0, 4).join("\n");
  expect((await run(half, { write: true })).stored).toBe(2);
  expect((await run(INVENTED_CLUB, { write: true })).stored).toBe(STORED - 2);
  const before = await everything();
  const again = await run(INVENTED_CLUB, { write: true });
  expect(await everything()).toEqual(before);
  expect(verdicts(again).filter(([, verdict]) => verdict === "there already")).toHaveLength(STORED);
  expect(again.text).toContain("Nothing was stored: all that can be is there already.");
  // Other rows under the same name would leave the old ones beside the new.
  const changed = INVENTED_CLUB.replace("7350", "7300");
  for (const write of [false, true]) {
    await expect(run(changed, { write })).rejects.toThrow(
      /1 tune stored as import "club".*--undo "club"/,
    );
  }
  expect(await everything()).toEqual(before);
  expect((await run(changed, { write: true, name: "another" })).stored).toBe(STORED);
});

test("members have a vote each; without a column of theirs all rows are one contributor's", async () => {
  await run(INVENTED_CLUB, { write: true, name: "by member" });
  const byMember = await importedRows();
  expect(new Set(byMember.map(({ contributor }) => contributor)).size).toBe(3);
  await takeBack(settings(), "by member", now);
  const done = await run(INVENTED_CLUB, { write: true, name: "as one" }, MAPPING);
  expect(done.text).toContain("All rows are one contributor's: one vote.");
  const asOne = await importedRows();
  expect(asOne).toHaveLength(STORED);
  expect(new Set(asOne.map(({ contributor }) => contributor)).size).toBe(1);
  expect(new Set(asOne.map(({ pseudonym }) => pseudonym)).size).toBe(1);
});

test("taken back an import is gone as a whole, from every byte, and nothing else is; then it may come again", async () => {
  await run(INVENTED_CLUB, { write: true, name: "another" }, MAPPING);
  const before = await everything();
  await run(INVENTED_CLUB, { write: true });
  const kept = new Set(before.tunes.map(({ id }) => id));
  const gone = (await importedRows()).filter(({ id }) => !kept.has(id));
  expect(gone).toHaveLength(STORED);
  const traces = gone.flatMap((row) => [
    row.id,
    row.contributor,
    row.receipt_sha256,
    row.pseudonym,
    row.imported as string,
  ]);
  for (const trace of traces) expect(bytes().includes(trace)).toBe(true);
  expect(await takeBack(settings(), "club", now)).toBe(STORED);
  const left = bytes();
  expect(traces.filter((trace) => left.includes(trace))).toEqual([]);
  const after = await everything();
  const withdrawn = after.log.splice(before.log.length);
  expect(after).toEqual(before);
  // That something was withdrawn stays in the log, without saying what.
  expect(withdrawn.map(({ tune, verdict }) => [tune, verdict])).toEqual(
    gone.map(() => ["", "withdrawn"]),
  );
  await expect(takeBack(settings(), "club", now)).rejects.toThrow(
    /No tune came with an import "club"/,
  );
  expect((await run(INVENTED_CLUB, { write: true })).stored).toBe(STORED);
});

test("storing and taking back ask for the file alone", async () => {
  const letGo = claimDatabase(atlas.file);
  const before = await everything();
  await expect(run(INVENTED_CLUB, { write: true })).rejects.toThrow(/Stop that one first/);
  await expect(takeBack(settings(), "club", now)).rejects.toThrow(/Stop that one first/);
  letGo();
  expect(await everything()).toEqual(before);
  // Another secret would make everybody another contributor.
  for (const write of [false, true]) {
    const other = { ATLAS_SECRET: "another secret of some length" };
    await expect(run(INVENTED_CLUB, { write }, BY_MEMBER, other)).rejects.toThrow(/secret is not/);
  }
  const full = { DATABASE_MOST_MB: "1" };
  await expect(run(INVENTED_CLUB, { write: true }, BY_MEMBER, full)).rejects.toThrow(/no room/);
  expect(await everything()).toEqual(before);
});

/** What the command does with some arguments, of which the names of these files are found in a folder of its own. */
const env = () => ({ ATLAS_DB: atlas.file, ATLAS_SECRET: SECRET });
function onFiles(args: readonly string[], files: Record<string, string | Uint8Array>): string[] {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-import-"));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return args.map((arg) => (arg in files ? join(folder, arg) : arg));
}

function command(args: readonly string[], files: Record<string, string> = {}) {
  const { stdout, stderr, status } = spawnSync(
    "node_modules/.bin/node",
    ["server/import-command.ts", ...onFiles(args, files)],
    { encoding: "utf8", env: { ...process.env, ...env() } },
  );
  return { stdout, stderr, status };
}

test("the command: a mapping file, a dry run, storing, taking back", async () => {
  // It goes by the clock of whoever runs the tests, for which the months may not have come.
  const { tuned_on, ...withoutMonth } = BY_MEMBER;
  const files = { "club.csv": INVENTED_CLUB, "columns.json": JSON.stringify(withoutMonth) };
  const args = onFiles(["club.csv", "--mapping", "columns.json"], files);
  const dry = command(args);
  expect(dry).toMatchObject({ status: 0, stderr: "" });
  expect(dry.stdout).toContain("Line 2: accepted\n");
  expect(await runImport([...args, "--write"], env())).toContain(
    `Stored: ${STORED} tunes as import "club". To take all of it back: npm run import -- --undo "club"`,
  );
  expect(await runImport(["--undo", "club"], env())).toContain(`Withdrawn: ${STORED} tunes`);
  expect(command(["--undo", "club"])).toEqual({
    status: 1,
    stdout: "",
    stderr: expect.stringMatching(/^No tune came with an import "club"\. .*\n$/),
  });
  // Columns under the fields' own names need no mapping.
  const own =
    "heat_kW,elevation_m,low_pump_Hz,low_fan_rpm,low_co_ppm,high_pump_Hz,high_fan_rpm,high_co_ppm\n5,1300,1.1,1700,14,3.9,4400,11\n";
  expect(await runImport(onFiles(["own.csv"], { "own.csv": own }), env())).toContain(
    "Line 2: accepted\n",
  );
});

const LATIN = Uint8Array.from(Buffer.from("H\xf6he,a\n1,2\n", "latin1"));

test.each<[string, string[], Record<string, string | Uint8Array>, RegExp]>([
  ["no file named", [], {}, /Name one file\. Usage: npm run import/],
  ["an unknown option", ["a.csv", "--wat"], {}, /--wat[\s\S]*Usage/],
  ["a file that is not there", ["a.csv"], {}, /a\.csv cannot be read \(ENOENT\)/],
  ["a workbook", ["a.csv"], { "a.csv": "PK\u0003\u0004\0\0" }, /no CSV file.*CSV UTF-8/],
  ["another encoding", ["a.csv"], { "a.csv": LATIN }, /not text in UTF-8.*CSV UTF-8/],
  ["an empty file", ["a.csv"], { "a.csv": "" }, /has no header/],
  ["a quotation mark left open", ["a.csv"], { "a.csv": 'a,b\n1,"2\n' }, /not closed/],
  [
    "an unknown field",
    ["a.csv", "--map", "height=a"],
    { "a.csv": "a,b\n1,2\n" },
    /No field is called height\. Fields: heat_kW/,
  ],
  [
    "a column that is not there",
    ["a.csv", "--map", "heat_kW=Size"],
    { "a.csv": "a,b\n1,2\n" },
    /no column "Size"\. Its columns are "a", "b"/,
  ],
  [
    "a contributors' column that is not there",
    ["a.csv", "--contributor", "Who"],
    { "a.csv": "a,heat_kW\n1,2\n" },
    /no column "Who"|No column is given/,
  ],
  [
    "two columns of one name",
    ["a.csv", "--map", "heat_kW=a"],
    { "a.csv": "a,a\n1,2\n" },
    /two columns "a" \(numbers 1 and 2\)/,
  ],
  [
    "fields without a column",
    ["a.csv", "--map", "heat_kW=a"],
    { "a.csv": "a,b\n1,2\n" },
    /No column is given for elevation_m or elevation_ft; low_pump_Hz or .*"a", "b"/,
  ],
  [
    "one field twice",
    ["a.csv", "--map", "elevation_ft=a", "--map", "elevation_m=b"],
    { "a.csv": "a,b\n1,2\n" },
    /same in two units/,
  ],
  [
    "an unreadable --map",
    ["a.csv", "--map", "heat_kW"],
    { "a.csv": "a,b\n1,2\n" },
    /--map "heat_kW" cannot be read/,
  ],
  [
    "a mapping that is no JSON",
    ["a.csv", "--mapping", "a.csv"],
    { "a.csv": "a,b\n1,2\n" },
    /not valid JSON/,
  ],
  [
    "a mapping of another form",
    ["a.csv", "--mapping", "m.json"],
    { "a.csv": "a,b\n1,2\n", "m.json": "[1]" },
    /one JSON object/,
  ],
  [
    "an import that is not there",
    ["--undo", "nothing"],
    {},
    /No tune came with an import "nothing"/,
  ],
])("%s: one clear sentence", async (_, args, files, sentence) => {
  await expect(runImport(onFiles(args, files), env())).rejects.toThrow(sentence);
});

test("whatever a file holds, reading it fails with a sentence or gives a sentence or a tune for each row", async () => {
  const cell = fc.oneof(
    fc.string(),
    fc.constantFrom(
      "5",
      "1,5",
      "2.240",
      "2,240",
      "-3",
      "<30",
      "1e999",
      "__proto__",
      '"',
      "\r\n",
      "NaN",
      "2026-10",
      "31.12.2026",
      "",
    ),
  );
  const table = fc
    .array(fc.array(cell, { maxLength: 14 }), { maxLength: 6 })
    .chain((rows) =>
      fc
        .constantFrom(",", ";", "\t")
        .map((part) =>
          [Object.values(BY_MEMBER), ...rows]
            .map((row) =>
              row
                .map((value) =>
                  /^[\w.,<-]*$/.test(value) && !value.includes(part)
                    ? value
                    : `"${value.replaceAll('"', '""')}"`,
                )
                .join(part),
            )
            .join("\n"),
        ),
    );
  await fc.assert(
    fc.asyncProperty(fc.oneof(fc.string({ unit: "binary" }), table), async (text) => {
      let sheet: ReturnType<typeof parseSpreadsheet>;
      try {
        sheet = parseSpreadsheet(text, "any.csv");
        mappingOf(BY_MEMBER, sheet.columns);
      } catch (error) {
        expect(error).toBeInstanceOf(ImportError);
        return;
      }
      const lines = text.split(/\r\n|\r|\n/).length;
      for (const row of sheet.rows) {
        expect(row.line).toBeGreaterThan(1);
        expect(row.line).toBeLessThanOrEqual(lines);
        const read = await readRow(sheet, mappingOf(BY_MEMBER, sheet.columns), row, async () =>
          "x".repeat(64),
        );
        if ("sentences" in read) expect(read.sentences.length).toBeGreaterThan(0);
        else expect(read.tune.heater.heat_kW).toBeGreaterThan(0);
      }
    }),
    { numRuns: 500 },
  );
});

test("units: a foot is 0.3048 m, 29.92 inHg are 1,013.25 hPa, 32 °F are 0 °C, 60 pulses a minute are 1 Hz, 0.022 mL are 22 µL", async () => {
  // International yard and pound agreement, 1959; the standard atmosphere in both units as altimeters are set (ICAO Doc 7488, from memory).
  const given = {
    ...Object.fromEntries(
      ["elevation_ft", "temperature_F", "qnh_inHg", "low_pump_per_min", "dose_mL"].map((f) => [
        f,
        f,
      ]),
    ),
  };
  const text =
    "heat_kW,elevation_ft,temperature_F,qnh_inHg,dose_mL,low_pump_per_min,low_fan_rpm,low_co_ppm,high_pump_Hz,high_fan_rpm,high_co_ppm\n5,1000,32,29.9213,0.022,60,1700,9,3.9,4400,9\n";
  const sheet = parseSpreadsheet(text, "units.csv");
  const [row] = sheet.rows;
  const read = await readRow(
    sheet,
    mappingOf(given, sheet.columns),
    row as NonNullable<typeof row>,
    async () => "x".repeat(64),
  );
  expect(read).toMatchObject({
    tune: {
      site: { elevation_m: 304.8 },
      air: { temperature_C: 0 },
      heater: { dose_uL: 22 },
      low: { pump_Hz: 1 },
    },
  });
  expect("tune" in read && read.tune.air?.qnh_hPa).toBeCloseTo(1013.25, 2);
});
