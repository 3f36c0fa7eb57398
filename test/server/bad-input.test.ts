import { once } from "node:events";
import { type AddressInfo, connect } from "node:net";
import { serve } from "@hono/node-server";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, post } from "./atlas.ts";
import { freshAtlas } from "./fresh-atlas.ts";

const atlas = freshAtlas();
const { get } = atlas;

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

  // What follows the schemas or strays from them by one thing: test/torture/within-bounds.test.ts and described.test.ts.
  test("text that is no JSON, JSON of any shape, fields of any shape: never a 5xx, and the next request is served", async () => {
    const oddField = fc
      .tuple(fc.constantFrom(...Object.keys(goodTune())), fc.anything())
      .map(([field, value]) => JSON.stringify({ ...goodTune(), [field]: value }));
    const body = fc.oneof(oddField, fc.json(), fc.string({ unit: "binary" }));
    await fc.assert(
      fc.asyncProperty(body, fc.string({ unit: "binary" }), async (sent, text) => {
        expect((await post(atlas.app, sent)).status).toBeLessThan(500);
        const query = encodeURIComponent(text);
        expect((await get(`/api/start?heat_kW=${query}&elevation_m=${query}`)).status).toBeLessThan(
          500,
        );
      }),
      { numRuns: 300, seed: 20261125 },
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

test("an address that no question needs is refused before it is read", async () => {
  const response = await get(`/api/start?elevation_m=1&heat_kW=${"1".repeat(15_000)}x`);
  expect(response.status).toBe(414);
  expect(answers.problem.parse(await response.json()).detail).toContain("2048 characters");
});
