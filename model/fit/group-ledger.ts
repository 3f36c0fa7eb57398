import type { FitRow, GroupFit } from "./group.ts";
import { twiceAsLong } from "./growing.ts";
import { Homes, NOBODY, NOWHERE } from "./homes.ts";
import { Members } from "./members.ts";
import { type Changes, type Judged, RowColumns } from "./row-columns.ts";
import { type Sign, Tally } from "./tally.ts";
import { type Lost, speak } from "./voices.ts";

const FIRST_ROOM = 64;

/**
 * The rows of one heat class and end by contributor, kept counted in a {@link Tally}. One voice per contributor,
 * however many rows: they share one vote. And k contributors at home in one place and month share √k votes, so that
 * a crowd at one place at one time, real or invented, cannot outvote the rest of the world.
 */
export class GroupLedger {
  readonly tally = new Tally();
  readonly #columns = new RowColumns();
  readonly #members = new Members();
  readonly #homes = new Homes();
  readonly #lost: Lost = { air: 0, co: 0 };
  /** Place and month of each slot's row, by the number that homes give it. */
  #homeOfRow = new Int32Array(FIRST_ROOM);
  /** Whose row was taken last, and the name that sorts last of those taken. */
  #taken = NOBODY;
  #lastTaken = "";
  #greatest = "";

  get contributors(): number {
    return this.#members.size;
  }

  /** Votes lost to doubt about the air, and to the final CO. */
  get discounts(): Lost {
    return { ...this.#lost };
  }

  /** The place and month with the most contributors at home, and the contributors in all. */
  surge(): { home: string; there: number; contributors: number } {
    return { ...this.#homes.fullest(), contributors: this.contributors };
  }

  /**
   * Takes one of many rows into a ledger that is empty but for such rows; they count once {@link countAll} is called.
   * The same as one `put` after another, sooner, soonest in order of contributor.
   */
  take(row: FitRow): void {
    const { contributor } = row;
    if (this.#taken === NOBODY || contributor !== this.#lastTaken) {
      // Beyond all names before it, it is new.
      const isNew = this.#taken === NOBODY || contributor > this.#greatest;
      if (isNew) this.#greatest = contributor;
      this.#lastTaken = contributor;
      this.#taken = isNew ? this.#members.add(contributor) : this.#members.member(contributor);
    }
    this.#keep(this.#taken, row);
  }

  /** Counts all rows that were taken. */
  countAll(): void {
    this.#members.forEach((each) => {
      const home = this.#homeOf(this.#members.slotsOf(each));
      this.#members.home[each] = home;
      this.#homes.enter(home, each);
    });
    this.#homes.revoteAll();
    this.#members.forEach((each) => {
      this.#count(each);
    });
  }

  put(row: FitRow): void {
    const member = this.#members.member(row.contributor);
    this.#uncount(member);
    this.#keep(member, row);
    this.#settle(member);
  }

  /** Takes out the row of that name; nothing happens when there is none. */
  drop({ row, contributor }: Pick<FitRow, "row" | "contributor">): void {
    const member = this.#members.numberOf(contributor);
    if (member === undefined) return;
    const slots = [...this.#members.slotsOf(member)];
    const slot = slots.find((s) => this.#columns.row(s).row === row);
    if (slot === undefined) return;
    this.#uncount(member);
    this.#members.removeSlot(member, slot);
    this.#columns.remove(slot);
    this.#settle(member);
    if (slots.length === 1) this.#members.forget(contributor);
  }

  /** What a fit makes of the rows; see {@link RowColumns.judge}. */
  judged(group: GroupFit, changes?: Changes): Judged {
    return this.#columns.judge(group, changes);
  }

  /** Remembers which rows the fit before set aside. */
  knownAside(isAside: (row: FitRow) => boolean): void {
    this.#columns.knownAside(isAside);
  }

  #keep(member: number, row: FitRow): void {
    const slot = this.#columns.add(row);
    if (slot >= this.#homeOfRow.length) this.#homeOfRow = twiceAsLong(this.#homeOfRow);
    this.#homeOfRow[slot] = this.#homes.numberOf(row);
    this.#members.addSlot(member, slot);
  }

  #homeOf(slots: readonly number[]): number {
    if (slots.length === 1) return this.#homeOfRow[slots[0] as number] as number;
    return this.#homes.mostFrequent(slots, this.#homeOfRow);
  }

  /** Counts a member's rows again, and its neighbours' too where their votes have changed. */
  #settle(member: number): void {
    const slots = this.#members.slotsOf(member);
    const some = slots.length > 0;
    const left = this.#members.home[member] as number;
    const home = this.#homeOf(slots);
    if (home !== left) {
      this.#homes.leave(left, member);
      this.#homes.enter(home, member);
      this.#members.home[member] = home;
      this.#revote(left, member);
      this.#revote(home, member);
    }
    if (some) this.#count(member);
  }

  #revote(home: number, but: number): void {
    if (home === NOWHERE || !this.#homes.revote(home)) return;
    for (const neighbour of this.#homes.membersOf(home)) {
      if (neighbour === but) continue;
      this.#uncount(neighbour);
      this.#count(neighbour);
    }
  }

  #count(member: number): void {
    this.#members.vote[member] = this.#homes.voteAt(this.#members.home[member] as number);
    this.#speak(member, 1);
  }

  #uncount(member: number): void {
    if ((this.#members.vote[member] as number) > 0) this.#speak(member, -1);
    this.#members.vote[member] = 0;
  }

  #speak(member: number, sign: Sign): void {
    const vote = this.#members.vote[member] as number;
    const slots = this.#members.slotsOf(member);
    speak(this.tally, this.#members.fold(member), this.#columns, slots, vote, sign, this.#lost);
  }
}
