import { readFileSync } from "node:fs";
import { assert, constantFrom, double, property } from "fast-check";
import { expect, test } from "vitest";
import { EFFICIENCY, FUEL_kWh_per_L } from "../../model/mixture.ts";
import { type SupplyQuestion, supplyOf, usualFlow } from "../../model/supply.ts";

const combustion = JSON.parse(readFileSync("test/reference/combustion.json", "utf8"));

const QUESTION: SupplyQuestion = {
  heat_kW: 5,
  dose_uL: 22,
  low: { pump_Hz: 1, fan_rpm: 1650 },
  high: { pump_Hz: 4.2, fan_rpm: 4400 },
  density_ratio: 0.9,
  hours: 10,
  power_share: 0.3,
  tank_L: 10,
};

test("litres for a kWh of heat are those of combustion.json at its efficiency", () => {
  expect(FUEL_kWh_per_L).toBeCloseTo(combustion.fuelPerHeat.kWh_per_L, 9);
  const { fuel_L_h, heat_kW } = supplyOf(QUESTION);
  const { L_per_h_per_kW } = combustion.fuelPerHeat.values.find(
    ({ eta }: { eta: number }) => eta === EFFICIENCY,
  );
  expect(fuel_L_h / heat_kW).toBeCloseTo(L_per_h_per_kW, 9);
  expect(usualFlow(5, 1) / 5).toBeCloseTo(L_per_h_per_kW, 9);
});

test("a dose counts as combustion.json has it: litres an hour of pulses and volume", () => {
  for (const { L_per_h, Hz, mL_per_pulse } of combustion.doseVolume.derived) {
    const end = { pump_Hz: Hz, fan_rpm: 3000 };
    const { fuel_L_h } = supplyOf({
      ...QUESTION,
      low: end,
      high: end,
      dose_uL: mL_per_pulse * 1000,
    });
    expect(fuel_L_h).toBeCloseTo(L_per_h, 9);
  }
});

test("a night by hand: fuel, tank, charge at 12 and 24 V", () => {
  const supply = supplyOf(QUESTION);
  // 1 + 0.3 · 3.2 = 1.96 Hz of 22 µL.
  expect(supply.fuel_L_h).toBeCloseTo(1.96 * 22e-6 * 3600, 12);
  expect(supply.fuel_L).toBeCloseTo(10 * supply.fuel_L_h, 12);
  expect(supply.tank_h).toBeCloseTo(10 / supply.fuel_L_h, 9);
  // 0.6 + 0.3 · 2.9 = 1.47 A, and 10 A for 4 minutes.
  expect(supply.battery_Ah.at_12_V).toBeCloseTo(14.7 + 40 / 60, 9);
  expect(supply.battery_Ah.at_24_V).toBeCloseTo((14.7 + 40 / 60) / 2, 9);
  expect(supply.start_A).toEqual({
    at_12_V: { least: 8, most: 12 },
    at_24_V: { least: 4, most: 6 },
  });
});

test("without a dose the class's usual burn counts, within common practice at sea level", () => {
  for (const [heat_kW, least, most] of [
    [2, 0.06, 0.3],
    [5, 0.12, 0.68],
  ] as const) {
    expect(usualFlow(heat_kW, 0)).toBeGreaterThan(least - 0.001);
    expect(usualFlow(heat_kW, 1)).toBeLessThan(most);
  }
  const { fuel_from, fuel_L_h } = supplyOf({ ...QUESTION, dose_uL: undefined });
  expect([fuel_from, fuel_L_h]).toEqual(["class", usualFlow(5, 0.3) * 0.9]);
});

test("more power takes more fuel and charge and empties the tank sooner", () => {
  const share = double({ min: 0, max: 1, noNaN: true });
  assert(
    property(share, share, constantFrom(22, undefined), (a, b, dose_uL) => {
      const [less, more] = a < b ? [a, b] : [b, a];
      const low = supplyOf({ ...QUESTION, dose_uL, power_share: less });
      const high = supplyOf({ ...QUESTION, dose_uL, power_share: more });
      expect(high.fuel_L).toBeGreaterThanOrEqual(low.fuel_L);
      expect(high.battery_Ah.at_12_V).toBeGreaterThanOrEqual(low.battery_Ah.at_12_V);
      expect(high.tank_h ?? 0).toBeLessThanOrEqual(low.tank_h ?? 0);
    }),
  );
});

test("a number that cannot be used is refused by name", () => {
  expect(() => supplyOf({ ...QUESTION, power_share: 1.2 })).toThrow(/power_share/);
  expect(() => supplyOf({ ...QUESTION, tank_L: 0 })).toThrow(/tank_L/);
  expect(() => supplyOf({ ...QUESTION, hours: Number.NaN })).toThrow(/hours/);
});
