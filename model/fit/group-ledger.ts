import { exactTerm } from "./exact-sum.ts";
import type { FitRow, GroupFit } from "./group.ts";
import { type Judged, RowColumns } from "./row-columns.ts";
import { FOLDS, Tally } from "./tally.ts";
import { voicesOf } from "./voices.ts";

/** A contributor of one heat class and end. */
interface Member {
  name: string;
  fold: number;
  rows: FitRow[];
  /** Where its rows stand in the columns. */
  slots: number[];
  home: Home | null;
  /** The vote its rows are counted with now; 0 when they are not. */
  vote: number;
}

/** A place in one month, and who is at home there. */
interface Home {
  name: string;
  members: Set<Member>;
  vote: number;
}

/**
 * The rows of one heat class and end by contributor, kept counted in a {@link Tally}. One voice per contributor,
 * however many rows: they share one vote. And k contributors at home in one place and month share √k votes, so that
 * a crowd at one place at one time, real or invented, cannot outvote the rest of the world.
 */
export class GroupLedger {
  readonly tally = new Tally();
  readonly #columns = new RowColumns();
  readonly #lost = { air: 0, co: 0 };
  readonly #members = new Map<string, Member>();
  readonly #homes = new Map<string, Home>();

  get contributors(): number {
    return this.#members.size;
  }

  *rows(): Generator<FitRow> {
    for (const { rows } of this.#members.values()) yield* rows;
  }

  /** The place and month with the most contributors at home, and the contributors in all. */
  surge(): { home: string; there: number; contributors: number } {
    let most: Home | null = null;
    for (const home of this.#homes.values()) {
      const more = home.members.size - (most?.members.size ?? 0);
      if (most === null || more > 0 || (more === 0 && home.name < most.name)) most = home;
    }
    return {
      home: most?.name ?? "",
      there: most?.members.size ?? 0,
      contributors: this.#members.size,
    };
  }

  /** Puts many rows at once into an empty ledger: the same as one after another, sooner. */
  load(rows: Iterable<FitRow>): void {
    for (const row of rows) this.#keep(this.#member(row.contributor), row);
    for (const member of this.#members.values()) {
      member.home = this.#homeOf(member.rows);
      member.home?.members.add(member);
    }
    for (const home of this.#homes.values()) home.vote = sharedVote(home.members.size);
    for (const member of this.#members.values()) this.#count(member);
  }

  put(row: FitRow): void {
    const member = this.#member(row.contributor);
    this.#uncount(member);
    this.#keep(member, row);
    this.#settle(member);
  }

  /** Takes out the row of that name; nothing happens when there is none. */
  drop({ row, contributor }: Pick<FitRow, "row" | "contributor">): void {
    const member = this.#members.get(contributor);
    const at = member?.rows.findIndex((r) => r.row === row) ?? -1;
    if (!member || at < 0) return;
    this.#uncount(member);
    member.rows.splice(at, 1);
    this.#columns.remove(member.slots.splice(at, 1)[0] as number);
    if (member.rows.length === 0) this.#members.delete(contributor);
    this.#settle(member);
  }

  /** Votes lost to doubt about the air, and to the final CO. */
  discounts(): { air: number; co: number } {
    return { air: this.#lost.air, co: this.#lost.co };
  }

  /** What a fit makes of the rows; see {@link RowColumns.judge}. */
  judged(group: GroupFit, changed?: { row: FitRow; aside: boolean }[]): Judged {
    return this.#columns.judge(group, changed);
  }

  /** Remembers which rows were set aside before, by a name made of row and end. */
  knownAside(isAside: (row: FitRow) => boolean): void {
    for (const { rows, slots } of this.#members.values()) {
      rows.forEach((row, i) => {
        if (isAside(row)) this.#columns.knownAside(slots[i] as number);
      });
    }
  }

  #keep(member: Member, row: FitRow): void {
    member.rows.push(row);
    member.slots.push(this.#columns.add(row));
  }

  #member(name: string): Member {
    let member = this.#members.get(name);
    if (!member) {
      member = { name, fold: foldOf(name), rows: [], slots: [], home: null, vote: 0 };
      this.#members.set(name, member);
    }
    return member;
  }

  /** Counts a member's rows again, and its neighbours' too where their votes have changed. */
  #settle(member: Member): void {
    const home = member.rows.length > 0 ? this.#homeOf(member.rows) : null;
    const left = member.home;
    if (home !== left) {
      left?.members.delete(member);
      home?.members.add(member);
      member.home = home;
      if (left) this.#revote(left);
      if (left?.members.size === 0) this.#homes.delete(left.name);
      if (home) this.#revote(home, member);
    }
    if (member.rows.length > 0) this.#count(member);
  }

  #revote(home: Home, but?: Member): void {
    const vote = sharedVote(home.members.size);
    if (vote === home.vote) return;
    home.vote = vote;
    for (const neighbour of home.members) {
      if (neighbour === but) continue;
      this.#uncount(neighbour);
      this.#count(neighbour);
    }
  }

  #count(member: Member): void {
    member.vote = member.home?.vote ?? 1;
    this.#change(member, 1);
  }

  #uncount(member: Member): void {
    if (member.vote > 0) this.#change(member, -1);
    member.vote = 0;
  }

  #change({ rows, vote, fold }: Member, sign: 1 | -1): void {
    const { voices, steps, lost } = voicesOf(rows, vote);
    this.#lost.air += sign * exactTerm(lost.air);
    this.#lost.co += sign * exactTerm(lost.co);
    for (const voice of voices) this.tally.countRow(fold, voice, sign);
    for (const step of steps) this.tally.countStep(fold, step, sign);
  }

  /** The place and month of most of a member's rows, ties going to what sorts first; null without a place. */
  #homeOf(rows: readonly FitRow[]): Home | null {
    const name = mostFrequent(rows);
    if (name === null) return null;
    let home = this.#homes.get(name);
    if (!home) {
      home = { name, members: new Set(), vote: 1 };
      this.#homes.set(name, home);
    }
    return home;
  }
}

/**
 * Vote of one of k at home in one place and month: 1/√k, with k in steps of 2^¼, so that one contributor more seldom
 * means counting all of them again.
 */
function sharedVote(k: number): number {
  return k > 0 ? 2 ** (-Math.round(4 * Math.log2(k)) / 8) : 1;
}

function mostFrequent(rows: readonly FitRow[]): string | null {
  const [first] = rows;
  if (rows.length === 1 && first) return nameOf(first);
  const counts = new Map<string, number>();
  for (const row of rows) {
    const name = nameOf(row);
    if (name !== null) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  let best: string | null = null;
  let most = 0;
  for (const [name, count] of counts) {
    if (count > most || (count === most && best !== null && name < best))
      [best, most] = [name, count];
  }
  return best;
}

function nameOf({ cell, month }: FitRow): string | null {
  return cell ? `${cell} ${month ?? ""}` : null;
}

/** A fold from a name alone: FNV-1a, so that it is the same everywhere and at any time. */
function foldOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  hash ^= hash >>> 15;
  return (Math.imul(hash, 0x2c1b3c6d) >>> 16) % FOLDS;
}
