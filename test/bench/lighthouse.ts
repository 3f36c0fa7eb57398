import { createServer } from "node:net";
import lighthouse from "lighthouse";
import { median } from "simple-statistics";
import { launchChromium } from "../browser/chromium.ts";
import { demoAtlas } from "./pan.ts";
import type { Result } from "./result.ts";

const RUNS = 3;
const TRIES = 3;
/** What is asked of each of Lighthouse's scores, out of 100. */
const LEAST = { performance: 95, accessibility: 100, "best-practices": 100, seo: 95 };

/** Lighthouse's scores of the built page with the demo, as on a mid-range telephone: its own default setting. */
export async function bench(): Promise<Result[]> {
  const atlas = await demoAtlas();
  const runs: Record<string, number>[] = [];
  try {
    for (let run = 0; run < RUNS; run++) runs.push(await firstVisit(atlas.url));
  } finally {
    await atlas.close();
  }
  return Object.entries(LEAST).map(([id, limit]) => {
    const reached = runs.map((run) => run[id] ?? 0);
    return {
      name: `Lighthouse, mobile: ${id}`,
      ratio: median(reached),
      limit,
      better: "higher",
      detail: `${reached.map((score) => score.toFixed(0)).join(", ")} out of 100`,
    };
  });
}

/** Scores in a browser of its own: one that has been there remembers the fit. */
async function firstVisit(url: string): Promise<Record<string, number>> {
  const port = await freePort();
  const browser = await launchChromium({ debuggedAt: port });
  try {
    return await scores(url, port);
  } finally {
    await browser.close();
  }
}

async function scores(url: string, port: number): Promise<Record<string, number>> {
  for (let tries = 1; ; tries++) {
    const found = await lighthouse(url, { port, logLevel: "error", output: "json" });
    if (found && !found.lhr.runtimeError) {
      return Object.fromEntries(
        Object.entries(found.lhr.categories).map(([id, { score }]) => [id, 100 * (score ?? 0)]),
      );
    }
    // Now and then a browser on a busy machine records no start of the page.
    if (tries === TRIES) throw new Error(found?.lhr.runtimeError?.message);
  }
}

async function freePort(): Promise<number> {
  const probe = createServer();
  await new Promise<void>((open) => probe.listen(0, "localhost", open));
  const address = probe.address();
  await new Promise((closed) => probe.close(closed));
  if (!address || typeof address === "string") throw new Error("No free port.");
  return address.port;
}
