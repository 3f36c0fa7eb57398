import { and, eq, exists, sql } from "drizzle-orm";
import type { Database, Statement } from "./database.ts";
import { idempotencyKeys, tunes, waiting } from "./schema.ts";
import { type TuneRow, withdrawTune } from "./tunes.ts";

/** A tune that came with an import: what withdrawing it asks for. */
type ImportedTune = Pick<TuneRow, "id" | "contributor" | "cell">;

/** @param imported keyed hash of the import's name */
export function tunesOfImport(db: Database, imported: string): Promise<ImportedTune[]> {
  return db
    .select({ id: tunes.id, contributor: tunes.contributor, cell: tunes.cell })
    .from(tunes)
    .where(eq(tunes.imported, imported));
}

/** Who came with an import and still waits to count. */
export async function waitingOfImport(db: Database, imported: string): Promise<string[]> {
  const theirs = db
    .select({ one: sql`1` })
    .from(tunes)
    .where(and(eq(tunes.contributor, waiting.contributor), eq(tunes.imported, imported)));
  const found = await db
    .select({ contributor: waiting.contributor })
    .from(waiting)
    .where(exists(theirs));
  return found.map(({ contributor }) => contributor);
}

/**
 * Withdraws what came with an import, and forgets its keys as well: nothing of it waits in a browser, and the same rows may come again.
 */
export function takeBackImport(
  db: Database,
  rows: readonly ImportedTune[],
  decided_on: string,
): Statement[] {
  return rows.flatMap((row) => [
    db.delete(idempotencyKeys).where(eq(idempotencyKeys.tune, row.id)),
    ...withdrawTune(db, row, decided_on),
  ]);
}
