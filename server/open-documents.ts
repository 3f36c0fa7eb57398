import { cellToParent, getResolution } from "h3-js";
import { median, sum } from "simple-statistics";
import type { Database } from "../db/database.ts";
import { acceptedTunes, shownElevation } from "../db/shown-tunes.ts";
import { cellContributors, type TuneInCell, tunesInCells } from "../db/tunes-in-cells.ts";
import { csvLine } from "../model/csv.ts";
import { ENDS, type End } from "../model/end.ts";
import { bandsAt } from "../model/fit/bands.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { mixtureShift } from "../model/mixture.ts";
import { toStep } from "../model/rounding.ts";
import { SAFETY } from "../model/safety.ts";
import { groupOf } from "../model/start.ts";
import { centre, PLACE_RESOLUTION, shownCellOf, shownCells } from "./cells.ts";
import type { Cell, CellsAnswer } from "./contract/cells.ts";
import { COLUMNS, LICENCE, type OpenRecord, openRecord } from "./dictionary.ts";
import { ParquetRows } from "./parquet.ts";

/** What is made of all accepted tunes: it takes long where there are many, so it is made where nobody waits for it. */

/** The open data as files. */
export const DOCUMENTS = ["tunes.csv", "tunes.geojson", "tunes.parquet"] as const;
export type DocumentName = (typeof DOCUMENTS)[number];

/** The cell each kept cell is shown as. */
export const shownOf = async (db: Database): Promise<Map<string, string>> =>
  shownCells(await cellContributors(db));

export type Chunk = string | Uint8Array<ArrayBuffer>;

/** A document in the making: what comes before the tunes, each page of them, what comes after. */
interface Format {
  before: string;
  page: (records: readonly OpenRecord[]) => Chunk;
  after: () => Chunk;
}

function formatOf(name: DocumentName, demo: boolean): Format {
  if (name === "tunes.csv") {
    const line = (of: (column: string) => OpenRecord[string] | undefined) =>
      csvLine(COLUMNS.map((column) => of(column.name)));
    const page: Format["page"] = (records) => records.map((r) => line((name) => r[name])).join("");
    return { before: line((name) => name), page, after: () => "" };
  }
  if (name === "tunes.parquet") {
    const rows = new ParquetRows(demo);
    return { before: "", page: (records) => rows.add(records), after: () => rows.end() };
  }
  const head = { type: "FeatureCollection", licence: LICENCE, demo, safety: SAFETY };
  let separator = "";
  return {
    before: `${JSON.stringify(head).slice(0, -1)},"features":[`,
    page: (records) => {
      const text = separator + records.map((r) => JSON.stringify(feature(r))).join(",");
      separator = ",";
      return text;
    },
    after: () => "]}",
  };
}

/** A document, a page of tunes after another. */
export async function* chunksOf(
  name: DocumentName,
  db: Database,
  demo: boolean,
): AsyncGenerator<Chunk, void> {
  const { before, page, after } = formatOf(name, demo);
  yield before;
  for await (const some of records(db)) yield page(some);
  yield after();
}

/** Every document in one pass over the tunes. */
export async function writeDocuments(
  db: Database,
  demo: boolean,
  write: (name: DocumentName, chunk: Chunk) => Promise<void>,
): Promise<void> {
  const formats = DOCUMENTS.map((name) => ({ name, ...formatOf(name, demo) }));
  for (const { name, before } of formats) await write(name, before);
  for await (const some of records(db))
    for (const { name, page } of formats) await write(name, page(some));
  for (const { name, after } of formats) await write(name, after());
}

async function* records(db: Database): AsyncGenerator<OpenRecord[], void> {
  const shown = await shownOf(db);
  for await (const page of acceptedTunes(db)) yield page.map((tune) => openRecord(tune, shown));
}

/** A GeoJSON feature (RFC 7946): the shown cell's centre; elevation above sea level stays a property. */
function feature(record: OpenRecord) {
  const { id, ...properties } = record;
  const at = typeof record.cell === "string" && record.cell !== "" ? centre(record.cell) : null;
  return {
    type: "Feature",
    id,
    geometry: at && { type: "Point", coordinates: [at.lon, at.lat] },
    properties,
  };
}

/** What is known of one cell while its tunes are passed over. */
interface Sum {
  tunes: number;
  contributors: Set<string>;
  elevation_m: number;
  shifts: Record<End, number[]>;
}

/** Accepted tunes summed per shown cell, over the whole world. */
export async function summedCells(
  db: Database,
  fit: PublishedFit,
  shown: ReadonlyMap<string, string>,
): Promise<Cell[]> {
  const sums = new Map<string, Sum>();
  for await (const page of tunesInCells(db)) {
    for (const tune of page) {
      const cell = shownCellOf(tune, shown);
      if (!cell) continue;
      let known = sums.get(cell);
      if (!known) {
        known = {
          tunes: 0,
          contributors: new Set(),
          elevation_m: 0,
          shifts: { low: [], high: [] },
        };
        sums.set(cell, known);
      }
      known.tunes += 1;
      known.contributors.add(tune.contributor);
      // As it is shown: out of a finer mean, before and after somebody came, theirs would follow.
      known.elevation_m += shownElevation(tune.elevation_m);
      for (const end of ENDS) known.shifts[end].push(shiftOf(fit, tune, end));
    }
  }
  return [...sums].map(([cell, { tunes, contributors, elevation_m, shifts }]) => ({
    cell,
    ...centre(cell),
    tunes,
    contributors: contributors.size,
    elevation_m: shownElevation(elevation_m / tunes),
    mixture_shift_pct: middleOf(shifts.low, shifts.high),
  }));
}

/** To a tenth of a percent: more would only be more to send. */
const middleOf = (low: number[], high: number[]) => ({
  low: toStep(median(low), SHIFT_STEP_pct),
  high: toStep(median(high), SHIFT_STEP_pct),
});
const SHIFT_STEP_pct = 0.1;

/** Name of the whole world where a parent cell is asked for. */
export const WORLD = "world";

/** The whole world is told cell by cell up to so many; beyond, a map that nobody has come nearer to has no room for them. */
const CELLS_AT_ONCE = 2000;
/** Cells in which more are told; none is shown so coarse itself. About 600,000 km². */
const SUMMED_RESOLUTION = 1;

/** The answer for one parent cell, or the world, as JSON. */
export function cellsAnswer(
  cells: readonly Cell[],
  parent: string,
  demo: boolean,
  atOnce = CELLS_AT_ONCE,
): string {
  const under =
    parent === WORLD && cells.length > atOnce
      ? summedUp(cells)
      : cells.filter(({ cell }) => isUnder(cell, parent));
  return JSON.stringify({ parent, cells: under, demo, safety: SAFETY } satisfies CellsAnswer);
}

/** Cells told in one: out of what is shown of each, so that nothing follows that they do not tell. */
function summedUp(cells: readonly Cell[]): Cell[] {
  const groups = Map.groupBy(cells, ({ cell }) => cellToParent(cell, SUMMED_RESOLUTION));
  return [...groups].map(([cell, within]) => {
    const tunes = sum(within.map((one) => one.tunes));
    return {
      cell,
      ...centre(cell),
      tunes,
      contributors: sum(within.map(({ contributors }) => contributors)),
      elevation_m: shownElevation(sum(within.map((one) => one.tunes * one.elevation_m)) / tunes),
      mixture_shift_pct: middleOf(
        within.map((one) => one.mixture_shift_pct.low),
        within.map((one) => one.mixture_shift_pct.high),
      ),
      cells_within: within.length,
    };
  });
}

/** A cell is looked for in its place at the finest: what is shown coarser must not come apart again. */
function isUnder(cell: string, parent: string): boolean {
  if (parent === WORLD) return true;
  const resolution = Math.min(getResolution(parent), getResolution(cell), PLACE_RESOLUTION);
  return cellToParent(cell, resolution) === cellToParent(parent, resolution);
}

function shiftOf(fit: PublishedFit, tune: TuneInCell, end: End): number {
  const [pump_Hz, fan_rpm] =
    end === "low" ? [tune.low_pump_Hz, tune.low_fan_rpm] : [tune.high_pump_Hz, tune.high_fan_rpm];
  const { pump_Hz_per_krpm } = bandsAt(groupOf(fit, tune.heat_kW, end), tune.density_kg_m3, {
    mean_levels: [],
    new_heater_levels: [],
  });
  return mixtureShift(pump_Hz / (fan_rpm / 1000), pump_Hz_per_krpm);
}
