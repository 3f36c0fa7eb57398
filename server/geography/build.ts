import { existsSync } from "node:fs";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { decode } from "fast-png";
import { buildBasemap } from "./basemap.ts";
import { buildPlaceIndex } from "./place-index.ts";
import { buildPoints } from "./points.ts";
import { readSettlements } from "./settlements.ts";
import { buildTiles } from "./tiles.ts";

/** Raised whenever the files change in form or content. */
const FORMAT = "1";

/** Builds places, elevations and map into `dir` when they are missing or of another format. */
export async function ensureGeography(
  dir: string,
  { log }: { log: (line: string) => void },
): Promise<void> {
  if (await isBuilt(dir)) return;
  const start = performance.now();
  log("Building places, elevations and map, once …");
  // Built beside and moved into place whole: nobody reads half of it, and two builders do not mix.
  const draft = `${dir}.${process.pid}.draft`;
  await rm(draft, { recursive: true, force: true });
  await mkdir(draft, { recursive: true });
  try {
    await buildInto(draft, log);
    if (!(await isBuilt(dir))) {
      await rm(dir, { recursive: true, force: true });
      await rename(draft, dir);
    }
  } finally {
    await rm(draft, { recursive: true, force: true });
  }
  log(`… done in ${((performance.now() - start) / 1000).toFixed(0)} s.`);
}

async function isBuilt(dir: string): Promise<boolean> {
  const stamp = join(dir, "format");
  return existsSync(stamp) && (await readFile(stamp, "utf8")) === FORMAT;
}

async function buildInto(dir: string, log: (line: string) => void): Promise<void> {
  const settlements = await readSettlements();
  log("  place search");
  await buildPlaceIndex(dir, settlements);
  log("  elevations");
  const grid = await readGrid();
  await writeFile(join(dir, "grid.bin"), grid);
  await writeFile(join(dir, "points.bin"), await buildPoints(grid, settlements));
  log("  map");
  await buildBasemap(dir, settlements);
  await buildTiles(dir, grid);
  await writeFile(join(dir, "format"), FORMAT);
}

/** The one global elevation grid to be had as a package: 2048 × 1024, 8 bits, 25 m a step. */
async function readGrid(): Promise<Uint8Array> {
  const { data } = decode(
    await readFile("node_modules/three-globe/example/img/earth-topology.png"),
  );
  return Uint8Array.from(data);
}

if (import.meta.main) await ensureGeography(join("data", "geography"), { log: console.log });
