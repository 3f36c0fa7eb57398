import { eq } from "drizzle-orm";
import type { Database, Statement } from "./database.ts";
import { decisions, refusedFits } from "./schema.ts";

/** That newer versions are not published, since when, and whether a steward lets the next one through. */
export type Refusal = Omit<typeof refusedFits.$inferSelect, "number">;

const ONLY = 1;

export async function findRefusal(db: Database): Promise<Refusal | null> {
  return (await db.select().from(refusedFits).limit(1))[0] ?? null;
}

/** Keeps the newest refused version's alarms; since when, and what a steward said, stay. */
export async function keepRefusal(db: Database, since: string, alarms: string): Promise<void> {
  await db
    .insert(refusedFits)
    .values({ number: ONLY, since, alarms, allowed: false })
    .onConflictDoUpdate({ target: refusedFits.number, set: { alarms } });
}

export async function endRefusal(db: Database): Promise<void> {
  await db.delete(refusedFits);
}

/** A steward lets the next version through, for a reason; to be run in one batch. */
export function allowNext(
  db: Database,
  reasons: string,
  decided_on: string,
): [Statement, Statement] {
  return [
    db.update(refusedFits).set({ allowed: true }).where(eq(refusedFits.number, ONLY)),
    db
      .insert(decisions)
      .values({ tune: "", by: "steward", verdict: "accepted", reasons, decided_on }),
  ];
}
