import type { FitRow } from "./group.ts";

/** Who contributed each row, and what a row's voice is worth. */
export interface Votes {
  /** Contributor of each row, 0 … contributors − 1. */
  owner: Int32Array;
  /** Each row's share of its contributor's vote. */
  share: Float64Array;
  /** Vote of each contributor. */
  vote: Float64Array;
}

/**
 * One voice per contributor, however many rows: they share one vote. And k contributors at home in one place
 * share √k votes, so that a crowd at one place, real or invented, cannot outvote the rest of the world.
 * A contributor is at home in the place of most of its rows, ties going to the place whose name sorts first
 * (not to the first row, so that the order of rows means nothing). Without a place it is alone in its own.
 */
export function castVotes(rows: readonly FitRow[]): Votes {
  const owners = new Numbering();
  const places = new Numbering();
  const owner = new Int32Array(rows.length);
  const place = new Int32Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const { contributor, cell } = rows[i] as FitRow;
    owner[i] = owners.of(contributor);
    place[i] = cell ? places.of(cell) : NOWHERE;
  }
  const rowCount = new Int32Array(owners.names.length);
  for (const c of owner) rowCount[c] = (rowCount[c] as number) + 1;
  const homes = homesOf(owner, place, rowCount, places.names);
  const neighbours = new Int32Array(places.names.length);
  for (const home of homes) {
    if (home !== NOWHERE) neighbours[home] = (neighbours[home] as number) + 1;
  }
  const vote = Float64Array.from(homes, (home) =>
    home === NOWHERE ? 1 : 1 / Math.sqrt(neighbours[home] as number),
  );
  const share = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const c = owner[i] as number;
    share[i] = (vote[c] as number) / (rowCount[c] as number);
  }
  return { owner, share, vote };
}

/** No place given. */
const NOWHERE = -1;

/** Numbers names in the order they turn up. */
class Numbering {
  readonly names: string[] = [];
  readonly #numbers = new Map<string, number>();

  of(name: string): number {
    const known = this.#numbers.get(name);
    if (known !== undefined) return known;
    this.#numbers.set(name, this.names.length);
    return this.names.push(name) - 1;
  }
}

/** The place of most of each contributor's rows. */
function homesOf(
  owner: Int32Array,
  place: Int32Array,
  rowCount: Int32Array,
  names: readonly string[],
): Int32Array {
  // Rows' places put side by side by contributor: a counting sort.
  const end = new Int32Array(rowCount.length);
  for (let c = 0, sum = 0; c < rowCount.length; c++) end[c] = sum += rowCount[c] as number;
  const filled = end.slice();
  const byOwner = new Int32Array(place.length);
  for (let i = 0; i < place.length; i++) {
    const c = owner[i] as number;
    const at = (filled[c] as number) - 1;
    filled[c] = at;
    byOwner[at] = place[i] as number;
  }
  return rowCount.map((count, c) => {
    const last = end[c] as number;
    return count === 1
      ? (byOwner[last - 1] as number)
      : mostFrequent(byOwner.subarray(last - count, last), names);
  });
}

function mostFrequent(places: Int32Array, names: readonly string[]): number {
  places.sort();
  let best = NOWHERE;
  let bestCount = 0;
  for (let i = 0; i < places.length; ) {
    const place = places[i] as number;
    let next = i + 1;
    while (places[next] === place) next++;
    const count = place === NOWHERE ? 0 : next - i;
    const first = count === bestCount && (names[place] as string) < (names[best] as string);
    if (count > bestCount || (count > 0 && first)) [best, bestCount] = [place, count];
    i = next;
  }
  return best;
}
