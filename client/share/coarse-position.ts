/** Resolution of the cells that positions become: about 250 km². */
const CELL_RESOLUTION = 5;

/** An estimated elevation leaves no finer than the atlas keeps it, m. */
const STEP_m = 10;

/**
 * An elevation as it leaves this browser. One that was worked out from a position would tell to the metre where in its cell
 * that lies; so it goes to 10 m, and its standard deviation up to the next 10 m. One that somebody typed goes as typed.
 */
export function coarseElevation<E extends number | undefined>(site: {
  elevation_m: E;
  elevation_sd_m?: number | undefined;
}): { elevation_m: E; elevation_sd_m?: number } {
  const { elevation_m, elevation_sd_m } = site;
  if (elevation_m === undefined || elevation_sd_m === undefined) return { elevation_m };
  return {
    elevation_m: (Math.round(elevation_m / STEP_m) * STEP_m) as E,
    elevation_sd_m: Math.ceil(elevation_sd_m / STEP_m) * STEP_m,
  };
}

/** Centre of the map cell a position lies in, degrees: all of a position that ever leaves this browser. */
export async function coarsePosition(
  lat: number,
  lon: number,
): Promise<{ lat: number; lon: number }> {
  const { cellToLatLng, latLngToCell } = await import("h3-js");
  const [centreLat, centreLon] = cellToLatLng(latLngToCell(lat, lon, CELL_RESOLUTION));
  return { lat: Number(centreLat.toFixed(4)), lon: Number(centreLon.toFixed(4)) };
}
