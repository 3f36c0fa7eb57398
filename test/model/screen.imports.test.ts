import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";

/** The form screens while typing, before anything else is loaded: screening must stay light. */

const MODEL = join(import.meta.dirname, "../../model");

/** Everything a file imports at run time, through and through; type imports are erased. */
function runtimeImports(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const source = readFileSync(file, "utf8");
  for (const [, clause = "", from = ""] of source.matchAll(
    /^(?:import|export)\s([^;]*?)\sfrom\s"([^"]+)"/gms,
  )) {
    if (clause.startsWith("type ")) continue;
    if (from.startsWith(".")) runtimeImports(join(dirname(file), from), seen);
    else seen.add(from);
  }
  return seen;
}

test("screening needs no library at run time but a logarithm, and only a handful of the model's files", () => {
  const imports = [...runtimeImports(join(MODEL, "screen.ts"))];
  const ownFiles = imports.filter((name) => name.startsWith("/"));
  expect(imports.filter((name) => !name.startsWith("/")).sort()).toEqual([
    "@stdlib/math-base-special-ln",
  ]);
  expect(ownFiles.map((name) => name.slice(MODEL.length + 1)).sort()).toEqual([
    "air.ts",
    "end.ts",
    "fit/settings.ts",
    "heater.ts",
    "numerics/finite.ts",
    "numerics/ln-exp.ts",
    "rounding.ts",
    "screen.ts",
    "screen/bounds.ts",
    "screen/reason.ts",
    "screen/settings.ts",
    "screen/site.ts",
    "screen/slips.ts",
    "screen/usual.ts",
    "units.ts",
  ]);
});

test("the check sees a library where there is one", () => {
  expect([...runtimeImports(join(MODEL, "tune.ts"))]).toContain("zod");
});
