import { asc, eq, sql } from "drizzle-orm";
import { chunks } from "./chunks.ts";
import type { Database } from "./database.ts";
import { decisions } from "./schema.ts";

export type DecisionRow = typeof decisions.$inferSelect;

export type NewDecision = typeof decisions.$inferInsert;

/** What is decided on a tune is dated by the month, as tunes are. */
export const onTune = <D extends Pick<NewDecision, "decided_on">>(decision: D): D => ({
  ...decision,
  decided_on: decision.decided_on.slice(0, "YYYY-MM".length),
});

/** Decisions on one tune, oldest first. */
export function decisionsOn(db: Database, tune: string): Promise<DecisionRow[]> {
  return db.select().from(decisions).where(eq(decisions.tune, tune)).orderBy(asc(decisions.id));
}

export async function appendDecisions(db: Database, rows: NewDecision[]): Promise<void> {
  // D1 allows 100 bound parameters a statement; a decision has five.
  const dated = rows.map((row) => (row.tune === "" ? row : onTune(row)));
  const statements = chunks(dated, 20).map((part) => db.insert(decisions).values(part));
  // A first fit of very many tunes decides on thousands: no request waits for all of them.
  for (const [first, ...rest] of chunks(statements, 50)) {
    if (first) await db.batch([first, ...rest]);
  }
}

/** Grows with every submission, revision, withdrawal and change of mind: tells whether data changed. */
export async function dataRevision(db: Database): Promise<number> {
  const [row] = await db
    .select({ newest: sql<number | null>`max(${decisions.id})` })
    .from(decisions);
  return row?.newest ?? 0;
}

/** Which ends of which tunes the fit is on record as setting aside: "id end". */
export async function setAsideByFit(db: Database): Promise<Set<string>> {
  const log = await db
    .select({ tune: decisions.tune, verdict: decisions.verdict, reasons: decisions.reasons })
    .from(decisions)
    .where(eq(decisions.by, "fit"))
    .orderBy(asc(decisions.id));
  const aside = new Set<string>();
  for (const { tune, verdict, reasons } of log) {
    for (const { field } of JSON.parse(reasons) as { field: string }[]) {
      if (verdict === "rejected") aside.add(`${tune} ${field}`);
      else aside.delete(`${tune} ${field}`);
    }
  }
  return aside;
}
