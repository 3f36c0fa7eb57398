import { expect, test } from "vitest";
import {
  geometric,
  geopotential,
  standardDensity,
  standardPressure,
  standardTemperature,
} from "../../model/air.ts";
import atmosphere from "../reference/atmosphere.json" with { type: "json" };

/**
 * The standard atmosphere, row by row, against printed tables: ISO 2533:1975, ICAO Doc 7488/3, US Standard
 * Atmosphere 1976, and our own 50-digit evaluation. Sources stand in the fixture beside the figures.
 */

const ICE_POINT_K = 273.15;

interface Row {
  source: string;
  z_m: number;
  T_K: number;
  p_Pa: number;
  rho_kg_m3: number;
}

interface Gate {
  source: string;
  rows: Row[];
  /** So that no row is silently dropped. */
  count: number;
  T_abs_K: number;
  p_rel: number;
  rho_rel: number;
  why: string;
}

const printed = atmosphere.isoPrintedTables;
const GATES: Gate[] = [
  {
    source: "ISO 2533:1975 table 5, by geometric altitude",
    rows: printed.byGeometric.map((r) => ({ ...r, source: "ISO", p_Pa: r.p_hPa * 100 })),
    count: 14,
    T_abs_K: 0.00051,
    p_rel: 1.05e-5,
    rho_rel: 1e-5,
    why: "printed to six figures",
  },
  {
    source: "ISO 2533:1975 table 5, by geopotential altitude",
    rows: printed.byGeopotential.map((r) => ({
      ...r,
      source: "ISO",
      z_m: geometric(r.H_m),
      p_Pa: r.p_hPa * 100,
    })),
    count: 5,
    T_abs_K: 0.00051,
    p_rel: 1.05e-5,
    rho_rel: 1e-5,
    why: "printed to six figures; z from H by the model itself",
  },
  {
    source: "our own evaluation in 50 digits, by geometric altitude",
    rows: atmosphere.computed.byGeometric.map((r) => ({ ...r, source: "computed" })),
    count: 15,
    T_abs_K: 1e-9,
    p_rel: 1e-11,
    rho_rel: 1e-11,
    why: "same constants; only rounding to double and to the 13 digits kept",
  },
  {
    source: "our own evaluation in 50 digits, by geopotential altitude",
    rows: atmosphere.computed.byGeopotential.map((r) => ({ ...r, source: "computed" })),
    count: 15,
    T_abs_K: 1e-9,
    p_rel: 1e-11,
    rho_rel: 1e-11,
    why: "same",
  },
  {
    source: "ICAO Doc 7488/3, geometric altitude, the rows within the atlas's elevations",
    rows: atmosphere.icaoDoc7488Table.rows
      .filter((r) => r.z_m >= -500 && r.z_m <= 6000)
      .map((r) => ({ ...r, source: "ICAO" })),
    count: 3,
    T_abs_K: 0.00051,
    p_rel: 1.05e-5,
    rho_rel: 1e-5,
    why: "printed to six figures",
  },
  {
    source: "US Standard Atmosphere 1976 to 20 km in SI units, R. Carmichael, geometric altitude",
    rows: atmosphere.pdasTable.rows.map((r) => ({
      ...r,
      source: "PDAS",
      z_m: r.z_km * 1000,
      rho_kg_m3: r.rho,
    })),
    count: 14,
    T_abs_K: 0.051,
    p_rel: 2.2e-5,
    rho_rel: 9e-4,
    why: "printed to 0.1 K, 1 Pa and 0.001 kg/m³",
  },
  {
    source:
      "US Standard Atmosphere 1976 to 86 km, R. Carmichael, the rows within the atlas's elevations",
    rows: atmosphere.pdas86kmTable.rows
      .filter((r) => r.z_m >= -500)
      .map((r) => ({ ...r, source: "PDAS" })),
    count: 4,
    T_abs_K: 0.0051,
    p_rel: 5e-5,
    rho_rel: 5e-5,
    why: "printed to five figures",
  },
];

test.each(GATES)("$source", ({ rows, count, T_abs_K, p_rel, rho_rel }) => {
  expect(rows).toHaveLength(count);
  for (const { z_m, T_K, p_Pa, rho_kg_m3 } of rows) {
    const kelvin = standardTemperature(z_m) + ICE_POINT_K;
    expect(Math.abs(kelvin - T_K), `temperature at ${z_m} m`).toBeLessThanOrEqual(T_abs_K);
    expect(off(standardPressure(z_m) * 100, p_Pa), `pressure at ${z_m} m`).toBeLessThanOrEqual(
      p_rel,
    );
    expect(off(standardDensity(z_m), rho_kg_m3), `density at ${z_m} m`).toBeLessThanOrEqual(
      rho_rel,
    );
  }
});

test("geopotential and geometric altitude, 50-digit values both ways", () => {
  const rows = [...atmosphere.computed.byGeometric, ...atmosphere.computed.byGeopotential];
  expect(rows).toHaveLength(30);
  for (const { z_m, H_m } of rows) {
    expect(Math.abs(geopotential(z_m) - H_m)).toBeLessThan(1e-8);
    expect(Math.abs(geometric(H_m) - z_m)).toBeLessThan(1e-8);
  }
});

function off(value: number, reference: number): number {
  return Math.abs(value / reference - 1);
}
