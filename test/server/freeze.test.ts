import { sql } from "drizzle-orm";
import { afterEach, expect, test, vi } from "vitest";
import { openDatabase } from "../../db/open.ts";
import type { Tune } from "../../model/tune.ts";
import * as answers from "../../server/contract.ts";
import { HOUR_ms, openWith, submit } from "../study/poisoning/attack.ts";
import { openTestAtlas, type TestAtlas } from "./atlas.ts";
import { honestCrowd, tuneAt } from "./crowd.ts";
import { bearer, TOKEN } from "./stewards-atlas.ts";

/** What moves the average of ten owners most, of what was tried from 0.65 to 1.35 times: too lean, high up. */
const LEAN = 0.75;

let atlas: TestAtlas;
const warned = vi.spyOn(console, "warn").mockImplementation(() => {});
afterEach(async () => {
  warned.mockClear();
  await atlas.close();
});

const json = async (path: string) => (await atlas.app.request(path)).json();

const steward = async (path: string, body?: unknown) =>
  atlas.app.request(`/api/steward/${path}`, {
    headers: { "Content-Type": "application/json", ...bearer(TOKEN) },
    ...(body !== undefined && { method: "POST", body: JSON.stringify(body) }),
  });

async function pass(days: number): Promise<void> {
  for (let hour = 0; hour < 24 * days; hour += 6) {
    atlas.pass(6 * HOUR_ms);
    await atlas.fit.refresh();
  }
}

/** A liar among ten, whose days are over: the version with that tune is held back. */
async function openFrozen() {
  atlas = await openWith(10);
  const { fit } = await json("/api/health");
  const liar = await submit(atlas, tuneAt(4000, LEAN, "attacker-key-0000"), "203.0.113.7");
  await pass(6);
  expect(answers.health.parse(await json("/api/health"))).toMatchObject({ frozen: true, fit });
  expect(warned).toHaveBeenCalledOnce();
  return { fit, liar };
}

/** Changes all published versions, while no atlas has the file open. */
async function changeVersions(how: string): Promise<void> {
  const { db, close } = await openDatabase(atlas.file);
  await db.run(sql.raw(`update fits ${how}`));
  close();
}

/** As if another release, or another estimator, had made them. */
const madeByAnother = (changed: string) =>
  changeVersions(`set fit = json_set(fit, '$.${changed}', 'another')`);

const frozen = async () => (await json("/api/health")).frozen;

test("a version that moves the average too far is not published; its steward sees why, and publishes it with a reason", async () => {
  const { fit } = await openFrozen();
  const alarms = answers.alarmsAnswer.parse(await (await steward("alarms")).json());
  expect([alarms.fit, alarms.refused?.since]).toEqual([fit, "2026-12-01"]);
  const moved = alarms.refused?.alarms.filter(({ code }) => code === "moved");
  expect(moved?.map(({ heat_kW, end }) => `${heat_kW} ${end}`)).toEqual(["5 low", "5 high"]);
  expect(moved?.[0]?.sentence).toMatch(
    /^The average tune would be \d\.\d % leaner than a week ago\.$/,
  );
  const [logged] = (await (await steward("decisions?by=fit")).json()).decisions;
  expect(logged).toMatchObject({ tune: null, verdict: "held", decided_on: "2026-12-01" });

  expect((await steward("publish", {})).status).toBe(422);
  const reason = "Looked up: the owner is known to us.";
  const answer = await steward("publish", { reason });
  expect([answer.status, answers.publicationAnswer.parse(await answer.json())]).toEqual([
    202,
    { fit },
  ]);
  await atlas.fit.settle();
  const published = answers.health.parse(await json("/api/health"));
  expect(published.frozen).toBe(false);
  expect(published.fit).not.toBe(fit);
  const [said] = (await (await steward("decisions?by=steward")).json()).decisions;
  expect(said).toMatchObject({ reasons: [{ sentence: reason }] });
  expect((await steward("publish", { reason })).status).toBe(409);
  // What was let through is known: later tunes are held against it, not against what was before.
  const [honest] = honestCrowd(1, 1) as [Tune];
  await submit(atlas, honest, "198.51.100.1");
  await atlas.fit.refresh();
  const later = await json("/api/health");
  expect([later.frozen, later.fit === published.fit]).toEqual([false, false]);
});

test("what nobody looks at for a week is published, also by an atlas that was started again", async () => {
  const { fit } = await openFrozen();
  await pass(3);
  await atlas.stop();
  atlas = await openTestAtlas({
    file: atlas.file,
    newKeyDays: 6,
    opened: "2026-12-04T12:00:00Z",
  });
  await atlas.fit.refresh();
  expect(await frozen()).toBe(true);
  await pass(3);
  expect(await json("/api/health")).toMatchObject({ frozen: true, fit });
  await pass(0.5);
  expect(await frozen()).toBe(false);
  expect((await json("/api/health")).fit).not.toBe(fit);
});

test("an upgrade during a freeze answers as before, holds the same back, and lets a steward publish it", async () => {
  for (const changed of ["code", "estimator"]) {
    const { fit } = await openFrozen();
    const average = async () =>
      (await json("/api/start?heat_kW=5&elevation_m=3000")).low.pump_Hz_exact;
    const before = await average();
    await atlas.stop();
    await madeByAnother(changed);
    const { file } = atlas;
    const opened = "2026-12-02T12:00:00Z";
    atlas = await openTestAtlas({ file, newKeyDays: 6, stewardToken: TOKEN, opened });
    await atlas.fit.refresh();
    expect(await json("/api/health"), changed).toMatchObject({ frozen: true, fit });
    expect(await average(), changed).toBe(before);
    await steward("publish", { reason: "Looked up: the owner is known to us." });
    await atlas.fit.settle();
    expect(await frozen(), changed).toBe(false);
    expect(await average(), changed).not.toBe(before);
    if (changed === "code") await atlas.close();
    warned.mockClear();
  }
});

test("after an upgrade the version before it answers until there is a new one, if it reads as one", async () => {
  atlas = await openWith(10);
  const { fit } = await json("/api/health");
  const reopen = async () => {
    atlas = await openTestAtlas({ file: atlas.file, newKeyDays: 6 });
    return (await json("/api/health")).fit;
  };
  await atlas.stop();
  await madeByAnother("code");
  expect(await reopen()).toBe(fit);
  await atlas.fit.refresh();
  // Of the same tunes, but by this release.
  expect((await atlas.fit.current()).version).not.toBe(fit);
  await atlas.stop();
  await changeVersions("set fit = json_remove(json_set(fit, '$.code', '0'), '$.groups[0].slope')");
  expect(await reopen()).toBe("prior");
});

test("what is held back stays so after an upgrade that cannot read what was published", async () => {
  await openFrozen();
  await atlas.stop();
  await changeVersions("set fit = json_remove(json_set(fit, '$.code', '0'), '$.groups[0].slope')");
  atlas = await openTestAtlas({
    file: atlas.file,
    newKeyDays: 6,
    opened: "2026-12-02T12:00:00Z",
  });
  await atlas.fit.refresh();
  expect(await json("/api/health")).toMatchObject({ frozen: true, fit: "prior" });
  await pass(6.5);
  expect((await json("/api/health")).frozen).toBe(false);
});

test("once the tune that did it is gone, nothing is held back", async () => {
  const { fit, liar } = await openFrozen();
  await atlas.app.request(`/api/tunes/${liar.id}`, {
    method: "DELETE",
    headers: bearer(liar.receipt),
  });
  await atlas.fit.settle();
  expect(await json("/api/health")).toMatchObject({ frozen: false, fit });
});
