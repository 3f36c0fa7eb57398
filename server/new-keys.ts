import type { Database, Statement } from "../db/database.ts";
import {
  beginSizeWaiting,
  beginWaiting,
  countCounted,
  countUncrowdedOn,
  daysOfCounting,
  findWaiting,
  hasTunes,
  letCount,
  letSizesCount,
  sizeCounts,
  sizeWaits,
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
/**
 * Tunes of a heater size count once so many owners of it do, where new ones wait. Alone, somebody would say what its average is;
 * beside two others they are outvoted, or seen to be far off.
 */
export const OWNERS_OF_SIZE = 3;
/** Below so many counted contributors one more weighs much: networks are remembered for a week, and of a crowd one a week may count. */
const ENOUGH = 30;
/** Share of the counted contributors that may come to count in a week, and above which a day's new ones, one of each network, are a surge … */
const SHARE = 0.1;
/** … and so many in any case: strangers to each other who come in a week are seldom one person. */
const LEAST_A_WEEK = 3;
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

/** How many may have come to count in a week, beside so many who do, once one of these does. */
function mostAWeek(counted: number, { crowded }: Pick<Waiting, "crowded">): number {
  const least = crowded && counted < ENOUGH ? 1 : LEAST_A_WEEK;
  return Math.max(least, Math.floor(SHARE * counted));
}

const dueOn = ({ since, crowded }: Waiting, days: number) =>
  later(since, crowded ? Math.max(days, CROWDED_DAYS) : days);

/**
 * The day on which the last of a queue comes to count, if nobody leaves it: each on the day they are due, as one of no
 * more than so many in any seven days.
 * @param recent days of those of the last week, oldest first
 */
export function turnOf(
  queue: readonly { due: string; aWeek: number }[],
  recent: readonly string[],
  today: string,
): string {
  const taken = [...recent];
  let day = today;
  for (const { due, aWeek } of queue) {
    const before = taken.at(-aWeek);
    const free = before === undefined ? today : later(before, WEEK);
    day = [day, due, free].toSorted().at(-1) as string;
    taken.push(day);
  }
  return day;
}

/**
 * Lets those count whose days are over, and the heater sizes of which there are owners enough.
 * @param days that new contributors wait; 0: all who still do count at once
 */
export async function countDue(db: Database, now: Date, days: number): Promise<void> {
  await countContributors(db, now, days);
  await letSizesCount(db, days === 0 ? 0 : OWNERS_OF_SIZE, dayOf(now));
}

async function countContributors(db: Database, now: Date, days: number): Promise<void> {
  const today = dayOf(now);
  const queue = await waitingInTurn(db, QUEUE_MOST);
  if (queue.length === 0) return;
  const due = days === 0 ? queue : queue.filter((row) => dueOn(row, days) <= today);
  if (due.length === 0) return;
  const recent = await daysOfCounting(db, later(today, -WEEK));
  const counted = await countCounted(db);
  // In turn, so that whoever came in a crowd takes what the others leave.
  const mayCount = (row: Waiting, n: number) => recent.length + n < mostAWeek(counted, row);
  const now_counted = (days === 0 ? due : due.filter(mayCount)).map((row) => row.contributor);
  await letCount(db, now_counted, today);
}

/** What of a tune says whether it waits. */
interface OfTune {
  contributor: string;
  heat_kW: number;
}

/** From when a tune's contributor counts, null for now; and how many owners of its heater size must, null where enough do. */
interface WaitsFor {
  counts_from: string | null;
  owners_needed: number | null;
}

interface Options {
  db: Database;
  keys: Keys;
  now: () => Date;
  /** Days that a new contributor waits; 0 for none. */
  days: number;
  /** Told of each who comes in a surge. */
  onSurge?: () => void;
}

/** Receives contributors: who is new, who came in a crowd, and from when each counts. */
export class NewKeys {
  readonly #options: Options;
  /** Of each of the last days its networks, by a hash of its own key, and the first new contributor of each. Never stored. */
  readonly #networks = new Map<string, Map<string, string>>();
  #counted = { at: Number.NEGATIVE_INFINITY, count: 0 };

  constructor(options: Options) {
    this.#options = options;
  }

  /** What to write with a tune, and what it waits for. */
  async arrival(tune: OfTune, address: string): Promise<{ statements: Statement[] } & WaitsFor> {
    const { db, days } = this.#options;
    if (days === 0) return { statements: [], counts_from: null, owners_needed: null };
    const { statements, counts_from } = await this.#arrivalOf(tune.contributor, address);
    if (await sizeCounts(db, tune.heat_kW)) return { statements, counts_from, owners_needed: null };
    return {
      statements: [...statements, beginSizeWaiting(db, tune.heat_kW)],
      counts_from,
      owners_needed: OWNERS_OF_SIZE,
    };
  }

  async #arrivalOf(contributor: string, address: string) {
    const { db, now } = this.#options;
    const waits = await findWaiting(db, contributor);
    if (waits) return { statements: [], counts_from: await this.#turn(waits) };
    if (await hasTunes(db, contributor)) return { statements: [], counts_from: null };
    const since = dayOf(now());
    const crowded = await this.#isCrowded(contributor, address, since);
    const row = { contributor, since, crowded };
    return { statements: [beginWaiting(db, row)], counts_from: await this.#turn(row) };
  }

  /** What a tune waits for that is kept. */
  async waitsFor({ contributor, heat_kW }: OfTune): Promise<WaitsFor> {
    const { db, days } = this.#options;
    if (days === 0) return { counts_from: null, owners_needed: null };
    const waits = await findWaiting(db, contributor);
    return {
      counts_from: waits ? await this.#turn(waits) : null,
      owners_needed: (await sizeWaits(db, heat_kW)) ? OWNERS_OF_SIZE : null,
    };
  }

  /**
   * Whether another new contributor came from the same network that day, or in that week where few count, or too many
   * came that day who were in no crowd themselves.
   */
  async #isCrowded(contributor: string, address: string, today: string): Promise<boolean> {
    const counted = await this.#countCounted();
    const firstDay = counted < ENOUGH ? later(today, 1 - WEEK) : today;
    const first = await this.#firstOf(networkOf(address), firstDay);
    if (first !== undefined && first !== contributor) return true;
    await this.#remember(networkOf(address), contributor, today);
    // Those of a crowd wait thirty days anyway. Were they counted, one client's keys would make all others wait as long.
    const arrived = await countUncrowdedOn(this.#options.db, today);
    const isSurge = arrived >= SURGE_LEAST && arrived >= SHARE * counted;
    if (isSurge) this.#options.onSurge?.();
    return isSurge;
  }

  /** The first new contributor of a network since a day. */
  async #firstOf(network: string, since: string): Promise<string | undefined> {
    for (const [day, seen] of this.#networks) {
      const first = day < since ? undefined : seen.get(await this.#hash(day, network));
      if (first !== undefined) return first;
    }
    return undefined;
  }

  async #remember(network: string, contributor: string, today: string): Promise<void> {
    for (const day of this.#networks.keys())
      if (day <= later(today, -WEEK)) this.#networks.delete(day);
    const seen = this.#networks.get(today) ?? new Map<string, string>();
    this.#networks.set(today, seen);
    if (seen.size < NETWORKS_MOST) seen.set(await this.#hash(today, network), contributor);
  }

  #hash(day: string, network: string): Promise<string> {
    return this.#options.keys.hash("client", `${day}|${network}`);
  }

  async #turn(row: Waiting): Promise<string> {
    const { db, now, days } = this.#options;
    const today = dayOf(now());
    const ahead = await waitingInTurn(db, QUEUE_MOST, { before: row });
    const recent = await daysOfCounting(db, later(today, -WEEK));
    const counted = await this.#countCounted();
    const queue = [...ahead, row].map((one) => ({
      due: dueOn(one, days),
      aWeek: mostAWeek(counted, one),
    }));
    return turnOf(queue, recent, today);
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
