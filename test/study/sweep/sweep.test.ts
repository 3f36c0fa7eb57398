import { expect, test } from "vitest";
import { beyondGuard, figuresOf, readingsOfHand_pct } from "./figures.ts";
import { runOf } from "./runs.ts";

const SEED = 7;
const seen = Array.from({ length: 60 }, (_, run) => runOf(SEED, run));
const unseen = Array.from({ length: 6 }, (_, run) => runOf(SEED, run, "below floor"));

test("a guided sweep finds the minimum of invented heaters in fewer readings than stepping by hand", () => {
  const guided = figuresOf(seen, "guided");
  const hand = figuresOf(seen, "hand");
  expect(guided.within_1_step_pct).toBeGreaterThanOrEqual(90);
  // Of so few, one may be farther off; the study looks at hundreds.
  expect(guided.within_2_steps_pct).toBeGreaterThanOrEqual(98);
  expect(guided.within_3_ppm_pct).toBeGreaterThanOrEqual(90);
  expect(guided.within_3_ppm_pct).toBeGreaterThan(hand.within_3_ppm_pct);
  expect(guided.settled_median).toBeLessThanOrEqual(0.6 * hand.settled_median);
  expect(readingsOfHand_pct(seen)).toBeLessThanOrEqual(60);
  expect(guided.minutes_median).toBeLessThan(hand.minutes_median);
  expect(guided.flame_outs).toBeLessThan(hand.flame_outs);
});

test("nothing is ever recommended beyond the lean guard, seen or unseen", () => {
  expect([...seen, ...unseen].filter(beyondGuard)).toEqual([]);
});

test("where the meter cannot see the bottom, it says so", () => {
  for (const { guided } of unseen) {
    const last = guided.answers.at(-1);
    if (last?.kind === "minimum" && last.below_floor)
      expect(last.sentence).toContain("below what this meter shows");
    if (last?.kind === "no minimum") expect(last.sentence).toContain("cannot tell a minimum");
  }
});

test("the same seed gives the same sweep", () => {
  expect(runOf(SEED, 3)).toEqual(seen[3]);
});
