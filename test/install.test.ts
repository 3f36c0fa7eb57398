import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import packageJson from "../package.json" with { type: "json" };

// What somebody sees first: npm ci.

const OWN_NODE = new URL("../server/own-node.mjs", import.meta.url);

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "hypsotune-install-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

function npm(
  args: string[],
  cwd: string,
): { said: string; complained: string; status: number | null } {
  // What this run was told to say, or not to, is not for the one that is tried.
  const { npm_config_loglevel: _, ...env } = process.env;
  const { stdout, stderr, status } = spawnSync("npm", args, { cwd, env, encoding: "utf8" });
  return { said: stdout, complained: stderr, status };
}

test("the Node that the project brings along is new enough for every package: npm, run on it, warns of none", () => {
  for (const file of ["package.json", "package-lock.json", ".npmrc"])
    copyFileSync(file, join(folder, file));
  const { complained, status } = npm(
    [
      "install",
      "--package-lock-only",
      "--dry-run",
      "--offline",
      "--ignore-scripts",
      "--loglevel=warn",
    ],
    folder,
  );
  expect(complained).not.toContain("EBADENGINE");
  expect(status).toBe(0);
});

test("the lockfile says of every package where it comes from and what its bytes are", () => {
  const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8"));
  const { "": _project, ...installed } = packages;
  expect(Object.keys(installed).length).toBeGreaterThan(100);
  for (const [folder, { resolved, integrity }] of Object.entries<Record<string, string>>(
    installed,
  )) {
    expect(resolved, folder).toMatch(/^https:\/\//);
    expect(integrity, folder).toMatch(/^sha512-/);
  }
});

test("npm on an older Node than some package asks for says nothing of it, unless asked; errors it does say", () => {
  copyFileSync(".npmrc", join(folder, ".npmrc"));
  mkdirSync(join(folder, "part"));
  const needs = { version: "1.0.0", engines: { node: ">=1000" } };
  writeFileSync(join(folder, "part", "package.json"), JSON.stringify({ name: "part", ...needs }));
  const whole = { name: "whole", version: "1.0.0", dependencies: { part: "file:part" } };
  writeFileSync(join(folder, "package.json"), JSON.stringify(whole));
  expect(npm(["install", "--offline"], folder)).toMatchObject({ complained: "", status: 0 });
  rmSync(join(folder, "node_modules"), { recursive: true });
  expect(npm(["ci", "--offline", "--loglevel=warn"], folder).complained).toContain("EBADENGINE");
  rmSync(join(folder, "package-lock.json"));
  const { complained, status } = npm(["ci", "--offline"], folder);
  expect(complained).toContain("npm error");
  expect(status).not.toBe(0);
});

test("after the installation one sentence tells on which Node everything runs", () => {
  const said = (npms: string) =>
    spawnSync(process.execPath, [OWN_NODE.pathname], {
      encoding: "utf8",
      env: { ...process.env, npm_config_user_agent: `npm/11.19.1 node/${npms} linux x64` },
    });
  expect(said("v20.20.2")).toMatchObject({
    stdout: `Installed. Everything here runs on Node ${process.version}, which is in node_modules. Yours, v20.20.2, runs npm and is left as it is.\n`,
    status: 0,
  });
  expect(said(process.version).stdout).not.toContain("Yours");
  expect(packageJson.scripts.postinstall).toBe("node server/own-node.mjs");
});

test("if that Node is not there, the installation fails and says what to do", async () => {
  const { ownNode } = await import(OWN_NODE.href);
  const { good, sentence } = ownNode("v20.20.2", packageJson.devDependencies.node);
  expect(good).toBe(false);
  expect(sentence).toContain("npm rebuild node");
});

test("a CHROMIUM that is not there is said before the browser tests look for it one by one", () => {
  const { status, stderr } = spawnSync(process.execPath, ["test/browser/chromium.ts"], {
    encoding: "utf8",
    env: { ...process.env, CHROMIUM: "/nowhere/chromium" },
  });
  expect(stderr.trim()).toBe("CHROMIUM is set to /nowhere/chromium, and no such file is there.");
  expect(status).toBe(1);
});
