/** What simulated sweeps found, as `npm run study` writes it and the page shows it: invented heaters, known truth. */
export interface SweepReport {
  /** Version of the code that was studied. */
  code: string;
  seed: number;
  ends: SweepReportEnd[];
}

export interface SweepReportEnd {
  end: "both" | "low" | "high";
  guided: SweepFigures;
  hand: SweepFigures;
  /** Settled readings, the confirming one with them, as a share of those by hand on the same heater: the median. */
  readings_of_hand_pct: number;
}

/** How well one way of searching did over many heaters. */
export interface SweepFigures {
  runs: number;
  within_1_step_pct: number;
  within_2_steps_pct: number;
  /** Runs that end within 3 ppm of the lowest CO that the controller's steps allow. */
  within_3_ppm_pct: number;
  /** Settled readings until the minimum was named, and with the one that confirms it. */
  settled_median: number;
  confirmed_median: number;
  minutes_median: number;
  /** How often the 95 % interval held the truth, of runs that gave one. */
  held_95_pct: number;
}

/** The report, fetched when somebody wants to see it. */
export async function loadSweepReport(): Promise<SweepReport> {
  const { default: report } = await import("./sweep-report.json");
  return report as SweepReport;
}
