import {
  calibrationLines,
  METHOD_BANDS,
  METHOD_ESTIMATORS,
  type MethodLine,
  methodLines,
} from "../../client/atlas/bands/method-figures.ts";
import { BANDS } from "../../client/atlas/bands/off-claim.ts";
import type { StudyReport } from "../../client/atlas/bands/report.ts";
import { format } from "../../client/units.ts";
import { THRESHOLDS } from "../../model/alarms.ts";
import { NUMERICS, SETTINGS } from "../../model/fit/settings.ts";

export const METHOD_PAGE = "docs/method.md";

const BAND_NAMES = { new_heater: "new heater", mean: "mean" };
const list = (values: readonly number[]) => values.map((v) => format(v, 1)).join(" / ");

/** The document with its tables made again: figures from the report, chosen numbers from the code. */
export function withFigures(document: string, report: StudyReport): string {
  const withStudy = replaced(document, "figures", figuresOf(report));
  const withBands = replaced(withStudy, "calibration", calibrationOf(report));
  const withOwn = replaced(withBands, "own heaters", ownHeatersOf(report));
  const withParts = replaced(withOwn, "ablation", ablationOf(report));
  const withAlarms = replaced(withParts, "alarms", alarmsOf(report));
  return replaced(withAlarms, "chosen numbers", chosenNumbers(report));
}

/** What stands between the two comments of that name. */
function replaced(document: string, name: string, text: string): string {
  const [begin, end] = [`<!-- ${name}: begin -->`, `<!-- ${name}: end -->`];
  const [from, to] = [document.indexOf(begin), document.indexOf(end)];
  if (from < 0 || to < from)
    throw new RangeError(`${METHOD_PAGE} has lost its "${name}" comments.`);
  return `${document.slice(0, from + begin.length)}\n${text}\n${document.slice(to)}`;
}

function figuresOf(report: StudyReport): string {
  const runs = report.scenarios.map((s) => s.runs);
  const size = `Code ${report.code}, ${report.size} size, seed ${report.seed}, ${Math.min(...runs)} to ${Math.max(...runs)} runs of each scenario.`;
  const bands = METHOD_BANDS.map(({ band, level }) => `${BAND_NAMES[band]} ${100 * level} %`);
  const header = ["scenario", ...METHOD_ESTIMATORS, ...bands];
  return `${size}\n\n${table([header, ...methodLines(report).map(cells)])}`;
}

function calibrationOf(report: StudyReport): string {
  const header = BANDS.flatMap((band) =>
    report.levels.map((level) => `${BAND_NAMES[band]} ${100 * level} %`),
  );
  const rows = calibrationLines(report).map(({ contributors, runs, held_pct }) => [
    format(contributors),
    format(runs),
    ...BANDS.flatMap((band) =>
      held_pct[band].map((ends) => ends.map((v) => format(v, 1)).join("–")),
    ),
  ]);
  return table([["owners", "runs", ...header], ...rows]);
}

function ownHeatersOf({ own_heaters }: StudyReport): string {
  const header = [
    "generator",
    "own tunes",
    "next tune: held at 80 %",
    "at 95 %",
    "± % at 95 %",
    "best setting: held at 80 %",
    "at 95 %",
    "± % at 95 %",
  ];
  const rows = own_heaters.map((of) => [
    of.generator,
    `${of.own_tunes}${of.one_doubled ? ", one doubled" : ""}`,
    ...[of.next_80_held_pct, of.next_95_held_pct, of.next_95_half_pct].map(list),
    ...[of.best_80_held_pct, of.best_95_held_pct, of.best_95_half_pct].map(list),
  ]);
  return table([header, ...rows]);
}

function ablationOf({ ablation }: StudyReport): string {
  const header = ["part", "crowd", "runs", "error", "mean", "new", "±"];
  const rows = ablation.map(({ part, scenario, runs, with_it, without_it }) => [
    part,
    `\`${scenario}\``,
    format(runs),
    ...(["rmse_pct", "mean_95_held_pct", "new_95_held_pct", "new_95_half_pct"] as const).map(
      (figure) => `${format(without_it[figure], 1)} → ${format(with_it[figure], 1)}`,
    ),
  ]);
  return table([header, ...rows]);
}

function alarmsOf({ alarms }: StudyReport): string {
  const codes = Object.keys(THRESHOLDS);
  const header = ["generator", "who comes", "versions", "any", ...codes, "crowds"];
  const rows = alarms.map((of) => [
    of.generator,
    of.liar ? "one liar, key by key" : "honest owners",
    format(of.fits),
    format(of.with_alarm_pct, 1),
    ...codes.map((code) => format(of.by_code_pct[code] ?? 0, 1)),
    format(of.crowds_with_alarm_pct, 1),
  ]);
  return table([header, ...rows]);
}

function cells({ id, title, errors_pct, held_pct }: MethodLine): string[] {
  const errors = errors_pct.map((values) => (values ? list(values) : "–"));
  return [`\`${id}\`: ${title}`, ...errors, ...held_pct.map(list)];
}

function chosenNumbers({ sensitivity }: StudyReport): string {
  const moves = (name: string) =>
    sensitivity
      .filter((of) => of.name === name)
      .map((of) => list([of.average_pct, of.mean_width_pct, of.new_width_pct]));
  const fit = Object.entries({ ...SETTINGS, ...NUMERICS }).map(([name, value]) => [
    `\`${name}\``,
    rounded(value),
    ...moves(name),
  ]);
  const alarms = Object.entries(THRESHOLDS).map(([code, value]) => [
    `\`alarm: ${code}\``,
    `${value}`,
  ]);
  const crowds = [...new Set(sensitivity.map(({ scenario }) => `\`${scenario}\``))];
  const header = ["name", "value", ...crowds];
  return table([header, ...[...fit, ...alarms].map((row) => filled(row, header.length))]);
}

const filled = (row: string[], length: number) => [
  ...row,
  ...Array.from({ length: length - row.length }, () => ""),
];

const rounded = (value: number) => String(Number(value.toFixed(4))).replace("-", "−");

function table([header = [], ...rows]: string[][]): string {
  const line = (row: string[]) => `| ${row.join(" | ")} |`;
  return [header, header.map(() => "---"), ...rows].map(line).join("\n");
}
