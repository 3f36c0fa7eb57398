import { createHash } from "node:crypto";
import { once } from "node:events";
import { readFile, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { Worker } from "node:worker_threads";
import { decode } from "fast-png";
import { elevationAt, loadTerrain } from "../../model/geography/terrain.ts";
import { buildOnce } from "./build-once.ts";
import { AIRFIELDS_FILE, GRID_FILE } from "./data-files.ts";
import type { MapWork } from "./map-thread.ts";
import { packageVersion, SOURCES } from "./packages.ts";
import { PASSES_FILE } from "./passes.ts";
import { buildPlaceIndex } from "./place-index.ts";
import { buildPlacePacks } from "./place-packs.ts";
import { buildPoints } from "./points.ts";
import { readSettlements, type Settlement } from "./settlements.ts";

/** Raised whenever the files change in form or content. */
const FORMAT = 10;

interface Progress {
  log: (line: string) => void;
}

/**
 * Builds places, elevations and map into `dir` when they are missing, of another format, or from other versions of
 * the packages or of the list of passes. Several builders at once do no harm.
 * @throws when a data package is not installed
 */
export async function ensureGeography(
  dir = join("data", "geography"),
  { log }: Progress = { log: () => {} },
): Promise<void> {
  const start = performance.now();
  const built = await buildOnce(dir, await stampNow(), async (draft) => {
    log("Building places, elevations and map, once …");
    await buildInto(draft, log);
  });
  if (built) log(`… done in ${seconds(start)}.`);
}

async function stampNow(): Promise<string> {
  const digests = [PASSES_FILE, GRID_FILE, AIRFIELDS_FILE].map(async (file) => {
    const digest = createHash("sha256")
      .update(await readFile(file))
      .digest("hex");
    return `${basename(file.pathname)} ${digest.slice(0, 12)}`;
  });
  return [
    `format ${FORMAT}`,
    ...SOURCES.map((name) => `${name} ${packageVersion(name)}`),
    ...(await Promise.all(digests)),
  ].join("\n");
}

async function buildInto(dir: string, log: (line: string) => void): Promise<void> {
  const step = async <T>(name: string, work: () => Promise<T>): Promise<T> => {
    const start = performance.now();
    const done = await work();
    log(`  ${name}: ${seconds(start)}`);
    return done;
  };
  const settlements = await step("places read", readSettlements);
  const grid = await step("elevation grid", readGrid);
  const points = await step("elevation points", () => buildPoints(grid, settlements));
  await writeFile(join(dir, "grid.bin"), grid);
  await writeFile(join(dir, "points.bin"), points);
  const complete = withEstimates(settlements, grid, points);
  const map = buildMap({ dir, grid, settlements: complete });
  const places = async () => {
    await step("place search", () => buildPlaceIndex(dir, complete));
    await map.near;
    await step("places to take along", () => buildPlacePacks(dir, complete));
  };
  const all = step("land, borders, labels and elevations of the map", () => map.all);
  await Promise.all([places(), all]);
}

/** In a thread of its own: most machines have a second core, and somebody waits. */
function buildMap(work: MapWork): Record<"near" | "all", Promise<unknown>> {
  const thread = new Worker(new URL("./map-thread.ts", import.meta.url), { workerData: work });
  // An error in the thread rejects.
  return { near: once(thread, "message"), all: once(thread, "exit") };
}

/** Some two hundred places, most on coasts, have no elevation in the data: they get the estimate. */
function withEstimates(
  settlements: Settlement[],
  grid: Uint8Array,
  points: Uint8Array,
): Settlement[] {
  const terrain = loadTerrain(grid, points);
  return settlements.map((s) =>
    s.elevation_m === null
      ? { ...s, elevation_m: elevationAt(s.lat, s.lon, terrain).elevation_m }
      : s,
  );
}

async function readGrid(): Promise<Uint8Array> {
  return Uint8Array.from(decode(await readFile(GRID_FILE)).data);
}

function seconds(since: number): string {
  return `${((performance.now() - since) / 1000).toFixed(1)} s`;
}

if (import.meta.main) await ensureGeography(undefined, { log: console.log });
