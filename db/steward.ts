import { and, asc, desc, eq, getTableColumns, gt, gte, inArray, lt, min, sql } from "drizzle-orm";
import type { Database, Statement } from "./database.ts";
import type { DecisionRow, NewDecision } from "./decisions.ts";
import { fitColumns } from "./fit-rows.ts";
import { decisions, tunes, waiting } from "./schema.ts";
import type { TuneRow } from "./tunes.ts";

/** Letters of a contributor's hash that a steward sees. */
const STEWARDS_LETTERS = 16;

/** What a steward knows a contributor by: it lasts, and is not what the open data call them. */
export function stewardsName(contributor: string): string {
  return contributor.slice(0, STEWARDS_LETTERS);
}

/** Said by the decision that takes another one back. */
export const UNDONE = "undone_by_steward";

/** A tune as a steward sees it: whether its contributor waits, and its place in the queue, its first decision's number, which revising does not move. */
export interface SeenRow {
  row: TuneRow;
  waits: boolean;
  number: number;
}

const waits = sql<number>`${tunes.contributor} in (select ${waiting.contributor} from ${waiting})`;

/**
 * Held, and, where asked, with no decision of a steward in force: the last word was screening's, of a first sending or a
 * revision, or took a decision back. What stewards type stands in JSON with its quotation marks escaped, so that it cannot look like that.
 */
const isHeld = (undecided: boolean) =>
  and(
    // Written out, as the index of held tunes has it: a parameter might be anything.
    sql`${tunes.verdict} = 'held'`,
    undecided
      ? sql`(select ${decisions.by} = 'screening' or instr(${decisions.reasons}, ${`"code":"${UNDONE}"`}) > 0
          from ${decisions} where ${decisions.tune} = ${tunes.id} and ${decisions.by} in ('screening', 'steward')
          order by ${decisions.id} desc limit 1)`
      : undefined,
  );

/** Held tunes behind a place in the queue, oldest first, at most so many. Their months alone could not tell which came first. */
export async function heldTunes(
  db: Database,
  { after, undecided }: { after: number; undecided: boolean },
  most: number,
): Promise<SeenRow[]> {
  const first = min(decisions.id);
  const found = await db
    .select({ row: getTableColumns(tunes), waits, number: first })
    .from(tunes)
    .innerJoin(decisions, eq(decisions.tune, tunes.id))
    .where(isHeld(undecided))
    .groupBy(tunes.id)
    .having(gt(first, after))
    .orderBy(asc(first))
    .limit(most);
  return found.map(seen);
}

const seen = (found: { row: TuneRow; waits: number; number?: number | null }): SeenRow => ({
  row: found.row,
  waits: Boolean(found.waits),
  number: found.number ?? 0,
});

export async function countHeld(db: Database, undecided: boolean): Promise<number> {
  const [row] = await db
    .select({ count: sql<number>`count(*)` })
    .from(tunes)
    .where(isHeld(undecided));
  return row?.count ?? 0;
}

/** D1 allows 100 bound parameters a statement, so at most 100 tunes are asked about at once. */
export const TUNES_AT_ONCE = 100;

/** These tunes, as far as they are there. */
export async function tunesByIds(db: Database, ids: readonly string[]): Promise<SeenRow[]> {
  if (ids.length === 0) return [];
  const found = await db
    .select({ row: getTableColumns(tunes), waits })
    .from(tunes)
    .where(inArray(tunes.id, [...ids]))
    .orderBy(asc(tunes.id));
  return found.map(seen);
}

/** Tunes of whoever has a public pseudonym, newest month first, at most so many. */
export async function tunesByPseudonym(
  db: Database,
  pseudonym: string,
  most: number,
): Promise<SeenRow[]> {
  const found = await db
    .select({ row: getTableColumns(tunes), waits })
    .from(tunes)
    // Hashes are written in 0 to 9 and a to f: all that begin so lie before this one with a g behind it.
    .where(and(gte(tunes.contributor, pseudonym), lt(tunes.contributor, `${pseudonym}g`)))
    .orderBy(desc(tunes.submitted_on), asc(tunes.id))
    .limit(most);
  return found.map(seen);
}

/**
 * The newest tunes, whatever became of them, and whether each contributor is new: waits, or has no tune of an earlier month. By
 * the newest decisions of screening, since ids are random and months coarse: a look at so many, however many there are.
 */
export async function newestTunes(db: Database, most: number) {
  const { contributor, place, tuned_on, submitted_on, verdict } = tunes;
  const newest = db
    .select({ tune: decisions.tune })
    .from(decisions)
    .where(eq(decisions.by, "screening"))
    .orderBy(desc(decisions.id))
    .limit(most);
  const earliest = sql<string>`(select min(t.submitted_on) from tunes t where t.contributor = ${tunes.contributor})`;
  const found = await db
    .select({
      row: { ...fitColumns, contributor, place, tuned_on, submitted_on, verdict },
      waits,
      earliest,
    })
    .from(tunes)
    .where(inArray(tunes.id, newest));
  return found.map(({ row, ...of }) => ({
    row,
    isNew: Boolean(of.waits) || of.earliest === row.submitted_on,
  }));
}

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

/** Decisions by their numbers, as far as they are there. */
export function decisionsByNumber(
  db: Database,
  numbers: readonly number[],
): Promise<DecisionRow[]> {
  return db
    .select()
    .from(decisions)
    .where(inArray(decisions.id, [...numbers]))
    .orderBy(asc(decisions.id));
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
          decided_on: sql<string>`${decided_on.slice(0, "YYYY-MM".length)}`.as("decided_on"),
        })
        .from(tunes)
        .where(eq(tunes.id, tune)),
    ),
    db.update(tunes).set({ verdict }).where(eq(tunes.id, tune)),
  ];
}
