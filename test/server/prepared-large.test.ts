import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { decisions } from "../../db/schema.ts";
import { near } from "../../server/contract/near.ts";
import { scaling } from "../../server/contract/scaling.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

/** So much was decided that the atlas takes itself for a very large one. */
const LARGE = 60_000;

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ prepared: true });
  for (const n of [1, 2, 3]) await post(atlas.app, goodTune(n));
  const entry = { tune: "", by: "contributor", verdict: "withdrawn" as const, reasons: "[]" };
  await atlas.db.insert(decisions).values({ id: LARGE, ...entry, decided_on: "2026-11-25" });
  await atlas.fit.settle();
});
afterEach(() => atlas.close());

const get = (path: string, tag = "") =>
  atlas.app.request(`/api${path}`, { headers: { "If-None-Match": tag } });
const soon = (look: () => Promise<void>) => vi.waitFor(look, { timeout: WAIT_ms, interval: 20 });

test("tunes nearby wait for nothing: until it is known how finely their places are shown they come without, in the same order", async () => {
  const ask = async () => {
    const answer = await get("/tunes/near?heat_kW=5&elevation_m=1300&lat=41.2&lon=74.9");
    return { tag: answer.headers.get("ETag") ?? "", ...near.parse(await answer.json()) };
  };
  const first = await ask();
  expect(first.tunes.map(({ cell }) => cell)).toEqual([null, null, null]);
  await soon(async () => {
    const then = await ask();
    expect(then.tunes.every(({ cell }) => cell !== null)).toBe(true);
    expect(then.tunes.map(({ id }) => id)).toEqual(first.tunes.map(({ id }) => id));
    // What was kept of the first answer is asked for again.
    expect(then.tag).not.toBe(first.tag);
  });
});

test("how settings scale is answered as it was while it is made anew, says of which fit, and never with a withdrawn tune", async () => {
  const ask = async (tag = "") => {
    const answer = await get("/scaling?heat_kW=5&end=low", tag);
    const body = answer.status === 200 ? scaling.parse(await answer.json()) : null;
    return { status: answer.status, tag: answer.headers.get("ETag") ?? "", body };
  };
  const first = await ask();
  expect(first.body?.points).toHaveLength(3);
  expect(first.body?.fit).toBe((await atlas.fit.current()).version);
  const { id, receipt } = await (await post(atlas.app, goodTune(4))).json();
  await atlas.fit.settle();
  const meanwhile = await ask();
  expect([3, 4]).toContain(meanwhile.body?.points.length);
  expect(meanwhile.tag === first.tag).toBe(meanwhile.body?.points.length === 3);
  await soon(async () => expect((await ask()).body?.points).toHaveLength(4));
  const now = await ask();
  expect(now.body?.fit).toBe((await atlas.fit.current()).version);
  expect((await ask(now.tag)).status).toBe(304);
  const headers = { Authorization: `Bearer ${receipt}` };
  await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers });
  expect((await ask()).body?.points).toHaveLength(3);
});
