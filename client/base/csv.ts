import { type Cell, csvOf } from "../../model/csv.ts";
import { t } from "../texts/app.ts";

/** The cautions in one cell, in the page's language. */
export function caution(): string {
  const { notice, deferTo, defer_to } = t.safety;
  return `${notice} ${deferTo}: ${defer_to.join("; ")}.`;
}

/**
 * Comma-separated values for figures that a heater could be set by: the cautions go along in the last column of every row.
 * CSV knows no comments, a preface would break its readers, and a file loses what only came with it.
 */
export function csvWithCaution(
  header: readonly string[],
  rows: readonly (readonly Cell[])[],
): string {
  return csvOf(
    [...header, "caution"],
    rows.map((row) => [...row, caution()]),
  );
}
