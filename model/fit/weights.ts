import type { FitRow } from "./row.ts";
import { SETTINGS } from "./settings.ts";

/**
 * Whether a row may be a copy, or half a copy, of what the atlas suggested: a suggestion had been seen and no sweep
 * bracketed the minimum. Half-way copies cannot be told from good tunes by their values.
 */
export function mayCopy({ found, suggested_Hz_per_krpm }: FitRow): boolean {
  return found !== "bracketed" && (found !== undefined || suggested_Hz_per_krpm !== undefined);
}

/**
 * Weight of each owner in the likelihood: k owners who are alike, with an intraclass correlation r, know as much as
 * k/(1 + (k−1)·r) independent ones (Kish 1965, design effect). Alike are owners at home in one place in one month,
 * and owners who may have copied the atlas.
 */
export function weightsOf(
  rows: readonly FitRow[],
  first: Int32Array,
  may_copy: Uint8Array,
): Float64Array {
  const homes = Array.from(may_copy, (_, i) => homeOf(rows, first, i));
  const size = new Map<string, number>();
  for (const home of homes) size.set(home, (size.get(home) ?? 0) + 1);
  const copies = may_copy.reduce((sum, v) => sum + v, 0);
  return Float64Array.from(homes, (home, i) => {
    const alike = home === "" ? 1 : (size.get(home) as number);
    const byPlace = designEffect(alike, SETTINGS.place_correlation);
    return 1 / (byPlace * (may_copy[i] ? designEffect(copies, SETTINGS.copy_correlation) : 1));
  });
}

function designEffect(size: number, correlation: number): number {
  return 1 + (size - 1) * correlation;
}

/** Place and month of most of an owner's rows, the first by name among equals; empty without a place. */
function homeOf(rows: readonly FitRow[], first: Int32Array, owner: number): string {
  const times = new Map<string, number>();
  for (let j = first[owner] as number; j < (first[owner + 1] as number); j++) {
    const { cell, month } = rows[j] as FitRow;
    const home = cell === undefined ? "" : `${cell}, ${month ?? ""}`;
    times.set(home, (times.get(home) ?? 0) + 1);
  }
  let best = "";
  let most = 0;
  for (const [home, count] of times) {
    if (count > most || (count === most && home < best)) [best, most] = [home, count];
  }
  return best;
}
