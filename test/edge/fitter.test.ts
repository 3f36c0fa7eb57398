import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { fitBounded } from "../../model/bounded-fit.ts";
import * as answers from "../../server/contract.ts";
import { readFitFile } from "../../server/fit-file.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune } from "../server/atlas.ts";
import { openWorkerd, type Workerd } from "./workerd.ts";

/** Writes a minute of one client, and tunes of all from which on each needs a proof of work. */
const [WRITES, TUNES] = [12, 14];

let edge: Workerd;
beforeAll(async () => {
  edge = await openWorkerd(
    {
      ATLAS_SECRET: "a secret for tests only",
      WRITE_LIMIT: WRITES,
      FLOOD_LIMIT: TUNES,
      NEW_KEY_DAYS: 0,
    },
    { script: "test/edge/cutting-worker.ts" },
  );
});
afterAll(() => edge?.close());

const tune = (n: number) => ({
  ...goodTune(n),
  heater: { heat_kW: n % 2 === 0 ? 5 : 2 },
  site: { elevation_m: 1300 },
});

const send = (n: number, isolate: number) =>
  edge.ask("/api/tunes", {
    method: "POST",
    headers: { "Content-Type": "application/json", "X-Isolate": String(isolate) },
    body: JSON.stringify(tune(n)),
  });
/** As an app says that has read nothing before. */
const fitOf = async (isolate: string) =>
  answers.publishedFit.parse(
    await (await edge.ask("/api/fit", { headers: { "X-Isolate": isolate } })).json(),
  );
const stepsKept = async () => Number(await (await edge.ask("/steps")).text());

test("a write is stored and makes no version; the cron has one made, which goes on after it was cut off and is the same as anywhere", async () => {
  const SENT = 8;
  for (let n = 0; n < SENT; n++) expect((await send(n, 1)).status).toBe(201);
  expect((await fitOf("fresh 1")).version).toBe("prior");
  expect(await stepsKept()).toBe(0);

  await edge.everyFiveMinutes();
  const published = await vi.waitFor(
    async () => {
      const fit = await fitOf(`fresh ${Math.random()}`);
      expect(fit.version).not.toBe("prior");
      return fit;
    },
    { timeout: WAIT_ms, interval: 500 },
  );
  // Two sizes and two ends, each alone and then with the other size: 8 steps, and the one that was cut off again.
  expect(await stepsKept()).toBe(9);
  // Anybody makes the same of the open data, where nothing is cut off.
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-fitter-"));
  const file = join(folder, "tunes.csv");
  writeFileSync(file, await (await edge.ask("/api/tunes.csv")).text());
  const { groups } = fitBounded(readFitFile(file).rows);
  rmSync(folder, { recursive: true });
  expect(groups).toHaveLength(4);
  expect(published.groups).toEqual(groups);

  // Nothing new: no other version, and no step is made again.
  await edge.everyFiveMinutes();
  expect([await stepsKept(), (await fitOf("fresh 2")).version]).toEqual([9, published.version]);
});

test("isolates count together: what one client sends to several is limited as if it were one, and so is a flood", async () => {
  const sent = await Promise.all(Array.from({ length: 20 }, (_, n) => send(100 + n, n % 4)));
  const statuses = sent.map(({ status }) => status);
  // Eight came before, in the same minute or in the one before.
  const taken = statuses.filter((status) => status === 201).length;
  expect(taken).toBeGreaterThanOrEqual(Math.min(WRITES, TUNES) - 8);
  expect(taken).toBeLessThanOrEqual(TUNES - 8);
  expect(statuses.filter((status) => status === 429)).toHaveLength(20 - taken);
  for (const response of sent.filter(({ status }) => status === 429)) {
    expect(Number(response.headers.get("Retry-After"))).toBeGreaterThan(0);
    const { detail, challenge } = answers.problem.parse(await response.json());
    expect(detail).toMatch(challenge ? /proof of work/ : /At most 12 writes a minute/);
  }
});
