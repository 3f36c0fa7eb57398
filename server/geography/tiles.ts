import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { encode } from "fast-png";
import { gridElevation } from "../../model/geography/terrain.ts";

const TILE = 256;
/** The grid's cells are 20 km wide: finer zooms would only magnify them, which the map does itself. */
export const DEEPEST_ZOOM = 4;
/** Terrarium encoding: elevation = R·256 + G + B/256 − 32,768. */
const TERRARIUM_OFFSET = 32_768;
/** Finer than the eye tells on a tint, a fifth of the grid's own step, and packs better than metres. */
export const STEP_m = 5;

/** Elevation tiles in Web Mercator for the map's tint. */
export async function buildTiles(dir: string, grid: Uint8Array): Promise<void> {
  for (let z = 0; z <= DEEPEST_ZOOM; z++) {
    for (let x = 0; x < 2 ** z; x++) {
      const folder = join(dir, "tiles", String(z), String(x));
      await mkdir(folder, { recursive: true });
      for (let y = 0; y < 2 ** z; y++)
        await writeFile(join(folder, `${y}.png`), tile(grid, z, x, y));
    }
  }
}

function tile(grid: Uint8Array, z: number, x: number, y: number): Uint8Array {
  const data = new Uint8Array(TILE * TILE * 3);
  const size = TILE * 2 ** z;
  for (let row = 0; row < TILE; row++) {
    const mercator = Math.PI * (1 - (2 * (y * TILE + row + 0.5)) / size);
    const lat = (Math.atan(Math.sinh(mercator)) * 180) / Math.PI;
    for (let column = 0; column < TILE; column++) {
      const lon = ((x * TILE + column + 0.5) / size) * 360 - 180;
      const value = STEP_m * Math.round(gridElevation(grid, lat, lon) / STEP_m) + TERRARIUM_OFFSET;
      const at = 3 * (row * TILE + column);
      data[at] = Math.floor(value / 256);
      data[at + 1] = value % 256;
    }
  }
  return encode({ width: TILE, height: TILE, data, channels: 3, depth: 8 }, { zlib: { level: 6 } });
}
