import type { Browser, CDPSession, Page } from "playwright-core";
import { quantileSorted } from "simple-statistics";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "../browser/chromium.ts";
import { openPage } from "../browser/open-page.ts";
import { type RunningAtlas, runAtlas } from "../browser/running-atlas.ts";
import type { Result } from "./run.ts";

/** A telephone's processor, as against this machine's. */
const SLOWER = 4;
/** Half of what a screen of 60 frames a second leaves for one. */
const SLICE_MOST_ms = 8;
const STEPS = 120;
const STEP_ms = 16;
/** Longer than the map glides on and rests. */
const SETTLES_ms = 2000;

/** The page's work per frame while the map of the demo is panned, on a processor slowed down. */
export async function bench(): Promise<Result[]> {
  const atlas = await demoAtlas();
  try {
    const browser = await launchChromium();
    try {
      const { panned, letGo } = await pannedIn(browser, atlas.url);
      return [
        slices("script while the map is panned", panned, SCRIPT),
        slices("layout while the map is panned", panned, LAYOUT),
        slices("script once it is let go, when what came into view is drawn", letGo, SCRIPT),
      ];
    } finally {
      await browser.close();
    }
  } finally {
    await atlas.close();
  }
}

/** What Chromium traces of the page's main thread while its map is panned, and from there until it is drawn again. */
async function pannedIn(
  browser: Browser,
  url: string,
): Promise<{ panned: TraceEvent[]; letGo: TraceEvent[] }> {
  const { page } = await openPage(browser, url);
  const session = await page.context().newCDPSession(page);
  await mapDrawn(page);
  const mouse = await mouseOverMap(page, session);
  // A mouse comes before it presses: only then does the map draw what a drag would bring into view.
  await mouse("mouseMoved", 0);
  await mapDrawn(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  const events = await traced(session, async () => {
    await pan(page, mouse);
    await page.waitForTimeout(SETTLES_ms);
    await mapDrawn(page);
  });
  const end = events.find(({ args }) => args?.data?.type === "pointerup");
  if (!end) throw new Error("The trace does not tell when the map was let go.");
  const main = events.filter(({ pid, tid }) => pid === end.pid && tid === end.tid);
  return {
    panned: main.filter(({ ts }) => ts < end.ts),
    letGo: main.filter(({ ts }) => ts >= end.ts),
  };
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

/**
 * The longest stretch of one kind of work, by the page's own time on the slowed processor. The clock's stands beside it:
 * in it counts the waiting for the drawing in software and for the processor, which others use too.
 */
function slices(what: string, events: readonly TraceEvent[], names: readonly string[]): Result {
  const stretches = events.filter(({ name }) => names.includes(name));
  if (stretches.length === 0) throw new Error(`The trace tells of no ${what}.`);
  const ms = (of: (event: TraceEvent) => number) => {
    const sorted = stretches.map((event) => of(event) / 1000).sort((a, b) => a - b);
    return (share: number) => quantileSorted(sorted, share);
  };
  const clock = ms(({ dur = 0 }) => dur);
  const own = ms(({ tdur = 0 }) => tdur);
  return {
    name: `longest ${what}, ms on a processor ${SLOWER} times slower`,
    ratio: own(1),
    limit: SLICE_MOST_ms,
    better: "lower",
    detail: `${stretches.length} stretches, 95 in 100 within ${own(0.95).toFixed(1)} ms; by the clock longest ${clock(1).toFixed(1)} ms, 95 in 100 within ${clock(0.95).toFixed(1)} ms`,
  };
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

/** Waits for the map; past the test tool's own waiting, whose script in the page listens to the mouse. */
async function mapDrawn(page: Page): Promise<void> {
  for (;;) {
    const drawn = await page.evaluate(
      () => document.querySelector(".map")?.getAttribute("aria-busy") === "false",
    );
    if (drawn) return;
    await page.waitForTimeout(100);
  }
}

type Mouse = (
  type: "mouseMoved" | "mousePressed" | "mouseReleased",
  step: number,
) => Promise<unknown>;

/** A mouse that goes to and fro over the map; past the test tool's own, which runs script in the page. */
async function mouseOverMap(page: Page, session: CDPSession): Promise<Mouse> {
  const box = await page.evaluate(() => {
    const { x, y, width, height } =
      document.querySelector(".map")?.getBoundingClientRect() ?? new DOMRect();
    return { x, y, width, height };
  });
  return (type, step) =>
    session.send("Input.dispatchMouseEvent", {
      type,
      x: box.x + box.width * (0.5 + 0.4 * Math.sin((2 * Math.PI * step) / STEPS)),
      y: box.y + box.height * (0.5 + 0.2 * Math.sin((4 * Math.PI * step) / STEPS)),
      button: "left",
      buttons: type === "mouseMoved" && step > 0 ? 1 : 0,
      clickCount: type === "mouseMoved" ? 0 : 1,
    });
}

/** Drags the map, a small step each frame. */
async function pan(page: Page, mouse: Mouse): Promise<void> {
  await mouse("mousePressed", 0);
  for (let step = 1; step <= STEPS; step++) {
    await mouse("mouseMoved", step);
    await page.waitForTimeout(STEP_ms);
  }
  await mouse("mouseReleased", STEPS);
}

/** An event of Chromium's trace; times in µs, by the clock and on the processor. */
interface TraceEvent {
  name: string;
  pid: number;
  tid: number;
  ts: number;
  dur?: number;
  tdur?: number;
  args?: { data?: { type?: string } };
}

/** What Chromium's trace tells of the page meanwhile. */
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
