import { afterEach, beforeEach, expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { throwWithinBounds } from "./within-bounds.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
});
afterEach(() => atlas.close());

test("1,000 bodies within the schema's bounds: each a verdict or a 4xx that names a field", async () => {
  const seen = await throwWithinBounds(1000, 1);
  expect([...seen.keys()].toSorted()).toEqual([201, 422]);
});

test("feet and °F in one tune are caught together, and its air is what was meant", async () => {
  const { heater, low, high, contributor } = goodTune();
  // 12,020 ft are 3,664 m, 100 °F are 37.8 °C. The standard atmosphere (ISO 2533) has 644 hPa there, as tables for 12,000 ft
  // have it (from memory). At 12,020 m the vapour of air of 100 °C and 50 % (507 hPa) would press more than the air (193 hPa).
  const tune = {
    heater,
    low,
    high,
    contributor,
    site: { elevation_m: 12_020 },
    air: { temperature_C: 100 },
  };
  const response = await post(atlas.app, tune);
  expect(response.status).toBe(201);
  const { verdict, reasons, air, id, receipt } = answers.submitted.parse(await response.json());
  expect(verdict).toBe("held");
  expect(reasons).toMatchObject([
    { code: "elevation_in_feet", field: "site.elevation_m", suggestion: 3664 },
    { code: "temperature_in_fahrenheit", field: "air.temperature_C", suggestion: 37.8 },
  ]);
  expect(air.temperature_C).toBe(37.8);
  expect(air.pressure_hPa).toBeCloseTo(644, 0);
  expect(air.density_kg_m3).toBeGreaterThan(0.7);
  const kept = await atlas.app.request(`/api/tunes/${id}`, {
    headers: { Authorization: `Bearer ${receipt}` },
  });
  expect(answers.keptTune.parse(await kept.json()).air).toEqual(air);
});
