import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { expect, test } from "vitest";
import { foldName } from "../../../model/geography/fold.ts";
import { oneLetterApart } from "../../../model/geography/letters.ts";
import {
  type NameEntry,
  packNames,
  shardOf,
  unpackNames,
} from "../../../model/geography/name-shards.ts";
import { type PlaceRecord, recordFile } from "../../../model/geography/place-records.ts";
import { searchPlaces } from "../../../model/geography/places.ts";

/** An invented index of four places: two called Asa, one once called so, and Birka. */
const own = (number: number) => ({ number, own: true });
const names: NameEntry[] = [
  { name: "asa", bearers: [{ number: 0, own: false }, own(1), own(2)] },
  { name: "birka", bearers: [own(0)] },
  { name: "asan tor", bearers: [own(3)] },
];
const records: PlaceRecord[] = [
  ["Birka", 0, 1, 2, 10, 900, 0],
  ["Åsa", 0, 3, 4, 20, 800, 0],
  ["Asa", 1, 5, 6, 30, 700, 0],
  ["Asan Tor", 1, 7, 8, null, 0, 1],
];
const files = new Map<string, string>([
  [recordFile(0), JSON.stringify(records)],
  [
    "regions.json",
    JSON.stringify([
      [null, "NZ", "NZ"],
      ["Northshire", "NS", "ZA"],
    ]),
  ],
  ["region-of-place.txt", "00000101"],
]);
for (const side of ["beginning", "end"] as const) {
  for (const file of new Set(names.map((n) => shardOf(n.name, side)))) {
    const here = names.filter((n) => shardOf(n.name, side) === file);
    files.set(file, packNames(here, side));
  }
}
const search = async (query: string, limit?: number) =>
  (await searchPlaces(query, async (path) => files.get(path) ?? null, limit)).map(
    (p) => `${p.name} ${p.match}`,
  );

test("best match first, then population; a former name counts less than a name of today", async () => {
  expect(await search("ASA")).toEqual(["Åsa name", "Asa name", "Birka name", "Asan Tor beginning"]);
  expect(await search("asa", 1)).toEqual(["Åsa name"]);
  expect(await search("brika")).toEqual(["Birka nearly"]);
  expect(await search("bitka")).toEqual(["Birka nearly"]);
});

test("a region or country after the name narrows it", async () => {
  expect(await search("asa, northshire")).toEqual(["Asa name", "Asan Tor beginning"]);
  expect(await search("asan tor, NS")).toEqual(["Asan Tor name"]);
  expect(await search("birka ns")).toEqual([]);
  // As the page says it in each of its languages; or its code.
  for (const named of ["South Africa", "Südafrika", "Sudáfrica", "sudafrica"]) {
    expect(await search(`asa, ${named}`)).toEqual(["Asa name", "Asan Tor beginning"]);
  }
  expect(await search("asa, Neuseeland")).toEqual(["Åsa name", "Birka name"]);
  expect(await search("asa, nz")).toEqual(["Åsa name", "Birka name"]);
  expect(await search("birka new zealand")).toEqual(["Birka name"]);
  expect(await search("asa, northshire, south africa")).toEqual(["Asa name", "Asan Tor beginning"]);
  expect(await search("asan tor ns south africa")).toEqual(["Asan Tor name"]);
  expect(await search("asan tor ns new zealand")).toEqual([]);
  expect(await search("asan tor new zealand")).toEqual([]);
});

test("nothing is guessed from a part of what was typed", async () => {
  expect(await search("birka elsewhere")).toEqual([]);
  expect(await search("birka pass")).toEqual([]);
  expect(await search("elsewhere birka")).toEqual([]);
  expect(await search("asan northshire")).toEqual([]);
  expect(await search("asan, northshire")).toEqual(["Asan Tor beginning"]);
});

test("after a comma, a region that is not known: another place may be meant", async () => {
  expect(await search("birka, elsewhere")).toEqual(["Birka nearly"]);
  expect(await search("birka, elsewhere, new zealand")).toEqual(["Birka nearly"]);
  expect(await search("birka, elsewhere, south africa")).toEqual([]);
  expect(await search("bitka, elsewhere")).toEqual([]);
  expect(await search("birka, new zealand 80461")).toEqual(["Birka name"]);
});

test("one letter apart in a long word of as many words, and in no short one", async () => {
  expect(await search("asan tur")).toEqual([]);
  expect(await search("asantor")).toEqual([]);
  expect(await search("asq")).toEqual([]);
  expect(await search("birkat")).toEqual(["Birka nearly"]);
  expect(await search("irka")).toEqual(["Birka nearly"]);
});

test("a place comes with all that is known of it", async () => {
  const [place] = await searchPlaces("asan tor", async (path) => files.get(path) ?? null);
  expect(place).toEqual({
    name: "Asan Tor",
    region: "Northshire",
    country: "South Africa",
    country_code: "ZA",
    lat: 7,
    lon: 8,
    elevation_m: null,
    population: 0,
    kind: "pass",
    match: "name",
  });
});

test("an index whose files disagree says so", async () => {
  const torn = async (path: string) =>
    path.startsWith("places/") ? "[]" : (files.get(path) ?? null);
  await expect(searchPlaces("birka", torn)).rejects.toThrow("no record 0");
});

test.each(["beginning", "end"] as const)("names packed by their %s come back whole", (side) => {
  const odd = [
    "",
    "a",
    "ab",
    "abc",
    "b𠮷",
    "b𠮷c",
    "𠮷b",
    "𠮸b",
    "лхаса",
    "x".repeat(60),
    "x".repeat(61),
  ];
  const entries = odd.map((name, i) => ({
    name,
    bearers: [own(i), { number: 7e5 + i, own: false }],
  }));
  const text = new TextDecoder().decode(new TextEncoder().encode(packNames(entries, side)));
  const back = unpackNames(text, side).toSorted(
    (a, b) => odd.indexOf(a.name) - odd.indexOf(b.name),
  );
  expect(back).toEqual(entries);
});

test("folding takes accents off and leaves other scripts their letters", () => {
  // Decompositions by Unicode Standard Annex 15; letters that it leaves whole by common practice, no source.
  expect(foldName("  Zürich ")).toBe("zurich");
  expect(foldName("São-Paulo")).toBe("sao paulo");
  expect(foldName("Łódź, Ærø; Straße")).toBe("lodz aero strasse");
  expect(foldName("Лхаса")).toBe("лхаса");
  expect(foldName("拉萨")).toBe("拉萨");
  expect(foldName("İzmir")).toBe("izmir");
  expect(foldName("Kapaʻa")).toBe("kapaa");
  expect(foldName("Ｔｏｋｙｏ")).toBe("tokyo");
});

test("one letter apart", () => {
  for (const other of ["lhas", "lhassa", "lhaza", "hlasa"]) {
    expect(oneLetterApart("lhasa", other)).toBe(true);
    expect(oneLetterApart(other, "lhasa")).toBe(true);
  }
  for (const other of ["lhasa", "lima", "halas", "lhasaaa"]) {
    expect(oneLetterApart("lhasa", other)).toBe(false);
  }
});

test("the model reads nothing itself", async () => {
  for (const file of [
    "places",
    "names",
    "name-and-region",
    "place-records",
    "name-shards",
    "terrain",
    "uncertainty",
  ]) {
    const text = await readFile(join("model/geography", `${file}.ts`), "utf8");
    expect(text).not.toMatch(/from "node:|fetch\(/);
  }
});
