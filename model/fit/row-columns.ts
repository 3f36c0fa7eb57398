import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import type { FitRow, GroupFit } from "./group.ts";
import { PRIOR } from "./prior.ts";
import { mostSpreads } from "./standing.ts";
import { pointOf } from "./voices.ts";

/** What a fit makes of the rows. */
export interface Judged {
  tunes: number;
  rejected: number;
  density_range: [number, number] | null;
}

const FIRST_ROOM = 64;

/** Rows side by side as columns, so that a new fit can judge a million of them in a moment. */
export class RowColumns {
  #x = new Float64Array(FIRST_ROOM);
  #r = new Float64Array(FIRST_ROOM);
  #aside = new Uint8Array(FIRST_ROOM);
  #rows: (FitRow | undefined)[] = [];
  readonly #free: number[] = [];

  /** Keeps a row; answers its slot. */
  add(row: FitRow): number {
    const slot = this.#free.pop() ?? this.#rows.length;
    if (slot === this.#x.length) this.#grow();
    const { x, r } = pointOf(row);
    this.#x[slot] = x;
    this.#r[slot] = r;
    this.#aside[slot] = 0;
    this.#rows[slot] = row;
    return slot;
  }

  remove(slot: number): void {
    this.#rows[slot] = undefined;
    this.#x[slot] = Number.NaN;
    this.#free.push(slot);
  }

  /** Remembers that a row is known to be set aside. */
  knownAside(slot: number): void {
    this.#aside[slot] = 1;
  }

  /**
   * Judges every row by a fit.
   * @param changed filled with the rows that it sets aside and the one before did not, or the reverse
   */
  judge(group: GroupFit, changed?: { row: FitRow; aside: boolean }[]): Judged {
    const most = mostSpreads(group);
    const a = group.intercept - PRIOR.intercept[group.end];
    const c = group.slope - REFERENCE_SLOPE;
    const [level, perX] = [(most * group.spread) ** 2, (most * group.spread_per_x) ** 2];
    let [tunes, rejected] = [0, 0];
    let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    const count = this.#rows.length;
    const [xs, rs] = [this.#x, this.#r];
    for (let i = 0; i < count; i++) {
      const x = xs[i] as number;
      // A slot that holds no row has no x: it compares false with everything.
      const q = (rs[i] as number) - a - c * x;
      const within = q * q <= level + perX * x * x;
      if (within) {
        tunes++;
        if (x < least) least = x;
        if (x > greatest) greatest = x;
      } else if (!Number.isNaN(x)) rejected++;
      if (changed && Number(!within) !== this.#aside[i] && !Number.isNaN(x)) {
        this.#aside[i] = Number(!within);
        changed.push({ row: this.#rows[i] as FitRow, aside: !within });
      }
    }
    return {
      tunes,
      rejected,
      density_range: tunes > 0 ? [densityAt(least), densityAt(greatest)] : null,
    };
  }

  #grow(): void {
    const more = <T extends Float64Array | Uint8Array>(old: T, fresh: T): T => {
      fresh.set(old);
      return fresh;
    };
    const room = 2 * this.#x.length;
    this.#x = more(this.#x, new Float64Array(room));
    this.#r = more(this.#r, new Float64Array(room));
    this.#aside = more(this.#aside, new Uint8Array(room));
  }
}

function densityAt(x: number): number {
  return STANDARD_DENSITY_kg_m3 * Math.exp(x);
}
