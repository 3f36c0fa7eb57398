import { expect, test } from "vitest";
import { standardDensity } from "../../../model/air.ts";
import { newHeaterAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import { studentCdf } from "../../../model/numerics/student-cdf.ts";
import { type Mixture, ownHeaterAt, quantileOf } from "../../../model/own-heater.ts";
import { lnRatio } from "../../study/airs.ts";
import { FIXED, heaterOf, tuned } from "../../study/population.ts";
import { crowd, seeded } from "./simulated-crowd.ts";

const group = fitAtlas(crowd(seeded(3), 200)).groups[0] as GroupFit;
const half = (mixture: Mixture, level: number) =>
  (quantileOf(mixture, (1 + level) / 2) - quantileOf(mixture, (1 - level) / 2)) / 2;

test("one good tune of equal air: the shrinkage of a mean of one (worked by hand)", () => {
  // A line known without doubt, no own slopes, no slips: centre = τ²/(τ² + σ²)·r, variance τ²σ²/(τ² + σ²) (Robinson 1991).
  const known: GroupFit = {
    ...group,
    intercept: 0,
    slope: 1,
    covariance: [
      [0, 0],
      [0, 0],
    ],
    between: 0.08,
    within: 0.06,
    own_slope: 0,
    step_Hz: 0,
    spread_df: 1e9,
  };
  const { best, next } = ownHeaterAt(known, [{ x: 0, y: 0.1, variance: 0 }], 0);
  const good = best[0] as Mixture[0];
  expect(good.centre).toBeCloseTo(0.064, 12);
  expect(good.variance).toBeCloseTo((0.0064 * 0.0036) / 0.01, 12);
  expect(next[0]?.variance).toBeCloseTo((0.0064 * 0.0036) / 0.01 + 0.0036, 12);
});

test("without own tunes it is a new heater; each good one narrows the bands, a doubled one is named and left out", () => {
  const x = lnRatio(standardDensity(3000));
  const random = seeded(11);
  const heater = heaterOf(random, FIXED);
  const row = (height_m: number, times = 1) => {
    const at = lnRatio(standardDensity(height_m));
    return { x: at, y: tuned(random, FIXED, heater, at) + Math.log(times), variance: 1e-4 };
  };
  const none = ownHeaterAt(group, [], x);
  expect(none.next[0]?.variance).toBeCloseTo(
    newHeaterAt({ ...group, tail_df: 1e9 }, x).variance,
    6,
  );
  const rows = [row(200), row(1500), row(900)];
  const widths = [0, 1, 2, 3].map((k) => half(ownHeaterAt(group, rows.slice(0, k), x).next, 0.95));
  expect(widths).toEqual([...widths].sort((p, q) => q - p));
  const { mistaken, next } = ownHeaterAt(group, [...rows, row(500, 2)], x);
  expect(mistaken.map((p) => p > 0.5)).toEqual([false, false, false, true]);
  expect(half(next, 0.95)).toBeLessThan(1.1 * (widths[3] as number));
});

test("the bands hold the next tune and the best setting as often as they say, and not much oftener", () => {
  // Simulated heaters (nothing outside the project): 1,000 of them with two own tunes each.
  const random = seeded(12);
  let [next, best] = [0, 0];
  const heaters = 1000;
  for (let h = 0; h < heaters; h++) {
    const heater = heaterOf(random, FIXED);
    const rows = [0, 1].map(() => {
      const at = lnRatio(standardDensity(3000 * random.uniform() ** 2));
      return { x: at, y: tuned(random, FIXED, heater, at), variance: 0 };
    });
    const x = lnRatio(standardDensity(3000 * random.uniform()));
    const own = ownHeaterAt(group, rows, x);
    const holds = (mixture: Mixture, y: number) =>
      Number(y > quantileOf(mixture, 0.1) && y < quantileOf(mixture, 0.9));
    next += holds(own.next, tuned(random, FIXED, heater, x));
    best += holds(own.best, FIXED.intercept + FIXED.slope * x + heater.own);
  }
  for (const share of [next / heaters, best / heaters]) {
    expect(share).toBeGreaterThan(0.76);
    expect(share).toBeLessThan(0.86);
  }
});

test("distribution function of Student's t against its closed form", () => {
  // ν = 2: F(t) = ½ + t/(2√(2 + t²)) (Johnson, Kotz & Balakrishnan 1995, ch. 28).
  for (const t of [-3, -0.5, 0, 1, 4]) {
    expect(studentCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 12);
  }
});

test("more own tunes than are taken, and no tunes that are none", () => {
  const many = Array.from({ length: 11 }, () => ({ x: 0, y: 0, variance: 0 }));
  expect(() => ownHeaterAt(group, many, 0)).toThrow("At most 10 own tunes");
});
