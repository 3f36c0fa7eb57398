import { afterEach, beforeEach, expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { holdDatabase } from "./holding-process.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
});
afterEach(() => atlas.close());

test("held by another process beyond all patience: writes are told to come again, reads go on, and after its release writes work at once", async () => {
  const key = { "Idempotency-Key": "sent-while-locked" };
  expect((await post(atlas.app, goodTune(0))).status).toBe(201);
  const other = await holdDatabase(atlas.file);
  // The patience of the atlas is 5 s.
  const waiting = [1, 2, 3].map((n) => post(atlas.app, goodTune(n)));
  const withKey = post(atlas.app, goodTune(4), key);
  const read = await atlas.app.request("/api/start?heat_kW=5&elevation_m=2000");
  expect(read.status).toBe(200);
  for (const response of [...(await Promise.all(waiting)), await withKey]) {
    expect(response.status).toBe(503);
    expect(Number(response.headers.get("Retry-After"))).toBeGreaterThan(0);
    expect(answers.problem.parse(await response.json()).detail).toMatch(/Nothing was stored/);
  }
  await other.release();
  for (const n of [1, 2, 3]) expect((await post(atlas.app, goodTune(n))).status).toBe(201);
  expect((await post(atlas.app, goodTune(4), key)).status).toBe(201);
  await atlas.fit.settle();
  const { tunes, fit } = answers.health.parse(
    await (await atlas.app.request("/api/health")).json(),
  );
  expect(tunes).toBe(5);
  expect(fit).not.toBe("prior");
});

test("held for a moment, writes wait for it and nothing is lost", async () => {
  const other = await holdDatabase(atlas.file);
  const sent = [0, 1, 2].map((n) => post(atlas.app, goodTune(n)));
  const idle = await atlas.app.request("/api/fit");
  expect(idle.status).toBe(200);
  await other.release();
  for (const response of sent) expect((await response).status).toBe(201);
});
