import { VectorTile } from "@mapbox/vector-tile";
import { PbfReader } from "pbf";
import { type Coast, coastOf } from "./coasts.ts";
import { NEAR_ZOOM } from "./near.ts";

const ACROSS = 2 ** NEAR_ZOOM;
/** Coasts of so many tiles are kept: more than a screen shows. */
const KEPT = 64;
const kept = new Map<string, Promise<Coast[]>>();

/**
 * The coasts in a tile of this zoom or a nearer one.
 * @throws when they are not to be had
 */
export function coastsNear(z: number, x: number, y: number): Promise<Coast[]> {
  const parts = 2 ** (z - NEAR_ZOOM);
  const [column, row] = [Math.floor(x / parts), Math.floor(y / parts)];
  const address = [NEAR_ZOOM, column, row].join("/");
  let coasts = kept.get(address);
  if (!coasts) {
    coasts = fetchCoasts(address, column, row);
    coasts.catch(() => kept.delete(address));
    kept.set(address, coasts);
    if (kept.size > KEPT) kept.delete(kept.keys().next().value as string);
  }
  return coasts;
}

async function fetchCoasts(address: string, column: number, row: number): Promise<Coast[]> {
  const response = await fetch(`/geography/near/${address}.pbf`);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  const { land } = new VectorTile(new PbfReader(await response.arrayBuffer())).layers;
  if (!land) return [];
  return Array.from({ length: land.length }, (_, i) => land.feature(i)).flatMap((feature) =>
    feature
      .loadGeometry()
      .map((ring) =>
        coastOf(
          Float32Array.from(
            ring.flatMap(({ x, y }) => [
              (column + x / feature.extent) / ACROSS,
              (row + y / feature.extent) / ACROSS,
            ]),
          ),
        ),
      ),
  );
}
