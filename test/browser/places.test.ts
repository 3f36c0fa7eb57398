import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { cardWords } from "../../client/texts/card.ts";
import { dataWords } from "../../client/texts/data.ts";
import { trip as tripWords } from "../../client/texts/trip.ts";
import { field, openPage, openStop, rendered } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { goTo, LAPTOP, PHONE, shown, VIEWS } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const places = Object.values(t.places);
const { pages } = dataWords;

/** Every address that ever led to a view: what stands there, the place that it belongs to, and the page's title. */
const ADDRESSES: [address: string, seen: string, place: string, title: string][] = [
  ["", "#tune", t.places.start, t.name],
  ["#/", "#tune", t.places.start, t.name],
  ["#/atlas", "#tune", t.places.start, t.name],
  ["#/nowhere", "#tune", t.places.start, t.name],
  ["#/trip", "#trip-stops", t.places.trip, `${t.places.trip} · ${t.name}`],
  ["#/onsite", "#onsite", t.places.onsite, `${t.places.onsite} · ${t.name}`],
  ["#/logbook", ".logbook", t.places.logbook, `${t.places.logbook} · ${t.name}`],
  ["#/card", "#card", t.places.start, `${cardWords.title} · ${t.name}`],
  ["#/map", "#map", t.places.atlas, `${pages.map} · ${t.places.atlas} · ${t.name}`],
  ["#/scaling", "#scaling", t.places.atlas, `${pages.scaling} · ${t.places.atlas} · ${t.name}`],
  ["#/share", "#share", t.places.atlas, `${pages.share} · ${t.places.atlas} · ${t.name}`],
  ["#/data", "#data", t.places.atlas, `${pages.download} · ${t.places.atlas} · ${t.name}`],
  ["#/data/else", "#data", t.places.atlas, `${pages.download} · ${t.places.atlas} · ${t.name}`],
  ["#/data/bands", "#bands", t.places.atlas, `${pages.bands} · ${t.places.atlas} · ${t.name}`],
  ["#/data/method", ".method", t.places.atlas, `${pages.method} · ${t.places.atlas} · ${t.name}`],
  ["#/data/style", ".tints", t.places.atlas, `${pages.style} · ${t.places.atlas} · ${t.name}`],
];

test("five places; every address leads where it led, opened anew or by a link", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  for (const [address, seen, place, title] of ADDRESSES) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, address);
    await page.locator(seen).first().waitFor();
    await expect.poll(() => page.title(), { message: address }).toBe(title);
    await page.reload();
    await page.locator(seen).first().waitFor();
    await expect.poll(() => page.title(), { message: address }).toBe(title);
    await expect.poll(() => page.locator(".places a").allTextContents()).toEqual(places);
    await expect
      .poll(() => page.locator(".places [aria-current]").allTextContents())
      .toEqual([place]);
  }
  await close();
});

test("an address changed in the moment a view is first drawn is followed", async () => {
  const { page, close } = await openPage(browser, atlas.url, { alone: true });
  const [from, pages, to] = ["#/data", "nav.pages", "#/scaling"];
  await page.addInitScript(
    ([from, pages, to]) =>
      new MutationObserver(() => {
        if (location.hash === from && document.querySelector(pages)) location.hash = to;
      }).observe(document, { childList: true, subtree: true }),
    [from, pages, to] as const,
  );
  await page.goto(`${atlas.url}/${from}`);
  await page.reload();
  await page.locator("#scaling").waitFor();
  await close();
});

/** How far something reaches below the top of the bar, px. */
async function under(page: Page, selector: string): Promise<number> {
  const [box, bar] = await Promise.all([
    page.locator(selector).last().boundingBox(),
    page.locator(".places").boundingBox(),
  ]);
  if (!box || !bar) throw new Error(`Not on the screen: ${selector} or the bar.`);
  return box.y + box.height - bar.y;
}

test("on a phone the places are a bar at the foot, as wide as the screen, each a target for a thumb; on a laptop at the head", async () => {
  const { page, close } = await openPage(browser, atlas.url, { viewport: PHONE });
  await shown(page, "start");
  const bar = await page.locator(".places").boundingBox();
  expect(bar).toMatchObject({ x: 0, width: PHONE.width });
  expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBe(PHONE.height);
  for (const link of await page.locator(".places a").all()) {
    const { width = 0, height = 0 } = (await link.boundingBox()) ?? {};
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(48);
  }
  await page.setViewportSize(LAPTOP);
  expect((await page.locator(".places").boundingBox())?.y).toBeLessThan(80);
  await close();
});

/** Looks at what has the focus before each key that moves it on: asking after each press would take most of the time. */
function watchFocus(): void {
  const covered = new Set<string>();
  const look = () => {
    const focus = document.activeElement;
    const bar = document.querySelector(".places");
    if (!focus || !bar || focus === document.body || bar.contains(focus)) return;
    const { top, bottom } = focus.getBoundingClientRect();
    const edge = bar.getBoundingClientRect().top;
    // What is taller than the screen is seen from its beginning.
    const isCovered = bottom > edge + 1 && (top >= edge || bottom - top < edge);
    if (isCovered) covered.add(focus.outerHTML.slice(0, 100));
  };
  addEventListener("keydown", look, true);
  Object.assign(globalThis, { covered, look });
}

/** What had the focus behind the bar since last asked. */
const coveredByBar = (page: Page) =>
  page.evaluate(() => {
    const { covered, look } = globalThis as unknown as { covered: Set<string>; look: () => void };
    look();
    const found = [...covered];
    covered.clear();
    return found;
  });

test("on a phone the bar covers neither the end of any view nor what has the focus", async () => {
  const { page, close } = await openPage(browser, atlas.url, { viewport: PHONE });
  await page.evaluate(watchFocus);
  const underAtTheEnd = async () => {
    // What comes later makes the page longer.
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await rendered(page);
    return under(page, ".languages button");
  };
  for (const view of Object.keys(VIEWS).filter((name) => name !== "alarm")) {
    await goTo(page, view);
    await expect.poll(underAtTheEnd, { message: view }).toBeLessThanOrEqual(0);
    // From the foot of the page upwards the focus leaves the bar behind, from its head downwards it keeps coming to it.
    for (const [key, presses] of [
      ["Shift+Tab", 8],
      ["Tab", 40],
    ] as const) {
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      for (let press = 0; press < presses; press++) await page.keyboard.press(key);
      expect(await coveredByBar(page), `#/${view}, ${key}`).toEqual([]);
    }
  }
  await close();
});

test("Start leads to the heater with the place, the night and the heater filled in, and to the card", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await field(page, "site.elevation_m").fill("2980");
  await field(page, "air.temperature_C").fill("-12");
  await page.getByRole("link", { name: t.answer.tuneHere }).click();
  await page.locator("#onsite").waitFor();
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe("2980");
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-12");
  // The link that was pressed is gone: the keyboard goes on at the beginning of what came.
  await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("content");
  await page.goBack();
  await page.getByRole("link", { name: t.answer.printCard }).click();
  await page.locator("#card").waitFor();
  await close();
});

test("a trip's stop leads to the heater with its name, elevation and night; its position stays here", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/trip`);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await field(page, "new.elevation_m").fill("2300");
  await field(page, "new.elevation_m").press("Enter");
  await openStop(page, 0);
  await field(page, "stops.0.name").fill("Hut by the lake");
  await field(page, "stops.0.name").blur();
  await field(page, "stops.0.temperature_C").fill("-7");
  await page.getByRole("button", { name: tripWords.list.tuneAt("Hut by the lake") }).click();
  await page.locator("#onsite").waitFor();
  await expect.poll(() => field(page, "place").inputValue()).toBe("Hut by the lake");
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe("2300");
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-7");
  await page.getByRole("link", { name: t.places.start, exact: true }).click();
  await page.locator(".near").scrollIntoViewIfNeeded();
  await page.locator('.near[data-state="seen"]').waitFor();
  expect(asked.filter((url) => url.includes("/near"))).not.toEqual([]);
  expect(asked.filter((url) => /[?&]lat=/.test(url))).toEqual([]);
  await close();
});
