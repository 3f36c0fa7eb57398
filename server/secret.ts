import { existsSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { DatabaseRefused } from "../db/refused.ts";
import { randomReceipt } from "./keys.ts";

/** Where the secret of a database is kept when the configuration gives none. */
export const secretFile = (database: string): string => `${database}.secret`;

/**
 * The secret kept beside a database; made, readable by its owner alone, for a database that is new.
 * @param isNew whether the database is made now as well
 * @throws DatabaseRefused when an older database has none: one made now would open no receipt
 */
export async function keptSecret(database: string, isNew: boolean): Promise<string> {
  if (database === ":memory:") return randomReceipt();
  const file = secretFile(database);
  if (!existsSync(file)) {
    if (!isNew) {
      throw new DatabaseRefused(
        `The secret of ${database} is missing: without it no receipt opens its tune. Put ${file} back from your backup, or set ATLAS_SECRET as it was.`,
      );
    }
    await writeFile(file, randomReceipt(), { mode: 0o600, flag: "wx" });
  }
  return (await readFile(file, "utf8")).trim();
}
