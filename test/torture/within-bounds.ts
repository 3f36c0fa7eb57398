import { expect } from "vitest";
import { tunes } from "../../db/schema.ts";
import * as answers from "../../server/contract.ts";
import { openTestAtlas, post } from "../server/atlas.ts";
import { bodiesWithinBounds } from "./bodies.ts";

/**
 * Throws bodies that the schema lets in at an atlas: each gets a verdict or a 4xx that names a field; whatever is kept has air
 * that can be, and is read, revised and asked about without an error.
 * @returns how many got each status
 */
export async function throwWithinBounds(count: number, seed: number): Promise<Map<number, number>> {
  const atlas = await openTestAtlas({ stewardToken: "steward-token-for-tests-only" });
  const body = bodiesWithinBounds(seed);
  const seen = new Map<number, number>();
  const send = (path: string, method: string, sent: unknown, receipt = "") =>
    atlas.app.request(path, {
      method,
      headers: { "Content-Type": "application/json", Authorization: `Bearer ${receipt}` },
      ...(sent !== undefined && { body: JSON.stringify(sent) }),
    });
  for (let n = 0; n < count; n++) {
    const tune = body();
    const said = JSON.stringify(tune);
    const response = await post(atlas.app, tune);
    seen.set(response.status, (seen.get(response.status) ?? 0) + 1);
    if (response.status === 422) {
      const { errors } = await response.json();
      expect(errors.length, said).toBeGreaterThan(0);
      for (const { field, message } of errors)
        expect(`${field} ${message}`, said).toMatch(/^\w+.*\w/);
      continue;
    }
    expect(response.status, said).toBe(201);
    const { id, receipt, air } = answers.submitted.parse(await response.json());
    expect(air.density_kg_m3, said).toBeGreaterThan(0.3);
    expect(air.density_kg_m3, said).toBeLessThan(2.2);
    // Each tenth also goes the other ways a tune can go.
    if (n % 10 > 0) continue;
    answers.keptTune.parse(
      await (await send(`/api/tunes/${id}`, "GET", undefined, receipt)).json(),
    );
    const revised = await send(`/api/tunes/${id}`, "PUT", body(), receipt);
    expect([200, 422], said).toContain(revised.status);
    const { site, air: given, low, high } = tune;
    const own = await send("/api/start", "POST", {
      heat_kW: tune.heater.heat_kW,
      elevation_m: 2240,
      own_tunes: [{ site, ...(given && { air: given }), low, high }],
    });
    expect(own.status, said).toBe(200);
    answers.ownStartTune.parse(await own.json());
  }
  await atlas.fit.settle();
  for (const path of ["/api/fit", "/api/tunes.csv", "/api/tunes.geojson", "/api/cells/world"]) {
    expect((await atlas.app.request(path)).status, path).toBe(200);
  }
  for (const heat of [1, 5, 15]) {
    const scaling = await atlas.app.request(`/api/scaling?heat_kW=${heat}&end=low`);
    answers.scaling.parse(await scaling.json());
  }
  const held = await send(
    "/api/steward/held?limit=50",
    "GET",
    undefined,
    "steward-token-for-tests-only",
  );
  expect(held.status).toBe(200);
  for (const { id, density_kg_m3 } of await atlas.db
    .select({ id: tunes.id, density_kg_m3: tunes.density_kg_m3 })
    .from(tunes)) {
    expect(density_kg_m3, id).toBeGreaterThan(0.3);
  }
  await atlas.close();
  return seen;
}
