import { desc, eq } from "drizzle-orm";
import type { PublishedFit, RejectedRow } from "../model/fit/group.ts";
import type { Database } from "./database.ts";
import { fits } from "./schema.ts";

/** A published version with the rows it set aside. */
export interface FitVersion {
  fit: PublishedFit;
  rejected: RejectedRow[];
}

type FitRecord = typeof fits.$inferSelect;

export async function newestFit(db: Database): Promise<FitVersion | undefined> {
  return parsed((await db.select().from(fits).orderBy(desc(fits.number)).limit(1))[0]);
}

export async function fitByVersion(db: Database, version: string): Promise<FitVersion | undefined> {
  return parsed((await db.select().from(fits).where(eq(fits.version, version)).limit(1))[0]);
}

/**
 * Publishes a version. One row, one statement: readers see all of it or nothing.
 * @throws when the version exists already: versions never change
 */
export async function publishFit(db: Database, { fit, rejected }: FitVersion): Promise<void> {
  await db.insert(fits).values({
    version: fit.version,
    rows_sha256: fit.rows_sha256 ?? "",
    fit: JSON.stringify(fit),
    rejected: JSON.stringify(rejected),
  });
}

function parsed(row: FitRecord | undefined): FitVersion | undefined {
  return row && { fit: JSON.parse(row.fit), rejected: JSON.parse(row.rejected) };
}
