import type { SweepFigures, SweepReport } from "../../../client/study/sweep-report.ts";
import { CODE_VERSION } from "../../../server/version.ts";
import { figuresOf, readingsOfHand_pct, type SearchFigures } from "./figures.ts";
import { type Run, runOf } from "./runs.ts";

export const SWEEP_REPORT = "client/study/sweep-report.json";

/** Guided sweeps beside stepping by hand, over so many invented heaters whose lowest CO the meter shows. */
export function sweepReport(runs: number, seed: number): SweepReport {
  const all = Array.from({ length: runs }, (_, run) => runOf(seed, run));
  const ends: [SweepReport["ends"][number]["end"], Run[]][] = [
    ["both", all],
    ["low", all.filter(({ end }) => end === "low")],
    ["high", all.filter(({ end }) => end === "high")],
  ];
  return {
    code: CODE_VERSION,
    seed,
    ends: ends.map(([end, of]) => ({
      end,
      guided: shown(figuresOf(of, "guided")),
      hand: shown(figuresOf(of, "hand")),
      readings_of_hand_pct: tenth(readingsOfHand_pct(of)),
    })),
  };
}

const tenth = (value: number) => Number(value.toFixed(1));

/** What the page shows, to a tenth. */
function shown(figures: SearchFigures): SweepFigures {
  return {
    runs: figures.runs,
    within_1_step_pct: tenth(figures.within_1_step_pct),
    within_2_steps_pct: tenth(figures.within_2_steps_pct),
    within_3_ppm_pct: tenth(figures.within_3_ppm_pct),
    settled_median: figures.settled_median,
    confirmed_median: figures.confirmed_median,
    minutes_median: tenth(figures.minutes_median),
    held_95_pct: tenth(figures.held_95_pct),
  };
}
