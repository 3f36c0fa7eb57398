import { readFileSync, statSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { tilesOf } from "../../../client/base/answers/saved-countries.ts";
import {
  LARGE_FROM_PEOPLE,
  LARGE_PLACES_FILE,
  PACKS_FILE,
  type PackListing,
  type PlacePack,
  searchPacks,
} from "../../../model/geography/place-packs.ts";
import { ensureGeography } from "../../../server/geography/build.ts";
import { readSettlements } from "../../../server/geography/settlements.ts";

const read = <T>(file: string): T => JSON.parse(readFileSync(`data/geography/${file}`, "utf8"));
let large: PlacePack;
let listed: PackListing[];
const country = (code: string) => {
  const found = listed.find((one) => one.country_code === code);
  if (!found) throw new Error(`No pack of ${code}`);
  return found;
};

beforeAll(async () => {
  await ensureGeography();
  large = read(LARGE_PLACES_FILE);
  listed = read(PACKS_FILE);
});

test.each([
  ["zurich", "Zürich"],
  ["Cologne", "Köln"],
  ["拉萨", "Lhasa"],
  ["la paz bolivia", "La Paz"],
  ["munchen", "Munich"],
])("among the large places %s finds %s", async (query, name) => {
  expect((await searchPacks(query, [large]))[0]?.name).toBe(name);
});

test("every large place of the data is found by its own name", async () => {
  const all = (await readSettlements()).filter((s) => s.population >= LARGE_FROM_PEOPLE);
  expect(all.length).toBeGreaterThan(20_000);
  for (let i = 0; i < all.length; i += 97) {
    const { name, lat } = all[i] as (typeof all)[number];
    const found = await searchPacks(name, [large], 50);
    expect(
      found.some((place) => Math.abs(place.lat - lat) < 0.001),
      name,
    ).toBe(true);
  }
});

test("a country adds its small places and doubles none", async () => {
  expect(await searchPacks("Leadville", [large])).toEqual([]);
  const states = read<PlacePack>(country("US").file);
  const [first] = await searchPacks("leadvile", [large, states]);
  expect(first).toMatchObject({ name: "Leadville", region: "Colorado", elevation_m: 3097 });
  const denvers = await searchPacks("Denver, Colorado", [large, states]);
  expect(denvers.filter(({ population }) => population > 500_000)).toHaveLength(1);
});

test("a saved country brings the tiles under its frame", () => {
  expect(tilesOf(country("BO"))).toEqual(
    ["tiles/4/4/8.png", "tiles/4/5/8.png", "tiles/4/4/9.png", "tiles/4/5/9.png"].sort((a, b) =>
      a.localeCompare(b),
    ),
  );
});

test("a saved country brings the map from near about its places, and its size is that of all files", () => {
  for (const code of ["BO", "CH", "NZ"]) {
    const { file, near, bytes, places } = country(code);
    const size = (path: string) => statSync(`data/geography/${path}`).size;
    expect([file, ...near].reduce((sum, path) => sum + size(path), 0)).toBe(bytes);
    expect(new Set(near).size).toBe(near.length);
    expect(near.length).toBeGreaterThan(0);
    expect(near.length).toBeLessThan(places);
  }
  // EPSG:3857: tile 6/33/22 spans 5.6 to 11.2° east and 45.1 to 49.0° north (360/64 of longitude each).
  expect(country("CH").near).toEqual(["near/6/33/22.pbf"]);
});
