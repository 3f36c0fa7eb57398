import { foldName } from "./fold.ts";
import { byNameAndRegions } from "./name-and-region.ts";
import { byName, type Found, type Match, order } from "./names.ts";
import { type Place, type ReadText, readRecord } from "./place-records.ts";

export type FoundPlace = Place & { match: Match };

const QUERY_MOST_LETTERS = 60;

/**
 * Places by name, whatever its accents and in any script its people write it in; states, provinces or a country may
 * follow the name. Every word typed must be the place's: nothing is guessed from a part of them. Names one letter away
 * come last, marked as such. Ranked by match, then by population.
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

/** The query as one name where it is one; else as a name and its regions; else what comes near it. */
async function find(query: string, folded: string, read: ReadText): Promise<Found> {
  const whole = await byName(folded, read);
  const certain: Match[] = query.includes(",") ? ["name"] : ["name", "beginning"];
  if ([...whole.values()].some(({ match }) => certain.includes(match))) return whole;
  const [name = "", ...after] = withoutPostcodes(query).split(",").map(folding).filter(Boolean);
  const narrowed = await byNameAndRegions(name, after, read);
  if (narrowed.size > 0) return narrowed;
  return after.length > 0 ? new Map() : whole;
}

/** "Leadville, CO 80461": the data know no postcodes. */
function withoutPostcodes(query: string): string {
  return query.replaceAll(/([\s,])\d{3,}(?=[\s,]|$)/g, "$1");
}

function folding(text: string): string {
  return [...foldName(text)].slice(0, QUERY_MOST_LETTERS).join("").trim();
}
