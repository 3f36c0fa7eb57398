import { and, eq, sql } from "drizzle-orm";
import type { Database, Statement } from "./database.ts";
import { type NewDecision, onTune } from "./decisions.ts";
import type { IdempotencyRow } from "./kept-answers.ts";
import { decisions, idempotencyKeys, tunes } from "./schema.ts";
import { forgetWithoutTunes } from "./waiting.ts";

export type TuneRow = typeof tunes.$inferSelect;

/** Everything one submission writes, to be run in one batch. */
export function insertTune(
  db: Database,
  tune: TuneRow,
  decision: NewDecision,
  key?: IdempotencyRow,
): Statement[] {
  return [
    db.insert(tunes).values({ ...tune, ...asOfContributor(tune) }),
    markSeveralPlaces(db, tune.contributor),
    db.insert(decisions).values(onTune(decision)),
    ...(key ? [db.insert(idempotencyKeys).values(key)] : []),
  ];
}

/** A revision: the tune's new values under its old id and receipt, and the new decision. */
export function reviseTune(db: Database, tune: TuneRow, decision: NewDecision): Statement[] {
  const { id, ...values } = tune;
  return [
    db
      .update(tunes)
      .set({ ...values, ...asOfContributor(tune) })
      .where(eq(tunes.id, id)),
    markSeveralPlaces(db, tune.contributor),
    db.insert(decisions).values(onTune(decision)),
  ];
}

/** Pseudonym and home are those of the contributor's other tunes, where there are some, and new otherwise. */
function asOfContributor({ id, contributor, pseudonym, home }: TuneRow) {
  const others = sql`from tunes where contributor = ${contributor} and id <> ${id}`;
  return {
    pseudonym: sql`coalesce((select pseudonym ${others} limit 1), ${pseudonym})`,
    home: sql`coalesce((select home ${others} and home is not null limit 1), ${home})`,
  };
}

/** Once a contributor has tuned in a second cell all their tunes are marked, for good: somebody may have kept what was shown before. */
function markSeveralPlaces(db: Database, contributor: string): Statement {
  const own = sql`from tunes where contributor = ${contributor}`;
  return db
    .update(tunes)
    .set({ several_places: true })
    .where(
      and(
        eq(tunes.contributor, contributor),
        eq(tunes.several_places, false),
        sql`(select count(distinct cell) > 1 or max(several_places) ${own})`,
      ),
    );
}

/**
 * Withdrawn means gone: the tune, what was decided on it and why, and all that its idempotency key was used for but that
 * it was used. That something was withdrawn that day stays in the log, without saying what.
 */
export function withdrawTune(
  db: Database,
  { id, contributor, cell }: Pick<TuneRow, "id" | "contributor" | "cell">,
  decided_on: string,
): Statement[] {
  const sameCell = sql`select 1 from tunes where contributor = ${contributor} and cell = ${cell}`;
  return [
    db.delete(tunes).where(eq(tunes.id, id)),
    // A pseudonym that was seen in this cell, and stays, must not be seen in another.
    db
      .update(tunes)
      .set({ several_places: true })
      .where(
        and(
          eq(tunes.contributor, contributor),
          sql`${cell} is not null and not exists (${sameCell})`,
        ),
      ),
    ...forgetWithoutTunes(db, contributor),
    db.delete(decisions).where(eq(decisions.tune, id)),
    db
      .update(idempotencyKeys)
      .set({ tune: "", body_sha256: "", answer: "" })
      .where(eq(idempotencyKeys.tune, id)),
    db
      .insert(decisions)
      .values({ tune: "", by: "contributor", verdict: "withdrawn", reasons: "[]", decided_on }),
  ];
}

export async function findTune(db: Database, id: string): Promise<TuneRow | undefined> {
  return (await db.select().from(tunes).where(eq(tunes.id, id)).limit(1))[0];
}

/** How many tunes there are, of every class, contributor and verdict. */
export const countTunes = (db: Database): Promise<number> => db.$count(tunes);
