import type { BatchItem } from "drizzle-orm/batch";
import type { BaseSQLiteDatabase } from "drizzle-orm/sqlite-core";

/**
 * A database the queries run on: a file through the runtime's own SQLite, or D1 at the edge. Both answer asynchronously and write
 * several statements at once by `batch`, all or nothing; D1 knows no interactive transactions, so none are used.
 */
export type Database = BaseSQLiteDatabase<"async", unknown, Record<string, never>> & {
  batch(statements: [Statement, ...Statement[]]): Promise<unknown>;
};

/** One statement of a batch. */
export type Statement = BatchItem<"sqlite">;
