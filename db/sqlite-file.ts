import { DatabaseSync, type SQLInputValue, type StatementSync } from "node:sqlite";
import { setTimeout as after } from "node:timers/promises";
import { drizzle } from "drizzle-orm/sqlite-proxy";
import type { Database } from "./database.ts";
import { diskTrouble, tryDisk } from "./disk.ts";
import { primaryCode, SQLITE } from "./result-codes.ts";
import { StorageBusy } from "./storage-trouble.ts";

/** What drizzle asks of a driver. */
type Method = "run" | "all" | "values" | "get";
interface Query {
  sql: string;
  params: unknown[];
  method: Method;
}

/** Statements kept prepared: the atlas has some sixty, and longer or shorter ones where lists of ids are asked for. */
const KEPT_STATEMENTS = 200;
/** Between two tries while another process holds the file, ms. */
const TRY_AGAIN_ms = 20;

/**
 * One connection to an SQLite file through the runtime's own binding, as drizzle's proxy driver asks for it. Each statement, and
 * each batch with its transaction, runs in one go, so nothing of another comes in between.
 */
export class SqliteFile {
  readonly db: Database;
  readonly #connection: DatabaseSync;
  readonly #file: string;
  readonly #patience_ms: number;
  /** Whether the disk took nothing when something was last written. */
  #isRefused = false;
  readonly #statements = new Map<string, StatementSync>();

  /**
   * @param patience_ms how long a call waits for another process that holds the file; others go on meanwhile
   * @throws StorageFull or StorageFailing when the file cannot be opened for the disk's sake
   */
  constructor(file: string, patience_ms: number) {
    // Waiting within SQLite would stop this thread, so it is done here.
    try {
      this.#connection = new DatabaseSync(file, { timeout: 0, enableForeignKeyConstraints: true });
    } catch (error) {
      throw diskTrouble(error, () => tryDisk(file)) ?? error;
    }
    this.#file = file;
    this.#patience_ms = patience_ms;
    this.db = drizzle(
      async (sql, params, method) => this.#patiently(() => this.#one({ sql, params, method })),
      async (queries) => this.#patiently(() => this.#together(queries)),
    ) as unknown as Database;
  }

  /** Statements without parameters, one after another. */
  execute(sql: string): Promise<void> {
    return this.#patiently(() => this.#connection.exec(sql));
  }

  /** Statements without parameters, all of them or none. */
  allOrNothing(statements: readonly string[]): Promise<void> {
    return this.#patiently(() =>
      this.#inTransaction(() => {
        for (const statement of statements) this.#connection.exec(statement);
      }),
    );
  }

  /** Rows of a statement without parameters, for what needs neither the disk nor a lock. */
  read(sql: string): unknown[][] {
    return this.#prepared(sql).all() as unknown as unknown[][];
  }

  /** Whether nobody else holds the file at this moment, and the disk takes what is written. */
  canWrite(): boolean {
    if (this.#isRefused && tryDisk(this.#file) !== undefined) return false;
    this.#isRefused = false;
    try {
      this.#connection.exec("BEGIN IMMEDIATE");
      this.#connection.exec("ROLLBACK");
      return true;
    } catch {
      return false;
    }
  }

  /** Moves what the WAL holds into the file itself, and cuts it to nothing; false where somebody still reads it. */
  emptyWal(): boolean {
    try {
      const [[busy]] = this.read("PRAGMA wal_checkpoint(TRUNCATE)") as [[number]];
      return busy === 0;
    } catch {
      return false;
    }
  }

  /** Closes a connection that only read. */
  abandon(): void {
    this.#statements.clear();
    this.#connection.close();
  }

  get isClosed(): boolean {
    return !this.#connection.isOpen;
  }

  /** Moves what the WAL holds into the file itself, and closes it. */
  close(): void {
    // The last connection's end does it too; a backup that is being made would be one more. What fails stays in the WAL, where
    // the next start finds it.
    this.emptyWal();
    this.#statements.clear();
    this.#connection.close();
  }

  #one({ sql, params, method }: Query): { rows: unknown[] } {
    const statement = this.#prepared(sql);
    const values = params as SQLInputValue[];
    if (method === "run") {
      statement.run(...values);
      return { rows: [] };
    }
    const rows =
      method === "get" ? statement.get(...values) : (statement.all(...values) as unknown);
    return { rows: rows as unknown[] };
  }

  #together(queries: readonly Query[]): { rows: unknown[] }[] {
    return this.#inTransaction(() => queries.map((query) => this.#one(query)));
  }

  #inTransaction<T>(run: () => T): T {
    // Immediate: who cannot write is told at the beginning, when nothing has been read yet.
    this.#connection.exec("BEGIN IMMEDIATE");
    try {
      const answer = run();
      this.#connection.exec("COMMIT");
      return answer;
    } catch (error) {
      // A full disk may have rolled back by itself.
      if (this.#connection.isTransaction) this.#connection.exec("ROLLBACK");
      throw error;
    }
  }

  #prepared(sql: string): StatementSync {
    const known = this.#statements.get(sql);
    if (known) return known;
    const statement = this.#connection.prepare(sql);
    statement.setReturnArrays(true);
    if (this.#statements.size >= KEPT_STATEMENTS) {
      this.#statements.delete(this.#statements.keys().next().value as string);
    }
    this.#statements.set(sql, statement);
    return statement;
  }

  #ofTheDisk(error: unknown): Error | undefined {
    const trouble = diskTrouble(error, () => tryDisk(this.#file));
    if (trouble) this.#isRefused = true;
    return trouble;
  }

  async #patiently<T>(run: () => T): Promise<T> {
    const began = performance.now();
    for (;;) {
      try {
        return run();
      } catch (error) {
        const code = primaryCode(error);
        if (code !== SQLITE.busy && code !== SQLITE.locked) throw this.#ofTheDisk(error) ?? error;
        if (performance.now() - began >= this.#patience_ms) throw new StorageBusy(error);
        await after(TRY_AGAIN_ms);
      }
    }
  }
}
