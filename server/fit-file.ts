import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { FitRow, RejectedRow } from "../model/fit/row.ts";
import {
  type Form,
  formOf,
  isRejected,
  type Line,
  NEEDED,
  OPTIONAL,
  rowsFromText,
} from "../model/row-from-text.ts";
import { placeOf } from "./cells.ts";
import { CommandError } from "./fit-options.ts";

/** What a file holds for the fit. Rows count from 1 below the header. */
export interface FitFile {
  rows: FitRow[];
  unreadable: RejectedRow[];
}

/** @throws CommandError when the file cannot be read or lacks columns */
export function readFitFile(file: string): FitFile {
  const found: FitFile = { rows: [], unreadable: [] };
  let [form, row]: [Form | null, number] = [null, 0];
  const onLine = (line: Line): null => {
    form ??= formOf(Object.keys(line)) ?? refuse(file, Object.keys(line));
    row++;
    for (const one of rowsFromText(line, row, form, placeOf)) {
      if (isRejected(one)) found.unreadable.push(one);
      else found.rows.push(one);
    }
    // Nothing is kept of the line itself: an export may be large.
    return null;
  };
  const text = readText(file);
  try {
    parse(text, {
      columns: true,
      bom: true,
      skip_empty_lines: true,
      trim: true,
      on_record: onLine,
    });
  } catch (error) {
    if (error instanceof CommandError) throw error;
    throw new CommandError(
      `${file} is not comma-separated with a header: ${(error as Error).message}`,
    );
  }
  return found;
}

function readText(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch (error) {
    throw new CommandError(`${file} cannot be read (${(error as NodeJS.ErrnoException).code}).`);
  }
}

function refuse(file: string, columns: string[]): never {
  const missing = NEEDED.simple.filter((name) => !columns.includes(name));
  throw new CommandError(
    `${file} lacks the columns ${missing.join(", ")}. It needs ${NEEDED.simple.join(",")} ` +
      `(and may have ${OPTIONAL.join(",")}), comma-separated with a header, or the columns of the atlas's export.`,
  );
}
