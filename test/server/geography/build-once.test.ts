import { mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { afterEach, beforeEach, expect, test } from "vitest";
import { buildOnce } from "../../../server/geography/build-once.ts";
import { packageVersion } from "../../../server/geography/packages.ts";

let parent: string;
let dir: string;

beforeEach(async () => {
  parent = await mkdtemp(join(tmpdir(), "build-once-"));
  dir = join(parent, "deep", "built");
});

afterEach(() => rm(parent, { recursive: true }));

const writer = (text: string) => async (draft: string) => {
  await setTimeout(5);
  await writeFile(join(draft, "part"), text);
};
const part = () => readFile(join(dir, "part"), "utf8");

test("builds what is missing, once, and again under another stamp", async () => {
  expect(await buildOnce(dir, "one", writer("a"))).toBe(true);
  expect(await buildOnce(dir, "one", writer("b"))).toBe(false);
  expect(await part()).toBe("a");
  expect(await buildOnce(dir, "two", writer("c"))).toBe(true);
  expect(await part()).toBe("c");
  expect(await readdir(join(parent, "deep"))).toEqual(["built"]);
});

test("several builders at once leave one whole folder and nothing beside it", async () => {
  const builders = ["a", "b", "c", "d", "e", "f"];
  // They meet in a different order each time.
  for (let round = 0; round < 25; round++) {
    await Promise.all(builders.map((text) => buildOnce(dir, `round ${round}`, writer(text))));
    expect(builders).toContain(await part());
    expect((await readdir(dir)).sort()).toEqual(["format", "part"]);
    expect(await readdir(join(parent, "deep"))).toEqual(["built"]);
  }
});

test("what a stopped builder left is swept, what one at work has is not", async () => {
  const [stopped, working] = ["stopped", "working"].map((n) => join(parent, "deep", `.built-${n}`));
  for (const draft of [stopped, working])
    await mkdir(join(draft as string, "new"), { recursive: true });
  const yesterday = Date.now() / 1000 - 86_400;
  await utimes(stopped as string, yesterday, yesterday);
  await buildOnce(dir, "one", writer("a"));
  expect((await readdir(join(parent, "deep"))).sort()).toEqual([".built-working", "built"]);
});

test("a build that fails leaves the old folder as it was", async () => {
  await buildOnce(dir, "one", writer("a"));
  const failing = async () => {
    throw new Error("no disk");
  };
  await expect(buildOnce(dir, "two", failing)).rejects.toThrow("no disk");
  expect(await part()).toBe("a");
  expect(await readdir(join(parent, "deep"))).toEqual(["built"]);
});

test("a data package that is not installed is named, with the remedy", () => {
  const missing = "no-such-package" as Parameters<typeof packageVersion>[0];
  expect(() => packageVersion(missing)).toThrow(/no-such-package is not installed: run npm ci/);
});
