import type { Database } from "../db/database.ts";
import { dataRevision, setAsideByFit } from "../db/decisions.ts";
import { acceptedFitRows, ownersOfSizes } from "../db/fit-rows.ts";
import { alarmsOf } from "../model/alarms.ts";
import { OWNERS_MOST, OwnersSample, RowCount } from "../model/bounded-fit.ts";
import type { End } from "../model/end.ts";
import { fitAtlas } from "../model/fit/fit.ts";
import type { Alarm, GroupFit, PublishedFit } from "../model/fit/group.ts";
import type { FitRow } from "../model/fit/row.ts";
import type { Uncounted } from "../model/fit-in-steps.ts";
import { RowsHash } from "./rows-hash.ts";

/** Fits made from the database itself, a page of tunes after another: nothing holds all rows, however many there are. */

/** A fit of all tunes that count. */
export interface FitOrder {
  /** Hashes of rows that need not be fitted again. */
  known: readonly (string | null)[];
  /** The versions before it that it is measured against, oldest first. */
  before: readonly PublishedFit[];
}

/** What the fit now sets aside and did not before, with the reason; or, without one, takes back. */
export interface Change {
  tune: string;
  end: End;
  reason: string | null;
}

/** A fit, and all else that a new version needs the rows for. */
export interface Fitted {
  groups: GroupFit[];
  alarms: Alarm[];
  changes: Change[];
}

/** The state of the data, and what is fitted to it; null where its rows are known. */
export interface Made {
  rows_sha256: string;
  tunes: number;
  fit: Fitted | null;
  /** How long it took, without what it waited for, ms. */
  took_ms: number;
}

/** A fit without some tunes: how many were left out, and how many are left. */
export interface Trial {
  groups: GroupFit[];
  left_out: number;
  left: number;
}

/** Makes fits, wherever that is. */
export interface FitMaker {
  fit(order: FitOrder): Promise<Made>;
  without(tunes: readonly string[]): Promise<Trial>;
}

/** Tunes that are read at once: at the edge an invocation may ask a thousand times. */
const PAGE = 5000;
/** So often tunes are read again that changed meanwhile. */
const TRIES = 3;

/** What a fit is read from: pages of so many tunes; of how many owners of a size it is made at most; and how rows are fitted. */
interface Source {
  db: Database;
  page: number;
  owners_most: number;
  fitRows: (rows: readonly FitRow[], rows_sha256: string) => Uncounted[] | Promise<Uncounted[]>;
}

/**
 * Makes fits in this thread.
 * @param limits other ones than the atlas's own, or another way to the same fit
 */
export function fitsHere(db: Database, limits: Partial<Omit<Source, "db">> = {}): FitMaker {
  const fitRows: Source["fitRows"] = (rows) => fitAtlas(rows).groups;
  const source = { db, page: PAGE, owners_most: OWNERS_MOST, fitRows, ...limits };
  return {
    fit: (order) => ofOneState(db, (isSame) => made(source, order, isSame)),
    without: (tunes) => ofOneState(db, (isSame) => trial(source, new Set(tunes), isSame)),
  };
}

/** Whether all pages that were read are of one state of the data; a single page always is. */
type IsSame = (pages: number) => Promise<boolean>;

/** Where another connection's writes come in between two pages (one in a transaction sees none) all is read again. */
async function ofOneState<T>(
  db: Database,
  read: (isSame: IsSame) => Promise<T | undefined>,
): Promise<T> {
  for (let tries = 0; tries < TRIES; tries++) {
    const revision = await dataRevision(db);
    const found = await read(async (pages) => pages <= 1 || (await dataRevision(db)) === revision);
    if (found) return found;
  }
  throw new Error("The tunes change faster than they are read.");
}

async function made(
  { db, page: size, owners_most, fitRows }: Source,
  { known, before }: FitOrder,
  isSame: IsSame,
): Promise<Made | undefined> {
  const began = performance.now();
  const took = () => ({ took_ms: performance.now() - began });
  const [sample, hash] = [new OwnersSample(owners_most), new RowsHash()];
  let [tunes, pages] = [0, 0];
  for await (const page of acceptedFitRows(db, size)) {
    pages++;
    tunes += page.length;
    for (const row of page.flat()) {
      hash.add(row);
      sample.add(row);
    }
  }
  if (!(await isSame(pages))) return undefined;
  const rows_sha256 = hash.toString();
  if (known.includes(rows_sha256)) return { rows_sha256, tunes, fit: null, ...took() };
  const rows = sample.rows();
  const fitted = await fitRows(rows, rows_sha256);
  // Counted in the database: their names are too many to be held.
  const owners = await ownersOfSizes(db);
  const count = new RowCount(fitted, ({ heat_kW }) => owners.get(heat_kW) ?? 0);
  const changed = changesSince(await setAsideByFit(db), count);
  const changes: Change[] = [];
  if (sample.isWhole) changes.push(...rows.flatMap(changed));
  else
    for await (const page of acceptedFitRows(db, size))
      changes.push(...page.flat().flatMap(changed));
  if (!sample.isWhole && !(await isSame(pages))) return undefined;
  const { groups } = count;
  const fit = { groups, alarms: alarmsOf(before, groups, rows), changes };
  return { rows_sha256, tunes, fit, ...took() };
}

/** Counts a row, and tells what changes for it. */
function changesSince(before: ReadonlySet<string>, count: RowCount): (row: FitRow) => Change[] {
  return (row) => {
    const reason = count.add(row)?.reason ?? null;
    const { end } = row;
    if ((reason !== null) === before.has(`${row.row} ${end}`)) return [];
    return [{ tune: String(row.row), end, reason }];
  };
}

async function trial(
  { db, page: size, owners_most }: Source,
  without: ReadonlySet<string>,
  isSame: IsSame,
): Promise<Trial | undefined> {
  const sample = new OwnersSample(owners_most);
  let [left, left_out, pages] = [0, 0, 0];
  for await (const page of acceptedFitRows(db, size)) {
    pages++;
    for (const tune of page) {
      if (without.has(String(tune[0].row))) {
        left_out++;
        continue;
      }
      left++;
      for (const row of tune) sample.add(row);
    }
  }
  if (!(await isSame(pages))) return undefined;
  return { groups: fitAtlas(sample.rows()).groups, left_out, left };
}
