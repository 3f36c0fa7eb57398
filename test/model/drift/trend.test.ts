import { readFileSync } from "node:fs";
import { array, assert, double, integer, property, record } from "fast-check";
import { linearRegression } from "simple-statistics";
import { expect, test } from "vitest";
import { type TrendPoint, trendOf } from "../../../model/drift/trend.ts";

const norris = JSON.parse(readFileSync("test/reference/nist/Norris.json", "utf8"));
const plain = (x: number, y: number): TrendPoint => ({ x, y, z: 0, reading_variance: 0 });

test("slope and standard error are NIST's certified ones (Norris)", () => {
  const trend = trendOf(norris.x.map((x: number, i: number) => plain(x, norris.y[i])));
  const { estimate, sd } = norris.certified.parameters[1];
  expect((trend?.slope ?? 0) / estimate).toBeCloseTo(1, 10);
  expect((trend?.standard_error ?? 0) / sd).toBeCloseTo(1, 8);
  expect(trend?.free).toBe(norris.certified.degreesOfFreedom ?? norris.x.length - 2);
});

const point = record({
  x: integer({ min: 0, max: 400 }).map((hours) => hours / 100),
  y: double({ min: -1, max: 1, noNaN: true }),
});

test("without a nuisance the slope is simple-statistics'", () => {
  assert(
    property(array(point, { minLength: 4, maxLength: 30 }), (points) => {
      const trend = trendOf(points.map(({ x, y }) => plain(x, y)));
      if (!trend) return;
      const { m } = linearRegression(points.map(({ x, y }) => [x, y]));
      expect(trend.slope).toBeCloseTo(m, 8);
      expect(trend.interval.lower).toBeLessThanOrEqual(trend.slope);
      expect(trend.interval.upper).toBeGreaterThanOrEqual(trend.slope);
      expect(trend.evidence).toBeGreaterThan(0);
    }),
  );
});

test("what the nuisance explains is not the slope's, and the interval ends where the evidence says so", () => {
  const points = Array.from({ length: 12 }, (_, i) => ({
    x: i / 4,
    z: ((i * 7) % 5) / 10,
    y: 0.3 * (i / 4) + 2 * (((i * 7) % 5) / 10) + (i % 2 ? 0.05 : -0.05),
    reading_variance: 0,
  }));
  const trend = trendOf(points);
  expect(trend?.slope).toBeCloseTo(0.3, 1);
  // Taken off at the interval's end, what is left has evidence of exactly 20.
  const { lower = 0 } = trend?.interval ?? {};
  const less = points.map((p) => ({ ...p, y: p.y - lower * p.x }));
  expect(trendOf(less)?.evidence).toBeCloseTo(20, 6);
});

test("reading in steps lowers the evidence, equal readings give none, and nothing is made of nothing", () => {
  const rising = [0, 1, 2, 3, 4].map((x) => plain(x, x * 0.1));
  const sure = trendOf(rising)?.evidence ?? 0;
  const stepped = trendOf(rising.map((p) => ({ ...p, reading_variance: 0.01 })))?.evidence ?? 0;
  expect(stepped).toBeLessThan(sure);
  const level = trendOf([0, 1, 2, 3, 4].map((x) => plain(x, 2)));
  expect(level?.evidence).toBeLessThan(1);
  expect(trendOf([plain(0, 1), plain(1, 2)])).toBeNull();
  expect(trendOf([plain(1, 1), plain(1, 2), plain(1, 3)])).toBeNull();
  expect(() => trendOf([plain(Number.NaN, 1)])).toThrow(/x/);
});
