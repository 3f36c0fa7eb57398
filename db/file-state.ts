import {
  accessSync,
  constants,
  existsSync,
  lstatSync,
  readlinkSync,
  realpathSync,
  statSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { DatabaseRefused } from "./refused.ts";

/** The one path of a file that several may lead to by symbolic links, also before it is there; its folder must be. */
export function ownPath(file: string): string {
  if (existsSync(file)) return realpathSync(file);
  const isLink = lstatSync(file, { throwIfNoEntry: false })?.isSymbolicLink();
  return isLink
    ? ownPath(resolve(dirname(file), readlinkSync(file)))
    : join(realpathSync(dirname(file)), basename(file));
}

/**
 * Whether a database is there. What cannot be one, or could not be written, is refused before anything touches it.
 * @throws DatabaseRefused with the remedy
 */
export function requireUsable(file: string): boolean {
  if (!existsSync(file)) {
    requireWritable(dirname(file), "folder");
    return false;
  }
  const { size, nlink } = statSync(file);
  // "Multiple links to the same file", sqlite.org/howtocorrupt.html: each name would have a WAL of its own.
  if (nlink > 1) {
    throw new DatabaseRefused(
      `${file} has another name too (a hard link): under each name the atlas would lose what was written under the other. Delete the other name; for a copy, npm run backup.`,
    );
  }
  if (size === 0) {
    throw new DatabaseRefused(
      `${file} is empty (0 bytes): whatever was in it is gone. Restore a backup (npm run restore), or delete the file if no tune was ever in it.`,
    );
  }
  requireWritable(file, "file");
  requireWritable(dirname(file), "folder");
  return true;
}

/** Its owner's permission counts too: the superuser may write everywhere, and would override what somebody set on purpose. */
function requireWritable(path: string, what: "file" | "folder"): void {
  if (!existsSync(path)) return;
  const isProtected = (statSync(path).mode & 0o200) === 0;
  if (!isProtected && mayWrite(path)) return;
  throw new DatabaseRefused(
    `The ${what} ${path} cannot be written. Let the user that runs the atlas write it (chmod u+w, chown), or name another database (ATLAS_DB).`,
  );
}

function mayWrite(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}
