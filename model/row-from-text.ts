import { ENDS, type End } from "./end.ts";
import { type FitRow, FOUND, type Found, type RejectedRow } from "./fit/row.ts";

/** One line of a CSV file by the names in its header; what is missing is empty. */
export type Line = Readonly<Record<string, string>>;

/** The atlas's export, both ends in a line; or one end in a line, as people write files of their own. */
export type Form = "export" | "simple";

/** What the fit cannot do without, by form. */
export const NEEDED: Record<Form, readonly string[]> = {
  export: [
    "contributor",
    "heat_kW",
    "density_kg_m3",
    ...ENDS.flatMap((end) => [`${end}_pump_Hz`, `${end}_fan_rpm`]),
  ],
  simple: ["contributor", "heat_kW", "end", "density_kg_m3", "pump_Hz", "fan_rpm"],
};

/** Columns of the simple form that may be left out, or left empty. */
export const OPTIONAL = [
  "cell",
  "month",
  "ln_density_sd",
  "density_assumed",
  "dose_uL",
  "co_ppm",
  "co_below_ppm",
  "found",
  "suggested_Hz_per_krpm",
] as const;

/** The form of a file by its header; null when columns are missing for both. */
export function formOf(columns: readonly string[]): Form | null {
  const has = (form: Form) => NEEDED[form].every((name) => columns.includes(name));
  return has("export") ? "export" : has("simple") ? "simple" : null;
}

/**
 * The rows of one line as the fit sees them, or why it cannot. The export's rows equal the atlas's own to the last
 * bit: its numbers are written in full.
 * @param row names the row to its reader
 * @param placeOf the place in which contributors share votes, of a cell that a file names
 */
export function rowsFromText(
  line: Line,
  row: number,
  form: Form,
  placeOf: (cell: string) => string = (cell) => cell,
): (FitRow | RejectedRow)[] {
  return form === "export"
    ? ENDS.map((end) => toRow(line, row, end, `${end}_`, placeOf))
    : [toRow(line, row, line.end as End, "", placeOf)];
}

export function isRejected(row: FitRow | RejectedRow): row is RejectedRow {
  return "reason" in row;
}

function toRow(
  line: Line,
  row: number,
  end: End,
  prefix: string,
  placeOf: (cell: string) => string,
): FitRow | RejectedRow {
  const heat_kW = number(line.heat_kW);
  const reject = (reason: string): RejectedRow => ({ row, heat_kW, end, reason });
  if (!ENDS.includes(end)) return reject(`end must be low or high, not "${end ?? ""}".`);
  if (!line.contributor) return reject("contributor is empty.");
  const needed = ["heat_kW", "density_kg_m3", `${prefix}pump_Hz`, `${prefix}fan_rpm`];
  for (const column of needed) {
    if (!(number(line[column]) > 0)) {
      return reject(`${column} must be a positive number, not "${line[column] ?? ""}".`);
    }
  }
  const co = `${prefix}co_ppm`;
  const below = `${prefix}co_below_ppm`;
  const suggested = `${prefix}suggested_Hz_per_krpm`;
  for (const column of ["ln_density_sd", co, below]) {
    if (line[column] && !(number(line[column]) >= 0)) {
      return reject(`${column} must be empty or a number from 0 up, not "${line[column]}".`);
    }
  }
  for (const column of ["dose_uL", suggested]) {
    if (line[column] && !(number(line[column]) > 0)) {
      return reject(`${column} must be empty or a positive number, not "${line[column]}".`);
    }
  }
  if (line.found && !FOUND.includes(line.found as Found)) {
    return reject(`found must be empty or one of: ${FOUND.join(", ")}; not "${line.found}".`);
  }
  const optional = (column: string) => (line[column] ? number(line[column]) : undefined);
  // The atlas's own export has a name for place and month together, and no other way to them.
  const [cell, month] =
    line.home === undefined
      ? [(line.cell && placeOf(line.cell)) || undefined, line.month || undefined]
      : [line.home || undefined, undefined];
  if (month && !/^\d{4}-(0[1-9]|1[0-2])$/.test(month)) {
    return reject(`month must be empty or like 2026-10, not "${month}".`);
  }
  return {
    row,
    contributor: line.contributor,
    cell,
    month,
    heat_kW,
    end,
    density_kg_m3: number(line.density_kg_m3),
    ln_density_sd: optional("ln_density_sd") ?? 0,
    temperature_assumed: /\btemperature\b/.test(line.density_assumed ?? ""),
    pump_Hz: number(line[`${prefix}pump_Hz`]),
    fan_rpm: number(line[`${prefix}fan_rpm`]),
    dose_uL: optional("dose_uL"),
    co_ppm: optional(co),
    co_below_ppm: optional(below),
    found: (line.found || undefined) as Found | undefined,
    suggested_Hz_per_krpm: optional(suggested),
  };
}

/** Not a number unless finite: Number("") would be 0, and Number("Infinity") what it says. */
function number(text: string | undefined): number {
  const value = text ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}
