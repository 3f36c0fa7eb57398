import { once } from "node:events";
import { readFileSync } from "node:fs";
import { type AddressInfo, connect } from "node:net";
import { serve } from "@hono/node-server";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { ZodType } from "zod";
import * as answers from "../../server/contract.ts";
import { CODE_VERSION } from "../../server/version.ts";
import { allFitRows, flatCountry, goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { tuneAt } from "./crowd.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
});
afterEach(() => atlas.close());

const get = (path: string, headers: Record<string, string> = {}) =>
  atlas.app.request(path, { headers });
const ask = (own_tunes: unknown, question: object = { heat_kW: 5, elevation_m: 2240 }) =>
  atlas.app.request("/api/start", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ ...question, own_tunes }),
  });
const ownTune = (n = 1) => {
  const { site, air, low, high } = goodTune(n);
  return { site, air, low, high };
};
const bearer = (receipt: string) => ({ Authorization: `Bearer ${receipt}` });

test("the code's version is the package's, and that of its citation", () => {
  expect(CODE_VERSION).toBe(JSON.parse(readFileSync("package.json", "utf8")).version);
  expect(readFileSync("CITATION.cff", "utf8")).toContain(`\nversion: ${CODE_VERSION}\n`);
});

describe("a tune's life", () => {
  test("submitted, read, revised, withdrawn; the fit follows", async () => {
    const response = await post(atlas.app, goodTune());
    expect(response.status).toBe(201);
    const { id, receipt, verdict } = await response.json();
    expect(verdict).toBe("accepted");
    await atlas.fit.refresh();
    const read = await get(`/api/tunes/${id}`, bearer(receipt));
    expect(await read.json()).toMatchObject({ id, fit: { low: "kept", high: "kept" } });
    const revised = { ...goodTune(), low: { ...goodTune().low, pump_Hz: 1.2 } };
    const put = await atlas.app.request(`/api/tunes/${id}`, {
      method: "PUT",
      headers: { "Content-Type": "application/json", ...bearer(receipt) },
      body: JSON.stringify(revised),
    });
    expect(put.status).toBe(200);
    expect(
      (await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) }))
        .status,
    ).toBe(204);
    expect((await get(`/api/tunes/${id}`, bearer(receipt))).status).toBe(404);
    await atlas.fit.refresh();
    expect((await (await get("/api/fit")).json()).groups).toEqual([]);
    expect(await (await get("/api/tunes.csv")).text()).not.toContain(id);
  });

  test("a month that has begun somewhere has come, one that has begun nowhere has not", async () => {
    const verdictAt = async (instant: string, n: number) => {
      const atlas = await openTestAtlas();
      atlas.pass(Date.parse(instant) - Date.parse("2026-11-25T12:00:00Z"));
      const { verdict } = await (
        await post(atlas.app, { ...goodTune(n), tuned_on: "2026-12" })
      ).json();
      await atlas.close();
      return verdict;
    };
    // On Kiritimati, 14 h ahead, December begins at 10:00 UTC of 30 November.
    expect(await verdictAt("2026-11-30T10:05:00Z", 1)).toBe("accepted");
    expect(await verdictAt("2026-11-30T09:55:00Z", 2)).toBe("held");
  });

  test("without a receipt 401, with a wrong one 404", async () => {
    const { id } = await (await post(atlas.app, goodTune())).json();
    expect((await get(`/api/tunes/${id}`)).status).toBe(401);
    expect((await get(`/api/tunes/${id}`, bearer("wrong"))).status).toBe(404);
  });

  test("a repeated submission gets the same answer and receipt; another body with its key 409", async () => {
    const key = { "Idempotency-Key": "key-0000001" };
    const first = await (await post(atlas.app, goodTune(), key)).json();
    const again = await (await post(atlas.app, goodTune(), key)).json();
    expect(again).toEqual(first);
    expect((await post(atlas.app, { ...goodTune(), tuned_on: "2026-09" }, key)).status).toBe(409);
    const together = await Promise.all(
      [1, 2, 3].map(() =>
        post(atlas.app, goodTune(9), { "Idempotency-Key": "key-0000002" }).then((r) => r.json()),
      ),
    );
    expect(new Set(together.map((t) => t.id)).size).toBe(1);
    expect((await (await get("/api/health")).json()).tunes).toBe(2);
  });

  test("a slip is held with a sentence and stays out of the fit", async () => {
    const tune = { ...goodTune(), site: { ...goodTune().site, elevation_m: 4265 } };
    const { verdict, reasons } = await (await post(atlas.app, tune)).json();
    expect(verdict).toBe("held");
    expect(reasons[0]).toMatchObject({ code: "elevation_in_feet" });
    await atlas.fit.refresh();
    expect((await (await get("/api/fit")).json()).version).toBe("prior");
  });
});

describe("an elevation worked out from a position", () => {
  const site = { ...goodTune().site, elevation_sd_m: 123 };
  const vague = { ...goodTune(1), site };

  test("widens the density's spread as far as the standard atmosphere's gradient makes it, in the answer and in the rows of the fit", async () => {
    const exact = await (await post(atlas.app, goodTune(1))).json();
    const { id, receipt, air } = await (await post(atlas.app, vague)).json();
    // ISO 2533: near the ground pressure, and with it density at a known temperature, falls by 12 % a kilometre.
    const added = Math.sqrt(air.ln_density_sd ** 2 - exact.air.ln_density_sd ** 2);
    expect(added).toBeCloseTo(0.12 * 0.13, 6);
    expect(air.density_kg_m3).toBe(exact.air.density_kg_m3);
    const kept = await (await get(`/api/tunes/${id}`, bearer(receipt))).json();
    expect(kept.air).toEqual(air);
    expect(kept.tune.site.elevation_sd_m).toBe(130);
    const rows = (await allFitRows(atlas.db)).map((row) => [row.row, row.ln_density_sd]);
    expect(rows).toEqual(
      expect.arrayContaining([
        [id, Number(air.ln_density_sd.toFixed(3))],
        [exact.id, Number(exact.air.ln_density_sd.toFixed(3))],
      ]),
    );
  });

  test("a station pressure makes it of no account", async () => {
    const given = { temperature_C: -4, humidity_pct: 60, pressure_hPa: 866 };
    const answers = [vague, goodTune(1)].map((tune) => post(atlas.app, { ...tune, air: given }));
    const [a, b] = await Promise.all(answers.map(async (answer) => (await answer).json()));
    expect(a.air).toEqual(b.air);
  });

  test("is in the open data, and goes when the owner states the elevation", async () => {
    const { id, receipt } = await (await post(atlas.app, vague)).json();
    const columns = async () => {
      const [head, line] = (await (await get("/api/tunes.csv")).text()).split("\r\n");
      const cells = line?.split(",") ?? [];
      return Object.fromEntries((head ?? "").split(",").map((name, i) => [name, cells[i]]));
    };
    const property = async () =>
      (await (await get("/api/tunes.geojson")).json()).features[0].properties.elevation_sd_m;
    const before = await columns();
    expect([before.elevation_sd_m, await property()]).toEqual(["130", 130]);
    const { columns: described } = await (await get("/api/dictionary.json")).json();
    expect(described).toContainEqual(
      expect.objectContaining({ name: "elevation_sd_m", unit: "m" }),
    );
    const revise = (tune: unknown) =>
      atlas.app.request(`/api/tunes/${id}`, {
        method: "PUT",
        headers: { "Content-Type": "application/json", ...bearer(receipt) },
        body: JSON.stringify(tune),
      });
    // Revised with the same site it stays; stated by the owner it is gone.
    await revise({ ...vague, tuned_on: "2026-09" });
    expect(await columns()).toMatchObject({ elevation_sd_m: "130", tuned_on: "2026-09" });
    await revise(goodTune(1));
    const after = await columns();
    expect([after.elevation_sd_m, await property()]).toEqual(["", null]);
    expect(Number(after.ln_density_sd)).toBeLessThan(Number(before.ln_density_sd));
  });
});

test("a high final CO is accepted with a word on the heater's safety, in every answer about the tune", async () => {
  const sooty = {
    ...goodTune(),
    low: { ...goodTune().low, co_ppm: 450 },
    high: { ...goodTune().high, co_ppm: 600 },
  };
  const key = { "Idempotency-Key": "key-sooty-01" };
  const answer = answers.submitted.parse(await (await post(atlas.app, sooty, key)).json());
  expect([answer.verdict, answer.reasons]).toEqual(["accepted", []]);
  expect(answer.advice.map(({ code, field, value }) => [code, field, value])).toEqual([
    ["final_co_high", "low.co_ppm", 450],
    ["final_co_high", "high.co_ppm", 600],
  ]);
  for (const { sentence } of answer.advice) expect(sentence).toContain("before anyone sleeps");
  expect(await (await post(atlas.app, sooty, key)).json()).toEqual(answer);
  const { id, receipt = "" } = answer;
  const kept = answers.keptTune.parse(
    await (await get(`/api/tunes/${id}`, bearer(receipt))).json(),
  );
  expect(kept.advice).toEqual(answer.advice);
  const put = await atlas.app.request(`/api/tunes/${id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", ...bearer(receipt) },
    body: JSON.stringify(goodTune()),
  });
  expect(answers.submitted.parse(await put.json()).advice).toEqual([]);
  const { paths } = await (await get("/api/openapi.json")).json();
  expect(JSON.stringify(paths["/api/tunes"])).toContain("final_co_high");
});

test("nothing finer than the cell, no key and no receipt reach the file", async () => {
  const tune = {
    ...goodTune(),
    site: { elevation_m: 1300, elevation_sd_m: 83.75, lat: 41.23456, lon: 74.98765 },
  };
  const { receipt } = await (await post(atlas.app, tune)).json();
  const bytes = ["", "-wal"].map((end) => readFileSync(atlas.file + end, "latin1")).join("");
  for (const secret of [tune.contributor, receipt, "41.23456", "74.98765", "83.75"]) {
    expect(bytes).not.toContain(secret);
  }
});

describe("bad input", () => {
  const cases: [name: string, body: string, headers: Record<string, string>, status: number][] = [
    ["malformed JSON", "{", {}, 400],
    ["an empty body", "", {}, 400],
    ["another content type", JSON.stringify(goodTune()), { "Content-Type": "text/plain" }, 415],
    ["10 MB", `"${"x".repeat(10_000_000)}"`, {}, 413],
    ["an array", "[]", {}, 422],
    ["an unknown field", JSON.stringify({ ...goodTune(), nickname: "x" }), {}, 422],
    [
      "latitude out of range",
      JSON.stringify({ ...goodTune(), site: { elevation_m: 1, lat: 99, lon: 0 } }),
      {},
      422,
    ],
    [
      "SQL for a key",
      JSON.stringify({ ...goodTune(), contributor: "'; DROP TABLE tunes;--" }),
      {},
      422,
    ],
    [
      "script for a month",
      JSON.stringify({ ...goodTune(), tuned_on: "<script>alert(1)</script>" }),
      {},
      422,
    ],
    [
      "an absurd number",
      JSON.stringify({ ...goodTune(), low: { pump_Hz: 1e99, fan_rpm: 1, co_ppm: 1 } }),
      {},
      422,
    ],
  ];
  test.each(cases)("%s", async (_, body, headers, status) => {
    const response = await post(atlas.app, body, headers);
    expect(response.status).toBe(status);
    expect(response.headers.get("Content-Type")).toBe("application/problem+json");
    answers.problem.parse(await response.json());
    expect((await (await get("/api/health")).json()).tunes).toBe(0);
  });

  test("every bad field is named at once", async () => {
    const response = await post(atlas.app, {
      ...goodTune(),
      low: { pump_Hz: "fast", fan_rpm: 1e9 },
      contributor: "x",
    });
    const fields = (await response.json()).errors.map((e: { field: string }) => e.field);
    expect(fields).toEqual(
      expect.arrayContaining(["low.pump_Hz", "low.fan_rpm", "low.co_ppm", "contributor"]),
    );
  });

  test("an elevation at odds with the place, and no slip explains it, is refused with the remedy", async () => {
    const response = await post(atlas.app, {
      ...goodTune(),
      site: { ...goodTune().site, elevation_m: 3000 },
    });
    expect(response.status).toBe(422);
    const [error] = (await response.json()).errors;
    expect(error).toMatchObject({ field: "site.elevation_m", code: "elevation_against_place" });
    expect(error.message).toContain("leave the place out");
    expect((await (await get("/api/health")).json()).tunes).toBe(0);
  });

  test("unknown address 404, wrong method 405 with Allow", async () => {
    expect((await get("/api/nothing")).status).toBe(404);
    const response = await atlas.app.request("/api/tunes", { method: "PATCH" });
    expect([response.status, response.headers.get("Allow")]).toEqual([405, "POST"]);
  });

  test("2,000 generated bodies and queries: never a 5xx, and the next request is served", async () => {
    const near = fc.record(
      {
        heater: fc.oneof(
          fc.record({ heat_kW: fc.oneof(fc.double(), fc.constant(5)) }),
          fc.anything(),
        ),
        site: fc.oneof(
          fc.record({ elevation_m: fc.double(), lat: fc.double(), lon: fc.double() }),
          fc.anything(),
        ),
        air: fc.anything(),
        low: fc.oneof(
          fc.record({ pump_Hz: fc.double(), fan_rpm: fc.double(), co_ppm: fc.double() }),
          fc.anything(),
        ),
        high: fc.oneof(fc.constant(goodTune().high), fc.anything()),
        contributor: fc.oneof(fc.constant(goodTune().contributor), fc.string({ unit: "binary" })),
      },
      { requiredKeys: [] },
    );
    const body = fc.oneof(near, fc.json(), fc.string({ unit: "binary" }), fc.constant(goodTune()));
    await fc.assert(
      fc.asyncProperty(body, fc.string({ unit: "binary" }), async (value, text) => {
        const sent = typeof value === "string" ? value : (JSON.stringify(value) ?? "null");
        expect((await post(atlas.app, sent)).status).toBeLessThan(500);
        const query = encodeURIComponent(text);
        expect((await get(`/api/start?heat_kW=${query}&elevation_m=${query}`)).status).toBeLessThan(
          500,
        );
      }),
      { numRuns: 2000, seed: 20261125 },
    );
    expect((await get("/api/start?heat_kW=5&elevation_m=1000")).status).toBe(200);
  });
});

test("a body that breaks off is nothing for the log, and nothing of it is stored", async () => {
  const log = vi.spyOn(console, "error").mockReturnValue();
  let answered = (_: number) => {};
  const status = new Promise<number>((resolve) => {
    answered = resolve;
  });
  const server = serve({
    fetch: async (request: Request) => {
      const answer = await atlas.app.fetch(request);
      answered(answer.status);
      return answer;
    },
    hostname: "127.0.0.1",
    port: 0,
  });
  await once(server, "listening");
  const socket = connect((server.address() as AddressInfo).port, "127.0.0.1");
  const head = "POST /api/tunes HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n";
  socket.write(`${head}Content-Length: 500\r\nExpect: 100-continue\r\n\r\n{"heater":`);
  // It says that it has begun.
  await once(socket, "data");
  socket.destroy();
  expect(await status).toBe(400);
  expect(log).not.toHaveBeenCalled();
  log.mockRestore();
  server.close();
});

test("writes beyond the limit wait, per client", async () => {
  const limited = await openTestAtlas({ writeLimit: 2 });
  const send = (client: string) => post(limited.app, goodTune(), { "X-Test-Client": client });
  expect([(await send("a")).status, (await send("a")).status]).toEqual([201, 201]);
  const refused = await send("a");
  expect(refused.status).toBe(429);
  expect(Number(refused.headers.get("Retry-After"))).toBeGreaterThan(0);
  expect((await send("b")).status).toBe(201);
  limited.pass(60_001);
  expect((await send("a")).status).toBe(201);
  await limited.close();
});

test("the addresses of one IPv6 line are one client, and a network of many clients has a limit of its own", async () => {
  const limited = await openTestAtlas({ writeLimit: 2 });
  const send = async (client: string) =>
    (await post(limited.app, goodTune(), { "X-Test-Client": client })).status;
  const line = await Promise.all([1, 2, 3].map((n) => send(`2001:db8:0:1::${n}`)));
  // Which of the three comes last is chance.
  expect(line.toSorted()).toEqual([201, 201, 429]);
  // Five clients' worth of writes for all of 203.0.113.0/24.
  for (let n = 0; n < 10; n++) expect([n, await send(`203.0.113.${n}`)]).toEqual([n, 201]);
  expect(await send("203.0.113.10")).toBe(429);
  expect(await send("198.51.100.1")).toBe(201);
  await limited.close();
});

test("what is dear to answer is limited per client, with a word on when to ask again; everything else is not", async () => {
  const limited = await openTestAtlas({ readLimit: 2 });
  const from = { "X-Test-Client": "a" };
  const read = (path: string, headers = {}) =>
    limited.app.request(path, { headers: { ...from, ...headers } });
  const csv = await read("/api/tunes.csv");
  expect([csv.status, (await read("/api/tunes.parquet")).status]).toEqual([200, 200]);
  const refused = await limited.app.request("/api/start", {
    method: "POST",
    headers: { ...from, "Content-Type": "application/json" },
    body: JSON.stringify({ heat_kW: 5, elevation_m: 2240, own_tunes: [ownTune()] }),
  });
  expect([refused.status, refused.headers.get("Retry-After")]).toEqual([429, "60"]);
  expect(answers.problem.parse(await refused.json())).toMatchObject({
    title: "Too many at once",
    detail: "At most 2 questions or downloads of this kind a minute. Ask again in 60 s.",
  });
  // Whoever has it already is told so at no cost.
  const known = { "If-None-Match": csv.headers.get("ETag") ?? "" };
  expect((await read("/api/tunes.csv", known)).status).toBe(304);
  for (let n = 0; n < 5; n++)
    for (const path of [`/api/start?heat_kW=5&elevation_m=${n}`, "/api/cells/world", "/api/data"])
      expect((await read(path)).status).toBe(200);
  expect((await read("/api/tunes.csv", { "X-Test-Client": "b" })).status).toBe(200);
  limited.pass(60_001);
  expect((await read("/api/tunes.csv")).status).toBe(200);
  await limited.close();
});

test("reads carry a tag and answer 304 to it; versions never change", async () => {
  await post(atlas.app, goodTune());
  await atlas.fit.refresh();
  for (const path of [
    "/api/fit",
    "/api/start?heat_kW=5&elevation_m=900",
    "/api/tunes.csv",
    "/api/cells/world",
    "/api/scaling?heat_kW=5&end=low",
  ]) {
    const tag = (await get(path)).headers.get("ETag") ?? "";
    expect(tag).not.toBe("");
    expect((await get(path, { "If-None-Match": tag })).status).toBe(304);
  }
  const { version } = await (await get("/api/fit")).json();
  expect((await get(`/api/fit/${version}`)).headers.get("Cache-Control")).toContain("immutable");
});

test("answers are what the description says, and every route is described", async () => {
  const { id, receipt } = await (await post(atlas.app, goodTune())).json();
  await atlas.fit.refresh();
  const checks: [string, ZodType, Record<string, string>?][] = [
    ["/api/start?heat_kW=5&lat=41.2&lon=74.9&dose_uL=22", answers.startTune],
    ["/api/tunes/near?heat_kW=5&elevation_m=1200", answers.near],
    ["/api/fit", answers.publishedFit],
    ["/api/scaling?heat_kW=5&end=high", answers.scaling],
    ["/api/cells/world", answers.cells],
    ["/api/places?q=flat", answers.places],
    ["/api/elevation?lat=1&lon=2", answers.elevation],
    ["/api/health", answers.health],
    [`/api/tunes/${id}`, answers.keptTune, bearer(receipt)],
  ];
  for (const [path, schema, headers] of checks)
    schema.parse(await (await get(path, headers)).json());
  answers.ownStartTune.parse(await (await ask([ownTune()])).json());
  const { openapi, paths } = await (await get("/api/openapi.json")).json();
  expect(openapi).toBe("3.1.0");
  const served = atlas.app.routes
    .filter((r) => r.method !== "ALL" && r.path.startsWith("/api/") && !r.path.includes("*"))
    .map((r) => `${r.method.toLowerCase()} ${r.path.replaceAll(/:(\w+)/g, "{$1}")}`);
  const described = Object.entries(paths).flatMap(([path, methods]) =>
    Object.keys(methods as object).map((m) => `${m} ${path}`),
  );
  expect(new Set(described)).toEqual(new Set(served));
});

test("GeoJSON keeps elevation a property (RFC 7946 §4: the third coordinate is ellipsoidal)", async () => {
  await post(atlas.app, goodTune());
  const { type, features } = await (await get("/api/tunes.geojson")).json();
  expect(type).toBe("FeatureCollection");
  expect(features[0].geometry.coordinates.length).toBe(2);
  expect(features[0].properties.elevation_m).toBe(1300);
});

describe("a heater with tunes of its own", () => {
  test("the answer to the question stays, what its own tunes say is added, nothing is kept", async () => {
    const asked = await (await get("/api/start?heat_kW=5&elevation_m=2240")).json();
    const response = await ask([ownTune(1), ownTune(2)]);
    expect(response.status).toBe(200);
    expect(response.headers.get("Cache-Control")).toBe("no-store");
    const { own_heater, ...start } = await response.json();
    expect(start).toEqual(asked);
    expect(own_heater.tunes).toBe(2);
    expect((await (await get("/api/health")).json()).tunes).toBe(0);
  });

  test("what is wrong with it is said of every field at once, with the remedy", async () => {
    const bad = { ...ownTune(), low: { pump_Hz: "1.1", fan_rpm: 1650, co_ppm: 10 } };
    const response = await ask([ownTune(), bad], { heat_kW: 5.2, temperature_C: -5, speed: 1 });
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors.map(({ field }: { field: string }) => field).sort()).toEqual(
      ["heat_kW", "own_tunes.1.low.pump_Hz", "speed"].sort(),
    );
  });

  test.each([
    ["none", [], "own_tunes"],
    ["eleven", Array.from({ length: 11 }, (_, n) => ownTune(n)), "own_tunes"],
    ["no list", "mine", "own_tunes"],
    ["the same twice", [ownTune(), ownTune()], "own_tunes.1"],
  ])("own tunes, %s: 422", async (_, own_tunes, field) => {
    const response = await ask(own_tunes);
    expect(response.status).toBe(422);
    const { errors } = await response.json();
    expect(errors[0].field).toBe(field);
  });

  test("no elevation and no place is 422 too", async () => {
    expect((await ask([ownTune()], { heat_kW: 5 })).status).toBe(422);
  });
});

test("an address that no question needs is refused before it is read", async () => {
  const response = await get(`/api/start?elevation_m=1&heat_kW=${"1".repeat(15_000)}x`);
  expect(response.status).toBe(414);
  expect(answers.problem.parse(await response.json()).detail).toContain("2048 characters");
});

describe("tunes in air like this", () => {
  const near = async (query: string) =>
    answers.near.parse(await (await get(`/api/tunes/near?heat_kW=5&${query}`)).json());

  test("nearest in air first, of that size, counted ones alone, with how they stand against the average", async () => {
    for (let n = 0; n < 12; n++) {
      const at = 200 + 300 * n;
      const tune = goodTune(n);
      await post(atlas.app, { ...tune, site: { elevation_m: at }, air: { temperature_C: 0 } });
    }
    const other = goodTune(20);
    await post(atlas.app, { ...other, heater: { heat_kW: 2 }, site: { elevation_m: 1400 } });
    await atlas.fit.refresh();
    const { tunes } = await near("elevation_m=1400&temperature_C=0");
    expect(tunes).toHaveLength(10);
    const off = tunes.map(({ elevation_m }) => Math.abs(elevation_m - 1400));
    expect(off).toEqual(off.toSorted((p, q) => p - q));
    expect(tunes.every(({ heat_kW, cell }) => heat_kW === 5 && cell === null)).toBe(true);
    for (const { against_average_pct } of tunes) {
      expect(Math.abs(against_average_pct.low)).toBeLessThan(60);
    }
  });

  test("of tunes in the same air those of the place come first; nothing tells more of where than the open data", async () => {
    for (let n = 0; n < 6; n++) {
      const site = n < 3 ? { elevation_m: 1300, lat: 41.2, lon: 74.9 } : { elevation_m: 1300 };
      await post(atlas.app, { ...goodTune(n), site, air: { temperature_C: -3 } });
    }
    const far = { elevation_m: 1300, lat: 41.2, lon: 60 };
    await post(atlas.app, { ...goodTune(9), site: far, air: { temperature_C: -3 } });
    const { tunes } = await near("elevation_m=1300&temperature_C=-3&lat=41.2&lon=74.9");
    expect(tunes.at(-1)?.cell).not.toBe(tunes[0]?.cell);
    const open = await (await get("/api/tunes.geojson")).json();
    const cells = open.features.map((f: { properties: { cell: string } }) => f.properties.cell);
    for (const { cell } of tunes) expect([...cells, null]).toContain(cell);
  });

  test("air leads: a place next door never comes before like air elsewhere, and orders tunes within 3 % of density", async () => {
    const pass = { lat: 46.5, lon: 8.6 };
    const sites = [
      { of: "the beach next door", elevation_m: 0, lat: 46.5, lon: 8.6, temperature_C: 31 },
      { of: "far, the same air", elevation_m: 2700, lat: -33, lon: -70, temperature_C: -8 },
      {
        of: "near, nearly the same air",
        elevation_m: 2900,
        lat: 46.5,
        lon: 8.6,
        temperature_C: -8,
      },
      { of: "no place, the same air", elevation_m: 2800, temperature_C: -8 },
      { of: "near, other air", elevation_m: 1900, lat: 46.5, lon: 8.6, temperature_C: 2 },
    ];
    const anyHeight = async (lat: number, lon: number) => ({
      ...(await flatCountry.elevation(lat, lon)),
      sd_m: 2000,
      uncertainty_95_m: 4000,
    });
    const hills = await openTestAtlas({ gazetteer: { ...flatCountry, elevation: anyHeight } });
    for (const [n, { of: _, temperature_C, ...site }] of sites.entries()) {
      const tune = tuneAt(site.elevation_m, 1, `contributor-key-${n}${n}${n}${n}`, site);
      const sent = await post(hills.app, { ...tune, air: { temperature_C } });
      expect((await sent.json()).verdict).toBe("accepted");
    }
    await hills.fit.refresh();
    const names = async (place: string) => {
      const query = `heat_kW=5&elevation_m=2720&temperature_C=-8${place}`;
      const answer = await hills.app.request(`/api/tunes/near?${query}`);
      const { tunes } = answers.near.parse(await answer.json());
      return tunes.map((tune) => sites.find((s) => s.elevation_m === tune.elevation_m)?.of);
    };
    expect(await names(`&lat=${pass.lat}&lon=${pass.lon}`)).toEqual([
      "near, nearly the same air",
      "far, the same air",
      "no place, the same air",
      "near, other air",
      "the beach next door",
    ]);
    expect(await names("")).toEqual([
      "far, the same air",
      "no place, the same air",
      "near, nearly the same air",
      "near, other air",
      "the beach next door",
    ]);
    await hills.close();
  });

  test("none yet: an empty list; a bad question: 422", async () => {
    expect((await near("elevation_m=1400")).tunes).toEqual([]);
    expect((await get("/api/tunes/near?heat_kW=5")).status).toBe(422);
    expect((await get("/api/tunes/near?heat_kW=5&elevation_m=1&dose_uL=20")).status).toBe(422);
  });
});
