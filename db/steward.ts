import { and, asc, desc, eq, gt, inArray, lt, min, sql } from "drizzle-orm";
import type { Database, Statement } from "./database.ts";
import { decisions, tunes } from "./schema.ts";
import type { DecisionRow, NewDecision, TuneRow } from "./tunes.ts";

/** A held tune and its place in the queue: the number of its first decision, which revising does not move. */
export interface HeldRow {
  row: TuneRow;
  number: number;
}

/** Held tunes behind a place in the queue, oldest first, at most so many. Their months alone could not tell which came first. */
export async function heldTunes(db: Database, after: number, most: number): Promise<HeldRow[]> {
  const first = min(decisions.id);
  const found = await db
    .select({ row: tunes, number: first })
    .from(tunes)
    .innerJoin(decisions, eq(decisions.tune, tunes.id))
    .where(eq(tunes.verdict, "held"))
    .groupBy(tunes.id)
    .having(gt(first, after))
    .orderBy(asc(first))
    .limit(most);
  return found.map(({ row, number }) => ({ row, number: number ?? 0 }));
}

export async function countHeld(db: Database): Promise<number> {
  const [row] = await db
    .select({ count: sql<number>`count(*)` })
    .from(tunes)
    .where(eq(tunes.verdict, "held"));
  return row?.count ?? 0;
}

/** D1 allows 100 bound parameters a statement, so at most 100 tunes are asked about at once. */
export const TUNES_AT_ONCE = 100;

/** Decisions on several tunes, oldest first, by tune. */
export async function decisionsOnEach(
  db: Database,
  ids: readonly string[],
): Promise<Map<string, DecisionRow[]>> {
  if (ids.length === 0) return new Map();
  const rows = await db
    .select()
    .from(decisions)
    .where(inArray(decisions.tune, [...ids]))
    .orderBy(asc(decisions.id));
  return Map.groupBy(rows, ({ tune }) => tune);
}

/** What the audit trail is asked for. */
export interface TrailFilter {
  tune?: string | undefined;
  by?: string | undefined;
  /** Only decisions older than this one. */
  olderThan?: number | undefined;
}

/** The audit trail: decisions on every tune, newest first, at most so many. */
export function auditTrail(
  db: Database,
  { tune, by, olderThan }: TrailFilter,
  most: number,
): Promise<DecisionRow[]> {
  return db
    .select()
    .from(decisions)
    .where(
      and(
        tune === undefined ? undefined : eq(decisions.tune, tune),
        by === undefined ? undefined : eq(decisions.by, by),
        olderThan === undefined ? undefined : lt(decisions.id, olderThan),
      ),
    )
    .orderBy(desc(decisions.id))
    .limit(most);
}

/**
 * A steward's verdict and the decision that says why, to be run in one batch. Both hang on the tune: when it was
 * withdrawn a moment before, nothing is written, for withdrawn means gone.
 */
export function decide(
  db: Database,
  { tune, verdict, reasons, decided_on }: Omit<NewDecision, "by"> & Pick<TuneRow, "verdict">,
): Statement[] {
  return [
    db.insert(decisions).select(
      db
        .select({
          id: sql<number>`null`.as("id"),
          tune: tunes.id,
          by: sql<string>`'steward'`.as("by"),
          verdict: sql<TuneRow["verdict"]>`${verdict}`.as("verdict"),
          reasons: sql<string>`${reasons}`.as("reasons"),
          decided_on: sql<string>`${decided_on}`.as("decided_on"),
        })
        .from(tunes)
        .where(eq(tunes.id, tune)),
    ),
    db.update(tunes).set({ verdict }).where(eq(tunes.id, tune)),
  ];
}
