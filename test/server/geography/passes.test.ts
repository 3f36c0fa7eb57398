import { readFileSync } from "node:fs";
import { join } from "node:path";
import { distance } from "geokdbush";
import { beforeAll, describe, expect, test } from "vitest";
import { foldName } from "../../../model/geography/fold.ts";
import {
  elevationAt,
  loadTerrain,
  relief,
  type Terrain,
} from "../../../model/geography/terrain.ts";
import { ensureGeography } from "../../../server/geography/build.ts";
import { openGeography } from "../../../server/geography/geography.ts";
import { type Pass, readPasses, variantsOf } from "../../../server/geography/passes.ts";
import { readFrom } from "../../../server/geography/read-files.ts";
import { readSettlements } from "../../../server/geography/settlements.ts";

const DIR = "data/geography";
const geography = openGeography(readFrom(DIR));
const passes = await readPasses();
let terrain: Terrain;
/** Numbers of the passes among the known points. */
let numbers: Map<Pass, number>;

beforeAll(async () => {
  await ensureGeography(DIR);
  terrain = loadTerrain(readFileSync(join(DIR, "grid.bin")), readFileSync(join(DIR, "points.bin")));
  const settlements = await readSettlements();
  numbers = new Map(
    passes.map((pass) => [
      pass,
      settlements.findIndex((s) => s.pass && s.name === pass.name && s.lat === pass.lat),
    ]),
  );
});

const namesOf = ({ name, otherNames }: Pass) => [name, ...otherNames];
const km = (a: Pass, b: Pass) => distance(a.lon, a.lat, b.lon, b.lat);

describe("the list of passes, plateaus and high camps", () => {
  test("at least 150, each elevation with the address where it was read", () => {
    expect(passes.length).toBeGreaterThanOrEqual(150);
    for (const { name, source } of passes) {
      const { protocol, hostname } = new URL(source);
      expect(protocol, name).toMatch(/^https?:$/);
      expect(hostname, name).toMatch(/\.[a-z]{2,}$/);
    }
  });

  test("every row is whole", () => {
    for (const { name, otherNames, country, lat, lon, elevation_m } of passes) {
      expect(name).not.toBe("");
      expect(country, name).toMatch(/^[A-Z]{2}$/);
      expect(Math.abs(lat), name).toBeLessThan(75);
      expect(Math.abs(lon), name).toBeLessThanOrEqual(180);
      expect(elevation_m, name).toBeGreaterThan(500);
      expect(elevation_m, name).toBeLessThan(5900);
      expect(new Set(otherNames).size, name).toBe(otherNames.length);
    }
  });

  test("nothing stands twice: no name, and no two within 1.2 km", () => {
    const owners = new Map<string, string>();
    for (const pass of passes) {
      for (const name of new Set(namesOf(pass).map(foldName))) {
        expect(owners.get(name), `${name} of ${pass.name}`).toBeUndefined();
        owners.set(name, pass.name);
      }
    }
    passes.forEach((a, i) => {
      for (const b of passes.slice(0, i)) {
        expect(km(a, b), `${a.name} and ${b.name}`).toBeGreaterThan(1.2);
      }
    });
  });

  test("they are on all continents where people sleep high, and say so in their scripts", () => {
    const countries = new Set(passes.map(({ country }) => country));
    for (const country of ["US", "CA", "AR", "PE", "BO", "CH", "FR", "NO", "MA", "TZ", "LS"])
      expect(countries).toContain(country);
    for (const country of ["IN", "NP", "CN", "PK", "TJ", "KG", "GE", "JP", "TW", "NZ"])
      expect(countries).toContain(country);
    const names = passes.flatMap(namesOf).join(" ");
    for (const script of ["Cyrillic", "Han", "Devanagari", "Arabic", "Georgian"])
      expect(names).toMatch(new RegExp(`\\p{Script=${script}}`, "u"));
  });
});

test("each is the first that is found, by any of its usual names and with its country behind it", async () => {
  for (const pass of passes) {
    for (const name of namesOf(pass)) {
      const [found] = await geography.search(name, 1);
      expect(found, name).toMatchObject({ name: pass.name, kind: "pass", match: "name" });
      expect(found?.elevation_m, name).toBe(pass.elevation_m);
    }
    const country = new Intl.DisplayNames("en", { type: "region" }).of(pass.country);
    const [found] = await geography.search(`${pass.name}, ${country}`, 1);
    expect(found, `${pass.name}, ${country}`).toMatchObject({ name: pass.name, match: "name" });
  }
});

test("a name without the word for a pass, or with it on the other side, finds the pass too", async () => {
  expect(variantsOf(["Passo dello Stelvio"])).toEqual([
    "stelvio",
    "passo stelvio",
    "stelvio passo",
    "stelvio pass",
  ]);
  expect(variantsOf(["Timmelsjoch", "La Silla", "Pass"])).toEqual([]);
  for (const [typed, name] of [
    ["gavia", "Gavia Pass"],
    ["col iseran", "Col de l'Iseran"],
    ["passo stelvio", "Stelvio Pass"],
    ["paso san francisco", "Paso de San Francisco"],
    ["khardung", "Khardung La"],
    ["acay", "Abra del Acay"],
    ["tourmalet pass", "Col du Tourmalet"],
  ] as const)
    expect((await geography.search(typed, 1))[0]?.name, typed).toBe(name);
});

test("plausible on the elevation grid: nine in ten within the interval claimed, and none beyond twice the relief about it", () => {
  // A grid of 20 km cells does not see a ridge or a summit on its own; a slip of the pen or a wrong place it does see.
  let within = 0;
  for (const pass of passes) {
    const { name, lat, lon, elevation_m } = pass;
    const estimate = elevationAt(lat, lon, terrain, numbers.get(pass));
    const off_m = Math.abs(estimate.elevation_m - elevation_m);
    if (off_m <= estimate.uncertainty_95_m) within++;
    const most_m = Math.max(estimate.uncertainty_95_m, 1.8 * relief(terrain.grid, lat, lon));
    expect(off_m, `${name}: ${estimate.elevation_m} m by the grid`).toBeLessThanOrEqual(most_m);
  }
  expect(within / passes.length).toBeGreaterThanOrEqual(0.85);
});

test("each is a known point of its own elevation", () => {
  for (const { name, lat, lon, elevation_m } of passes) {
    expect(elevationAt(lat, lon, terrain), name).toMatchObject({
      elevation_m,
      source: "known point",
    });
  }
});

const published: [name: string, published: number, unit: "m" | "ft", source: string][] = JSON.parse(
  readFileSync("test/reference/pass-elevations.json", "utf8"),
).rows;

test.each(published)("%s: %d %s by the list of %s", async (name, figure, unit) => {
  const published_m = unit === "ft" ? figure * 0.3048 : figure;
  const [found] = await geography.search(name, 1);
  expect(found).toMatchObject({ name, kind: "pass" });
  expect(Math.abs((found?.elevation_m ?? 0) - published_m)).toBeLessThanOrEqual(10);
  const { elevation_m } = await geography.elevation(found?.lat ?? 0, found?.lon ?? 0);
  expect(Math.abs(elevation_m - published_m)).toBeLessThanOrEqual(10);
});
