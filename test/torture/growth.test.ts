import { eq, sql } from "drizzle-orm";
import { expect, test } from "vitest";
import type { Database } from "../../db/database.ts";
import { publishFit, versionNames } from "../../db/fits.ts";
import { judgedBeside, tunes } from "../../db/schema.ts";
import type { TuneRow } from "../../db/tunes.ts";
import type { End } from "../../model/end.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import { settablePump } from "../../model/rounding.ts";
import * as answers from "../../server/contract.ts";
import { prune, tooMany } from "../../server/prune.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

const DAY_ms = 86_400_000;
const key = { "Idempotency-Key": "kept-for-a-while" };

/** What the atlas would have answered to a tune by these groups. */
async function suggestedBy(groups: readonly GroupFit[], db: Database, id: string) {
  const [row] = await db.select().from(tunes).where(eq(tunes.id, id));
  const { heat_kW, dose_uL, density_kg_m3, low_fan_rpm, high_fan_rpm } = row as TuneRow;
  const perKrpm = (end: End, fan_rpm: number) => {
    const group = groups.find((g) => g.heat_kW === heat_kW && g.end === end) as GroupFit;
    const { pump_Hz_per_krpm } = bandsAt(group, density_kg_m3, { dose_uL: dose_uL ?? undefined });
    return (settablePump((pump_Hz_per_krpm * fan_rpm) / 1000) * 1000) / fan_rpm;
  };
  return {
    low_suggested_Hz_per_krpm: perKrpm("low", low_fan_rpm),
    high_suggested_Hz_per_krpm: perKrpm("high", high_fan_rpm),
  };
}

test("versions thin out with age: all, each day's last, each week's last; of those that tunes were judged beside only what reproduces that stays", async () => {
  const atlas = await openTestAtlas();
  const sent: { id: string; receipt: string }[] = [];
  for (const [n, heat_kW] of [5, 5, 2, 8, 5, 5].entries()) {
    const tune = goodTune(n);
    const heater = { ...tune.heater, heat_kW };
    sent.push(await (await post(atlas.app, { ...tune, heater })).json());
    await atlas.fit.settle();
  }
  const published = await atlas.fit.current();
  const last = Date.parse("2027-06-01");
  const dayOf = (age: number) => new Date(last - age * DAY_ms).toISOString().slice(0, 10);
  for (let age = 180; age >= 0; age--) {
    for (let n = 1; n <= 4; n++) {
      await publishFit(atlas.db, { ...published, version: `${dayOf(age)}.${n}` });
    }
  }
  // Beside a version of each of some days long ago a tune was judged, beside one of them two, of two sizes.
  const judgedOn = [100, 101, 110, 110, 120, 40];
  for (const [n, { id }] of sent.entries()) {
    const suggested = await suggestedBy(published.groups, atlas.db, id);
    const judged = `${dayOf(judgedOn[n] as number)}.2`;
    await atlas.db
      .update(tunes)
      .set({ judged_version: judged, ...suggested })
      .where(eq(tunes.id, id));
  }
  const now = new Date(last + DAY_ms / 2);
  await prune(atlas.db, now);
  const kept = (await versionNames(atlas.db)).map(({ version }) => version);
  expect(new Set(kept).size).toBe(kept.length);
  const of = (age: number) => kept.filter((version) => version.startsWith(dayOf(age)));
  for (const age of [0, 1, 2]) expect(of(age)).toHaveLength(4);
  // The twenty newest are what alarms look back over: five days of them.
  for (let age = 5; age < 59; age++) expect(of(age), dayOf(age)).toEqual([`${dayOf(age)}.4`]);
  const older = kept.filter((version) => version < dayOf(60) && version > dayOf(175));
  // 115 days are 16 or 17 weeks.
  expect([16, 17]).toContain(older.length);
  const beside = await atlas.db.select().from(judgedBeside);
  expect(beside).toHaveLength(5);
  for (const { id } of sent) {
    const [row] = await atlas.db.select().from(tunes).where(eq(tunes.id, id));
    const { groups } = beside.find(({ version }) => version === row?.judged_version) ?? {};
    const again = await suggestedBy(JSON.parse(groups as string), atlas.db, id);
    expect(again).toEqual({
      low_suggested_Hz_per_krpm: row?.low_suggested_Hz_per_krpm,
      high_suggested_Hz_per_krpm: row?.high_suggested_Hz_per_krpm,
    });
  }
  // A size's two groups of the six that a whole version has here beside its settings.
  const bytes = beside.map(({ groups }) => groups.length).toSorted((a, b) => a - b);
  expect(bytes[3]).toBeLessThan(JSON.stringify(published).length / 3);
  const gone = await atlas.app.request(`/api/fit/${dayOf(100)}.1`);
  expect(gone.status).toBe(404);
  expect((await gone.json()).detail).toMatch(/each week's/);
  // Nothing is left to do, and the fit goes on.
  expect(tooMany(await versionNames(atlas.db), now)).toEqual([]);
  // With its tune goes what that was judged beside.
  const headers = { Authorization: `Bearer ${sent[0]?.receipt}` };
  await atlas.app.request(`/api/tunes/${sent[0]?.id}`, { method: "DELETE", headers });
  await prune(atlas.db, now);
  expect(await atlas.db.$count(judgedBeside)).toBe(4);
  await post(atlas.app, goodTune(1));
  await atlas.fit.settle();
  expect((await atlas.fit.current()).version).toBe("2027-06-01.5");
  await atlas.close();
});

test("answers kept for repeated submissions go after a month at least; the key goes on telling that the tune has arrived", async () => {
  const atlas = await openTestAtlas();
  const first = await (await post(atlas.app, goodTune(3), key)).json();
  await atlas.fit.settle();
  const bytes = async () => {
    const [[sum]] = (await atlas.db.values(
      sql`SELECT sum(length(answer)) FROM idempotency_keys`,
    )) as [[number]];
    return sum;
  };
  const answered = await bytes();
  expect(answered).toBeGreaterThan(500);
  // Sent on 25 November.
  await prune(atlas.db, new Date("2026-12-31T12:00:00Z"));
  expect(await bytes()).toBe(answered);
  await prune(atlas.db, new Date("2027-01-02T12:00:00Z"));
  expect(await bytes()).toBe(0);
  const response = await post(atlas.app, goodTune(3), key);
  expect(response.status).toBe(201);
  const again = answers.submitted.parse(await response.json());
  // An answer that is no longer kept is made anew, and compares with the fit of its day.
  expect(again.compared).not.toEqual(first.compared);
  expect({ ...again, compared: first.compared }).toEqual(first);
  expect((await post(atlas.app, { ...goodTune(3), tuned_on: "2026-09" }, key)).status).toBe(409);
  const { tunes } = await (await atlas.app.request("/api/health")).json();
  expect(tunes).toBe(1);
  await atlas.close();
});
