import { readFile } from "node:fs/promises";
import { parse } from "csv-parse/sync";
import { foldName } from "../../model/geography/fold.ts";

/** A pass, plateau, high road or high camp that the place data do not have. */
export interface Pass {
  name: string;
  /** What else people type for it, in their languages and scripts. */
  otherNames: readonly string[];
  /** ISO 3166-1 code. */
  country: string;
  /** Its state or province: the short name in the United States and Canada, elsewhere a name, or empty. */
  state: string;
  lat: number;
  lon: number;
  elevation_m: number;
  /** Where its elevation was read. */
  source: string;
}

/** The list, one row each; a change of it builds places and elevations anew. */
export const PASSES_FILE = new URL("./passes.csv", import.meta.url);

/** The hand-checked list of passes, plateaus and high camps. */
export async function readPasses(): Promise<Pass[]> {
  const rows: Record<string, string>[] = parse(await readFile(PASSES_FILE, "utf8"), {
    columns: true,
    comment: "#",
    comment_no_infix: true,
  });
  return rows.map(({ name = "", other_names = "", country = "", state = "", ...row }) => ({
    name,
    otherNames: other_names.split("|").filter(Boolean),
    country,
    state,
    lat: Number(row.lat),
    lon: Number(row.lon),
    elevation_m: Number(row.elevation_m),
    source: row.source ?? "",
  }));
}

/** Words for what it is, and those that join them to its name: people leave them out, or put them on the other side. */
const KINDS = new Set(
  "pass passo paso col colle puerto port pas pasul abra la camp hut joch sattel plateau".split(" "),
);
const JOINING = new Set("de del della dello dell di da du des d l la le el the of".split(" "));

/**
 * The same names as they are also typed, folded: without the word for a pass, and with that word on the other side.
 * @example variantsOf(["Passo dello Stelvio"]) // ["stelvio", "passo stelvio", "stelvio passo", "stelvio pass"]
 */
export function variantsOf(names: readonly string[]): string[] {
  const variants = names.flatMap((name) => {
    const words = foldName(name).split(" ");
    const kind = words.find((word, i) => KINDS.has(word) && (word !== "la" || i > 0));
    const core = words.filter((word) => word !== kind && !JOINING.has(word)).join(" ");
    if (!kind || core === "") return [];
    return [core, `${kind} ${core}`, `${core} ${kind}`, `${core} pass`];
  });
  return [...new Set(variants)];
}
