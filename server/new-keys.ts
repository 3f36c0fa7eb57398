import type { Database, Statement } from "../db/database.ts";
import {
  beginWaiting,
  countCounted,
  countNewOn,
  daysOfCounting,
  findWaiting,
  hasTunes,
  letCount,
  type Waiting,
  waitingInTurn,
} from "../db/waiting.ts";
import { networkOf } from "./client-address.ts";
import type { Keys } from "./keys.ts";

/**
 * New contributor keys cost nothing, so a new one's tunes wait before they count: some days, at most so many a week, and
 * longer for those who came in a crowd. Somebody who makes keys by the dozen gets few of them counted, and late.
 */

/** Days until a new contributor's tunes count, unless told otherwise. */
export const NEW_KEY_DAYS = 6;
/** Days until a contributor counts who came in a crowd, at least. */
const CROWDED_DAYS = 30;
/** From so many counted contributors on one more a week does little. */
const ENOUGH = 30;
/** Share of the counted contributors that may come to count in a week, and above which a day's new ones are a surge. */
const SHARE = 0.1;
const SURGE_LEAST = 5;
const WEEK = 7;
/** Looked at in the queue at most: behind more, nobody could tell the day. */
const QUEUE_MOST = 1000;
/** Networks remembered a day at most; beyond, a day is a surge anyway. */
const NETWORKS_MOST = 50_000;
const COUNT_FOR_ms = 60_000;

const dayOf = (date: Date) => date.toISOString().slice(0, 10);

/** A day so many days after another. */
const later = (day: string, days: number) => dayOf(new Date(Date.parse(day) + days * 86_400_000));

/** New contributors who may come to count in a week, beside so many who do. */
function mostAWeek(counted: number): number {
  return Math.max(counted < ENOUGH ? 1 : 3, Math.floor(SHARE * counted));
}

const dueOn = ({ since, crowded }: Waiting, days: number) =>
  later(since, crowded ? Math.max(days, CROWDED_DAYS) : days);

/**
 * The day on which the last of a queue comes to count, if nobody leaves it: each on the day they are due, and no more
 * than so many in any seven days.
 * @param recent days of those of the last week, oldest first
 */
export function turnOf(
  due: readonly string[],
  recent: readonly string[],
  aWeek: number,
  today: string,
): string {
  const taken = [...recent];
  let day = today;
  for (const wanted of due) {
    const before = taken.at(-aWeek);
    const free = before === undefined ? today : later(before, WEEK);
    day = [day, wanted, free].toSorted().at(-1) as string;
    taken.push(day);
  }
  return day;
}

/**
 * Lets those count whose days are over.
 * @param days that new contributors wait; 0: all who still do count at once
 */
export async function countDue(db: Database, now: Date, days: number): Promise<void> {
  const today = dayOf(now);
  const queue = await waitingInTurn(db, QUEUE_MOST);
  if (queue.length === 0) return;
  const due = days === 0 ? queue : queue.filter((row) => dueOn(row, days) <= today);
  if (due.length === 0) return;
  const recent = await daysOfCounting(db, later(today, -WEEK));
  const left = days === 0 ? due.length : mostAWeek(await countCounted(db)) - recent.length;
  const now_counted = due.slice(0, Math.max(0, left)).map(({ contributor }) => contributor);
  await letCount(db, now_counted, today);
}

interface Options {
  db: Database;
  keys: Keys;
  now: () => Date;
  /** Days that a new contributor waits; 0 for none. */
  days: number;
}

/** Receives contributors: who is new, who came in a crowd, and from when each counts. */
export class NewKeys {
  readonly #options: Options;
  /** The day's networks by keyed hash, and the first new contributor of each. Never stored. */
  readonly #networks = new Map<string, string>();
  #day = "";
  #counted = { at: Number.NEGATIVE_INFINITY, count: 0 };

  constructor(options: Options) {
    this.#options = options;
  }

  /** What to write with a contributor's tune, and from when it counts: null for now. */
  async arrival(
    contributor: string,
    address: string,
  ): Promise<{ statements: Statement[]; counts_from: string | null }> {
    const { db, now, days } = this.#options;
    if (days === 0) return { statements: [], counts_from: null };
    const waits = await findWaiting(db, contributor);
    if (waits) return { statements: [], counts_from: await this.#turn(waits) };
    if (await hasTunes(db, contributor)) return { statements: [], counts_from: null };
    const since = dayOf(now());
    const crowded = await this.#isCrowded(contributor, address, since);
    const row = { contributor, since, crowded };
    return { statements: [beginWaiting(db, row)], counts_from: await this.#turn(row) };
  }

  /** From when a contributor's tunes count; null for now. */
  async countsFrom(contributor: string): Promise<string | null> {
    const { db, days } = this.#options;
    const waits = days === 0 ? undefined : await findWaiting(db, contributor);
    return waits ? this.#turn(waits) : null;
  }

  /** Whether another new contributor came from the same network that day, or too many came at all. */
  async #isCrowded(contributor: string, address: string, today: string): Promise<boolean> {
    const { db, keys } = this.#options;
    if (today !== this.#day) {
      this.#networks.clear();
      this.#day = today;
    }
    const network = await keys.hash("client", `${today}|${networkOf(address)}`);
    const first = this.#networks.get(network);
    if (first !== undefined && first !== contributor) return true;
    if (this.#networks.size < NETWORKS_MOST) this.#networks.set(network, contributor);
    const arrived = await countNewOn(db, today);
    return arrived >= SURGE_LEAST && arrived >= SHARE * (await this.#countCounted());
  }

  async #turn(row: Waiting): Promise<string> {
    const { db, now, days } = this.#options;
    const today = dayOf(now());
    const ahead = await waitingInTurn(db, QUEUE_MOST, row);
    const recent = await daysOfCounting(db, later(today, -WEEK));
    const due = [...ahead, row].map((one) => dueOn(one, days));
    return turnOf(due, recent, mostAWeek(await this.#countCounted()), today);
  }

  /** Counting passes over all tunes, so one count serves for a while. */
  async #countCounted(): Promise<number> {
    const at = this.#options.now().getTime();
    if (Math.abs(at - this.#counted.at) > COUNT_FOR_ms) {
      this.#counted = { at, count: await countCounted(this.#options.db) };
    }
    return this.#counted.count;
  }
}
