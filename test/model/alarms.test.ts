import { expect, test } from "vitest";
import { alarmsOf, LOOKED_BACK, THRESHOLDS } from "../../model/alarms.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { seeded } from "../../seed-demo/random.ts";
import { EMPTY_ATLAS, inventedFit } from "./invented-fit.ts";

const [base] = inventedFit().groups as [GroupFit];
const version = (group: GroupFit): PublishedFit => ({ ...EMPTY_ATLAS, groups: [group] });
const codes = (before: GroupFit[], now: GroupFit, rows: FitRow[] = []) =>
  alarmsOf(before.map(version), [now], rows).map(({ code }) => code);

/** Versions of one vote more each, their level moved so many standard errors of the change at each. */
function versions(moves: readonly number[]): GroupFit[] {
  let { votes, intercept } = base;
  return moves.map((errors) => {
    const se = Math.sqrt((base.covariance[0][0] ?? 0) / votes);
    intercept += errors * se;
    votes += 1;
    return { ...base, votes, intercept };
  });
}
const split = (all: GroupFit[]) => [all.slice(0, -1), all.at(-1) as GroupFit] as const;

test("small moves one way add up to a drift; the same moves to and fro, or one fair jump, do not", () => {
  const patient = split(versions(Array.from({ length: 15 }, () => 1.2)));
  expect(codes(...patient)).toEqual(["drift"]);
  const swaying = split(versions(Array.from({ length: 20 }, (_, k) => (k % 2 ? 2 : -2))));
  expect(codes(...swaying)).toEqual([]);
  const jump = split(versions([0, 0, 0, 4, 0, 0]));
  expect(codes(...jump)).toEqual([]);
});

test("the sentence of a drift says how far and over how many versions; what is older is forgotten", () => {
  const [before, now] = split(versions(Array.from({ length: 15 }, () => -1.2)));
  const [alarm] = alarmsOf(before.map(version), [now], []);
  expect(alarm).toMatchObject({ code: "drift", threshold: THRESHOLDS.drift });
  expect(alarm?.sentence).toMatch(/moved by -\d+\.\d % over the last 14 versions/);
  const calm = Array.from({ length: LOOKED_BACK + 1 }, () => now);
  expect(codes([...before, ...calm], now)).toEqual([]);
});

/**
 * Standard normal changes: on average a two-sided CUSUM of allowance 1/2 and interval 6 alarms once in 1,290 versions
 * (Siegmund 1985, eq. 2.57: (e^{2Δb} − 1 − 2Δb)/(2Δ²) to one side, Δ = 1/2, b = 6 + 1.166), so within 20 versions in under
 * 2 of 100.
 */
test("standard normal changes seldom alarm within the versions looked back on", () => {
  const random = seeded(5);
  const windows = 1000;
  let alarmed = 0;
  for (let k = 0; k < windows; k++) {
    const moves = Array.from({ length: LOOKED_BACK }, () => random.normal());
    if (codes(...split(versions(moves))).length > 0) alarmed++;
  }
  expect(alarmed / windows).toBeLessThan(0.02);
});

test("a spread that falls while ever more votes may be copies is told, one that falls without is not", () => {
  const wide = { ...base, spread: 0.1, may_copy: 0.05 };
  expect(codes([wide, wide], { ...wide, spread: 0.07, may_copy: 0.4 })).toEqual(["copies"]);
  expect(codes([wide, wide], { ...wide, spread: 0.07, may_copy: 0.06 })).toEqual([]);
  expect(codes([wide, wide], { ...wide, spread: 0.09, may_copy: 0.4 })).toEqual([]);
});

test("rows along a parabola bend, rows along a line do not", () => {
  const random = seeded(8);
  const rowsOf = (bend: number): FitRow[] =>
    Array.from({ length: 80 }, (_, k) => {
      const x = -0.45 * (k / 79);
      const y = -0.4 + 0.9 * x + bend * (x + 0.225) ** 2 + 0.05 * random.normal();
      return {
        row: k,
        contributor: `owner ${k}`,
        heat_kW: 5,
        end: "low" as const,
        density_kg_m3: 1.225 * Math.exp(x),
        pump_Hz: 1.7 * Math.exp(y),
        fan_rpm: 1700,
      };
    });
  const [straight, bent] = [0, 3].map((bend) => {
    const rows = rowsOf(bend);
    return alarmsOf([], fitAtlas(rows).groups, rows);
  });
  expect(straight).toEqual([]);
  expect(bent?.map(({ code }) => code)).toEqual(["curvature"]);
  expect(bent?.[0]?.sentence).toContain("bends up");
});

test("below eight owners nothing is news, and without rows nothing fails", () => {
  const few = { ...base, contributors: 7 };
  expect(codes([few], { ...few, intercept: few.intercept + 1 })).toEqual([]);
  expect(alarmsOf([], [], [])).toEqual([]);
});
