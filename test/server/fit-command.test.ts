import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Tune } from "../../model/tune.ts";
import type { FitReport } from "../../server/fit-report.ts";
import { goodTune, openTestAtlas, post } from "./atlas.ts";

const folder = mkdtempSync(join(tmpdir(), "hypsotune-fit-"));

function runFit(text: string, ...args: string[]) {
  const file = join(folder, "rows.csv");
  writeFileSync(file, text);
  return spawnSync("node_modules/.bin/node", ["server/fit-command.ts", file, ...args], {
    encoding: "utf8",
  });
}

const report = (text: string, ...args: string[]): FitReport =>
  JSON.parse(runFit(text, "--json", ...args).stdout);

/** Tunes of every sort that an accepted one may be. */
function variedTune(n: number): Tune {
  const tune = goodTune(n);
  // Beside two tunes each, places and months apart, in two classes.
  tune.contributor = `contributor-key-${String(n % 31).padStart(4, "0")}`;
  tune.tuned_on = n % 6 === 0 ? undefined : `2026-${String(1 + (n % 10)).padStart(2, "0")}`;
  if (n % 3 === 0) tune.air = {};
  if (n % 4 === 1) tune.low = { ...tune.low, co_ppm: 75 + n };
  if (n % 4 === 2) tune.high = { ...tune.high, co_ppm: undefined, co_below_ppm: 30 };
  if (n % 5 === 0) tune.site = { elevation_m: 200 * (n % 11) };
  else tune.site = { elevation_m: 1300, lat: 41.2 + 3 * (n % 3), lon: 74.9 };
  // Some elevations were worked out from a position, roughly and less so.
  if (n % 7 === 2) tune.site = { ...tune.site, elevation_sd_m: 37 * (n % 5) };
  if (n % 9 === 0) tune.heater = { heat_kW: 2 };
  // Some say how they found it: of those who swept, the one or other stopped early.
  if (n % 3 !== 1) tune.found = n % 8 === 4 ? "stopped early" : "bracketed";
  if (n % 31 === 17) tune.found = "as suggested";
  if (n % 13 === 7) tune.high = { ...tune.high, pump_Hz: 6.2 };
  return tune;
}

/** What a line of the export says of the air. */
function airOf({ temperature_C, humidity_pct }: Record<string, string>) {
  return {
    ...(temperature_C && { temperature_C: Number(temperature_C) }),
    ...(humidity_pct && { humidity_pct: Number(humidity_pct) }),
  };
}

test("the export gives the published coefficients to the last digit", async () => {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 62; n++) {
    const response = await post(atlas.app, variedTune(n));
    expect([n, response.status]).toEqual([n, 201]);
  }
  await atlas.fit.settle();
  const published: PublishedFit = await (await atlas.app.request("/api/fit")).json();
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const own = report(csv);
  expect(published.groups.map((g) => `${g.heat_kW} ${g.end}`)).toEqual([
    "2 low",
    "2 high",
    "5 low",
    "5 high",
  ]);
  // What the atlas publishes as a number of rows the command lists; everything else is the same, field by field.
  expect(
    own.groups.map(({ at, rejected, ...group }) => ({ ...group, rejected: rejected.length })),
  ).toStrictEqual(published.groups);
  expect(own.rejected).toEqual([]);
  // The crowd is one in which every field has something to say.
  const main = published.groups.find(
    (g) => g.heat_kW === 5 && g.end === "high",
  ) as (typeof published.groups)[0];
  expect(main.rejected).toBeGreaterThan(0);
  expect(main.night).not.toBe(0);
  expect(main.votes).toBeLessThan(main.contributors);
  expect(main.may_copy).toBeGreaterThan(0);
  expect(main.may_copy).toBeLessThan(0.5);
  expect({ ...own, groups: [], rejected: [] }).toEqual({
    code: published.code,
    estimator: published.estimator,
    settings: published.settings,
    rows_sha256: published.rows_sha256,
    groups: [],
    rejected: [],
  });
  await atlas.close();

  // An elevation's uncertainty is in the rows, and in the export as it was sent, to 10 m.
  const rows: Record<string, string>[] = parse(csv, { columns: true });
  const vague = rows.filter(({ elevation_sd_m }) => Number(elevation_sd_m) > 0);
  expect([...new Set(vague.map((row) => row.elevation_sd_m))].sort()).toEqual([
    "120",
    "150",
    "40",
    "80",
  ]);
  for (const row of vague) {
    const known = airAt(Number(row.elevation_m), airOf(row)).ln_density_sd;
    expect(Number(row.ln_density_sd)).toBeGreaterThan(known);
  }

  const [first, ...lines] = csv.trimEnd().split("\r\n");
  const backwards = [first, ...lines.reverse()].join("\r\n");
  const plain = ({ groups, rows_sha256 }: FitReport) => ({
    groups: groups.map(({ rejected, ...group }) => group),
    rows_sha256,
  });
  expect(plain(report(backwards))).toStrictEqual(plain(own));

  // One class printed is still fitted beside the others.
  expect(report(csv, "--heat", "2", "--end", "low").groups).toStrictEqual([own.groups[0]]);
  const { stdout } = runFit(csv);
  for (const said of [published.code, published.rows_sha256, `${main.intercept} + ${main.slope}`]) {
    expect(stdout).toContain(said);
  }
  expect(stdout).toContain(`slope ${published.settings.slope}`);
});

test("a file of one's own gives what the export gives, with what it may leave out", () => {
  const head = "contributor,cell,heat_kW,end,density_kg_m3,pump_Hz,fan_rpm,co_ppm";
  const rows = Array.from({ length: 30 }, (_, i) => [
    `c${i % 20}`,
    i % 3 ? `place ${i % 4}` : "",
    5,
    "low",
    0.8 + 0.015 * i,
    1 + 0.01 * i,
    1650,
    i % 7 ? 12 : 90,
  ]);
  const plain = report([head, ...rows.map((r) => r.join(","))].join("\n"));
  const full = report(
    [
      `${head},month,ln_density_sd`,
      ...rows.map((r, i) => [...r, `2026-0${1 + (i % 2)}`, 0.02].join(",")),
    ].join("\n"),
  );
  expect(plain.groups[0]?.contributors).toBe(20);
  expect(full.groups[0]?.intercept).not.toBe(plain.groups[0]?.intercept);
  expect(full.rows_sha256).not.toBe(plain.rows_sha256);
});

test("a row that cannot be a number is set aside with its row and column", () => {
  const [group] = report(
    "contributor,heat_kW,end,density_kg_m3,pump_Hz,fan_rpm\na,5,low,1.1,1.0,1650\nb,5,low,1.1,-2,1650\n",
  ).groups;
  expect(group?.rejected).toEqual([
    { row: 2, reason: 'pump_Hz must be a positive number, not "-2".' },
  ]);
  expect(group?.at.map((a) => a.density_kg_m3)).toEqual([0.8, 1, 1.225]);
  expect(group?.at[0]?.new_heater_bands.map((b) => b.level)).toEqual([0.5, 0.8, 0.9, 0.95, 0.99]);
});

test("a row that belongs to no class and end is said too, and so is a bad optional figure", () => {
  const { groups, rejected } = report(
    [
      "contributor,heat_kW,end,density_kg_m3,pump_Hz,fan_rpm,month,ln_density_sd,co_ppm",
      "a,5,low,1.1,1.0,1650,2026-10,0.01,12",
      "b,five,low,1.1,1.0,1650,,,",
      "c,5,middle,1.1,1.0,1650,,,",
      "d,8,high,0,4,4400,,,",
      "e,5,low,1.1,1.0,1650,October,,",
      "f,5,low,1.1,1.0,1650,,-1,",
      "g,5,low,1.1,1.0,1650,,,little",
    ].join("\n"),
  );
  expect(groups[0]?.rejected.map(({ row }) => row)).toEqual([5, 6, 7]);
  expect(groups[0]?.rejected[2]?.reason).toContain("co_ppm must be empty or a number from 0 up");
  expect(rejected.map(({ row }) => row)).toEqual([2, 3, 4]);
  expect(rejected[1]?.reason).toBe('end must be low or high, not "middle".');
});

test("missing columns, files and bad options are said on standard error, nothing on standard output", () => {
  for (const [text, args, word] of [
    ["contributor,heat_kW\na,5\n", [], "density_kg_m3"],
    ["a,b\n1,2\n", ["--end", "middle"], "--end"],
    ["a,b\n1,2\n", ["--at", "0"], "--at"],
    ["a,b\n1,2\n", ["--wat"], "Usage"],
  ] as const) {
    const { stdout, stderr, status } = runFit(text, ...args);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(word);
  }
});
