import { createHash } from "node:crypto";
import { createReadStream, existsSync, readdirSync } from "node:fs";
import { chmod, copyFile, mkdir, open, readFile, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { claimDatabase } from "../db/claim.ts";
import { type CopyHolds, checkDatabase, copyDatabase } from "../db/copy.ts";
import { DatabaseRefused } from "../db/refused.ts";
import { SqliteFile } from "../db/sqlite-file.ts";
import { openKeys } from "./keys.ts";
import { secretFile } from "./secret.ts";
import { requireOwnSecret } from "./secret-check.ts";

/** A backup is a folder of these: the database, its secret, and the SHA-256 of both as sha256sum writes and checks it. */
const DATABASE = "atlas.db";
const SECRET = "atlas.db.secret";
const SUMS = "SHA256SUMS";

/** A reader waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 60_000;

/**
 * Copies a database with its secret into a new folder, while the atlas goes on. The folder has its name only once everything in
 * it is complete and on the disk.
 * @param secret the configuration's, if it gives one; else the one kept beside the database is taken
 * @param folder must not exist, or be empty
 * @throws DatabaseRefused with the remedy
 */
export async function backUp(
  database: string,
  secret: string | undefined,
  folder: string,
): Promise<CopyHolds> {
  if (!existsSync(database)) {
    throw new DatabaseRefused(`There is no database at ${database}. Name it with ATLAS_DB.`);
  }
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    throw new DatabaseRefused(`${folder} is not empty. Name a new folder for each backup.`);
  }
  const kept = secret || (await textOf(secretFile(database)));
  if (!kept) {
    throw new DatabaseRefused(
      `The secret of ${database} is missing: without it a backup would open no receipt. Set ATLAS_SECRET as the atlas has it.`,
    );
  }
  await requireSecretOf(database, kept);
  const unfinished = `${folder.replace(/\/+$/, "")}.unfinished`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true, mode: 0o700 });
  const at = (name: string) => join(unfinished, name);
  copyDatabase(database, at(DATABASE));
  await chmod(at(DATABASE), 0o600);
  const holds = checkDatabase(at(DATABASE));
  await writeFile(at(SECRET), `${kept}\n`, { mode: 0o600 });
  const sums = await Promise.all(
    [DATABASE, SECRET].map(async (name) => `${await sha256Of(at(name))}  ${name}\n`),
  );
  await writeFile(at(SUMS), sums.join(""), { mode: 0o600 });
  for (const name of [DATABASE, SECRET, SUMS]) await toDisk(at(name));
  if (existsSync(folder)) await rm(folder, { recursive: true });
  await rename(unfinished, folder);
  await toDisk(dirname(folder));
  return holds;
}

/**
 * Puts a backup in the place of a database that is not there, and its secret beside it.
 * @param secret the configuration's, if it gives one: the atlas would take it, so it stands in for the backup's own
 * @throws DatabaseRefused with the remedy when the backup is not as it was made, or something is in its place
 */
export async function restore(
  folder: string,
  secret: string | undefined,
  database: string,
): Promise<CopyHolds> {
  for (const line of (await textOf(join(folder, SUMS))).split("\n").filter(Boolean)) {
    const [sum, name = ""] = line.split("  ");
    if (existsSync(join(folder, name)) && (await sha256Of(join(folder, name))) === sum) continue;
    throw new DatabaseRefused(
      `${join(folder, name)} is not as it was backed up. Take another backup.`,
    );
  }
  const [copy, copiedSecret] = [join(folder, DATABASE), join(folder, SECRET)];
  for (const needed of [join(folder, SUMS), copy, copiedSecret]) {
    if (existsSync(needed)) continue;
    throw new DatabaseRefused(`${needed} is missing. Name a folder that npm run backup made.`);
  }
  const letGo = claimDatabase(database);
  const unfinished = `${database}.unfinished`;
  try {
    const before = [database, `${database}-wal`, `${database}-shm`, secretFile(database)];
    for (const there of before) {
      if (!existsSync(there)) continue;
      throw new DatabaseRefused(
        `${there} is there already and is not overwritten. Move what belongs to the old atlas away first: ${before.join(", ")}.`,
      );
    }
    await copyFile(copy, unfinished);
    await chmod(unfinished, 0o600);
    const holds = checkDatabase(unfinished);
    const own = secret || (await textOf(copiedSecret));
    await requireSecretOf(unfinished, own);
    await toDisk(unfinished);
    await writeFile(secretFile(database), own, { mode: 0o600 });
    await toDisk(secretFile(database));
    await rename(unfinished, database);
    await toDisk(dirname(database));
    return holds;
  } finally {
    letGo();
    await rm(unfinished, { force: true });
  }
}

/** @throws DatabaseRefused when a database was made with another secret */
async function requireSecretOf(database: string, secret: string): Promise<void> {
  const connection = new SqliteFile(database, PATIENCE_ms);
  try {
    await requireOwnSecret(connection.db, await openKeys(secret), false);
  } finally {
    connection.abandon();
  }
}

/** A file's text without spaces around it; none when it is not there. */
async function textOf(file: string): Promise<string> {
  return existsSync(file) ? (await readFile(file, "utf8")).trim() : "";
}

async function sha256Of(file: string): Promise<string> {
  const hash = createHash("sha256");
  await pipeline(createReadStream(file), hash);
  return hash.digest("hex");
}

/** Waits until a file, or the names in a folder, would survive a power cut. */
async function toDisk(path: string): Promise<void> {
  const handle = await open(path, "r");
  await handle.sync().finally(() => handle.close());
}
