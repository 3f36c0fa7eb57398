import { and, asc, desc, eq, gt, gte, inArray, lt, ne, type SQL, sql } from "drizzle-orm";
import type { Database } from "./database.ts";
import { type FitColumn, fitColumns } from "./fit-rows.ts";
import { tunes, waiting } from "./schema.ts";
import type { TuneRow } from "./tunes.ts";
import { counts, sizeWaits, waitsForNothing } from "./waiting.ts";

/** Tunes that count, in the order of their ids, a page at a time, so that an export never holds them all. */
export async function* acceptedTunes(db: Database, page = 1000): AsyncGenerator<TuneRow[]> {
  let after = "";
  for (;;) {
    const rows = await db
      .select()
      .from(tunes)
      .where(and(counts(db), gt(tunes.id, after)))
      .orderBy(asc(tunes.id))
      .limit(page);
    const last = rows.at(-1);
    if (!last) return;
    yield rows;
    after = last.id;
  }
}

/** A tune's month as it is shown: its own, or that of its submission; the year alone of whoever tuned in several places. */
const shownMonth = sql<string>`substr(coalesce(${tunes.tuned_on}, ${tunes.submitted_on}), 1,
  case when ${tunes.several_places} then 4 else 7 end)`;

/** An elevation is shown to so many metres: finer, it would tell where in its cell a tune was made. */
const SHOWN_STEP_m = 100;

export const shownElevation = (elevation_m: number): number =>
  // Without the minus that a rounded −40 would keep.
  Math.round(elevation_m / SHOWN_STEP_m) * SHOWN_STEP_m + 0;

/** What is shown of a tune where it is one of many: no finer than the open data, and nothing of where. */
const shownOfTune = {
  month: shownMonth,
  heat_kW: tunes.heat_kW,
  elevation_m: sql<number>`${tunes.elevation_m}`.mapWith(shownElevation),
  temperature_C: tunes.temperature_C,
  density_kg_m3: tunes.density_kg_m3,
  low: {
    pump_Hz: tunes.low_pump_Hz,
    fan_rpm: tunes.low_fan_rpm,
    co_ppm: tunes.low_co_ppm,
    co_below_ppm: tunes.low_co_below_ppm,
  },
  high: {
    pump_Hz: tunes.high_pump_Hz,
    fan_rpm: tunes.high_fan_rpm,
    co_ppm: tunes.high_co_ppm,
    co_below_ppm: tunes.high_co_below_ppm,
  },
};

/**
 * Tunes that count, of a size, that may be the nearest to some air, or were tuned in some places: so many to either side of
 * the density, and so many of the places, the same tune perhaps twice.
 */
export async function tunesAbout(
  db: Database,
  about: { heat_kW: number; density_kg_m3: number; places: readonly string[] },
  most: number,
) {
  const { heat_kW, density_kg_m3, places } = about;
  const { id, cell, several_places, dose_uL } = tunes;
  const columns = { id, cell, several_places, dose_uL };
  const ofClass = eq(tunes.heat_kW, heat_kW);
  // Among equals by id, the way the index is read.
  const some = (where: SQL | undefined, order: SQL, equals = asc(tunes.id)) =>
    db
      .select({ ...columns, ...shownOfTune })
      .from(tunes)
      .where(and(counts(db), where))
      .orderBy(order, equals)
      .limit(most);
  const { density_kg_m3: density } = tunes;
  return [
    ...(await some(and(ofClass, gte(density, density_kg_m3)), asc(density))),
    ...(await some(and(ofClass, lt(density, density_kg_m3)), desc(density), desc(tunes.id))),
    ...(places.length > 0
      ? await some(
          and(
            // Of a place there are few, of a size very many: with the sign SQLite looks for the place.
            sql`+${tunes.heat_kW} = ${heat_kW}`,
            inArray(tunes.place, [...places]),
            // Looked for by place, a tune shown in a wide cell would tell its place.
            eq(several_places, false),
          ),
          sql`abs(${density} - ${density_kg_m3})`,
        )
      : []),
  ];
}

/** Kept cells of a place shown as one; or places whose tunes are shown in one wide cell. At most 90 of them, for D1 allows 100 bound parameters a statement. */
export type ShownTogether =
  | { place: string; cells: readonly string[] }
  | { places: readonly string[] };

/** Tunes that count and are shown in one cell, newest first, and over how many, how high and from when. */
export async function tunesTogether(db: Database, where: ShownTogether, most: number) {
  const inThem = and(
    counts(db),
    "cells" in where
      ? and(eq(tunes.place, where.place), inArray(tunes.cell, [...where.cells]))
      : inArray(tunes.place, [...where.places]),
    eq(tunes.several_places, "places" in where),
  );
  const [all] = await db
    .select({
      count: sql<number>`count(*)`,
      oldest: sql<string>`min(${shownMonth})`,
      newest: sql<string>`max(${shownMonth})`,
      lowest_m: sql<number>`min(${tunes.elevation_m})`.mapWith(shownElevation),
      highest_m: sql<number>`max(${tunes.elevation_m})`.mapWith(shownElevation),
    })
    .from(tunes)
    .where(inThem);
  const newest = await db
    .select(shownOfTune)
    .from(tunes)
    .where(inThem)
    .orderBy(desc(shownMonth), asc(tunes.id))
    .limit(most);
  // An aggregate without groups is one row.
  return { all: all as NonNullable<typeof all>, tunes: newest };
}

/** Tunes of one heat class, accepted and held, that wait for nothing. */
const ofClass = (db: Database, heat_kW: number) =>
  and(eq(tunes.heat_kW, heat_kW), ne(tunes.verdict, "removed"), waitsForNothing(db));

/** At most so many of them, in an even sample by id (ids are random). */
export function tunesOfClass(db: Database, heat_kW: number, most: number): Promise<PointRow[]> {
  return db
    .select({ ...fitColumns, verdict: tunes.verdict, elevation_m: tunes.elevation_m })
    .from(tunes)
    .where(ofClass(db, heat_kW))
    .orderBy(asc(tunes.id))
    .limit(most);
}

/** What a point of a chart shows. */
export type PointRow = Pick<TuneRow, FitColumn | "verdict" | "elevation_m">;

/** How many of those there are in all. Who waits is counted apart: asked of each of very many tunes it would take a second. */
export async function countOfClass(db: Database, heat_kW: number): Promise<number> {
  if (await sizeWaits(db, heat_kW)) return 0;
  const shown = inArray(tunes.verdict, ["accepted", "held"]);
  const all = await db.$count(tunes, and(eq(tunes.heat_kW, heat_kW), shown));
  const waits = inArray(tunes.contributor, db.select({ who: waiting.contributor }).from(waiting));
  return all - (await db.$count(tunes, and(sql`+${tunes.heat_kW} = ${heat_kW}`, shown, waits)));
}
