import type { SweepFigures } from "../../../client/study/sweep-report.ts";
import { co_ppm } from "./exhaust.ts";
import type { Found } from "./guided.ts";
import type { Run } from "./runs.ts";

/** How well one way of searching did over many heaters. */
export interface SearchFigures extends SweepFigures {
  looks_median: number;
  flame_outs: number;
  no_minimum: number;
  beyond_guard: number;
}

export function figuresOf(runs: readonly Run[], who: "guided" | "hand"): SearchFigures {
  const off = (run: Run) => Math.abs((run[who].minimum_Hz ?? 1e9) - run.exhaust.minimum_Hz);
  const cost = (run: Run) => co_ppm(run.exhaust, run[who].sit_Hz) - run.reachable_ppm;
  const pct = (holds: (run: Run) => boolean, of = runs) =>
    (100 * of.filter(holds).length) / Math.max(1, of.length);
  const median = (value: (found: Found) => number) => medianOf(runs.map((run) => value(run[who])));
  const sure = runs.filter((run) => run[who].interval_Hz);
  return {
    runs: runs.length,
    within_1_step_pct: pct((run) => off(run) <= 0.1 + 1e-9),
    within_2_steps_pct: pct((run) => off(run) <= 0.2 + 1e-9),
    within_3_ppm_pct: pct((run) => cost(run) <= 3),
    settled_median: median(({ settled }) => settled),
    confirmed_median: median(({ confirmed }) => confirmed),
    looks_median: median(({ looks }) => looks),
    minutes_median: median(({ minutes }) => minutes),
    flame_outs: runs.reduce((sum, run) => sum + run[who].flame_outs, 0),
    no_minimum: runs.filter((run) => run[who].minimum_Hz === undefined).length,
    held_95_pct: pct(({ [who]: { interval_Hz }, exhaust: { minimum_Hz } }) => {
      return (
        interval_Hz !== undefined &&
        interval_Hz.lower <= minimum_Hz &&
        interval_Hz.upper >= minimum_Hz
      );
    }, sure),
    beyond_guard: runs.filter(beyondGuard).length,
  };
}

/** Settled readings, the confirming one with them, as a share of what stepping by hand took on the same heater: the median. */
export function readingsOfHand_pct(runs: readonly Run[]): number {
  return 100 * medianOf(runs.map(({ guided, hand }) => guided.confirmed / hand.confirmed));
}

function medianOf(values: number[]): number {
  return values.sort((a, b) => a - b)[values.length >> 1] as number;
}

/** Whether anything recommended was leaner than the guard allowed at that moment, or than the 99 % band. */
export function beyondGuard({ guided, band_lean_Hz }: Run): boolean {
  return guided.answers.some((answer) => {
    const rates =
      "sit_Hz" in answer ? [answer.sit_Hz] : answer.kind === "set" ? [answer.pump_Hz] : [];
    return rates.some((rate) => rate < Math.max(answer.guards_Hz.lean, band_lean_Hz) - 1e-9);
  });
}
