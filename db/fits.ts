import { desc, eq, sql } from "drizzle-orm";
import type { PublishedFit } from "../model/fit/group.ts";
import type { Database } from "./database.ts";
import { fits } from "./schema.ts";

export async function newestFit(db: Database): Promise<PublishedFit | undefined> {
  return (await newestVersions(db, 1))[0]?.fit;
}

/** A published version, and whether it was refused at first. */
export interface Version {
  fit: PublishedFit;
  let_through: boolean;
}

/** So many of the newest versions, newest first. */
export async function newestVersions(db: Database, count: number): Promise<Version[]> {
  const found = await db.select().from(fits).orderBy(desc(fits.number)).limit(count);
  return found.map(({ fit, let_through }) => ({ fit: JSON.parse(fit), let_through }));
}

/**
 * The greatest version's name by day and number. Not always the newest one's: a clock may have been set back between them.
 */
export async function greatestVersion(db: Database): Promise<string | undefined> {
  const { version } = fits;
  const [row] = await db
    .select({ version })
    .from(fits)
    .orderBy(
      desc(sql`substr(${version}, 1, 10)`),
      desc(sql`cast(substr(${version}, 12) as integer)`),
    )
    .limit(1);
  return row?.version;
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
export async function publishFit(
  db: Database,
  fit: PublishedFit,
  let_through = false,
): Promise<void> {
  await db.insert(fits).values({
    version: fit.version,
    rows_sha256: fit.rows_sha256 ?? "",
    fit: JSON.stringify(fit),
    let_through,
  });
}
