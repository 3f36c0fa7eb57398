import { parse } from "csv-parse/sync";
import { afterEach, beforeEach, expect, test } from "vitest";
import { findTune } from "../../db/tunes.ts";
import type { FitRow } from "../../model/fit/row.ts";
import type { StartTune } from "../../model/start.ts";
import type { Tune } from "../../model/tune.ts";
import { allFitRows, goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
});
afterEach(() => atlas.close());

const json = async (path: string) => (await atlas.app.request(path)).json();
const send = async (tune: unknown) => (await post(atlas.app, tune)).json();
const kept = async (id: string) => {
  const row = await findTune(atlas.db, id);
  return {
    found: row?.found,
    judged_version: row?.judged_version,
    low: row?.low_suggested_Hz_per_krpm,
    high: row?.high_suggested_Hz_per_krpm,
  };
};
const revise = (id: string, receipt: string, tune: unknown) =>
  atlas.app.request(`/api/tunes/${id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", Authorization: `Bearer ${receipt}` },
    body: JSON.stringify(tune),
  });

/** What somebody with this heater in this air, at these fan speeds, is answered now: version, and Hz per 1,000 rpm. */
async function answered({ heater, site, air, low, high }: Tune) {
  const question = new URLSearchParams({
    heat_kW: String(heater.heat_kW),
    elevation_m: String(site.elevation_m),
    low_fan_rpm: String(low.fan_rpm),
    high_fan_rpm: String(high.fan_rpm),
    ...(heater.dose_uL && { dose_uL: String(heater.dose_uL) }),
    ...(air?.temperature_C && { temperature_C: String(air.temperature_C) }),
    ...(air?.humidity_pct && { humidity_pct: String(air.humidity_pct) }),
  });
  const start: StartTune = await json(`/api/start?${question}`);
  const perKrpm = (end: "low" | "high") => (start[end].pump_Hz * 1000) / start[end].fan_rpm;
  return { judged_version: start.basis.fit, low: perKrpm("low"), high: perKrpm("high") };
}

test("what the atlas answered when a tune was sent is kept with it, by the prior as by each version", async () => {
  const unlike = { ...goodTune(40), heater: { heat_kW: 5, dose_uL: 31 } };
  const other = { ...goodTune(41), heater: { heat_kW: 8 }, found: "stopped early" };
  const beforeAnyone = await answered(goodTune(1));
  expect(beforeAnyone.judged_version).toBe("prior");
  const { id } = await send({ ...goodTune(1), found: "bracketed" });
  expect(await kept(id)).toEqual({ found: "bracketed", ...beforeAnyone });
  for (let n = 2; n < 12; n++) await send({ ...goodTune(n), found: "bracketed" });
  await atlas.fit.settle();
  const versions = [];
  for (const tune of [goodTune(1), unlike, other as Tune]) {
    const said = await answered(tune);
    const sent = await send(tune);
    expect(await kept(sent.id)).toEqual({ found: tune.found ?? null, ...said });
    versions.push(said);
  }
  const [alike, large] = versions;
  expect(alike?.judged_version).not.toBe("prior");
  expect(large?.low).toBeLessThan(alike?.low ?? 0);
  expect((await kept(id)).judged_version).toBe("prior");
});

test("it reaches the fit's rows and the open data, as rates that can be set and without the version", async () => {
  const { id } = await send({ ...goodTune(1), found: "bracketed" });
  const silent = await send(goodTune(2));
  const { low, high } = await kept(id);
  const rows = await allFitRows(atlas.db);
  const ofTune = (row: string, end: string) =>
    rows.find((r) => r.row === row && r.end === end) as FitRow;
  expect(ofTune(id, "low")).toMatchObject({ found: "bracketed", suggested_Hz_per_krpm: low });
  expect(ofTune(id, "high")).toMatchObject({ found: "bracketed", suggested_Hz_per_krpm: high });
  expect(ofTune(silent.id, "low").found).toBeUndefined();

  const text = await (await atlas.app.request("/api/tunes.csv")).text();
  const lines: Record<string, string>[] = parse(text, { columns: true });
  const line = lines.find((one) => one.id === id);
  expect(line).toMatchObject({
    found: "bracketed",
    low_suggested_Hz_per_krpm: String(low),
    high_suggested_Hz_per_krpm: String(high),
  });
  expect(lines.find((one) => one.id === silent.id)?.found).toBe("");
  for (const end of ["low", "high"]) {
    const rate = Number(line?.[`${end}_suggested_Hz_per_krpm`]) * Number(line?.[`${end}_fan_rpm`]);
    expect(rate / 100).toBeCloseTo(Math.round(rate / 100), 9);
  }
  const { features } = await json("/api/tunes.geojson");
  const found = features.map((f: { properties: { found: string | null } }) => f.properties.found);
  expect(found.sort()).toEqual(["bracketed", null]);
  // A version's name holds the day, and of a tune no more than its month is told.
  for (const open of [text, JSON.stringify(features)]) expect(open).not.toContain("prior");
  const { columns } = await json("/api/dictionary.json");
  const names = columns.map(({ name }: { name: string }) => name);
  expect(names).toEqual(
    expect.arrayContaining(["found", "low_suggested_Hz_per_krpm", "high_suggested_Hz_per_krpm"]),
  );
  expect(names).not.toContain("judged_version");
});

test("a revision changes how it was found and not what was suggested when it was sent", async () => {
  const { id, receipt } = await send({ ...goodTune(1), found: "as suggested" });
  const first = await kept(id);
  for (let n = 2; n < 8; n++) await send(goodTune(n));
  await atlas.fit.settle();
  const higher = { ...goodTune(1), site: { elevation_m: 2600 }, found: "bracketed" };
  expect((await revise(id, receipt, higher)).status).toBe(200);
  expect(await kept(id)).toEqual({ ...first, found: "bracketed" });
  const read = await atlas.app.request(`/api/tunes/${id}`, {
    headers: { Authorization: `Bearer ${receipt}` },
  });
  expect((await read.json()).tune.found).toBe("bracketed");
  expect((await revise(id, receipt, goodTune(1))).status).toBe(200);
  expect(await kept(id)).toEqual({ ...first, found: null });
});

test("a suggestion or a version is nobody's to send, and a way of finding is one of three", async () => {
  for (const [field, value] of [
    ["judged_version", "prior"],
    ["low_suggested_Hz_per_krpm", 0.7],
    ["suggested_Hz_per_krpm", 0.7],
  ] as const) {
    const response = await post(atlas.app, { ...goodTune(1), [field]: value });
    expect(response.status).toBe(422);
    expect((await response.json()).errors).toMatchObject([{ field, code: "unknown_field" }]);
  }
  const response = await post(atlas.app, { ...goodTune(1), found: "by ear" });
  expect((await response.json()).errors).toMatchObject([
    { field: "found", message: expect.stringContaining("bracketed, stopped early, as suggested") },
  ]);
});

test("a crowd that says nothing, sent beside suggestions, does not narrow the spread as one that swept does", async () => {
  const spreadOf = async (found: Tune["found"]) => {
    const own = await openTestAtlas();
    // Each from a place of its own: owners of one place count as fewer too.
    const site = { elevation_m: 1300 };
    for (let n = 0; n < 40; n++) await post(own.app, { ...goodTune(n), site, found });
    await own.fit.settle();
    const { groups } = await (await own.app.request("/api/fit")).json();
    await own.close();
    return groups[0];
  };
  const [swept, silent] = await Promise.all([spreadOf("bracketed"), spreadOf(undefined)]);
  expect([swept.may_copy, silent.may_copy]).toEqual([0, 1]);
  expect(swept.spread).toBeLessThan(0.8 * silent.spread);
  expect([swept.votes, silent.votes]).toEqual([40, expect.closeTo(40 / (1 + 39 * 0.05), 9)]);
});
