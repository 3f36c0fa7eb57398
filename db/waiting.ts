import {
  and,
  asc,
  count,
  eq,
  exists,
  gt,
  gte,
  inArray,
  lt,
  lte,
  notExists,
  notInArray,
  or,
  sql,
} from "drizzle-orm";
import { chunks, IDS_AT_ONCE } from "./chunks.ts";
import type { Database, Statement } from "./database.ts";
import { decisions, tunes, waiting, waitingSizes } from "./schema.ts";

/** A new contributor whose tunes do not count yet. */
export type Waiting = typeof waiting.$inferSelect;

/** Who decides that somebody who waited counts, in the log: the days that have passed. */
const BY_WAITING = "waiting";

/** The tunes of whoever a row of the waiting is about. */
const tunesOf = (db: Database, verdict?: "accepted") =>
  db
    .select({ one: sql`1` })
    .from(tunes)
    .where(and(eq(tunes.contributor, waiting.contributor), verdict && eq(tunes.verdict, verdict)));

export async function hasTunes(db: Database, contributor: string): Promise<boolean> {
  const found = await db
    .select({ id: tunes.id })
    .from(tunes)
    .where(eq(tunes.contributor, contributor))
    .limit(1);
  return found.length > 0;
}

export async function findWaiting(db: Database, contributor: string): Promise<Waiting | undefined> {
  return (await db.select().from(waiting).where(eq(waiting.contributor, contributor)).limit(1))[0];
}

/** Two first tunes may arrive together: the first of them says since when. */
export function beginWaiting(db: Database, row: Waiting): Statement {
  return db.insert(waiting).values(row).onConflictDoNothing();
}

/** Forgets somebody who waits once no tune of theirs is left, and a size once none of it is, for withdrawn means gone. */
export function forgetWithoutTunes(db: Database, contributor: string): [Statement, Statement] {
  const ofSize = db
    .select({ one: sql`1` })
    .from(tunes)
    .where(eq(tunes.heat_kW, waitingSizes.heat_kW));
  return [
    db.delete(waiting).where(and(eq(waiting.contributor, contributor), notExists(tunesOf(db)))),
    db.delete(waitingSizes).where(notExists(ofSize)),
  ];
}

/** Whether tunes of a heater size wait until more owners of it count. */
export async function sizeWaits(db: Database, heat_kW: number): Promise<boolean> {
  return (await db.$count(waitingSizes, eq(waitingSizes.heat_kW, heat_kW))) > 0;
}

/** Whether a tune of a heater size counts. */
export async function sizeCounts(db: Database, heat_kW: number): Promise<boolean> {
  const found = await db
    .select({ id: tunes.id })
    .from(tunes)
    .where(and(eq(tunes.heat_kW, heat_kW), counts(db)))
    .limit(1);
  return found.length > 0;
}

/** Two first tunes of a size may arrive together. */
export function beginSizeWaiting(db: Database, heat_kW: number): Statement {
  return db.insert(waitingSizes).values({ heat_kW }).onConflictDoNothing();
}

/**
 * Lets the tunes of those heater sizes count of which so many owners count otherwise.
 * @param owners 0: all sizes
 */
export async function letSizesCount(
  db: Database,
  owners: number,
  decided_on: string,
): Promise<void> {
  const sizes = await db.select().from(waitingSizes);
  if (sizes.length === 0) return;
  const ofWaitingSize = inArray(
    tunes.heat_kW,
    db.select({ heat_kW: waitingSizes.heat_kW }).from(waitingSizes),
  );
  const enough =
    owners === 0
      ? sizes
      : await db
          .select({ heat_kW: tunes.heat_kW })
          .from(tunes)
          .where(and(ofWaitingSize, eq(tunes.verdict, "accepted"), ofNobodyWaiting(db)))
          .groupBy(tunes.heat_kW)
          .having(gte(sql`count(distinct ${tunes.contributor})`, owners));
  for (const { heat_kW } of enough) {
    const sentence = `Enough owners of ${heat_kW} kW heaters have sent tunes: they count.`;
    const reasons = JSON.stringify([{ code: "size_counts", field: "heat_kW", sentence }]);
    await db.batch([
      db.delete(waitingSizes).where(eq(waitingSizes.heat_kW, heat_kW)),
      db
        .insert(decisions)
        .values({ tune: "", by: "fit", verdict: "accepted", reasons, decided_on }),
    ]);
  }
}

/** How many of those who wait came on some day in no crowd. */
export async function countUncrowdedOn(db: Database, day: string): Promise<number> {
  return db.$count(waiting, and(eq(waiting.crowded, false), eq(waiting.since, day)));
}

/** Contributors with an accepted tune who do not wait. */
export async function countCounted(db: Database): Promise<number> {
  const [row] = await db
    .select({ n: sql<number>`count(distinct ${tunes.contributor})` })
    .from(tunes)
    .where(counts(db));
  return row?.n ?? 0;
}

/** A tune of somebody who does not wait, whatever its verdict. */
function ofNobodyWaiting(db: Database) {
  return notInArray(tunes.contributor, db.select({ who: waiting.contributor }).from(waiting));
}

/** A tune for which nobody waits: neither for its contributor nor for more owners of its heater size. */
export function waitsForNothing(db: Database) {
  const sizes = db.select({ heat_kW: waitingSizes.heat_kW }).from(waitingSizes);
  return and(ofNobodyWaiting(db), notInArray(tunes.heat_kW, sizes));
}

/** An accepted tune that waits for nothing: it is in the fit and in the open data. */
export function counts(db: Database) {
  return and(eq(tunes.verdict, "accepted"), waitsForNothing(db));
}

/**
 * Who waits with an accepted tune, in the order in which they come to count: those who came in no crowd first, the
 * longest wait first.
 * @param part only those whose turn is before this one's, or behind it
 */
export function waitingInTurn(
  db: Database,
  most: number,
  part?: { before: Waiting } | { behind: Waiting },
): Promise<Waiting[]> {
  const inPart = part && ("before" in part ? isOn(lt, part.before) : isOn(gt, part.behind));
  return db
    .select()
    .from(waiting)
    .where(and(exists(tunesOf(db, "accepted")), inPart))
    .orderBy(asc(waiting.crowded), asc(waiting.since), asc(waiting.contributor))
    .limit(most);
}

/** On one side of somebody in the order of turns. */
function isOn(side: typeof lt | typeof gt, { crowded, since, contributor }: Waiting) {
  const sameCrowd = eq(waiting.crowded, crowded);
  return or(
    side(waiting.crowded, crowded),
    and(sameCrowd, side(waiting.since, since)),
    and(sameCrowd, eq(waiting.since, since), side(waiting.contributor, contributor)),
  );
}

/** Days after some day on which somebody who waited came to count, one entry each, oldest first. The log has no names. */
export async function daysOfCounting(db: Database, after: string): Promise<string[]> {
  const found = await db
    .select({ day: decisions.decided_on })
    .from(decisions)
    .where(
      and(eq(decisions.tune, ""), eq(decisions.by, BY_WAITING), gt(decisions.decided_on, after)),
    )
    .orderBy(asc(decisions.decided_on));
  return found.map(({ day }) => day);
}

/** Lets these contributors count from a day on. */
export async function letCount(
  db: Database,
  contributors: readonly string[],
  decided_on: string,
): Promise<void> {
  const reasons = JSON.stringify([
    {
      code: "contributor_counts",
      field: "contributor",
      sentence: "The tunes of a new contributor have waited long enough: they count.",
    },
  ]);
  for (const part of chunks(contributors, IDS_AT_ONCE)) {
    await db.batch([
      db.delete(waiting).where(inArray(waiting.contributor, part)),
      ...part.map(() =>
        db
          .insert(decisions)
          .values({ tune: "", by: BY_WAITING, verdict: "accepted", reasons, decided_on }),
      ),
    ]);
  }
}

/** Ids of these contributors' tunes. */
export async function tunesOfContributors(
  db: Database,
  contributors: readonly string[],
): Promise<string[]> {
  const ids: string[] = [];
  for (const part of chunks(contributors, IDS_AT_ONCE)) {
    const found = await db
      .select({ id: tunes.id })
      .from(tunes)
      .where(inArray(tunes.contributor, part));
    ids.push(...found.map(({ id }) => id));
  }
  return ids;
}

/** Who waits under a public pseudonym: as a new contributor, or with a tune of a heater size that does. */
export async function waitingByPseudonym(
  db: Database,
  pseudonym: string,
): Promise<string | undefined> {
  // Hashes are written in 0 to 9 and a to f: all that begin so lie before this one with a g behind it.
  const isNamed = (column: typeof waiting.contributor | typeof tunes.contributor) =>
    and(gte(column, pseudonym), lt(column, `${pseudonym}g`));
  const [newcomer] = await db
    .select({ contributor: waiting.contributor })
    .from(waiting)
    .where(isNamed(waiting.contributor))
    .limit(1);
  if (newcomer) return newcomer.contributor;
  const [owner] = await db
    .select({ contributor: tunes.contributor })
    .from(tunes)
    .innerJoin(waitingSizes, eq(waitingSizes.heat_kW, tunes.heat_kW))
    .where(and(isNamed(tunes.contributor), eq(tunes.verdict, "accepted")))
    .limit(1);
  return owner?.contributor;
}

/** Somebody with accepted tunes of a heater size that waits. */
export interface OwnerOfWaitingSize {
  heat_kW: number;
  contributor: string;
  tunes: number;
  /** Whether they are new and wait themselves; else they are one of the owners that the size waits for. */
  waits: boolean;
}

/**
 * Owners of the heater sizes that wait, by size, those who wait for nothing else first.
 * @param most of each size
 */
export async function ownersOfWaitingSizes(
  db: Database,
  most: number,
): Promise<OwnerOfWaitingSize[]> {
  const isNew = sql<number>`max(${waiting.contributor} is not null)`;
  const place = sql<number>`row_number() over (partition by ${tunes.heat_kW} order by ${isNew}, ${tunes.contributor})`;
  const owners = db
    .select({
      heat_kW: tunes.heat_kW,
      contributor: tunes.contributor,
      tunes: count().as("tunes_of_owner"),
      waits: isNew.as("waits"),
      place: place.as("place"),
    })
    .from(waitingSizes)
    .innerJoin(tunes, and(eq(tunes.heat_kW, waitingSizes.heat_kW), eq(tunes.verdict, "accepted")))
    .leftJoin(waiting, eq(waiting.contributor, tunes.contributor))
    .groupBy(tunes.heat_kW, tunes.contributor)
    .as("owners");
  const found = await db
    .select()
    .from(owners)
    .where(lte(owners.place, most))
    .orderBy(asc(owners.heat_kW), asc(owners.place));
  return found.map(({ place: _, ...owner }) => ({ ...owner, waits: owner.waits === 1 }));
}

/** Said where a steward lets somebody count: that is not taken back, for since when they waited is forgotten. */
export const COUNTED_BY_STEWARD = "counted_by_steward";

/**
 * A steward lets a contributor count now, and the heater sizes of their accepted tunes with them: the decision stands with each of
 * these, to be run in one batch.
 */
export function letCountBySteward(
  db: Database,
  contributor: string,
  reasons: string,
  decided_on: string,
): [Statement, Statement, Statement] {
  const theirs = and(eq(tunes.contributor, contributor), eq(tunes.verdict, "accepted"));
  return [
    db.insert(decisions).select(
      db
        .select({
          id: sql<number>`null`.as("id"),
          tune: tunes.id,
          by: sql<string>`'steward'`.as("by"),
          verdict: tunes.verdict,
          reasons: sql<string>`${reasons}`.as("reasons"),
          decided_on: sql<string>`${decided_on.slice(0, "YYYY-MM".length)}`.as("decided_on"),
        })
        .from(tunes)
        .where(theirs),
    ),
    db.delete(waiting).where(eq(waiting.contributor, contributor)),
    db
      .delete(waitingSizes)
      .where(
        inArray(waitingSizes.heat_kW, db.select({ size: tunes.heat_kW }).from(tunes).where(theirs)),
      ),
  ];
}
