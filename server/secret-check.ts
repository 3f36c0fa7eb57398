import type { Database } from "../db/database.ts";
import { findSecretCheck, keepSecretCheck } from "../db/facts.ts";
import { DatabaseRefused } from "../db/refused.ts";
import type { Keys } from "./keys.ts";

/**
 * Sees that the secret is the one that this database was made with; a database that does not know yet learns it, if it may.
 * @throws DatabaseRefused when it is another one
 */
export async function requireOwnSecret(db: Database, keys: Keys, mayWrite = true): Promise<void> {
  const own = await keys.hash("check", "the secret of this database");
  const known = await findSecretCheck(db);
  if (known === own) return;
  if (known === undefined) return mayWrite ? keepSecretCheck(db, own) : undefined;
  throw new DatabaseRefused(
    "The secret is not the one this database was made with: no receipt would open its tune, and every owner would look new. Put the secret file of the same backup beside the database, or set ATLAS_SECRET as it was.",
  );
}
