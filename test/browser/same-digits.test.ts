import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { expect, test } from "vitest";
import { exp, ln, power } from "../../model/numerics/ln-exp.ts";
import { seeded } from "../model/fit/simulated-crowd.ts";
import { plainBrowser } from "./shared.ts";

/** Arguments over all that a fit meets, and beyond. */
function argumentsOfAllSizes(): number[] {
  const { uniform } = seeded(5);
  return Array.from({ length: 20_000 }, (_, i) => (i % 2 ? 2 : 1e-6 + 300 * (i % 3)) * uniform());
}

test("ln, exp and powers of the model have the same digits here and in Chromium", async () => {
  const outDir = mkdtempSync(join(tmpdir(), "hypsotune-digits-"));
  await build({
    configFile: false,
    logLevel: "silent",
    build: {
      outDir,
      lib: {
        entry: "model/numerics/ln-exp.ts",
        name: "lnExp",
        formats: ["iife"],
        fileName: () => "ln-exp.js",
      },
    },
  });
  const script = readFileSync(join(outDir, "ln-exp.js"), "utf8");
  const browser = await plainBrowser();
  const page = await browser.newPage();
  await page.addScriptTag({ content: script });
  const xs = argumentsOfAllSizes();
  const there = await page.evaluate((all) => {
    const { lnExp } = globalThis as unknown as {
      lnExp: { [name: string]: (...x: number[]) => number };
    };
    return all.map((x) => [lnExp.ln?.(x), lnExp.exp?.(-x), lnExp.power?.(x, 1.7)]);
  }, xs);
  expect(there).toEqual(xs.map((x) => [ln(x), exp(-x), power(x, 1.7)]));
  await page.close();
});

test("they are the functions, to the last digit or two", () => {
  for (const x of argumentsOfAllSizes()) {
    const close = (a: number, b: number) => Math.abs(a - b) <= 4e-16 * Math.abs(b);
    expect(close(ln(x), Math.log(x)), `ln ${x}`).toBe(true);
    expect(close(exp(-x), Math.exp(-x)), `exp ${-x}`).toBe(true);
    expect(Math.abs(power(x, 0.3) / x ** 0.3 - 1), `power ${x}`).toBeLessThan(1e-14);
  }
  expect([ln(1), exp(0), power(7, 0), power(1, 3.3)]).toEqual([0, 1, 1, 1]);
});
