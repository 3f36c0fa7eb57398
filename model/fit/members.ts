import { twiceAsLong } from "./growing.ts";
import { FOLDS } from "./tally.ts";

const NONE = -1;
const FIRST_ROOM = 64;

/** Contributors by number, each with its fold, its home, the vote its rows are counted with, and its rows' slots. */
export class Members {
  /** By number; undefined where nobody is any more. */
  readonly #names: (string | undefined)[] = [];
  /** Numbers by name, made when first asked for: loading rows in order of their contributors does without. */
  #numbers: Map<string, number> | null = null;
  readonly #free: number[] = [];
  #fold = new Uint8Array(FIRST_ROOM);
  #first = new Int32Array(FIRST_ROOM).fill(NONE);
  /** By slot: the next slot of the same member. */
  #next = new Int32Array(FIRST_ROOM).fill(NONE);
  readonly #slots: number[] = [];
  home = new Int32Array(FIRST_ROOM).fill(NONE);
  vote = new Float64Array(FIRST_ROOM);

  get size(): number {
    return this.#names.length - this.#free.length;
  }

  forEach(see: (member: number) => void): void {
    for (let member = 0; member < this.#names.length; member++) {
      if (this.#names[member] !== undefined) see(member);
    }
  }

  numberOf(name: string): number | undefined {
    return this.#index().get(name);
  }

  /** The member of that name, made when new. */
  member(name: string): number {
    const known = this.#index().get(name);
    if (known !== undefined) return known;
    return this.add(name);
  }

  /** A new member, of a name that nobody has. */
  add(name: string): number {
    const member = this.#free.pop() ?? this.#names.length;
    this.#names[member] = name;
    this.#numbers?.set(name, member);
    if (member === this.#fold.length) {
      this.#fold = twiceAsLong(this.#fold);
      this.#first = twiceAsLong(this.#first, NONE);
      this.home = twiceAsLong(this.home, NONE);
      this.vote = twiceAsLong(this.vote);
    }
    this.#fold[member] = foldOf(name);
    this.#first[member] = NONE;
    this.home[member] = NONE;
    this.vote[member] = 0;
    return member;
  }

  forget(name: string): void {
    const member = this.#index().get(name);
    if (member === undefined) return;
    this.#index().delete(name);
    this.#names[member] = undefined;
    this.#free.push(member);
  }

  #index(): Map<string, number> {
    if (this.#numbers) return this.#numbers;
    const numbers = new Map<string, number>();
    this.forEach((member) => {
      numbers.set(this.#names[member] as string, member);
    });
    this.#numbers = numbers;
    return numbers;
  }

  fold(member: number): number {
    return this.#fold[member] as number;
  }

  addSlot(member: number, slot: number): void {
    while (slot >= this.#next.length) this.#next = twiceAsLong(this.#next, NONE);
    this.#next[slot] = this.#first[member] as number;
    this.#first[member] = slot;
  }

  removeSlot(member: number, slot: number): void {
    const next = this.#next[slot] as number;
    if (this.#first[member] === slot) this.#first[member] = next;
    for (const other of this.slotsOf(member)) {
      if (this.#next[other] === slot) this.#next[other] = next;
    }
  }

  /** The slots of a member's rows, in a list that the next call fills anew. */
  slotsOf(member: number): number[] {
    const slots = this.#slots;
    let n = 0;
    for (let s = this.#first[member] as number; s !== NONE; s = this.#next[s] as number) {
      slots[n++] = s;
    }
    // Cut at the end, not emptied first: an emptied list gives its room back, and would ask for it again.
    slots.length = n;
    return slots;
  }
}

/** A fold from a name alone: FNV-1a, so that it is the same everywhere and at any time. */
function foldOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  hash ^= hash >>> 15;
  return (Math.imul(hash, 0x2c1b3c6d) >>> 16) % FOLDS;
}
