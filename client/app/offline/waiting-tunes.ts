import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Tune } from "../../../model/tune.ts";
import type { Problem } from "../../../server/contract.ts";
import { STORAGE_WIPED, WAITING_CHANGED } from "../../base/answers/cache-names.ts";

/** A tune on its way: kept before the first try, dropped once its receipt is kept. */
export interface WaitingTune {
  /** Its Idempotency-Key, fixed before the first try: sent however often, the tune is stored once. */
  key: string;
  tune: Tune;
  place: string | null;
  kept_on: string;
  /** The atlas's refusal, or a failure's sentence in English: it waits for its contributor then. */
  problem: Problem | string | null;
}

interface Schema extends DBSchema {
  waiting: { key: string; value: WaitingTune };
}

let opened: Promise<IDBPDatabase<Schema>> | undefined;

function open(): Promise<IDBPDatabase<Schema>> {
  opened ??= openDB<Schema>("hypsotune", 1, {
    upgrade: (db) => void db.createObjectStore("waiting", { keyPath: "key" }),
    // The browser closed it, which it does to wipe it: the next use opens it again.
    terminated: () => {
      opened = undefined;
      dispatchEvent(new Event(STORAGE_WIPED));
    },
  });
  opened.catch(() => {
    opened = undefined;
  });
  return opened;
}

/** @returns whether the browser kept it: storage may be full or forbidden */
export async function keepWaiting(waiting: WaitingTune): Promise<boolean> {
  try {
    const transaction = (await open()).transaction("waiting", "readwrite", {
      // On the disk before it is sent: a crash of the machine must not make a second key.
      durability: "strict",
    });
    // A transaction that is broken off says so twice: of what was asked, and of itself.
    await Promise.all([transaction.store.put(waiting), transaction.done]);
    return true;
  } catch {
    return false;
  }
}

export async function waitingTunes(): Promise<WaitingTune[]> {
  try {
    const { store, done } = (await open()).transaction("waiting");
    const [all] = await Promise.all([store.getAll(), done]);
    return all.sort((a, b) => (a.kept_on < b.kept_on ? -1 : 1));
  } catch {
    return [];
  }
}

export async function dropWaiting(key: string): Promise<void> {
  try {
    await (await open()).delete("waiting", key);
    tellWaiting();
  } catch {
    // Sent once more it is the same tune still.
  }
}

/** Tells the views that look at what waits. */
export function tellWaiting(): void {
  dispatchEvent(new Event(WAITING_CHANGED));
}
