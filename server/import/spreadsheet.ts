import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

/** Something about a file or an option that whoever imports can put right; printed alone. */
export class ImportError extends Error {}

/** One row of a spreadsheet: values by column, without spaces around them. */
export interface SheetRow {
  /** Where it begins in the file; the header is line 1. */
  line: number;
  values: readonly string[];
}

export interface Spreadsheet {
  columns: readonly string[];
  rows: readonly SheetRow[];
  /** Where values are parted by semicolons or tabs a comma may be a decimal one, and a point may part thousands. */
  delimiter: Delimiter;
}

const DELIMITERS = [",", ";", "\t"] as const;
type Delimiter = (typeof DELIMITERS)[number];

/** @throws ImportError when it cannot be read or is no CSV with a header */
export function readSpreadsheet(file: string): Spreadsheet {
  return parseSpreadsheet(readText(file), file);
}

/** @throws ImportError when it cannot be read or is no text */
export function readText(file: string): string {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    throw new ImportError(`${file} cannot be read (${(error as NodeJS.ErrnoException).code}).`);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new ImportError(
      `${file} is not text in UTF-8. In the spreadsheet program save it as "CSV UTF-8".`,
    );
  }
}

/**
 * A file's rows, blank ones left out. Commas, semicolons or tabs part the values: whichever the first line has most of.
 * @param file how sentences about it call it
 */
export function parseSpreadsheet(text: string, file: string): Spreadsheet {
  if (text.includes("\0")) {
    throw new ImportError(
      `${file} is no CSV file. In the spreadsheet program save the table as "CSV UTF-8".`,
    );
  }
  const delimiter = delimiterOf(text);
  let records: { record: string[]; info: { lines: number } }[];
  try {
    // Ends of lines alike, so that lines are counted as an editor counts them.
    records = parse(text.replaceAll(/\r\n?/g, "\n"), {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
    }) as unknown as typeof records;
  } catch (error) {
    throw new ImportError(
      `${file} cannot be read as CSV: ${(error as Error).message}. Look there for a quotation mark that is not closed.`,
    );
  }
  const [header, ...rows] = records.map(({ record, info }) => ({
    // What is counted is the line that a record ends on; a value in quotation marks may go over several.
    line: info.lines - record.join("").split("\n").length + 1,
    values: record.map((value) => value.trim()),
  }));
  if (!header || header.values.filter(Boolean).length < 2) {
    throw new ImportError(
      `${file} has no header: its first line must name the columns, parted by commas, semicolons or tabs.`,
    );
  }
  return {
    columns: header.values,
    rows: rows.filter(({ values }) => values.some(Boolean)),
    delimiter,
  };
}

function delimiterOf(text: string): Delimiter {
  const first = text.trimStart().split(/[\r\n]/, 1)[0] ?? "";
  const bare = first.replaceAll(/"[^"]*"/g, "");
  const counts = DELIMITERS.map((delimiter) => bare.split(delimiter).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))] ?? ",";
}
