/** Terrarium encoding: elevation = R·256 + G + B/256 − 32,768, m. */
const OFFSET = 32_768;

/** Elevation of a pixel, m, at its place in the pixels' bytes. */
export function elevationIn(data: ArrayLike<number>, at: number): number {
  return (
    (data[at] as number) * 256 + (data[at + 1] as number) + (data[at + 2] as number) / 256 - OFFSET
  );
}

/** Writes an elevation, m, as an opaque pixel. */
export function write(data: Uint8ClampedArray, at: number, elevation_m: number): void {
  const value = elevation_m + OFFSET;
  data[at] = Math.floor(value / 256);
  data[at + 1] = Math.floor(value) % 256;
  data[at + 2] = Math.floor((value % 1) * 256);
  data[at + 3] = 255;
}

/**
 * A part of a tile as a tile of its own. Elevations are drawn out between the pixels; the bytes that carry them
 * cannot be, for they jump every 256 m.
 * @param times how many parts the tile is wide
 * @param column part's number from the left, row: from the top
 */
export function enlarge(
  { data, width }: Pick<ImageData, "data" | "width">,
  times: number,
  column: number,
  row: number,
): Uint8ClampedArray<ArrayBuffer> {
  const drawn = new Uint8ClampedArray(width * width * 4);
  const clamp = (v: number) => Math.min(width - 1, Math.max(0, v));
  for (let i = 0; i < width; i++) {
    const y = (row * width + i + 0.5) / times - 0.5;
    const [top, bottom] = [clamp(Math.floor(y)), clamp(Math.floor(y) + 1)];
    for (let j = 0; j < width; j++) {
      const x = (column * width + j + 0.5) / times - 0.5;
      const [left, right] = [clamp(Math.floor(x)), clamp(Math.floor(x) + 1)];
      const at = (r: number, c: number) => elevationIn(data, 4 * (r * width + c));
      const [fx, fy] = [x - Math.floor(x), y - Math.floor(y)];
      const upper = at(top, left) * (1 - fx) + at(top, right) * fx;
      const lower = at(bottom, left) * (1 - fx) + at(bottom, right) * fx;
      write(drawn, 4 * (i * width + j), upper * (1 - fy) + lower * fy);
    }
  }
  return drawn;
}
