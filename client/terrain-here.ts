import {
  elevationAt,
  loadTerrain,
  type PointElevation,
  type Terrain,
} from "../model/geography/terrain.ts";

let terrain: Promise<Terrain> | undefined;

async function bytes(path: string): Promise<Uint8Array> {
  const response = await fetch(`/geography/${path}`);
  if (!response.ok) throw new Error("The elevation files are not there.");
  return new Uint8Array(await response.arrayBuffer());
}

/** Elevation of a position, worked out in this browser: the position is not sent anywhere. */
export async function elevationHere(lat: number, lon: number): Promise<PointElevation> {
  terrain ??= Promise.all([bytes("grid.bin"), bytes("points.bin")]).then(([grid, points]) =>
    loadTerrain(grid, points),
  );
  try {
    return elevationAt(lat, lon, await terrain);
  } catch (error) {
    terrain = undefined;
    throw error;
  }
}
