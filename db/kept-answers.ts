import { asc, eq, gt, inArray, lt, ne } from "drizzle-orm";
import { chunks, IDS_AT_ONCE } from "./chunks.ts";
import type { Database } from "./database.ts";
import { idempotencyKeys, tunes } from "./schema.ts";

export type IdempotencyRow = typeof idempotencyKeys.$inferSelect;

export async function findIdempotencyKey(
  db: Database,
  key: string,
): Promise<IdempotencyRow | undefined> {
  return (await db.select().from(idempotencyKeys).where(eq(idempotencyKeys.key, key)).limit(1))[0];
}

/**
 * Empties answers kept for keys of tunes from before a month, a page of keys after another, so that nobody waits for all of it.
 * @param before month, "YYYY-MM"
 */
export async function emptyKeptAnswers(db: Database, before: string, page = 500): Promise<void> {
  const { key } = idempotencyKeys;
  let after = "";
  for (;;) {
    const keys = await db
      .select({ key, old: lt(tunes.submitted_on, before), answer: ne(idempotencyKeys.answer, "") })
      .from(idempotencyKeys)
      .leftJoin(tunes, eq(tunes.id, idempotencyKeys.tune))
      .where(gt(key, after))
      .orderBy(asc(key))
      .limit(page);
    const last = keys.at(-1);
    if (!last) return;
    const old = keys.filter((row) => row.old && row.answer).map((row) => row.key);
    for (const part of chunks(old, IDS_AT_ONCE)) {
      await db.update(idempotencyKeys).set({ answer: "" }).where(inArray(key, part));
    }
    after = last.key;
    // Requests are answered between two pages.
    await new Promise((others) => setTimeout(others));
  }
}
