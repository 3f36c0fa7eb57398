import { mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Says what a folder was built from; written last. */
const STAMP = "format";

/** Whether a folder holds what this stamp stands for, whole. */
export async function isBuilt(dir: string, stamp: string): Promise<boolean> {
  return (await readFile(join(dir, STAMP), "utf8").catch(() => "")) === stamp;
}

/**
 * Builds a folder unless it is there under this stamp. Built beside and moved into place whole: nobody reads half of
 * it, and of two builders at once either's stays.
 * @param build fills the folder it is given
 * @returns whether it had to build
 */
export async function buildOnce(
  dir: string,
  stamp: string,
  build: (draft: string) => Promise<void>,
): Promise<boolean> {
  if (await isBuilt(dir, stamp)) return false;
  await mkdir(dirname(dir), { recursive: true });
  const prefix = join(dirname(dir), `.${basename(dir)}-`);
  await sweepDrafts(prefix);
  const beside = await mkdtemp(prefix);
  try {
    const draft = join(beside, "new");
    await mkdir(draft);
    await build(draft);
    await writeFile(join(draft, STAMP), stamp);
    await moveIntoPlace(draft, dir, stamp);
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
  return true;
}

/** A draft untouched for so long was left by a builder that was stopped; a build takes less than a minute. */
const DRAFT_LASTS_ms = 3_600_000;

async function sweepDrafts(prefix: string): Promise<void> {
  for (const name of await readdir(dirname(prefix))) {
    if (!name.startsWith(basename(prefix))) continue;
    const draft = join(dirname(prefix), name);
    const { mtimeMs } = await stat(draft).catch(() => ({ mtimeMs: Number.POSITIVE_INFINITY }));
    if (Date.now() - mtimeMs < DRAFT_LASTS_ms) continue;
    await rm(draft, { recursive: true, force: true });
  }
}

/** Another builder may move its own folder in between our two steps: then look again. */
const ATTEMPTS = 5;

async function moveIntoPlace(draft: string, dir: string, stamp: string): Promise<void> {
  for (let attempt = 1; !(await isBuilt(dir, stamp)); attempt++) {
    try {
      await rename(dir, join(dirname(draft), `old-${attempt}`)).catch(unlessGone);
      await rename(draft, dir);
      // Whoever looks again now may see nothing there: another builder may be between its own two steps.
      return;
    } catch (error) {
      const taken = ["ENOTEMPTY", "EEXIST", "EPERM"].includes((error as { code: string }).code);
      if (!taken || attempt >= ATTEMPTS) throw error;
    }
  }
}

function unlessGone(error: { code?: string }): void {
  if (error.code !== "ENOENT") throw error;
}
