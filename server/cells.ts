import {
  cellToBoundary,
  cellToChildren,
  cellToLatLng,
  cellToParent,
  getResolution,
  isValidCell,
  latLngToCell,
} from "h3-js";
import type { TuneRow } from "../db/tunes.ts";
import type { InCell } from "../db/tunes-in-cells.ts";

/** Nothing finer is kept: about 250 km². */
export const KEPT_RESOLUTION = 5;
/** A place: owners at home in one in one month share votes, and what is shown of a single place is no coarser. About 12,400 km². */
export const PLACE_RESOLUTION = 3;
/** A cell with fewer contributors is shown within its parent, up to a place. */
export const LEAST_CONTRIBUTORS = 5;
/** Tunes of whoever has tuned in several cells are shown in such a cell, so that they make no trail. About 87,000 km². */
export const WIDE_RESOLUTION = 2;

/** A position as the atlas keeps it: a cell, its centre, and its place. */
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
 * The cell each kept cell is shown as: itself with enough contributors whose tunes stand, else together with its neighbours
 * in the parent, and so on up to the place.
 */
export function shownCells(all: readonly InCell[]): Map<string, string> {
  const shown = new Map<string, string>();
  let left = all;
  for (let resolution = KEPT_RESOLUTION; resolution >= PLACE_RESOLUTION; resolution--) {
    const groups = Map.groupBy(left, ({ cell }) => cellToParent(cell, resolution));
    const small: InCell[] = [];
    for (const [parent, members] of groups) {
      const standing = members.filter(({ stands }) => stands);
      const contributors = new Set(standing.map((m) => m.contributor)).size;
      const enough = contributors >= LEAST_CONTRIBUTORS || resolution === PLACE_RESOLUTION;
      if (enough) for (const { cell } of members) shown.set(cell, parent);
      else small.push(...members);
    }
    left = small;
  }
  return shown;
}

type Placed = Pick<TuneRow, "cell" | "several_places">;

/** The place of the cell that a tune is shown in, or that wide cell itself, however fine its place is shown; null without one. */
export function shownPlaceOf({ cell, several_places }: Placed): string | null {
  if (cell === null) return null;
  return several_places ? cellToParent(cell, WIDE_RESOLUTION) : placeOf(cell);
}

/** The cell a tune is shown in, the same in every answer; null without a place. */
export function shownCellOf(
  { cell, several_places }: Placed,
  shown: ReadonlyMap<string, string>,
): string | null {
  if (cell === null) return null;
  return several_places ? cellToParent(cell, WIDE_RESOLUTION) : (shown.get(cell) ?? null);
}

/** The places of a wide cell; null for any other name. */
export function placesOfWide(cell: string): string[] | null {
  return isValidCell(cell) && getResolution(cell) === WIDE_RESOLUTION
    ? cellToChildren(cell, PLACE_RESOLUTION)
    : null;
}
