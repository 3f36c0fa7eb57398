import { mean, median, rootMeanSquare } from "simple-statistics";
import type { StudyResult } from "../../client/atlas/bands/report.ts";
import type { Counted, RunFigures } from "./one-run.ts";

/**
 * Figures of a scenario from those of its runs, in %: 100 times the natural logarithm for errors and widths. An
 * estimator that could not answer in every run is left out.
 */
export function tally(runs: readonly RunFigures[][]): StudyResult[] {
  const names = [...new Set(runs.flat().map(({ estimator }) => estimator))];
  return names.flatMap((name) => {
    const own = runs.flatMap((run) => run.filter(({ estimator }) => estimator === name));
    return own.length === runs.length ? [resultOf(name, own)] : [];
  });
}

function resultOf(estimator: string, runs: readonly RunFigures[]): StudyResult {
  const first = runs[0] as RunFigures;
  const byAir = (
    list: (run: RunFigures) => number[],
    figure: (values: number[]) => number,
  ): number[] =>
    list(first).map((_, air) => pct(figure(runs.map((run) => list(run)[air] as number))));
  const byLevel = (
    lists: (run: RunFigures) => number[][],
    figure: (values: number[]) => number,
  ): number[][] =>
    lists(first).map((_, level) => byAir((run) => lists(run)[level] as number[], figure));
  return {
    estimator,
    rmse_pct: byAir((run) => run.error, rootMeanSquare),
    bias_pct: byAir((run) => run.error, mean),
    mean_coverage_pct: byLevel((run) => run.mean_held, mean),
    new_coverage_pct: byLevel((run) => run.new_held, mean),
    mean_width_pct: byLevel((run) => run.mean_half, median),
    new_width_pct: byLevel((run) => run.new_half, median),
    false_rejection_pct: shareAside(runs.map((run) => run.honest)),
    caught_pct: shareAside(runs.map((run) => run.wrong)),
  };
}

function shareAside(counts: readonly (Counted | null)[]): number | null {
  let [rows, aside] = [0, 0];
  for (const count of counts) {
    rows += count?.rows ?? 0;
    aside += count?.aside ?? 0;
  }
  return rows > 0 ? pct(aside / rows) : null;
}

/** To a hundredth of a percent: more would be noise of the simulation. */
function pct(share: number): number {
  return Math.round(1e4 * share) / 100;
}
