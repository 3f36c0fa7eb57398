import { sql } from "drizzle-orm";
import { tunes } from "./schema.ts";

/** Where a tune lies in the file. */
export const at = sql<number>`${tunes}.rowid`;

/** Pages of what is read in the order in which it lies in the file: sooner than in any other, where that is large. */
export async function* inFileOrder<Row extends { at: number }>(
  page: number,
  read: (after: number) => Promise<Row[]>,
): AsyncGenerator<Row[], void> {
  let after = 0;
  for (;;) {
    const rows = await read(after);
    yield rows;
    const last = rows.at(-1);
    if (!last || rows.length < page) return;
    after = last.at;
    // Whoever else has work in this thread comes in between two pages.
    await new Promise((others) => setTimeout(others));
  }
}
