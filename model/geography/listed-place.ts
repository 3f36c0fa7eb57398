import type { Place } from "./place-records.ts";
import { relief } from "./terrain.ts";
import { uncertainty } from "./uncertainty.ts";

/** A place as the search answers with it. */
export interface ListedPlace extends Place {
  /** Standard deviation of the elevation of someone within a kilometre of the place; null where no elevation is known. */
  elevation_sd_m: number | null;
}

/** Taken where the grid is not at hand, m: high mountains, so that nothing looks surer than it is. */
const STEEP_m = 1500;

/**
 * The place with how far its elevation may be off: a town's own elevation is that of one point in it.
 * @param grid of the terrain; null where it is not at hand
 */
export function listedPlace(place: Place, grid: Uint8Array | null): ListedPlace {
  if (place.elevation_m === null) return { ...place, elevation_sd_m: null };
  const relief_m = grid ? relief(grid, place.lat, place.lon) : STEEP_m;
  return { ...place, elevation_sd_m: uncertainty(relief_m, 0, 0).sd_m };
}
