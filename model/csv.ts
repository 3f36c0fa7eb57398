/**
 * Comma-separated values by RFC 4180: a header, then rows; nothing that a reader of such files would stumble over, and no
 * text that a spreadsheet would take for a formula. Every such file of the page and of the atlas is written here.
 */

export type Cell = string | number | null | undefined;

/** What is missing is empty. Numbers come in full, so that what was computed from them can be computed again to the last digit. */
export function csvLine(cells: readonly Cell[]): string {
  return `${cells.map(field).join(",")}\r\n`;
}

export function csvOf(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [header, ...rows].map(csvLine).join("");
}

/** With what a spreadsheet's formula begins, blanks that it may skip included. */
const FORMULA = /^[=+\-@\t\r\n]/;

/** An apostrophe before what is a formula, or would lose one when it is read back. */
function marked(text: string): string {
  return FORMULA.test(text) || unmarked(text) !== text ? `'${text}` : text;
}

/** A text as it was before it was written: an apostrophe that only a formula or another apostrophe can follow is not its own. */
export function unmarked(text: string): string {
  return /^'[=+\-@\t\r\n']/.test(text) ? text.slice(1) : text;
}

function field(cell: Cell): string {
  const text = typeof cell === "string" ? marked(cell) : String(cell ?? "");
  // Some readers drop blanks at the edges, others part at semicolons or tabs.
  return /[",;\t\r\n]|^ | $/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
