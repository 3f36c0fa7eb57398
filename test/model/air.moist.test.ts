import { expect, test } from "vitest";
import { moistAirDensity, saturationPressure } from "../../model/air.ts";
import moist from "../reference/moist_air.json" with { type: "json" };

/** Density of moist air (CIPM-2007) against published points and two other formulations. */

const ICE_POINT_K = 273.15;

function density(row: { p_Pa: number; t_C: number; rh: number }): number {
  return moistAirDensity(row.p_Pa / 100, row.t_C, row.rh * 100);
}

function off(value: number, reference: number): number {
  return Math.abs(value / reference - 1);
}

test("published points: Gupta, Mass Metrology (Springer 2012), p. 205, within 1e-4", () => {
  const { rows } = moist.publishedPoints;
  expect(rows).toHaveLength(2);
  for (const row of rows) expect(off(density(row), row.rho_kg_m3)).toBeLessThan(1e-4);
});

test("the same equation computed elsewhere, to the last digits", () => {
  expect(moist.computed).toHaveLength(12);
  for (const row of moist.computed) {
    expect(off(density(row), row.rho_CIPM2007)).toBeLessThan(1e-12);
    expect(off(saturationPressure(row.t_C), row.psv_Pa)).toBeLessThan(1e-12);
  }
});

test("ASHRAE's formulation by the reference library psychrolib 2.5.0, within 0.1 %, down to −20 °C and at saturation", () => {
  // It takes both gases as ideal: the difference is the compressibility factor that CIPM-2007 carries.
  for (const row of moist.computed) {
    expect(off(density(row), row.rho_ASHRAE_psychrolib)).toBeLessThan(1e-3);
  }
});

test("moist air at 30 °C and 954.61 hPa: ASHRAE Handbook Fundamentals 2017 ch. 1, as checked by psychrolib, within 0.1 %", () => {
  const [row] = moist.ashrae.moistAir;
  if (!row) throw new Error("no row");
  // Humidity ratio W to relative humidity: vapour pressure p W/(0.621945 + W) over the saturation pressure.
  const vapour_Pa = (row.p_Pa * row.W) / (0.621945 + row.W);
  const humidity_pct = (100 * vapour_Pa) / saturationPressure(row.t_C);
  expect(off(moistAirDensity(row.p_Pa / 100, row.t_C, humidity_pct), row.rho)).toBeLessThan(1e-3);
});

test("saturation pressure: ASHRAE Table 3 over liquid water, within 0.05 % from 5 to 50 °C", () => {
  const rows = moist.ashrae.saturation.filter(({ t_C }) => t_C >= 5 && t_C <= 50);
  expect(rows).toHaveLength(3);
  for (const { t_C, table_Pa } of rows) {
    expect(off(saturationPressure(t_C), table_Pa)).toBeLessThan(5e-4);
  }
});

test("saturation pressure at 300 K: IAPWS-IF97 Table 35, within 2e-5", () => {
  const row = moist.iapwsIF97.rows.find(({ T_K }) => T_K === 300);
  expect(off(saturationPressure(300 - ICE_POINT_K), row?.ps_Pa ?? Number.NaN)).toBeLessThan(2e-5);
});

test("below freezing the vapour of water over ice is overstated, and density does not feel it", () => {
  // ASHRAE's table is over ice there: 103.24 Pa at −20 °C against 125.6 Pa over liquid water.
  const row = moist.ashrae.saturation.find(({ t_C }) => t_C === -20);
  const overstated_Pa = saturationPressure(-20) - (row?.table_Pa ?? Number.NaN);
  expect(overstated_Pa).toBeGreaterThan(0);
  expect((0.378 * overstated_Pa) / 101_325).toBeLessThan(1e-4);
});

test("humidity's size: 0.9 % of density at 20 °C saturated, falling to 0.05 % at −20 °C", () => {
  const effect = (t_C: number) =>
    100 * (moistAirDensity(1013.25, t_C, 100) / moistAirDensity(1013.25, t_C, 0) - 1);
  const published = moist.computed.filter(({ rh }) => rh === 1);
  expect(published.map(({ t_C }) => t_C)).toEqual([20, 0, -20]);
  for (const { t_C, humidityEffectPercent } of published) {
    expect(effect(t_C)).toBeCloseTo(humidityEffectPercent, 8);
  }
});
