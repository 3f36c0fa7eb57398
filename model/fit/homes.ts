import { ln, power } from "../ln-exp.ts";
import type { FitRow } from "./group.ts";
import { twiceAsLong } from "./growing.ts";

/** No home: a row without a place, or a contributor of such rows. */
export const NOWHERE = -1;
/** No member. */
export const NOBODY = -1;
const FIRST_ROOM = 64;
/** Months that can be told apart beside a million million places. */
const MONTHS_MOST = 4096;

/**
 * Places in one month each, numbered, with the contributors at home there and the vote that each of them has.
 * Who is at home where is kept as linked lists in plain arrays: a million contributors are moved about in a moment.
 */
export class Homes {
  readonly #places = new Map<string, number>();
  readonly #months = new Map<string, number>();
  /** Home by place and month, both numbered. */
  readonly #homes = new Map<number, number>();
  readonly #names: string[] = [];
  #count = new Int32Array(FIRST_ROOM);
  #vote = new Float64Array(FIRST_ROOM).fill(1);
  #first = new Int32Array(FIRST_ROOM).fill(NOBODY);
  #next = new Int32Array(FIRST_ROOM).fill(NOBODY);
  #before = new Int32Array(FIRST_ROOM).fill(NOBODY);

  /** The number of a row's place and month; NOWHERE without a place. */
  numberOf({ cell, month = "" }: FitRow): number {
    if (!cell) return NOWHERE;
    const key = numbered(this.#places, cell) * MONTHS_MOST + numbered(this.#months, month);
    const known = this.#homes.get(key);
    if (known !== undefined) return known;
    const home = this.#names.push(`${cell}, ${month}`) - 1;
    if (home === this.#count.length) {
      this.#count = twiceAsLong(this.#count);
      this.#vote = twiceAsLong(this.#vote, 1);
      this.#first = twiceAsLong(this.#first, NOBODY);
    }
    this.#homes.set(key, home);
    return home;
  }

  /**
   * The home of most of some rows; ties go to the name that sorts first.
   * @param homeOfRow each slot's home; `slots` the rows' slots
   */
  mostFrequent(slots: readonly number[], homeOfRow: Int32Array): number {
    let [best, most] = [NOWHERE, 0];
    for (const slot of slots) {
      const home = homeOfRow[slot] as number;
      if (home === NOWHERE || home === best) continue;
      let count = 0;
      for (const other of slots) count += Number(homeOfRow[other] === home);
      const first = count === most && (this.#names[home] as string) < (this.#names[best] as string);
      if (count > most || first) [best, most] = [home, count];
    }
    return best;
  }

  voteAt(home: number): number {
    return home === NOWHERE ? 1 : (this.#vote[home] as number);
  }

  /** Moves a member in. Votes stay as they are until {@link revote}. */
  enter(home: number, member: number): void {
    if (home === NOWHERE) return;
    while (member >= this.#next.length) {
      this.#next = twiceAsLong(this.#next, NOBODY);
      this.#before = twiceAsLong(this.#before, NOBODY);
    }
    const first = this.#first[home] as number;
    this.#next[member] = first;
    this.#before[member] = NOBODY;
    if (first !== NOBODY) this.#before[first] = member;
    this.#first[home] = member;
    this.#count[home] = (this.#count[home] as number) + 1;
  }

  leave(home: number, member: number): void {
    if (home === NOWHERE) return;
    const [before, next] = [this.#before[member] as number, this.#next[member] as number];
    if (before === NOBODY) this.#first[home] = next;
    else this.#next[before] = next;
    if (next !== NOBODY) this.#before[next] = before;
    this.#count[home] = (this.#count[home] as number) - 1;
  }

  /** Gives the members the vote that goes with their number now; says whether that is another one. */
  revote(home: number): boolean {
    if (home === NOWHERE) return false;
    const before = this.#vote[home];
    this.#vote[home] = sharedVote(this.#count[home] as number);
    return this.#vote[home] !== before;
  }

  revoteAll(): void {
    for (let home = 0; home < this.#names.length; home++) this.revote(home);
  }

  *membersOf(home: number): Generator<number> {
    for (let at = this.#first[home] as number; at !== NOBODY; at = this.#next[at] as number)
      yield at;
  }

  /** The home of most contributors. */
  fullest(): { home: string; there: number } {
    let [home, there] = ["", 0];
    for (let i = 0; i < this.#names.length; i++) {
      const [count, name] = [this.#count[i] as number, this.#names[i] as string];
      if (count > there || (count === there && name < home)) [home, there] = [name, count];
    }
    return { home, there };
  }
}

/** The number of a name, in the order in which names turn up. */
function numbered(names: Map<string, number>, name: string): number {
  const known = names.get(name);
  if (known !== undefined) return known;
  names.set(name, names.size);
  return names.size - 1;
}

/**
 * Vote of one of k at home in one place and month: 1/√k, with k in steps of 2^¼, so that one contributor more seldom
 * means counting all of them again.
 */
function sharedVote(k: number): number {
  return k > 0 ? power(2, -Math.round((4 * ln(k)) / Math.LN2) / 8) : 1;
}
