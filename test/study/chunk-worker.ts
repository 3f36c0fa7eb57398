import { parentPort } from "node:worker_threads";
import { oneRun, type RunFigures } from "./one-run.ts";
import { scenarioOf } from "./scenarios/all.ts";

/** Some runs of one scenario. */
export interface Chunk {
  id: string;
  seed: number;
  first: number;
  count: number;
}

export function runsOf({ id, seed, first, count }: Chunk): RunFigures[][] {
  const scenario = scenarioOf(id);
  return Array.from({ length: count }, (_, k) => oneRun(scenario, seed, first + k));
}

parentPort?.on("message", (chunk: Chunk) => parentPort?.postMessage(runsOf(chunk)));
