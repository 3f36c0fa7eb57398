import { beforeAll, expect, test } from "vitest";
import { foldName } from "../../../model/geography/fold.ts";
import { ensureGeography } from "../../../server/geography/build.ts";
import { GeographyMissing, openGeography } from "../../../server/geography/geography.ts";
import { readFrom } from "../../../server/geography/read-files.ts";
import { readSettlements, type Settlement } from "../../../server/geography/settlements.ts";
import { seeded } from "../../model/fit/simulated-crowd.ts";

const DIR = "data/geography";
const geography = openGeography(readFrom(DIR));
let settlements: Settlement[];

beforeAll(async () => {
  await ensureGeography(DIR);
  settlements = await readSettlements();
});

const first = async (query: string) => (await geography.search(query, 5))[0];

test.each([
  ["Leadville", "Leadville", "Colorado", "United States"],
  ["leadvile", "Leadville", "Colorado", "United States"],
  ["eladville", "Leadville", "Colorado", "United States"],
  ["Leadville, CO", "Leadville", "Colorado", "United States"],
  ["La Paz", "La Paz", null, "Bolivia"],
  ["la paz mexico", "La Paz", null, "Mexico"],
  ["paris, texas", "Paris", "Texas", "United States"],
  ["zurich", "Zürich", null, "Switzerland"],
  ["Zürich", "Zürich", null, "Switzerland"],
  ["sao paulo", "São Paulo", null, "Brazil"],
  ["Köln", "Köln", null, "Germany"],
  ["Cologne", "Köln", null, "Germany"],
  ["Лхаса", "Lhasa", null, "China"],
  ["拉萨", "Lhasa", null, "China"],
  ["서울", "Seoul", null, "South Korea"],
  ["دمشق", "Damascus", null, "Syria"],
  ["El Alto", "El Alto", null, "Bolivia"],
  ["Leadville, Colorado, Vereinigte Staaten", "Leadville", "Colorado", "United States"],
  ["la paz, bolivien", "La Paz", null, "Bolivia"],
  ["Leadville, Colorado, USA", "Leadville", "Colorado", "United States"],
  ["leadvile co usa", "Leadville", "Colorado", "United States"],
  ["Leadville CO, USA", "Leadville", "Colorado", "United States"],
  ["Leadville, CO 80461", "Leadville", "Colorado", "United States"],
  ["san francisco california usa", "San Francisco", "California", "United States"],
  ["Lhasa, Tibet", "Lhasa", null, "China"],
  ["Innsbruck Tirol", "Innsbruck", null, "Austria"],
  ["Zermatt, Wallis, Switzerland", "Zermatt", null, "Switzerland"],
  ["khardung la", "Khardung La", "Ladakh", "India"],
  ["Loveland Pass, CO", "Loveland Pass", "Colorado", "United States"],
  ["mauna kea hawaii", "Mauna Kea", "Hawaii", "United States"],
  ["stilfser joch", "Stelvio Pass", "Lombardia", "Italy"],
  ["St. Moritz, Graubünden", "St. Moritz", null, "Switzerland"],
  ["Denver, Colorado 80202", "Denver", "Colorado", "United States"],
  ["khardung la ladakh", "Khardung La", "Ladakh", "India"],
  ["San Francisco", "San Francisco", "California", "United States"],
  ["San Francisco Pass", "Paso de San Francisco", "Catamarca", "Argentina"],
])("%s finds %s, %s, %s", async (query, name, region, country) => {
  expect(await first(query)).toMatchObject({ name, region, country });
});

test("a place comes with how far its elevation may be off for someone near it, as the estimate there has it", async () => {
  for (const query of ["Leadville", "Husum", "Zermatt", "khardung la"]) {
    const place = await first(query);
    const there = await geography.elevation(place?.lat as number, place?.lon as number);
    expect([query, place?.elevation_sd_m]).toEqual([query, there.sd_m]);
    expect(there.source).toBe("known point");
  }
  // Flat land is known better than the mountains.
  const sd = async (query: string) => (await first(query))?.elevation_sd_m as number;
  expect(await sd("Husum")).toBeLessThan(await sd("Zermatt"));
});

test("towns come with their elevations", async () => {
  // United States Board on Geographic Names, Leadville: 10,158 ft; La Paz: about 3,640 m at its centre (from memory).
  expect(Math.abs(((await first("Leadville"))?.elevation_m ?? 0) - 10_158 * 0.3048)).toBeLessThan(
    30,
  );
  expect(Math.abs(((await first("La Paz"))?.elevation_m ?? 0) - 3640)).toBeLessThan(200);
});

test("every place has an elevation that the earth has, estimated where the data give none", async () => {
  const unknown = settlements.filter((s) => s.elevation_m === null);
  expect(unknown.length).toBeGreaterThan(100);
  for (const { name, lat } of unknown.slice(0, 40)) {
    const found = (await geography.search(name, 40)).find((p) => Math.abs(p.lat - lat) < 0.001);
    if (found) expect(found.elevation_m).toBeTypeOf("number");
  }
  const known = settlements.flatMap((s) => s.elevation_m ?? []);
  expect(Math.min(...known.slice(0, 1e5))).toBeGreaterThan(-450);
  expect(known.every((m) => m > -450 && m < 5800)).toBe(true);
});

test("same name: the more populous first", async () => {
  const found = await geography.search("Springfield", 10);
  const exact = found.filter((p) => p.name === "Springfield").map((p) => p.population);
  expect(exact.length).toBeGreaterThan(2);
  expect(exact).toEqual(exact.toSorted((a, b) => b - a));
});

test.each([
  // Passes, real and invented, that no list here has: each begins or ends like a town somewhere else.
  "Sella Nevea Pass",
  "Engineer Pass",
  "Abra Patapampa",
  "Paso de Sico",
  "Kunzum La",
  "Pang La",
  "Cordoba Pass",
  "Col de Santiago",
  "Paris Pass",
  "Passo Roma",
  "London La",
])("%s is no place that is called so in part", async (query) => {
  const found = await geography.search(query, 5);
  expect(found.filter(({ match }) => match !== "nearly")).toEqual([]);
  expect(found.map(({ name }) => foldName(name).split(" ").length)).not.toContain(1);
});

/** What the codes of the place data mean, by the largest city there: any school atlas. */
test.each([
  ["Innsbruck", "Tirol"],
  ["Graz", "Styria"],
  ["Klagenfurt am Wörthersee", "Kärnten"],
  ["Linz", "Upper Austria"],
  ["Sankt Pölten", "Niederösterreich"],
  ["Eisenstadt", "Burgenland"],
  ["Bregenz", "Vorarlberg"],
  ["Salzburg", "Salzburg"],
  ["Wien", "Wien"],
  ["Sydney", "NSW"],
  ["Melbourne", "Victoria"],
  ["Brisbane", "Queensland"],
  ["Adelaide", "South Australia"],
  ["Perth", "Western Australia"],
  ["Hobart", "Tasmania"],
  ["Darwin", "Northern Territory"],
  ["Canberra", "ACT"],
  ["Aarau", "Aargau"],
  ["Bern", "Berne"],
  ["Glarus", "Glarus"],
  ["Chur", "Grisons"],
  ["Luzern", "Lucerne"],
  ["Stans", "Nidwalden"],
  ["Sarnen", "Obwalden"],
  ["Sankt Gallen", "St. Gallen"],
  ["Schwyz", "Schwyz"],
  ["Bellinzona", "Ticino"],
  ["Altdorf", "Uri"],
  ["Lausanne", "Vaud"],
  ["Sion", "Valais"],
  ["Zürich", "Zürich"],
  ["Lhasa", "Xizang"],
  ["Xining", "Qinghai"],
  ["Ürümqi", "Xinjiang"],
  ["Chengdu", "Sichuan"],
  ["Kunming", "Yunnan"],
  ["Stuttgart", "Baden-Württemberg"],
  ["Munich", "Bavaria"],
  ["Frankfurt am Main", "Hesse"],
  ["Hannover", "Lower Saxony"],
  ["Köln", "NRW"],
  ["Mainz", "Rheinland-Pfalz"],
  ["Kiel", "Schleswig-Holstein"],
  ["Potsdam", "Brandenburg"],
  ["Dresden", "Saxony"],
  ["Magdeburg", "Sachsen-Anhalt"],
  ["Erfurt", "Thuringia"],
  ["L'Aquila", "Abruzzo"],
  ["Udine", "Friuli"],
  ["Genoa", "Liguria"],
  ["Milan", "Lombardy"],
  ["Turin", "Piedmont"],
  ["Florence", "Tuscany"],
  ["Bolzano", "Südtirol"],
  ["Aosta", "Aosta Valley"],
  ["Venice", "Veneto"],
])("%s lies in %s", async (city, region) => {
  const found = await first(`${city}, ${region}`);
  expect(found?.match).toBe("name");
});

/** The slips of a hurried hand: a letter missing, added, wrong, or two swapped. */
const slips: Record<string, (name: string, at: number) => string> = {
  missing: (name, at) => name.slice(0, at) + name.slice(at + 1),
  added: (name, at) => `${name.slice(0, at)}x${name.slice(at)}`,
  wrong: (name, at) => `${name.slice(0, at)}x${name.slice(at + 1)}`,
  swapped: (name, at) =>
    name.slice(0, at) + (name[at + 1] ?? "") + (name[at] ?? "") + name.slice(at + 2),
};

test.each([
  // Harder than the others, 96 in 100 over 3,000 tries: what is left is often another place's name.
  ["missing", 1000],
  ["added", 200],
  ["wrong", 200],
  ["swapped", 200],
] as const)("a letter %s: of %i, 95 in 100 found among the first ten", async (slip, tries) => {
  const { uniform } = seeded(3);
  const pick = (n: number) => Math.floor(uniform() * n);
  const named = settlements.filter((s) =>
    foldName(s.name)
      .split(" ")
      .some((word) => word.length >= 5),
  );
  let found = 0;
  for (let i = 0; i < tries; i++) {
    const { name, lat } = named[pick(named.length)] as Settlement;
    const folded = foldName(name);
    // A slip in a letter, not in the blank between two words.
    const words = folded.split(" ");
    const longest = words.reduce((a, b) => (b.length > a.length ? b : a));
    const at = folded.indexOf(longest) + pick(longest.length - (slip === "swapped" ? 1 : 0));
    const wrong = slips[slip]?.(folded, at) ?? "";
    const answers = await geography.search(wrong, 10);
    if (answers.some((p) => Math.abs(p.lat - lat) < 1e-3 || foldName(p.name) === folded)) found++;
  }
  expect(found / tries).toBeGreaterThanOrEqual(0.95);
});

test("every name of a city finds it", async () => {
  const { uniform } = seeded(4);
  let found = 0;
  const tries = 200;
  for (let i = 0; i < tries; i++) {
    const { ownNames, otherNames, lat } = settlements[Math.floor(uniform() * 3000)] as Settlement;
    const names = [...ownNames, ...otherNames];
    const name = names[Math.floor(uniform() * names.length)] as string;
    const answers = await geography.search(name, 20);
    if (answers.some((p) => Math.abs(p.lat - lat) < 1e-3)) found++;
  }
  expect(found / tries).toBeGreaterThanOrEqual(0.95);
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
  ",",
  ",,,,",
  "Leadville, Switzerland",
  "in ".repeat(30),
  "\ud800",
])("nonsense finds nothing and breaks nothing: %j", async (query) => {
  expect(await geography.search(query, 5)).toEqual([]);
});

test("missing files are said to be missing, and are found once they are there", async () => {
  let there = false;
  const read = readFrom(DIR);
  const late = openGeography(async (path) => (there ? read(path) : null));
  await expect(late.search("La Paz", 1)).rejects.toThrow(GeographyMissing);
  await expect(late.elevation(0, 0)).rejects.toThrow(GeographyMissing);
  expect(await late.ready()).toBe(false);
  there = true;
  expect(await late.ready()).toBe(true);
  expect(await late.search("La Paz", 1)).toHaveLength(1);
  expect(await late.elevation(39.25, -106.29)).toMatchObject({
    elevation_m: 3097,
    nearest: { name: "Leadville" },
  });
});
