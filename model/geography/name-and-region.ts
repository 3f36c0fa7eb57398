import { byName, type Found, type Hit } from "./names.ts";
import { type ReadText, whereabouts } from "./place-records.ts";

/** Whether the place of a number lies in a region. */
type Inside = (number: number) => boolean;

/** "Texas, USA", "British Columbia, Canada": a region and its country, and one to spare. */
const MOST_REGIONS = 3;
/** "Newfoundland and Labrador". */
const REGION_MOST_WORDS = 3;

/**
 * "Leadville, Colorado, USA", "la paz bolivia": the name first, then regions or countries that the place must lie in. No
 * word is left out: what is no region is part of the name. After a comma it may be a region that is not known; then
 * the places of that name count as near ones only.
 * @param name folded
 * @param after what follows the name's comma, folded, by comma
 * @returns places of the name, whole or with one wrong letter
 */
export async function byNameAndRegions(
  name: string,
  after: readonly string[],
  read: ReadText,
): Promise<Found> {
  const insides = await Promise.all(after.slice(0, MOST_REGIONS).map((a) => whereabouts(a, read)));
  const known = insides.filter((inside) => inside !== null);
  if (known.length < insides.length) return perhaps(await within(name, known, read));
  const found = known.length > 0 ? await within(name, known, read) : new Map();
  return found.size > 0 ? found : lastWordsAsRegions(name, known, read);
}

/** Places of that very name; but what else was said of it is not known, so another one may be meant. */
function perhaps(found: Found): Found {
  const named = [...found].filter(([, { match }]) => match === "name");
  return new Map(
    named.map(([number, hit]): [number, Hit] => [number, { ...hit, match: "nearly" }]),
  );
}

/** Places of the name that lie in every one of the regions. */
async function within(name: string, insides: readonly Inside[], read: ReadText): Promise<Found> {
  const found = [...(await byName(name, read))];
  return new Map(found.filter(([number]) => insides.every((inside) => inside(number))));
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
    const found = whole(await within(shorter, narrowed, read));
    if (found.size > 0) return found;
    const further = await lastWordsAsRegions(shorter, narrowed, read);
    if (further.size > 0) return further;
  }
  return new Map();
}

/** Without names that only begin so: without a comma, a name that is followed by more is whole. */
function whole(found: Found): Found {
  return new Map([...found].filter(([, { match }]) => match !== "beginning"));
}

/** A name taken apart before its last word, its last two, its last three. */
function divided(name: string): [name: string, last: string][] {
  const words = name.split(" ");
  return Array.from({ length: REGION_MOST_WORDS }, (_, i) => i + 1)
    .filter((count) => count < words.length)
    .map((count) => [words.slice(0, -count).join(" "), words.slice(-count).join(" ")]);
}
