import fc from "fast-check";
import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import { ownStartTune, startForHeater } from "../../model/own-start.ts";
import { type StartQuestion, startTune } from "../../model/start.ts";
import { USUAL_NIGHT } from "../../model/trip/nights.ts";
import { planTrip } from "../../model/trip/trip.ts";
import { WORKING_WINDOW } from "../../model/trip/window.ts";
import { type OwnTune, ownTuneSchema } from "../../model/tune.ts";
import { goodTunes } from "./good-tunes.ts";
import { EMPTY_ATLAS, inventedFit, TRUE_PER_KRPM, TRUE_SLOPE } from "./invented-fit.ts";

const fit = inventedFit();

const question = (elevation_m: number, temperature_C: number): StartQuestion => ({
  heat_kW: 5,
  site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
  air: { temperature_C },
});

/** A tune of a heater that draws so many times what the average heater does. */
function own(
  elevation_m: number,
  temperature_C: number,
  times: number,
  highTimes = times,
): OwnTune {
  const { density_ratio } = airAt(elevation_m, { temperature_C });
  const end = (rpm: number, perKrpm: number, factor: number) => ({
    fan_rpm: rpm,
    pump_Hz: perKrpm * density_ratio ** TRUE_SLOPE * (rpm / 1000) * factor,
    co_ppm: 12,
  });
  return {
    site: { elevation_m },
    air: { temperature_C },
    low: end(1650, TRUE_PER_KRPM.low, times),
    high: end(4400, TRUE_PER_KRPM.high, highTimes),
  };
}

const width = ({ lower, upper }: { lower: number; upper: number }) => Math.log(upper / lower);

test("own tunes move the answer towards the heater, and narrow it; the best setting is known better than the next tune", () => {
  const asked = question(2800, -8);
  const average = startTune(fit, asked);
  const tunes = [own(300, 8, 1.1), own(1500, 0, 1.1), own(900, 4, 1.1)];
  const widths = [1, 2, 3].map((k) => {
    const { own_heater, ...start } = ownStartTune(fit, asked, tunes.slice(0, k));
    expect(start).toEqual(average);
    expect(own_heater).toMatchObject({ tunes: k, set_aside: [], contradictions: [] });
    for (const end of ENDS) {
      const { pump_Hz_exact, next_tune_bands_Hz, best_bands_Hz } = own_heater[end];
      const moved = pump_Hz_exact / average[end].pump_Hz_exact;
      expect(moved).toBeGreaterThan(1.03);
      expect(moved).toBeLessThan(1.11);
      for (const [i, next] of next_tune_bands_Hz.entries()) {
        const best = best_bands_Hz[i] as typeof next;
        expect(width(best)).toBeLessThan(width(next));
        expect(next.lower).toBeLessThan(pump_Hz_exact);
        expect(next.upper).toBeGreaterThan(pump_Hz_exact);
      }
    }
    return width(own_heater.low.next_tune_bands_Hz[1] as { lower: number; upper: number });
  });
  const alone = width(average.low.new_heater_bands_Hz[1] as { lower: number; upper: number });
  expect([alone, ...widths]).toEqual([alone, ...widths].sort((p, q) => q - p));
});

test("a tune without a temperature, or of a vague elevation, narrows less", () => {
  const asked = question(2800, -8);
  const sharp = own(300, 8, 1.05);
  const vague: OwnTune = { ...sharp, air: undefined };
  const high: OwnTune = { ...sharp, site: { elevation_m: 300, elevation_sd_m: 900 } };
  const [a, b, c] = [sharp, vague, high].map((tune) =>
    width(
      ownStartTune(fit, asked, [tune]).own_heater.low.best_bands_Hz[1] as {
        lower: number;
        upper: number;
      },
    ),
  ) as [number, number, number];
  expect(b).toBeGreaterThan(a);
  expect(c).toBeGreaterThan(a);
});

test("a mistaken own tune is named, with how far off it is, at the end that it is at", () => {
  const tunes = [own(300, 8, 1), own(1500, 0, 1, 1.6), own(900, 4, 1)];
  const { own_heater } = ownStartTune(fit, question(2000, 0), tunes);
  expect(own_heater.tunes).toBe(3);
  expect(own_heater.set_aside).toHaveLength(1);
  expect(own_heater.set_aside[0]).toMatchObject({ tune: 2, end: "high", code: "far_richer" });
  expect(own_heater.set_aside[0]?.sentence).toMatch(
    /^Own tune 2 does not count at the highest power: it is (5[5-9]|6[0-5]) % richer than your other tunes lead to expect\./,
  );
  const without = ownStartTune(fit, question(2000, 0), [tunes[0], tunes[2]] as OwnTune[]);
  expect(own_heater.high.pump_Hz_exact / without.own_heater.high.pump_Hz_exact).toBeCloseTo(1, 2);
});

test("an own tune that would be held at the door does not count, for the same reason", () => {
  const swapped = own(300, 8, 1);
  const tunes = [own(1200, 0, 1), { ...swapped, low: swapped.high, high: swapped.low }];
  const { own_heater } = ownStartTune(fit, question(2000, 0), tunes);
  expect(own_heater.tunes).toBe(1);
  expect(own_heater.set_aside[0]).toMatchObject({ tune: 2, end: null });
  expect(own_heater.set_aside[0]?.sentence).toMatch(/^Own tune 2 does not count\. /);
});

test("two own tunes that cannot both be right, neither of them far off, are said to contradict each other, and the band stays wide", () => {
  const asked = question(2000, 0);
  const { own_heater } = ownStartTune(fit, asked, [own(300, 8, 0.9), own(900, 4, 1.13)]);
  expect(own_heater.contradictions.map(({ tunes, end }) => [tunes, end])).toEqual([
    [[1, 2], "low"],
    [[1, 2], "high"],
  ]);
  expect(own_heater.contradictions[0]?.sentence).toContain(
    "Own tunes 1 and 2 contradict each other",
  );
  const agreed = ownStartTune(fit, asked, [own(300, 8, 1), own(900, 4, 1.02)]);
  for (const end of ENDS) {
    const [contradicting, agreeing] = [own_heater, agreed.own_heater].map((heater) =>
      width(heater[end].next_tune_bands_Hz[1] as { lower: number; upper: number }),
    ) as [number, number];
    expect(contradicting).toBeGreaterThan(agreeing);
  }
});

test("whatever passes the schema is answered in finite figures, bands in order", () => {
  const sample = fc.array(goodTunes, { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(
      sample,
      fc.integer({ min: -400, max: 6000 }),
      fc.boolean(),
      (all, height, empty) => {
        const tunes = all.map(({ tune: { site, air, low, high } }) =>
          ownTuneSchema.parse({ site, ...(air && { air }), low, high }),
        );
        const { own_heater } = ownStartTune(empty ? EMPTY_ATLAS : fit, question(height, -5), tunes);
        for (const end of ENDS) {
          const { pump_Hz_exact, next_tune_bands_Hz, best_bands_Hz } = own_heater[end];
          for (const { lower, upper } of [...next_tune_bands_Hz, ...best_bands_Hz]) {
            expect(0 < lower && lower <= upper && Number.isFinite(upper)).toBe(true);
          }
          expect(pump_Hz_exact).toBeGreaterThan(0);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test("figures at the very edges of the schema are answered or set aside, never an exception", () => {
  const extreme: OwnTune = {
    site: { elevation_m: 20_000 },
    air: { temperature_C: 125, pressure_hPa: 400, humidity_pct: 100 },
    low: { pump_Hz: 1000, fan_rpm: 5, co_ppm: 10_000 },
    high: { pump_Hz: 0.03, fan_rpm: 20_000, co_below_ppm: 1 },
  };
  const { own_heater } = ownStartTune(fit, question(2000, 0), [ownTuneSchema.parse(extreme)]);
  expect(own_heater.tunes).toBe(0);
  expect(own_heater.set_aside.length).toBeGreaterThan(0);
});

test("a trip, too, begins from the heater itself", () => {
  const own_tunes = [own(300, 8, 1.12), own(900, 4, 1.12)];
  const trip = (heater: { own_tunes?: OwnTune[] }) =>
    planTrip(fit, {
      heater: { heat_kW: 5, ...heater },
      stops: [{ name: "Col", elevation_m: 2000, temperature_C: -5 }],
      window: WORKING_WINDOW,
      night: USUAL_NIGHT,
    }).stops[0]?.start;
  expect(trip({})?.low.pump_Hz_exact).toBe(startTune(fit, question(2000, -5)).low.pump_Hz_exact);
  expect(trip({ own_tunes })?.low.pump_Hz_exact).toBe(
    startForHeater(fit, question(2000, -5), own_tunes).low.pump_Hz_exact,
  );
  expect(trip({ own_tunes })?.low.pump_Hz_exact).toBe(
    ownStartTune(fit, question(2000, -5), own_tunes).own_heater.low.pump_Hz_exact,
  );
});

test("no own tune, or more than ten, is refused by name", () => {
  for (const many of [0, 11]) {
    const tunes = Array.from({ length: many }, (_, i) => own(100 * i, 0, 1));
    expect(() => ownStartTune(fit, question(2000, 0), tunes)).toThrow("own_tunes");
  }
});
