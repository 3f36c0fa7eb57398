import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { FitRow } from "../../model/fit/row.ts";
import { leastSquares } from "../../model/fit/least-squares.ts";
import { LEVELS } from "./airs.ts";
import { bisquareByVotes } from "./rivals/bisquare-by-votes.ts";
import type { Fitted, Point } from "./rivals/estimator.ts";
import { coefficientVariance, huberLine } from "./rivals/huber.ts";
import { leastSquaresLine } from "./rivals/least-squares.ts";
import { madCutLine } from "./rivals/mad-cut.ts";
import { answers, type StraightLine } from "./rivals/straight-line.ts";
import { theilSenLine } from "./rivals/theil-sen.ts";

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

test("Theil–Sen's slope on cars is R's median of pairwise slopes", () => {
  const { slope } = theilSenLine(pointsOf(intervals.cars)) as StraightLine;
  expect(slope).toBeCloseTo(read("stats_theilsen.json").cars, 12);
});

/** Stack loss (Brownlee, 1960), three predictors: residuals, scale and standard errors of R's Huber fit (MASS 7.3). */
test("Huber's covariance gives the published standard errors of the stack loss data", () => {
  const { data, huber_tight } = read("stats_robust.json").stackloss;
  const { "stack.loss": y, ...predictors } = data as Record<string, number[]>;
  const design = (y as number[]).map((_, i) => [
    1,
    ...Object.values(predictors).map((column) => column[i] as number),
  ]);
  const coefficients = Object.values(huber_tight.coef as Record<string, number>);
  const residual = design.map((row, i) =>
    row.reduce((left, v, j) => left - v * (coefficients[j] as number), y?.[i] as number),
  );
  const unit = coefficientVariance(residual, huber_tight.scale, 4);
  const { unscaled_covariance } = leastSquares(design, y as number[]);
  for (const [j, se] of Object.values(huber_tight.se as Record<string, number>).entries()) {
    const got = Math.sqrt(unit * (unscaled_covariance[j]?.[j] as number));
    expect(Math.abs(got / se - 1)).toBeLessThan(1e-6);
  }
});

// By hand: at K·scale beyond the line a point pulls no more, so its distance does not matter.
test("Huber's line is least squares' while nothing is far off, and bounded when something is", () => {
  const x = Array.from({ length: 21 }, (_, i) => i / 10 - 1);
  const wave = (i: number) => 0.1 * (i % 2 === 0 ? 1 : -1);
  const line = (far: number) =>
    huberLine(x.map((v, i) => [v, 1 + 2 * v + wave(i) + (i === 20 ? far : 0)])) as StraightLine;
  const plain = leastSquaresLine(x.map((v, i) => [v, 1 + 2 * v + wave(i)])) as StraightLine;
  expect(line(0).slope).toBeCloseTo(plain.slope, 10);
  expect(line(1000).slope).toBeCloseTo(line(10).slope, 6);
  expect(Math.abs(line(1000).slope - 2)).toBeLessThan(0.15);
});

test("the cut sets aside what is far off and nothing else", () => {
  const points: Point[] = Array.from({ length: 30 }, (_, i) => [i, 3 + 2 * i + Math.sin(i)]);
  const wrong = points.map(([x, y], i): Point => (i === 25 || i === 4 ? [x, y + 90] : [x, y]));
  const cut = madCutLine(wrong);
  expect(cut?.kept.flatMap((kept, i) => (kept ? [] : [i]))).toEqual([4, 25]);
  const rest = leastSquaresLine(points.filter((_, i) => i !== 25 && i !== 4)) as StraightLine;
  expect(cut?.line).toEqual(rest);
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
  for (const lineOf of [leastSquaresLine, theilSenLine, huberLine, madCutLine]) {
    expect(lineOf(same)).toBeNull();
    expect(lineOf([same[0] as Point, [2, 2]])).toBeNull();
  }
});
