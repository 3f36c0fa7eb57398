import { expect, test } from "vitest";
import { standardDensity } from "../../model/air.ts";
import {
  carryOverShift,
  EFFICIENCY,
  excessAirRatio,
  FUEL_kWh_per_L,
  fuelFlow,
  heatOutput,
} from "../../model/mixture.ts";
import { screen } from "../../model/screen.ts";
import combustion from "../reference/combustion.json" with { type: "json" };
import derating from "../reference/derating.json" with { type: "json" };

/** Fuel, heat and excess air against figures from outside; each source stands in the fixture. */

const FOOT_m = 0.3048;

test("litres an hour per kW of heat: 3.6/(efficiency × heating value × density), computed elsewhere", () => {
  const { values, kWh_per_L } = combustion.fuelPerHeat;
  expect(values).toHaveLength(5);
  for (const { eta, L_per_h_per_kW } of values) {
    expect(heatOutput(L_per_h_per_kW, eta)).toBeCloseTo(1, 12);
  }
  expect(FUEL_kWh_per_L).toBeCloseTo(kWh_per_L, 12);
});

test("heat of a litre: within 1 % of the 128,450 Btu a US gallon that a published page prints for No. 2 diesel", () => {
  expect(combustion.LHV.values.map((v) => v.obtained).join()).toContain("128,450 Btu/gal");
  const kWh_per_L = (128_450 * 1055.056) / 3.6e6 / 3.785411784;
  expect(Math.abs(FUEL_kWh_per_L / kWh_per_L - 1)).toBeLessThan(0.01);
});

test("heat of a litre: the density behind it lies within EN 590's 820–845 kg/m³", () => {
  const [lightest, heaviest] = combustion.en590.density15_kg_m3.temperate as [number, number];
  const { LHV_MJ_kg } = combustion.LHV.usedHere;
  expect(FUEL_kWh_per_L).toBeGreaterThan((LHV_MJ_kg * lightest) / 3600);
  expect(FUEL_kWh_per_L).toBeLessThan((LHV_MJ_kg * heaviest) / 3600);
});

test("dose × pump rate is fuel flow; doses are a plausibility band from memory, and screening lets all of it in", () => {
  const { derived, typicalRange_mL } = combustion.doseVolume;
  expect(derived).toHaveLength(5);
  for (const { L_per_h, Hz, mL_per_pulse } of derived) {
    expect(fuelFlow(Hz, mL_per_pulse * 1000)).toBeCloseTo(L_per_h, 12);
  }
  for (const mL of typicalRange_mL) {
    const { reasons } = screen({
      heater: { heat_kW: 5, dose_uL: mL * 1000 },
      site: { elevation_m: 100 },
      low: { pump_Hz: 1.2, fan_rpm: 1650, co_ppm: 10 },
      high: { pump_Hz: 4.3, fan_rpm: 4400, co_ppm: 10 },
      contributor: "an-invented-key-of-a-crew",
    });
    expect(reasons).toEqual([]);
  }
});

test("usual settings burn what such heaters are said to burn: 0.12–0.65 L/h in the 5 kW class (common practice, no source)", () => {
  expect(fuelFlow(1.2, 28)).toBeGreaterThan(0.11);
  expect(fuelFlow(6.2, 28)).toBeLessThan(0.65);
  expect(heatOutput(0.63)).toBeCloseTo(5, 1);
  expect(EFFICIENCY).toBeGreaterThanOrEqual(0.75);
  expect(EFFICIENCY).toBeLessThanOrEqual(0.85);
});

test("excess air from oxygen: the published example of air-free CO, 87 ppm at 5 % O₂ is 114 ppm", () => {
  const { CO_ppm, O2_percent, airFreeCO_ppm, computed } = combustion.lambda.workedExample;
  expect(Math.round(CO_ppm * excessAirRatio(O2_percent))).toBe(airFreeCO_ppm);
  expect(CO_ppm * excessAirRatio(O2_percent)).toBeCloseTo(computed, 10);
  expect(excessAirRatio(0)).toBe(1);
});

test("what a fan at its limit loses with elevation is what rules for other burners take off: within 1.5 % of a furnace's printed factors", () => {
  const { rows } = derating.gasAppliance.packagedFurnace;
  expect(rows).toHaveLength(6);
  for (const { elev_ft, factor } of rows) {
    const ratio = standardDensity(elev_ft * FOOT_m) / standardDensity(0);
    expect(Math.abs(ratio / factor - 1)).toBeLessThan(0.015);
  }
});

test("a tune carried from sea level to 5,000 ft runs rich by what the two readings of the 4 % rule span", () => {
  const row = derating.gasAppliance.rows.find(({ elev_ft }) => elev_ft === 5000);
  if (!row) throw new Error("no row");
  const rich = carryOverShift(standardDensity(0), standardDensity(5000 * FOOT_m)) / 100;
  expect(rich).toBeGreaterThan(1 / row.above2000Variant - 1);
  expect(rich).toBeLessThan(1 / row.nfpa54_multiplier - 1);
});
