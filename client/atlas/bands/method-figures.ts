import { type Band, coverageOf, OWN } from "./off-claim.ts";
import type { StudyReport, StudyResult, StudyScenario } from "./report.ts";

/** Scenarios by which the method is judged, in the order in which they are shown. */
export const METHOD_SCENARIOS = [
  ...[200, 50, 8, 3].map((contributors) => `clean-${contributors}`),
  ...[20, 30, 40].map((pct) => `slips-${pct}pct`),
  "slip-feet-20pct",
  "slip-ends-swapped-20pct",
  "slip-fahrenheit-20pct",
  "flood-70pct",
  "fakes-one-place-1.6x-40pct",
  "fakes-spread-1.6x-40pct",
  "fakes-spread-1.25x-20pct",
  "fakes-spread-1.25x-40pct",
  "fakes-spread-1.1x-20pct",
  "fakes-everywhere-1.35x-20pct",
  "fakes-sly-two-high-20pct",
  "fakes-sly-true-and-false-20pct",
  "lazy-40pct",
  "spread-heavy-tails",
  "spread-unequal-care",
  "air-no-temperature",
  "air-co-stated",
  "air-co-unstated",
  "pooling-alike-3",
  "pooling-apart-30",
  ...["clean-8", "clean-30", "clean-200", "clubs", "no-temperature-cold"].map(
    (id) => `trade-${id}`,
  ),
  "trade-feet-as-metres-20",
  "trade-ends-swapped-20",
  "trade-never-retuned-40",
  "trade-lies-high-40",
  "trade-lies-everywhere-20",
  "trade-doses-two-sizes-stated-100",
  "trade-doses-two-sizes-stated-0",
  "trade-stopped-early-30",
  "trade-copies-50-from-30",
  "trade-copies-80-from-30",
  "trade-as-people-are",
] as const;

/** Rivals first, the atlas's own estimator last. */
export const METHOD_ESTIMATORS = [
  "Least squares",
  "Hierarchical normal",
  "Bisquare by votes",
  OWN,
] as const;

const ERROR_AIRS = ["0 m", "1,500 m", "3,000 m", "4,500 m"];
const COVERAGE_AIRS = ["0 m", "4,500 m"];

/** Which band's coverage is shown, at which claimed level. */
export const METHOD_BANDS = [
  { band: "new_heater", level: 0.8 },
  { band: "new_heater", level: 0.95 },
  { band: "mean", level: 0.95 },
] as const;

/** One scenario's line: errors by estimator, then the atlas's own coverages, each by air. */
export interface MethodLine {
  id: string;
  title: string;
  /** Root-mean-square error of the average tune, %; null where an estimator could not answer in every run. */
  errors_pct: (number[] | null)[];
  held_pct: number[][];
}

/** @throws RangeError naming what the report lacks */
export function methodLines(report: StudyReport): MethodLine[] {
  const at = (labels: string[]) =>
    labels.map((label) => found(`air ${label}`, indexOf(report.airs, label)));
  const [errorAirs, coverageAirs] = [at(ERROR_AIRS), at(COVERAGE_AIRS)];
  return METHOD_SCENARIOS.map((id) => {
    const scenario = found(
      `scenario ${id}`,
      report.scenarios.find((s) => s.id === id),
    );
    const own = found(`${OWN} in ${id}`, resultOf(scenario, OWN));
    return {
      id,
      title: scenario.title,
      errors_pct: METHOD_ESTIMATORS.map((name) => {
        const result = resultOf(scenario, name);
        return result ? errorAirs.map((air) => found(id, result.rmse_pct[air])) : null;
      }),
      held_pct: METHOD_BANDS.map(({ band, level }) => {
        const byLevel = band === "mean" ? own.mean_coverage_pct : own.new_coverage_pct;
        const byAir = found(id, byLevel[report.levels.indexOf(level)]);
        return coverageAirs.map((air) => found(id, byAir[air]));
      }),
    };
  });
}

/** Of bands on clean data, the truth drawn from the belief: how often they held in the worst and in the best air, %. */
export interface CalibrationLine {
  contributors: number;
  runs: number;
  /** Each level's lowest and highest. */
  held_pct: Record<Band, [least: number, most: number][]>;
}

/** In order of contributors. */
export function calibrationLines({ scenarios }: StudyReport): CalibrationLine[] {
  return scenarios
    .filter(({ family, truth }) => family === "clean" && truth === "drawn")
    .map((scenario) => {
      const own = found(`${OWN} in ${scenario.id}`, resultOf(scenario, OWN));
      const range = (airs: number[]): [number, number] => [Math.min(...airs), Math.max(...airs)];
      return {
        contributors: scenario.contributors,
        runs: scenario.runs,
        held_pct: {
          new_heater: coverageOf(own, "new_heater").map(range),
          mean: coverageOf(own, "mean").map(range),
        },
      };
    });
}

function indexOf(airs: StudyReport["airs"], label: string): number | undefined {
  const air = airs.findIndex((a) => a.label === label);
  return air < 0 ? undefined : air;
}

function resultOf({ results }: StudyScenario, name: string): StudyResult | undefined {
  return results.find(({ estimator }) => estimator === name);
}

function found<T>(what: string, value: T | undefined): T {
  if (value === undefined) throw new RangeError(`The study's report has no ${what}.`);
  return value;
}
