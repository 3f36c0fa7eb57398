import fc from "fast-check";
import { expect, test } from "vitest";
import { fullPowerOf, judgeCheck, middleOf } from "../../../model/sweep/middle.ts";

const low = { pump_Hz: 1.2, fan_rpm: 1600, co_ppm: 16 };
const high = { pump_Hz: 4, fan_rpm: 4400, co_ppm: 9 };
const meter = { resolution_ppm: 1 };

test("half way between the ends pump and fan are, and CO lies between theirs", () => {
  const middle = middleOf(low, high, meter);
  expect(middle).toMatchObject({ pump_Hz: 2.6, fan_rpm: 3000, co_ppm: 12 });
  expect(middle.upper_ppm).toBeCloseTo(24, 6);
});

test("as expected is good, lower too; clearly above the higher end is poor; nothing shown says nothing", () => {
  const middle = middleOf(low, high, meter);
  for (const co_ppm of [0, 9, 12, 16, 24]) expect(judgeCheck(middle, { co_ppm })).toBe("good");
  for (const co_ppm of [25, 60, 400]) expect(judgeCheck(middle, { co_ppm })).toBe("poor");
  expect(judgeCheck(middle, { co_above_ppm: 2000 })).toBe("poor");
  expect(judgeCheck(middle, { co_below_ppm: 30 })).toBe("unseen");
});

test("ends below the meter's floor: no figure is expected, and half as much again as the floor is poor", () => {
  const blind = middleOf(
    { ...low, co_ppm: undefined },
    { ...high, co_ppm: undefined },
    { floor_ppm: 30 },
  );
  expect(blind.co_ppm).toBeUndefined();
  expect(judgeCheck(blind, { co_ppm: 33 })).toBe("good");
  expect(judgeCheck(blind, { co_ppm: 46 })).toBe("poor");
});

test("full power is judged against what the high end settled at", () => {
  const full = fullPowerOf(high, meter);
  expect(full).toMatchObject({ pump_Hz: 4, fan_rpm: 4400, co_ppm: 9 });
  expect(judgeCheck(full, { co_ppm: 10 })).toBe("good");
  expect(judgeCheck(full, { co_ppm: 20 })).toBe("poor");
});

test("whatever the ends: fuel per turn of the fan in the middle lies between theirs", () => {
  const ends = fc.record({
    pump_Hz: fc.double({ min: 0.5, max: 7, noNaN: true }),
    fan_rpm: fc.double({ min: 1000, max: 5000, noNaN: true }),
  });
  fc.assert(
    fc.property(ends, ends, (one, other) => {
      const { pump_Hz, fan_rpm } = middleOf(one, other, meter);
      const per = [one, other].map((end) => end.pump_Hz / end.fan_rpm);
      expect(pump_Hz / fan_rpm).toBeGreaterThanOrEqual(Math.min(...per) - 1e-12);
      expect(pump_Hz / fan_rpm).toBeLessThanOrEqual(Math.max(...per) + 1e-12);
    }),
  );
});

test("what is not positive is named", () => {
  expect(() => middleOf({ ...low, fan_rpm: 0 }, high, meter)).toThrow("low_fan_rpm");
});
