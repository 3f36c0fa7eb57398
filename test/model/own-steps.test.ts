import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { halfBand_pct } from "../../model/half-band.ts";
import { ownStartTune, startForHeater } from "../../model/own-start.ts";
import { bandByTune_pct } from "../../model/own-steps.ts";
import { startTune } from "../../model/start.ts";
import type { OwnTune } from "../../model/tune.ts";
import { inventedFit, TRUE_PER_KRPM, TRUE_SLOPE } from "./invented-fit.ts";

const fit = inventedFit();
const question = {
  heat_kW: 5,
  site: { elevation_m: 2400, elevation_sd_m: 0, elevation_source: "given" as const },
  air: { temperature_C: -8 },
};

/** A tune of a heater that draws so many times what the average one does. */
function own(elevation_m: number, times: number): OwnTune {
  const { density_ratio } = airAt(elevation_m, { temperature_C: 0 });
  const end = (fan_rpm: number, perKrpm: number) => ({
    fan_rpm,
    pump_Hz: perKrpm * density_ratio ** TRUE_SLOPE * (fan_rpm / 1000) * times,
    co_ppm: 12,
  });
  return {
    site: { elevation_m },
    air: { temperature_C: 0 },
    low: end(1650, TRUE_PER_KRPM.low),
    high: end(4400, TRUE_PER_KRPM.high),
  };
}

test("before any tune the band is the average heater's; after all of them it is the answer's; alike ones narrow it, each less than the one before", () => {
  const tunes = [own(300, 1.06), own(1500, 1.06), own(900, 1.06)];
  const steps = bandByTune_pct(fit, question, tunes);
  expect(steps).toHaveLength(4);
  expect(steps[0]).toBe(halfBand_pct(startTune(fit, question)));
  expect(steps[3]).toBe(halfBand_pct(startForHeater(fit, question, tunes)));
  const by = steps.slice(1).map((half, i) => (steps[i] as number) - half);
  for (const narrower of by) expect(narrower).toBeGreaterThan(0);
  expect(by[1]).toBeLessThan(by[0] as number);
  expect(by[2]).toBeLessThan(by[1] as number);
});

test("a tune that does not count does nothing", () => {
  const slip = own(1500, 10);
  const tunes = [own(300, 1.06), slip];
  expect(ownStartTune(fit, question, tunes).own_heater.set_aside.length).toBeGreaterThan(0);
  const [, before, after] = bandByTune_pct(fit, question, tunes);
  expect(after).toBeCloseTo(before as number, 1);
});
