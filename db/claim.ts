import { closeSync, mkdirSync, openSync } from "node:fs";
import { dirname } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { ownPath } from "./file-state.ts";

/** Another server serves this database already. */
export class DatabaseTaken extends Error {}

/**
 * Claims a database for this process alone: two servers on one file would each publish fits of what they know. What is held
 * is a lock of the operating system on a file beside it, which ends with the process however it ends; readers and the
 * backup are not kept out.
 * @returns what lets go of it
 * @throws DatabaseTaken when another server, or a restore, holds it
 */
export function claimDatabase(file: string): () => void {
  if (file === ":memory:") return () => {};
  mkdirSync(dirname(file), { recursive: true });
  // Whichever way leads to the file, the lock is the same.
  const beside = `${ownPath(file)}.lock`;
  closeSync(openSync(beside, "a", 0o600));
  const claim = new DatabaseSync(beside, { timeout: 0 });
  try {
    claim.exec("BEGIN EXCLUSIVE");
  } catch (error) {
    claim.close();
    throw new DatabaseTaken(
      `Another atlas is open on ${file}. Stop that one first, or name another file (ATLAS_DB).`,
      { cause: error },
    );
  }
  return () => claim.close();
}
