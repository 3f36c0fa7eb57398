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

/** What a steward says of the versions held back, for a reason; to be run in one batch. */
const say = (
  db: Database,
  set: Partial<Refusal>,
  verdict: "accepted" | "held",
  reasons: string,
  decided_on: string,
): [Statement, Statement] => [
  db.update(refusedFits).set(set).where(eq(refusedFits.number, ONLY)),
  db.insert(decisions).values({ tune: "", by: "steward", verdict, reasons, decided_on }),
];

/** The next version is let through. */
export const allowNext = (db: Database, reasons: string, today: string) =>
  say(db, { allowed: true }, "accepted", reasons, today);

/** They stay held back, for another week from today; what was let through a moment ago is not, if it is not made yet. */
export const keepBack = (db: Database, reasons: string, today: string) =>
  say(db, { allowed: false, kept_back_on: today }, "held", reasons, today);
