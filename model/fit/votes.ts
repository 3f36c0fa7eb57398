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
  const places: Places[] = [];
  const owner = new Int32Array(rows.length);
  for (const [i, { contributor, cell }] of rows.entries()) {
    let c = index.get(contributor);
    if (c === undefined) {
      c = index.size;
      index.set(contributor, c);
      rowCount.push(0);
      places.push(undefined);
    }
    owner[i] = c;
    rowCount[c] = (rowCount[c] as number) + 1;
    if (cell) places[c] = withPlace(places[c], cell);
  }
  const homes = places.map(home);
  const neighbours = new Map<string, number>();
  for (const place of homes) if (place) neighbours.set(place, (neighbours.get(place) ?? 0) + 1);
  const vote = Float64Array.from(homes, (place) => 1 / Math.sqrt(neighbours.get(place ?? "") ?? 1));
  const share = Float64Array.from(owner, (c) => (vote[c] as number) / (rowCount[c] as number));
  return { owner, share, vote };
}

/** Places of a contributor's rows: most have one, so counts are kept only once a second one turns up. */
type Places = string | Map<string, number> | undefined;

function withPlace(places: Places, cell: string): Places {
  if (places === undefined) return cell;
  const counts = typeof places === "string" ? new Map([[places, 1]]) : places;
  return counts.set(cell, (counts.get(cell) ?? 0) + 1);
}

function home(places: Places): string | undefined {
  if (typeof places !== "object") return places;
  return [...places].reduce((best, next) =>
    next[1] > best[1] || (next[1] === best[1] && next[0] < best[0]) ? next : best,
  )[0];
}
