import fc from "fast-check";
import { expect, test } from "vitest";
import { ENDS } from "../../../model/fit/group.ts";
import { oneTune, oneTuneWithin, tuneKeptFrom } from "../../../model/trip/one-tune.ts";
import { spanOf, worstShift } from "../../../model/trip/window.ts";
import { trips, windows } from "./random-trips.ts";

test("worked by hand: 1.0 and 1.5 Hz expected; 1.2 Hz is 20 % rich at the one and 20 % lean at the other", () => {
  const { low } = oneTune({ low: [1, 1.5, 1.2], high: [4, 4, 4] });
  expect(low.pump_Hz_exact).toBeCloseTo(1.2, 12);
  expect(low.shifts_pct[0]).toBeCloseTo(20, 10);
  expect(low.shifts_pct[1]).toBeCloseTo(-20, 10);
  expect(low.shifts_pct[2]).toBeCloseTo(0, 10);
  expect(low.worst_pct).toBeCloseTo(20, 10);
});

test("no other pump rate shifts less at its worst stop, by brute force over the whole span", () => {
  fc.assert(
    fc.property(trips(8), (expected) => {
      const one = oneTune(expected);
      for (const end of ENDS) {
        const [least, most] = [Math.min(...expected[end]), Math.max(...expected[end])];
        const others = Array.from(
          { length: 300 },
          (_, i) => least * 0.95 + ((most * 1.05 - least * 0.95) * i) / 299,
        );
        const best = Math.min(...others.map((other) => worstShift(other, spanOf(expected[end]))));
        expect(one[end].worst_pct).toBeLessThanOrEqual(best + 1e-9);
      }
    }),
    { numRuns: 100 },
  );
});

test("within a window: null exactly when no pump rate stays inside, else the best of those that do", () => {
  fc.assert(
    fc.property(trips(6), windows, (expected, window) => {
      const inside = (pump_Hz: number, end: "low" | "high", slack: number) =>
        expected[end].every((e) => {
          const shift = (pump_Hz / e - 1) * 100;
          return shift <= window.rich_pct + slack && shift >= -window.lean_pct - slack;
        });
      const tune = oneTuneWithin(expected, window);
      for (const end of ENDS) {
        const [least, most] = [Math.min(...expected[end]), Math.max(...expected[end])];
        if (!tune) continue;
        const others = Array.from(
          { length: 200 },
          (_, i) => least / 2 + ((most * 1.5 - least / 2) * i) / 199,
        );
        const best = others
          .filter((other) => inside(other, end, -1e-9))
          .reduce(
            (min, other) => Math.min(min, worstShift(other, spanOf(expected[end]))),
            Infinity,
          );
        expect(tune[end].worst_pct).toBeLessThanOrEqual(best + 1e-9);
        expect(inside(tune[end].pump_Hz_exact, end, 1e-9)).toBe(true);
      }
      if (!tune) {
        // Some end's two outermost stops lie too far apart.
        const apart = ENDS.some(
          (end) =>
            Math.max(...expected[end]) * (1 - window.lean_pct / 100) >
            Math.min(...expected[end]) * (1 + window.rich_pct / 100),
        );
        expect(apart).toBe(true);
      }
    }),
    { numRuns: 150 },
  );
});

test("a controller's step: no other step shifts less", () => {
  fc.assert(
    fc.property(trips(6), (expected) => {
      const one = oneTune(expected);
      for (const end of ENDS) {
        const steps = Array.from({ length: 90 }, (_, i) =>
          worstShift((i + 1) / 10, spanOf(expected[end])),
        );
        expect(one[end].settable_worst_pct).toBeLessThanOrEqual(Math.min(...steps) + 1e-9);
      }
    }),
    { numRuns: 100 },
  );
});

test("a stop's own tune kept shifts nothing there, and as the pump rates stand elsewhere", () => {
  const kept = tuneKeptFrom({ low: [1, 1.25, 0.8], high: [4, 5, 4] }, 0);
  expect(kept.low.shifts_pct[0]).toBe(0);
  expect(kept.low.shifts_pct[1]).toBeCloseTo(-20, 12);
  expect(kept.low.shifts_pct[2]).toBeCloseTo(25, 12);
  expect(() => tuneKeptFrom({ low: [1], high: [4] }, 1)).toThrow(RangeError);
});
