import { byName, type Found } from "./names.ts";
import { type ReadText, whereabouts } from "./place-records.ts";

/** Whether the place of a number lies in a region. */
type Inside = (number: number) => boolean;

/** "Texas, USA", "British Columbia, Canada": a region and its country, and one to spare. */
const MOST_REGIONS = 3;
/** "Newfoundland and Labrador". */
const REGION_MOST_WORDS = 3;

/**
 * "Leadville, Colorado, USA", "la paz bolivia": the name first, then regions or countries that narrow it.
 * @param name folded
 * @param after what follows the name's comma, folded, by comma; one that is no known region narrows nothing
 */
export async function byNameAndRegions(
  name: string,
  after: readonly string[],
  read: ReadText,
): Promise<Found> {
  const known = await Promise.all(after.slice(0, MOST_REGIONS).map((a) => whereabouts(a, read)));
  const insides = known.filter((inside) => inside !== null);
  const found = after.length > 0 ? await within(name, insides, read) : new Map();
  return found.size > 0 ? found : lastWordsAsRegions(name, insides, read);
}

/** Places of the name that lie in the most of the regions: "Wallis" may mean a canton or the islands of that name. */
async function within(name: string, insides: readonly Inside[], read: ReadText): Promise<Found> {
  const count = (number: number) => insides.filter((inside) => inside(number)).length;
  const found = [...(await byName(name, read))];
  const most = Math.max(...found.map(([number]) => count(number)));
  if (insides.length > 0 && most < 1) return new Map();
  return new Map(found.filter(([number]) => count(number) === most));
}

/** Takes regions off the end of the name, one by one, until what is left is a name within them. */
async function lastWordsAsRegions(
  name: string,
  insides: readonly Inside[],
  read: ReadText,
): Promise<Found> {
  if (insides.length >= MOST_REGIONS) return new Map();
  for (const [shorter, last] of divided(name)) {
    const inside = await whereabouts(last, read);
    if (!inside) continue;
    const narrowed = [...insides, inside];
    const found = await within(shorter, narrowed, read);
    if (found.size > 0) return found;
    const further = await lastWordsAsRegions(shorter, narrowed, read);
    if (further.size > 0) return further;
  }
  return new Map();
}

/** "Innsbruck Tirol": a whole name followed by words that no known region goes by. */
export async function byNameBeforeMore(folded: string, read: ReadText): Promise<Found> {
  for (const [shorter, more] of divided(folded)) {
    if (await whereabouts(more, read)) return new Map();
    const found = [...(await byName(shorter, read))].filter(([, { match }]) => match === "name");
    if (found.length > 0) return new Map(found);
  }
  return new Map();
}

/** A name taken apart before its last word, its last two, its last three. */
function divided(name: string): [name: string, last: string][] {
  const words = name.split(" ");
  return Array.from({ length: REGION_MOST_WORDS }, (_, i) => i + 1)
    .filter((count) => count < words.length)
    .map((count) => [words.slice(0, -count).join(" "), words.slice(-count).join(" ")]);
}
