import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  calibrationLines,
  METHOD_SCENARIOS,
  methodLines,
} from "../../client/study/method-figures.ts";
import { BANDS, CORRIDOR_points, chance_points } from "../../client/study/off-claim.ts";
import type { StudyReport } from "../../client/study/report.ts";
import { alarmsOf } from "../../model/fit/alarms.ts";
import { AtlasLedger } from "../../model/fit/atlas-ledger.ts";
import type { FitRow, GroupFit, PublishedFit } from "../../model/fit/group.ts";
import { FIT_SETTINGS as S } from "../../model/fit/settings.ts";
import { METHOD_PAGE, withFigures } from "./method-figures.ts";
import { FIXED, seeded } from "./population.ts";
import { scenarioOf } from "./scenarios/all.ts";

const page = readFileSync(METHOD_PAGE, "utf8");
const report: StudyReport = JSON.parse(readFileSync("client/study/report.json", "utf8"));

test("the method page's tables are the report's figures and the code's numbers", () => {
  // When not: npm run study -- --figures
  expect(page).toBe(withFigures(page, report));
});

test("every line has five errors by air and three coverages, as the report gives them", () => {
  const lines = methodLines(report);
  expect(lines.map(({ id }) => id)).toEqual(METHOD_SCENARIOS);
  for (const { errors_pct, held_pct } of lines) {
    expect(errors_pct.map((values) => values?.length)).toEqual([4, 4, 4, 4, 4]);
    expect(held_pct.map((values) => values.length)).toEqual([2, 2, 2]);
  }
  const clean = report.scenarios.find(({ id }) => id === "clean-200")?.results[0];
  expect(lines[0]?.errors_pct[4]).toEqual(clean?.rmse_pct.slice(1));
  expect(lines[0]?.held_pct[0]?.[1]).toBe(clean?.new_coverage_pct[1]?.[4]);
});

test("from eight contributors up both bands hold within 1.5 points of their claim, chance beyond it", () => {
  const lines = calibrationLines(report).filter(({ contributors }) => contributors >= 8);
  expect(lines.map(({ contributors }) => contributors)).toEqual([
    8, 15, 30, 50, 100, 200, 1000, 10_000,
  ]);
  for (const { contributors, runs, held_pct } of lines) {
    for (const band of BANDS) {
      held_pct[band].forEach(([least, most], i) => {
        const level = report.levels[i] as number;
        const corridor = CORRIDOR_points + chance_points(level, runs) / 2;
        const name = `${contributors} contributors, ${band}, ${level}`;
        expect(100 * level - least, name).toBeLessThanOrEqual(corridor);
        expect(most - 100 * level, name).toBeLessThanOrEqual(corridor);
      });
    }
  }
});

test("a page without its comments, and a report without a scenario, are refused by name", () => {
  expect(() => withFigures("", report)).toThrow('"figures"');
  expect(() => methodLines({ ...report, scenarios: [] })).toThrow("clean-200");
});

test("numbers in the prose are those of the code", () => {
  for (const phrase of [
    `b ~ N(${S.prior_slope}, ${S.prior_slope_sd}²), ${S.least_slope} ≤ b ≤ ${S.most_slope}`,
    `N(common practice, ${S.prior_intercept_sd}²)`,
    `${S.co_doubles_at}²·(C/${S.usual_co_ppm} − 1)`,
    `(${S.own_slope_sd}·Δx)²`,
    `f = b·${S.unstated_density_sd}²·W/I,   κ = f⁴/(f⁴ + (${S.flattening_corrected_from}·e)⁴)`,
    `Σ(x) + ${S.flattening_left_as_variance}·((1 − κ)·f·(x − x̄))²`,
    `(${S.level_bias}·u/(u + ${S.level_bias_half_at}))² + (${S.bias_against_steps}·max(0, |z| − ${S.harmless_against_steps}))²`,
    `(${S.bias_per_share}·max(0, u − ${S.harmless_share})²)²`,
    `N/(N + ${S.growth_votes})`,
    `(${S.model_folds}·M + F·G)/(${S.model_folds} + F)`,
    `q = (${S.model_folds} + F)²/(${S.model_folds}²/d + F)`,
    `the slope's variance is taken times ${1 + (S.untold_slope ?? Number.NaN)}`,
    `T_ν(${S.kept_share})`,
    `*taken as known* (${100 * (S.start_spread ?? Number.NaN)} %)`,
    `over F folds, of ${S.folds},`,
  ]) {
    expect(page).toContain(phrase);
  }
});

/** Liars about high places, who join an honest crowd at once or a few at a time. */
describe.each(["fakes-sly-true-and-false-20pct", "fakes-spread-1.25x-20pct"])("%s", (id) => {
  test.each([50, 5])("raises an alarm in each of ten runs, %i joining at a time", (together) => {
    for (let run = 0; run < 10; run++) {
      const { rows } = scenarioOf(id).make(seeded(run), FIXED);
      const honest = rows.filter((row) => liar(row) === null);
      const ledger = new AtlasLedger();
      ledger.load(honest);
      const alone = ledger.fit();
      expect(alarmsOf(published(alone), alone, ledger.surges())).toEqual([]);
      expect(alarmsWhile(ledger, rows, together), `run ${run}`).toBeGreaterThan(0);
    }
  });
});

function alarmsWhile(ledger: AtlasLedger, rows: readonly FitRow[], together: number): number {
  let [alarms, before] = [0, ledger.fit()];
  for (let first = 0; first < 50; first += together) {
    for (const row of rows) {
      const liarsNumber = liar(row);
      if (liarsNumber !== null && liarsNumber >= first && liarsNumber < first + together) {
        ledger.put(row);
      }
    }
    const after = ledger.fit();
    alarms += alarmsOf(published(before), after, ledger.surges()).length;
    before = after;
  }
  return alarms;
}

function liar({ contributor }: FitRow): number | null {
  const number = /^fake(\d+)$/.exec(contributor)?.[1];
  return number === undefined ? null : Number(number);
}

function published(groups: GroupFit[]): PublishedFit {
  return {
    version: "before",
    published_at: null,
    code: "",
    settings: {},
    rows_sha256: null,
    demo: true,
    groups,
    alarms: [],
  };
}
