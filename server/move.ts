import { createReadStream, createWriteStream, existsSync, mkdtempSync, readdirSync } from "node:fs";
import { rename, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { DatabaseSync } from "node:sqlite";
import { finished } from "node:stream/promises";
import { claimDatabase } from "../db/claim.ts";
import { SIZES_SQL, type Sum, statementsOf, sumsOf, takeIn } from "../db/contents.ts";
import { openDatabase, openToRead } from "../db/open.ts";
import { DatabaseRefused } from "../db/refused.ts";
import { openKeys } from "./keys.ts";
import { keptSecret, secretFile } from "./secret.ts";
import { requireOwnSecret } from "./secret-check.ts";
import { wrangler } from "./wrangler.ts";

/** How wrangler.toml binds the database at the edge. */
const BINDING = "ATLAS_DB";
/** What goes to D1 at once, bytes: it takes more, but what breaks off is to be little. */
const FILE_MOST = 16 * 1024 * 1024;

/** A D1 database: the one that is deployed, or wrangler's own on this machine. */
export interface EdgeDatabase {
  local: boolean;
  /** Another wrangler.toml than the project's. */
  config?: string | undefined;
}

/** The sums of every table, the same on both sides. */
export type Moved = Record<string, Sum>;

const targetOf = ({ local, config }: EdgeDatabase) => [
  local ? "--local" : "--remote",
  ...(config === undefined ? [] : ["--config", config]),
];

/**
 * Puts all that an atlas's file holds into an empty D1 database, reads it back and compares. The atlas must be stopped, and not yet
 * open at the edge. The file stays as it is.
 * @param secret the configuration's, if it gives one; else the one kept beside the file is taken, to see that it is the file's own
 * @throws Error with the remedy
 */
export async function moveToEdge(
  file: string,
  secret: string | undefined,
  to: EdgeDatabase,
): Promise<Moved> {
  if (!existsSync(file)) throw new DatabaseRefused(`There is no database at ${file}.`);
  const letGo = claimDatabase(file);
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-move-"));
  try {
    await requireOwn(file, secret);
    wrangler(["d1", "migrations", "apply", BINDING, ...targetOf(to)]);
    const there = sizesAtEdge(to);
    const taken = Object.keys(there).find((name) => !there[name]?.startsWith("0 "));
    if (taken) {
      throw new DatabaseRefused(
        `The database at the edge is not empty: ${taken} has rows. Make a new one and name it in wrangler.toml; what is in this one stays.`,
      );
    }
    const database = new DatabaseSync(file);
    try {
      for await (const part of inFiles(statementsOf(database), folder)) {
        wrangler(["d1", "execute", BINDING, "--file", part, "--yes", ...targetOf(to)]);
        await rm(part);
      }
      const copy = join(folder, "read-back.db");
      await readEdge(to, copy, folder);
      // Nobody but this wrote there, so that the sums tell all.
      return same(sumsOf(database), sumsIn(copy));
    } finally {
      database.close();
    }
  } finally {
    letGo();
    await rm(folder, { recursive: true });
  }
}

/**
 * Puts all that a D1 database holds into a new file. Nobody must write there meanwhile. What is there stays as it is.
 * @param file must not exist; it has its name once it is complete
 * @throws Error with the remedy
 */
export async function moveFromEdge(from: EdgeDatabase, file: string): Promise<Moved> {
  for (const there of [file, `${file}-wal`, `${file}-shm`]) {
    if (!existsSync(there)) continue;
    throw new DatabaseRefused(`${there} is there already and is not overwritten. Name a new file.`);
  }
  const letGo = claimDatabase(file);
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-move-"));
  const unfinished = `${file}.unfinished`;
  try {
    await rm(unfinished, { force: true });
    await readEdge(from, unfinished, folder);
    requireSizes(unfinished, sizesAtEdge(from));
    const sums = sumsIn(unfinished);
    await rename(unfinished, file);
    return sums;
  } finally {
    letGo();
    await rm(folder, { recursive: true });
    await rm(unfinished, { force: true });
  }
}

async function requireOwn(file: string, secret: string | undefined): Promise<void> {
  const { db, close } = await openToRead(file);
  try {
    await requireOwnSecret(db, await openKeys(secret || (await keptSecret(file, false))), false);
  } finally {
    close();
  }
}

/** Writes an export of a D1 database into a new file. */
async function readEdge(from: EdgeDatabase, file: string, folder: string): Promise<void> {
  const dump = join(folder, "export.sql");
  wrangler(["d1", "export", BINDING, "--no-schema", "--output", dump, ...targetOf(from)]);
  await requireSchema(dump);
  (await openDatabase(file)).close();
  await takeIn(file, wholeStatements(dump));
  await rm(dump);
}

/** @throws DatabaseRefused when rows and their lengths in a file are not what the database at the edge says of itself */
function requireSizes(file: string, there: Record<string, string>): void {
  const database = new DatabaseSync(file);
  const here = { ...database.prepare(SIZES_SQL).get() };
  database.close();
  const other = Object.keys(there).find((name) => here[name] !== there[name]);
  if (other) {
    throw new DatabaseRefused(
      `The export differs from the database at the edge in ${other}: ${here[other]} there, ${there[other]} here (rows, and their length). Stop writes at the edge, and try again.`,
    );
  }
}

/** @throws DatabaseRefused when the database at the edge has another schema than this code */
async function requireSchema(dump: string): Promise<void> {
  const ours = readdirSync("db/migrations").filter((name) => name.endsWith(".sql"));
  const theirs = new Set<string>();
  for await (const statement of wholeStatements(dump)) {
    if (!/^INSERT INTO "?d1_migrations"?/.test(statement)) continue;
    for (const [name] of statement.matchAll(/\d{4}_\w+\.sql/g)) theirs.add(name);
  }
  if (theirs.size === ours.length && ours.every((name) => theirs.has(name))) return;
  throw new DatabaseRefused(
    `The database at the edge is of another version of Hypsotune. Take the version it was deployed with, or bring it up to date: wrangler d1 migrations apply ${BINDING}`,
  );
}

function sizesAtEdge(of: EdgeDatabase): Record<string, string> {
  const answer = wrangler([
    "d1",
    "execute",
    BINDING,
    "--json",
    "--command",
    SIZES_SQL,
    ...targetOf(of),
  ]);
  const [{ results } = { results: [] }] = JSON.parse(answer.slice(answer.indexOf("[")));
  return results[0] ?? {};
}

function sumsIn(file: string): Moved {
  const database = new DatabaseSync(file);
  try {
    return sumsOf(database);
  } finally {
    database.close();
  }
}

function same(here: Moved, there: Moved): Moved {
  for (const [name, { rows, sha256 }] of Object.entries(here)) {
    if (there[name]?.sha256 === sha256) continue;
    throw new DatabaseRefused(
      `${name} arrived otherwise than it was sent: ${rows} rows here, ${there[name]?.rows} there. Delete the new database, make another and start again; the file is as it was.`,
    );
  }
  return here;
}

/** Writes statements into files of a size, each for as long as it is looked at. */
async function* inFiles(statements: Iterable<string>, folder: string): AsyncGenerator<string> {
  const file = join(folder, "part.sql");
  let [part, bytes] = [createWriteStream(file), 0];
  for (const statement of statements) {
    part.write(`${statement}\n`);
    bytes += statement.length;
    if (bytes < FILE_MOST) continue;
    part.end();
    await finished(part);
    yield file;
    [part, bytes] = [createWriteStream(file), 0];
  }
  part.end();
  await finished(part);
  if (bytes > 0) yield file;
}

/** The statements of a file of SQL, each whole: a semicolon at a line's end closes one unless it stands within a text. */
async function* wholeStatements(file: string): AsyncGenerator<string> {
  let [lines, quotes]: [string[], number] = [[], 0];
  for await (const line of createInterface({ input: createReadStream(file) })) {
    lines.push(line);
    quotes += line.split("'").length - 1;
    if (quotes % 2 === 1 || !line.endsWith(";")) continue;
    yield lines.join("\n");
    [lines, quotes] = [[], 0];
  }
}

/** What is left to do by hand: the secret belongs to the database, and no command reads it at the edge. */
export const secretToEdge = (file: string) =>
  `Receipts open their tunes under the same secret alone. Before the first request: wrangler secret put ATLAS_SECRET < ${secretFile(file)} (or the ATLAS_SECRET that this atlas has). The atlas refuses to answer with another one.`;

export const secretFromEdge = (file: string) =>
  `Receipts open their tunes under the same secret alone. Put the one that the edge has into ${secretFile(file)}, readable by its owner alone, or set ATLAS_SECRET. The atlas refuses to start with another one.`;
