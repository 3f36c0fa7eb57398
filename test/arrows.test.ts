import { globSync, readFileSync } from "node:fs";
import { dirname, join, normalize, sep } from "node:path";
import { parseSync } from "oxc-parser";
import { expect, test } from "vitest";

/** Which folders each folder may import from, and whether types only. */
const arrows: Record<string, Record<string, "all" | "types">> = {
  model: {},
  db: { model: "all" },
  server: { db: "all", model: "all" },
  // A document is made into HTML when the page is built.
  client: { model: "all", server: "types", docs: "all" },
  "seed-demo": { model: "all" },
};

const WORDS = ["texts", "units.ts", "language.ts"];
const SHARED = [...WORDS, "base", "ui", "app"];

/** The page's own folders, the lowest first: what each may import from besides itself. What people do stands above what is shared. */
const rooms: Record<string, readonly string[]> = {
  "language.ts": [],
  "units.ts": ["language.ts"],
  texts: ["units.ts", "language.ts"],
  base: WORDS,
  ui: [...WORDS, "base"],
  app: [...WORDS, "base", "ui"],
  map: SHARED,
  share: SHARED,
  card: SHARED,
  trip: [...SHARED, "map"],
  start: [...SHARED, "map"],
  "on-site": [...SHARED, "share"],
  logbook: [...SHARED, "share"],
  "my-heater": [...SHARED, "logbook"],
  atlas: [...SHARED, "map", "share"],
  steward: [...SHARED, "share"],
};
/** It brings the rooms together, and nothing imports it. */
const ENTRY = "main.tsx";

interface Import {
  file: string;
  from: string;
  to: string;
  target: string;
  typeOnly: boolean;
}

function projectImports(file: string): Import[] {
  const { module, errors } = parseSync(file, readFileSync(file, "utf8"));
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  const imports = module.staticImports.map((i) => ({
    specifier: i.moduleRequest.value,
    typeOnly: i.entries.length > 0 && i.entries.every((e) => e.isType),
  }));
  const reExports = module.staticExports
    .flatMap((e) => e.entries)
    .filter((e) => e.moduleRequest)
    .map((e) => ({ specifier: e.moduleRequest?.value ?? "", typeOnly: e.isType }));
  const source = readFileSync(file, "utf8");
  const dynamic = module.dynamicImports.map((d) => ({
    specifier: source
      .slice(d.moduleRequest.start, d.moduleRequest.end)
      .replaceAll(/^["'`]|["'`]$/g, ""),
    typeOnly: false,
  }));
  return [...imports, ...reExports, ...dynamic]
    .filter(({ specifier }) => specifier.startsWith("."))
    .map(({ specifier, typeOnly }) => {
      const target = normalize(join(dirname(file), specifier));
      const [from = "", to = ""] = [file, target].map((path) => path.split(sep)[0]);
      return { file, from, to, target, typeOnly };
    });
}

function forbidden({ from, to, typeOnly }: Omit<Import, "target">): boolean {
  if (from === to) return false;
  const allowed = arrows[from]?.[to];
  return !(allowed === "all" || (allowed === "types" && typeOnly));
}

const files = Object.keys(arrows).flatMap((folder) => globSync(`${folder}/**/*.{ts,tsx}`));

test("folders import only along the arrows of the design", () => {
  expect(files.length).toBeGreaterThan(10);
  const broken = files.flatMap(projectImports).filter(forbidden);
  expect(broken.map(({ file, to }) => `${file} → ${to}`)).toEqual([]);
});

test("the page's rooms import only from what is shared and from the rooms below them", () => {
  const room = (path: string) => path.split(sep)[1] ?? "";
  const imports = files
    .filter((file) => file.startsWith("client"))
    .flatMap(projectImports)
    .filter(({ to }) => to === "client");
  expect(new Set(imports.map(({ file }) => room(file))).size).toBeGreaterThan(10);
  const broken = imports.filter(({ file, target }) => {
    const [from, to] = [room(file), room(target)];
    return from !== to && from !== ENTRY && !rooms[from]?.includes(to);
  });
  expect(broken.map(({ file, target }) => `${file} → ${target}`)).toEqual([]);
});

test("a client import of server code, not types, would be caught", () => {
  const edge = { file: "client/x.ts", from: "client", to: "server" };
  expect(forbidden({ ...edge, typeOnly: false })).toBe(true);
  expect(forbidden({ ...edge, typeOnly: true })).toBe(false);
});

test("model is pure: no package that does I/O, no clock, no unseeded randomness", () => {
  const allowedPackages = /^(zod|simple-statistics|kdbush|geokdbush|@stdlib\/)/;
  for (const file of globSync("model/**/*.ts")) {
    const source = readFileSync(file, "utf8");
    const { module } = parseSync(file, source);
    for (const { moduleRequest } of module.staticImports) {
      const name = moduleRequest.value;
      expect(name.startsWith(".") || allowedPackages.test(name), `${file} imports ${name}`).toBe(
        true,
      );
    }
    expect(source, file).not.toMatch(/Math\.random|Date\.now|new Date\(\)|\bfetch\(/);
  }
});
