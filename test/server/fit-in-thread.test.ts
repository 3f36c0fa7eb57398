import { mkdtempSync, renameSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { tunes } from "../../db/schema.ts";
import { problem } from "../../server/contract/problem.ts";
import { fitsInThread } from "../../server/fit-in-thread.ts";
import { fitsHere } from "../../server/fitted.ts";
import { Turns } from "../../server/turns.ts";
import { openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { honestCrowd } from "./crowd.ts";
import { bearer, TOKEN } from "./stewards-atlas.ts";

let atlas: TestAtlas;
let inThread: ReturnType<typeof fitsInThread>;
const ORDER = { known: [], before: [] };

beforeAll(async () => {
  atlas = await openTestAtlas();
  for (const tune of honestCrowd(20, 3)) await post(atlas.app, tune);
});
beforeEach(() => {
  inThread = fitsInThread(atlas.file);
});
afterEach(() => inThread.close());
afterAll(() => atlas.close());

test("a fit made in the thread is the same, to the last bit, and another after it too", async () => {
  const here = fitsHere(atlas.db);
  const first = await inThread.fit(ORDER);
  expect(first).toEqual({ ...(await here.fit(ORDER)), took_ms: expect.any(Number) });
  expect(first.fit?.groups.map(({ contributors }) => contributors)).toEqual([20, 20]);
  await post(atlas.app, { ...honestCrowd(1, 4)[0], contributor: "one-more-owner-of-a-heater" });
  const second = await inThread.fit(ORDER);
  expect(second).toEqual({ ...(await here.fit(ORDER)), took_ms: expect.any(Number) });
  expect(second.rows_sha256).not.toBe(first.rows_sha256);
  expect(second.tunes).toBe(first.tunes + 1);
});

test("rows that are known are not fitted again", async () => {
  const { rows_sha256 } = await inThread.fit(ORDER);
  const again = await inThread.fit({ ...ORDER, known: [null, rows_sha256] });
  const [tunes, took_ms] = [expect.any(Number), expect.any(Number)];
  expect(again).toEqual({ rows_sha256, tunes, fit: null, took_ms });
});

test("a fit takes its turn, and what it waited for is no time of its own", async () => {
  const turns = new Turns();
  const other = Promise.withResolvers<void>();
  void turns.take(() => other.promise);
  const waiting = fitsInThread(atlas.file, turns);
  const began = performance.now();
  let isMade = false;
  const made = waiting.fit(ORDER).finally(() => {
    isMade = true;
  });
  await inThread.fit(ORDER);
  expect(isMade).toBe(false);
  const waited_ms = performance.now() - began;
  other.resolve();
  const { took_ms } = await made;
  expect(took_ms).toBeGreaterThan(0);
  expect(took_ms).toBeLessThanOrEqual(performance.now() - began - waited_ms);
  await waiting.close();
});

test("a trial leaves out what it is told to, and is the fit of the rest", async () => {
  const [{ id } = { id: "" }] = await atlas.db.select({ id: tunes.id }).from(tunes).limit(1);
  const trial = await inThread.without([id, "unknown"]);
  const { tunes: all } = await inThread.fit(ORDER);
  expect(trial).toMatchObject({ left_out: 1, left: all - 1 });
  expect(trial).toEqual(await fitsHere(atlas.db).without([id]));
});

test("this thread's timers go on while a fit is made", async () => {
  let ticks = 0;
  const timer = setInterval(() => ticks++, 1);
  await inThread.fit(ORDER);
  clearInterval(timer);
  expect(ticks).toBeGreaterThan(20);
});

test("a fit that fails says why, and the next one is made", async () => {
  await atlas.db.update(tunes).set({ low_pump_Hz: -1 });
  await expect(inThread.fit(ORDER)).rejects.toThrow("pump_Hz must be a positive number");
  await atlas.db.update(tunes).set({ low_pump_Hz: 1.1 });
  expect((await inThread.fit(ORDER)).fit?.groups).toHaveLength(2);
});

test("where the disk fails a steward's trial is a 503 with the remedy, and whoever runs the atlas is told", async () => {
  const told: string[] = [];
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-trial-")), "atlas.db");
  const threads = fitsInThread(file);
  const failing = await openTestAtlas({
    ...{ file, stewardToken: TOKEN },
    fits: (here) => ({ ...here, without: threads.without }),
    onTrouble: ({ event }) => told.push(event),
  });
  const { id } = await (await post(failing.app, honestCrowd(1, 6)[0])).json();
  const tryWithout = () =>
    failing.app.request("/api/steward/without", {
      method: "POST",
      headers: { "Content-Type": "application/json", ...bearer(TOKEN) },
      body: JSON.stringify({ tunes: [id] }),
    });
  const [there, away] = [dirname(file), `${dirname(file)}-away`];
  renameSync(there, away);
  const answer = await tryWithout();
  renameSync(away, there);
  expect(answer.status).toBe(503);
  expect(problem.parse(await answer.json()).detail).toMatch(/disk fails.*Ask again/);
  expect(told).toEqual(["storage failing"]);
  expect((await tryWithout()).status).toBe(200);
  await threads.close();
  await failing.close();
});

test("told to end while a fit is made: that one is published, and no second one is begun", async () => {
  let made = 0;
  let goOn = () => {};
  const mayEnd = new Promise<void>((resolve) => {
    goOn = resolve;
  });
  const stopping = await openTestAtlas({
    fits: (here) => ({
      ...here,
      fit: async (order) => {
        made++;
        await mayEnd;
        return here.fit(order);
      },
    }),
  });
  for (const tune of honestCrowd(2, 5)) await post(stopping.app, tune);
  void stopping.fit.refresh();
  // Somebody writes meanwhile.
  void stopping.fit.refresh();
  const ended = stopping.fit.finish();
  goOn();
  await ended;
  stopping.fit.refreshSoon();
  expect(stopping.fit.pending).toBe(false);
  expect(made).toBe(1);
  expect((await stopping.fit.current()).rows_sha256).not.toBeNull();
  await stopping.close();
});
