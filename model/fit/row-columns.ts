import { STANDARD_DENSITY_kg_m3 } from "../air.ts";
import { exp } from "../ln-exp.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import type { FitRow, GroupFit } from "./group.ts";
import { twiceAsLong } from "./growing.ts";
import { PRIOR } from "./prior.ts";
import { mostSpreads } from "./standing.ts";
import { type PlacedRows, place } from "./voices.ts";

/** What a fit makes of the rows. */
export interface Judged {
  tunes: number;
  rejected: number;
  density_range: [number, number] | null;
}

/** Rows whose standing a fit changes. */
export type Changes = { row: FitRow; aside: boolean }[];

/** Where rows are kept: within sqrt(level + perX·x²) of a + c·x. */
interface Limits {
  a: number;
  c: number;
  level: number;
  perX: number;
}

const FIRST_ROOM = 64;
const UNJUDGED = 2;
/** Rows at most so far from the limit, in ln, are looked at by every fit; the others when it has moved as far. */
const NEAR = 0.004;
/** The x between which all rows lie. */
const X_RANGE = [-1, 0.5] as const;

/**
 * Rows side by side as columns. A new fit judges only the rows near its limits: the others cannot have changed while
 * it has moved less than they are away. So judging a million rows costs what judging a few thousand does.
 */
export class RowColumns implements PlacedRows {
  x = new Float64Array(FIRST_ROOM);
  r = new Float64Array(FIRST_ROOM);
  air = new Float32Array(FIRST_ROOM);
  co = new Float32Array(FIRST_ROOM);
  /** Whether the last fit set a row aside: as counted, and as on record. */
  #aside = new Uint8Array(FIRST_ROOM);
  #known = new Uint8Array(FIRST_ROOM);
  #rows: (FitRow | undefined)[] = [];
  /** Slots in use or free again. */
  #slots = 0;
  readonly #free: number[] = [];
  /** Slots near the limits of the fit that last judged all, and rows that came since. */
  #near: number[] = [];
  /** Slots elsewhere whose standing is not on record yet. */
  #unrecorded: number[] = [];
  #judged: Limits | null = null;
  #count = { tunes: 0, rejected: 0 };
  /** Between which x the rows lie that are not set aside. */
  #least = Number.POSITIVE_INFINITY;
  #most = Number.NEGATIVE_INFINITY;

  row(slot: number): FitRow {
    return this.#rows[slot] as FitRow;
  }

  /** Keeps a row; answers its slot. */
  add(row: FitRow): number {
    const slot = this.#free.pop() ?? this.#slots++;
    if (slot === this.x.length) this.#grow();
    place(row, this, slot);
    this.#aside[slot] = UNJUDGED;
    this.#known[slot] = 0;
    this.#rows[slot] = row;
    if (this.#judged) this.#near.push(slot);
    return slot;
  }

  remove(slot: number): void {
    const x = this.x[slot] as number;
    if (this.#aside[slot] === 0) this.#count.tunes--;
    if (this.#aside[slot] === 1) this.#count.rejected--;
    // The range must be found anew without its end.
    if (this.#isAtEnd(x)) this.#judged = null;
    this.#rows[slot] = undefined;
    this.x[slot] = Number.NaN;
    this.#free.push(slot);
  }

  knownAside(isAside: (row: FitRow) => boolean): void {
    this.#rows.forEach((row, slot) => {
      this.#known[slot] = Number(row !== undefined && isAside(row));
    });
  }

  /**
   * Judges the rows by a fit.
   * @param changes filled with the rows that it sets aside and that are not on record as such, or the reverse; then
   *   it is on record
   */
  judge(group: GroupFit, changes?: Changes): Judged {
    const limits = limitsOf(group);
    if (!this.#judged || moved(this.#judged, limits) > NEAR) this.#judgeAll(limits);
    else for (const slot of this.#near) this.#judgeOne(slot, limits);
    if (changes) this.#record(changes);
    const { tunes, rejected } = this.#count;
    return {
      tunes,
      rejected,
      density_range: tunes > 0 ? [densityAt(this.#least), densityAt(this.#most)] : null,
    };
  }

  #isAtEnd(x: number): boolean {
    return x === this.#least || x === this.#most;
  }

  #judgeAll(limits: Limits): void {
    this.#near = [];
    this.#unrecorded = [];
    this.#count = { tunes: 0, rejected: 0 };
    this.#least = Number.POSITIVE_INFINITY;
    this.#most = Number.NEGATIVE_INFINITY;
    this.#judged = limits;
    const { a, c, level, perX } = limits;
    for (let slot = 0; slot < this.#slots; slot++) {
      const x = this.x[slot] as number;
      if (Number.isNaN(x)) continue;
      const q = Math.abs((this.r[slot] as number) - a - c * x);
      const margin = q - Math.sqrt(level + perX * x * x);
      this.#aside[slot] = UNJUDGED;
      this.#settle(slot, x, margin > 0);
      if (Math.abs(margin) <= NEAR) this.#near.push(slot);
      else if (Number(margin > 0) !== this.#known[slot]) this.#unrecorded.push(slot);
    }
  }

  #judgeOne(slot: number, { a, c, level, perX }: Limits): void {
    const x = this.x[slot] as number;
    if (Number.isNaN(x)) return;
    const q = (this.r[slot] as number) - a - c * x;
    this.#settle(slot, x, q * q > level + perX * x * x);
  }

  #settle(slot: number, x: number, aside: boolean): void {
    const before = this.#aside[slot];
    if (before === Number(aside)) return;
    if (before === 0) this.#count.tunes--;
    if (before === 1) this.#count.rejected--;
    this.#aside[slot] = Number(aside);
    if (aside) {
      this.#count.rejected++;
      if (this.#isAtEnd(x)) this.#judged = null;
    } else {
      this.#count.tunes++;
      if (x < this.#least) this.#least = x;
      if (x > this.#most) this.#most = x;
    }
  }

  #record(changes: Changes): void {
    for (const slots of [this.#near, this.#unrecorded]) {
      for (const slot of slots) {
        if (this.#aside[slot] === this.#known[slot]) continue;
        const row = this.#rows[slot];
        if (!row) continue;
        this.#known[slot] = this.#aside[slot] as number;
        changes.push({ row, aside: this.#aside[slot] === 1 });
      }
    }
    this.#unrecorded = [];
  }

  #grow(): void {
    this.x = twiceAsLong(this.x);
    this.r = twiceAsLong(this.r);
    this.air = twiceAsLong(this.air);
    this.co = twiceAsLong(this.co);
    this.#aside = twiceAsLong(this.#aside);
    this.#known = twiceAsLong(this.#known);
  }
}

function limitsOf(group: GroupFit): Limits {
  const most = mostSpreads(group);
  return {
    a: group.intercept - PRIOR.intercept[group.end],
    c: group.slope - REFERENCE_SLOPE,
    level: (most * group.spread) ** 2,
    perX: (most * group.spread_per_x) ** 2,
  };
}

/** How far the limits lie apart at most, in ln: line and half-width each differ most at an end of the x. */
function moved(from: Limits, to: Limits): number {
  const line = X_RANGE.map((x) => Math.abs(to.a - from.a + (to.c - from.c) * x));
  const half = (l: Limits, x: number) => Math.sqrt(l.level + l.perX * x * x);
  const width = [X_RANGE[0], 0].map((x) => Math.abs(half(to, x) - half(from, x)));
  return Math.max(...line) + Math.max(...width);
}

function densityAt(x: number): number {
  return STANDARD_DENSITY_kg_m3 * exp(x);
}
