import { foldName } from "./fold.ts";

/** A place the search can answer with. */
export interface Place {
  name: string;
  region: string | null;
  country: string | null;
  lat: number;
  lon: number;
  /** Geometric elevation above mean sea level; null where no source knows it. */
  elevation_m: number | null;
  population: number;
  kind: "place" | "pass";
}

/** How well a place's name matches: the whole name, its beginning, or either with one wrong letter. */
export type Match = "name" | "beginning" | "nearly";

/** A place as its record keeps it: name, region, country, lat, lon, elevation, population, 1 for a pass. */
export type PlaceRecord = [
  string,
  string | null,
  string | null,
  number,
  number,
  number | null,
  number,
  0 | 1,
];

/** Places per file of records. Places are numbered by population, the largest first. */
export const RECORDS_PER_FILE = 500;
/** Names are spread over so many shards a direction. */
export const SHARDS = 512;

/** Reads one of the files the build makes; null when it is not there. */
export type ReadText = (path: string) => Promise<string | null>;

/** Letters a shard is chosen by. */
const KEY_LETTERS = 2;
/** Shorter names have too many neighbours one letter away. */
const NEARLY_FROM_LETTERS = 4;
const QUERY_MOST_LETTERS = 60;

/** File with the names that begin like this one. */
export function shardByBeginning(folded: string): string {
  return `names/b${shard([...folded].slice(0, KEY_LETTERS))}.txt`;
}

/** File with the names that end like this one: finds a name whose first letters are wrong. */
export function shardByEnd(folded: string): string {
  return `names/e${shard([...folded].slice(-KEY_LETTERS))}.txt`;
}

export function recordFile(number: number): string {
  return `places/${Math.floor(number / RECORDS_PER_FILE)}.json`;
}

function shard(letters: string[]): number {
  let hash = 0;
  for (const letter of letters) hash = (hash * 31 + (letter.codePointAt(0) ?? 0)) % 1_000_003;
  return hash % SHARDS;
}

const RANK: Record<Match, number> = { name: 0, beginning: 1, nearly: 2 };

/**
 * Places by name, whatever its accents, in any script its people write it in, and with one wrong letter.
 * Ranked by match, then by population.
 * @param read reads the files of the place index
 * @param limit how many at most
 * @throws when the index is not there
 */
export async function searchPlaces(
  query: string,
  read: ReadText,
  limit = 10,
): Promise<(Place & { match: Match })[]> {
  const folded = [...foldName(query)].slice(0, QUERY_MOST_LETTERS).join("");
  if (folded === "") return [];
  const found = new Map<number, Match>();
  const note = (number: number, match: Match) => {
    const before = found.get(number);
    if (!before || RANK[match] < RANK[before]) found.set(number, match);
  };
  for (const { name, number } of await entries(read, shardByBeginning(folded))) {
    if (name === folded) note(number, "name");
    else if (name.startsWith(folded)) note(number, "beginning");
    else if (isNearly(folded, name)) note(number, "nearly");
  }
  const certain = [...found.values()].some((match) => match === "name");
  if (!certain) {
    for (const { name, number } of await entries(read, shardByEnd(folded))) {
      if (isNearly(folded, name)) note(number, "nearly");
    }
  }
  const best = [...found].sort(([a, x], [b, y]) => RANK[x] - RANK[y] || a - b).slice(0, limit);
  return Promise.all(
    best.map(async ([number, match]) => ({ ...(await record(read, number)), match })),
  );
}

async function entries(read: ReadText, file: string): Promise<{ name: string; number: number }[]> {
  const text = await read(file);
  return (text ?? "").split("\n").flatMap((line) => {
    const tab = line.indexOf("\t");
    return tab < 0
      ? []
      : [{ name: line.slice(0, tab), number: Number.parseInt(line.slice(tab + 1), 36) }];
  });
}

async function record(read: ReadText, number: number): Promise<Place> {
  const text = await read(recordFile(number));
  const row = text && (JSON.parse(text) as PlaceRecord[])[number % RECORDS_PER_FILE];
  if (!row) throw new Error(`The place index has no record ${number}.`);
  const [name, region, country, lat, lon, elevation_m, population, pass] = row;
  return {
    name,
    region,
    country,
    lat,
    lon,
    elevation_m,
    population,
    kind: pass ? "pass" : "place",
  };
}

function isNearly(query: string, name: string): boolean {
  return Math.min(query.length, name.length) >= NEARLY_FROM_LETTERS && oneLetterApart(query, name);
}

/** Whether one inserted, missing, wrong or swapped letter turns one text into the other (Damerau 1964). */
export function oneLetterApart(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  const [restA, restB] = [a.slice(start), b.slice(start)];
  if (a.length < b.length) return restA === restB.slice(1);
  if (a.length > b.length) return restA.slice(1) === restB;
  if (restA.slice(1) === restB.slice(1)) return true;
  return restA[0] === restB[1] && restA[1] === restB[0] && restA.slice(2) === restB.slice(2);
}
