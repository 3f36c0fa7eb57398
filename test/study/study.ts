import type { StudyReport, StudyScenario } from "../../client/study/report.ts";
import { CODE_VERSION } from "../../server/version.ts";
import { AIRS, LEVELS } from "./airs.ts";
import { breakdownOf } from "./breakdown.ts";
import type { Chunk } from "./chunk-worker.ts";
import type { RunFigures } from "./one-run.ts";
import { overCores } from "./over-cores.ts";
import type { Scenario } from "./scenarios/scenario.ts";
import { tally } from "./tally.ts";

export type Size = StudyReport["size"];

/** Runs of a scenario by its contributors: up to so many contributors, so many runs. */
type Runs = readonly [contributors: number, runs: number][];

const RUNS: Record<Size, Runs> = {
  quick: [
    [60, 150],
    [200, 120],
    [1000, 40],
    [Number.POSITIVE_INFINITY, 12],
  ],
  full: [
    [60, 2000],
    [200, 1000],
    [1000, 300],
    [Number.POSITIVE_INFINITY, 60],
  ],
};

/** Where bands are all that is asked: shares need more runs than errors. */
const RUNS_OF_BANDS: Record<Size, Runs> = {
  quick: [
    [200, 600],
    [1000, 150],
    [Number.POSITIVE_INFINITY, 30],
  ],
  full: [
    [60, 20_000],
    [1000, 10_000],
    [Number.POSITIVE_INFINITY, 4000],
  ],
};

/** On clean data bands are looked at too. */
const CLEAN_TIMES = 2;

export function runsIn(size: Size, { contributors, family, bands_only }: Scenario): number {
  const table = bands_only ? RUNS_OF_BANDS : RUNS;
  const runs = table[size].find(([most]) => contributors <= most)?.[1] as number;
  return family === "clean" && !bands_only ? CLEAN_TIMES * runs : runs;
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
  /** Told after each chunk how many of all runs are done, and of a scenario when its last run is. */
  progress?: (done: number, all: number, finished?: StudyScenario) => void;
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
    size,
    seed,
    airs: [...AIRS],
    levels: [...LEVELS],
    scenarios: results,
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
