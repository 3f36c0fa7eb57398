import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { diskTrouble, fileTrouble, tryDisk } from "../../db/disk.ts";
import { StorageFailing, StorageFull, troubled, troubleOf } from "../../db/storage-trouble.ts";
import type { WrittenTo } from "./file-limit-child.ts";

// Result codes: sqlite.org/rescode.html. What the system calls its errors: POSIX.1-2024, System Interfaces, 2.3.
const IOERR_WRITE = 10 | (3 << 8);
const IOERR_FSYNC = 10 | (4 << 8);
const READONLY_DBMOVED = 8 | (4 << 8);
const CONSTRAINT_UNIQUE = 19 | (8 << 8);

const ofSqlite = (errcode: number, system: string | undefined) =>
  diskTrouble(Object.assign(new Error("SQLite's."), { errcode }), () => system);

test.each([
  ["the disk's end, which SQLite itself knows", 13, undefined, StorageFull],
  ["a quota that is used up", IOERR_WRITE, "EDQUOT", StorageFull],
  ["a quota met when it is flushed", IOERR_FSYNC, "EDQUOT", StorageFull],
  ["the disk's end met by a file of shared memory", 10 | (19 << 8), "ENOSPC", StorageFull],
  ["a disk that fails", IOERR_WRITE, "EIO", StorageFailing],
  ["a file system that may only be read", IOERR_WRITE, "EROFS", StorageFailing],
  ["a file that was taken away", READONLY_DBMOVED, undefined, StorageFailing],
  ["a file beside it that cannot be made", 14, "EROFS", StorageFailing],
  ["an error that passed", IOERR_WRITE, undefined, StorageFailing],
])("%s", (_, errcode, system, kind) => {
  expect(ofSqlite(errcode, system)).toBeInstanceOf(kind);
});

test("what is nothing of the disk's is not asked of it", () => {
  const asked = diskTrouble(Object.assign(new Error(), { errcode: CONSTRAINT_UNIQUE }), () => {
    throw new Error("It was asked.");
  });
  expect(asked).toBeUndefined();
  expect(diskTrouble(new Error("Nobody's."), () => "EIO")).toBeUndefined();
});

test.each([
  ["ENOSPC", "full"],
  ["EDQUOT", "full"],
  ["EIO", "failing"],
  ["EROFS", "failing"],
  ["EBADF", undefined],
])("a file that meets %s", (code, trouble) => {
  expect(troubleOf(fileTrouble(Object.assign(new Error(), { code })))).toBe(trouble);
});

test("a trouble is the same one in another thread, whatever wraps it", () => {
  for (const kind of ["busy", "full", "failing"] as const) {
    const wrapped = new Error("The library's.", { cause: troubled(kind, new Error("SQLite's.")) });
    expect(troubleOf(wrapped)).toBe(kind);
  }
  expect(troubleOf(new Error("Nobody's."))).toBeUndefined();
});

test("a disk is tried without a trace, and the system's word for what it refuses is told", () => {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-disk-")), "atlas.db");
  expect(tryDisk(file)).toBeUndefined();
  expect(existsSync(`${file}.trial`)).toBe(false);
  expect(tryDisk(join(file, "no", "folder", "atlas.db"))).toBe("ENOENT");
});

// A real error of writing that is not ENOSPC: the limit of a file's size, which a process may set for itself.
test("the system refuses to write: 503 with the remedy and not the atlas's own failure, what was acknowledged stays, and it is told of", () => {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-disk-"));
  const { status, stdout, stderr } = spawnSync(
    "sh",
    ["-c", 'ulimit -f 2048; exec "$0" test/db/file-limit-child.ts "$1"', process.execPath, folder],
    { encoding: "utf8" },
  );
  expect(status, stderr).toBe(0);
  const { taken, refused, detail, told, stored } = JSON.parse(stdout) as WrittenTo;
  expect(taken).toBeGreaterThan(5);
  expect(refused).toEqual([503, 503]);
  expect(detail).toMatch(/disk takes nothing.*Nothing was stored/);
  expect(told).toEqual(["storage failing"]);
  expect(stored).toBe(taken);
});
