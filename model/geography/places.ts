import { foldName } from "./fold.ts";
import { middleSwapped, oneLetterApart } from "./letters.ts";
import { type Side, shardOf, unpackNames } from "./name-shards.ts";
import { readRecord, whereabouts } from "./place-records.ts";

/** A place the search can answer with. */
export interface Place {
  name: string;
  /** State or province, where its name is known. */
  region: string | null;
  country: string | null;
  lat: number;
  lon: number;
  /** Geometric elevation above mean sea level; null where no source knows it. */
  elevation_m: number | null;
  population: number;
  kind: "place" | "pass";
}

/** How well a place's name matches: the whole name, its beginning, or the name with one wrong letter. */
export type Match = "name" | "beginning" | "nearly";

export type FoundPlace = Place & { match: Match };

/** Reads one of the files the build makes; null when it is not there. */
export type ReadText = (path: string) => Promise<string | null>;

/** Shorter names have too many neighbours one letter away. */
const NEARLY_FROM_LETTERS = 4;
const QUERY_MOST_LETTERS = 60;
const RANK: Record<Match, number> = { name: 0, beginning: 1, nearly: 2 };

/** A place found: how its name matches, and where in the order of population it counts. */
interface Hit {
  match: Match;
  standing: number;
}

/** The places found by number, with the best hit of each. */
type Found = Map<number, Hit>;

/**
 * A place under another name than its own counts as one so many times further down by population: a city known
 * abroad by another name comes before a village of that name, a town that was once called so comes after it.
 */
const OTHER_NAME_COUNTS = 20;

/**
 * Places by name, whatever its accents, in any script its people write it in, and with one wrong letter; a state,
 * province or country may follow the name. Ranked by match, then by population.
 * @param read reads the files of the place index
 * @param limit how many at most
 * @throws when a file of the index holds less than another says
 */
export async function searchPlaces(
  query: string,
  read: ReadText,
  limit = 10,
): Promise<FoundPlace[]> {
  const folded = folding(query);
  if (folded === "") return [];
  const whole = await byName(folded, read);
  const good: Match[] = query.includes(",") ? ["name"] : ["name", "beginning"];
  const certain = [...whole.values()].some(({ match }) => good.includes(match));
  const within = certain ? null : await byNameAndRegion(query, read);
  const found = within ?? whole;
  const best = [...found].sort(([, a], [, b]) => order(a, b)).slice(0, limit);
  return Promise.all(
    best.map(async ([number, { match }]) => ({ ...(await readRecord(read, number)), match })),
  );
}

function order(a: Hit, b: Hit): number {
  return RANK[a.match] - RANK[b.match] || a.standing - b.standing;
}

function folding(text: string): string {
  return [...foldName(text)].slice(0, QUERY_MOST_LETTERS).join("").trim();
}

async function byName(folded: string, read: ReadText): Promise<Found> {
  const found: Found = new Map();
  await note(found, folded, shardOf(folded, "beginning"), "beginning", read);
  if ([...found.values()].some(({ match }) => match === "name")) return found;
  await note(found, folded, shardOf(folded, "end"), "end", read);
  if ([...folded].length === NEARLY_FROM_LETTERS) {
    await note(found, folded, shardOf(middleSwapped(folded), "beginning"), "beginning", read);
  }
  return found;
}

async function note(found: Found, query: string, file: string, side: Side, read: ReadText) {
  for (const { name, bearers } of unpackNames((await read(file)) ?? "", side)) {
    const match = matchOf(query, name);
    if (!match) continue;
    for (const { number, own } of bearers) {
      const hit = { match, standing: (number + 1) * (own ? 1 : OTHER_NAME_COUNTS) };
      const before = found.get(number);
      if (!before || order(hit, before) < 0) found.set(number, hit);
    }
  }
}

function matchOf(query: string, name: string): Match | null {
  if (name === query) return "name";
  if (name.startsWith(query)) return "beginning";
  const longEnough = Math.min(query.length, name.length) >= NEARLY_FROM_LETTERS;
  return longEnough && oneLetterApart(query, name) ? "nearly" : null;
}

/** "Leadville, Colorado", "la paz bolivia": the name first, the last words a region or country that narrows it. */
async function byNameAndRegion(query: string, read: ReadText): Promise<Found | null> {
  for (const [name, region] of dividedQueries(query)) {
    const narrowed = await whereabouts(region, read);
    if (!narrowed) continue;
    const found = await byName(name, read);
    const inside = [...found].filter(([number]) => narrowed(number));
    if (inside.length > 0) return new Map(inside);
  }
  return null;
}

/** Ways to take a query as a name and a region: at its comma, else before its last one to three words. */
function dividedQueries(query: string): [name: string, region: string][] {
  const comma = query.indexOf(",");
  if (comma >= 0) {
    const divided: [string, string] = [folding(query.slice(0, comma)), folding(query.slice(comma))];
    return divided.includes("") ? [] : [divided];
  }
  const words = folding(query).split(" ");
  return [1, 2, 3]
    .filter((count) => count < words.length)
    .map((count) => [words.slice(0, -count).join(" "), words.slice(-count).join(" ")]);
}
