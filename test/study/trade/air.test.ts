import { expect, test } from "vitest";
import { moistAirDensity } from "../../../model/air.ts";
import { seeded } from "../../../seed-demo/random.ts";
import atmosphere from "../../reference/atmosphere.json" with { type: "json" };
import { columnPressure, drawClimate, type Night, night, nightAt, trueDensity } from "./nights.ts";
import type { Tells } from "./owner.ts";
import { FEET_PER_METRE, state } from "./stating.ts";

const rows = atmosphere.isoPrintedTables.byGeometric.filter((r) => r.z_m >= 0 && r.z_m <= 5000);
const nothing: Tells = {
  temperature: false,
  humidity: false,
  pressure: undefined,
  vagueElevation: false,
  dose: false,
  found: false,
  co: false,
};
const at = (elevation_m: number, more: Partial<Night> = {}): Night => ({
  elevation_m,
  temperature_C: -5,
  pressure_hPa: 800,
  humidity_pct: 70,
  density_kg_m3: 1,
  x: 0,
  month: "2024-01",
  ...more,
});

test("the column of air and its density agree with ISO 2533:1975, table 5, within 0.1 %", () => {
  expect(rows.length).toBeGreaterThan(8);
  for (const { z_m, T_K, p_hPa, rho_kg_m3 } of rows) {
    expect(Math.abs(columnPressure(1013.25, z_m, 0) / p_hPa - 1), `${z_m} m`).toBeLessThan(1e-3);
    expect(Math.abs(trueDensity(p_hPa, T_K - 273.15, 0) / rho_kg_m3 - 1)).toBeLessThan(1e-5);
  }
});

test("the true density of moist air agrees with the atlas's CIPM-2007 within 0.15 %", () => {
  for (const pressure of [600, 800, 1013]) {
    for (const temperature of [-30, -10, 5, 20]) {
      for (const humidity of [0, 50, 100]) {
        const atlas = moistAirDensity(pressure, temperature, humidity);
        const ours = trueDensity(pressure, temperature, humidity);
        // Real air is a little denser than an ideal gas, most so in the cold.
        expect(Math.abs(ours / atlas - 1)).toBeLessThan(1.5e-3);
      }
    }
  }
});

test("with nothing stated but the elevation the atlas takes the standard atmosphere: ISO 2533:1975, table 5", () => {
  for (const { z_m, rho_kg_m3 } of rows) {
    const stated = state(seeded(1), nothing, at(z_m));
    expect(Math.abs(stated.density_kg_m3 / rho_kg_m3 - 1), `${z_m} m`).toBeLessThan(1e-5);
    expect(stated.temperature_given).toBe(false);
    expect(stated.ln_density_sd).toBeGreaterThan(0.03);
  }
});

test("an elevation in feet is 1/0.3048 times too high, and the highest do not pass the door", () => {
  // The international foot is 0.3048 m exactly.
  expect(FEET_PER_METRE).toBeCloseTo(3.28084, 5);
  const slipped = state(seeded(1), nothing, at(1000), "feet as metres");
  expect(slipped.density_kg_m3).toBe(state(seeded(1), nothing, at(3280)).density_kg_m3);
  expect(state(seeded(1), nothing, at(2500), "feet as metres").passes).toBe(false);
});

test("°F typed as °C makes the air seem thinner; hot figures do not pass the door", () => {
  const telling = { ...nothing, temperature: true };
  const cold = at(1000, { temperature_C: -10 });
  const right = state(seeded(1), telling, cold).density_kg_m3;
  const slipped = state(seeded(1), telling, cold, "Fahrenheit as Celsius");
  // −10 °C is 14 °F: 24 K of 263 K, give or take the thermometer.
  expect(right / slipped.density_kg_m3 - 1).toBeGreaterThan(0.07);
  expect(right / slipped.density_kg_m3 - 1).toBeLessThan(0.11);
  const warm = at(0, { temperature_C: 15 });
  expect(state(seeded(1), telling, warm, "Fahrenheit as Celsius").passes).toBe(false);
});

test("QNH as station pressure makes the air seem denser, and passes only where it looks right", () => {
  const low = at(400, { pressure_hPa: 966.1 });
  const stated = state(seeded(1), nothing, low, "QNH as station pressure");
  const right = state(seeded(1), nothing, low);
  expect(stated.passes).toBe(true);
  // 1013.25 ÷ 966.1: ISO 2533:1975 at 400 m.
  expect(stated.density_kg_m3 / right.density_kg_m3).toBeCloseTo(1.048, 2);
  const high = at(2000, { pressure_hPa: 795 });
  expect(state(seeded(1), nothing, high, "QNH as station pressure").passes).toBe(false);
});

test("winter nights are colder than standard, and a night can be drawn to a density", () => {
  const random = seeded(5);
  for (let run = 0; run < 20; run++) {
    const climate = drawClimate(random, 0);
    let below = 0;
    for (let i = 0; i < 200; i++) {
      const { temperature_C, elevation_m } = night(random, climate, 2500, 0, false);
      below += (15 - 0.0065 * elevation_m - temperature_C) / 200;
    }
    expect(below).toBeGreaterThan(3);
    expect(below).toBeLessThan(20);
    for (const x of [-0.45, -0.2, 0, 0.1]) {
      const drawn = nightAt(random, climate, x);
      expect(drawn.x).toBe(x);
      const { pressure_hPa, temperature_C, humidity_pct } = drawn;
      const density = trueDensity(pressure_hPa, temperature_C, humidity_pct);
      expect(Math.abs(drawn.density_kg_m3 / density - 1)).toBeLessThan(1e-3);
      expect(drawn.temperature_C).toBeGreaterThan(-60);
      expect(drawn.temperature_C).toBeLessThan(40);
    }
  }
});
