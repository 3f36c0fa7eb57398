import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { parse } from "csv-parse/sync";
import { type Bands, bandsAt } from "../model/fit/bands.ts";
import { fitAtlas } from "../model/fit/fit.ts";
import {
  ENDS,
  type End,
  type FitRow,
  type GroupFit,
  type RejectedRow,
} from "../model/fit/group.ts";
import { placeOf } from "./cells.ts";

const USAGE =
  "npm run --silent fit -- FILE.csv [--heat 5] [--end low] [--at 0.80,1.00,1.225] [--json]";

/** Something the caller can mend; printed alone, without a stack. */
class CommandError extends Error {}

interface Options {
  file: string;
  heat_kW: number | undefined;
  end: End | undefined;
  densities: number[];
  json: boolean;
}

/** The same fit as the atlas publishes, from a file: coefficients, bands, and every row set aside. */
function main(): void {
  const options = readOptions();
  const { rows, unreadable } = readRows(options.file);
  const wanted = (r: { heat_kW: number; end: End }) =>
    (options.heat_kW === undefined || r.heat_kW === options.heat_kW) &&
    (options.end === undefined || r.end === options.end);
  const { groups, rejected } = fitAtlas(rows.filter(wanted));
  const aside = [...unreadable.filter(wanted), ...rejected];
  const answers = groups.map((group) => describe(group, aside, options.densities));
  if (options.json) console.log(JSON.stringify({ groups: answers.map((a) => a.json) }, null, 1));
  else for (const { text } of answers) console.log(text);
}

function readOptions(): Options {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        heat: { type: "string" },
        end: { type: "string" },
        at: { type: "string", default: "0.80,1.00,1.225" },
        json: { type: "boolean", default: false },
      },
    });
    const [file, ...more] = positionals;
    if (!file || more.length > 0) throw new CommandError("Name one CSV file.");
    const end = ENDS.find((e) => e === values.end);
    if (values.end !== undefined && !end) throw new CommandError("--end is low or high.");
    return {
      file,
      heat_kW: values.heat === undefined ? undefined : positive(values.heat, "--heat"),
      end,
      densities: values.at.split(",").map((text) => positive(text, "--at")),
      json: values.json,
    };
  } catch (error) {
    throw new CommandError(`${(error as Error).message}\nUsage: ${USAGE}`);
  }
}

function positive(text: string, name: string): number {
  const value = text.trim() === "" ? Number.NaN : Number(text);
  if (Number.isFinite(value) && value > 0) return value;
  throw new CommandError(`${name} takes positive numbers, not "${text}".`);
}

/** Columns of one end's own file; `cell` and `co_ppm` may be left out. */
const SIMPLE = ["contributor", "heat_kW", "end", "density_kg_m3", "pump_Hz", "fan_rpm"];
/** Columns of the atlas's export, both ends in a row. */
const EXPORT = [
  "contributor",
  "heat_kW",
  "density_kg_m3",
  ...ENDS.flatMap((end) => [`${end}_pump_Hz`, `${end}_fan_rpm`]),
];

type Line = Record<string, string>;

function readRows(file: string): { rows: FitRow[]; unreadable: RejectedRow[] } {
  const lines = readLines(file);
  const columns = Object.keys(lines[0] ?? {});
  const has = (names: string[]) => names.every((name) => columns.includes(name));
  const isExport = has(EXPORT);
  if (lines.length > 0 && !isExport && !has(SIMPLE)) {
    const missing = SIMPLE.filter((name) => !columns.includes(name));
    throw new CommandError(
      `${file} lacks the columns ${missing.join(", ")}. It needs ${SIMPLE.join(",")} (cell optional), comma-separated with a header, or the columns of the atlas's export.`,
    );
  }
  const rows: FitRow[] = [];
  const unreadable: RejectedRow[] = [];
  lines.forEach((line, i) => {
    for (const end of isExport ? ENDS : [line.end as End]) {
      const row = toRow(line, i + 1, end, isExport ? `${end}_` : "");
      if ("reason" in row) unreadable.push(row);
      else rows.push(row);
    }
  });
  return { rows, unreadable };
}

function readLines(file: string): Line[] {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch (error) {
    throw new CommandError(`${file} cannot be read (${(error as NodeJS.ErrnoException).code}).`);
  }
  try {
    return parse(text, { columns: true, bom: true, skip_empty_lines: true, trim: true });
  } catch (error) {
    throw new CommandError(
      `${file} is not comma-separated with a header: ${(error as Error).message}`,
    );
  }
}

/** A row of the file as the fit sees it, or why it cannot be. Rows count from 1 below the header. */
function toRow(line: Line, row: number, end: End, prefix: string): FitRow | RejectedRow {
  const heat_kW = Number(line.heat_kW);
  const numbers = {
    heat_kW,
    density_kg_m3: Number(line.density_kg_m3),
    pump_Hz: Number(line[`${prefix}pump_Hz`]),
    fan_rpm: Number(line[`${prefix}fan_rpm`]),
  };
  const reject = (reason: string): RejectedRow => ({ row, heat_kW, end, reason });
  if (!ENDS.includes(end)) return reject(`end must be low or high, not "${end}".`);
  if (!line.contributor) return reject("contributor is empty.");
  for (const [name, value] of Object.entries(numbers)) {
    if (!(Number.isFinite(value) && value > 0)) {
      const column = name === "pump_Hz" || name === "fan_rpm" ? prefix + name : name;
      return reject(`${column} must be a positive number, not "${line[column] ?? ""}".`);
    }
  }
  const place = line.place || (line.cell && placeOf(line.cell)) || undefined;
  return { row, contributor: line.contributor, cell: place, end, ...numbers };
}

function describe(group: GroupFit, aside: RejectedRow[], densities: number[]) {
  const { heat_kW, end, intercept, slope, covariance, spread, contributors, tunes } = group;
  const rejected = aside.filter((r) => r.heat_kW === heat_kW && r.end === end);
  const at = densities.map((density_kg_m3) => ({
    density_kg_m3,
    ...bandsAt(group, density_kg_m3),
  }));
  return {
    json: {
      heat_kW,
      end,
      intercept,
      slope,
      covariance,
      spread,
      contributors,
      tunes,
      rejected: rejected.map(({ row, reason }) => ({ row, reason })),
      at,
    },
    text: [
      `${heat_kW} kW, ${end} end: ${tunes} tunes by ${contributors} contributors`,
      `  ln(Hz per 1,000 rpm) = ${intercept} + ${slope} · ln(density/1.225)`,
      `  spread between heaters ${(spread * 100).toFixed(1)} %`,
      ...at.map(bandLine),
      ...rejected.map(({ row, reason }) => `  row ${row} set aside: ${reason}`),
      "",
    ].join("\n"),
  };
}

function bandLine({
  density_kg_m3,
  pump_Hz_per_krpm,
  mean_bands,
  new_heater_bands,
}: Bands & { density_kg_m3: number }): string {
  const range = (bands: Bands["mean_bands"]) => {
    const band = bands.find(({ level }) => level === 0.95);
    return `${band?.lower.toFixed(3)}–${band?.upper.toFixed(3)}`;
  };
  return `  at ${density_kg_m3} kg/m³: ${pump_Hz_per_krpm.toFixed(3)} Hz per 1,000 rpm; 95 %: mean ${range(mean_bands)}, new heater ${range(new_heater_bands)}`;
}

try {
  main();
} catch (error) {
  if (!(error instanceof CommandError)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
