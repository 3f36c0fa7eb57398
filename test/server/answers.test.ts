import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { ZodType } from "zod";
import * as answers from "../../server/contract.ts";
import { CODE_VERSION } from "../../server/version.ts";
import { goodTune, post } from "./atlas.ts";
import { bearer, freshAtlas, ownTune } from "./fresh-atlas.ts";

const atlas = freshAtlas();
const { ask, get } = atlas;

test("the code's version is the package's, and that of its citation", () => {
  expect(CODE_VERSION).toBe(JSON.parse(readFileSync("package.json", "utf8")).version);
  expect(readFileSync("CITATION.cff", "utf8")).toContain(`\nversion: ${CODE_VERSION}\n`);
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
