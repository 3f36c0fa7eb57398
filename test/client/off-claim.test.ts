import { expect, test } from "vitest";
import { beyondChance, chance_points, offClaim } from "../../client/atlas/bands/off-claim.ts";
import type { StudyReport, StudyScenario } from "../../client/atlas/bands/report.ts";
import { b } from "../../client/texts/bands.ts";

const AIRS = [
  { label: "low", density_kg_m3: 1.225 },
  { label: "high", density_kg_m3: 0.8 },
];

/** A scenario whose 95 % bands held so many in 100 in the two airs. */
function scenario(id: string, mean: [number, number], new_heater: [number, number]): StudyScenario {
  const result = {
    estimator: "Hypsotune",
    rmse_pct: [1, 1],
    bias_pct: [0, 0],
    mean_coverage_pct: [[50, 50], mean],
    new_coverage_pct: [[50, 50], new_heater],
    mean_width_pct: [
      [1, 1],
      [2, 2],
    ],
    new_width_pct: [
      [10, 10],
      [20, 20],
    ],
    false_rejection_pct: null,
    caught_pct: null,
  };
  return {
    id,
    title: id,
    family: "clean",
    truth: "fixed",
    contributors: 30,
    runs: 1000,
    // A rival that fails everywhere is not what is asked about.
    results: [
      result,
      {
        ...result,
        estimator: "rival",
        mean_coverage_pct: [
          [0, 0],
          [0, 0],
        ],
      },
    ],
  };
}

const reportOf = (...scenarios: StudyScenario[]): StudyReport => ({
  code: "0",
  size: "quick",
  seed: 1,
  airs: AIRS,
  levels: [0.5, 0.95],
  model_sha256: "",
  own_heaters: [],
  alarms: [],
  ablation: [],
  sensitivity: [],
  scenarios,
});

test("bands within the corridor, its edges too, are not listed, and the sentence says there are none", () => {
  const report = reportOf(
    scenario("good", [95, 94.2], [95.3, 96]),
    scenario("edge", [93.5, 95], [95, 96.5]),
  );
  expect(offClaim(report)).toEqual({ narrow: [], wide: [] });
  expect(b.verdict(2, 0, 0, "1.5")).toMatch(/^In none of the 2 scenarios/);
});

test("too narrow is told from too wide, each worst first, with the air of each band's worst", () => {
  const { narrow, wide } = offClaim(
    reportOf(
      scenario("cautious", [97, 95], [95, 96.6]),
      scenario("a little", [93.4, 95], [95, 95]),
      scenario("more cautious", [95, 100], [95, 95]),
      scenario("both", [100, 95], [95, 80.5]),
    ),
  );
  expect(narrow.map(({ scenario, off_points }) => [scenario.id, off_points])).toEqual([
    ["both", -14.5],
    ["a little", -1.6],
  ]);
  expect(narrow[0]).toMatchObject({
    new_heater: { held_pct: 80.5, air: "high" },
    mean: { held_pct: 95, air: "high" },
  });
  expect(wide.map(({ scenario, off_points }) => [scenario.id, off_points])).toEqual([
    ["more cautious", 5],
    ["cautious", 2],
  ]);
});

test("chance moves a 95 of 1,000 runs by 1.35 points", () => {
  // Binomial: 1.96 × √(0.95 × 0.05 ÷ 1000).
  expect(chance_points(0.95, 1000)).toBeCloseTo(1.351, 3);
  const [first] = offClaim(reportOf(scenario("a little", [93.4, 95], [95, 95]))).narrow;
  expect(first && beyondChance(first)).toBe(true);
});
