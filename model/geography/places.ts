import { foldName } from "./fold.ts";
import { byNameAndRegions, byNameBeforeMore } from "./name-and-region.ts";
import { byName, type Found, type Match, order } from "./names.ts";
import { type Place, type ReadText, readRecord } from "./place-records.ts";

export type FoundPlace = Place & { match: Match };

const QUERY_MOST_LETTERS = 60;

/**
 * Places by name, whatever its accents, in any script its people write it in, and with one wrong letter; states,
 * provinces or a country may follow the name. Ranked by match, then by population.
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
  const best = [...(await find(query, folded, read))]
    .sort(([, a], [, b]) => order(a, b))
    .slice(0, limit);
  return Promise.all(
    best.map(async ([number, { match }]) => ({ ...(await readRecord(read, number)), match })),
  );
}

/** The query as one name where it is one; else as a name and its regions; else as a name with one wrong letter. */
async function find(query: string, folded: string, read: ReadText): Promise<Found> {
  const whole = await byName(folded, read);
  const certain: Match[] = query.includes(",") ? ["name"] : ["name", "beginning"];
  if ([...whole.values()].some(({ match }) => certain.includes(match))) return whole;
  const [name = "", ...after] = query.split(",").map(folding).filter(Boolean);
  const narrowed = await byNameAndRegions(name, after, read);
  if (narrowed.size > 0) return narrowed;
  return whole.size > 0 ? whole : byNameBeforeMore(folded, read);
}

function folding(text: string): string {
  return [...foldName(text)].slice(0, QUERY_MOST_LETTERS).join("").trim();
}
