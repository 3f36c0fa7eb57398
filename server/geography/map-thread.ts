import { parentPort, workerData } from "node:worker_threads";
import { buildBasemap, labelled } from "./basemap.ts";
import { buildNearTiles } from "./near-tiles.ts";
import type { Settlement } from "./settlements.ts";
import { buildTiles } from "./tiles.ts";

/** What the map is drawn from. The thread tells when the tiles from near are written, and ends when all is. */
export interface MapWork {
  dir: string;
  grid: Uint8Array;
  settlements: Settlement[];
}

const { dir, grid, settlements } = workerData as MapWork;
await buildBasemap(dir, settlements);
await buildNearTiles(dir, settlements, labelled(settlements));
parentPort?.postMessage("near");
await buildTiles(dir, grid);
