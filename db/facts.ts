import { eq } from "drizzle-orm";
import type { Database } from "./database.ts";
import { facts } from "./schema.ts";

/** A keyed hash that tells whether a secret is the one this database was made with. */
const SECRET_CHECK = "secret_check";

export async function findSecretCheck(db: Database): Promise<string | undefined> {
  const [row] = await db.select().from(facts).where(eq(facts.name, SECRET_CHECK)).limit(1);
  return row?.value;
}

/** Kept once: whoever comes first says which secret it is. */
export async function keepSecretCheck(db: Database, value: string): Promise<void> {
  await db.insert(facts).values({ name: SECRET_CHECK, value }).onConflictDoNothing();
}

/** Month before which kept answers were emptied last. */
const ANSWERS_EMPTIED = "answers_emptied_before";

/** The month before which kept answers are gone already; none at first. */
export async function findAnswersEmptied(db: Database): Promise<string | undefined> {
  const [row] = await db.select().from(facts).where(eq(facts.name, ANSWERS_EMPTIED)).limit(1);
  return row?.value;
}

export async function keepAnswersEmptied(db: Database, value: string): Promise<void> {
  await db
    .insert(facts)
    .values({ name: ANSWERS_EMPTIED, value })
    .onConflictDoUpdate({ target: facts.name, set: { value } });
}
