/** What simulated sweeps did, as `npm run study:sweep` writes it and the page shows it: invented heaters, known truth. */
export interface SweepReport {
  /** Version of the code that was studied. */
  code: string;
  seed: number;
  runs: number;
  /** How the guided sweeps ended, in runs. */
  outcomes: Record<SweepOutcome, number>;
  /** The same of the first runs alone, which a test sweeps again: a report of other code is known by it. */
  sample: { runs: number; outcomes: Record<SweepOutcome, number> };
  /** Runs in which the guided sweep did what it must never do. */
  broken: Record<BrokenPromise, number>;
  /** Of the minima found, those with more CO at a leaner and at a richer rate by the true curve, too. */
  truly_bracketed: number;
  /** Heaters whose minimum lies in the 99 % band, burns, and shows on the meter; and how many of these were found. */
  ordinary: { runs: number; found: number };
  /** The most settings of the pump and the most readings in any run. */
  most: { settings: number; readings: number };
  /** Minima that stepping by hand named without a rise on both sides, in runs. */
  unbracketed_by_hand: number;
  ends: SweepReportEnd[];
}

export const OUTCOMES = [
  "found",
  "not bracketed",
  "below floor",
  "above scale",
  "stopped",
] as const;
export type SweepOutcome = (typeof OUTCOMES)[number];

export const PROMISES = ["unbracketed", "move", "relight", "endless", "into_flame_out"] as const;
export type BrokenPromise = (typeof PROMISES)[number];

/** Over the heaters whose minimum the guided sweep found: the same ones by hand. */
export interface SweepReportEnd {
  end: "both" | "low" | "high";
  runs: number;
  guided: SweepFigures;
  hand: SweepFigures;
}

/** How well one way of searching did over many heaters. */
export interface SweepFigures {
  within_0_1_Hz_pct: number;
  within_0_2_Hz_pct: number;
  /** CO where the pump was left, above the lowest that the controller can be set to, ppm: the median. */
  above_lowest_ppm: number;
  /** The same in 95 of 100 runs at most, ppm. */
  above_lowest_95_ppm: number;
  settings_median: number;
  readings_median: number;
  minutes_median: number;
  /** In a hundred sweeps. */
  flame_outs_per_100: number;
}

/** The report, fetched when somebody wants to see it. */
export async function loadSweepReport(): Promise<SweepReport> {
  const { default: report } = await import("./sweep-report.json");
  return report as SweepReport;
}
