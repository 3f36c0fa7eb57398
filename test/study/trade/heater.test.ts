import { expect, test } from "vitest";
import { fuelFlow, heatOutput } from "../../../model/mixture.ts";
import { seeded } from "../../../seed-demo/random.ts";
import combustion from "../../reference/combustion.json" with { type: "json" };
import { drawBurning } from "./burning.ts";
import { bestPumpRate, deviation, drawHeater, fanSpeed } from "./heater.ts";
import { settle } from "./options.ts";
import { ENDS } from "./row.ts";
import { AIR_PER_FUEL, FUEL_kg_L } from "./size.ts";
import { average, drawTrade } from "./trade.ts";

const air = (density_kg_m3: number, temperature_C = 0) => ({
  density_kg_m3,
  temperature_C,
  x: Math.log(density_kg_m3 / 1.225),
});
const plain = { ...drawBurning(seeded(1), "one size"), airInThinAir: 0, airByFan: 0 };

function trades(n: number, options = {}) {
  return Array.from({ length: n }, (_, i) => drawTrade(seeded(i * 7919), settle(options)));
}

test("at an equal burn the pump follows fan speed × density, and halves with twice the dose", () => {
  for (const trade of trades(20)) {
    const size = { ...(trade.sizes[0] as (typeof trade.sizes)[number]), fallByFan: 0 };
    const heater = average(size, 22, plain);
    const pump = (rpm: number, density: number) =>
      bestPumpRate(heater, plain, "high", rpm, air(density));
    const home = pump(4000, 1.25);
    expect(pump(4400, 1.25) / home).toBeCloseTo(1.1, 10);
    // Fan laws (ISO 5801 similarity): the volume stays, the mass follows density. Slope 1 in logarithms.
    expect(Math.log(pump(4000, 0.8) / home) / Math.log(0.8 / 1.25)).toBeCloseTo(1, 10);
    const double = bestPumpRate(average(size, 44, plain), plain, "high", 4000, air(1.25));
    expect(double / home).toBeCloseTo(0.5, 10);
  }
});

test("what is pumped is what burns: air ÷ fuel is the burner's excess air × 14.5", () => {
  // 14.52 for usual diesel, in combustion.json.
  const { AFR } = combustion.stoichiometricAFR.massFractionExample;
  expect(Math.abs(AIR_PER_FUEL / AFR - 1)).toBeLessThan(0.002);
  for (const trade of trades(20)) {
    const [size] = trade.sizes;
    if (!size) throw new Error("no size");
    const heater = average(size, 22, trade.burning);
    for (const end of ENDS) {
      const rpm = size.usual_rpm[end];
      const at = air(1.225, 15);
      const pump = bestPumpRate(heater, trade.burning, end, rpm, at);
      const air_kg_h = (rpm * 60 * size.airPerTurn_L * heater.air * 1.225) / 1000;
      const fuel_kg_h = fuelFlow(pump, 22) * FUEL_kg_L;
      expect(air_kg_h / fuel_kg_h / AIR_PER_FUEL).toBeCloseTo(size.excessAir[end], 6);
    }
  }
});

test("cold fuel is denser, so a pulse moves more of it (ISO 91 table 54B in combustion.json)", () => {
  const table = combustion.thermalExpansion.rows.find((r) => r.rho15 === 1000 * FUEL_kg_L);
  const [trade] = trades(1);
  const [size] = trade?.sizes ?? [];
  if (!table || !size) throw new Error("no reference row");
  const outdoors = { ...average(size, 22, plain), fuelOutdoors: 1 };
  const rate = (t: number) => bestPumpRate(outdoors, plain, "low", 1600, air(1.3, t));
  expect(rate(40) / rate(-20)).toBeCloseTo(table["rho_at_-20C"] / table.rho_at_40C, 3);
});

test("heaters of 2 to 8 kW run at the pump rates and heats of the trade", () => {
  // Common practice, no source: low end 0.5–2.5 Hz, high end 3–7.5 Hz; labels promise more than heaters give.
  for (const trade of trades(100, {
    sizes: [2, 5, 8].map((heat_kW) => ({ heat_kW, share: 1 / 3 })),
  })) {
    const volumes = trade.sizes.map((size) => {
      const dose = size.dose_uL[0] ?? 0;
      const { low, high } = trade.typical_Hz(size, dose);
      expect(low).toBeGreaterThan(0.5);
      expect(low).toBeLessThan(2.5);
      expect(high).toBeGreaterThan(3);
      expect(high).toBeLessThan(7.5);
      const heat = heatOutput(fuelFlow(high, dose)) / size.heat_kW;
      expect(heat).toBeGreaterThan(0.6);
      expect(heat).toBeLessThan(1);
      return size.airPerTurn_L;
    });
    // More heat needs more air, whatever the pump.
    expect(volumes).toEqual([...volumes].sort((a, b) => a - b));
  }
});

test("tolerances average out, and the two ends of one heater go together", () => {
  const random = seeded(3);
  const [trade] = trades(1);
  const [size] = trade?.sizes ?? [];
  if (!trade || !size) throw new Error("no size");
  const n = 4000;
  let low = 0;
  let high = 0;
  let both = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const heater = drawHeater(random, size, trade.burning);
    const [l, h] = ENDS.map((end) => deviation(heater, trade.burning, end)) as [number, number];
    low += l / n;
    high += h / n;
    both += (l * h) / n;
    squares += (l * l) / n;
  }
  const error = Math.sqrt(squares / n);
  expect(Math.abs(low)).toBeLessThan(4 * error);
  expect(Math.abs(high)).toBeLessThan(4 * error);
  expect(both / squares).toBeGreaterThan(0.3);
});

test("who raises the fan in thin air stops where the fan ends", () => {
  const [trade] = trades(1);
  const [size] = trade?.sizes ?? [];
  if (!size) throw new Error("no size");
  const heater = { ...average(size, 22, plain), rpm: { low: 1600, high: 4500 }, raise: 1 };
  expect(fanSpeed(heater, "low", 0.05)).toBe(1600);
  expect(fanSpeed(heater, "low", Math.log(0.8))).toBe(2000);
  expect(fanSpeed(heater, "high", Math.log(0.8))).toBe(5000);
});
