import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { tunes } from "../../db/schema.ts";
import { fitsInThread } from "../../server/fit-in-thread.ts";
import { fitsHere } from "../../server/fitted.ts";
import { openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { honestCrowd } from "./crowd.ts";

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
  expect(first).toEqual(await here.fit(ORDER));
  expect(first.fit?.groups.map(({ contributors }) => contributors)).toEqual([20, 20]);
  await post(atlas.app, { ...honestCrowd(1, 4)[0], contributor: "one-more-owner-of-a-heater" });
  const second = await inThread.fit(ORDER);
  expect(second).toEqual(await here.fit(ORDER));
  expect(second.rows_sha256).not.toBe(first.rows_sha256);
  expect(second.tunes).toBe(first.tunes + 1);
});

test("rows that are known are not fitted again", async () => {
  const { rows_sha256 } = await inThread.fit(ORDER);
  const again = await inThread.fit({ ...ORDER, known: [null, rows_sha256] });
  expect(again).toEqual({ rows_sha256, tunes: expect.any(Number), fit: null });
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
  const nowhere = fitsInThread("/nowhere/atlas.db");
  await expect(nowhere.fit(ORDER)).rejects.toThrow("unable to open database file");
  await nowhere.close();
  await atlas.db.update(tunes).set({ low_pump_Hz: -1 });
  await expect(inThread.fit(ORDER)).rejects.toThrow("pump_Hz must be a positive number");
  await atlas.db.update(tunes).set({ low_pump_Hz: 1.1 });
  expect((await inThread.fit(ORDER)).fit?.groups).toHaveLength(2);
});
