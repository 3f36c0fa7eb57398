import { readdirSync, readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { decode } from "fast-png";
import type { Feature, FeatureCollection, MultiPolygon, Position } from "geojson";
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

test("all of it is small: below 40 MB, as much again for what people take along, the map's drawing below 1 MB packed", () => {
  const files = readdirSync(DIR, { recursive: true, withFileTypes: true }).filter((f) =>
    f.isFile(),
  );
  const bytes = (some: typeof files) =>
    some.reduce((sum, f) => sum + readFileSync(join(f.parentPath, f.name)).length, 0);
  const [packs, rest] = [true, false].map((packs) =>
    files.filter((f) => f.parentPath.endsWith("packs") === packs),
  ) as [typeof files, typeof files];
  expect(bytes(rest)).toBeLessThan(40e6);
  expect(bytes(packs)).toBeLessThan(40e6);
  const packed = ["land", "lakes", "rivers", "borders", "labels"].map(
    (name) => gzipSync(readFileSync(join(DIR, `${name}.json`))).length,
  );
  expect(packed.reduce((a, b) => a + b)).toBeLessThan(1e6);
});
