import { expect, test } from "vitest";
import { adviceOn } from "../../model/advice.ts";
import { screen } from "../../model/screen.ts";
// Common practice, no source: what people who tune such heaters usually see.
import practice from "../reference/common-practice-sweep.json" with { type: "json" };
import { goodTune } from "../server/atlas.ts";

const withCo = (low: number, high: number) => {
  const tune = goodTune();
  return { ...tune, low: { ...tune.low, co_ppm: low }, high: { ...tune.high, co_ppm: high } };
};

test("a final CO above what is usual is said at its end, with its figure and what to do about the heater", () => {
  const [low, high, ...more] = adviceOn(withCo(450, 1600));
  expect([low?.field, low?.value, high?.field, high?.value]).toEqual([
    "low.co_ppm",
    450,
    "high.co_ppm",
    1600,
  ]);
  expect(more).toEqual([]);
  expect(low?.sentence).toContain("The final CO of 450 ppm at lowest power is high");
  expect(high?.sentence).toContain("The final CO of 1,600 ppm at highest power is high");
  for (const cause of ["soot", "air intake", "exhaust", "meter", "before anyone sleeps"]) {
    expect(low?.sentence).toContain(cause);
  }
});

test("what is usual is not: up to 30 ppm, below the meter's floor, or no reading", () => {
  const { usual_below_ppm } = practice;
  expect(adviceOn(withCo(usual_below_ppm, practice.good_ppm[1] as number))).toEqual([]);
  expect(adviceOn(withCo(usual_below_ppm + 1, 9)).map(({ field }) => field)).toEqual([
    "low.co_ppm",
  ]);
  expect(adviceOn({ low: {}, high: {} })).toEqual([]);
});

test("it is no reason to hold a tune", () => {
  expect(screen(withCo(450, 600))).toEqual({ verdict: "accepted", reasons: [] });
});
