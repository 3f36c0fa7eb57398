import { oneLetterApart } from "./letters.ts";
import { type Side, shardOf, unpackNames } from "./name-shards.ts";
import type { ReadText } from "./place-records.ts";

/** How well a place's name matches: the whole name, its beginning, or one long word of it with one wrong letter. */
export type Match = "name" | "beginning" | "nearly";

/** A place found: how its name matches, and where in the order of population it counts. */
export interface Hit {
  match: Match;
  standing: number;
}

/** The places found by number, with the best hit of each. */
export type Found = Map<number, Hit>;

/** Shorter words have too many neighbours one letter away. */
const NEARLY_FROM_LETTERS = 5;
const RANK: Record<Match, number> = { name: 0, beginning: 1, nearly: 2 };

/**
 * A place under another name than its own counts as one so many times further down by population: a city known
 * abroad by another name comes before a village of that name, a town that was once called so comes after it.
 */
const OTHER_NAME_COUNTS = 20;

/** Order of hits: by match, then by population. */
export function order(a: Hit, b: Hit): number {
  return RANK[a.match] - RANK[b.match] || a.standing - b.standing;
}

/** Places of this folded name, of names that begin so, of names one letter apart. */
export async function byName(folded: string, read: ReadText): Promise<Found> {
  const found: Found = new Map();
  await note(found, folded, shardOf(folded, "beginning"), "beginning", read);
  await note(found, folded, shardOf(folded, "end"), "end", read);
  return found;
}

async function note(found: Found, query: string, file: string, side: Side, read: ReadText) {
  const matches = (name: string) => matchOf(query, name) !== null;
  for (const { name, bearers } of unpackNames((await read(file)) ?? "", side, matches)) {
    const match = matchOf(query, name) as Match;
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
  return isNearly(query, name) ? "nearly" : null;
}

/** Whether all words but one are the same, and that one is long and has a letter inserted, missing, wrong or swapped. */
function isNearly(query: string, name: string): boolean {
  if (!oneLetterApart(query, name)) return false;
  const [asked, called] = [query.split(" "), name.split(" ")];
  if (asked.length !== called.length) return false;
  const other = asked.flatMap((word, i) => (word === called[i] ? [] : [i]));
  const at = other[0] ?? 0;
  const long = Math.max(asked[at]?.length ?? 0, called[at]?.length ?? 0) >= NEARLY_FROM_LETTERS;
  return other.length === 1 && long;
}
