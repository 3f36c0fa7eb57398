import { workerData } from "node:worker_threads";
import { buildBasemap, labelled } from "./basemap.ts";
import { buildNearTiles } from "./near-tiles.ts";
import type { Settlement } from "./settlements.ts";
import { buildTiles } from "./tiles.ts";

/** What the map is drawn from; ends when all of it is written. */
export interface MapWork {
  dir: string;
  grid: Uint8Array;
  settlements: Settlement[];
}

const { dir, grid, settlements } = workerData as MapWork;
await buildBasemap(dir, settlements);
await buildNearTiles(dir, settlements, labelled(settlements));
await buildTiles(dir, grid);
