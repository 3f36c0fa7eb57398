import { parseArgs } from "node:util";
import { ENDS, type End } from "../model/end.ts";

const USAGE =
  "npm run --silent fit -- FILE.csv [--heat 5] [--end low] [--at 0.80,1.00,1.225] [--json]";

/** Something the caller can mend; printed alone, without a stack. */
export class CommandError extends Error {}

/** What the fit command was asked. */
export interface FitOptions {
  file: string;
  /** Which groups to print; all rows make the fit whatever is printed, since classes inform each other. */
  heat_kW: number | undefined;
  end: End | undefined;
  /** Densities to print bands at, kg/m³. */
  densities: number[];
  json: boolean;
}

/** @throws CommandError with the usage when the command cannot be understood */
export function readOptions(): FitOptions {
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
