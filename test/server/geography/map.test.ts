import { readdirSync, readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { VectorTile, type VectorTileLayer } from "@mapbox/vector-tile";
import { decode } from "fast-png";
import type { Feature, FeatureCollection, MultiPolygon, Point, Polygon, Position } from "geojson";
import { PbfReader } from "pbf";
import { beforeAll, expect, test } from "vitest";
import { gridElevation } from "../../../model/geography/terrain.ts";
import { splitAtAntimeridian } from "../../../server/geography/antimeridian.ts";
import { ensureGeography } from "../../../server/geography/build.ts";

const DIR = "data/geography";

beforeAll(() => ensureGeography(DIR));

test("zooms 0 to 4 are all there", () => {
  for (let z = 0; z <= 4; z++) {
    for (let x = 0; x < 2 ** z; x++) {
      expect(readdirSync(join(DIR, "tiles", `${z}`, `${x}`)), `${z}/${x}`).toHaveLength(2 ** z);
    }
  }
});

test.each([
  [0, 0, 0],
  [2, 3, 1],
  [4, 3, 6],
  [4, 12, 6],
  [4, 15, 15],
])("tile %i/%i/%i decodes to the grid's elevation", async (z, x, y) => {
  // Pixel to position by spherical Mercator (EPSG:3857); terrarium: R·256 + G + B/256 − 32,768 m.
  const grid = readFileSync(join(DIR, "grid.bin"));
  const { data, channels } = decode(await readFile(join(DIR, `tiles/${z}/${x}/${y}.png`)));
  const size = 256 * 2 ** z;
  for (const [column, row] of [
    [10, 20],
    [128, 128],
    [250, 7],
  ] as const) {
    const at = (row * 256 + column) * channels;
    const decoded = (data[at] as number) * 256 + (data[at + 1] as number) - 32768;
    const lat =
      (Math.atan(Math.sinh(Math.PI * (1 - (2 * (y * 256 + row + 0.5)) / size))) * 180) / Math.PI;
    const lon = ((x * 256 + column + 0.5) / size) * 360 - 180;
    expect(Math.abs(decoded - gridElevation(grid, lat, lon))).toBeLessThanOrEqual(2.5);
  }
});

test.each(["land", "lakes"])(
  "%s: rings closed, within the world, no jump across it",
  async (name) => {
    const { features } = JSON.parse(
      await readFile(join(DIR, `${name}.json`), "utf8"),
    ) as FeatureCollection<MultiPolygon>;
    let rings = 0;
    for (const ring of features.flatMap((f) => f.geometry.coordinates.flat())) {
      rings++;
      expect(ring.at(-1)).toEqual(ring[0]);
      for (const [i, [lon, lat]] of ring.entries()) {
        expect(Math.abs(lon as number)).toBeLessThanOrEqual(180);
        expect(Math.abs(lat as number)).toBeLessThanOrEqual(90);
        const before = ring[i - 1]?.[0] ?? (lon as number);
        const alongEdge = Math.abs(lat as number) === 90;
        if (!alongEdge) expect(Math.abs((lon as number) - before)).toBeLessThan(359);
      }
    }
    expect(rings).toBeGreaterThan(200);
  },
);

/** Whether a position lies in the polygons: even and odd crossings (Shimrat 1962). */
function covers(polygons: Position[][][], lon: number, lat: number): boolean {
  const crosses = ([ax, ay]: number[], [bx, by]: number[]) =>
    (ay as number) > lat !== (by as number) > lat &&
    lon <
      (((bx as number) - (ax as number)) * (lat - (ay as number))) /
        ((by as number) - (ay as number)) +
        (ax as number);
  return polygons.some(
    (rings) =>
      rings
        .flatMap((ring) => ring.slice(1).map((p, i) => crosses(ring[i] as Position, p)))
        .filter(Boolean).length %
        2 ===
      1,
  );
}

test.each([
  // Any school atlas.
  ["Colorado", -106.3, 39.2, "land"],
  ["Chukotka west of the antimeridian", 178, 68, "land"],
  ["Chukotka east of it", -175, 66.5, "land"],
  ["Vanua Levu", 179.3, -16.6, "land"],
  ["the South Pole", 0, -89.5, "land"],
  ["Antarctica by the antimeridian", 179.5, -85, "land"],
  ["the Caspian Sea", 51, 42, "water"],
  ["the Black Sea", 35, 43, "water"],
  ["Lake Superior", -87, 47.8, "water"],
  ["Lake Titicaca", -69.5, -15.9, "water"],
  ["the North Pole", 0, 89, "water"],
  ["the Atlantic", -30, 30, "water"],
  ["the Pacific by the antimeridian", -179.9, 0, "water"],
  ["the Southern Ocean", 0, -60, "water"],
])("%s (%f, %f) is %s", async (_, lon, lat, what) => {
  const [land, lakes] = (await Promise.all(["land", "lakes"].map(polygons))) as [
    Position[][][],
    Position[][][],
  ];
  const dry = covers(land, lon, lat) && !covers(lakes, lon, lat);
  expect(dry ? "land" : "water").toBe(what);
});

async function polygons(name: string): Promise<Position[][][]> {
  const text = await readFile(join(DIR, `${name}.json`), "utf8");
  const { features } = JSON.parse(text) as FeatureCollection<MultiPolygon>;
  return features.flatMap((f) => f.geometry.coordinates);
}

test.each([
  ["eastward", [170, -170], 175],
  ["westward", [-170, 170], 175],
])("a hole goes with its ring, unwrapped %s", (_, [from, to], lon) => {
  // A square of 20° across the antimeridian with a hole of 2° on its western side.
  const ring = (west: number, east: number, half: number): Position[] => [
    [west, -half],
    [east, -half],
    [east, half],
    [west, half],
    [west, -half],
  ];
  const split = splitAtAntimeridian([ring(from as number, to as number, 10), ring(174, 176, 1)]);
  expect(split).toHaveLength(2);
  expect(covers(split, lon, 5)).toBe(true);
  expect(covers(split, lon, 0)).toBe(false);
  expect(covers(split, -175, 0)).toBe(true);
});

test("labels carry elevations", async () => {
  const { features } = JSON.parse(
    await readFile(join(DIR, "labels.json"), "utf8"),
  ) as FeatureCollection;
  expect(features.length).toBeGreaterThan(5000);
  expect(features.every((f: Feature) => typeof f.properties?.elevation_m === "number")).toBe(true);
});

/** A tile of the map from near, by what lies in it. */
async function nearTile(lat: number, lon: number): Promise<VectorTile> {
  const [x, y] = [
    (lon + 180) / 360,
    0.5 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / (2 * Math.PI),
  ];
  const file = `near/6/${Math.floor(x * 64)}/${Math.floor(y * 64)}.pbf`;
  return new VectorTile(new PbfReader(await readFile(join(DIR, file))));
}

/** A layer of such a tile as GeoJSON. */
async function nearLayer(lat: number, lon: number, name: string): Promise<Feature[]> {
  const [x, y] = [
    (lon + 180) / 360,
    0.5 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / (2 * Math.PI),
  ];
  const layer = (await nearTile(lat, lon)).layers[name];
  return Array.from({ length: layer?.length ?? 0 }, (_, i) =>
    (layer as VectorTileLayer).feature(i).toGeoJSON(Math.floor(x * 64), Math.floor(y * 64), 6),
  );
}

test("from near every tile is there, and none is large", () => {
  const files = readdirSync(join(DIR, "near"), { recursive: true, withFileTypes: true }).filter(
    (file) => file.isFile(),
  );
  expect(files).toHaveLength(64 * 64);
  for (const file of files)
    expect(readFileSync(join(file.parentPath, file.name)).length).toBeLessThan(60_000);
});

test.each([
  // Any sea chart; the coasts for the whole world are too coarse for them.
  ["the Bay of Kotor", 42.44, 18.66, "water"],
  ["the Bay of Kotor's shore", 42.5, 18.85, "land"],
  ["the Sognefjord at Balestrand", 61.19, 6.55, "water"],
  ["the open Atlantic", 30, -30, "water"],
  ["the middle of the Sahara", 23, 10, "land"],
])("from near %s (%f, %f) is %s", async (_, lat, lon, what) => {
  const land = (await nearLayer(lat, lon, "land")) as Feature<Polygon | MultiPolygon>[];
  const parts = land.flatMap(({ geometry }) =>
    geometry.type === "Polygon" ? [geometry.coordinates] : geometry.coordinates,
  );
  expect(covers(parts, lon, lat) ? "land" : "water").toBe(what);
});

test("the coasts for the whole world know no Bay of Kotor, which is why there are finer ones", async () => {
  expect(covers(await polygons("land"), 18.66, 42.44)).toBe(true);
});

test("from near smaller places have names with their elevations, no two in each other's room", async () => {
  const places = (await nearLayer(47.27, 11.39, "places")) as Feature<Point>[];
  expect(places.length).toBeGreaterThan(200);
  const named = new Map(places.map(({ properties }) => [properties?.name, properties]));
  // GeoNames, as the place search has them.
  expect(named.get("Mayrhofen")?.elevation_m).toBe(633);
  expect(named.get("Vipiteno")?.elevation_m).toBe(948);
  // Named from afar already.
  expect(named.has("Munich")).toBe(false);
  const px = ({ geometry: { coordinates } }: Feature<Point>) => {
    const [lon = 0, lat = 0] = coordinates;
    const y = 0.5 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / (2 * Math.PI);
    return [
      Math.floor((((lon + 180) / 360) * 512 * 2 ** 8) / 64),
      Math.floor((y * 512 * 2 ** 8) / 64),
    ];
  };
  // A position in a tile is rounded, so that one at a square's edge may come to lie in the next.
  const squares = new Set(places.map((place) => px(place).join(" ")));
  expect(squares.size).toBeGreaterThan(0.97 * places.length);
});

test("all of it is small: below 48 MB, 40 MB more for what people take along, the map's drawing below 1 MB packed", () => {
  const files = readdirSync(DIR, { recursive: true, withFileTypes: true }).filter((f) =>
    f.isFile(),
  );
  const bytes = (some: typeof files) =>
    some.reduce((sum, f) => sum + readFileSync(join(f.parentPath, f.name)).length, 0);
  const [packs, rest] = [true, false].map((packs) =>
    files.filter((f) => f.parentPath.endsWith("packs") === packs),
  ) as [typeof files, typeof files];
  expect(bytes(rest)).toBeLessThan(48e6);
  expect(bytes(packs)).toBeLessThan(40e6);
  const packed = ["land", "lakes", "rivers", "borders", "labels"].map(
    (name) => gzipSync(readFileSync(join(DIR, `${name}.json`))).length,
  );
  expect(packed.reduce((a, b) => a + b)).toBeLessThan(1e6);
});
