import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { expect, test } from "vitest";
import { openDatabase } from "../../db/open.ts";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";

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
  if (name === "decided_on") return `2026-11-0${n}`;
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
      // Days of decisions on a tune become months, once.
      const kept = rows.map((row) =>
        "decided_on" in row && count <= tags.indexOf("0012_nobody_found")
          ? { ...row, decided_on: "2026-11" }
          : row,
      );
      expect(now).toEqual(kept.map((row) => expect.objectContaining(row)));
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
      "imported",
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

test("what is shown of tunes from before is no finer: pseudonyms, homes, densities, several places", async () => {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-db-")), "atlas.db");
  const old = migrated(file, migrationsUpTo(tags.indexOf("0012_nobody_found")));
  const columns = rowsOf(old, "PRAGMA table_info(tunes)").map(({ name, type }) => ({
    name: String(name),
    type: String(type).toLowerCase(),
  }));
  // [contributor, cell, place, month]
  const given = [
    ["anna", "cell 1", "place 1", "2026-05"],
    ["anna", "cell 2", "place 2", "2026-06"],
    ["ben", "cell 1", "place 1", "2026-05"],
    ["ben", "cell 1", "place 1", "2026-06"],
    ["cleo", null, null, "2026-05"],
  ];
  given.forEach(([contributor, cell, place, tuned_on], n) => {
    const row: Record<string, unknown> = { contributor, cell, place, tuned_on };
    row.density_kg_m3 = 1.23456;
    row.ln_density_sd = 0.012345;
    const args = columns.map((column) =>
      column.name in row ? row[column.name] : valueFor(column, n),
    ) as (string | number | null)[];
    old.prepare(`INSERT INTO tunes VALUES (${columns.map(() => "?").join(",")})`).run(...args);
  });
  old.exec("INSERT INTO decisions VALUES (1, '', 'waiting', 'accepted', '[]', '2026-11-25')");
  old.close();
  const { close } = await openDatabase(file);
  const seen = new DatabaseSync(file);
  const tunes = rowsOf(seen, "SELECT * FROM tunes ORDER BY rowid");
  const [a, , b, , c] = tunes as { pseudonym: string; home: string | null }[];
  for (const tune of tunes) {
    expect([tune.density_kg_m3, tune.ln_density_sd]).toEqual([1.23, 0.012]);
    expect(tune.pseudonym).toMatch(/^[0-9a-f]{16}$/);
  }
  expect(new Set([a?.pseudonym, b?.pseudonym, c?.pseudonym]).size).toBe(3);
  expect(tunes.map(({ pseudonym }) => pseudonym)).toEqual(
    [a, a, b, b, c].map((tune) => tune?.pseudonym),
  );
  expect(a?.home).toMatch(/^[0-9a-f]{16}$/);
  // Both were at home in place 1 in May; of the one without a place nobody knows.
  expect(tunes.map(({ home }) => home)).toEqual([a?.home, a?.home, a?.home, a?.home, null]);
  expect(tunes.map(({ several_places }) => several_places)).toEqual([1, 1, 0, 0, 0]);
  // The day of what is about no tune stays.
  expect(rowsOf(seen, "SELECT decided_on FROM decisions")).toEqual([{ decided_on: "2026-11-25" }]);
  seen.close();
  close();
});

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
