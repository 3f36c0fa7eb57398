import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, beforeEach, expect, test } from "vitest";
import { keepRefusal } from "../../db/refusal.ts";
import { goodTune, openTestAtlas, type TestAtlas } from "./atlas.ts";
import { inFeet, TOKEN } from "./stewards-atlas.ts";

// A client that a generator of other authors makes of the description alone, compiled and tried against the app.

const CLIENT = "test/described-client/client.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ stewardToken: TOKEN, newKeyDays: 7 });
});
afterEach(() => atlas.close());

test("a client generated from the description compiles with what is written for it, and gets every route's answer", async () => {
  const description = await (await atlas.app.request("/api/openapi.json")).text();
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-description-"));
  writeFileSync(join(folder, "openapi.json"), description);
  const run = (tool: string, ...args: string[]) => {
    const { status, stdout } = spawnSync(join("node_modules/.bin", tool), args, {
      encoding: "utf8",
    });
    expect(status, stdout).toBe(0);
  };
  run("oazapfts", "--futureStripLegacyMethods", join(folder, "openapi.json"), CLIENT);
  rmSync(folder, { recursive: true });
  // The compiler fails, and so does this, where a type is missing or wrong.
  run("tsc", "-p", "test/described-client");

  /** By operation: what the atlas sent last. */
  const got = new Map<string, { status: number; body: unknown }>();
  const { paths } = JSON.parse(description) as {
    paths: Record<string, Record<string, { operationId: string; responses: object }>>;
  };
  const operations = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, of]) => ({ path, method, ...of })),
  );
  const visitorsFetch: typeof fetch = async (address, init) => {
    const response = await atlas.app.request(String(address), init);
    const path = new URL(String(address)).pathname;
    const method = (init?.method ?? "GET").toLowerCase();
    const operation = operations
      .filter((o) => o.method === method)
      // A path without blanks comes before one with them.
      .toSorted((p, q) => Number(p.path.includes("{")) - Number(q.path.includes("{")))
      .find((o) => new RegExp(`^${o.path.replaceAll(/\{\w+\}/g, "[^/]+")}$`).test(path));
    const text = await response.clone().text();
    const isJson = response.headers.get("Content-Type")?.includes("json");
    if (operation && response.ok) {
      const body = isJson ? JSON.parse(text) : text;
      got.set(operation.operationId, { status: response.status, body });
    }
    return response;
  };
  const use = pathToFileURL("test/described-client/use.ts").href;
  const made: Record<string, unknown> = await (await import(use)).useEveryRoute({
    fetch: visitorsFetch,
    good: goodTune(),
    slip: inFeet(1),
    steward_token: TOKEN,
    settled: () => atlas.fit.settle(),
    holdBack: async () => {
      await atlas.fit.settle();
      await keepRefusal(atlas.db, "2026-11-25", "[]");
    },
  });
  expect(Object.keys(made).toSorted()).toEqual(operations.map((o) => o.operationId).toSorted());
  for (const { operationId, responses } of operations) {
    const raw = got.get(operationId);
    expect(Object.keys(responses), operationId).toContain(String(raw?.status));
    const its = made[operationId];
    expect(its instanceof Blob ? await its.text() : its, operationId).toEqual(raw?.body);
  }
});
