import { sql } from "drizzle-orm";
import { expect, test } from "vitest";
import { publishFit, versionNames } from "../../db/fits.ts";
import * as answers from "../../server/contract.ts";
import { prune, tooMany } from "../../server/prune.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

const DAY_ms = 86_400_000;
const key = { "Idempotency-Key": "kept-for-a-while" };

test("versions thin out with age: all, each day's last, each week's last; those that tunes were judged beside stay, whole", async () => {
  const atlas = await openTestAtlas();
  await post(atlas.app, goodTune(0));
  await atlas.fit.settle();
  const published = await atlas.fit.current();
  const last = Date.parse("2027-06-01");
  const dayOf = (age: number) => new Date(last - age * DAY_ms).toISOString().slice(0, 10);
  for (let age = 180; age >= 0; age--) {
    for (let n = 1; n <= 4; n++) {
      await publishFit(atlas.db, { ...published, version: `${dayOf(age)}.${n}` });
    }
  }
  // Beside the second version of a day long ago a tune was judged.
  const judged = `${dayOf(100)}.2`;
  await atlas.db.run(sql`UPDATE tunes SET judged_version = ${judged}`);
  const now = new Date(last + DAY_ms / 2);
  await prune(atlas.db, now);
  const kept = (await versionNames(atlas.db)).map(({ version }) => version);
  expect(new Set(kept).size).toBe(kept.length);
  const of = (age: number) => kept.filter((version) => version.startsWith(dayOf(age)));
  for (const age of [0, 1, 2]) expect(of(age)).toHaveLength(4);
  // The twenty newest are what alarms look back over: five days of them.
  for (let age = 5; age < 59; age++) expect(of(age), dayOf(age)).toEqual([`${dayOf(age)}.4`]);
  const older = kept.filter((version) => version < dayOf(60) && version > dayOf(175));
  expect(older).toContain(judged);
  // 115 days are 16 or 17 weeks.
  expect([16, 17]).toContain(older.length - 1);
  const whole = answers.publishedFit.parse(
    await (await atlas.app.request(`/api/fit/${judged}`)).json(),
  );
  expect(whole.groups).toEqual(JSON.parse(JSON.stringify(published.groups)));
  const gone = await atlas.app.request(`/api/fit/${dayOf(100)}.1`);
  expect(gone.status).toBe(404);
  expect((await gone.json()).detail).toMatch(/each week's/);
  // Nothing is left to do, and the fit goes on.
  expect(tooMany(await versionNames(atlas.db), now).length).toBe(1);
  await post(atlas.app, goodTune(1));
  await atlas.fit.settle();
  expect((await atlas.fit.current()).version).toBe("2027-06-01.5");
  await atlas.close();
});

test("answers kept for repeated submissions go after a month at least; the key goes on telling that the tune has arrived", async () => {
  const atlas = await openTestAtlas();
  const first = await (await post(atlas.app, goodTune(3), key)).json();
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
  expect(again).toEqual(first);
  expect((await post(atlas.app, { ...goodTune(3), tuned_on: "2026-09" }, key)).status).toBe(409);
  const { tunes } = await (await atlas.app.request("/api/health")).json();
  expect(tunes).toBe(1);
  await atlas.close();
});
