import { expect, test } from "vitest";
import { onStep } from "../../../model/rounding.ts";
import { COMMON_PRACTICE, isHigh } from "../../../model/sweep/common-practice.ts";
import { longestMove_Hz } from "../../../model/sweep/limits.ts";
import { sweepOf } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";
import { seeded } from "../../../seed-demo/random.ts";
import stated from "../../reference/common-practice-sweep.json" with { type: "json" };
import { AtTheHeater } from "../../study/sweep/at-the-heater.ts";
import { byHand } from "../../study/sweep/by-hand.ts";
import { CALM } from "../../study/sweep/meter.ts";

test("what is common practice is as stated, and stated as having no source", () => {
  const { source, ...figures } = stated;
  expect(source).toMatch(/^common practice, no source/);
  expect(COMMON_PRACTICE).toEqual(figures);
});

test("stepping by hand, which the sweep is measured against, is common practice: coarse, then fine", () => {
  const heater = {
    minimum_Hz: 4.05,
    lowest_ppm: 12,
    lean_width: 0.08,
    rich_width: 0.08,
    shape: "power" as const,
    flame_out_Hz: 2.8,
  };
  const meter = { ...CALM, lag_s: 15, resolution_ppm: 1, floor_ppm: 0, ceiling_ppm: 1000 };
  const { set_Hz } = byHand(4.4, new AtTheHeater(seeded(3), heater, meter), 1);
  const between = (a: number, b: number) => onStep(Math.round(Math.abs(a - b) / 0.1), 0.1);
  const sorted = [...set_Hz].sort((a, b) => a - b);
  const coarse = between(set_Hz[0] as number, set_Hz[1] as number);
  const [least, most] = COMMON_PRACTICE.coarse_step_Hz;
  expect(coarse).toBeGreaterThanOrEqual(least);
  expect(coarse).toBeLessThanOrEqual(most);
  const steps = sorted.slice(1).map((rate, i) => between(rate, sorted[i] as number));
  expect(Math.min(...steps)).toBe(COMMON_PRACTICE.fine_step_Hz);
});

test("the longest move at each end is the coarse step, and the controller's usual step the fine one", () => {
  const at = (end: "low" | "high") =>
    sweepOf({ end, present_Hz: 1.1, suggested_Hz: 1.1, bands_Hz: [] });
  expect([longestMove_Hz(at("low")), longestMove_Hz(at("high"))]).toEqual(
    COMMON_PRACTICE.coarse_step_Hz,
  );
  expect(at("low").step_Hz).toBe(COMMON_PRACTICE.fine_step_Hz);
});

test("a reading above the usual is high, and no figure of common practice ends a sweep", () => {
  const { usual_below_ppm, good_ppm } = COMMON_PRACTICE;
  expect([good_ppm[1], usual_below_ppm, usual_below_ppm + 1].map(isHigh)).toEqual([
    false,
    false,
    true,
  ]);
  expect(isHigh(undefined)).toBe(false);
  const setup = { end: "high" as const, present_Hz: 4.2, suggested_Hz: 4.2, bands_Hz: [] };
  const reading = { pump_Hz: 4.2, time_s: 300, co_ppm: good_ppm[0], still: true };
  expect(nextStep(setup, [reading]).kind).toBe("set");
});
