import { desc, eq } from "drizzle-orm";
import type { PublishedFit } from "../model/fit/group.ts";
import type { Database } from "./database.ts";
import { fits } from "./schema.ts";

export async function newestFit(db: Database): Promise<PublishedFit | undefined> {
  return (await newestFits(db, 1))[0];
}

/** So many of the newest versions, newest first. */
export async function newestFits(db: Database, count: number): Promise<PublishedFit[]> {
  const found = await db.select().from(fits).orderBy(desc(fits.number)).limit(count);
  return found.map(({ fit }) => JSON.parse(fit));
}

export async function fitByVersion(
  db: Database,
  version: string,
): Promise<PublishedFit | undefined> {
  const [row] = await db.select().from(fits).where(eq(fits.version, version)).limit(1);
  return row && JSON.parse(row.fit);
}

/**
 * Publishes a version. One row, one statement: readers see all of it or nothing.
 * @throws when the version exists already: versions never change
 */
export async function publishFit(db: Database, fit: PublishedFit): Promise<void> {
  await db.insert(fits).values({
    version: fit.version,
    rows_sha256: fit.rows_sha256 ?? "",
    fit: JSON.stringify(fit),
  });
}
