import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileTrouble } from "../../db/disk.ts";
import type { ReadFile } from "./geography.ts";

/** Reads the built files from a folder. @throws StorageFailing where a file is there and the disk does not give it */
export function readFrom(dir: string): ReadFile {
  return (path) =>
    readFile(join(dir, path)).catch((error: NodeJS.ErrnoException) => {
      if (error.code === "ENOENT") return null;
      throw fileTrouble(error) ?? error;
    });
}
