import { and, asc, eq, gt, isNotNull, sql } from "drizzle-orm";
import type { Database } from "./database.ts";
import { setAsideByFit } from "./decisions.ts";
import { at, inFileOrder } from "./file-order.ts";
import { tunes } from "./schema.ts";
import type { TuneRow } from "./tunes.ts";
import { counts } from "./waiting.ts";

/** Who has tuned in a cell, and whether they speak for showing it: not when the fit sets an end of each of their tunes there aside. */
export interface InCell {
  cell: string;
  contributor: string;
  stands: boolean;
}

/** Tunes that are read at once where few of their columns are. */
const NARROW_PAGE = 5000;

/** Contributors with one place whose tunes count, once for each cell: tells how finely it may be shown. */
export async function cellContributors(db: Database): Promise<InCell[]> {
  const aside = await setAsideByFit(db);
  const found = new Map<string, InCell>();
  const read = (after: number) =>
    db
      .select({
        at,
        id: tunes.id,
        cell: sql<string>`${tunes.cell}`,
        contributor: tunes.pseudonym,
      })
      .from(tunes)
      .where(and(gt(at, after), counts(db), isNotNull(tunes.cell), eq(tunes.several_places, false)))
      .orderBy(asc(at))
      .limit(NARROW_PAGE);
  for await (const rows of inFileOrder(NARROW_PAGE, read)) {
    for (const { id, cell, contributor } of rows) {
      const stands = !aside.has(`${id} low`) && !aside.has(`${id} high`);
      const name = `${cell} ${contributor}`;
      const known = found.get(name);
      if (known) known.stands ||= stands;
      else found.set(name, { cell, contributor, stands });
    }
  }
  return [...found.values()];
}

/** What a tune adds to its cell. */
const summedColumns = {
  cell: tunes.cell,
  several_places: tunes.several_places,
  contributor: tunes.pseudonym,
  elevation_m: tunes.elevation_m,
  heat_kW: tunes.heat_kW,
  density_kg_m3: tunes.density_kg_m3,
  low_pump_Hz: tunes.low_pump_Hz,
  low_fan_rpm: tunes.low_fan_rpm,
  high_pump_Hz: tunes.high_pump_Hz,
  high_fan_rpm: tunes.high_fan_rpm,
};

export type TuneInCell = Pick<TuneRow, keyof typeof summedColumns>;

/** Tunes that count and have a cell, a page at a time. */
export function tunesInCells(db: Database): AsyncGenerator<TuneInCell[], void> {
  return inFileOrder(NARROW_PAGE, (after) =>
    db
      .select({ at, ...summedColumns })
      .from(tunes)
      .where(and(gt(at, after), counts(db), isNotNull(tunes.cell)))
      .orderBy(asc(at))
      .limit(NARROW_PAGE),
  );
}
