import type { Stop } from "../../model/trip/stop.ts";

/** More than this nobody would plan with, m. */
const LARGEST_SD_m = 2000;

/**
 * A stop at a position, its elevation worked out in this browser: the position is not sent anywhere.
 * @throws when the files it is worked out from cannot be reached
 */
export async function groundStop(
  stop: Omit<Stop, "elevation_m"> & { lat: number; lon: number },
): Promise<Stop> {
  const { elevationHere } = await import("../base/terrain-here.ts");
  const ground = await elevationHere(stop.lat, stop.lon);
  return {
    ...stop,
    elevation_m: Math.round(ground.elevation_m),
    elevation_sd_m: Math.min(LARGEST_SD_m, ground.sd_m),
  };
}
