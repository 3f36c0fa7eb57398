import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { gzipSync } from "node:zlib";
import type { Result } from "./result.ts";

interface Chunk {
  file: string;
  imports?: string[];
}

/** Gzipped kilobytes of the scripts loaded before the first answer: the entry, what it imports at once, and its words. */
function firstAnswerScripts(): Result {
  const manifest: Record<string, Chunk> = JSON.parse(
    readFileSync("dist/.vite/manifest.json", "utf8"),
  );
  const needed = new Set<string>();
  const visit = (key: string) => {
    if (needed.has(key)) return;
    needed.add(key);
    for (const next of manifest[key]?.imports ?? []) visit(next);
  };
  visit("index.html");
  visit("texts/en/app.ts");
  const sizes = [...needed].map(
    (key) => gzipSync(readFileSync(`dist/${manifest[key]?.file}`)).length,
  );
  const kB = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  return {
    name: "JavaScript before the first answer, kB gzipped",
    ratio: kB,
    limit: 60,
    better: "lower",
    detail: `${needed.size} files of dist/`,
  };
}

/** What is measured, by the names that `--only` takes. */
const PARTS: Record<string, () => Promise<Result[]>> = {
  fit: async () => (await import("./fit.ts")).bench(),
  start: async () => (await import("./start.ts")).bench(),
  submit: async () => (await import("./submit.ts")).bench(),
  scale: async () => (await import("./scale.ts")).bench(),
  edge: async () => (await import("./edge.ts")).bench(),
  scripts: async () => [firstAnswerScripts()],
  page: async () => (await import("./lighthouse.ts")).bench(),
  pan: async () => (await import("./pan.ts")).bench(),
};
const REPORT = "data/bench.json";

function keptBefore(): Result[] {
  return existsSync(REPORT) ? JSON.parse(readFileSync(REPORT, "utf8")) : [];
}

function told({ name, ratio, limit, better, detail }: Result): string {
  const figure = `${name}: ${ratio.toFixed(2)}`;
  if (limit === undefined) return `       ${figure} (${detail})`;
  const kept = better === "higher" ? ratio >= limit : ratio <= limit;
  const bound = better === "higher" ? "at least" : "at most";
  return `${kept ? "kept  " : "MISSED"} ${figure} (${bound} ${limit}; ${detail})`;
}

if (import.meta.main) {
  const { only } = parseArgs({ options: { only: { type: "string", multiple: true } } }).values;
  const unknown = only?.filter((part) => !(part in PARTS)) ?? [];
  if (unknown.length > 0) {
    console.error(
      `No part is called ${unknown.join(", ")}. --only ${Object.keys(PARTS).join("|")}`,
    );
    process.exit(1);
  }
  // What is not measured this time stands as it was.
  const results = new Map(only ? keptBefore().map((result) => [result.name, result]) : []);
  for (const part of only ?? Object.keys(PARTS)) {
    for (const result of (await PARTS[part]?.()) ?? []) {
      console.log(told(result));
      results.set(result.name, result);
    }
  }
  mkdirSync("data", { recursive: true });
  writeFileSync(REPORT, JSON.stringify([...results.values()], null, 2));
}
