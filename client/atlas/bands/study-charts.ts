import { locale } from "../../language.ts";
import { b } from "../../texts/bands.ts";
import { shortEstimatorName } from "../../texts/estimators.ts";
import type { LabelledLine } from "../../ui/charts/end-labels.ts";
import { labelledLines } from "../../ui/charts/labelled-lines.ts";
import { format } from "../../units.ts";
import { airName } from "./air-name.ts";
import { type Band, CORRIDOR_points, coverageOf, offBy, ownResult } from "./off-claim.ts";
import type { StudyReport, StudyScenario } from "./report.ts";
import { scenarioTitle } from "./scenario-title.ts";

/** How far the axis reaches at least, points. */
const LEAST_REACH_points = 3;
/** Ticks of the error's logarithmic axis, %. */
const TICKS_pct = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

export interface Shown {
  report: StudyReport;
  scenario: StudyScenario;
}

/** By air: observed less claimed coverage at each claimed level, so that the corridor is wide enough to be seen. */
export function coverageLines({ report, scenario }: Shown, band: Band): LabelledLine[] {
  const result = ownResult(scenario);
  if (!result) return [];
  return report.airs.map(({ label }, air) => ({
    number: air,
    label: airName(label),
    values: report.levels.map((level, l) =>
      offBy(coverageOf(result, band)[l]?.[air] ?? Number.NaN, level),
    ),
  }));
}

export function coverageChart(shown: Shown, band: Band, width: number): SVGSVGElement {
  const lines = coverageLines(shown, band);
  const all = lines.flatMap(({ values }) => values);
  return labelledLines({
    name: b.coverageChart(b.bands[band], scenarioTitle(shown.scenario)),
    width,
    lines,
    keyed: true,
    x: { steps: shown.report.levels.map((level) => format(100 * level)) },
    y: {
      domain: [
        Math.floor(Math.min(-LEAST_REACH_points, ...all)),
        Math.ceil(Math.max(LEAST_REACH_points, ...all)),
      ],
      format: b.signed,
    },
    corridor: [-CORRIDOR_points, CORRIDOR_points],
  });
}

/** By estimator: error of the average tune in each air. */
export function errorLines({ scenario }: Shown): LabelledLine[] {
  return scenario.results.map(({ estimator, rmse_pct }, number) => ({
    number,
    label: shortEstimatorName(estimator),
    values: rmse_pct,
  }));
}

export function errorChart(shown: Shown, width: number): SVGSVGElement {
  const lines = errorLines(shown);
  const all = lines.flatMap(({ values }) => values);
  const from = TICKS_pct.findLast((tick) => tick < Math.min(...all)) ?? 0.1;
  const to = TICKS_pct.find((tick) => tick > Math.max(...all)) ?? Math.max(...all);
  return labelledLines({
    name: b.errorChart(scenarioTitle(shown.scenario)),
    width,
    lines,
    keyed: true,
    x: { steps: shown.report.airs.map(({ label }) => tickOf(airName(label))) },
    y: {
      domain: [from, to],
      ticks: TICKS_pct.filter((tick) => tick >= from && tick <= to),
      log: true,
      format: (value) => value.toLocaleString(locale),
    },
  });
}

/** An elevation, whose unit the axis names; one with its temperature would not fit beside the next on one line. */
function tickOf(air: string): string {
  return air.includes(", ") ? air.replace(", ", "\n") : air.replace(/\sm$/, "");
}
