import fc from "fast-check";
import { expect, test } from "vitest";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import { priorGroup } from "../../model/fit/prior.ts";
import { screen } from "../../model/screen.ts";
import { type Tune, tuneSchema } from "../../model/tune.ts";
import { goodTunes, PRIOR_MIXTURE } from "./good-tunes.ts";

/** Screening must let honest rows through, whatever is unknown about them, and never fall over. */

test("a good tune is never held, over the whole realistic range", () => {
  fc.assert(
    fc.property(goodTunes, ({ tune, context }) => {
      expect(tuneSchema.safeParse(tune).error).toBeUndefined();
      expect(screen(tune, context)).toEqual({ verdict: "accepted", reasons: [] });
    }),
    { numRuns: 20_000, seed: 42 },
  );
});

test("no combination of usual figures is held at any elevation, however odd their mixture: low end 0.8–2.5 Hz at 1,200–2,400 rpm, high end 3–7 Hz at 3,500–5,000 rpm (common practice, no source)", () => {
  const held: unknown[] = [];
  for (const elevation_m of [0, 2500, 5000]) {
    for (const low_Hz of [0.8, 1.1, 1.5, 2, 2.5]) {
      for (const low_rpm of [1200, 1500, 1800, 2100, 2400]) {
        for (const high_Hz of [3, 4, 5, 6, 7]) {
          for (const high_rpm of [3500, 4000, 4500, 5000]) {
            const tune: Tune = {
              heater: { heat_kW: 5 },
              site: { elevation_m },
              low: { pump_Hz: low_Hz, fan_rpm: low_rpm, co_ppm: 10 },
              high: { pump_Hz: high_Hz, fan_rpm: high_rpm, co_ppm: 10 },
              contributor: "an-invented-key-of-a-crew",
            };
            if (screen(tune).verdict === "held") held.push(tune);
          }
        }
      }
    }
  }
  expect(held).toEqual([]);
});

test("a good tune is never held beside a published fit, however far the fit lies from the usual", () => {
  const far = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(goodTunes, far, far, ({ tune, context }, low, high) => {
      const fit = fitWith(tune.heater.heat_kW, { low, high });
      expect(screen(tune, { ...context, fit })).toEqual({ verdict: "accepted", reasons: [] });
    }),
    { numRuns: 5_000, seed: 43 },
  );
});

test("a fit can make usual what would otherwise be too lean to burn", () => {
  const [tune] = fc.sample(goodTunes, { seed: 1, numRuns: 1 }).map((good) => good.tune);
  if (!tune) throw new Error("no sample");
  const lean = structuredClone(tune);
  Object.assign(lean, { site: { elevation_m: 0 } });
  Object.assign(lean.low, { pump_Hz: 0.2, fan_rpm: 1650 });
  Object.assign(lean.high, { pump_Hz: 0.6, fan_rpm: 4400 });
  expect(screen(lean).verdict).toBe("held");
  const fit = fitWith(lean.heater.heat_kW, { low: Math.log(0.15), high: Math.log(0.15) });
  expect(screen(lean, { fit }).verdict).toBe("accepted");
});

test("any tune the schema lets in is screened without falling over, and every reason is a sentence", () => {
  const near = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const wild = fc.record({
    elevation_m: near(-1500, 20_000),
    temperature_C: near(-80, 125),
    pressure_hPa: near(400, 1100),
    dose_uL: near(0.005, 200_000),
    low: fc.record({ pump_Hz: near(0.03, 1000), fan_rpm: near(5, 20_000) }),
    high: fc.record({ pump_Hz: near(0.03, 1000), fan_rpm: near(5, 20_000) }),
    terrain: fc.option(near(-400, 6000)),
  });
  fc.assert(
    fc.property(wild, (w) => {
      const tune: Tune = {
        heater: { heat_kW: 5, dose_uL: w.dose_uL },
        site: { elevation_m: w.elevation_m },
        air: { temperature_C: w.temperature_C, pressure_hPa: w.pressure_hPa },
        low: { ...w.low, co_ppm: 10 },
        high: { ...w.high, co_ppm: 10 },
        contributor: "an-invented-key-of-a-crew",
      };
      expect(tuneSchema.safeParse(tune).error).toBeUndefined();
      const before = structuredClone(tune);
      const terrain =
        w.terrain === null ? null : { elevation_m: w.terrain, uncertainty_95_m: 100, sd_m: 50 };
      const { verdict, reasons } = screen(tune, { terrain, month: "2026-11" });
      expect(tune).toEqual(before);
      expect(verdict).toBe(reasons.length === 0 ? "accepted" : "held");
      for (const { sentence, suggestion } of reasons) {
        expect(sentence).toMatch(/^[A-Z0-9-].*[.?]$/);
        expect(sentence).not.toMatch(/NaN|undefined|Infinity/);
        if (suggestion !== undefined) expect(Number.isFinite(suggestion)).toBe(true);
      }
    }),
    { numRuns: 1_500, seed: 44 },
  );
});

function fitWith(heat_kW: number, intercepts: Record<"low" | "high", number>): PublishedFit {
  const group = (end: "low" | "high"): GroupFit => ({
    ...priorGroup(heat_kW, end),
    intercept: Math.log(PRIOR_MIXTURE[end]) + intercepts[end],
    slope: 0.9,
    covariance: [
      [0.001, 0],
      [0, 0.01],
    ],
    spread: 0.1,
    spread_df: 20,
    contributors: 20,
    tunes: 30,
    density_range: [0.8, 1.3],
  });
  return {
    version: "2026-11-25.1",
    published_at: "2026-11-25T00:00:00Z",
    code: "test",
    estimator: "test",
    settings: {},
    alarms: [],
    rows_sha256: null,
    demo: true,
    groups: [group("low"), group("high")],
  };
}
