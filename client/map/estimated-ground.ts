import { elevationAt, type Terrain } from "../../model/geography/terrain.ts";
import { unMercator } from "./coasts.ts";
import { write } from "./terrarium.ts";

/** Elevations are worked out at every so many pixels and drawn out between them. */
const STEP_px = 8;

/**
 * A tile of elevations as the atlas estimates them at any point, out of the grid and the known points about it: the
 * colour of a valley is that of the answer for a town in it.
 */
export function estimatedTile(
  terrain: Terrain,
  [z, x, y]: readonly [number, number, number],
  side_px: number,
): Uint8ClampedArray<ArrayBuffer> {
  const across = side_px / STEP_px + 1;
  const known = Float64Array.from({ length: across ** 2 }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    const share = (tile: number, step: number) => (tile + step / (across - 1)) / 2 ** z;
    const [lat, lon] = unMercator(share(x, column), share(y, row));
    return elevationAt(lat, Math.min(180, lon), terrain).elevation_m;
  });
  const drawn = new Uint8ClampedArray(4 * side_px ** 2);
  const at = (row: number, column: number) => known[row * across + column] as number;
  for (let i = 0; i < side_px; i++) {
    const v = (i + 0.5) / STEP_px;
    const [row, down] = [Math.floor(v), v % 1];
    for (let j = 0; j < side_px; j++) {
      const u = (j + 0.5) / STEP_px;
      const [column, right] = [Math.floor(u), u % 1];
      const upper = at(row, column) * (1 - right) + at(row, column + 1) * right;
      const lower = at(row + 1, column) * (1 - right) + at(row + 1, column + 1) * right;
      write(drawn, 4 * (i * side_px + j), upper * (1 - down) + lower * down);
    }
  }
  return drawn;
}
