import {
  elevationAt,
  loadTerrain,
  type PointElevation,
  type Terrain,
} from "../../model/geography/terrain.ts";

let grid: Promise<Uint8Array> | undefined;
let terrain: Promise<Terrain> | undefined;

async function bytes(path: string): Promise<Uint8Array> {
  const response = await fetch(`/geography/${path}`);
  if (!response.ok) throw new Error("The elevation files are not there.");
  return new Uint8Array(await response.arrayBuffer());
}

/** The grid that elevations are estimated from, fetched once. @throws when it cannot be reached */
export async function gridHere(): Promise<Uint8Array> {
  grid ??= bytes("grid.bin");
  try {
    return await grid;
  } catch (error) {
    grid = undefined;
    throw error;
  }
}

/** What elevations are estimated from, fetched once. @throws when it cannot be reached */
export async function terrainHere(): Promise<Terrain> {
  terrain ??= Promise.all([gridHere(), bytes("points.bin")]).then(([heights, points]) =>
    loadTerrain(heights, points),
  );
  try {
    return await terrain;
  } catch (error) {
    terrain = undefined;
    throw error;
  }
}

/** Elevation of a position, worked out in this browser: the position is not sent anywhere. */
export async function elevationHere(lat: number, lon: number): Promise<PointElevation> {
  return elevationAt(lat, lon, await terrainHere());
}
