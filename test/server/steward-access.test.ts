import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas } from "./atlas.ts";
import {
  bearer,
  inFeet,
  openStewardsAtlas,
  READS,
  type StewardsAtlas,
  TOKEN,
} from "./stewards-atlas.ts";

let atlas: StewardsAtlas;
beforeEach(async () => {
  atlas = await openStewardsAtlas();
});
afterEach(() => atlas.close());

test("without a token in the configuration there is no such address, whatever is sent", async () => {
  const open = await openTestAtlas();
  for (const token of ["", "undefined", TOKEN]) {
    for (const path of READS) {
      expect((await open.app.request(path, { headers: bearer(token) })).status).toBe(404);
    }
  }
  const sent = await open.app.request("/api/steward/decisions", { method: "POST" });
  expect(sent.status).toBe(404);
  const { paths, components } = await (await open.app.request("/api/openapi.json")).json();
  expect(Object.keys(paths).filter((p) => p.includes("steward"))).toEqual([]);
  expect(components.securitySchemes).not.toHaveProperty("steward");
  await open.close();
});

describe("whoever does not know the token", () => {
  const strangers: [string, Record<string, string>][] = [
    ["sends none", {}],
    ["sends another scheme", { Authorization: `Basic ${TOKEN}` }],
    ["sends a wrong one", bearer("wrong")],
    ["sends one that begins right", bearer(`${TOKEN}x`)],
    ["sends the beginning", bearer(TOKEN.slice(0, -1))],
  ];
  test.each(strangers)("%s: 401, nothing said, nothing written", async (_, headers) => {
    const { id } = await atlas.submit(inFeet());
    const refused = [
      ...(await Promise.all(READS.map((path) => atlas.get(path, headers)))),
      await atlas.get("/api/steward/nothing", headers),
      await atlas.decideOn(
        id,
        { verdict: "accepted", reason: "I should not be able to." },
        headers,
      ),
    ];
    for (const response of refused) {
      expect(response.status).toBe(401);
      expect(response.headers.get("WWW-Authenticate")).toMatch(/^Bearer realm="steward"/);
      expect(response.headers.get("Content-Type")).toBe("application/problem+json");
      expect(response.headers.get("Cache-Control")).toBe("no-store");
      const text = await response.text();
      expect(text).not.toContain(id);
      expect(answers.problem.parse(JSON.parse(text)).title).toContain("steward");
    }
    expect((await atlas.json("/api/steward/decisions")).decisions.length).toBe(1);
  });

  test("is told apart from one whose token is wrong (RFC 6750 §3)", async () => {
    const challenge = async (headers: Record<string, string>) =>
      (await atlas.get("/api/steward/held", headers)).headers.get("WWW-Authenticate");
    expect(await challenge({})).not.toContain("error");
    expect(await challenge(bearer("wrong"))).toContain('error="invalid_token"');
  });

  test("is told to wait after ten wrong tokens in a minute, however many come at once; the right one opens all the same", async () => {
    const tries = await Promise.all(
      Array.from({ length: 25 }, (_, n) => atlas.get("/api/steward/held", bearer(`wrong-${n}`))),
    );
    const statuses = tries.map(({ status }) => status);
    expect(statuses.filter((status) => status === 401).length).toBe(10);
    const refused = tries.filter(({ status }) => status === 429);
    expect(refused.length).toBe(15);
    for (const response of refused) {
      expect(Number(response.headers.get("Retry-After"))).toBeGreaterThan(0);
      expect(answers.problem.parse(await response.json()).title).toBe("Too many wrong tokens");
    }
    // Others may sit behind the same proxy: what they try does not lock the steward out.
    expect((await atlas.get("/api/steward/held")).status).toBe(200);
    atlas.pass(60_000);
    expect((await atlas.get("/api/steward/held", bearer("wrong"))).status).toBe(401);
  });

  test("is too short to be safe: the atlas does not open", async () => {
    await expect(openTestAtlas({ stewardToken: "open sesame" })).rejects.toThrow(
      "STEWARD_TOKEN must have at least 20 characters",
    );
  });

  test("counts only wrong tokens", async () => {
    for (let n = 0; n < 30; n++) expect((await atlas.get("/api/steward/held")).status).toBe(200);
    for (let n = 0; n < 30; n++)
      expect((await atlas.get("/api/steward/held", {})).status).toBe(401);
    expect((await atlas.get("/api/steward/held")).status).toBe(200);
  });

  test("a receipt does not open the steward's routes", async () => {
    const { receipt } = await atlas.submit(goodTune());
    expect((await atlas.get("/api/steward/held", bearer(receipt))).status).toBe(401);
  });
});

test("every answer is kept by nobody", async () => {
  for (const path of [...READS, "/api/steward/nothing"]) {
    expect((await atlas.get(path)).headers.get("Cache-Control")).toBe("no-store");
  }
});

test("with a token every route is described, and asks for it", async () => {
  const { paths, components } = await atlas.json("/api/openapi.json");
  expect(components.securitySchemes.steward).toMatchObject({ type: "http", scheme: "bearer" });
  const served = atlas.app.routes
    .filter((r) => r.method !== "ALL" && r.path.startsWith("/api/") && !r.path.includes("*"))
    .map((r) => `${r.method.toLowerCase()} ${r.path.replaceAll(/:(\w+)/g, "{$1}")}`);
  const described = Object.entries<object>(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((m) => `${m} ${path}`),
  );
  expect(new Set(described)).toEqual(new Set(served));
  const { get: held } = paths["/api/steward/held"];
  expect(held.security).toEqual([{ steward: [] }]);
  expect(
    held.parameters.map((p: { name: string; required: boolean }) => [p.name, p.required]),
  ).toEqual([
    ["undecided", false],
    ["after", false],
    ["limit", false],
  ]);
  const { post: decision } = paths["/api/steward/decisions"];
  const { schema } = decision.requestBody.content["application/json"];
  expect(schema).toMatchObject({
    required: ["tunes", "verdict"],
    properties: { reason: { minLength: 3, maxLength: 300 } },
  });
});
