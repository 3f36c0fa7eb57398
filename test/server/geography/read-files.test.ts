import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readFrom } from "../../../server/geography/read-files.ts";

test("a file that is not built is told from one that is there and cannot be read", async () => {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-geography-"));
  const read = readFrom(folder);
  expect(await read("grid.bin")).toBeNull();
  // A folder in its place: an error of reading that can be had everywhere.
  mkdirSync(join(folder, "grid.bin"));
  await expect(read("grid.bin")).rejects.toThrow(/EISDIR/);
  rmSync(folder, { recursive: true });
});
