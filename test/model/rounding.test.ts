import fc from "fast-check";
import { expect, test } from "vitest";
import {
  decimalsOfFineRate,
  decimalsOfRate,
  decimalsOfRates,
  decimalsOfStep,
  isOnStep,
  onStep,
  percentOutwards,
  settableFan,
  settablePump,
  stepsFrom,
  stepsNear,
  stepsUpTo,
  wholePercent,
  withoutDust,
} from "../../model/rounding.ts";

/** Digits that a different order of the same sums leaves behind. */
const dust = fc.double({ min: -4e-10, max: 4e-10, noNaN: true });

test("half a step of the pump goes to the leaner rate, whichever way it was worked out", () => {
  for (const half of [0.95, 0.1 + 0.85, 0.9500000001, 0.9499999999, 1.9 / 2, 2.85 / 3]) {
    expect(settablePump(half), `${half}`).toBe(0.9);
  }
  expect(settablePump(0.951)).toBe(1);
  expect(settablePump(0.949)).toBe(0.9);
  expect(settablePump(0.96)).toBe(1);
});

test("half a step of the fan goes to the faster one, which is the leaner", () => {
  expect(settableFan(1655)).toBe(1660);
  expect(settableFan(1654.9)).toBe(1650);
  expect(settableFan(1655.0000001)).toBe(1660);
  expect(settableFan(1654.9999999)).toBe(1660);
});

test("dust moves no rate, no fan speed and no percentage, on a half step least of all", () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 160 }), dust, (halves, off) => {
      const rate = halves * 0.05;
      expect(settablePump(rate + off)).toBe(settablePump(rate));
      expect(settableFan(halves * 5 + 1000 + off)).toBe(settableFan(halves * 5 + 1000));
      expect(wholePercent(halves / 2 + off)).toBe(wholePercent(halves / 2));
      expect(percentOutwards(halves / 2 + off)).toBe(percentOutwards(halves / 2));
      expect(stepsUpTo(rate + off, 0.05)).toBe(halves);
      expect(stepsFrom(rate + off, 0.05)).toBe(halves);
    }),
  );
});

test("what can be set lies on a step, is the nearest such, has no dust, and stays what it is", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 12, noNaN: true }),
      fc.constantFrom(0.01, 0.02, 0.05, 0.1, 0.2, 0.5),
      (rate, step) => {
        const set = settablePump(rate, step);
        expect(isOnStep(set, step)).toBe(true);
        expect(withoutDust(set)).toBe(set);
        expect(settablePump(set, step)).toBe(set);
        if (rate > step) expect(Math.abs(set - rate)).toBeLessThanOrEqual(step / 2 + 1e-6);
      },
    ),
  );
  expect(settablePump(0.01)).toBe(0.1);
});

test("steps below, above and beside a value", () => {
  expect([stepsUpTo(0.3, 0.1), stepsFrom(0.3, 0.1), stepsNear(0.3, 0.1)]).toEqual([3, 3, 3]);
  expect([stepsUpTo(0.38, 0.1), stepsFrom(0.31, 0.1), stepsNear(0.36, 0.1)]).toEqual([3, 4, 4]);
  expect(onStep(3, 0.1)).toBe(0.3);
  expect(isOnStep(1.1, 0.1)).toBe(true);
  expect(isOnStep(1.15, 0.1)).toBe(false);
});

test("half a percent goes away from 0, and nothing is written as minus nothing", () => {
  expect([12.5, 12.4999, -12.5, -12.4999].map(wholePercent)).toEqual([13, 12, -13, -12]);
  expect(Object.is(wholePercent(-0.4), 0)).toBe(true);
  expect(percentOutwards(3.01)).toBe(4);
  expect(percentOutwards(3.0000000001)).toBe(3);
});

test("decimals: those of the controller's step, more for a rate that has more, one more for what nobody sets", () => {
  expect([0.1, 0.05, 0.01, 0.5, 1].map(decimalsOfStep)).toEqual([1, 2, 2, 1, 0]);
  // 1.1 × 10 is 11.000000000000002: a rate on a step has one decimal all the same.
  expect([1.1, 0.3, 1, 4.2, 1.05, 0.955].map((rate) => decimalsOfRate(rate))).toEqual([
    1, 1, 1, 1, 2, 3,
  ]);
  expect(decimalsOfRate(1.23456)).toBe(3);
  // Beside each other all have those of the finest: 1.06 and 3.9 are read as 1.06 and 3.90.
  expect(decimalsOfRates([1.06, 3.9])).toBe(2);
  expect([decimalsOfRates([1.1, 4]), decimalsOfRates([]), decimalsOfRates([1.1], 0.05)]).toEqual([
    1, 1, 2,
  ]);
  expect(decimalsOfRate(1.1, 0.05)).toBe(2);
  expect([decimalsOfFineRate(), decimalsOfFineRate(0.05), decimalsOfFineRate(1)]).toEqual([
    2, 3, 2,
  ]);
});
