import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  airAt,
  moistAirDensity,
  STANDARD_DENSITY_kg_m3,
  standardDensity,
  standardPressure,
  standardTemperature,
  stationPressureFromQnh,
} from "../../model/air.ts";

/** The air at a site, complete from whatever is known of it. */

const elevation = fc.integer({ min: -500, max: 6000 });
const temperature = fc.integer({ min: -60, max: 50 });

describe("what is given and what is assumed", () => {
  test("nothing given: the dry standard atmosphere itself", () => {
    const air = airAt(2240);
    expect(air.density_kg_m3).toBe(standardDensity(2240));
    expect(air.pressure_hPa).toBe(standardPressure(2240));
    expect(air.temperature_C).toBe(standardTemperature(2240));
    expect(air.humidity_pct).toBe(0);
    expect(air.assumed).toEqual(["temperature", "pressure", "humidity"]);
    // 1.225 is the rounded density of the standard atmosphere at sea level, by 1.5e-8.
    expect(air.density_altitude_m).toBeCloseTo(2240, 3);
    expect(airAt(0).density_ratio).toBeCloseTo(1, 7);
  });

  test("everything given: moist air of just that, and nothing uncertain", () => {
    const air = airAt(2240, { temperature_C: -9, pressure_hPa: 772.4, humidity_pct: 60 }, 200);
    expect(air.density_kg_m3).toBe(moistAirDensity(772.4, -9, 60));
    expect(air.density_ratio).toBe(air.density_kg_m3 / STANDARD_DENSITY_kg_m3);
    expect(air.assumed).toEqual([]);
    expect(air.ln_density_sd).toBe(0);
  });

  test("a QNH is reduced with the elevation, and is not a station pressure", () => {
    const air = airAt(1700, { qnh_hPa: 1013.25, temperature_C: 4, humidity_pct: 50 });
    expect(air.pressure_hPa).toBe(stationPressureFromQnh(1013.25, 1700));
    expect(air.pressure_hPa).toBeCloseTo(standardPressure(1700), 9);
    const mixedUp = airAt(1700, { pressure_hPa: 1013.25, temperature_C: 4, humidity_pct: 50 });
    expect(mixedUp.density_kg_m3 / air.density_kg_m3).toBeGreaterThan(1.2);
  });

  test("temperature is not a detail: −20 °C against +20 °C is 16 %, as much as 1,500 m", () => {
    const cold = airAt(0, { temperature_C: -20, humidity_pct: 0 }).density_kg_m3;
    const mild = airAt(0, { temperature_C: 20, humidity_pct: 0 }).density_kg_m3;
    expect(cold / mild - 1).toBeCloseTo(0.16, 2);
    expect(standardDensity(0) / standardDensity(1500) - 1).toBeCloseTo(0.16, 2);
  });
});

describe("uncertainty", () => {
  const sd = (...args: Parameters<typeof airAt>) => airAt(...args).ln_density_sd;

  test("an unknown night temperature costs about 3.6 %, and more than all the rest together", () => {
    const known = { pressure_hPa: 867, humidity_pct: 50 };
    expect(sd(1300, known)).toBeCloseTo(10 / (standardTemperature(1300) + 273.15), 6);
    expect(sd(1300, known)).toBeGreaterThan(2 * sd(1300, { temperature_C: 0 }));
  });

  test("each thing learned narrows it or leaves it", () => {
    const all = { temperature_C: -5, pressure_hPa: 772, humidity_pct: 70 };
    fc.assert(
      fc.property(
        fc.subarray(["temperature_C", "pressure_hPa", "humidity_pct"] as const),
        (keys) => {
          const some = Object.fromEntries(keys.map((key) => [key, all[key]]));
          expect(sd(2240, all, 50)).toBeLessThanOrEqual(sd(2240, some, 50));
          expect(sd(2240, some, 50)).toBeLessThanOrEqual(sd(2240, {}, 50) + 1e-12);
        },
      ),
    );
  });

  test("an uncertain elevation is about 1.2 % per 100 m, with a QNH too, but not with a station pressure", () => {
    const humid = { temperature_C: 0, humidity_pct: 50 };
    for (const given of [humid, { ...humid, qnh_hPa: 1013 }]) {
      const added = Math.sqrt(sd(2000, given, 100) ** 2 - sd(2000, given, 0) ** 2);
      expect(added).toBeCloseTo(0.012, 6);
    }
    expect(sd(2000, { ...humid, pressure_hPa: 795 }, 100)).toBe(0);
  });
});

describe("properties", () => {
  test("density falls with elevation, temperature and humidity, and rises with pressure", () => {
    fc.assert(
      fc.property(elevation, temperature, (z, t) => {
        const at = (elevation_m: number, temperature_C: number, humidity_pct: number) =>
          airAt(elevation_m, { temperature_C, humidity_pct }).density_kg_m3;
        expect(at(z + 10, t, 50)).toBeLessThan(at(z, t, 50));
        expect(at(z, t + 1, 50)).toBeLessThan(at(z, t, 50));
        expect(at(z, t, 60)).toBeLessThan(at(z, t, 50));
        expect(moistAirDensity(701, t, 50)).toBeGreaterThan(moistAirDensity(700, t, 50));
      }),
    );
  });

  test("what is not a finite number is refused by name", () => {
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => airAt(bad)).toThrow(/elevation_m must be a finite number/);
      expect(() => airAt(0, { temperature_C: bad })).toThrow(/temperature_C must be/);
      expect(() => airAt(0, {}, bad)).toThrow(/elevation_sd_m must be/);
    }
    expect(() => airAt(0, { pressure_hPa: 1000, qnh_hPa: 1000 })).toThrow(/give one/);
  });
});
