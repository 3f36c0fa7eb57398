import { ln, power } from "../ln-exp.ts";
import type { FitRow } from "./group.ts";
import { twiceAsLong } from "./growing.ts";

/** No home: a row without a place, or a contributor of such rows. */
export const NOWHERE = -1;
/** No member. */
export const NOBODY = -1;
const FIRST_ROOM = 64;
/** Rows that are sooner compared each with each than counted. */
const FEW = 12;

/**
 * Places in one month each, numbered, with the contributors at home there and the vote that each of them has.
 * Who is at home where is kept as linked lists in plain arrays: a million contributors are moved about in a moment.
 */
export class Homes {
  /** Of each place by name: its homes, by the month's number. */
  readonly #places = new Map<string, number[]>();
  /** Months, counted from year 0, in the order in which they turn up. */
  readonly #months = new Map<number, number>();
  readonly #names: string[] = [];
  #month = new Int32Array(FIRST_ROOM);
  #count = new Int32Array(FIRST_ROOM);
  #vote = new Float64Array(FIRST_ROOM).fill(1);
  #first = new Int32Array(FIRST_ROOM).fill(NOBODY);
  #next = new Int32Array(FIRST_ROOM).fill(NOBODY);
  #before = new Int32Array(FIRST_ROOM).fill(NOBODY);

  /** The number of a row's place and month; NOWHERE without a place. */
  numberOf({ cell, month }: FitRow): number {
    if (!cell) return NOWHERE;
    const since = month ? monthsSinceYear0(month) : 0;
    let homes = this.#places.get(cell);
    if (!homes) {
      homes = [];
      this.#places.set(cell, homes);
    }
    let number = this.#months.get(since);
    if (number === undefined) {
      number = this.#months.size;
      this.#months.set(since, number);
    }
    while (homes.length <= number) homes.push(NOWHERE);
    if (homes[number] === NOWHERE) homes[number] = this.#add(`${cell}, ${month ?? ""}`, since);
    return homes[number] as number;
  }

  #add(name: string, month: number): number {
    const home = this.#names.push(name) - 1;
    if (home === this.#count.length) {
      this.#month = twiceAsLong(this.#month);
      this.#count = twiceAsLong(this.#count);
      this.#vote = twiceAsLong(this.#vote, 1);
      this.#first = twiceAsLong(this.#first, NOBODY);
    }
    this.#month[home] = month;
    return home;
  }

  /**
   * The home of most of some rows; ties go to the earlier month, then to the name that sorts first.
   * @param homeOfRow each slot's home; `slots` the rows' slots
   */
  mostFrequent(slots: readonly number[], homeOfRow: Int32Array): number {
    const counts = slots.length > FEW ? countsOf(slots, homeOfRow) : null;
    let best = NOWHERE;
    let most = 0;
    for (let i = 0; i < slots.length; i++) {
      const home = homeOfRow[slots[i] as number] as number;
      if (home === NOWHERE || home === best) continue;
      const count = counts ? (counts.get(home) as number) : countOf(home, slots, homeOfRow);
      if (count < most || (count === most && !this.#isBefore(home, best))) continue;
      best = home;
      most = count;
    }
    return best;
  }

  #isBefore(home: number, other: number): boolean {
    const months = (this.#month[home] as number) - (this.#month[other] as number);
    if (months !== 0) return months < 0;
    return (this.#names[home] as string) < (this.#names[other] as string);
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
    const before = this.#before[member] as number;
    const next = this.#next[member] as number;
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
    let home = "";
    let there = 0;
    for (let i = 0; i < this.#names.length; i++) {
      const count = this.#count[i] as number;
      const name = this.#names[i] as string;
      if (count > there || (count === there && name < home)) [home, there] = [name, count];
    }
    return { home, there };
  }
}

function countOf(home: number, slots: readonly number[], homeOfRow: Int32Array): number {
  let count = 0;
  for (let i = 0; i < slots.length; i++) if (homeOfRow[slots[i] as number] === home) count++;
  return count;
}

function countsOf(slots: readonly number[], homeOfRow: Int32Array): Map<number, number> {
  const counts = new Map<number, number>();
  for (const slot of slots) {
    const home = homeOfRow[slot] as number;
    counts.set(home, (counts.get(home) ?? 0) + 1);
  }
  return counts;
}

const DIGIT_0 = 48;

/** Of "YYYY-MM". */
function monthsSinceYear0(month: string): number {
  const digit = (at: number) => month.charCodeAt(at) - DIGIT_0;
  const year = 1000 * digit(0) + 100 * digit(1) + 10 * digit(2) + digit(3);
  return 12 * year + 10 * digit(5) + digit(6);
}

/**
 * Vote of one of k at home in one place and month: 1/√k, with k in steps of 2^¼, so that one contributor more seldom
 * means counting all of them again.
 */
function sharedVote(k: number): number {
  return k > 0 ? power(2, -Math.round((4 * ln(k)) / Math.LN2) / 8) : 1;
}
