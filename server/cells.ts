import {
  cellToBoundary,
  cellToLatLng,
  cellToParent,
  getResolution,
  isValidCell,
  latLngToCell,
} from "h3-js";

/** Nothing finer is kept: about 250 km². */
export const KEPT_RESOLUTION = 5;
/** Contributors of one such cell share votes; nothing coarser is shown. About 12,400 km². */
export const PLACE_RESOLUTION = 3;
/** A cell with fewer contributors is shown within its parent. */
export const LEAST_CONTRIBUTORS = 3;

/** A position as the atlas keeps it: a cell, its centre, and the place in which contributors share votes. */
export interface CoarsePosition {
  cell: string;
  place: string;
  lat: number;
  lon: number;
}

export function coarsePosition(lat: number, lon: number): CoarsePosition {
  const cell = latLngToCell(lat, lon, KEPT_RESOLUTION);
  return { cell, place: cellToParent(cell, PLACE_RESOLUTION), ...centre(cell) };
}

/** Centre of a cell, degrees to four decimals: finer would only look it. */
export function centre(cell: string): { lat: number; lon: number } {
  const [lat, lon] = cellToLatLng(cell);
  return { lat: Number(lat.toFixed(4)), lon: Number(lon.toFixed(4)) };
}

/** Corners of a cell, degrees. */
export function cellCorners(cell: string): { lat: number; lon: number }[] {
  return cellToBoundary(cell).map(([lat, lon]) => ({ lat, lon }));
}

/** The place of any cell name a file may carry: H3 cells finer than a place give their parent, other names stay. */
export function placeOf(cell: string): string {
  return isValidCell(cell) && getResolution(cell) > PLACE_RESOLUTION
    ? cellToParent(cell, PLACE_RESOLUTION)
    : cell;
}

/**
 * The cell each kept cell is shown as: itself with enough contributors, else together with its neighbours in
 * the parent, and so on up to the place.
 */
export function shownCells(
  pairs: readonly { cell: string; contributor: string }[],
): Map<string, string> {
  const shown = new Map<string, string>();
  let left = pairs;
  for (let resolution = KEPT_RESOLUTION; resolution >= PLACE_RESOLUTION; resolution--) {
    const groups = Map.groupBy(left, ({ cell }) => cellToParent(cell, resolution));
    const small: { cell: string; contributor: string }[] = [];
    for (const [parent, members] of groups) {
      const contributors = new Set(members.map((m) => m.contributor)).size;
      const enough = contributors >= LEAST_CONTRIBUTORS || resolution === PLACE_RESOLUTION;
      if (enough) for (const { cell } of members) shown.set(cell, parent);
      else small.push(...members);
    }
    left = small;
  }
  return shown;
}
