import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { FitRow } from "../../model/fit/row.ts";
import { LEVELS } from "./airs.ts";
import { bisquareByVotes } from "./rivals/bisquare-by-votes.ts";
import type { Fitted, Point } from "./rivals/estimator.ts";
import { hierarchicalNormal } from "./rivals/hierarchical-normal.ts";
import { leastSquaresLine } from "./rivals/least-squares.ts";
import { answers, type StraightLine } from "./rivals/straight-line.ts";

const read = (file: string) => JSON.parse(readFileSync(`test/reference/${file}`, "utf8"));
const intervals = read("stats_prediction_intervals.json");
const pointsOf = ({ x, y }: { x: number[]; y: number[] }): Point[] =>
  x.map((value, i) => [value, y[i] as number]);

/** Figures of R 4.2.2 on cars (Ezekiel, 1930) and Toluca (Kutner et al.), as the reference file says. */
describe.each(["cars", "toluca"])("least squares on %s", (name) => {
  const at = answers(leastSquaresLine(pointsOf(intervals[name])) as StraightLine);
  const known = intervals[name].bands.filter((b: { level: number }) =>
    (LEVELS as readonly number[]).includes(b.level),
  );

  test("fit, confidence and prediction intervals equal R's", () => {
    expect(known.length).toBeGreaterThan(5);
    for (const { x, level, fit, confLow, confHigh, predLow, predHigh } of known) {
      const { centre, mean, another } = at(x);
      const i = LEVELS.indexOf(level);
      const got = [centre, mean[i]?.lower, mean[i]?.upper, another[i]?.lower, another[i]?.upper];
      for (const [k, value] of [fit, confLow, confHigh, predLow, predHigh].entries()) {
        expect(Math.abs((got[k] as number) / value - 1)).toBeLessThan(1e-9);
      }
    }
  });
});

/**
 * By hand: two owners' means stand apart by far more than their rows scatter, so the ratio is large and the slope is that
 * within owners.
 */
test("the hierarchical normal model takes the slope within owners where owners differ", () => {
  const rows = [0, 1, 2, 3].flatMap((owner) =>
    [0, 1, 2].map((k) => {
      const x = -0.1 * k - 0.05 * owner;
      return {
        row: `${owner} ${k}`,
        contributor: `${owner}`,
        heat_kW: 5,
        end: "low" as const,
        density_kg_m3: 1.225 * Math.exp(x),
        pump_Hz: Math.exp(0.9 * x + 0.3 * (owner % 2) + 0.001 * (k % 2)),
        fan_rpm: 1000,
      };
    }),
  );
  const fitted = hierarchicalNormal.fit(rows, { heat_kW: 5, end: "low" }) as Fitted;
  expect(fitted.at(0).centre - fitted.at(-0.1).centre).toBeCloseTo(0.09, 3);
});

/** By hand: three of the four voices say 1·x, whatever the fourth says and however often. */
test("the bisquare by votes hears one voice of each contributor, and √k of k at one place", () => {
  const rows = (contributor: string, times: number, cell: string, count = 1) =>
    Array.from({ length: count }, (_, i) => {
      const density_kg_m3 = 1.225 * (1 - 0.02 * (i % 15));
      const pump_Hz = (density_kg_m3 / 1.225) ** 0.95 * times;
      return {
        row: `${contributor} ${i}`,
        contributor,
        cell,
        heat_kW: 5,
        end: "low" as const,
        density_kg_m3,
        pump_Hz,
        fan_rpm: 1000,
      };
    });
  const at = (of: FitRow[]) =>
    (bisquareByVotes.fit(of, { heat_kW: 5, end: "low" }) as Fitted).at(0).centre;
  const honest = ["a", "b", "c"].flatMap((name) => rows(name, 1, name, 15));
  expect(at(honest)).toBeCloseTo(0, 9);
  expect(at([...honest, ...rows("flood", 1.5, "d", 500)])).toBeCloseTo(0, 9);
  // One of two voices, near enough that both are heard; then nine at one place: three of four.
  const other = Math.log(1.1);
  expect(at([...rows("a", 1, "a", 15), ...rows("b", 1.1, "b", 90)])).toBeCloseTo(other / 2, 3);
  const nine = Array.from({ length: 9 }, (_, i) => rows(`n${i}`, 1.1, "one place", 15)).flat();
  expect(at([...rows("a", 1, "a", 15), ...nine])).toBeCloseTo((3 / 4) * other, 2);
});

test("no line of two points, nor of points in the same air", () => {
  const same: Point[] = [
    [1, 1],
    [1, 2],
    [1, 3],
  ];
  for (const lineOf of [leastSquaresLine]) {
    expect(lineOf(same)).toBeNull();
    expect(lineOf([same[0] as Point, [2, 2]])).toBeNull();
  }
});
