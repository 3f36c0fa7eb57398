import { DatabaseSync } from "node:sqlite";
import { DatabaseRefused } from "./refused.ts";

/** What a copy of a database holds. */
export interface CopyHolds {
  tunes: number;
  /** The newest published fit; null where there is none. */
  fit: string | null;
}

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

/**
 * Copies a database, also one that is being written to: what was committed at one moment, in one file, without what was deleted.
 * @param to must not exist
 */
export function copyDatabase(from: string, to: string): void {
  const source = new DatabaseSync(from, { timeout: PATIENCE_ms });
  try {
    source.prepare("VACUUM INTO ?").run(to);
  } finally {
    source.close();
  }
}

/**
 * Reads a whole database and answers what it holds.
 * @throws DatabaseRefused when it is damaged
 */
export function checkDatabase(file: string): CopyHolds {
  const database = new DatabaseSync(file, { readOnly: true });
  try {
    const first = (sql: string) => Object.values(database.prepare(sql).get() ?? {})[0];
    const found = first("PRAGMA integrity_check");
    if (found !== "ok") throw new Error(String(found));
    return {
      tunes: Number(first("SELECT count(*) FROM tunes")),
      fit: (first("SELECT version FROM fits ORDER BY number DESC LIMIT 1") as string) ?? null,
    };
  } catch (error) {
    throw new DatabaseRefused(`${file} is damaged (${(error as Error).message}).`);
  } finally {
    database.close();
  }
}
