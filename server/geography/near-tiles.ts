import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { GeoJSONVT } from "@maplibre/geojson-vt";
import { fromGeojsonVt } from "@maplibre/vt-pbf";
import type { Feature, GeoJSON } from "geojson";
import type { Topology } from "topojson-specification";
import { collection, landPolygons, lines, polygonFeature } from "./basemap.ts";
import { packageFile } from "./packages.ts";
import type { Settlement } from "./settlements.ts";

/** The zoom of the tiles: from there on the map shows them, drawn out up to {@link NEAREST_ZOOM}. */
const ZOOM = 6;
const NEAREST_ZOOM = 8;
/** Width of the world at zoom 0 as the map counts, px. */
const WORLD_px = 512;
/** One name in a square of this side: more would not find room. */
const NAME_px: Record<number, number> = { 6: 96, 7: 96, 8: 64 };

/**
 * What the map shows from near, as vector tiles: land and borders ten times finer, and the smaller places.
 * Natural Earth, public domain; GeoNames, CC BY 4.0.
 * @param labelled places that the map names from afar already
 */
export async function buildNearTiles(
  dir: string,
  settlements: readonly Settlement[],
  labelled: readonly Settlement[],
): Promise<void> {
  const read = async (name: string): Promise<Topology> =>
    JSON.parse(await readFile(packageFile("world-atlas", name), "utf8"));
  const [land, countries] = [await read("land-10m.json"), await read("countries-10m.json")];
  const layers = {
    land: index(collection([polygonFeature(landPolygons(land))])),
    borders: index(collection([lines(countries, "countries")])),
    places: index(collection(places(settlements, labelled))),
  };
  for (let x = 0; x < 2 ** ZOOM; x++) {
    const folder = join(dir, "near", String(ZOOM), String(x));
    await mkdir(folder, { recursive: true });
    for (let y = 0; y < 2 ** ZOOM; y++) {
      const tile = Object.entries(layers).flatMap(([name, layer]) => {
        const part = layer.getTile(ZOOM, x, y);
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
  return new GeoJSONVT(data, { maxZoom: ZOOM, indexMaxZoom: ZOOM, extent: EXTENT, buffer: 64 });
}

/** The most looked-for place of each square, with the zoom from which it is named: the first ones are named first. */
function places(settlements: readonly Settlement[], labelled: readonly Settlement[]): Feature[] {
  const from = new Map<Settlement, number>(labelled.map((s) => [s, 0]));
  for (let zoom = ZOOM; zoom <= NEAREST_ZOOM; zoom++) {
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
