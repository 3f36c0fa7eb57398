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

interface Import {
  file: string;
  from: string;
  to: string;
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
    .map(({ specifier, typeOnly }) => ({
      file,
      from: file.split(sep)[0] ?? "",
      to: normalize(join(dirname(file), specifier)).split(sep)[0] ?? "",
      typeOnly,
    }));
}

function forbidden({ from, to, typeOnly }: Import): boolean {
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
