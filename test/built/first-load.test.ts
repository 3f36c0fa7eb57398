import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { LANGUAGES, type Language } from "../../client/language.ts";

/** What Vite writes of a build: chunks, what they import at once, and what later. */
type Manifest = Record<
  string,
  { file: string; isEntry?: boolean; imports?: string[]; dynamicImports?: string[] }
>;

const manifest: Manifest = JSON.parse(readFileSync("dist/.vite/manifest.json", "utf8"));

/** A chunk with everything it imports at once. */
function withImports(name: string, found = new Set<string>()): Set<string> {
  if (found.has(name)) return found;
  found.add(name);
  for (const next of manifest[name]?.imports ?? []) withImports(next, found);
  return found;
}

const source = (name: string) => readFileSync(`dist/${manifest[name]?.file}`, "utf8");
const page = withImports(
  Object.keys(manifest).find((name) => manifest[name]?.isEntry) ?? "no entry",
);
/** The page waits for the words of its language. */
const firstIn = (language: Language) => withImports(`texts/${language}/app.ts`, new Set(page));

test.each(LANGUAGES)(
  "JavaScript before the first answer stays within 60 KB gzipped: %s",
  (language) => {
    const first = [...firstIn(language)];
    expect(first).toContain(`texts/${language}/app.ts`);
    const bytes = first.reduce((sum, name) => sum + gzipSync(source(name)).length, 0);
    console.log(
      `JavaScript before the first answer, ${language}: ${(bytes / 1000).toFixed(1)} KB gzipped`,
    );
    expect(bytes).toBeGreaterThan(10_000);
    expect(bytes).toBeLessThanOrEqual(60_000);
  },
);

test("the alarm's screen comes with it", () => {
  expect([...firstIn("en")].map(source).join("\n")).toContain("alarm-screen");
});

test("schema, map, charts and cells come after it", () => {
  const text = [...firstIn("en")].map(source).join("\n");
  for (const [what, sign] of [
    ["zod", "_zod."],
    ["maplibre-gl", "maplibregl"],
    ["@observablehq/plot", "plot-"],
    ["h3-js", "latLngToCell"],
  ] as const) {
    expect(text.includes(sign), what).toBe(false);
  }
});

test("what follows Start's answer by itself brings neither schemas nor another view's words", () => {
  const parts = [
    "start/answer-more.tsx",
    "start/finer-questions.tsx",
    "my-heater/my-heater-line.tsx",
  ];
  for (const part of [...parts, "ui/site-question.tsx", "app/offline/offline.ts"]) {
    const chunks = [...withImports(part)];
    expect(chunks.length).toBeGreaterThan(1);
    expect(chunks.map(source).join("\n").includes("_zod."), part).toBe(false);
    expect(chunks.filter((name) => /texts\/\w+\/(trip|logbook|share)/.test(name))).toEqual([]);
  }
});
