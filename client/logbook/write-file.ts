import type { Cell } from "../../model/csv.ts";
import type { Logbook, LogbookEntry, LogbookHeater } from "../app/records/entry.ts";
import { caution, csvWithCaution } from "../base/csv.ts";
import { COLUMNS, DENSITY_COLUMN } from "./columns.ts";
import { densityOf } from "./density.ts";
import { dataUrlOf } from "./photo.ts";

/** What a JSON file of a logbook calls itself. Described in docs/logbook.md. */
export const FORMAT = "hypsotune logbook";
export const VERSION = 1;

/** All of it, photos as data URLs; one record a line. */
export async function jsonOfLogbook({ heaters, entries }: Logbook): Promise<string> {
  const plain = await Promise.all(
    entries.map(async ({ photo, ...entry }) =>
      photo ? { ...entry, photo: await dataUrlOf(photo) } : entry,
    ),
  );
  const list = (records: readonly object[]) =>
    records.length === 0
      ? "[]"
      : `[\n${records.map((record) => JSON.stringify(record)).join(",\n")}\n]`;
  return `{"format": ${JSON.stringify(FORMAT)}, "version": ${VERSION}, "caution": ${JSON.stringify(caution())},\n"heaters": ${list(heaters)},\n"entries": ${list(plain)}}\n`;
}

/** All of it but the photos, by RFC 4180; the cautions go along in every row, as whoever copies one copies settings. */
export function csvOfLogbook({ heaters, entries }: Logbook): string {
  return csvWithCaution(
    ["kind", ...COLUMNS.map(({ name }) => name), DENSITY_COLUMN],
    [
      ...heaters.map((heater) => ["heater", ...cells(heater, "heater"), undefined]),
      ...entries.map((entry) => [entry.kind, ...cells(entry, "entry"), density(entry)]),
    ],
  );
}

function cells(record: LogbookHeater | LogbookEntry, is: "heater" | "entry"): Cell[] {
  return COLUMNS.map(({ path, of }) => {
    if (of !== is && of !== "both") return undefined;
    let value: unknown = record;
    for (const step of path) value = (value as Record<string, unknown> | undefined)?.[step];
    return value as Cell;
  });
}

function density(entry: LogbookEntry): Cell {
  return densityOf(entry)?.toFixed(4);
}
