import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { ReadFile } from "./geography.ts";

/** Reads the built files from a folder. */
export function readFrom(dir: string): ReadFile {
  return (path) => readFile(join(dir, path)).catch(() => null);
}
