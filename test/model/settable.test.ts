import fc from "fast-check";
import { expect, test } from "vitest";
import { settablePairs } from "../../model/settable.ts";

test("between two steps of the pump the fan makes up for either, the nearer one first", () => {
  expect(settablePairs({ pump_Hz: 0.96, fan_rpm: 1650 }, 5000)).toEqual([
    { pump_Hz: 1, fan_rpm: 1720, shift_pct: 0 },
    { pump_Hz: 0.9, fan_rpm: 1550, shift_pct: 0 },
  ]);
});

test("a rate that can be set needs no other fan; a fan at its limit cannot make up for the step above", () => {
  expect(settablePairs({ pump_Hz: 1.1, fan_rpm: 1650 }, 5000)).toEqual([
    { pump_Hz: 1.1, fan_rpm: 1650, shift_pct: 0 },
  ]);
  expect(settablePairs({ pump_Hz: 4.25, fan_rpm: 5000 }, 5000)).toEqual([
    { pump_Hz: 4.2, fan_rpm: 4940, shift_pct: 0 },
  ]);
});

test("a step of the fan leaves a shift, which is said; below the first step of the pump there is only that", () => {
  const [coarse] = settablePairs({ pump_Hz: 0.96, fan_rpm: 1650 }, 5000, { step_rpm: 100 });
  expect(coarse).toEqual({ pump_Hz: 1, fan_rpm: 1700, shift_pct: 1 });
  expect(settablePairs({ pump_Hz: 0.07, fan_rpm: 1650 }, 5000)).toHaveLength(1);
});

test("whatever the heater: on the steps, one or two, the nearer first, the mixture kept to the fan's step", () => {
  const heater = fc.record({
    pump_Hz: fc.double({ min: 0.3, max: 8, noNaN: true }),
    fan_rpm: fc.integer({ min: 1000, max: 5000 }),
  });
  fc.assert(
    fc.property(heater, fc.constantFrom(0.01, 0.05, 0.1, 0.2), (exact, step_Hz) => {
      const pairs = settablePairs(exact, 5000, { step_Hz });
      expect([1, 2]).toContain(pairs.length);
      for (const { pump_Hz, fan_rpm } of pairs) {
        expect(Math.abs(pump_Hz / step_Hz - Math.round(pump_Hz / step_Hz))).toBeLessThan(1e-6);
        expect(fan_rpm % 10).toBe(0);
        expect(Math.abs(pump_Hz - exact.pump_Hz)).toBeLessThan(step_Hz + 1e-6);
        if (fan_rpm > 5000) continue;
        const off = pump_Hz / fan_rpm / (exact.pump_Hz / exact.fan_rpm) - 1;
        // Half a fan step to either side, however slow the fan.
        expect(Math.abs(off)).toBeLessThan(5 / (fan_rpm - 5) + 1e-6);
      }
      const off = pairs.map(({ pump_Hz }) => Math.abs(pump_Hz - exact.pump_Hz));
      expect(off).toEqual(off.toSorted((p, q) => p - q));
    }),
  );
});

test("what is no positive number is refused by name", () => {
  expect(() => settablePairs({ pump_Hz: 0, fan_rpm: 1650 }, 5000)).toThrow("pump_Hz");
  expect(() => settablePairs({ pump_Hz: 1, fan_rpm: Number.NaN }, 5000)).toThrow("fan_rpm");
});
