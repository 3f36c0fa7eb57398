import { readFile } from "node:fs/promises";
import { gunzipSync } from "node:zlib";
import { parse } from "csv-parse/sync";
import KDBush from "kdbush";
import { elevationAt, loadTerrain, packPoints, UNKNOWN_m } from "../../model/geography/terrain.ts";
import { AIRFIELDS_FILE } from "./data-files.ts";
import type { Settlement } from "./settlements.ts";

export interface Point {
  lat: number;
  lon: number;
  elevation_m: number;
}

const FOOT_m = 0.3048;
/** An airfield this far off its surroundings is an error of the list, m. */
const AIRFIELD_WITHIN_m = 300;

/**
 * The points elevations are estimated from: settlements and passes under their own numbers, then the airfields that
 * agree with them.
 */
export async function buildPoints(
  grid: Uint8Array,
  settlements: Settlement[],
): Promise<Uint8Array> {
  const places = settlements.map(({ lat, lon, elevation_m }) => ({
    lat,
    lon,
    elevation_m: elevation_m ?? UNKNOWN_m,
  }));
  const terrain = loadTerrain(grid, pack(places, places.length));
  const airfields = (await readAirfields()).filter(
    ({ lat, lon, elevation_m }) =>
      Math.abs(elevationAt(lat, lon, terrain).elevation_m - elevation_m) <= AIRFIELD_WITHIN_m,
  );
  return pack([...places, ...airfields], places.length);
}

function pack(points: readonly Point[], places: number): Uint8Array {
  const index = new KDBush(points.length, 64, Float32Array);
  for (const { lon, lat } of points) index.add(lon, lat);
  index.finish();
  const elevations = Int16Array.from(points, (p) => Math.round(p.elevation_m));
  return packPoints({ index, elevations, places });
}

/** All open airfields of the list with an elevation, agreeing with their surroundings or not. */
export async function readAirfields(): Promise<Point[]> {
  const rows: Record<string, string>[] = parse(gunzipSync(await readFile(AIRFIELDS_FILE)), {
    columns: true,
  });
  return rows
    .map((r) => ({
      lat: Number(r.latitude_deg),
      lon: Number(r.longitude_deg),
      elevation_m: Number(r.elevation_ft) * FOOT_m,
    }))
    .filter(
      (p) => Math.abs(p.lat) <= 90 && Math.abs(p.lon) <= 180 && Number.isFinite(p.elevation_m),
    );
}
