import { CsvError, parse } from "csv-parse/browser/esm/sync";
import { unmarked } from "../../model/csv.ts";
import { Refused } from "../base/refused.ts";
import { trip } from "../texts/trip.ts";
import { parseNumber } from "../units.ts";
import type { FoundStop } from "./found-stop.ts";

/** Columns a file may have, and other ways people head them. */
const COLUMNS: Record<string, readonly string[]> = {
  name: ["name", "stop", "place", "title"],
  elevation_m: ["elevation_m", "ele_m", "altitude_m"],
  temperature_C: ["temperature_c", "night_temperature_c"],
  lat: ["lat", "latitude"],
  lon: ["lon", "lng", "longitude"],
  nights: ["nights"],
};

/** Stops of a CSV file with a head line: name, elevation_m, temperature_C, lat, lon, nights; comma, semicolon or tab between. */
export function stopsOfCsv(text: string): FoundStop[] {
  const [head = ""] = text.split(/\r?\n/, 1);
  const delimiter = [";", "\t"].find((mark) => head.includes(mark)) ?? ",";
  const [header, ...rows] = linesOf(text, delimiter);
  if (!header) throw new Refused(trip.refused.empty);
  const names = header.record.map(columnNamed);
  if (!names.includes("elevation_m") && !(names.includes("lat") && names.includes("lon"))) {
    throw new Refused(trip.refused.csvHead, header.line);
  }
  return rows.map(({ record, line }) => ({ line, fields: fieldsOf(names, record, line) }));
}

interface CsvLine {
  record: string[];
  line: number;
}

function linesOf(text: string, delimiter: string): CsvLine[] {
  try {
    const found = parse(text, {
      bom: true,
      delimiter,
      info: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return found.map(({ record, info }) => ({ record, line: info.lines }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = (error as CsvError & { lines?: number }).lines;
    throw new Refused(REASONS[error.code] ?? trip.refused.csvLine, line);
  }
}

const REASONS: Record<string, string> = {
  CSV_RECORD_INCONSISTENT_FIELDS_LENGTH: trip.refused.csvLength,
  CSV_QUOTE_NOT_CLOSED: trip.refused.csvOpen,
  CSV_INVALID_CLOSING_QUOTE: trip.refused.csvAfterQuote,
  INVALID_OPENING_QUOTE: trip.refused.csvMiddleQuote,
};

function columnNamed(head: string): string | undefined {
  const plain = head.trim().toLowerCase();
  return Object.keys(COLUMNS).find((name) => COLUMNS[name]?.includes(plain));
}

function fieldsOf(names: (string | undefined)[], record: string[], line: number) {
  const fields: Record<string, string | number> = {};
  for (const [i, name] of names.entries()) {
    const text = record[i] ?? "";
    if (!name || text === "") continue;
    const value = name === "name" ? unmarked(text) : parseNumber(text);
    if (value === null) throw new Refused(trip.refused.notNumber(name, text.slice(0, 30)), line);
    fields[name] = value;
  }
  return fields;
}
