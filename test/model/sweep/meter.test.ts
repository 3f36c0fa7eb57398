import { expect, test } from "vitest";
import { lagOf } from "../../../model/sweep/lag.ts";
import { settlingOf } from "../../../model/sweep/settling.ts";
import { type SweepReading, sweepOf } from "../../../model/sweep/setup.ts";
import { staysOf } from "../../../model/sweep/stays.ts";

const sweep = sweepOf({ end: "low", start_Hz: 1.1, bands_Hz: [] });

/** What an ideal meter of this lag shows on its way from 0 to 100 ppm. */
function rising(lag_s: number, times: readonly number[]): SweepReading[] {
  return times.map((time_s) => ({
    pump_Hz: 1.1,
    time_s,
    co_ppm: 100 * (1 - Math.exp(-time_s / lag_s)),
  }));
}

test("the time constant is learnt from readings on their way", () => {
  for (const lag_s of [10, 25, 60]) {
    const stays = staysOf(sweep, rising(lag_s, [10, 20, 40, 60, 90, 120]));
    expect(lagOf(sweep, stays).lag_s / lag_s).toBeGreaterThan(0.7);
    expect(lagOf(sweep, stays).lag_s / lag_s).toBeLessThan(1.3);
  }
  expect(lagOf(sweep, []).lag_s).toBeCloseTo(25, 0);
});

test("a slow meter is waited for longer, and what it will show is drawn out before", () => {
  const waits = [15, 25, 50].map((lag_s) => {
    const stays = staysOf(sweep, rising(lag_s, [20, 40]));
    const { level, wait_s } = settlingOf(sweep, stays[0] as (typeof stays)[0], lagOf(sweep, stays));
    expect(level?.ppm).toBeGreaterThan(75);
    expect(level?.ppm).toBeLessThan(130);
    return wait_s;
  });
  expect(waits).toEqual([...waits].sort((a, b) => a - b));
});

test("off the scale is certain at once when the reading went there, not when it came from there", () => {
  const lag = { lag_s: 25, ln_sd: 0.2 };
  const up = staysOf(sweep, [
    { pump_Hz: 1.1, time_s: 100, co_ppm: 50 },
    { pump_Hz: 1.3, time_s: 120, at_ceiling: true },
    { pump_Hz: 1.2, time_s: 130, at_ceiling: true },
  ]);
  const [, there, back] = up.map((stay) => settlingOf(sweep, stay, lag));
  expect(there?.level?.beyond).toBe("ceiling");
  expect(back?.settled).toBe(false);
  expect(back?.level).toBeUndefined();
});
