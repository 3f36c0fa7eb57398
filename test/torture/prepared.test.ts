import { afterEach, beforeEach, expect, test } from "vitest";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import * as answers from "../../server/contract.ts";
import { preparedHere } from "../../server/prepared.ts";
import { preparedInThread } from "../../server/prepared-in-thread.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { putTunes } from "./many-tunes.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ prepared: true });
});
afterEach(() => atlas.close());

/** Made in the server's own thread, an export of so many is answered before anything else is. */
const TUNES = 1000;

const PATHS = ["/api/tunes.csv", "/api/tunes.geojson", "/api/cells/world"];

async function oneRow(): Promise<TuneRow> {
  await post(atlas.app, goodTune());
  // Else a fit of what comes next would be made in this very thread, and nobody would be answered meanwhile.
  await atlas.fit.settle();
  const { value } = await acceptedTunes(atlas.db).next();
  return (value as TuneRow[])[0] as TuneRow;
}

test("what the threads prepare is to the byte what is made here, packed or not, and follows each tune that comes and goes", async () => {
  await putTunes(atlas.db, await oneRow(), 700);
  await atlas.fit.settle();
  const same = async () => {
    await atlas.fit.settle();
    const plainAtlas = await openTestAtlas({ file: atlas.file });
    for (const path of PATHS) {
      const here = await (await plainAtlas.app.request(path)).text();
      expect(await (await atlas.app.request(path)).text(), path).toBe(here);
    }
    const packed = await atlas.app.request("/api/tunes.csv", {
      headers: { "Accept-Encoding": "br, gzip" },
    });
    expect(packed.headers.get("Content-Encoding")).toBe("gzip");
    expect(packed.headers.get("Vary")).toBe("Accept-Encoding");
    const unpacked = packed.body?.pipeThrough(new DecompressionStream("gzip")) ?? null;
    const here = await (await plainAtlas.app.request("/api/tunes.csv")).text();
    expect(await new Response(unpacked as ReadableStream).text()).toBe(here);
    await plainAtlas.stop();
    return here;
  };
  await same();
  const response = await post(atlas.app, goodTune(5));
  const { id, receipt } = answers.submitted.parse(await response.json());
  expect(await same()).toContain(id);
  await atlas.app.request(`/api/tunes/${id}`, {
    method: "DELETE",
    headers: { Authorization: `Bearer ${receipt}` },
  });
  expect(await same()).not.toContain(id);
  const parent = "83754efffffffff";
  const cells = answers.cells.parse(await (await atlas.app.request("/api/cells/world")).json());
  expect(cells.cells.length).toBeGreaterThan(100);
  const under = await (await atlas.app.request(`/api/cells/${parent}`)).json();
  expect(answers.cells.parse(under).cells.length).toBeLessThan(cells.cells.length);
});

test("prepared once for everybody, until the data or the fit change", async () => {
  const threads = preparedInThread(atlas.db, atlas.file, false);
  await post(atlas.app, goodTune());
  await atlas.fit.settle();
  const fit = await atlas.fit.current();
  const newest = async () => (await threads.releases())[0];
  const together = await Promise.all([1, 2, 3].map(newest));
  expect(new Set(together).size).toBe(1);
  const cells = await threads.cells(fit, "world");
  expect(await threads.cells(fit, "world")).toBe(cells);
  expect(await threads.cells({ ...fit, version: "2026-11-26.1" }, "world")).not.toBe(cells);
  const here = preparedHere(atlas.db, false);
  const shown = await here.shown();
  expect(await here.shown()).toBe(shown);
  expect(await threads.shown()).toEqual(shown);
  await post(atlas.app, goodTune(1));
  expect((await newest()).revision).not.toBe(together[0]?.revision);
  expect(await here.shown()).not.toBe(shown);
  await threads.close();
});

test("requests are answered while an export of many tunes is prepared", async () => {
  await putTunes(atlas.db, await oneRow(), TUNES);
  const exported = Promise.resolve(atlas.app.request("/api/tunes.csv"));
  let isDone = false;
  void exported.then(() => {
    isDone = true;
  });
  let answered = 0;
  while (!isDone) {
    expect((await atlas.app.request("/api/start?heat_kW=5&elevation_m=2000")).status).toBe(200);
    answered++;
    await new Promise(setImmediate);
  }
  expect(answered).toBeGreaterThan(20);
  const lines = (await (await exported).text()).trimEnd().split("\r\n");
  expect(lines).toHaveLength(TUNES + 2);
});

test("receipts, and what they open, are for nobody's cache", async () => {
  const response = await post(atlas.app, goodTune());
  expect(response.headers.get("Cache-Control")).toBe("no-store");
  const { id, receipt } = await response.json();
  const headers = { Authorization: `Bearer ${receipt}`, "Content-Type": "application/json" };
  const read = await atlas.app.request(`/api/tunes/${id}`, { headers });
  expect(read.headers.get("Cache-Control")).toBe("no-store");
  const body = JSON.stringify(goodTune(1));
  const revised = await atlas.app.request(`/api/tunes/${id}`, { method: "PUT", headers, body });
  expect(revised.headers.get("Cache-Control")).toBe("no-store");
  const near = await atlas.app.request("/api/tunes/near?heat_kW=5&elevation_m=2000");
  expect(near.headers.get("Cache-Control")).toContain("max-age");
});
