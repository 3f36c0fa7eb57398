import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { nightAsSet, retunedFor } from "../../model/own-night.ts";
import { startTune } from "../../model/start.ts";
import { USUAL_NIGHT } from "../../model/trip/nights.ts";
import { inventedFit } from "./invented-fit.ts";

const combustion = JSON.parse(readFileSync("test/reference/combustion.json", "utf8"));
const ENDS_SET = {
  low: { pump_Hz: 1.2, fan_rpm: 1700 },
  high: { pump_Hz: 4, fan_rpm: 4500 },
};
const HEATER = { heat_kW: 5, dose_uL: 22, tank_L: 10 };
const start = (elevation_m: number) =>
  startTune(inventedFit(), {
    heat_kW: 5,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
    air: {},
    low_fan_rpm: 1700,
    high_fan_rpm: 4500,
  });

test("a night as set, by hand: the rate between the ends at its share, times the dose", () => {
  const { fuel_L_h, fuel_L, fuel_from, tank_h } = nightAsSet(ENDS_SET, HEATER, USUAL_NIGHT);
  // 1.2 + 0.3 · 2.8 = 2.04 Hz of 22 µL.
  expect(fuel_L_h).toBeCloseTo(2.04 * 22e-6 * 3600, 12);
  expect(fuel_L).toBeCloseTo(1.616, 3);
  expect(tank_h).toBeCloseTo(10 / fuel_L_h, 9);
  expect(fuel_from).toBe("dose");
});

test("pump rate and dose come to the litres that combustion.json has for them", () => {
  for (const { L_per_h, Hz, mL_per_pulse } of combustion.doseVolume.derived) {
    const end = { pump_Hz: Hz, fan_rpm: 3000 };
    const heater = { ...HEATER, dose_uL: mL_per_pulse * 1000 };
    const { fuel_L_h } = nightAsSet({ low: end, high: end }, heater, USUAL_NIGHT);
    expect(fuel_L_h).toBeCloseTo(L_per_h, 9);
  }
});

test("set for other air: as far as the average heater, in what can be set, the fans left alone", () => {
  const [sea, high] = [start(0), start(4000)];
  const moved = retunedFor(ENDS_SET, sea, high);
  for (const end of ["low", "high"] as const) {
    const expected = (ENDS_SET[end].pump_Hz * high[end].pump_Hz_exact) / sea[end].pump_Hz_exact;
    expect(moved[end].pump_Hz).toBeCloseTo(Math.round(expected * 10) / 10, 9);
    expect(moved[end].fan_rpm).toBe(ENDS_SET[end].fan_rpm);
  }
  // ISO 2533: at 4,000 m there is 67 % of the air; the pump follows it, and the fuel with the pump.
  const [less, more] = [moved, ENDS_SET].map((ends) => nightAsSet(ends, HEATER, USUAL_NIGHT));
  const share = (less?.fuel_L ?? 0) / (more?.fuel_L ?? 1);
  expect(share).toBeGreaterThan(airAt(4000).density_ratio - 0.03);
  expect(share).toBeLessThan(0.78);
  expect(retunedFor(ENDS_SET, sea, sea)).toEqual(ENDS_SET);
  // A finer controller is set more finely, and what it was set to is a setting of its own.
  const fine = retunedFor(ENDS_SET, sea, high, 0.05);
  const exact = (ENDS_SET.low.pump_Hz * high.low.pump_Hz_exact) / sea.low.pump_Hz_exact;
  expect(fine.low.pump_Hz).toBeCloseTo(Math.round(exact * 20) / 20, 9);
  expect(Math.abs(fine.low.pump_Hz - exact)).toBeLessThan(Math.abs(moved.low.pump_Hz - exact));
  const set = { ...ENDS_SET, low: { ...ENDS_SET.low, pump_Hz: 1.25 } };
  expect(retunedFor(set, sea, sea, 0.05)).toEqual(set);
});
