import { afterEach, expect, test, vi } from "vitest";
import { openAtlas } from "../../server/node.ts";
import { settingsFrom } from "../../server/settings.ts";
import type { TroubleNews } from "../../server/trouble.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { listening } from "./listening.ts";

const MINUTE_ms = 60_000;
const DAY_ms = 24 * 60 * MINUTE_ms;

let atlas: TestAtlas;
let told: TroubleNews[];

async function open(options: Parameters<typeof openTestAtlas>[0]): Promise<void> {
  told = [];
  atlas = await openTestAtlas({ ...options, onTrouble: (news) => told.push(news) });
}
const events = () => told.map(({ event }) => event);
/** Each from a network of its own. */
const send = (n: number) => post(atlas.app, goodTune(n), { "X-Test-Client": `10.${n}.0.1` });

const closing: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
});

test("a surge of new contributors is told of once a day", async () => {
  await open({ newKeyDays: 6 });
  closing.push(atlas.close);
  for (let n = 0; n < 5; n++) await send(n);
  expect(events()).toEqual([]);
  for (let n = 5; n < 10; n++) await send(n);
  expect(events()).toEqual(["surge"]);
  atlas.pass(DAY_ms);
  for (let n = 10; n < 20; n++) await send(n);
  expect(events()).toEqual(["surge", "surge"]);
  // It tells of nobody.
  expect(JSON.stringify(told)).not.toMatch(/contributor-key|10\.\d+\.0\.1/);
});

test("a flood is told of once a day", async () => {
  await open({ floodLimit: 2 });
  closing.push(atlas.close);
  expect((await Promise.all([send(0), send(1)])).map(({ status }) => status)).toEqual([201, 201]);
  expect(events()).toEqual([]);
  for (let n = 2; n < 6; n++) expect((await send(n)).status).toBe(429);
  expect(events()).toEqual(["flood"]);
});

test("a fit that keeps failing is told of after ten minutes, one that fails now and then is not", async () => {
  let fails = true;
  await open({
    fits: (here) => ({
      ...here,
      fit: (order) => (fails ? Promise.reject(new Error("No fit.")) : here.fit(order)),
    }),
  });
  closing.push(atlas.close);
  const fail = () => expect(atlas.fit.refresh()).rejects.toThrow("No fit.");
  await fail();
  atlas.pass(9 * MINUTE_ms);
  await fail();
  fails = false;
  await atlas.fit.refresh();
  fails = true;
  atlas.pass(9 * MINUTE_ms);
  await fail();
  expect(events()).toEqual([]);
  atlas.pass(10 * MINUTE_ms);
  await fail();
  await fail();
  expect(events()).toEqual(["fit failing"]);
  fails = false;
});

test("a running atlas posts it to its webhook", async () => {
  const { url, taken } = await listening((response) => void response.writeHead(204).end(), closing);
  const env = { ATLAS_DB: ":memory:", ATLAS_SECRET: "a secret for tests only", FLOOD_LIMIT: "1" };
  const running = await openAtlas(settingsFrom({ ...env, ALARM_WEBHOOK: url }, false));
  closing.unshift(running.close);
  const incoming = { incoming: { socket: { remoteAddress: "203.0.113.7" } } };
  for (let n = 0; n < 3; n++) {
    const { contributor } = goodTune(n);
    const tune = { ...goodTune(n), site: { elevation_m: 1300 }, contributor };
    const body = JSON.stringify(tune);
    const headers = { "Content-Type": "application/json" };
    await running.app.request("/api/tunes", { method: "POST", headers, body }, incoming);
  }
  await vi.waitFor(() => expect(taken).toHaveLength(1), { timeout: WAIT_ms });
  expect(JSON.parse(taken[0]?.body ?? "")).toEqual({
    event: "flood",
    sentence: "Far more tunes come in than usual. Each needs a proof of work until fewer come.",
  });
});
