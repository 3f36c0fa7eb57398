import { csvOf } from "../../../model/csv.ts";
import { BANDS, coverageOf, ownResult, widthOf } from "./off-claim.ts";
import type { StudyReport, StudyScenario } from "./report.ts";

const SCENARIO = ["scenario", "runs"] as const;

/** Coverage and median half-width of the atlas's own bands, by band, air and level; comma-separated by RFC 4180, units in the columns' names. */
export function coverageCsv(report: StudyReport, scenario: StudyScenario): string {
  const result = ownResult(scenario);
  const rows = BANDS.flatMap((band) =>
    report.airs.flatMap(({ label, density_kg_m3 }, air) =>
      report.levels.map((level, l) => [
        scenario.id,
        scenario.runs,
        band,
        label,
        rounded(density_kg_m3),
        rounded(100 * level),
        (result && coverageOf(result, band)[l]?.[air]) ?? "",
        (result && widthOf(result, band)[l]?.[air]) ?? "",
      ]),
    ),
  );
  return csvOf(
    [...SCENARIO, "band", "air", "density_kg_m3", "claimed_pct", "observed_pct", "half_width_pct"],
    rows,
  );
}

/** Errors of every estimator that could answer, by air. */
export function errorCsv(report: StudyReport, scenario: StudyScenario): string {
  const rows = scenario.results.flatMap(({ estimator, rmse_pct, bias_pct }) =>
    report.airs.map(({ label, density_kg_m3 }, air) => [
      scenario.id,
      scenario.runs,
      estimator,
      label,
      rounded(density_kg_m3),
      rmse_pct[air] ?? "",
      bias_pct[air] ?? "",
    ]),
  );
  return csvOf([...SCENARIO, "estimator", "air", "density_kg_m3", "rmse_pct", "bias_pct"], rows);
}

const rounded = (value: number) => Number(value.toFixed(4));
