import type { CDPSession, Page } from "playwright-core";
import { quantileSorted } from "simple-statistics";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "../browser/chromium.ts";
import { openPage } from "../browser/open-page.ts";
import { type RunningAtlas, runAtlas } from "../browser/running-atlas.ts";
import type { Result } from "./result.ts";

/** A telephone's processor, as against this machine's. */
const SLOWER = 4;
const STEPS = 120;
const STEP_ms = 16;

/** The page's work per frame while the map of the demo is panned, on a processor slowed down: no figure is asked of it. */
export async function bench(): Promise<Result[]> {
  const atlas = await demoAtlas();
  const browser = await launchChromium();
  try {
    const { page } = await openPage(browser, atlas.url);
    const session = await page.context().newCDPSession(page);
    await mapDrawn(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
    return [perFrame(await traced(session, () => pan(page, session)))];
  } finally {
    await browser.close();
    await atlas.close();
  }
}

/**
 * The processor's time of the page's main thread, frame by frame. The clock is left out: in it counts the waiting for
 * the drawing in software and for the processor, which others use too.
 */
function perFrame(events: readonly TraceEvent[]): Result {
  const frames = events.filter(({ name }) => name === "FireAnimationFrame");
  const [first] = frames;
  if (!first) throw new Error("The trace tells of no frame.");
  const tasks = events.filter(
    ({ name, pid, tid }) => name === "RunTask" && pid === first.pid && tid === first.tid,
  );
  const starts = frames.map(({ ts }) => ts).sort((a, b) => a - b);
  const work_ms = new Array<number>(starts.length).fill(0);
  for (const { ts, tdur = 0 } of tasks) {
    const frame = starts.findLastIndex((start) => start <= ts);
    work_ms[Math.max(0, frame)] = (work_ms[Math.max(0, frame)] ?? 0) + tdur / 1000;
  }
  work_ms.sort((a, b) => a - b);
  const ms = (share: number) => quantileSorted(work_ms, share);
  return {
    name: `page's work per frame while the map is panned, ms on a processor ${SLOWER} times slower`,
    ratio: ms(0.5),
    better: "lower",
    detail: `${work_ms.length} frames, 95 in 100 within ${ms(0.95).toFixed(1)} ms, longest ${ms(1).toFixed(1)} ms`,
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

/** Drags the map to and fro, a small step each frame; past the test tool's own mouse, which runs script in the page. */
async function pan(page: Page, session: CDPSession): Promise<void> {
  const box = await page.locator(".map").boundingBox();
  if (!box) throw new Error("There is no map.");
  const mouse = (type: "mouseMoved" | "mousePressed" | "mouseReleased", step: number) =>
    session.send("Input.dispatchMouseEvent", {
      type,
      x: box.x + box.width * (0.5 + 0.4 * Math.sin((2 * Math.PI * step) / STEPS)),
      y: box.y + box.height * (0.5 + 0.2 * Math.sin((4 * Math.PI * step) / STEPS)),
      button: "left",
      buttons: type === "mouseReleased" ? 0 : 1,
      clickCount: type === "mouseMoved" ? 0 : 1,
    });
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
  tdur?: number;
}

/** What Chromium's trace tells of the page meanwhile. */
async function traced(session: CDPSession, work: () => Promise<void>): Promise<TraceEvent[]> {
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) =>
    events.push(...(value as unknown as TraceEvent[])),
  );
  await session.send("Tracing.start", {
    traceConfig: {
      includedCategories: ["devtools.timeline", "disabled-by-default-devtools.timeline"],
    },
  });
  await work();
  const complete = new Promise((done) => session.once("Tracing.tracingComplete", done));
  await session.send("Tracing.end");
  await complete;
  return events;
}
