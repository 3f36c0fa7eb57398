import type { Browser, CDPSession, Page } from "playwright-core";
import { quantileSorted } from "simple-statistics";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "../browser/chromium.ts";
import { mapDrawn, openPage } from "../browser/open-page.ts";
import { type RunningAtlas, runAtlas } from "../browser/running-atlas.ts";
import type { Result } from "./run.ts";

/** A telephone's processor, as against this machine's. */
const SLOWER = 4;
/** Half of what a screen of 60 frames a second leaves for one. */
const SLICE_MOST_ms = 8;
const STEPS = 120;
const STEP_ms = 16;

/** The page's work per frame while the map of the demo is panned, on a processor slowed down. */
export async function bench(): Promise<Result[]> {
  const atlas = await demoAtlas();
  try {
    const browser = await launchChromium();
    try {
      const events = await pannedIn(browser, atlas.url);
      return [slices("script", events, SCRIPT), slices("layout", events, LAYOUT)];
    } finally {
      await browser.close();
    }
  } finally {
    await atlas.close();
  }
}

/** What Chromium traces of the page while its map is panned. */
async function pannedIn(browser: Browser, url: string): Promise<TraceEvent[]> {
  const { page } = await openPage(browser, url);
  await mapDrawn(page);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  return traced(session, () => pan(page));
}

/** What the trace calls a stretch of script, and of layout. */
const SCRIPT = [
  "FireAnimationFrame",
  "FunctionCall",
  "EvaluateScript",
  "RunMicrotasks",
  "TimerFire",
];
const LAYOUT = ["UpdateLayoutTree", "Layout", "PrePaint"];

/** The longest stretch of one kind of work while the map moved; most frames' beside it. */
function slices(what: string, events: readonly TraceEvent[], names: readonly string[]): Result {
  const page = busiest(events);
  const ms = events
    .filter(({ name, tid, pid }) => names.includes(name) && `${pid}:${tid}` === page)
    .map(({ dur = 0 }) => dur / 1000)
    .sort((a, b) => a - b);
  const of = (share: number) => (ms.length > 0 ? quantileSorted(ms, share) : 0);
  return {
    name: `longest ${what} while the map is panned, ms on a processor ${SLOWER} times slower`,
    ratio: of(1),
    limit: SLICE_MOST_ms,
    better: "lower",
    detail: `${ms.length} stretches over ${STEPS} steps, half within ${of(0.5).toFixed(1)} ms, 95 in 100 within ${of(0.95).toFixed(1)} ms`,
  };
}

/** The thread that drew frames: the page's main one. */
function busiest(events: readonly TraceEvent[]): string | undefined {
  const frames = new Map<string, number>();
  for (const { name, pid, tid } of events) {
    if (name !== "FireAnimationFrame") continue;
    frames.set(`${pid}:${tid}`, 1 + (frames.get(`${pid}:${tid}`) ?? 0));
  }
  return [...frames].sort((a, b) => b[1] - a[1])[0]?.[0];
}

/** The demo as `npm run demo` shows it, on a port of its own. */
export async function demoAtlas(): Promise<RunningAtlas> {
  const atlas = await runAtlas(["--demo"]);
  try {
    await atlas.load(scenario().map(({ tune }) => tune));
  } catch (error) {
    await atlas.close();
    throw error;
  }
  return atlas;
}

/** Drags the map to and fro, a small step each frame. */
async function pan(page: Page): Promise<void> {
  const box = await page.locator(".map canvas").boundingBox();
  if (!box) throw new Error("There is no map.");
  const at = (step: number) => ({
    x: box.x + box.width * (0.5 + 0.4 * Math.sin((2 * Math.PI * step) / STEPS)),
    y: box.y + box.height * (0.5 + 0.2 * Math.sin((4 * Math.PI * step) / STEPS)),
  });
  await page.mouse.move(at(0).x, at(0).y);
  await page.mouse.down();
  for (let step = 1; step <= STEPS; step++) {
    await page.mouse.move(at(step).x, at(step).y);
    await page.waitForTimeout(STEP_ms);
  }
  await page.mouse.up();
}

/** An event of Chromium's trace; times in µs. */
interface TraceEvent {
  name: string;
  pid: number;
  tid: number;
  dur?: number;
}

/** What Chromium's trace tells of the page's main thread meanwhile. */
async function traced(session: CDPSession, work: () => Promise<void>): Promise<TraceEvent[]> {
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) =>
    events.push(...(value as unknown as TraceEvent[])),
  );
  await session.send("Tracing.start", {
    traceConfig: { includedCategories: ["devtools.timeline", "v8"] },
  });
  await work();
  const complete = new Promise((done) => session.once("Tracing.tracingComplete", done));
  await session.send("Tracing.end");
  await complete;
  return events;
}
