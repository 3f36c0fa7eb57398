import { cellToParent, getResolution } from "h3-js";
import { median } from "simple-statistics";
import type { Database } from "../db/database.ts";
import { acceptedTunes, cellContributors, shownElevation, type TuneRow } from "../db/tunes.ts";
import { ENDS, type End } from "../model/end.ts";
import { bandsAt } from "../model/fit/bands.ts";
import type { PublishedFit } from "../model/fit/group.ts";
import { mixtureShift } from "../model/mixture.ts";
import { SAFETY } from "../model/safety.ts";
import { groupOf } from "../model/start.ts";
import { centre, PLACE_RESOLUTION, shownCellOf, shownCells } from "./cells.ts";
import type { Cell, CellsAnswer } from "./contract.ts";
import { COLUMNS, csvLine, LICENCE, type OpenRecord, openRecord } from "./dictionary.ts";
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
  page: (records: readonly OpenRecord[]) => string;
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
    const page: Format["page"] = (records) => {
      rows.add(records);
      return "";
    };
    return { before: "", page, after: () => rows.end() };
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
export async function summedCells(db: Database, fit: PublishedFit): Promise<Cell[]> {
  const shown = await shownOf(db);
  const sums = new Map<string, Sum>();
  for await (const page of acceptedTunes(db)) {
    for (const tune of page) {
      const cell = shownCellOf(tune, shown);
      if (!cell) continue;
      let sum = sums.get(cell);
      if (!sum) {
        sum = { tunes: 0, contributors: new Set(), elevation_m: 0, shifts: { low: [], high: [] } };
        sums.set(cell, sum);
      }
      sum.tunes += 1;
      sum.contributors.add(tune.contributor);
      // As it is shown: out of a finer mean, before and after somebody came, theirs would follow.
      sum.elevation_m += shownElevation(tune.elevation_m);
      for (const end of ENDS) sum.shifts[end].push(shiftOf(fit, tune, end));
    }
  }
  return [...sums].map(([cell, { tunes, contributors, elevation_m, shifts }]) => ({
    cell,
    ...centre(cell),
    tunes,
    contributors: contributors.size,
    elevation_m: shownElevation(elevation_m / tunes),
    mixture_shift_pct: { low: median(shifts.low), high: median(shifts.high) },
  }));
}

/** Name of the whole world where a parent cell is asked for. */
export const WORLD = "world";

/** The answer for one parent cell, or the world, as JSON. */
export function cellsAnswer(cells: readonly Cell[], parent: string, demo: boolean): string {
  const under = cells.filter(({ cell }) => isUnder(cell, parent));
  return JSON.stringify({ parent, cells: under, demo, safety: SAFETY } satisfies CellsAnswer);
}

/** A cell is looked for in its place at the finest: what is shown coarser must not come apart again. */
function isUnder(cell: string, parent: string): boolean {
  if (parent === WORLD) return true;
  const resolution = Math.min(getResolution(parent), getResolution(cell), PLACE_RESOLUTION);
  return cellToParent(cell, resolution) === cellToParent(parent, resolution);
}

function shiftOf(fit: PublishedFit, tune: TuneRow, end: End): number {
  const [pump_Hz, fan_rpm] =
    end === "low" ? [tune.low_pump_Hz, tune.low_fan_rpm] : [tune.high_pump_Hz, tune.high_fan_rpm];
  const { pump_Hz_per_krpm } = bandsAt(groupOf(fit, tune.heat_kW, end), tune.density_kg_m3, {
    mean_levels: [],
    new_heater_levels: [],
  });
  return mixtureShift(pump_Hz / (fan_rpm / 1000), pump_Hz_per_krpm);
}
