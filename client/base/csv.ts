import { t } from "../texts/app.ts";

/** Files of comma-separated values by RFC 4180: a header, then rows; nothing that a reader of such files would stumble over. */

export type Cell = string | number;

/** Name of the column that carries the cautions. */
export const CAUTION_COLUMN = "caution";

/** The cautions in one cell, in the page's language. */
export function caution(): string {
  const { notice, deferTo, defer_to } = t.safety;
  return `${notice} ${deferTo}: ${defer_to.join("; ")}.`;
}

/** Lines of comma-separated values. */
export function csvOf(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map((row) => `${row.map(quoted).join(",")}\r\n`).join("");
}

/**
 * The same for figures that a heater could be set by: the cautions go along in the last column of every row. CSV knows no
 * comments, a preface would break its readers, and a file loses what only came with it.
 */
export function csvWithCaution(
  header: readonly string[],
  rows: readonly (readonly Cell[])[],
): string {
  return csvOf(
    [...header, CAUTION_COLUMN],
    rows.map((row) => [...row, caution()]),
  );
}

function quoted(cell: Cell): string {
  const text = String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
