import { execFile } from "node:child_process";
import { existsSync, globSync, statSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { ensureGeography } from "./geography/build.ts";

/** Builds what a start needs and is not there or older than its sources: places and elevations, and the page. */
export async function buildMissing(dirs: { geographyDir: string; pageDir: string }): Promise<void> {
  const { geographyDir, pageDir } = dirs;
  await Promise.all([ensureGeography(geographyDir, { log: console.log }), buildPage(pageDir)]);
}

async function buildPage(dir: string): Promise<void> {
  if (isFresh(join(dir, "index.html"))) return;
  console.log("Building the page …");
  await promisify(execFile)(
    process.execPath,
    ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"],
    // A test runner's own NODE_ENV would build another page than people get.
    { env: { ...process.env, NODE_ENV: "production" } },
  ).catch(({ stderr }) => {
    throw new Error(`The page could not be built:\n${stderr}`);
  });
}

const SOURCES = [
  "client/**/*",
  "model/**/*.ts",
  "docs/*",
  "markdown-page.ts",
  "vite.config.ts",
  "package-lock.json",
];

function isFresh(built: string): boolean {
  if (!existsSync(built)) return false;
  const made = statSync(built).mtimeMs;
  return SOURCES.flatMap((pattern) => globSync(pattern)).every((f) => statSync(f).mtimeMs <= made);
}
