import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { expect, test } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { acceptedTunes, type TuneRow } from "../../db/tunes.ts";

const FOLDER = "db/migrations";
const journal = JSON.parse(readFileSync(join(FOLDER, "meta/_journal.json"), "utf8"));
const tags: string[] = journal.entries.map((entry: { tag: string }) => entry.tag);

/** The migrations as an earlier version had them: the first so many. */
function migrationsUpTo(count: number): string {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-migrations-"));
  cpSync(FOLDER, folder, { recursive: true });
  const entries = journal.entries.slice(0, count);
  writeFileSync(join(folder, "meta/_journal.json"), JSON.stringify({ ...journal, entries }));
  return folder;
}

/** A file as an earlier version left it, open; the migrator's own table as its drivers have always written it. */
function migrated(file: string, migrationsFolder: string): DatabaseSync {
  const old = new DatabaseSync(file);
  const migrations = readMigrationFiles({ migrationsFolder });
  for (const statement of migrations.flatMap(({ sql }) => sql)) old.exec(statement);
  old.exec(
    "CREATE TABLE __drizzle_migrations (id SERIAL PRIMARY KEY, hash text NOT NULL, created_at numeric)",
  );
  const noted = old.prepare("INSERT INTO __drizzle_migrations (hash, created_at) VALUES (?, ?)");
  for (const { hash, folderMillis } of migrations) noted.run(hash, folderMillis);
  return old;
}

/** Any value that a column of this type takes. */
const valueFor = ({ name, type }: { name: string; type: string }, n: number) => {
  if (name === "verdict") return "accepted";
  return type === "text" ? `${name} ${n}` : n + 0.5;
};

test.each(tags.slice(0, -1).map((tag, i) => [tag, i + 1] as const))(
  "a populated file of %s is brought up to date with every row and figure as they were",
  async (_, count) => {
    const file = join(mkdtempSync(join(tmpdir(), "hypsotune-db-")), "atlas.db");
    const old = migrated(file, migrationsUpTo(count));
    const before: Record<string, Record<string, unknown>[]> = {};
    for (const table of ["tunes", "decisions", "idempotency_keys"]) {
      const columns = rowsOf(old, `PRAGMA table_info(${table})`).map((row) => ({
        name: String(row.name),
        type: String(row.type).toLowerCase(),
      }));
      const names = columns.map(({ name }) => `\`${name}\``).join(",");
      const marks = columns.map(() => "?").join(",");
      for (let n = 1; n <= 3; n++) {
        const args = columns.map((column) =>
          table === "decisions" && column.name === "id" ? n : valueFor(column, n),
        );
        old.prepare(`INSERT INTO ${table} (${names}) VALUES (${marks})`).run(...args);
      }
      before[table] = rowsOf(old, `SELECT * FROM ${table}`);
    }
    old.close();

    const { db, close } = await openDatabase(file);
    const seen = new DatabaseSync(file);
    for (const [table, rows] of Object.entries(before)) {
      const now = rowsOf(seen, `SELECT * FROM ${table}`);
      expect(now).toEqual(rows.map((row) => expect.objectContaining(row)));
    }
    seen.close();
    // The code of today reads them.
    const tunes: TuneRow[] = [];
    for await (const page of acceptedTunes(db)) tunes.push(...page);
    expect(tunes.map(({ low_pump_Hz }) => low_pump_Hz)).toEqual([1.5, 2.5, 3.5]);
    // What a version did not keep yet is unknown.
    const added = [
      "elevation_sd_m",
      "found",
      "judged_version",
      "low_suggested_Hz_per_krpm",
    ] as const;
    for (const column of added) {
      expect(tunes.map((tune) => tune[column])).toEqual(
        before.tunes?.map((row) => row[column] ?? null),
      );
    }
    close();
  },
);

test("migrations only go forward: none drops a table or cascades, and each is in the journal", () => {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith(".sql"));
  expect(files.sort()).toEqual(tags.map((tag) => `${tag}.sql`));
  for (const file of files) {
    expect(readFileSync(join(FOLDER, file), "utf8")).not.toMatch(/CASCADE|DROP TABLE|DELETE FROM/i);
  }
});

const rowsOf = (database: DatabaseSync, sql: string): Record<string, unknown>[] =>
  database
    .prepare(sql)
    .all()
    .map((row) => ({ ...row }));
