import { createHash } from "node:crypto";
import { globSync, readFileSync } from "node:fs";

/** SHA-256 of all files that the fit is made from: a report of another model is stale. */
export function modelHash(): string {
  const hash = createHash("sha256");
  for (const file of globSync("model/{fit/**,numerics/**,air.ts,own-heater.ts}").sort()) {
    if (file.endsWith(".ts")) hash.update(file).update(readFileSync(file));
  }
  return hash.digest("hex");
}
