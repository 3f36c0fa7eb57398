import { CsvError, parse } from "csv-parse/browser/esm/sync";
import type { z } from "zod";
import { unmarked } from "../../model/csv.ts";
import { ENTRY_KINDS, type Logbook } from "../app/records/entry.ts";
import { entrySchema, errorsOf, heaterSchema } from "../app/records/schema.ts";
import { Refused } from "../base/refused.ts";
import { logbookWords } from "../texts/logbook.ts";
import { COLUMNS } from "./columns.ts";
import { photoOf } from "./photo.ts";
import { FORMAT, VERSION } from "./write-file.ts";

const words = logbookWords.files;
export const LARGEST_FILE_bytes = 200_000_000;

/**
 * The logbook in a file somebody brings: JSON or CSV, told apart by how it begins. All of it is read or nothing.
 * @throws Refused with the reason, and the line where there is one
 */
export function logbookOfText(text: string): Logbook {
  const start = text.replace(/^\uFEFF/, "").trimStart();
  if (start === "") throw new Refused(words.empty);
  const found = /^[{[]/.test(start) ? ofJson(text.replace(/^\uFEFF/, "")) : ofCsv(text);
  const seen = new Set<string>();
  const once = ({ id, line }: { id: string; line: number | undefined }) => {
    if (seen.has(id)) throw new Refused(words.twice(id), line);
    seen.add(id);
  };
  const heaters = found.heaters.map(({ record, line }) => {
    const heater = checked(heaterSchema, record, line);
    once({ id: heater.id, line });
    return heater;
  });
  const entries = found.entries.map(({ record, line }) => {
    const entry = checked(entrySchema, record, line);
    once({ id: entry.id, line });
    return entry;
  });
  return { heaters, entries };
}

/** A record as the file has it, and where it begins. */
interface Found {
  record: unknown;
  line: number | undefined;
}

function checked<T>(schema: z.ZodType<T>, record: unknown, line: number | undefined): T {
  const parsed = schema.safeParse(record);
  if (parsed.success) return parsed.data;
  const [[field, message] = ["", logbookWords.check.text]] = errorsOf(parsed.error);
  throw new Refused(field ? words.field(field, message) : message, line);
}

function ofJson(text: string): { heaters: Found[]; entries: Found[] } {
  let file: Record<string, unknown>;
  try {
    file = JSON.parse(text);
  } catch (error) {
    throw new Refused(words.notJson, lineOfError(text, error as Error));
  }
  if (file?.format !== FORMAT) throw new Refused(words.notLogbook);
  if (typeof file.version === "number" && file.version > VERSION) throw new Refused(words.newer);
  const { heaters, entries } = file;
  if (!Array.isArray(heaters) || !Array.isArray(entries)) throw new Refused(words.notLogbook);
  const found = (record: unknown): Found => ({ record, line: lineOf(text, record) });
  return { heaters: heaters.map(found), entries: entries.map((one) => found(withPhoto(one))) };
}

/** A photo that cannot be read stays what it is, for the schema to refuse. */
function withPhoto(record: unknown): unknown {
  if (typeof record !== "object" || record === null || !("photo" in record)) return record;
  return { ...record, photo: photoOf(record.photo) ?? record.photo };
}

function lineOf(text: string, record: unknown): number | undefined {
  const id = (record as { id?: unknown } | null)?.id;
  if (typeof id !== "string") return undefined;
  const written = [`"id":${JSON.stringify(id)}`, `"id": ${JSON.stringify(id)}`];
  const at = text.split("\n").findIndex((line) => written.some((one) => line.includes(one)));
  return at < 0 ? undefined : at + 1;
}

/** Engines say where in their own words: "line 3" or "position 120". */
function lineOfError(text: string, { message }: Error): number | undefined {
  const line = /line (\d+)/.exec(message)?.[1];
  if (line) return Number(line);
  const position = /position (\d+)/.exec(message)?.[1];
  return position ? lineAt(text, Number(position)) : undefined;
}

function lineAt(text: string, index: number): number {
  return text.slice(0, index).split("\n").length;
}

function ofCsv(text: string): { heaters: Found[]; entries: Found[] } {
  const [firstLine = ""] = text.split(/\r?\n/, 1);
  const delimiter = [";", "\t"].find((mark) => firstLine.includes(mark)) ?? ",";
  const [header, ...rows] = linesOf(text, delimiter);
  const names = header?.record ?? [];
  if (!["kind", "id", "changed_at"].every((name) => names.includes(name))) {
    throw new Refused(words.head, 1);
  }
  const found = { heaters: [] as Found[], entries: [] as Found[] };
  for (const { record, line } of rows) {
    const cells = new Map(names.map((name, i) => [name, record[i] ?? ""]));
    const kind = cells.get("kind") ?? "";
    const is = kind === "heater" ? "heater" : "entry";
    if (is === "entry" && !ENTRY_KINDS.some((one) => one === kind)) {
      throw new Refused(words.kind, line);
    }
    const fields = fieldsOf(cells, is, delimiter);
    if (is === "heater") found.heaters.push({ record: fields, line });
    else found.entries.push({ record: { kind, ...fields }, line });
  }
  return found;
}

function fieldsOf(cells: Map<string, string>, is: "heater" | "entry", delimiter: string): object {
  const fields: Record<string, unknown> = {};
  for (const { name, path, of, text } of COLUMNS) {
    const cell = cells.get(name) ?? "";
    if (cell === "" || (of !== is && of !== "both")) continue;
    let part = fields;
    for (const step of path.slice(0, -1)) {
      part[step] ??= {};
      part = part[step] as Record<string, unknown>;
    }
    part[path.at(-1) as string] = text ? unmarked(cell) : numberOf(cell, delimiter);
  }
  return fields;
}

/** Spreadsheets that part fields by semicolons write decimal commas. What is no number stays text, to be refused. */
function numberOf(cell: string, delimiter: string): number | string {
  const decimal = delimiter === "," ? cell : cell.replace(",", ".");
  // Programs that write for readers put a true minus sign.
  const plain = decimal.replace(/^\u2212/, "-");
  const number = Number(plain);
  return plain.trim() !== "" && Number.isFinite(number) ? number : cell;
}

function linesOf(text: string, delimiter: string): { record: string[]; line: number }[] {
  try {
    const found = parse(text, {
      bom: true,
      delimiter,
      info: true,
      skip_empty_lines: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return found.map(({ record, info }) => ({ record, line: info.lines }));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new Refused(words.badCsv, (error as CsvError & { lines?: number }).lines);
  }
}
