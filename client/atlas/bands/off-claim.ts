import type { StudyReport, StudyResult, StudyScenario } from "./report.ts";

/** A band keeps its claim while the observed coverage is within so many points of it. */
export const CORRIDOR_points = 1.5;
/** The level that scenarios are listed by. */
export const JUDGED_LEVEL = 0.95;
/** The estimator that the atlas publishes. */
export const OWN = "Hypsotune";
/** The same without what the other classes and ends would add. */
export const ALONE = "Hypsotune, class and end alone";

export const BANDS = ["new_heater", "mean"] as const;
export type Band = (typeof BANDS)[number];

/** What a band held where it was furthest off. */
export interface Held {
  held_pct: number;
  air: string;
}

/** A scenario in which a band of the judged level leaves the corridor in some air. */
export interface OffClaim extends Record<Band, Held> {
  scenario: StudyScenario;
  /** Signed: below nought the band held too seldom, above it more often than it claims. */
  off_points: number;
}

export function ownResult(scenario: StudyScenario): StudyResult | undefined {
  return scenario.results.find(({ estimator }) => estimator === OWN);
}

/** By level, then air. */
export function coverageOf(result: StudyResult, band: Band): number[][] {
  return band === "mean" ? result.mean_coverage_pct : result.new_coverage_pct;
}

/** Median half-width, %: by level, then air. */
export function widthOf(result: StudyResult, band: Band): number[][] {
  return band === "mean" ? result.mean_width_pct : result.new_width_pct;
}

/** Observed less claimed coverage, percentage points. */
export function offBy(observed_pct: number, level: number): number {
  // Both figures have two decimals at most; the subtraction adds none.
  return Math.round(100 * observed_pct - 1e4 * level) / 100;
}

export function isOff(points: number): boolean {
  return Math.abs(points) > CORRIDOR_points;
}

/**
 * Every scenario with a band off its claim, once, worst first. Too narrow goes before too wide: a band that holds too
 * seldom misleads, one that holds too often only says less than it could.
 */
export function offClaim(report: StudyReport): { narrow: OffClaim[]; wide: OffClaim[] } {
  const judged = (pick: (values: number[]) => number) =>
    report.scenarios
      .flatMap((scenario) => furthest(report, scenario, pick))
      .filter(({ off_points }) => isOff(off_points) && Math.sign(off_points) === pick([-1, 1]))
      .sort((a, b) => Math.abs(b.off_points) - Math.abs(a.off_points));
  const narrow = judged((values) => Math.min(...values));
  const listed = new Set(narrow.map(({ scenario }) => scenario.id));
  const wide = judged((values) => Math.max(...values));
  return { narrow, wide: wide.filter(({ scenario }) => !listed.has(scenario.id)) };
}

function furthest(
  report: StudyReport,
  scenario: StudyScenario,
  pick: (values: number[]) => number,
): OffClaim[] {
  const result = ownResult(scenario);
  const level = report.levels.indexOf(JUDGED_LEVEL);
  if (!result || level < 0) return [];
  const held = (band: Band): Held => {
    const byAir = coverageOf(result, band)[level] ?? [];
    const held_pct = pick(byAir);
    return { held_pct, air: report.airs[byAir.indexOf(held_pct)]?.label ?? "" };
  };
  const own = { new_heater: held("new_heater"), mean: held("mean") };
  const off_points = offBy(pick(BANDS.map((band) => own[band].held_pct)), JUDGED_LEVEL);
  return [{ scenario, ...own, off_points }];
}

/**
 * How far chance alone moves an observed coverage, points, 95 times in 100. It is the mean band's, which a run holds or
 * not; the new-heater band's is less, since each run counts many heaters.
 */
export function chance_points(level: number, runs: number): number {
  return 196 * Math.sqrt((level * (1 - level)) / runs);
}

/** Whether a scenario is further off than chance alone moves a single figure. */
export function beyondChance({ off_points, scenario }: OffClaim): boolean {
  return Math.abs(off_points) > chance_points(JUDGED_LEVEL, scenario.runs);
}
