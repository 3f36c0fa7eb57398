import { order } from "./names.ts";
import type { ReadText } from "./place-records.ts";
import { type FoundPlace, searchPlaces } from "./places.ts";

/** A place index in one file, to be taken along: its files by name. */
export type PlacePack = Record<string, string>;

/** A country whose places can be taken along. */
export interface PackListing {
  /** ISO 3166-1, two letters. */
  country_code: string;
  file: string;
  places: number;
  /** Of the pack and its tiles from near. */
  bytes: number;
  /** Files of the map from near that its places lie in. */
  near: string[];
  /** Smallest frame about its places, degrees. */
  west: number;
  south: number;
  east: number;
  north: number;
}

/** The places everyone takes along are at least this large. */
export const LARGE_FROM_PEOPLE = 15_000;
export const LARGE_PLACES_FILE = "packs/large.json";
export const PACKS_FILE = "packs/list.json";

/** Searches several packs as if they were one: each place once, in each pack's own order. */
export async function searchPacks(
  query: string,
  packs: readonly PlacePack[],
  limit = 10,
): Promise<FoundPlace[]> {
  const readers = packs.map(
    (pack): ReadText =>
      async (path) =>
        pack[path] ?? null,
  );
  const lists = await Promise.all(readers.map((read) => searchPlaces(query, read, limit)));
  const once = new Map<string, FoundPlace>();
  for (let next = takeBest(lists); next && once.size < limit; next = takeBest(lists)) {
    const key = `${next.name} ${next.lat} ${next.lon}`;
    if (!once.has(key)) once.set(key, next);
  }
  return [...once.values()];
}

/** Takes the best of the lists' first ones off its list: by match, then by population. */
function takeBest(lists: FoundPlace[][]): FoundPlace | undefined {
  const standing = ([first]: FoundPlace[]) =>
    first && { match: first.match, standing: -first.population };
  let best: FoundPlace[] | undefined;
  for (const list of lists) {
    const [mine, most] = [standing(list), best && standing(best)];
    if (mine && (!most || order(mine, most) < 0)) best = list;
  }
  return best?.shift();
}
