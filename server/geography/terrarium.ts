import { decode } from "fast-png";

/** Pixels of about 38 m at the equator: as fine as the surveys that such tiles are made from. */
const ZOOM = 12;
/** Web Mercator ends here. */
const NORTHMOST = 85.0511;
/** Whoever asks would rather have the built-in estimate than wait longer. */
const PATIENCE_ms = 2500;

/** A fetch: the platform's own, or a test's. */
export type Fetch = (url: string, init: { signal: AbortSignal }) => Promise<Response>;

/**
 * Elevation of a position from a source of terrarium tiles: elevation = R·256 + G + B/256 − 32,768, m.
 * @param template address of a tile, with {z}, {x} and {y}
 * @returns null where the source has none, answers badly or too late
 */
export async function terrariumElevation(
  template: string,
  lat: number,
  lon: number,
  fetch: Fetch,
  patience_ms = PATIENCE_ms,
): Promise<number | null> {
  if (!(Math.abs(lat) <= NORTHMOST)) return null;
  const { x, y } = mercator(lat, lon);
  const url = Object.entries({ z: ZOOM, x: Math.floor(x), y: Math.floor(y) }).reduce(
    (address, [name, value]) => address.replaceAll(`{${name}}`, String(value)),
    template,
  );
  try {
    const response = await fetch(url, { signal: AbortSignal.timeout(patience_ms) });
    if (!response.ok) return null;
    return pixel(new Uint8Array(await response.arrayBuffer()), x % 1, y % 1);
  } catch {
    return null;
  }
}

/** Position in tiles from the north-west corner. */
function mercator(lat: number, lon: number): { x: number; y: number } {
  const tiles = 2 ** ZOOM;
  const x = (((lon + 180) / 360) % 1) * tiles;
  const angle = Math.asinh(Math.tan((lat * Math.PI) / 180));
  const y = Math.min(tiles - 1e-9, Math.max(0, ((1 - angle / Math.PI) / 2) * tiles));
  return { x, y };
}

/** The elevation of the pixel at these shares of a tile's width and height; null for a tile of another form. */
function pixel(png: Uint8Array, across: number, down: number): number | null {
  const { data, width, height, channels, depth } = decode(png);
  if (depth !== 8 || channels < 3) return null;
  const at = (Math.floor(down * height) * width + Math.floor(across * width)) * channels;
  const [red, green, blue] = [data[at], data[at + 1], data[at + 2]] as [number, number, number];
  const elevation_m = red * 256 + green + blue / 256 - 32_768;
  return elevation_m > -500 && elevation_m < 9000 ? elevation_m : null;
}
