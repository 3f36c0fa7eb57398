import fc from "fast-check";
import { expect, test } from "vitest";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";

const setups = fc
  .record({
    end: fc.constantFrom("low" as const, "high" as const),
    start_Hz: fc.integer({ min: 9, max: 60 }).map((k) => k / 10),
    wide: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
    step_Hz: fc.constantFrom(0.1, 0.2, 0.05),
    floor_ppm: fc.constantFrom(0, 10, 30),
    ceiling_ppm: fc.constantFrom(300, 1000),
    bands: fc.boolean(),
  })
  .map(({ end, start_Hz, wide, step_Hz, floor_ppm, ceiling_ppm, bands }): SweepSetup => {
    const band = { level: 0.99, lower: start_Hz * (1 - wide), upper: start_Hz * (1 + wide) };
    return {
      end,
      start_Hz,
      bands_Hz: bands ? [band] : [],
      step_Hz,
      meter: { floor_ppm, ceiling_ppm },
    };
  });

/** What the meter answers, whatever the rate: nonsense too must not break a guard. */
const replies = fc.array(
  fc.record({
    co_ppm: fc.integer({ min: 0, max: 1200 }),
    flame_out: fc.integer({ min: 0, max: 12 }).map((k) => k === 0),
  }),
  { minLength: 1, maxLength: 10 },
);

test("whatever the meter answers: no guard is broken, time goes on, the same readings give the same answer", () => {
  fc.assert(
    fc.property(setups, replies, (setup, list) => {
      const readings: SweepReading[] = [];
      const lean = setup.bands_Hz[0]?.lower ?? 0;
      let time_s = 0;
      for (const { co_ppm, flame_out } of list) {
        const answer = nextStep(setup, readings);
        expect(nextStep(setup, readings)).toEqual(answer);
        const rates =
          "sit_Hz" in answer ? [answer.sit_Hz] : answer.kind === "set" ? [answer.pump_Hz] : [];
        for (const rate of rates) {
          expect(rate).toBeGreaterThanOrEqual(Math.max(lean, answer.guards_Hz.lean) - 1e-6);
          const out = readings.filter((r) => r.flame_out).map((r) => r.pump_Hz);
          expect(rate).toBeGreaterThanOrEqual(
            Math.max(0, ...out.map((r) => r + (setup.step_Hz ?? 0.1))) - 1e-6,
          );
          const burned = readings.filter((r) => !r.flame_out).map((r) => r.pump_Hz);
          if (burned.length > 0) {
            expect(rate).toBeGreaterThanOrEqual(
              Math.min(...burned) - (setup.step_Hz ?? 0.1) - 1e-6,
            );
          }
        }
        expect(answer.sentence.length).toBeGreaterThan(20);
        expect(answer.sentence).not.toMatch(/NaN|undefined|Infinity/);
        if (answer.kind !== "set" && answer.kind !== "wait") return;
        expect(Number.isFinite(answer.wait_s)).toBe(true);
        expect(answer.wait_s).toBeGreaterThanOrEqual(10);
        time_s += answer.wait_s;
        readings.push({
          pump_Hz: answer.pump_Hz,
          time_s,
          ...(flame_out ? { flame_out } : { co_ppm }),
        });
      }
    }),
    { numRuns: 25, seed: 11 },
  );
}, 120_000);
