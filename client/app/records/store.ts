import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { recall, remember } from "../../base/remember.ts";
import type { Logbook, LogbookEntry, LogbookHeater } from "./entry.ts";

interface Schema extends DBSchema {
  heaters: { key: string; value: LogbookHeater };
  entries: { key: string; value: LogbookEntry; indexes: { heater: string } };
}

/** The browser does not keep it: forbidden (private window, blocked site data) or full. Words: `logbookWords.store`. */
export class NotKept extends Error {
  readonly why: "forbidden" | "full";
  constructor(why: "forbidden" | "full", cause: unknown) {
    super(`storage is ${why}`, { cause });
    this.why = why;
  }
}

const CHANGED = "hypsotune-logbook";
/** How many entries there were, kept elsewhere: fewer than that were not removed by their owner. */
const COUNT_KEPT_AS = "logbook.entries";

let opened: Promise<IDBPDatabase<Schema>> | undefined;

function open(): Promise<IDBPDatabase<Schema>> {
  opened ??= openDB<Schema>("hypsotune-logbook", 1, {
    upgrade: (db) => {
      db.createObjectStore("heaters", { keyPath: "id" });
      db.createObjectStore("entries", { keyPath: "id" }).createIndex("heater", "heater_id");
    },
    // The browser closed it, wiping storage for instance: the next use opens it again.
    terminated: () => {
      opened = undefined;
      dispatchEvent(new Event(CHANGED));
    },
  });
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

/** @throws NotKept when the browser forbids storage */
export async function logbook(): Promise<Logbook> {
  return orNotKept(async () => {
    const transaction = (await open()).transaction(["heaters", "entries"]);
    const [heaters, entries] = await Promise.all([
      transaction.objectStore("heaters").getAll(),
      transaction.objectStore("entries").getAll(),
      // Storage wiped meanwhile aborts it, which somebody has to hear.
      transaction.done,
    ]);
    heaters.sort((a, b) => a.name.localeCompare(b.name) || order(a.id, b.id));
    entries.sort((a, b) => order(a.at, b.at) || order(a.id, b.id));
    return { heaters, entries };
  });
}

/** @throws NotKept, and nothing is changed then */
export function putHeater(heater: LogbookHeater): Promise<void> {
  return putAll({ heaters: [heater], entries: [] });
}

/** In place of an older one of the same id. @throws NotKept, and nothing is changed then */
export function putEntry(entry: LogbookEntry): Promise<void> {
  return putAll({ heaters: [], entries: [entry] });
}

/** All of it or nothing. @throws NotKept, and nothing is changed then */
export function putAll({ heaters, entries }: Logbook): Promise<void> {
  return changing((heaterStore, entryStore) => [
    ...heaters.map((heater) => heaterStore.put(heater)),
    ...entries.map((entry) => entryStore.put(entry)),
  ]);
}

export function removeEntry(id: string): Promise<void> {
  return changing((_, entryStore) => [entryStore.delete(id)]);
}

/** A heater with its entries. */
export async function removeHeater(id: string): Promise<void> {
  const { entries } = await logbook();
  const its = entries.filter(({ heater_id }) => heater_id === id);
  await changing((heaterStore, entryStore) => [
    heaterStore.delete(id),
    ...its.map((entry) => entryStore.delete(entry.id)),
  ]);
}

/** Tells of every change, made here or in another tab. @returns what ends it */
export function onLogbookChange(listener: () => void): () => void {
  const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel(CHANGED) : undefined;
  channel?.addEventListener("message", listener);
  addEventListener(CHANGED, listener);
  return () => {
    channel?.close();
    removeEventListener(CHANGED, listener);
  };
}

/** How many entries this browser has lost: it wiped its storage. 0 when nothing is known to be missing. */
export function lostEntries({ entries }: Logbook): number {
  const had = recall<number>(COUNT_KEPT_AS) ?? 0;
  return entries.length === 0 ? had : 0;
}

/** The loss was read: say it no more. */
export function forgetLoss(): void {
  remember(COUNT_KEPT_AS, 0);
}

type Writable = ReturnType<typeof writable>;

/** One transaction: all of the work is kept, or none. */
async function changing(
  work: (heaters: Writable["heaters"], entries: Writable["entries"]) => Promise<unknown>[],
): Promise<void> {
  await orNotKept(async () => {
    const { heaters, entries, done } = writable(await open());
    // A full disk aborts every request; only the transaction itself knows why.
    await Promise.all([done, Promise.allSettled(work(heaters, entries))]);
    const counted = (await open()).transaction("entries");
    const [count] = await Promise.all([counted.store.count(), counted.done]);
    remember(COUNT_KEPT_AS, count);
  });
  // Asked once there is something to lose; the browser decides, some ask the person.
  void navigator.storage?.persist?.().catch(() => false);
  tell();
}

function writable(db: IDBPDatabase<Schema>) {
  const transaction = db.transaction(["heaters", "entries"], "readwrite", { durability: "strict" });
  return {
    heaters: transaction.objectStore("heaters"),
    entries: transaction.objectStore("entries"),
    done: transaction.done,
  };
}

function tell(): void {
  dispatchEvent(new Event(CHANGED));
  if (!("BroadcastChannel" in globalThis)) return;
  const channel = new BroadcastChannel(CHANGED);
  channel.postMessage("changed");
  channel.close();
}

async function orNotKept<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const isFull = (error as DOMException)?.name === "QuotaExceededError";
    throw new NotKept(isFull ? "full" : "forbidden", error);
  }
}

const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
