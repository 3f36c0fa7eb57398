import fc from "fast-check";
import { expect, test } from "vitest";
import type { SweepReading, SweepSetup } from "../../../model/sweep/setup.ts";
import { nextStep } from "../../../model/sweep/sweep.ts";

const setups = fc
  .record({
    end: fc.constantFrom("low" as const, "high" as const),
    present_Hz: fc.integer({ min: 6, max: 80 }).map((k) => k / 10),
    ratio: fc.double({ min: 0.5, max: 2, noNaN: true }),
    wide: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
    step_Hz: fc.constantFrom(0.1, 0.2, 0.05, 0.01, 0.5),
    floor_ppm: fc.constantFrom(0, 10, 30),
    ceiling_ppm: fc.constantFrom(300, 1000),
    relights_used: fc.constantFrom(0, 0, 1, 2),
    bands: fc.boolean(),
  })
  .map(({ ratio, wide, floor_ppm, ceiling_ppm, bands, ...given }): SweepSetup => {
    const suggested_Hz = given.present_Hz * ratio;
    const band = {
      level: 0.99,
      lower: suggested_Hz * (1 - wide),
      upper: suggested_Hz * (1 + wide),
    };
    return {
      ...given,
      suggested_Hz,
      bands_Hz: bands ? [band] : [],
      meter: { floor_ppm, ceiling_ppm },
    };
  });

/** What the meter answers, whatever the rate: nonsense too must not break a promise. */
const replies = fc.array(
  fc.record({
    co_ppm: fc.oneof(fc.integer({ min: 0, max: 1200 }), fc.integer({ min: 5, max: 40 })),
    still: fc.boolean(),
    flame_out: fc.integer({ min: 0, max: 12 }).map((k) => k === 0),
  }),
  { minLength: 80, maxLength: 80 },
);

test("whatever the meter answers: short moves, no third relight, an end in time, and the same answer to the same readings", () => {
  fc.assert(
    fc.property(setups, replies, (setup, list) => {
      const longest = Math.max(setup.step_Hz ?? 0.1, setup.end === "low" ? 0.2 : 0.4) + 1e-6;
      const readings: SweepReading[] = [];
      let here_Hz = setup.present_Hz;
      let settings = 0;
      let time_s = 0;
      for (const { co_ppm, still, flame_out } of list) {
        const answer = nextStep(setup, readings);
        expect(nextStep(setup, readings)).toEqual(answer);
        expect(JSON.stringify(answer)).not.toMatch(/null/);
        if ("pump_Hz" in answer) {
          expect(answer.pump_Hz).toBeGreaterThan(0);
          expect(Math.abs(answer.pump_Hz - here_Hz)).toBeLessThanOrEqual(longest);
          if (answer.kind !== "wait") {
            const out = readings.filter((one) => one.flame_out).map(({ pump_Hz }) => pump_Hz);
            expect(answer.pump_Hz).toBeGreaterThan(Math.max(0, ...out));
          }
        }
        if (answer.kind !== "set" && answer.kind !== "wait") return;
        if (answer.kind === "set" && answer.why !== "flame-out") settings++;
        expect(settings).toBeLessThanOrEqual(answer.steps_most);
        expect(readings.filter((one) => one.flame_out).length).toBeLessThanOrEqual(2);
        expect(answer.wait_s).toBeGreaterThanOrEqual(30);
        here_Hz = answer.pump_Hz;
        time_s += answer.wait_s;
        const confirming = answer.kind === "set" && answer.why === "confirm";
        readings.push({
          pump_Hz: here_Hz,
          time_s,
          ...(flame_out ? { flame_out } : { co_ppm, still, confirming }),
        });
      }
      throw new Error("no end");
    }),
    { numRuns: 250, seed: 11 },
  );
}, 120_000);
