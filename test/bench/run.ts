import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

/** One measured ratio with the limit it is held to. */
export interface Result {
  name: string;
  ratio: number;
  limit: number;
  better: "higher" | "lower";
  detail: string;
}

interface Chunk {
  file: string;
  imports?: string[];
}

/** Gzipped kilobytes of the scripts loaded before the first answer: the entry and what it imports at once. */
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
  const sizes = [...needed].map(
    (key) => gzipSync(readFileSync(`dist/${manifest[key]?.file}`)).length,
  );
  const kB = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  return {
    name: "JavaScript before the first answer, kB gzipped",
    ratio: kB,
    limit: 90,
    better: "lower",
    detail: `${needed.size} files of dist/`,
  };
}

if (import.meta.main) {
  const robustFit = await import("./fit.ts");
  const start = await import("./start.ts");
  const submit = await import("./submit.ts");
  const results = [
    ...(await robustFit.bench()),
    ...(await start.bench()),
    ...(await submit.bench()),
    firstAnswerScripts(),
  ];
  for (const { name, ratio, limit, better, detail } of results) {
    const kept = better === "higher" ? ratio >= limit : ratio <= limit;
    const bound = better === "higher" ? "at least" : "at most";
    console.log(
      `${kept ? "kept  " : "MISSED"} ${name}: ${ratio.toFixed(2)} (${bound} ${limit}; ${detail})`,
    );
  }
  mkdirSync("data", { recursive: true });
  writeFileSync("data/bench.json", JSON.stringify(results, null, 2));
}
