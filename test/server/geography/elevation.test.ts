import { readFileSync } from "node:fs";
import { join } from "node:path";
import KDBush from "kdbush";
import { beforeAll, expect, test } from "vitest";
import {
  elevationAt,
  gridElevation,
  loadTerrain,
  packPoints,
  type Terrain,
  UNKNOWN_m,
} from "../../../model/geography/terrain.ts";
import { uncertainty } from "../../../model/geography/uncertainty.ts";
import { ensureGeography } from "../../../server/geography/build.ts";
import { readAirfields } from "../../../server/geography/points.ts";
import { readSettlements, type Settlement } from "../../../server/geography/settlements.ts";
import { seeded } from "../../model/fit/simulated-crowd.ts";

const DIR = "data/geography";
let settlements: Settlement[];
let terrain: Terrain;

beforeAll(async () => {
  await ensureGeography(DIR);
  settlements = await readSettlements();
  terrain = loadTerrain(readFileSync(join(DIR, "grid.bin")), readFileSync(join(DIR, "points.bin")));
});

/** Grid relief in a window about a position, m: what makes a place a mountain place. */
const windowRelief = (lat: number, lon: number, halfWidth_km: number) => {
  const steps = [-1, -0.5, 0, 0.5, 1].map((share) => (share * halfWidth_km) / 111.2);
  const heights = steps.flatMap((dy) =>
    steps.map((dx) =>
      gridElevation(terrain.grid, lat + dy, lon + dx / Math.cos((lat * Math.PI) / 180)),
    ),
  );
  return Math.max(...heights) - Math.min(...heights);
};

interface Known {
  lat: number;
  lon: number;
  elevation_m: number;
  /** Number among the points, to be left out. */
  number: number;
}

/** A fixed sample of known elevations. */
function sample(seed: number, from: readonly Known[]): Known[] {
  const { uniform } = seeded(seed);
  return Array.from({ length: 2000 }, () => from[Math.floor(uniform() * from.length)] as Known);
}

/** Errors in order, and the share of them within the stated intervals, in %. */
function leftOut(known: readonly Known[], terrain: Terrain) {
  const rows = known.map(({ lat, lon, elevation_m, number }) => {
    const estimate = elevationAt(lat, lon, terrain, number);
    return { ...estimate, error: Math.abs(estimate.elevation_m - elevation_m) };
  });
  const errors = rows.map((r) => r.error).sort((a, b) => a - b);
  const share = (within: (r: (typeof rows)[number]) => boolean) =>
    (100 * rows.filter(within).length) / rows.length;
  return {
    median_m: errors[Math.floor(errors.length / 2)] as number,
    p90_m: errors[Math.floor(0.9 * errors.length)] as number,
    within_68: share((r) => r.error <= r.uncertainty_68_m),
    within_95: share((r) => r.error <= r.uncertainty_95_m),
  };
}

const places = () =>
  settlements.flatMap(({ lat, lon, elevation_m }, number) =>
    elevation_m === null ? [] : [{ lat, lon, elevation_m, number }],
  );
const isMountain =
  (halfWidth_km: number) =>
  ({ lat, lon }: Known) =>
    Math.abs(lat) < 70 && windowRelief(lat, lon, halfWidth_km) >= 600;

test.each([
  ["places", 11, () => true, 17, 115],
  ["mountain places (600 m of relief within 45 km)", 12, isMountain(45), 48, 260],
  ["steep places (600 m of relief in a window 45 km wide)", 14, isMountain(22.5), 48, 260],
] as const)("%s, left out one at a time", (_, seed, wanted, median_m, p90_m) => {
  const found = leftOut(sample(seed, places().filter(wanted)), terrain);
  expect(found.median_m).toBeLessThanOrEqual(median_m);
  expect(found.p90_m).toBeLessThanOrEqual(p90_m);
  expect(Math.abs(found.within_68 - 68)).toBeLessThanOrEqual(5);
  expect(Math.abs(found.within_95 - 95)).toBeLessThanOrEqual(5);
});

/** The terrain as the settlements alone give it. */
function withoutAirfields(): Terrain {
  const known = places();
  const index = new KDBush(known.length, 64, Float32Array);
  for (const { lat, lon } of known) index.add(lon, lat);
  index.finish();
  const elevations = Int16Array.from(known, (p) => p.elevation_m);
  return loadTerrain(terrain.grid, packPoints({ index, elevations, places: known.length }));
}

test("airfields' published elevations, from settlements alone", async () => {
  // The open airfield list (server/geography/data/SOURCES.md): another survey than the settlements'.
  const fields = (await readAirfields()).map((field) => ({ ...field, number: -1 }));
  const found = leftOut(sample(13, fields), withoutAirfields());
  expect(found.median_m).toBeLessThanOrEqual(20);
  expect(Math.abs(found.within_68 - 68)).toBeLessThanOrEqual(5);
  expect(Math.abs(found.within_95 - 95)).toBeLessThanOrEqual(5);
});

test("summits are the worst case: the 95 % interval holds half of the observatories' published elevations", () => {
  // A grid of 20 km cells cannot see a summit; the app therefore asks for a better elevation.
  const text = readFileSync("test/reference/observatory-elevations.json", "utf8");
  const rows: [string, number, number, number][] = JSON.parse(text).rows;
  const known = rows.map(([, lat, lon, elevation_m]) => ({ lat, lon, elevation_m, number: -1 }));
  expect(leftOut(known, terrain).within_95).toBeGreaterThanOrEqual(50);
});

test("uncertainty grows with relief, with distance and with the pull of the valleys", () => {
  const at = (relief_m: number, km: number, pull_m = 0) => uncertainty(relief_m, km, pull_m);
  for (const relief_m of [0, 150, 300, 600, 1000, 3000]) {
    const by_km = [0.5, 2, 4, 8, 20, 60].map((km) => at(relief_m, km).half_68_m);
    expect(by_km).toEqual(by_km.toSorted((a, b) => a - b));
  }
  for (const km of [0.5, 2, 4, 8, 20, Number.POSITIVE_INFINITY]) {
    const by_relief = [50, 250, 900, 2000].map((m) => at(m, km).half_95_m);
    expect(by_relief).toEqual(by_relief.toSorted((a, b) => a - b));
    const { half_68_m, half_95_m, sd_m } = at(900, km, -400);
    expect(half_95_m).toBeGreaterThanOrEqual(600);
    expect(sd_m).toBeGreaterThanOrEqual(Math.max(half_68_m, Math.floor(half_95_m / 1.96)));
  }
});

test("a point is near across the antimeridian", () => {
  const index = new KDBush(1, 64, Float32Array);
  index.add(179.99, -17);
  index.finish();
  const points = packPoints({ index, elevations: Int16Array.of(60), places: 1 });
  const flat = loadTerrain(new Uint8Array(2048 * 1024), points);
  const { source, nearest } = elevationAt(-17, -179.99, flat);
  expect(source).toBe("interpolated");
  // 0.02° of longitude at 17° S on a sphere of 6,371 km: 2,127 m.
  expect(Math.abs((nearest?.distance_m ?? 0) - 2127)).toBeLessThan(15);
});

test("points of unknown elevation are passed over; files of another form are refused", () => {
  const index = new KDBush(2, 64, Float32Array);
  index.add(10, 50);
  index.add(10.05, 50);
  index.finish();
  const points = packPoints({ index, elevations: Int16Array.of(UNKNOWN_m, 700), places: 1 });
  const small = loadTerrain(new Uint8Array(2048 * 1024), points);
  const { source, nearest } = elevationAt(50, 10, small);
  expect(source).toBe("interpolated");
  expect(nearest).toMatchObject({ place: null, name: null });
  // 0.05° of longitude at 50° N on a sphere of 6,371 km.
  expect(nearest?.distance_m).toBeGreaterThan(3560);
  expect(nearest?.distance_m).toBeLessThan(3590);
  expect(() => loadTerrain(new Uint8Array(7), points)).toThrow("7 cells");
});

test("one point, by hand: simple kriging's weight is the covariance alone", () => {
  const index = new KDBush(1, 64, Float32Array);
  index.add(0, 0);
  index.finish();
  const points = packPoints({ index, elevations: Int16Array.of(1000), places: 1 });
  const flat = loadTerrain(new Uint8Array(2048 * 1024), points);
  // Residual 1,000 m at 0.1° of the equator, 11.12 km on a sphere of 6,371 km: 0.98·exp(−d/8 km).
  const km = (6371 * 0.1 * Math.PI) / 180;
  expect(elevationAt(0, 0.1, flat).elevation_m).toBe(Math.round(980 * Math.exp(-km / 8)));
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
