import { createHash } from "node:crypto";
import { DatabaseSync } from "node:sqlite";
import { getTableColumns, getTableName } from "drizzle-orm";
import * as schema from "./schema.ts";

/** All that an atlas keeps, as SQL that SQLite and D1 both take, and as sums that tell whether two databases hold the same. */

/** A table and its columns; the first is its key. */
interface Contents {
  name: string;
  columns: readonly string[];
}

/** Where SQLite keeps the last number given in a table, also when its row is gone: no number is given twice. */
const NUMBERS = "sqlite_sequence";

/** Every table of the schema. */
export const TABLES: readonly Contents[] = Object.values(schema).map((table) => ({
  name: getTableName(table),
  columns: Object.values(getTableColumns(table)).map(({ name }) => name),
}));

const list = (names: readonly string[]) => names.map((name) => `"${name}"`).join(", ");
const quoted = (column: string) => `quote("${column}")`;
const literal = (text: string) => `'${text.replaceAll("'", "''")}'`;
const OURS = TABLES.map(({ name }) => literal(name)).join(", ");

/** One statement is at most so long, bytes: D1 takes 100,000. */
const STATEMENT_MOST = 90_000;
/** A text that makes a row too long for a statement is put together from pieces of so many characters. */
const PIECE = 20_000;

/** What a table holds. */
export interface Sum {
  rows: number;
  /** SHA-256 over all rows in order of their key, each column as SQLite quotes it, hex. */
  sha256: string;
}

/** The sums of all tables, and of the numbers they gave last. */
export function sumsOf(database: DatabaseSync): Record<string, Sum> {
  const sum = (sql: string): Sum => {
    const hash = createHash("sha256");
    let rows = 0;
    for (const row of database.prepare(sql).iterate()) {
      rows++;
      hash.update(`${row.line}\n`);
    }
    return { rows, sha256: hash.digest("hex") };
  };
  const sums = TABLES.map(({ name, columns: [key = "", ...others] }) => {
    const line = [key, ...others].map(quoted).join(" || ',' || ");
    return [name, sum(`SELECT ${line} AS line FROM "${name}" ORDER BY "${key}"`)] as const;
  });
  const numbers = sum(
    `SELECT name || ',' || seq AS line FROM ${NUMBERS} WHERE name IN (${OURS}) ORDER BY name`,
  );
  return { ...Object.fromEntries(sums), [NUMBERS]: numbers };
}

/** A query of one row: for each table its number of rows, and how long all of them are in SQL, characters. */
export const SIZES_SQL = `SELECT ${TABLES.map(({ name, columns }) => {
  const length = columns.map((column) => `length(${quoted(column)})`).join(" + ");
  return `(SELECT count(*) || ' ' || coalesce(sum(${length}), 0) FROM "${name}") AS "${name}"`;
}).join(", ")}`;

/** Statements that put all rows into empty tables of the same schema. */
export function* statementsOf(database: DatabaseSync): Generator<string> {
  for (const table of TABLES) yield* insertsOf(database, table);
  yield `DELETE FROM ${NUMBERS} WHERE name IN (${OURS});`;
  const numbers = database.prepare(`SELECT name, seq FROM ${NUMBERS} WHERE name IN (${OURS})`);
  for (const { name, seq } of numbers.all()) {
    yield `INSERT INTO ${NUMBERS} (name, seq) VALUES (${literal(String(name))}, ${seq});`;
  }
}

function* insertsOf(database: DatabaseSync, { name, columns }: Contents): Generator<string> {
  const before = `INSERT INTO "${name}" (${list(columns)}) VALUES`;
  const [key = ""] = columns;
  const line = columns.map(quoted).join(" || ',' || ");
  const rows = database.prepare(
    `SELECT quote("${key}") AS key, ${line} AS line FROM "${name}" ORDER BY "${key}"`,
  );
  let [waiting, bytes]: [string[], number] = [[], 0];
  const together = () => `${before}\n${waiting.join(",\n")};`;
  for (const { key: at, line } of rows.iterate()) {
    const row = `(${line})`;
    const length = Buffer.byteLength(row) + 2;
    if (waiting.length > 0 && bytes + length > STATEMENT_MOST) {
      yield together();
      [waiting, bytes] = [[], 0];
    }
    if (before.length + length > STATEMENT_MOST) {
      yield* longRow(database, { name, columns }, String(at));
      continue;
    }
    waiting.push(row);
    bytes += length;
  }
  if (waiting.length > 0) yield together();
}

/** A row that is too long for one statement: its long texts follow in pieces. */
function* longRow(database: DatabaseSync, table: Contents, at: string): Generator<string> {
  const { name, columns } = table;
  const [key = ""] = columns;
  const where = `WHERE "${key}" = ${at}`;
  const values = database.prepare(`SELECT ${list(columns)} FROM "${name}" ${where}`).get() ?? {};
  const long = columns.filter((column) => String(values[column]).length > PIECE);
  const short = columns.map((column) => (long.includes(column) ? "''" : quoted(column)));
  const { line } =
    database
      .prepare(
        `SELECT ${short.map((s) => (s === "''" ? "''''''" : s)).join(" || ',' || ")} AS line FROM "${name}" ${where}`,
      )
      .get() ?? {};
  yield `INSERT INTO "${name}" (${list(columns)}) VALUES (${line});`;
  for (const column of long) {
    const characters = [...String(values[column])];
    for (let i = 0; i < characters.length; i += PIECE) {
      const piece = literal(characters.slice(i, i + PIECE).join(""));
      yield `UPDATE "${name}" SET "${column}" = "${column}" || ${piece} ${where};`;
    }
  }
}

/**
 * Takes what another database wrote out as INSERT statements, all or nothing, into a file with the schema and nothing in it.
 * Rows of other tables than the schema's are left out.
 * @param statements each whole, as an export has them
 */
export async function takeIn(file: string, statements: AsyncIterable<string>): Promise<void> {
  const database = new DatabaseSync(file);
  const known = new Set([...TABLES.map(({ name }) => name), NUMBERS]);
  try {
    database.exec("BEGIN IMMEDIATE");
    const numbers = new Map<string, string>();
    for await (const statement of statements) {
      const [, table = ""] = /^INSERT INTO "?(\w+)"?/.exec(statement) ?? [];
      if (!known.has(table)) continue;
      const [, of, number] = /VALUES\s*\('(\w+)',\s*(\d+)\)/.exec(statement) ?? [];
      if (table !== NUMBERS) database.exec(statement);
      else if (of && number && known.has(of)) numbers.set(of, number);
    }
    // Last, for inserting writes them too.
    for (const [of, number] of numbers) {
      database.exec(`DELETE FROM ${NUMBERS} WHERE name = '${of}'`);
      database.exec(`INSERT INTO ${NUMBERS} (name, seq) VALUES ('${of}', ${number})`);
    }
    database.exec("COMMIT");
  } finally {
    database.close();
  }
}
