import type { StudyReport, StudyScenario } from "../../client/atlas/bands/report.ts";
import { CODE_VERSION } from "../../server/version.ts";
import { ablation } from "./ablation.ts";
import { AIRS, LEVELS } from "./airs.ts";
import { alarmsOfCrowds, VERSIONS_EACH } from "./alarms.ts";
import { breakdownOf } from "./breakdown.ts";
import type { Chunk } from "./chunk-worker.ts";
import { modelHash } from "./model-hash.ts";
import type { RunFigures } from "./one-run.ts";
import { overCores } from "./over-cores.ts";
import { HEATERS_EACH, ownHeaters } from "./own-heaters.ts";
import { scenarioOf } from "./scenarios/all.ts";
import type { Scenario } from "./scenarios/scenario.ts";
import { sensitivity } from "./sensitivity.ts";
import { tally } from "./tally.ts";

export type Size = StudyReport["size"];

/** Runs of a scenario by its contributors: up to so many contributors, so many runs. */
type Runs = readonly [contributors: number, runs: number][];

const RUNS: Record<Size, Runs> = {
  quick: [
    [60, 60],
    [600, 24],
    [1000, 4],
    [Number.POSITIVE_INFINITY, 1],
  ],
  full: [
    [60, 600],
    [600, 300],
    [1000, 100],
    [Number.POSITIVE_INFINITY, 20],
  ],
};

/** Where bands are all that is asked: shares need more runs than errors. */
const RUNS_OF_BANDS: Record<Size, Runs> = {
  quick: [
    [60, 100],
    [200, 40],
    [Number.POSITIVE_INFINITY, 8],
  ],
  full: [
    [60, 2000],
    [200, 600],
    [Number.POSITIVE_INFINITY, 100],
  ],
};

/** Crowds beside which heaters with own tunes are simulated. */
const OWN_HEATER_CROWDS: Record<Size, number> = { quick: 4, full: 40 };

/** Growing crowds in which alarms are counted. */
const ALARM_CROWDS: Record<Size, number> = { quick: 2, full: 20 };

/** Runs of each part of the model with and without it. */
const ABLATION_RUNS: Record<Size, number> = { quick: 10, full: 100 };

/** Crowds in which each chosen number is moved. */
const SENSITIVITY_RUNS: Record<Size, number> = { quick: 5, full: 40 };

export function runsIn(size: Size, { contributors, bands_only }: Scenario): number {
  const table = bands_only ? RUNS_OF_BANDS : RUNS;
  return table[size].find(([most]) => contributors <= most)?.[1] as number;
}

/** Small enough to share out evenly, large enough that handing over costs nothing. */
const CHUNK = 10;

export interface StudyPlan {
  scenarios: readonly Scenario[];
  size: Size;
  seed: number;
  threads: number;
  /** Runs of a scenario; default by its size. */
  runs?: (scenario: Scenario) => number;
  /** Crowds beside which heaters with own tunes are simulated; default by the size. */
  own_heater_crowds?: number;
  /** Growing crowds in which alarms are counted; default by the size. */
  alarm_crowds?: number;
  /** Runs of each part of the model with and without it; default by the size. */
  ablation_runs?: number;
  /** Crowds in which each chosen number is moved; default by the size. */
  sensitivity_runs?: number;
  /** Told after each chunk how many of all runs are done, and of a scenario when its last run is. */
  progress?: (done: number, all: number, finished?: StudyScenario) => void;
}

/** What makes a report again: its scenarios, and how many runs each part had. */
export function planOf(report: StudyReport) {
  const { size, scenarios, own_heaters, alarms, ablation, sensitivity } = report;
  const runs = new Map(scenarios.map((s) => [s.id, s.runs]));
  return {
    size,
    scenarios: scenarios.map(({ id }) => scenarioOf(id)),
    runs: ({ id }: Scenario) => runs.get(id) ?? 0,
    own_heater_crowds: (own_heaters[0]?.heaters ?? 0) / HEATERS_EACH,
    alarm_crowds: (alarms[0]?.fits ?? 0) / VERSIONS_EACH,
    ablation_runs: ablation[0]?.runs ?? 0,
    sensitivity_runs: sensitivity[0]?.runs ?? 0,
  };
}

/** Runs the study. Seed and size alone decide the figures, not the number of threads. */
export async function study(plan: StudyPlan): Promise<StudyReport> {
  const { scenarios, size, seed, runs = (s) => runsIn(size, s) } = plan;
  const figures = new Map(scenarios.map((s) => [s.id, new Array<RunFigures[]>(runs(s))]));
  const missing = new Map(scenarios.map((s) => [s.id, runs(s)]));
  const finished = new Map<string, StudyScenario>();
  const chunks = scenarios.flatMap((s) => chunksOf(s.id, seed, runs(s)));
  const all = chunks.reduce((sum, { count }) => sum + count, 0);
  let done = 0;
  await overCores(chunks, plan.threads, ({ id, first, count }, part) => {
    const own = figures.get(id) as RunFigures[][];
    for (const [k, run] of part.entries()) own[first + k] = run;
    done += count;
    const left = (missing.get(id) as number) - count;
    missing.set(id, left);
    if (left > 0) return plan.progress?.(done, all);
    const scenario = scenarios.find((s) => s.id === id) as Scenario;
    finished.set(id, reported(scenario, own));
    figures.delete(id);
    plan.progress?.(done, all, finished.get(id));
  });
  const results = scenarios.map(({ id }) => finished.get(id) as StudyScenario);
  return {
    code: CODE_VERSION,
    model_sha256: modelHash(),
    size,
    seed,
    airs: [...AIRS],
    levels: [...LEVELS],
    scenarios: results,
    own_heaters: ownHeaters(plan.own_heater_crowds ?? OWN_HEATER_CROWDS[size], seed),
    alarms: alarmsOfCrowds(plan.alarm_crowds ?? ALARM_CROWDS[size], seed),
    ablation: ablation(plan.ablation_runs ?? ABLATION_RUNS[size], seed),
    sensitivity: sensitivity(plan.sensitivity_runs ?? SENSITIVITY_RUNS[size], seed),
    breakdown: breakdownOf(results),
  };
}

function chunksOf(id: string, seed: number, runs: number): Chunk[] {
  return Array.from({ length: Math.ceil(runs / CHUNK) }, (_, i) => ({
    id,
    seed,
    first: i * CHUNK,
    count: Math.min(CHUNK, runs - i * CHUNK),
  }));
}

function reported(scenario: Scenario, runs: RunFigures[][]): StudyScenario {
  const { id, title, family, truth, contributors } = scenario;
  return { id, title, family, truth, contributors, runs: runs.length, results: tally(runs) };
}
