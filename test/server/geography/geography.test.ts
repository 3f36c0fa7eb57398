import { readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { decode } from "fast-png";
import type { Feature, FeatureCollection, MultiPolygon } from "geojson";
import { beforeAll, describe, expect, test } from "vitest";
import { foldName } from "../../../model/geography/fold.ts";
import { oneLetterApart, searchPlaces } from "../../../model/geography/places.ts";
import {
  elevationAt,
  gridElevation,
  loadTerrain,
  relief,
  type Terrain,
} from "../../../model/geography/terrain.ts";
import { ensureGeography } from "../../../server/geography/build.ts";
import { GeographyMissing, openGeography } from "../../../server/geography/geography.ts";
import { PASSES } from "../../../server/geography/passes.ts";
import { readFrom } from "../../../server/geography/read-files.ts";
import { readSettlements, type Settlement } from "../../../server/geography/settlements.ts";
import { seeded } from "../../model/fit/simulated-crowd.ts";

const DIR = "data/geography";
const geography = openGeography(readFrom(DIR));
let settlements: Settlement[];
let terrain: Terrain;

beforeAll(async () => {
  await ensureGeography(DIR, { log: () => {} });
  settlements = await readSettlements();
  terrain = loadTerrain(readFileSync(join(DIR, "grid.bin")), readFileSync(join(DIR, "points.bin")));
});

describe("place search", () => {
  const first = async (query: string) => (await geography.search(query, 5))[0];

  test.each([
    ["Leadville", "Leadville", "United States"],
    ["leadvile", "Leadville", "United States"],
    ["eladville", "Leadville", "United States"],
    ["La Paz", "La Paz", "Bolivia"],
    ["zurich", "Zürich", "Switzerland"],
    ["Zürich", "Zürich", "Switzerland"],
    ["sao paulo", "São Paulo", "Brazil"],
    ["Лхаса", "Lhasa", "China"],
    ["拉萨", "Lhasa", "China"],
    ["khardung la", "Khardung La", "India"],
  ])("%s finds %s, %s", async (query, name, country) => {
    expect(await first(query)).toMatchObject({ name, country });
  });

  test("Leadville comes with its elevation", async () => {
    // GeoNames: 3,097 m surveyed; the town's own signs say 10,152 ft (3,094 m; from memory).
    expect((await first("Leadville"))?.elevation_m).toBeCloseTo(3097, -1);
  });

  test("same name: the more populous first", async () => {
    const found = await geography.search("Springfield", 10);
    const exact = found.filter((p) => p.name === "Springfield").map((p) => p.population);
    expect(exact.length).toBeGreaterThan(2);
    expect(exact).toEqual(exact.toSorted((a, b) => b - a));
  });

  test("one wrong letter still finds the place among the first ten, for 95 in 100", async () => {
    const { uniform } = seeded(3);
    const pick = (n: number) => Math.floor(uniform() * n);
    const named = settlements.filter((s) => s.population > 2000 && foldName(s.name).length >= 6);
    let found = 0;
    const tries = 300;
    for (let i = 0; i < tries; i++) {
      const { name, lat } = named[pick(named.length)] as Settlement;
      const folded = foldName(name);
      const at = pick(folded.length);
      const wrong = [
        folded.slice(0, at) + folded.slice(at + 1),
        `${folded.slice(0, at)}x${folded.slice(at)}`,
        `${folded.slice(0, at)}x${folded.slice(at + 1)}`,
      ][pick(3)] as string;
      const answers = await geography.search(wrong, 10);
      if (answers.some((p) => Math.abs(p.lat - lat) < 1e-3 || foldName(p.name) === folded)) found++;
    }
    expect(found / tries).toBeGreaterThan(0.95);
  });

  test.each([
    "",
    "   ",
    "!!!",
    "x".repeat(5000),
    "'; DROP TABLE tunes;--",
    "<script>alert(1)</script>",
    "\u0000",
    "../../etc/passwd",
    "qqqqqqqq",
  ])("nonsense finds nothing and breaks nothing: %j", async (query) => {
    expect(await geography.search(query, 5)).toEqual([]);
  });

  test("one letter apart", () => {
    for (const other of ["lhas", "lhassa", "lhaza", "hlasa"])
      expect(oneLetterApart("lhasa", other)).toBe(true);
    for (const other of ["lhasa", "lima", "halas"])
      expect(oneLetterApart("lhasa", other)).toBe(false);
  });

  test("missing files are said to be missing", async () => {
    const nowhere = openGeography(async () => null);
    await expect(nowhere.search("La Paz", 1)).rejects.toThrow(GeographyMissing);
    await expect(nowhere.elevation(0, 0)).rejects.toThrow(GeographyMissing);
    expect(await nowhere.ready()).toBe(false);
    await expect(searchPlaces("La Paz", async () => null)).resolves.toEqual([]);
  });
});

describe("elevation of any point, left out one at a time", () => {
  /** Grid relief within 45 km, m: what makes a place a mountain place. */
  const wideRelief = (lat: number, lon: number) => {
    const around = [-0.4, -0.2, 0, 0.2, 0.4];
    const heights = around.flatMap((dy) =>
      around.map((dx) =>
        gridElevation(terrain.grid, lat + dy, lon + dx / Math.cos((lat * Math.PI) / 180)),
      ),
    );
    return Math.max(...heights) - Math.min(...heights);
  };

  /** A fixed sample of 2,000 known places, with the number each has among the points. */
  function sample(seed: number, wanted: (s: Settlement) => boolean): [Settlement, number][] {
    const known = settlements.filter((s) => s.elevation_m !== null);
    const { uniform } = seeded(seed);
    const chosen: [Settlement, number][] = [];
    while (chosen.length < 2000) {
      const i = Math.floor(uniform() * known.length);
      const settlement = known[i] as Settlement;
      if (wanted(settlement)) chosen.push([settlement, i]);
    }
    return chosen;
  }

  test.each([
    ["places", 11, () => true, 17, 115],
    [
      "mountain places",
      12,
      (s: Settlement) => Math.abs(s.lat) < 70 && wideRelief(s.lat, s.lon) >= 600,
      48,
      260,
    ],
  ] as const)("%s", (_, seed, wanted, median_m, p90_m) => {
    const errors: number[] = [];
    let [within_68, within_95] = [0, 0];
    for (const [{ lat, lon, elevation_m }, i] of sample(seed, wanted)) {
      const estimate = elevationAt(lat, lon, terrain, i);
      const error = Math.abs(estimate.elevation_m - (elevation_m as number));
      errors.push(error);
      if (error <= estimate.uncertainty_68_m) within_68++;
      if (error <= estimate.uncertainty_95_m) within_95++;
    }
    errors.sort((a, b) => a - b);
    expect(errors.length).toBe(2000);
    expect(errors[1000]).toBeLessThanOrEqual(median_m);
    expect(errors[1800]).toBeLessThanOrEqual(p90_m);
    expect(Math.abs(within_68 / 2000 - 0.68)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(within_95 / 2000 - 0.95)).toBeLessThanOrEqual(0.05);
  });

  test("at a known point its own elevation; on the open sea nought", () => {
    expect(elevationAt(39.25082, -106.29252, terrain)).toMatchObject({
      elevation_m: 3097,
      source: "known point",
    });
    expect(elevationAt(0, -140, terrain)).toMatchObject({ elevation_m: 0, source: "sea" });
  });

  test("poles, antimeridian and nonsense", () => {
    for (const [lat, lon] of [
      [90, 0],
      [-90, 180],
      [10, 180],
      [10, -180],
    ] as const) {
      expect(Number.isFinite(elevationAt(lat, lon, terrain).elevation_m)).toBe(true);
    }
    expect(gridElevation(terrain.grid, 66, 180)).toBeCloseTo(
      gridElevation(terrain.grid, 66, -180),
      6,
    );
    expect(() => elevationAt(91, 0, terrain)).toThrow("lat and lon");
    expect(() => elevationAt(Number.NaN, 0, terrain)).toThrow("lat and lon");
  });

  test("listed passes are known points with a cautious margin", () => {
    for (const { lat, lon, elevation_m } of PASSES) {
      expect(elevationAt(lat, lon, terrain).elevation_m).toBeCloseTo(elevation_m, -2);
      expect(relief(terrain.grid, lat, lon)).toBeGreaterThan(200);
    }
  });
});

describe("map files", () => {
  test("an elevation tile decodes to the grid's elevation", async () => {
    // Tile 4/4/6 holds the western United States; pixel to position by Web Mercator.
    const { data, channels } = decode(await readFile(join(DIR, "tiles/4/3/6.png")));
    for (const [column, row] of [
      [10, 20],
      [128, 128],
      [250, 7],
    ] as const) {
      const at = (row * 256 + column) * channels;
      const decoded = (data[at] as number) * 256 + (data[at + 1] as number) - 32768;
      const lat =
        (Math.atan(Math.sinh(Math.PI * (1 - (2 * (6 * 256 + row + 0.5)) / 4096))) * 180) / Math.PI;
      const lon = ((3 * 256 + column + 0.5) / 4096) * 360 - 180;
      expect(Math.abs(decoded - gridElevation(terrain.grid, lat, lon))).toBeLessThanOrEqual(1);
    }
  });

  test.each(["land", "sea", "lakes"])(
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

  test("labels carry elevations", async () => {
    const { features } = JSON.parse(
      await readFile(join(DIR, "labels.json"), "utf8"),
    ) as FeatureCollection;
    expect(features.length).toBeGreaterThan(5000);
    expect(features.every((f: Feature) => typeof f.properties?.elevation_m === "number")).toBe(
      true,
    );
  });
});
