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
import { decisions, idempotencyKeys, tunes } from "./schema.ts";
import { counts, forgetWithoutTunes, ofNobodyWaiting } from "./waiting.ts";

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
    db.insert(tunes).values(tune),
    db.insert(decisions).values(decision),
    ...(key ? [db.insert(idempotencyKeys).values(key)] : []),
  ];
}

/** A revision: the tune's new values under its old id and receipt, and the new decision. */
export function reviseTune(db: Database, tune: TuneRow, decision: NewDecision): Statement[] {
  const { id, ...values } = tune;
  return [
    db.update(tunes).set(values).where(eq(tunes.id, id)),
    db.insert(decisions).values(decision),
  ];
}

/**
 * Withdrawn means gone: the tune, what was decided on it and why, and all that its idempotency key was used for but that
 * it was used. That something was withdrawn that day stays in the log, without saying what.
 */
export function withdrawTune(
  db: Database,
  { id, contributor }: Pick<TuneRow, "id" | "contributor">,
  decided_on: string,
): Statement[] {
  return [
    db.delete(tunes).where(eq(tunes.id, id)),
    forgetWithoutTunes(db, contributor),
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
  }
}

/** Decisions on one tune, oldest first. */
export function decisionsOn(db: Database, tune: string): Promise<DecisionRow[]> {
  return db.select().from(decisions).where(eq(decisions.tune, tune)).orderBy(asc(decisions.id));
}

export async function appendDecisions(db: Database, rows: NewDecision[]): Promise<void> {
  // D1 allows 100 bound parameters a statement; a decision has five.
  const statements = chunks(rows, 20).map((part) => db.insert(decisions).values(part));
  const [first, ...rest] = statements;
  if (first) await db.batch([first, ...rest]);
}

/** Grows with every submission, revision, withdrawal and change of mind: tells whether data changed. */
export async function dataRevision(db: Database): Promise<number> {
  const [row] = await db
    .select({ newest: sql<number | null>`max(${decisions.id})` })
    .from(decisions);
  return row?.newest ?? 0;
}

/** Letters of a contributor's hash that its public pseudonym shows. */
const PSEUDONYM_LETTERS = 16;

/** The public pseudonym of a contributor: joins its tunes, leads nowhere else. */
export function pseudonym(contributor: string): string {
  return contributor.slice(0, PSEUDONYM_LETTERS);
}

/** Both ends of a tune as the fit sees them. */
export function fitRows(tune: Pick<TuneRow, FitColumn>): [FitRow, FitRow] {
  const both = {
    row: tune.id,
    contributor: pseudonym(tune.contributor),
    cell: tune.place ?? undefined,
    month: tune.tuned_on ?? tune.submitted_on,
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
  contributor: tunes.contributor,
  place: tunes.place,
  heat_kW: tunes.heat_kW,
  density_kg_m3: tunes.density_kg_m3,
  ln_density_sd: tunes.ln_density_sd,
  density_assumed: tunes.density_assumed,
  dose_uL: tunes.dose_uL,
  low_co_below_ppm: tunes.low_co_below_ppm,
  high_co_below_ppm: tunes.high_co_below_ppm,
  tuned_on: tunes.tuned_on,
  submitted_on: tunes.submitted_on,
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

/** The rows of both ends of every tune that counts; of these tunes alone when ids are given, at most {@link IDS_AT_ONCE}. */
export async function acceptedFitRows(
  db: Database,
  ids?: readonly string[],
): Promise<[FitRow, FitRow][]> {
  const rows = await db
    .select(fitColumns)
    .from(tunes)
    .where(and(counts(db), ids && inArray(tunes.id, [...ids])))
    // By contributor: so the fit takes them in soonest.
    .orderBy(asc(tunes.contributor), asc(tunes.id));
  return rows.map(fitRows);
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

/** A tune's month: its own, or that of its submission. */
const monthOfTune = sql<string>`coalesce(${tunes.tuned_on}, ${tunes.submitted_on})`;

/** What is shown of a tune where it is one of many: no finer in time than the open data, and nothing of where. */
const shownOfTune = {
  month: monthOfTune,
  heat_kW: tunes.heat_kW,
  elevation_m: tunes.elevation_m,
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
  const columns = { id: tunes.id, cell: tunes.cell, place: tunes.place, dose_uL: tunes.dose_uL };
  const some = (where: SQL | undefined, order: SQL) =>
    db
      .select({ ...columns, ...shownOfTune })
      .from(tunes)
      .where(and(eq(tunes.heat_kW, heat_kW), counts(db), where))
      .orderBy(order, asc(tunes.id))
      .limit(most);
  const { density_kg_m3: density } = tunes;
  return [
    ...(await some(gte(density, density_kg_m3), asc(density))),
    ...(await some(lt(density, density_kg_m3), desc(density))),
    ...(places.length > 0
      ? await some(inArray(tunes.place, [...places]), sql`abs(${density} - ${density_kg_m3})`)
      : []),
  ];
}

/** Tunes that count of at most {@link IDS_AT_ONCE} kept cells, newest month first, and over how many, how high and from when. */
export async function tunesOfCells(db: Database, cells: readonly string[], most: number) {
  const inThem = and(counts(db), inArray(tunes.cell, [...cells]));
  const [all] = await db
    .select({
      count: sql<number>`count(*)`,
      oldest: sql<string>`min(${monthOfTune})`,
      newest: sql<string>`max(${monthOfTune})`,
      lowest_m: sql<number>`min(${tunes.elevation_m})`,
      highest_m: sql<number>`max(${tunes.elevation_m})`,
    })
    .from(tunes)
    .where(inThem);
  const newest = await db
    .select(shownOfTune)
    .from(tunes)
    .where(inThem)
    .orderBy(desc(monthOfTune), asc(tunes.id))
    .limit(most);
  // An aggregate without groups is one row.
  return { all: all as NonNullable<typeof all>, tunes: newest };
}

/** Tunes of one heat class, accepted and held, of contributors who do not wait. */
const ofClass = (db: Database, heat_kW: number) =>
  and(eq(tunes.heat_kW, heat_kW), ne(tunes.verdict, "removed"), ofNobodyWaiting(db));

/** At most so many of them, in an even sample by id (ids are random). */
export function tunesOfClass(db: Database, heat_kW: number, most: number): Promise<TuneRow[]> {
  return db.select().from(tunes).where(ofClass(db, heat_kW)).orderBy(asc(tunes.id)).limit(most);
}

/** How many of those there are in all; of every class and contributor when none is named. */
export async function countTunes(db: Database, heat_kW?: number): Promise<number> {
  const [row] = await db
    .select({ count: sql<number>`count(*)` })
    .from(tunes)
    .where(heat_kW === undefined ? undefined : ofClass(db, heat_kW));
  return row?.count ?? 0;
}

/** Contributors per cell of tunes that count: tells how finely a cell may be shown. */
export function cellContributors(db: Database): Promise<{ cell: string; contributor: string }[]> {
  return db
    .selectDistinct({ cell: sql<string>`${tunes.cell}`, contributor: tunes.contributor })
    .from(tunes)
    .where(and(counts(db), isNotNull(tunes.cell)));
}

function chunks<T>(items: T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
