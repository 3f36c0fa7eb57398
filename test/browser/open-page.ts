import type { Browser, BrowserContextOptions, Locator, Page } from "playwright-core";
import { t } from "../../client/texts/app.ts";
import type { StartTune } from "../../model/start.ts";
import { WAIT_ms } from "../limits.ts";

export interface OpenPage {
  page: Page;
  /**
   * Closes the page, and fails the test if it complained of anything that is not expected: an error or a warning on the
   * console, a request that failed, an exception that nobody caught, another origin asked.
   */
  close: (expected?: RegExp) => Promise<void>;
}

/** How a page is opened. */
export interface Opening extends BrowserContextOptions {
  /** It gets scripts or a clock of its own, which nothing takes off it again: no other test is given it. */
  alone?: boolean;
}

const USUAL: BrowserContextOptions = {
  // Whatever this machine speaks.
  locale: "en-US",
  deviceScaleFactor: 1,
  // Keeping map and places for later would take most of the time; test/browser/offline.test.ts has the tests of it.
  serviceWorkers: "block",
};

/** Opens a view in a browser with nothing remembered, everything it complains of written down. */
export async function openPage(
  browser: Browser,
  address: string,
  { alone = false, ...options }: Opening = {},
): Promise<OpenPage> {
  const { viewport, colorScheme, contrast, forcedColors, reducedMotion, ...forGood } = options;
  const asked: BrowserContextOptions = { ...USUAL, ...forGood };
  const kind = JSON.stringify(Object.entries(asked).toSorted());
  const page = (!alone && takeRested(browser, kind)) || (await newPage(browser, asked));
  await page.setViewportSize(viewport ?? { width: 1280, height: 800 });
  await page.emulateMedia({
    media: null,
    colorScheme: colorScheme ?? "light",
    contrast: contrast ?? "no-preference",
    forcedColors: forcedColors ?? "none",
    // A button that glides into view cannot be pressed until it rests.
    reducedMotion: reducedMotion ?? "reduce",
  });
  if (!alone) forbidWhatStays(page);
  const complaints = complaintsOf(page);
  if (address !== "about:blank") await page.goto(address);
  let open = true;
  return {
    page,
    close: async (expected) => {
      if (open && (alone || !(await rest(browser, kind, page)))) await page.context().close();
      open = false;
      const unexpected = complaints.filter((text) => !expected?.test(text));
      if (unexpected.length > 0) throw new Error(`The page complained:\n${unexpected.join("\n")}`);
    },
  };
}

/** A script or a clock put upon a page would be found there by the next test that is given it. */
function forbidWhatStays(page: Page): void {
  const refuse = () => {
    throw new Error("What stays on a page needs a page of its own: open it with alone: true.");
  };
  Object.assign(page, { addInitScript: refuse });
  Object.assign(page.clock, { install: refuse, setFixedTime: refuse });
}

async function newPage(browser: Browser, options: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext(options);
  await context.addInitScript(() =>
    addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
      console.error(`against the page's policy: ${violatedDirective} ${blockedURI}`),
    ),
  );
  const page = await context.newPage();
  page.setDefaultTimeout(WAIT_ms);
  return page;
}

/** Pages at rest, by what no page can change once it is open: a new one costs four times as much as a reload. */
const rested = new WeakMap<Browser, Map<string, Page>>();
const RESTED = 6;

function takeRested(browser: Browser, kind: string): Page | undefined {
  const page = rested.get(browser)?.get(kind);
  rested.get(browser)?.delete(kind);
  return page;
}

/** Takes all off a page that its test put there, for another test to have it. False where that cannot be. */
async function rest(browser: Browser, kind: string, page: Page): Promise<boolean> {
  const context = page.context();
  const others = rested.get(browser) ?? new Map<string, Page>();
  rested.set(browser, others);
  if (context.pages().length > 1 || others.has(kind)) return false;
  try {
    await Promise.all([page.unrouteAll({ behavior: "ignoreErrors" }), context.setOffline(false)]);
    const { origin } = new URL(page.url());
    await leave(page);
    await page.evaluate(() => sessionStorage.clear());
    const session = await context.newCDPSession(page);
    await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "all" });
    await session.detach();
    await page.mouse.move(0, 0);
  } catch {
    return false;
  }
  page.removeAllListeners();
  others.set(kind, page);
  const [longest, unwanted] = [...others][0] ?? [];
  if (others.size > RESTED && longest !== undefined) {
    others.delete(longest);
    await unwanted?.context().close();
  }
  return true;
}

/**
 * Leaves the page for a picture of the same atlas: what is opened next begins anew. The picture has the headers of a page;
 * without them the browser would start a process for each of the two.
 */
export async function leave(page: Page): Promise<void> {
  await page.goto(new URL("/icon.svg", page.url()).href);
}

/** What every page complains of that is cut off from its atlas. */
export const CUT_OFF = /Failed to load resource: net::/;

/** What a page complains of from now on. The first origin it asks is its own. */
function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on("console", (message) => {
    // A picture opened by itself names no icon, and so the browser looks for one.
    if (message.location().url.endsWith("/favicon.ico")) return;
    if (["error", "warning"].includes(message.type()) && !isDriverNoise(message.text()))
      complaints.push(`${message.type()}: ${message.text()}`);
  });
  page.on("pageerror", (error) => complaints.push(`not caught: ${error.message}`));
  let own: string | undefined;
  page.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    if (!protocol.startsWith("http")) return;
    own ??= origin;
    if (origin !== own) complaints.push(`asked another origin: ${request.url()}`);
  });
  return complaints;
}

/** Drawing in software reads pixels slowly, and says so when a screenshot is taken; so does a blocked service worker. */
const isDriverNoise = (text: string): boolean =>
  /GPU stall due to ReadPixels|GL Driver Message|Service Worker registration blocked/.test(text);

/** The browser's and this process's exponentials may differ in the last bit. */
const sameDigits = (rate: number) => Number(rate.toPrecision(12));

/** The unrounded pump rates on screen, low end and high end, Hz to 12 digits. */
export async function shownRates(page: Page): Promise<[low: number, high: number]> {
  await page.locator(".end output").first().waitFor();
  const rates = await page
    .locator(".end output")
    .evaluateAll((outputs) =>
      outputs.map((output) => Number((output as HTMLElement).dataset.value)),
    );
  return rates.map(sameDigits) as [number, number];
}

/** What the atlas answers to the same question over its API, Hz to 12 digits. */
export async function askedRates(
  get: <T>(path: string) => Promise<T>,
  question: Record<string, string | number>,
): Promise<[low: number, high: number]> {
  const query = new URLSearchParams(
    Object.entries(question).map(([name, value]) => [name, String(value)]),
  );
  const { low, high } = await get<StartTune>(`/start?${query}`);
  return [sameDigits(low.pump_Hz_exact), sameDigits(high.pump_Hz_exact)];
}

/** What a page says, as its sources have it: with an ordinary space where figure and unit are kept on one line. */
export const spaced = (said: string | null): string => (said ?? "").replaceAll("\u00a0", " ");

/** What a part of the page says, spaced as its sources are. */
export async function shownText(part: Locator): Promise<string> {
  return spaced(await part.textContent());
}

/** The same of several parts. */
export async function shownTexts(parts: Locator): Promise<string[]> {
  return (await parts.allTextContents()).map(spaced);
}

export const field = (page: Page, name: string): Locator => page.locator(`[name="${name}"]`);

/** Unfolds place and night, which a phone's first screen shows in one row. */
export async function openSite(page: Page): Promise<void> {
  await page.locator('.site-row button[aria-expanded="false"]').first().click();
  await field(page, "place").waitFor();
}

/** Unfolds what the start view asks beyond place, elevation and temperature. */
export async function openFiner(page: Page): Promise<void> {
  await page.locator(".finer > summary").click();
}

/** Opens a trip's stop by its column of the drawing, the first as 0. */
export async function openStop(page: Page, stop: number): Promise<void> {
  const column = page.locator(`[data-stop-button="${stop}"]`);
  if ((await column.getAttribute("aria-expanded")) !== "true") await column.click();
  await field(page, `stops.${stop}.elevation_m`).waitFor();
}

/** Unfolds what a trip asks of its heater, its limits and its nights. */
export async function openTripHeater(page: Page): Promise<void> {
  await page.locator(".trip-heater > summary").click();
}

/** Types a place and takes the first suggestion with the keyboard. */
export async function choosePlace(page: Page, typed: string, listed: RegExp): Promise<void> {
  if (await page.locator('.site-row button[aria-expanded="false"]').count()) await openSite(page);
  await page.getByLabel(t.site.place, { exact: true }).first().fill(typed);
  const found = page.getByRole("listbox").getByRole("option");
  await found.filter({ hasText: listed }).first().waitFor();
  const [first] = await shownTexts(found);
  if (!first || !listed.test(first)) throw new Error(`First in the list: ${first}`);
  await page.keyboard.press("Enter");
}

/** Waits until what was pressed or typed has reached all of the page: effects come a frame and a task later. */
export function rendered(page: Page): Promise<void> {
  return page.evaluate(
    () =>
      new Promise((next) =>
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(next))),
      ),
  );
}

/** Brings the map near the screen, for it is drawn only there, and waits until it has all it shows. */
export async function mapDrawn(page: Page): Promise<void> {
  await rendered(page);
  await page.locator(".map").scrollIntoViewIfNeeded();
  await page.locator('.map[aria-busy="false"]').waitFor();
}

/** Where a point lies on the map's canvas before anyone has moved it, CSS pixels. */
export async function pointOnMap(
  page: Page,
  lat: number,
  lon: number,
): Promise<{ x: number; y: number }> {
  const box = await page.locator(".map .maplibregl-canvas").boundingBox();
  if (!box) throw new Error("There is no map.");
  const [centreLon, centreLat, zoom] = [10, 25, 1];
  const world = 512 * 2 ** zoom;
  const north = (deg: number) => Math.asinh(Math.tan((deg * Math.PI) / 180)) / (2 * Math.PI);
  return {
    x: box.x + box.width / 2 + ((lon - centreLon) / 360) * world,
    y: box.y + box.height / 2 - (north(lat) - north(centreLat)) * world,
  };
}

/** What lies beyond the screen's edges, px on any side. */
export async function outOfSight(page: Page, selector: string): Promise<number> {
  const box = await page.locator(selector).boundingBox();
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  if (!box) return Number.POSITIVE_INFINITY;
  return Math.max(0, -box.x, -box.y, box.x + box.width - width, box.y + box.height - height);
}
