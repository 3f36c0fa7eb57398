import { FIELDS, type Field, NEEDED } from "./fields.ts";
import { ImportError, readText } from "./spreadsheet.ts";

/** The name by which a mapping calls the column that tells contributors apart. */
const CONTRIBUTOR = "contributor";

/** Which column of a spreadsheet holds what. */
export interface Mapping {
  fields: readonly MappedField[];
  /** Number of the column that tells contributors apart; undefined where all rows are one contributor's. */
  contributor: number | undefined;
}

export interface MappedField extends Field {
  name: string;
  /** Number of its column, and what the spreadsheet calls it. */
  at: number;
  column: string;
}

/** @param options each "our_field=Their column" */
export function readMapOptions(options: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    options.map((option) => {
      const [, field, column] = /^\s*([^=]+?)\s*=\s*(.+?)\s*$/s.exec(option) ?? [];
      if (field && column) return [field, column];
      throw new ImportError(
        `--map "${option}" cannot be read. Write it as --map "elevation_ft=Their column".`,
      );
    }),
  );
}

/** A file that says the same as JSON: {"elevation_ft": "Their column"}. */
export function readMappingFile(file: string): Record<string, string> {
  let value: unknown;
  try {
    value = JSON.parse(readText(file));
  } catch (error) {
    if (error instanceof ImportError) throw error;
    throw new ImportError(`${file} is not valid JSON (${(error as Error).message}).`);
  }
  const isMapping =
    typeof value === "object" &&
    value !== null &&
    !Array.isArray(value) &&
    Object.values(value).every((column) => typeof column === "string");
  if (isMapping) return value as Record<string, string>;
  throw new ImportError(
    `${file} must be one JSON object from our fields to their columns, like {"elevation_ft": "Elevation"}.`,
  );
}

/**
 * Finds the columns. One that has the name of a field is that field, unless the field, or another unit of it, is given another one.
 * @param given columns by field
 * @throws ImportError naming every field or column that is not there
 */
export function mappingOf(
  given: Readonly<Record<string, string>>,
  columns: readonly string[],
): Mapping {
  const { [CONTRIBUTOR]: contributor, ...asked } = given;
  const unknown = Object.keys(asked).filter((name) => !Object.hasOwn(FIELDS, name));
  if (unknown.length > 0) {
    throw new ImportError(
      `No field is called ${unknown.join(", ")}. Fields: ${[...Object.keys(FIELDS), CONTRIBUTOR].join(", ")}.`,
    );
  }
  const paths = new Set(Object.keys(asked).map((name) => fieldOf(name).path));
  const byName = Object.keys(FIELDS).filter(
    (name) => columns.includes(name) && !paths.has(fieldOf(name).path),
  );
  const wanted = { ...asked, ...Object.fromEntries(byName.map((name) => [name, name])) };
  const fields = Object.entries(wanted).map(([name, column]) => ({
    ...fieldOf(name),
    ...{ name, column, at: numberOf(column, columns) },
  }));
  requireOneEach(fields);
  requireNeeded(fields, columns);
  return {
    fields,
    contributor: contributor === undefined ? undefined : numberOf(contributor, columns),
  };
}

const fieldOf = (name: string) => FIELDS[name] as Field;

const listed = (columns: readonly string[]) =>
  columns
    .filter(Boolean)
    .map((column) => `"${column}"`)
    .join(", ");

function numberOf(column: string, columns: readonly string[]): number {
  const [at, again] = columns.flatMap((name, i) => (name === column ? [i] : []));
  if (at === undefined) {
    throw new ImportError(
      `The file has no column "${column}". Its columns are ${listed(columns)}.`,
    );
  }
  if (again === undefined) return at;
  throw new ImportError(
    `The file has two columns "${column}" (numbers ${at + 1} and ${again + 1}). Rename one of them.`,
  );
}

function requireOneEach(fields: readonly MappedField[]): void {
  for (const same of Map.groupBy(fields, ({ path }) => path).values()) {
    if (same.length === 1) continue;
    throw new ImportError(
      `${same.map(({ name }) => name).join(" and ")} are the same in two units. Leave one of them out.`,
    );
  }
}

function requireNeeded(fields: readonly MappedField[], columns: readonly string[]): void {
  const names = fields.map(({ name }) => name);
  const missing = NEEDED.filter((any) => !any.some((name) => names.includes(name)));
  if (missing.length === 0) return;
  const [example = ""] = missing[0] ?? [];
  throw new ImportError(
    `No column is given for ${missing.map((any) => any.join(" or ")).join("; ")}. Name each, like --map "${example}=Their column". The file's columns are ${listed(columns)}.`,
  );
}
