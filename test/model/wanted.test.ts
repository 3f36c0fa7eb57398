import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { averageAt, bandsAt } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import { priorGroup } from "../../model/fit/prior.ts";
import { xOf } from "../../model/fit/row.ts";
import { gain, mostWanted, oneMoreTune } from "../../model/wanted.ts";
import { crowd, seeded } from "./fit/simulated-crowd.ts";

const few = fitAtlas(crowd(seeded(5), 12)).groups[0] as GroupFit;

/** The inverse of a symmetric matrix of two rows. */
function inverse([[a, b], [, d]]: [[number, number], [number, number]]): typeof few.covariance {
  const det = a * d - b * b;
  return [
    [d / det, -b / det],
    [-b / det, a / det],
  ];
}

test("it is what adding the tune's information to the posterior's gives", () => {
  // Precision of a normal posterior after one more row: C⁻¹ + h hᵀ/V (e.g. Gelman et al., Bayesian Data Analysis, 14.2).
  for (const [elevation_m, temperature_C] of [
    [0, -25],
    [1800, 0],
    [4600, 5],
  ] as const) {
    const air = airAt(elevation_m, { temperature_C });
    const x = xOf(air.density_kg_m3);
    // Nothing but heaters apart: no mistakes, no pump's steps, no doses.
    const plain: GroupFit = {
      ...few,
      between: 0.08,
      own_slope: 0.1,
      within: 0.04,
      step_Hz: 0,
      dose: null,
      shares: { ...few.shares, honest: 1, feet: 0, slips: 0 },
    };
    const V = 0.08 ** 2 + (0.1 * x) ** 2 + 0.04 ** 2 + (few.slope * air.ln_density_sd) ** 2;
    const [[p, q], [, r]] = inverse(few.covariance);
    const after = inverse([
      [p + 1 / V, q + x / V],
      [q + x / V, r + (x * x) / V],
    ]);
    const then = bandsAt({ ...plain, covariance: after }, air.density_kg_m3).mean_bands;
    const { lower, upper } = then.find(({ level }) => level === 0.95) ?? { lower: 0, upper: 0 };
    const { pump_Hz_per_krpm } = bandsAt(plain, air.density_kg_m3);
    expect(oneMoreTune(plain, air).after).toBeCloseTo((50 * (upper - lower)) / pump_Hz_per_krpm, 9);
  }
});

test("the estimator fitted again with that tune narrows its band about as much", () => {
  for (const [elevation_m, temperature_C] of [
    [100, -20],
    [4800, 0],
  ] as const) {
    const rows = crowd(seeded(5), 12);
    const air = airAt(elevation_m, { temperature_C });
    const x = xOf(air.density_kg_m3);
    const average = averageAt(few, x);
    const fan_rpm = (rows[0] as (typeof rows)[0]).fan_rpm;
    const narrowed = [-0.08, 0, 0.08].map((off) => {
      const row = {
        ...(rows[0] as (typeof rows)[0]),
        row: "one more",
        contributor: "one more",
        cell: "a place of its own",
        density_kg_m3: air.density_kg_m3,
        ln_density_sd: air.ln_density_sd,
        dose_uL: undefined,
        pump_Hz: (Math.exp(average.centre + off) * fan_rpm) / 1000,
      };
      const again = fitAtlas([...rows, row]).groups[0] as GroupFit;
      return Math.sqrt(averageAt(again, x).variance / average.variance);
    });
    const mean = narrowed.reduce((sum, ratio) => sum + ratio) / narrowed.length;
    const { before, after } = oneMoreTune(few, air);
    expect(after / before).toBeLessThan(0.97);
    // The spreads are estimated anew as well.
    expect(Math.abs((1 - after / before) / (1 - mean) - 1)).toBeLessThan(0.35);
  }
});

test("the more owners, the less one more tune is wanted; where nobody has tuned it is wanted most", () => {
  const many = fitAtlas(crowd(seeded(5), 200)).groups[0] as GroupFit;
  const air = airAt(4800, { temperature_C: 5 });
  const gains = [priorGroup(few.heat_kW, few.end), few, many].map((group) =>
    gain(oneMoreTune(group, air)),
  );
  expect(gains).toEqual([...gains].sort((a, b) => b - a));
  for (const group of [few, many]) {
    const wanted = mostWanted(group);
    expect(wanted.length).toBeGreaterThan(1);
    const by = wanted.map(gain);
    expect(by).toEqual([...by].sort((a, b) => b - a));
    // One of each thousand metres, none in nights that do not occur there.
    const bands = wanted.map(({ elevation_m }) => Math.floor(Math.min(elevation_m, 4999) / 1000));
    expect(new Set(bands).size).toBe(bands.length);
    for (const { elevation_m, temperature_C, before, after } of wanted) {
      expect(oneMoreTune(group, airAt(elevation_m, { temperature_C }))).toEqual({
        before,
        after,
      });
      expect(temperature_C).toBeGreaterThanOrEqual(-30);
      expect(temperature_C).toBeLessThanOrEqual(15);
    }
  }
});
