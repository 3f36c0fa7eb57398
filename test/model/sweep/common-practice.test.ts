import { expect, test } from "vitest";
import { COMMON_PRACTICE } from "../../../model/sweep/common-practice.ts";
import { onStep } from "../../../model/sweep/guards.ts";
import { sweepOf } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";
import { seeded } from "../../../seed-demo/random.ts";
import stated from "../../reference/common-practice-sweep.json" with { type: "json" };
import { AtTheHeater } from "../../study/sweep/at-the-heater.ts";
import { byHand } from "../../study/sweep/by-hand.ts";

test("what is common practice is as stated, and stated as having no source", () => {
  const { source, ...figures } = stated;
  expect(source).toMatch(/^common practice, no source/);
  expect(COMMON_PRACTICE).toEqual(figures);
});

test("stepping by hand, which the sweep is measured against, is common practice: coarse, then fine", () => {
  const exhaust = {
    minimum_Hz: 4.05,
    lowest_ppm: 12,
    lean_width: 0.08,
    rich_width: 0.08,
    shape: "power" as const,
    flame_out_Hz: 2.8,
  };
  const meter = {
    lag_s: 15,
    resolution_ppm: 1,
    floor_ppm: 0,
    ceiling_ppm: 1000,
    drift_per_min: 0,
  };
  const { set_Hz } = byHand(4.4, new AtTheHeater(seeded(3), exhaust, meter), 1);
  const between = (a: number, b: number) => onStep(0.1, Math.round(Math.abs(a - b) / 0.1));
  const sorted = [...set_Hz].sort((a, b) => a - b);
  const coarse = between(set_Hz[0] as number, set_Hz[1] as number);
  const [least, most] = COMMON_PRACTICE.coarse_step_Hz;
  expect(coarse).toBeGreaterThanOrEqual(least);
  expect(coarse).toBeLessThanOrEqual(most);
  const steps = sorted.slice(1).map((rate, i) => between(rate, sorted[i] as number));
  expect(Math.min(...steps)).toBe(COMMON_PRACTICE.fine_step_Hz);
});

test("the controller's usual step is the fine one, and no figure of common practice ends a sweep", () => {
  expect(sweepOf({ end: "low", start_Hz: 1.1, bands_Hz: [] }).step_Hz).toBe(
    COMMON_PRACTICE.fine_step_Hz,
  );
  const good = COMMON_PRACTICE.good_ppm[0];
  const answer = nextStep({ end: "high", start_Hz: 4.2, bands_Hz: [] }, [
    { pump_Hz: 4.2, time_s: 300, co_ppm: good },
  ]);
  expect(answer.kind).toBe("set");
});
