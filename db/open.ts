import { chmodSync, closeSync, mkdirSync, openSync } from "node:fs";
import { statfs } from "node:fs/promises";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { sql } from "drizzle-orm";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { migrate } from "drizzle-orm/sqlite-proxy/migrator";
import { Ballast } from "./ballast.ts";
import type { Database } from "./database.ts";
import { ownPath, requireUsable } from "./file-state.ts";
import { DatabaseRefused } from "./refused.ts";
import { primaryCode, SQLITE } from "./result-codes.ts";
import { SqliteFile } from "./sqlite-file.ts";
import { causesOf, StorageFull } from "./storage-trouble.ts";

const migrationsFolder = fileURLToPath(new URL("./migrations", import.meta.url));
/** Where the migrator keeps what it has applied. */
const MIGRATIONS_TABLE = "__drizzle_migrations";

/** A write waits so long for another process that holds the file, ms. */
const PATIENCE_ms = 5000;
/** Kept free within the largest size, so that withdrawals and what follows from them always find room. */
const RESERVE_WITHIN_bytes = 1024 * 1024;
/** A WAL that somebody else still reads is emptied later, ms. */
const EMPTY_AGAIN_ms = 1000;
/** What the disk has left is asked for once in so long, ms. */
const DISK_ASKED_ms = 1000;

/** A database made by a newer version of the project. */
export class NewerDatabase extends DatabaseRefused {}

/** How the room for a database is limited; without it only the disk's end does. */
export interface Room {
  /** The file grows no further, bytes. */
  most_bytes?: number | undefined;
  /** No new tunes once the disk has less left than this, bytes; and a ballast beside the file, for withdrawals when it has nothing left. */
  disk_reserve_bytes?: number | undefined;
}

/** What tells whether a database takes writes. */
export interface Storage {
  /** Whether there is no room for new tunes. Withdrawals still find some. */
  isShort: () => Promise<boolean>;
  /** Whether the database takes writes at this moment: no other process holds it. */
  canWrite: () => boolean;
  /** Runs a write, a withdrawal's, that must find room: where there is none the ballast is given up, and it runs again. */
  findRoomFor: <T>(write: () => Promise<T>) => Promise<T>;
  /**
   * Sees that what was deleted or overwritten is nowhere in the files any more; where somebody reads what was there
   * before, a backup for example, as soon as they are done.
   */
  forget: () => Promise<void>;
}

/** An open database file and how to close it. */
export interface OpenDatabase {
  db: Database;
  /** Whether it was made now. */
  isNew: boolean;
  storage: Storage;
  /** Moves everything into the file itself and lets go of it. */
  close: () => void;
}

/**
 * Opens the SQLite file of an atlas, makes it when missing, readable by its owner alone, and brings its schema up to date.
 * WAL with synchronous FULL: what was acknowledged survives a power cut.
 * @throws DatabaseRefused with the remedy: empty, not to be written, no database, or made by a newer version
 */
export async function openDatabase(file: string, room: Room = {}): Promise<OpenDatabase> {
  const isNew = file === ":memory:" || !requireUsable(file);
  if (file !== ":memory:") {
    mkdirSync(dirname(file), { recursive: true });
    closeSync(openSync(file, "a", 0o600));
    chmodSync(file, 0o600);
  }
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    await connection.execute(
      // What is deleted is overwritten with zeros.
      "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON",
    );
    if (room.most_bytes !== undefined) {
      const [[page_bytes]] = connection.read("PRAGMA page_size") as [[number]];
      const pages = Math.floor(room.most_bytes / page_bytes);
      await connection.execute(`PRAGMA max_page_count = ${pages}`);
    }
    await bringUpToDate(connection, file);
  } catch (error) {
    connection.close();
    throw refusedIfDamaged(error, file);
  }
  const ballast =
    file === ":memory:" || room.disk_reserve_bytes === undefined
      ? undefined
      : new Ballast(ownPath(file));
  const forget = emptyingWal(connection, ballast);
  // A process that was killed may have left what was withdrawn in the WAL.
  await forget();
  return {
    db: connection.db,
    isNew,
    storage: {
      isShort: roomOf(connection, file, room, ballast),
      canWrite: () => connection.canWrite(),
      findRoomFor: givingUp(ballast),
      forget,
    },
    close: () => connection.close(),
  };
}

/**
 * Opens the file of an atlas, which may be running, to read it as it is.
 * @throws DatabaseRefused with the remedy, also where its schema is an older version's
 */
export async function openToRead(file: string): Promise<Pick<OpenDatabase, "db" | "close">> {
  requireUsable(file);
  const connection = new SqliteFile(file, PATIENCE_ms);
  try {
    await connection.execute("PRAGMA query_only = ON; PRAGMA schema_version");
    if (!(await isUpToDate(connection, file))) {
      throw new DatabaseRefused(
        `${file} was made by an older version of Hypsotune. Start the atlas once, which brings it up to date.`,
      );
    }
  } catch (error) {
    connection.abandon();
    throw refusedIfDamaged(error, file);
  }
  return { db: connection.db, close: () => connection.abandon() };
}

function refusedIfDamaged(error: unknown, file: string): unknown {
  const code = primaryCode(causesOf(error).at(-1));
  if (code !== SQLITE.no_database && code !== SQLITE.corrupt) return error;
  return new DatabaseRefused(
    `${file} is no database of an atlas, or is damaged. Restore a backup (npm run restore), or name another file (ATLAS_DB).`,
    { cause: error },
  );
}

/** @throws NewerDatabase when a newer version made it */
async function isUpToDate({ db }: SqliteFile, file: string): Promise<boolean> {
  const newest = Math.max(...readMigrationFiles({ migrationsFolder }).map((m) => m.folderMillis));
  const applied = await db
    .values<[number]>(sql.raw(`SELECT max(created_at) FROM ${MIGRATIONS_TABLE}`))
    .then(([row]) => Number(row?.[0] ?? 0))
    .catch(() => 0);
  if (applied <= newest) return applied === newest;
  throw new NewerDatabase(
    `${file} was made by a newer version of Hypsotune. Start that version, or another database (ATLAS_DB).`,
  );
}

async function bringUpToDate(connection: SqliteFile, file: string): Promise<void> {
  if (await isUpToDate(connection, file)) return;
  const { db } = connection;
  await migrate(
    db as unknown as Parameters<typeof migrate>[0],
    (statements) => connection.allOrNothing(statements),
    { migrationsFolder },
  );
}

/** The WAL has pages as they were; moved into the file it is cut to nothing. Whoever asks meanwhile shares the next time. */
function emptyingWal(connection: SqliteFile, ballast: Ballast | undefined): Storage["forget"] {
  let [isWanted, retry]: [boolean, ReturnType<typeof setTimeout> | undefined] = [false, undefined];
  const empty = () => {
    if (!isWanted || connection.isClosed) return;
    clearTimeout(retry);
    isWanted = !connection.emptyWal();
    if (isWanted) retry = setTimeout(empty, EMPTY_AGAIN_ms).unref();
    // What the withdrawal took is free again, and not for others.
    else ballast?.keep();
  };
  return async () => {
    isWanted = true;
    // Withdrawals that were committed together are forgotten together.
    await new Promise(setImmediate);
    empty();
  };
}

function givingUp(ballast: Ballast | undefined): Storage["findRoomFor"] {
  return async (write) => {
    try {
      return await write();
    } catch (error) {
      if (!ballast || !causesOf(error).some((cause) => cause instanceof StorageFull)) throw error;
      ballast.giveUp();
    }
    try {
      return await write();
    } catch (error) {
      ballast.keep();
      throw error;
    }
  };
}

function roomOf(
  connection: SqliteFile,
  file: string,
  room: Room,
  ballast: Ballast | undefined,
): Storage["isShort"] {
  const pragma = (name: string) => (connection.read(`PRAGMA ${name}`) as [[number]])[0][0];
  const page_bytes = pragma("page_size");
  const most_pages = pragma("max_page_count");
  let disk = { asked: Number.NEGATIVE_INFINITY, isShort: false };
  return async () => {
    const used = pragma("page_count") - pragma("freelist_count");
    if ((most_pages - used) * page_bytes < RESERVE_WITHIN_bytes) return true;
    if (room.disk_reserve_bytes === undefined || file === ":memory:") return false;
    if (performance.now() - disk.asked > DISK_ASKED_ms) {
      const { bavail, bsize } = await statfs(file);
      disk = { asked: performance.now(), isShort: bavail * bsize < room.disk_reserve_bytes };
      if (!disk.isShort) ballast?.keep();
    }
    return disk.isShort;
  };
}
