import { latLngToCell } from "h3-js";
import type { Database, Statement } from "../../db/database.ts";
import { decisions, tunes } from "../../db/schema.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { seeded } from "../../seed-demo/random.ts";
import { placeOf } from "../../server/cells.ts";

/** Rows of one statement: SQLite takes 32,766 parameters. */
const ROWS_AT_ONCE = 500;

/** Puts so many accepted tunes into a database, in the likeness of one, each with a place and figures of its own. */
export async function putTunes(db: Database, like: TuneRow, count: number): Promise<void> {
  const { uniform, normal } = seeded(7);
  for (let from = 0; from < count; from += ROWS_AT_ONCE) {
    const rows = Array.from({ length: Math.min(ROWS_AT_ONCE, count - from) }, (_, k) => {
      const n = from + k;
      const cell = latLngToCell(-50 + 110 * uniform(), -170 + 340 * uniform(), 5);
      const density_kg_m3 = Number((0.75 + 0.5 * uniform()).toFixed(2));
      const times = Math.exp(0.08 * normal()) * (density_kg_m3 / like.density_kg_m3) ** 0.92;
      return {
        ...like,
        id: n.toString(16).padStart(24, "0"),
        contributor: `${Math.floor(n / 3)
          .toString(16)
          .padStart(16, "0")}${like.contributor.slice(16)}`,
        cell,
        place: placeOf(cell),
        pseudonym: Math.floor(n / 3)
          .toString(16)
          .padStart(16, "0"),
        home: placeOf(cell),
        density_kg_m3,
        low_pump_Hz: like.low_pump_Hz * times,
        high_pump_Hz: like.high_pump_Hz * times,
      };
    });
    const noted: Statement = db.insert(decisions).values({
      tune: "",
      by: "screening",
      verdict: "accepted",
      reasons: "[]",
      decided_on: "2026-11-25",
    });
    await db.batch([db.insert(tunes).values(rows), noted]);
  }
}
