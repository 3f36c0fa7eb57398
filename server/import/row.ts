import { tidy } from "../../model/screen/reason.ts";
import { fieldErrors, type Tune, tuneSchema } from "../../model/tune.ts";
import type { MappedField, Mapping } from "./mapping.ts";
import type { SheetRow, Spreadsheet } from "./spreadsheet.ts";

/** A row as a tune, or why it is none, each sentence with its column. */
export type RowRead = { tune: Tune; who: string } | { sentences: string[] };

/**
 * One row as a tune, judged by the schema that judges every tune.
 * @param keyOf a contributor's key by what the spreadsheet calls them; of "" where it tells nobody apart
 */
export async function readRow(
  { columns, delimiter }: Pick<Spreadsheet, "columns" | "delimiter">,
  { fields, contributor }: Mapping,
  { values }: SheetRow,
  keyOf: (who: string) => Promise<string>,
): Promise<RowRead> {
  const beyond = values.slice(columns.length).filter(Boolean);
  if (beyond.length > 0) {
    return {
      sentences: [
        `It has more values than the header has columns ("${beyond[0]}"). Put a value that holds a separator in quotation marks.`,
      ],
    };
  }
  const who = contributor === undefined ? "" : nameOf(values[contributor] ?? "");
  const sentences: string[] = [];
  if (contributor !== undefined && !who) {
    sentences.push(`"${columns[contributor]}" is empty: fill in whose tune it is.`);
  }
  const draft: Draft = { heater: {}, site: {}, low: {}, high: {}, contributor: await keyOf(who) };
  const unread = new Set<string>();
  for (const field of fields) {
    const text = values[field.at] ?? "";
    if (text === "") continue;
    const error = put(draft, field, text, delimiter !== ",");
    if (!error) continue;
    sentences.push(`"${field.column}": ${error}`);
    unread.add(field.path);
  }
  const result = tuneSchema.safeParse(draft, { reportInput: true });
  if (result.success && sentences.length === 0) return { tune: result.data, who };
  const errors = result.success ? [] : fieldErrors(result.error);
  for (const { field, message } of errors) {
    // Said already, in the words of the spreadsheet.
    if (!unread.has(field)) sentences.push(withColumn(fields, field, message));
  }
  return { sentences };
}

/** A sentence with the spreadsheet's own name for what it speaks of. */
export function withColumn(fields: readonly MappedField[], path: string, sentence: string): string {
  const column = fields.find((field) => field.path === path)?.column;
  return column === undefined ? sentence : `"${column}": ${sentence}`;
}

/** The same person, however the name was typed: two of one name have one vote, never one person two. */
const nameOf = (text: string) =>
  text.normalize("NFKC").toLowerCase().replaceAll(/\s+/g, " ").trim();

type Draft = Record<string, unknown>;

/** Puts a cell's value where it belongs in a tune; answers what is wrong with it, if something is. */
function put(draft: Draft, field: MappedField, text: string, isDecimalComma: boolean) {
  const below = /\.co_ppm$/.test(field.path) && /^<\s*(.+)$/.exec(text)?.[1];
  const path = below ? field.path.replace("co_ppm", "co_below_ppm") : field.path;
  const value = cellValue(field, below || text, isDecimalComma);
  if (typeof value === "object") return value.error;
  const [first = "", second] = path.split(".");
  if (second === undefined) draft[first] = value;
  else draft[first] = { ...(draft[first] as Draft | undefined), [second]: value };
  return undefined;
}

function cellValue(
  field: MappedField,
  text: string,
  isDecimalComma: boolean,
): number | string | { error: string } {
  if (field.is === "word") return text.toLowerCase();
  if (field.is === "month") return monthOf(text);
  const value = numberOf(text, isDecimalComma);
  return typeof value === "number" ? tidy(field.toSi?.(value) ?? value) : value;
}

/** "1,2" is 1.2. What may as well be thousands is not guessed: 2,240, and 2.240 where commas are decimal ones. */
function numberOf(text: string, isDecimalComma: boolean): number | { error: string } {
  // As spreadsheet programs write a minus.
  const plain = text.replace(/^[−–]/, "-");
  const three = isDecimalComma ? /^-?[1-9]\d{0,2}[.,]\d{3}$/ : /^-?[1-9]\d{0,2},\d{3}$/;
  if (three.test(plain)) {
    const [thousands, decimals] = [plain.replace(/[.,]/, ""), `${plain.replace(",", ".")}0`];
    return {
      error: `"${text}" may be ${thousands} or ${Number(decimals)}. Write it as ${thousands} or as ${decimals}.`,
    };
  }
  const value = plain.replace(/^(-?\d+),(\d+)$/, "$1.$2");
  if (/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d{1,3})?$/i.test(value)) return Number(value);
  return { error: `"${text}" is not a number. Write the digits alone, without a unit.` };
}

/** A day is cut to its month, for no more is kept. */
function monthOf(text: string): string | { error: string } {
  const [, year, month] = /^(\d{4})[-/](\d{1,2})(?:[-/]\d{1,2})?(?:[T ].*)?$/.exec(text) ?? [];
  if (year && month) return `${year}-${month.padStart(2, "0")}`;
  const [, dotted, ofYear] = /^(?:\d{1,2}\.\s?)?(\d{1,2})\.\s?(\d{4})$/.exec(text) ?? [];
  if (dotted && ofYear) return `${ofYear}-${dotted.padStart(2, "0")}`;
  return { error: `"${text}" is no month. Write it as 2026-10, 2026-10-14 or 14.10.2026.` };
}
