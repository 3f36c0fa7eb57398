import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { DiskFilled } from "./disk-child.ts";

/** Size of the disk, MB: some hundred tunes beside the ballast. */
const DISK_MB = 9;

/**
 * Fills a disk of its own to the last byte under an atlas. Such a disk is a file system in memory, which a process may mount where it is
 * the superuser or the system grants it a namespace of its own: not everywhere, so the test that `npm test` has of the ballast
 * meets the end of the database's file instead.
 */
export function fillDisk(): DiskFilled {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-disk-"));
  const script = `mount -t tmpfs -o size=${DISK_MB}m tmpfs "$0" && exec "$1" test/torture/disk-child.ts "$0"`;
  const { status, stdout, stderr } = spawnSync(
    "unshare",
    ["--map-root-user", "--mount", "sh", "-c", script, folder, process.execPath],
    { encoding: "utf8" },
  );
  rmSync(folder, { recursive: true });
  if (status !== 0) throw new Error(`There was no disk to fill, or it ended early: ${stderr}`);
  return JSON.parse(stdout);
}
