import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { METHOD_SCENARIOS, methodLines } from "../../client/atlas/bands/method-figures.ts";
import {
  ALONE,
  chance_points,
  coverageOf,
  OWN,
  widthOf,
} from "../../client/atlas/bands/off-claim.ts";
import type { StudyReport, StudyResult } from "../../client/atlas/bands/report.ts";
import { METHOD_PAGE, withFigures } from "./method-figures.ts";
import { modelHash } from "./model-hash.ts";

const page = readFileSync(METHOD_PAGE, "utf8");
const report: StudyReport = JSON.parse(readFileSync("client/atlas/bands/report.json", "utf8"));

/** The atlas's own figures of a scenario. */
function own(id: string, estimator = OWN): StudyResult & { runs: number } {
  const scenario = report.scenarios.find((s) => s.id === id);
  const result = scenario?.results.find((r) => r.estimator === estimator);
  if (!scenario || !result) throw new RangeError(`The report lacks ${estimator} in ${id}.`);
  return { ...result, runs: scenario.runs };
}

test("the report is of this model", () => {
  // When not: npm run study -- --full
  expect(report.model_sha256).toBe(modelHash());
});

test("the method page's tables are the report's figures and the code's numbers", () => {
  // When not: npm run study -- --figures
  expect(page).toBe(withFigures(page, report));
});

test("every line has the errors of four estimators by air and three coverages, as the report gives them", () => {
  const lines = methodLines(report);
  expect(lines.map(({ id }) => id)).toEqual(METHOD_SCENARIOS);
  for (const { errors_pct, held_pct } of lines) {
    expect(errors_pct.map((values) => values?.length ?? 4)).toEqual([4, 4, 4, 4]);
    expect(held_pct.map((values) => values.length)).toEqual([2, 2, 2]);
  }
});

/** Both sides: a band that holds too seldom misleads, one twice too wide says nothing. */
describe("what the method page claims of clean crowds", () => {
  test.each([
    "clean-8",
    "clean-50",
    "clean-200",
    "trade-clean-8",
    "trade-clean-30",
    "trade-clean-200",
  ])("%s", (id) => {
    const result = own(id);
    const within = (held: number, least: number, most: number, level: number, what: string) => {
      // Three standard errors: five airs and six crowds are looked at.
      const chance = 1.5 * chance_points(level, result.runs);
      expect(held, `${what} held too seldom`).toBeGreaterThan(least - chance);
      expect(held, `${what} held too often`).toBeLessThan(most + chance);
    };
    const level = (of: number) => report.levels.indexOf(of);
    for (const held of coverageOf(result, "new_heater")[level(0.8)] ?? [])
      within(held, 77, 86, 0.8, "new heater, 80 %");
    for (const held of coverageOf(result, "new_heater")[level(0.95)] ?? [])
      within(held, 93, 98, 0.95, "new heater, 95 %");
    // The second generator's best mixture bends in the densest air: a limit that the page names, and how far.
    const bends = id.startsWith("trade") ? 1 : 0;
    for (const held of coverageOf(result, "mean")[level(0.95)]?.slice(bends) ?? [])
      within(held, 91, 99.5, 0.95, "mean, 95 %");
    for (const bias of result.bias_pct.slice(0, bends)) expect(Math.abs(bias)).toBeLessThan(1.2);
  });
});

test("own tunes narrow the bands, which hold as often as they say", () => {
  for (const generator of ["first", "trade"] as const) {
    const of = (own_tunes: number) =>
      report.own_heaters.find(
        (o) => o.generator === generator && o.own_tunes === own_tunes && !o.one_doubled,
      ) as StudyReport["own_heaters"][number];
    const widths = [0, 1, 2, 3, 6].map((k) => of(k).next_95_half_pct[1] as number);
    expect(widths).toEqual([...widths].sort((p, q) => q - p));
    for (const k of [1, 2, 3, 6]) {
      const { heaters, next_80_held_pct, next_95_held_pct, best_80_held_pct, best_95_held_pct } =
        of(k);
      // Heaters beside one crowd share its fit: each crowd of forty tells as much as about ten.
      const chance = (level: number) => 1.5 * chance_points(level, heaters / 4);
      for (const held of [...next_80_held_pct, ...best_80_held_pct]) {
        expect(Math.abs(held - 80), `${generator}, ${k}`).toBeLessThan(3 + chance(0.8));
      }
      for (const held of [...next_95_held_pct, ...best_95_held_pct]) {
        expect(Math.abs(held - 95), `${generator}, ${k}`).toBeLessThan(2 + chance(0.95));
      }
    }
  }
});

/** Root-mean-square errors of a careful prototype and of the estimator before this one, whichever was better, % at 0 / 1,500 / 3,000 / 4,500 m. */
test.each<[id: string, most_pct: number[]]>([
  ["clean-200", [0.7, 0.7, 1.1, 1.6]],
  ["slips-20pct", [0.7, 0.8, 1.4, 2.1]],
  ["slips-40pct", [1.0, 1.1, 1.8, 2.6]],
  ["slip-feet-20pct", [0.8, 1.1, 2.1, 3.3]],
  ["fakes-spread-1.25x-20pct", [0.7, 0.7, 1.2, 1.8]],
  ["fakes-spread-1.25x-40pct", [0.6, 0.7, 1.1, 1.7]],
  ["fakes-sly-true-and-false-20pct", [0.8, 1.6, 2.7, 3.9]],
  ["lazy-40pct", [0.9, 0.9, 1.2, 1.7]],
])(
  "%s: the average is as near the truth as is known to be possible, chance beyond it",
  (id, most_pct) => {
    const { rmse_pct, runs } = own(id);
    most_pct.forEach((most, k) => {
      expect(rmse_pct[k + 1], `air ${k + 1}`).toBeLessThan(
        (most + 0.06) * (1 + 2 / Math.sqrt(2 * runs)) * 1.1,
      );
    });
  },
);

test("a class of three beside others like it: bands narrower than alone", () => {
  const [together, alone] = [own("pooling-alike-3"), own("pooling-alike-3", ALONE)];
  const level = report.levels.indexOf(0.95);
  (widthOf(together, "mean")[level] as number[]).forEach((width, air) => {
    expect(width).toBeLessThan(widthOf(alone, "mean")[level]?.[air] as number);
  });
});

test("a page without its comments, and a report without a scenario, are refused by name", () => {
  expect(() => withFigures("", report)).toThrow('"figures"');
  expect(() => methodLines({ ...report, scenarios: [] })).toThrow("clean-200");
});
