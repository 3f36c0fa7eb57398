import { countryName, foldedCountryNames } from "./country.ts";
import { foldName } from "./fold.ts";

/** A place the search can answer with. */
export interface Place {
  name: string;
  /** State or province, where its name is known. */
  region: string | null;
  /** Its English name. */
  country: string | null;
  /** ISO 3166-1, two letters. */
  country_code: string | null;
  lat: number;
  lon: number;
  /** Geometric elevation above mean sea level; null where no source knows it. */
  elevation_m: number | null;
  population: number;
  kind: "place" | "pass";
}

/** Reads one of the files the build makes; null when it is not there. */
export type ReadText = (path: string) => Promise<string | null>;

/** A place as its file keeps it: name, number of its region, lat, lon, elevation, population, 1 for a pass. */
export type PlaceRecord = [string, number, number, number, number | null, number, 0 | 1];

/**
 * A region as its file keeps it: its name, its short name, its country's code, what people write for it; a country alone has no
 * names of its own.
 */
export type RegionRecord = [
  name: string | null,
  short: string | null,
  country_code: string | null,
  ...written: string[],
];

/** Places per file of records. Places are numbered by population, the largest first. */
export const RECORDS_PER_FILE = 500;
export const REGIONS_FILE = "regions.json";
/** Each place's region, two digits to the base 36. */
export const REGION_OF_PLACE_FILE = "region-of-place.txt";
export const REGION_DIGITS = 2;

/** Short names in daily use that are not the codes of ISO 3166. */
const USUAL_SHORT: Record<string, string> = { usa: "united states", uk: "united kingdom" };

export function recordFile(number: number): string {
  return `places/${Math.floor(number / RECORDS_PER_FILE)}.json`;
}

/**
 * The place of a number.
 * @throws when the index has no such place
 */
export async function readRecord(read: ReadText, number: number): Promise<Place> {
  const [text, regions] = await Promise.all([read(recordFile(number)), readRegions(read)]);
  const row = text && (JSON.parse(text) as PlaceRecord[])[number % RECORDS_PER_FILE];
  const region = row && regions[row[1]];
  if (!region) throw new Error(`The place index has no record ${number}.`);
  const [name, , lat, lon, elevation_m, population, pass] = row;
  const country_code = region[2];
  const kind = pass ? "pass" : "place";
  return {
    name,
    region: region[0],
    country: country_code === null ? null : countryName(country_code),
    country_code,
    lat,
    lon,
    elevation_m,
    population,
    kind,
  };
}

/** Whether a place lies in a region or country of this name, or of a name that begins so; null for no such region. */
export async function whereabouts(
  name: string,
  read: ReadText,
): Promise<((number: number) => boolean) | null> {
  const regions = await readRegions(read);
  const wanted = new Set<number>();
  const asked = USUAL_SHORT[name] ?? name;
  regions.forEach(([region, short, country_code, ...written], i) => {
    const full = [region, ...written].map((n) => foldName(n ?? ""));
    if (country_code !== null) full.push(...foldedCountryNames(country_code));
    const begins = asked.length > 2 && full.some((n) => n.startsWith(asked));
    if (begins || foldName(short ?? "") === asked) wanted.add(i);
  });
  if (wanted.size === 0) return null;
  const of = (await read(REGION_OF_PLACE_FILE)) ?? "";
  return (number) => {
    const at = number * REGION_DIGITS;
    return wanted.has(Number.parseInt(of.slice(at, at + REGION_DIGITS), 36));
  };
}

async function readRegions(read: ReadText): Promise<RegionRecord[]> {
  return JSON.parse((await read(REGIONS_FILE)) ?? "[]") as RegionRecord[];
}
