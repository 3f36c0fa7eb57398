import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { isFine } from "./licences.ts";

// Whether what is installed may be used and is known to be sound: npm run check:packages. Needs the network, so no test calls it.

interface Locked {
  version: string;
  license?: string;
  dev?: boolean;
}

const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
  packages: Record<string, Locked>;
};
const said: string[] = [];

function licenceOf(folder: string, { license }: Locked): string {
  if (license) return license;
  const file = join(folder, "package.json");
  const kept = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).license : undefined;
  return typeof kept === "string" ? kept : (kept?.type ?? "");
}

for (const [folder, locked] of Object.entries(packages)) {
  if (folder === "") continue;
  const licence = licenceOf(folder, locked);
  if (!isFine(licence, locked.dev))
    said.push(`${folder} ${locked.version}: its licence is ${licence || "not said"}`);
}
console.log(`Licences: ${Object.keys(packages).length - 1} packages, ${said.length} to look at.`);

const { stdout, stderr } = spawnSync("npm", ["audit", "--json"], { encoding: "utf8" });
const audit = (() => {
  try {
    return JSON.parse(stdout);
  } catch {
    return undefined;
  }
})();
if (audit?.vulnerabilities === undefined) {
  console.log(`Audit: COULD NOT RUN (${(audit?.message ?? stderr).trim()}). Nothing is known.`);
  process.exitCode = 2;
} else {
  const found = Object.values<{ name: string; severity: string }>(audit.vulnerabilities);
  console.log(`Audit: ${found.length} packages with known weaknesses.`);
  for (const { name, severity } of found) said.push(`${name}: ${severity}; see npm audit`);
}
for (const line of said) console.log(`  ${line}`);
if (said.length > 0) process.exitCode = 1;
