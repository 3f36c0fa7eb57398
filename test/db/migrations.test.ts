import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createClient } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { migrate } from "drizzle-orm/libsql/migrator";
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

/** Any value that a column of this type takes. */
const valueFor = ({ name, type }: { name: string; type: string }, n: number) => {
  if (name === "verdict") return "accepted";
  return type === "text" ? `${name} ${n}` : n + 0.5;
};

test.each(tags.slice(0, -1).map((tag, i) => [tag, i + 1] as const))(
  "a populated file of %s is brought up to date with every row and figure as they were",
  async (_, count) => {
    const file = join(mkdtempSync(join(tmpdir(), "hypsotune-db-")), "atlas.db");
    const old = createClient({ url: `file:${file}` });
    await migrate(drizzle(old), { migrationsFolder: migrationsUpTo(count) });
    const before: Record<string, Record<string, unknown>[]> = {};
    for (const table of ["tunes", "decisions", "idempotency_keys"]) {
      const columns = (await old.execute(`PRAGMA table_info(${table})`)).rows.map((row) => ({
        name: String(row.name),
        type: String(row.type).toLowerCase(),
      }));
      const names = columns.map(({ name }) => `\`${name}\``).join(",");
      const marks = columns.map(() => "?").join(",");
      for (let n = 1; n <= 3; n++) {
        const args = columns.map((column) =>
          table === "decisions" && column.name === "id" ? n : valueFor(column, n),
        );
        await old.execute({ sql: `INSERT INTO ${table} (${names}) VALUES (${marks})`, args });
      }
      before[table] = plain((await old.execute(`SELECT * FROM ${table}`)).rows);
    }
    old.close();

    const { db, close } = await openDatabase(file);
    const seen = createClient({ url: `file:${file}` });
    for (const [table, rows] of Object.entries(before)) {
      const now = plain((await seen.execute(`SELECT * FROM ${table}`)).rows);
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

const plain = (rows: readonly object[]): Record<string, unknown>[] =>
  rows.map((row) => ({ ...row })) as Record<string, unknown>[];
