import {
  and,
  asc,
  desc,
  eq,
  gt,
  gte,
  inArray,
  isNotNull,
  lt,
  ne,
  type SQL,
  sql,
} from "drizzle-orm";
import type { FitRow } from "../model/fit/row.ts";
import type { Database, Statement } from "./database.ts";
import { decisions, idempotencyKeys, tunes, waiting } from "./schema.ts";
import { counts, forgetWithoutTunes, sizeWaits, waitsForNothing } from "./waiting.ts";

export type TuneRow = typeof tunes.$inferSelect;
export type DecisionRow = typeof decisions.$inferSelect;
export type NewDecision = typeof decisions.$inferInsert;
export type IdempotencyRow = typeof idempotencyKeys.$inferSelect;

/** Everything one submission writes, to be run in one batch. */
export function insertTune(
  db: Database,
  tune: TuneRow,
  decision: NewDecision,
  key?: IdempotencyRow,
): Statement[] {
  return [
    db.insert(tunes).values({ ...tune, ...asOfContributor(tune) }),
    markSeveralPlaces(db, tune.contributor),
    db.insert(decisions).values(onTune(decision)),
    ...(key ? [db.insert(idempotencyKeys).values(key)] : []),
  ];
}

/** A revision: the tune's new values under its old id and receipt, and the new decision. */
export function reviseTune(db: Database, tune: TuneRow, decision: NewDecision): Statement[] {
  const { id, ...values } = tune;
  return [
    db
      .update(tunes)
      .set({ ...values, ...asOfContributor(tune) })
      .where(eq(tunes.id, id)),
    markSeveralPlaces(db, tune.contributor),
    db.insert(decisions).values(onTune(decision)),
  ];
}

/** Pseudonym and home are those of the contributor's other tunes, where there are some, and new otherwise. */
function asOfContributor({ id, contributor, pseudonym, home }: TuneRow) {
  const others = sql`from tunes where contributor = ${contributor} and id <> ${id}`;
  return {
    pseudonym: sql`coalesce((select pseudonym ${others} limit 1), ${pseudonym})`,
    home: sql`coalesce((select home ${others} and home is not null limit 1), ${home})`,
  };
}

/** Once a contributor has tuned in a second cell all their tunes are marked, for good: somebody may have kept what was shown before. */
function markSeveralPlaces(db: Database, contributor: string): Statement {
  const own = sql`from tunes where contributor = ${contributor}`;
  return db
    .update(tunes)
    .set({ several_places: true })
    .where(
      and(
        eq(tunes.contributor, contributor),
        eq(tunes.several_places, false),
        sql`(select count(distinct cell) > 1 or max(several_places) ${own})`,
      ),
    );
}

/** What is decided on a tune is dated by the month, as tunes are. */
export const onTune = <D extends Pick<NewDecision, "decided_on">>(decision: D): D => ({
  ...decision,
  decided_on: decision.decided_on.slice(0, "YYYY-MM".length),
});

/**
 * Withdrawn means gone: the tune, what was decided on it and why, and all that its idempotency key was used for but that
 * it was used. That something was withdrawn that day stays in the log, without saying what.
 */
export function withdrawTune(
  db: Database,
  { id, contributor, cell }: Pick<TuneRow, "id" | "contributor" | "cell">,
  decided_on: string,
): Statement[] {
  const sameCell = sql`select 1 from tunes where contributor = ${contributor} and cell = ${cell}`;
  return [
    db.delete(tunes).where(eq(tunes.id, id)),
    // A pseudonym that was seen in this cell, and stays, must not be seen in another.
    db
      .update(tunes)
      .set({ several_places: true })
      .where(
        and(
          eq(tunes.contributor, contributor),
          sql`${cell} is not null and not exists (${sameCell})`,
        ),
      ),
    ...forgetWithoutTunes(db, contributor),
    db.delete(decisions).where(eq(decisions.tune, id)),
    db
      .update(idempotencyKeys)
      .set({ tune: "", body_sha256: "", answer: "" })
      .where(eq(idempotencyKeys.tune, id)),
    db
      .insert(decisions)
      .values({ tune: "", by: "contributor", verdict: "withdrawn", reasons: "[]", decided_on }),
  ];
}

export async function findTune(db: Database, id: string): Promise<TuneRow | undefined> {
  return (await db.select().from(tunes).where(eq(tunes.id, id)).limit(1))[0];
}

export async function findIdempotencyKey(
  db: Database,
  key: string,
): Promise<IdempotencyRow | undefined> {
  return (await db.select().from(idempotencyKeys).where(eq(idempotencyKeys.key, key)).limit(1))[0];
}

/**
 * Empties answers kept for keys of tunes from before a month, a page of keys after another, so that nobody waits for all of it.
 * @param before month, "YYYY-MM"
 */
export async function emptyKeptAnswers(db: Database, before: string, page = 500): Promise<void> {
  const { key } = idempotencyKeys;
  let after = "";
  for (;;) {
    const keys = await db
      .select({ key, old: lt(tunes.submitted_on, before), answer: ne(idempotencyKeys.answer, "") })
      .from(idempotencyKeys)
      .leftJoin(tunes, eq(tunes.id, idempotencyKeys.tune))
      .where(gt(key, after))
      .orderBy(asc(key))
      .limit(page);
    const last = keys.at(-1);
    if (!last) return;
    const old = keys.filter((row) => row.old && row.answer).map((row) => row.key);
    for (const part of chunks(old, IDS_AT_ONCE)) {
      await db.update(idempotencyKeys).set({ answer: "" }).where(inArray(key, part));
    }
    after = last.key;
    // Requests are answered between two pages.
    await new Promise((others) => setTimeout(others));
  }
}

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

/** Letters of a contributor's hash that a steward sees. */
const STEWARDS_LETTERS = 16;

/** What a steward knows a contributor by: it lasts, and is not what the open data call them. */
export function stewardsName(contributor: string): string {
  return contributor.slice(0, STEWARDS_LETTERS);
}

/** Both ends of a tune as the fit sees them. */
export function fitRows(tune: Pick<TuneRow, FitColumn>): [FitRow, FitRow] {
  const both = {
    row: tune.id,
    contributor: tune.pseudonym,
    cell: tune.home ?? undefined,
    heat_kW: tune.heat_kW,
    density_kg_m3: tune.density_kg_m3,
    ln_density_sd: tune.ln_density_sd,
    temperature_assumed: tune.density_assumed.split(",").includes("temperature"),
    dose_uL: tune.dose_uL ?? undefined,
    found: tune.found ?? undefined,
  };
  return [
    {
      ...both,
      end: "low",
      pump_Hz: tune.low_pump_Hz,
      fan_rpm: tune.low_fan_rpm,
      co_ppm: tune.low_co_ppm ?? undefined,
      co_below_ppm: tune.low_co_below_ppm ?? undefined,
      suggested_Hz_per_krpm: tune.low_suggested_Hz_per_krpm ?? undefined,
    },
    {
      ...both,
      end: "high",
      pump_Hz: tune.high_pump_Hz,
      fan_rpm: tune.high_fan_rpm,
      co_ppm: tune.high_co_ppm ?? undefined,
      co_below_ppm: tune.high_co_below_ppm ?? undefined,
      suggested_Hz_per_krpm: tune.high_suggested_Hz_per_krpm ?? undefined,
    },
  ];
}

/** What the fit needs of a tune. */
export const fitColumns = {
  id: tunes.id,
  pseudonym: tunes.pseudonym,
  home: tunes.home,
  heat_kW: tunes.heat_kW,
  density_kg_m3: tunes.density_kg_m3,
  ln_density_sd: tunes.ln_density_sd,
  density_assumed: tunes.density_assumed,
  dose_uL: tunes.dose_uL,
  low_co_below_ppm: tunes.low_co_below_ppm,
  high_co_below_ppm: tunes.high_co_below_ppm,
  low_co_ppm: tunes.low_co_ppm,
  high_co_ppm: tunes.high_co_ppm,
  low_pump_Hz: tunes.low_pump_Hz,
  low_fan_rpm: tunes.low_fan_rpm,
  high_pump_Hz: tunes.high_pump_Hz,
  high_fan_rpm: tunes.high_fan_rpm,
  found: tunes.found,
  low_suggested_Hz_per_krpm: tunes.low_suggested_Hz_per_krpm,
  high_suggested_Hz_per_krpm: tunes.high_suggested_Hz_per_krpm,
};
type FitColumn = keyof typeof fitColumns;

/** Where a tune lies in the file. */
const at = sql<number>`${tunes}.rowid`;

/** Pages of what is read in the order in which it lies in the file: sooner than in any other, where that is large. */
async function* inFileOrder<Row extends { at: number }>(
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

/**
 * The rows of both ends of every tune that counts, in the order in which they lie in the file.
 * @param page so many tunes at a time
 */
export async function* acceptedFitRows(
  db: Database,
  page: number,
): AsyncGenerator<[FitRow, FitRow][], void> {
  const read = (after: number) =>
    db
      .select({ at, ...fitColumns })
      .from(tunes)
      .where(and(gt(at, after), counts(db)))
      .orderBy(asc(at))
      .limit(page);
  for await (const rows of inFileOrder(page, read)) yield rows.map(fitRows);
}

/** How many contributors of each heater size count. */
export async function ownersOfSizes(db: Database): Promise<Map<number, number>> {
  const rows = await db
    .select({
      heat_kW: tunes.heat_kW,
      owners: sql<number>`count(distinct ${tunes.contributor})`,
    })
    .from(tunes)
    .where(counts(db))
    .groupBy(tunes.heat_kW);
  return new Map(rows.map(({ heat_kW, owners }) => [heat_kW, owners]));
}

/** D1 allows 100 bound parameters a statement. */
export const IDS_AT_ONCE = 90;

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

/** Kept cells of a place shown as one; or places whose tunes are shown in one wide cell. At most {@link IDS_AT_ONCE} of them. */
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

/** How many tunes there are, of every class, contributor and verdict. */
export const countTunes = (db: Database): Promise<number> => db.$count(tunes);

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

function chunks<T>(items: T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
