/** A folded name and the places that bear it, the most populous first. */
export interface NameEntry {
  name: string;
  bearers: Bearer[];
}

/** A place by its number, and whether the name is its own or one more that somebody calls it. */
export interface Bearer {
  number: number;
  own: boolean;
}

/** Which end of the names a shard is chosen and sorted by. */
export type Side = "beginning" | "end";

/** Names are spread over so many shards a side. */
const SHARDS = 512;
/** Letters a shard is chosen by: two, so that a name wrong in one of them is found by the other side. */
const KEY_LETTERS = 2;
/** The shared length is written as one digit to the base 36. */
const MOST_SHARED = 35;

const shardFiles = (letter: string) =>
  Array.from({ length: SHARDS }, (_, n) => `names/${letter}${n}.txt`);
const SHARD_FILES: Record<Side, string[]> = { beginning: shardFiles("b"), end: shardFiles("e") };

/** File with the names that begin, or that end, like this one. */
export function shardOf(folded: string, side: Side): string {
  // A letter is one or two code units.
  const key =
    side === "beginning"
      ? [...folded.slice(0, 2 * KEY_LETTERS)].slice(0, KEY_LETTERS)
      : [...folded.slice(-2 * KEY_LETTERS)].slice(-KEY_LETTERS);
  let hash = 0;
  for (const letter of key) hash = (hash * 31 + (letter.codePointAt(0) ?? 0)) % 1_000_003;
  return SHARD_FILES[side][hash % SHARDS] as string;
}

/** A shard's text: names sorted, each without what it shares with the one before; bearers to the base 36. */
export function packNames(entries: readonly NameEntry[], side: Side): string {
  const key = (name: string) => (side === "beginning" ? name : reversed(name));
  const sorted = entries.map((e) => ({ ...e, key: key(e.name) }));
  sorted.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
  let before = "";
  const lines = sorted.map(({ key, bearers }) => {
    const shared = sharedLength(before, key);
    before = key;
    const ids = bearers
      .map(({ number, own }) => (2 * number + (own ? 0 : 1)).toString(36))
      .join(",");
    return `${shared.toString(36)}${key.slice(shared)}\t${ids}`;
  });
  return lines.join("\n");
}

/** The names of a shard that are wanted, from {@link packNames}; most are not, so bearers are read for these alone. */
export function unpackNames(
  text: string,
  side: Side,
  wanted: (name: string) => boolean = () => true,
): NameEntry[] {
  const entries: NameEntry[] = [];
  if (text === "") return entries;
  let before = "";
  for (const line of text.split("\n")) {
    const tab = line.indexOf("\t");
    before = before.slice(0, Number.parseInt(line[0] ?? "0", 36)) + line.slice(1, tab);
    const name = side === "beginning" ? before : reversed(before);
    if (wanted(name)) entries.push({ name, bearers: bearersOf(line.slice(tab + 1)) });
  }
  return entries;
}

function bearersOf(ids: string): Bearer[] {
  return ids
    .split(",")
    .map((id) => Number.parseInt(id, 36))
    .map((id) => ({ number: id >> 1, own: id % 2 === 0 }));
}

function reversed(name: string): string {
  let backwards = "";
  for (const letter of name) backwards = letter + backwards;
  return backwards;
}

function sharedLength(a: string, b: string): number {
  const most = Math.min(a.length, b.length, MOST_SHARED);
  let shared = 0;
  while (shared < most && a[shared] === b[shared]) shared++;
  // A letter of two code units is not taken apart: half of one cannot be written as UTF-8.
  const last = b.charCodeAt(shared - 1);
  return last >= 0xd800 && last < 0xdc00 ? shared - 1 : shared;
}
