import { asc, desc, eq, inArray, notExists, sql } from "drizzle-orm";
import type { PublishedFit } from "../model/fit/group.ts";
import { chunks, IDS_AT_ONCE } from "./chunks.ts";
import type { Database } from "./database.ts";
import { fits, judgedBeside, tunes } from "./schema.ts";

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

/** Names of all versions that are kept, oldest first. */
export function versionNames(db: Database): Promise<{ number: number; version: string }[]> {
  const { number, version } = fits;
  return db.select({ number, version }).from(fits).orderBy(asc(number));
}

/** Drops these versions. Of those that tunes were judged beside the groups of these tunes' sizes stay, for as long as the tunes do. */
export async function dropVersions(db: Database, numbers: readonly number[]): Promise<void> {
  for (const part of chunks(numbers, IDS_AT_ONCE)) {
    const these = inArray(fits.number, part);
    const judged = await db
      .selectDistinct({ version: fits.version, fit: fits.fit, heat_kW: tunes.heat_kW })
      .from(fits)
      .innerJoin(tunes, eq(tunes.judged_version, fits.version))
      .where(these);
    const kept = [...Map.groupBy(judged, ({ version }) => version)].map(([version, sizes]) => {
      const { groups } = JSON.parse(sizes[0]?.fit ?? "") as PublishedFit;
      const ofThem = groups.filter((g) => sizes.some(({ heat_kW }) => heat_kW === g.heat_kW));
      return db.insert(judgedBeside).values({ version, groups: JSON.stringify(ofThem) });
    });
    await db.batch([db.delete(fits).where(these), ...kept]);
  }
  const judged = db
    .select({ one: sql`1` })
    .from(tunes)
    .where(eq(tunes.judged_version, judgedBeside.version));
  await db.delete(judgedBeside).where(notExists(judged));
}
