import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { standardDensity } from "../../model/air.ts";
import {
  carryOverShift,
  type EndSetting,
  excessAirRatio,
  FUEL_kWh_per_L,
  fuelFlow,
  heatOutput,
  mixture,
  mixtureShift,
  runTime,
  settingAt,
} from "../../model/mixture.ts";

/** Mixture, and what carrying a tune or a power range does to it. */

const density = fc.double({ min: 0.55, max: 1.6, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const lowEnd = fc.record({
  pump_Hz: fc.double({ min: 0.5, max: 2.5, noNaN: true }),
  fan_rpm: fc.double({ min: 1200, max: 2400, noNaN: true }),
});
const highEnd = fc.record({
  pump_Hz: fc.double({ min: 2.6, max: 8, noNaN: true }),
  fan_rpm: fc.double({ min: 3500, max: 5000, noNaN: true }),
});

describe("mixture", () => {
  test("is pump rate per 1,000 rpm in standard sea-level air", () => {
    expect(mixture({ pump_Hz: 4.2, fan_rpm: 4200 }, 1.225)).toBeCloseTo(1, 12);
  });

  test("pump rate ∝ fan speed × density leaves it as it is (fan laws: volume by speed, mass by density)", () => {
    const factor = fc.double({ min: 0.5, max: 2, noNaN: true });
    fc.assert(
      fc.property(highEnd, density, factor, factor, (end, rho, faster, denser) => {
        const there = { pump_Hz: end.pump_Hz * faster * denser, fan_rpm: end.fan_rpm * faster };
        const shift = mixtureShift(mixture(there, rho * denser), mixture(end, rho));
        expect(Math.abs(shift)).toBeLessThan(1e-10);
      }),
    );
  });

  test("a tune carried from air A to air B shifts by ρA/ρB − 1, whatever the tune", () => {
    fc.assert(
      fc.property(highEnd, density, density, (end, from, to) => {
        const shift = mixtureShift(mixture(end, to), mixture(end, from));
        expect(shift).toBeCloseTo(100 * (from / to - 1), 9);
        expect(carryOverShift(from, to)).toBeCloseTo(shift, 9);
      }),
    );
  });

  test("uphill is rich, downhill is lean", () => {
    expect(carryOverShift(standardDensity(0), standardDensity(3000))).toBeGreaterThan(30);
    expect(carryOverShift(standardDensity(3000), standardDensity(0))).toBeLessThan(-20);
  });
});

describe("between the ends", () => {
  test("the ends are the ends", () => {
    fc.assert(
      fc.property(lowEnd, highEnd, (low, high) => {
        expect(settingAt(low, high, 0)).toEqual(low);
        const { pump_Hz, fan_rpm } = settingAt(low, high, 1);
        expect(pump_Hz).toBeCloseTo(high.pump_Hz, 9);
        expect(fan_rpm).toBeCloseTo(high.fan_rpm, 9);
      }),
    );
  });

  test("matched ends keep the mixture constant along the whole range, in any air", () => {
    fc.assert(
      fc.property(lowEnd, highEnd, density, share, (low, { fan_rpm }, rho, s) => {
        const high = { fan_rpm, pump_Hz: (low.pump_Hz * fan_rpm) / low.fan_rpm };
        const shift = mixtureShift(mixture(settingAt(low, high, s), rho), mixture(low, rho));
        expect(Math.abs(shift)).toBeLessThan(1e-9);
      }),
    );
  });

  test("unmatched ends: the mixture runs monotone from one end's to the other's", () => {
    fc.assert(
      fc.property(lowEnd, highEnd, density, share, share, (low, high, rho, a, b) => {
        const at = (s: number) => mixture(settingAt(low, high, s), rho);
        const direction = Math.sign(at(1) - at(0));
        const [first, second] = [Math.min(a, b), Math.max(a, b)];
        expect((at(second) - at(first)) * direction).toBeGreaterThanOrEqual(-1e-12);
        const [least, most] = [Math.min(at(0), at(1)), Math.max(at(0), at(1))];
        expect(at(a)).toBeGreaterThanOrEqual(least - 1e-12);
        expect(at(a)).toBeLessThanOrEqual(most + 1e-12);
      }),
    );
  });
});

test("a number that is none is refused by name", () => {
  const end: EndSetting = { pump_Hz: 4, fan_rpm: 4400 };
  const calls: [RegExp, () => unknown][] = [
    [/density_kg_m3/, () => mixture(end, Number.NaN)],
    [/fan_rpm/, () => mixture({ ...end, fan_rpm: 0 }, 1.2)],
    [/pump_Hz/, () => mixture({ ...end, pump_Hz: -1 }, 1.2)],
    [/reference/, () => mixtureShift(1, 0)],
    [/share/, () => settingAt(end, end, Number.NaN)],
    [/dose_uL/, () => fuelFlow(4, Number.POSITIVE_INFINITY)],
    [/fuel_L_h/, () => heatOutput(0)],
    [/efficiency/, () => heatOutput(0.5, Number.NaN)],
    [/tank_L/, () => runTime(0, 0.2)],
    [/oxygen_pct/, () => excessAirRatio(20.9)],
    [/oxygen_pct/, () => excessAirRatio(-1)],
  ];
  for (const [message, call] of calls) expect(call).toThrow(message);
  expect(FUEL_kWh_per_L).toBeGreaterThan(9);
});
