import { expect, test } from "vitest";
import { bracketed, clearlyAbove, riseOn } from "../../../model/sweep/bracket.ts";
import type { Level } from "../../../model/sweep/stays.ts";

const level = (pump_Hz: number, ppm: number, sd_ppm = 1, rest: Partial<Level> = {}): Level => ({
  pump_Hz,
  ppm,
  sd_ppm,
  ...rest,
});

test("clearly above is more than three standard deviations of the difference", () => {
  // Two readings with a standard deviation of 1 each: of their difference, √2.
  expect(clearlyAbove(level(1.1, 14.2), level(1, 10))).toBe(false);
  expect(clearlyAbove(level(1.1, 14.3), level(1, 10))).toBe(true);
});

test("off the scale CO is known on one side alone", () => {
  const above = level(1.3, 1000, 50, { beyond: "ceiling" });
  const below = level(1, 30, 2, { beyond: "floor" });
  expect(clearlyAbove(above, level(1, 200, 10))).toBe(true);
  expect(clearlyAbove(above, above)).toBe(false);
  expect(clearlyAbove(level(1.1, 45, 2), below)).toBe(true);
  expect(clearlyAbove(below, level(1.1, 5))).toBe(false);
  expect(clearlyAbove({ ...above, stuck: true }, level(1, 200, 10))).toBe(false);
});

test("a rise on both sides of a rate brackets it, on one side it does not", () => {
  const falling = [level(0.8, 308, 17), level(0.9, 171, 9), level(1, 84, 5), level(1.1, 34, 2)];
  expect(bracketed(falling, 1.1)).toBe(false);
  expect(riseOn(falling, 1.1, "lean")).toBe(1);
  expect(riseOn(falling, 1.1, "rich")).toBeUndefined();
  expect(bracketed([...falling, level(1.2, 48, 3)], 1.1)).toBe(true);
  // No minimum where nothing was read, or where nothing was shown.
  expect(bracketed([...falling, level(1.2, 48, 3)], 1.15)).toBe(false);
  const hidden = [level(0.9, 90, 5), level(1, 30, 2, { beyond: "floor" }), level(1.1, 80, 5)];
  expect(bracketed(hidden, 1)).toBe(false);
});

test("every reading at a rate has to agree: a gust or a drift makes no rise", () => {
  const first = [level(0.9, 30, 2), level(1, 14), level(1.1, 30, 2)];
  expect(bracketed(first, 1)).toBe(true);
  // The meter has drifted up: come back to, the best rate reads as much as its neighbours did.
  expect(bracketed([...first, level(1, 27, 2)], 1)).toBe(false);
  // The rise on the lean side was a gust.
  expect(bracketed([...first, level(0.9, 15)], 1)).toBe(false);
});
