import { randomFillSync } from "node:crypto";
import { closeSync, fsyncSync, openSync, rmSync, writeSync } from "node:fs";
import { primaryCode, SQLITE } from "./result-codes.ts";
import { StorageFailing, StorageFull } from "./storage-trouble.ts";

/** More than a write of the atlas takes. */
const TRIAL_bytes = 64 * 1024;

/** What the system says where no room is left (POSIX.1-2024, System Interfaces, 2.3): the disk's, a user's or a group's. */
const NO_ROOM = new Set(["ENOSPC", "EDQUOT"]);

/** And where the disk fails, may only be read or takes no more of a file, or its folder was taken away or closed to the atlas. */
const FAILING = new Set(["EIO", "EROFS", "EFBIG", "ENOENT", "EACCES", "EPERM"]);

/** What the disk has to do with an error of the system in making or writing a file; undefined where it is nothing of the disk's. */
export function fileTrouble(error: unknown): StorageFull | StorageFailing | undefined {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? "";
  if (NO_ROOM.has(code)) return new StorageFull(error);
  return FAILING.has(code) ? new StorageFailing(error) : undefined;
}

/**
 * Writes a little beside a file, and takes it away.
 * @returns the system's name of the error, where it could not; undefined where it could
 */
export function tryDisk(file: string): string | undefined {
  const trial = `${file}.trial`;
  try {
    const handle = openSync(trial, "w", 0o600);
    try {
      // Random, since some file systems store zeros in no room at all.
      writeSync(handle, randomFillSync(Buffer.allocUnsafe(TRIAL_bytes)));
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    return undefined;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code ?? "unknown";
  } finally {
    try {
      rmSync(trial, { force: true });
    } catch {
      // A disk that may only be read keeps nothing of it either.
    }
  }
}

/**
 * What the disk has to do with an error of SQLite. It tells the end of a disk (ENOSPC) from all else, but a quota that is used up from
 * neither a disk that fails nor one that may only be read; so the disk is tried.
 * @returns undefined where it is nothing of the disk's
 */
export function diskTrouble(
  error: unknown,
  tryIt: () => string | undefined,
): StorageFull | StorageFailing | undefined {
  const code = primaryCode(error);
  if (code === SQLITE.full) return new StorageFull(error);
  if (code !== SQLITE.io_error && code !== SQLITE.read_only && code !== SQLITE.cannot_open)
    return undefined;
  return NO_ROOM.has(tryIt() ?? "") ? new StorageFull(error) : new StorageFailing(error);
}
