import type { StudyReport, StudyScenario } from "../../client/atlas/bands/report.ts";
import { AIRS, LEVELS } from "./airs.ts";

const at = (level: number) => LEVELS.indexOf(level as (typeof LEVELS)[number]);
const list = (values: readonly number[], digits: number) =>
  values.map((v) => v.toFixed(digits)).join(" / ");
/** Lowest and highest over the airs. */
const range = (values: readonly number[]) =>
  `${Math.min(...values).toFixed(1)}–${Math.max(...values).toFixed(1)}`;
const share = (pct: number | null) => (pct === null ? "–" : pct.toFixed(1));

const HEADER = [
  "estimator",
  `error % at ${AIRS.map(({ label }) => label).join(" / ")}`,
  "mean 95 %",
  "new 50 %",
  "new 80 %",
  "new 95 %",
  "± mean 95 %",
  "± new 95 %",
  "honest aside %",
  "wrong aside %",
];

/** A scenario's figures as lines of text; coverages as lowest–highest over the airs, half-widths at 3,000 m. */
export function tableOf({ id, title, truth, runs, results }: StudyScenario): string {
  const wide = AIRS.findIndex(({ label }) => label === "3,000 m");
  const rows = results.map((r) => [
    r.estimator,
    list(r.rmse_pct, 1),
    range(r.mean_coverage_pct[at(0.95)] ?? []),
    range(r.new_coverage_pct[at(0.5)] ?? []),
    range(r.new_coverage_pct[at(0.8)] ?? []),
    range(r.new_coverage_pct[at(0.95)] ?? []),
    (r.mean_width_pct[at(0.95)]?.[wide] ?? Number.NaN).toFixed(1),
    (r.new_width_pct[at(0.95)]?.[wide] ?? Number.NaN).toFixed(1),
    share(r.false_rejection_pct),
    share(r.caught_pct),
  ]);
  return `\n${id}: ${title} (truth ${truth}, ${runs} runs)\n${aligned([HEADER, ...rows])}`;
}

/** Up to which share of mistakes each estimator holds. */
export function breakdownTable({ breakdown = [] }: StudyReport): string {
  const names = breakdown[0]?.holds_to_pct.map(({ estimator }) => estimator) ?? [];
  if (names.length === 0) return "";
  const rows = breakdown.map(({ kind, shares_pct, holds_to_pct }) => [
    `${kind} (${shares_pct.join(", ")} %)`,
    ...holds_to_pct.map(({ share_pct }) => `${share_pct} %`),
  ]);
  const { limit_pct, air } = breakdown[0] as (typeof breakdown)[number];
  const title = `\nShare of mistakes up to which the error stays below ${limit_pct} % at ${air}`;
  return `${title}\n${aligned([["mistake (shares simulated)", ...names], ...rows])}`;
}

function aligned(rows: readonly string[][]): string {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => row[column]?.length ?? 0)),
  );
  const line = (row: string[]) => row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join("  ");
  return rows.map((row) => `  ${line(row).trimEnd()}`).join("\n");
}
