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
  const index = new Map<string, number>();
  const rowCount: number[] = [];
  const places: string[][] = [];
  const owner = Int32Array.from(rows, ({ contributor, cell }) => {
    let c = index.get(contributor);
    if (c === undefined) {
      c = index.size;
      index.set(contributor, c);
      rowCount.push(0);
      places.push([]);
    }
    rowCount[c] = (rowCount[c] as number) + 1;
    if (cell) places[c]?.push(cell);
    return c;
  });
  const homes = places.map(home);
  const neighbours = new Map<string, number>();
  for (const place of homes) if (place) neighbours.set(place, (neighbours.get(place) ?? 0) + 1);
  const vote = Float64Array.from(homes, (place) => 1 / Math.sqrt(neighbours.get(place ?? "") ?? 1));
  const share = Float64Array.from(owner, (c) => (vote[c] as number) / (rowCount[c] as number));
  return { owner, share, vote };
}

function home(places: string[]): string | undefined {
  if (places.length < 2) return places[0];
  const counts = new Map<string, number>();
  for (const place of places) counts.set(place, (counts.get(place) ?? 0) + 1);
  return [...counts].reduce((best, next) =>
    next[1] > best[1] || (next[1] === best[1] && next[0] < best[0]) ? next : best,
  )[0];
}
