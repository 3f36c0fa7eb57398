import { mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { createClient } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { migrate } from "drizzle-orm/libsql/migrator";
import { readMigrationFiles } from "drizzle-orm/migrator";
import type { Database } from "./database.ts";

const migrationsFolder = fileURLToPath(new URL("./migrations", import.meta.url));
/** Where the migrator keeps what it has applied. */
const MIGRATIONS_TABLE = "__drizzle_migrations";

/** A database made by a newer version of the project. */
export class NewerDatabase extends Error {}

/** An open database file and how to close it. */
export interface OpenDatabase {
  db: Database;
  close: () => void;
}

/**
 * Opens the SQLite file of an atlas, makes it when missing, and brings its schema up to date.
 * WAL with synchronous FULL: what was acknowledged survives a power cut.
 * @throws NewerDatabase when the file has migrations this version does not know
 */
export async function openDatabase(file: string): Promise<OpenDatabase> {
  if (file !== ":memory:") mkdirSync(dirname(file), { recursive: true });
  const client = createClient({ url: file === ":memory:" ? file : `file:${file}`, concurrency: 1 });
  for (const pragma of [
    "journal_mode = WAL",
    "synchronous = FULL",
    "busy_timeout = 5000",
    "foreign_keys = ON",
  ]) {
    await client.execute(`PRAGMA ${pragma}`);
  }
  const db = drizzle(client);
  const known = readMigrationFiles({ migrationsFolder });
  const applied = await client
    .execute(`SELECT max(created_at) AS newest FROM ${MIGRATIONS_TABLE}`)
    .then(({ rows }) => Number(rows[0]?.newest ?? 0))
    .catch(() => 0);
  const newestKnown = Math.max(...known.map((m) => m.folderMillis));
  if (applied > newestKnown) {
    client.close();
    throw new NewerDatabase(
      `${file} was made by a newer version of Hypsotune. Start that version, or another database (ATLAS_DB).`,
    );
  }
  await migrate(db, { migrationsFolder });
  return { db: db as unknown as Database, close: () => client.close() };
}
