/** The map's tiles from near are of this zoom alone. */
export const NEAR_ZOOM = 6;

/** File of the tile that a position lies in, in Web Mercator (EPSG:3857), columns from 180° W and rows from the north. */
export function nearTileOf(lat: number, lon: number): string {
  const across = 2 ** NEAR_ZOOM;
  const column = Math.floor(((lon + 180) / 360) * across);
  const up = Math.asinh(Math.tan((lat * Math.PI) / 180)) / Math.PI;
  const row = Math.floor(((1 - up) / 2) * across);
  const within = (number: number) => Math.min(across - 1, Math.max(0, number));
  return `near/${NEAR_ZOOM}/${within(column)}/${within(row)}.pbf`;
}
