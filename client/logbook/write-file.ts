import type { Logbook, LogbookEntry, LogbookHeater } from "../app/records/entry.ts";
import { CAUTION_COLUMN, caution } from "../base/csv.ts";
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
  const head = ["kind", ...COLUMNS.map(({ name }) => name), DENSITY_COLUMN, CAUTION_COLUMN];
  const said = caution();
  const rows = [
    ...heaters.map((heater) => ["heater", ...cells(heater, "heater"), "", said]),
    ...entries.map((entry) => [entry.kind, ...cells(entry, "entry"), density(entry), said]),
  ];
  return [head, ...rows].map((row) => `${row.map(quoted).join(",")}\r\n`).join("");
}

function cells(record: LogbookHeater | LogbookEntry, is: "heater" | "entry"): string[] {
  return COLUMNS.map(({ path, of }) => {
    if (of !== is && of !== "both") return "";
    let value: unknown = record;
    for (const step of path) value = (value as Record<string, unknown> | undefined)?.[step];
    return value === undefined ? "" : typeof value === "string" ? harmless(value) : String(value);
  });
}

function density(entry: LogbookEntry): string {
  return densityOf(entry)?.toFixed(4) ?? "";
}

/** No spreadsheet must take a text for a formula; reading takes the mark off again. */
function harmless(text: string): string {
  return /^[=+\-@'\t\r]/.test(text) ? `'${text}` : text;
}

function quoted(cell: string): string {
  return /[",;\r\n\t ]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
