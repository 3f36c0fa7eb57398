import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { offline } from "../../client/texts/offline.ts";
import { shareWords } from "../../client/texts/share.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { Health } from "../../server/contract.ts";
import { inventedTunes } from "./crowd.ts";
import { CUT_OFF, field, openPage, shownRates } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";

// Another clock, a slow line, storage wiped under an open page, foreign elevation tiles out of reach.
let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  // The map has tests of its own, and drawing it would take most of the time.
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
  await atlas.load(inventedTunes(12));
});

afterAll(async () => {
  await atlas?.close();
});

const tunes = async () => (await atlas.get<Health>("/health")).tunes;

async function fillTune(page: Page, low_pump_Hz: number): Promise<void> {
  const settings: Record<string, string> = {
    "site.elevation_m": "1600",
    "air.temperature_C": "-9",
    "low.pump_Hz": String(low_pump_Hz),
    "low.fan_rpm": "1700",
    "low.co_ppm": "14",
    "high.pump_Hz": "3.7",
    "high.fan_rpm": "4500",
    "high.co_ppm": "9",
  };
  for (const [name, value] of Object.entries(settings)) await field(page, name).fill(value);
  await field(page, "consent").check();
}

test.each([
  // Already 1 December there, still 30 November here.
  { timezoneId: "Pacific/Kiritimati", now: "2026-11-30T11:00:00Z", december: true },
  // Still 30 November there, already 1 December here.
  { timezoneId: "America/Anchorage", now: "2026-12-01T05:00:00Z", december: false },
])("in $timezoneId the fit's age and the month of a tune are right", async (there) => {
  const { published_at } = await atlas.get<PublishedFit>("/fit");
  const { page, close } = await openPage(browser, "about:blank", {
    timezoneId: there.timezoneId,
    alone: true,
  });
  await page.clock.setFixedTime(Date.parse(published_at ?? "") + 3 * 3_600_000);
  await page.goto(atlas.url);
  await page.getByText(basisWords.ages.hours(3)).waitFor();

  await page.clock.setFixedTime(there.now);
  await page.goto(`${atlas.url}/#/share`);
  await fillTune(page, 1.1);
  await field(page, "tuned_on").fill("2026-12");
  const note = page.locator("#tuned-on-note");
  await expect
    .poll(async () => (await note.textContent())?.includes("not come yet"))
    .toBe(!there.december);
  await field(page, "tuned_on").fill("2026-11");
  await expect.poll(async () => (await note.textContent())?.includes("not come yet")).toBe(false);
  await close();
});

test("with a slow atlas the page says it is asking, and nothing in sight moves when the answer comes", async () => {
  const { page, close } = await openPage(browser, "about:blank", {
    alone: true,
    viewport: { width: 360, height: 740 },
  });
  const held = Promise.withResolvers<void>();
  await page.route("**/api/fit", async (route) => {
    await held.promise;
    await route.continue();
  });
  await page.addInitScript(() => {
    const seen = globalThis as { moved?: number };
    seen.moved = 0;
    new PerformanceObserver((list) => {
      for (const shift of list.getEntries() as (PerformanceEntry & { value: number })[])
        seen.moved = (seen.moved ?? 0) + shift.value;
    }).observe({ type: "layout-shift", buffered: true });
  });
  await page.goto(atlas.url);
  await page.getByText(t.loading).waitFor();
  held.resolve();
  await page.locator(".end output").first().waitFor();
  await page.locator(".offline").waitFor();
  // "Good" by web.dev's Core Web Vitals is a layout shift of at most 0.1.
  await expect
    .poll(() => page.evaluate(() => (globalThis as { moved?: number }).moved))
    .toBeLessThan(0.1);
  await close();
});

test("while an answer is awaited a tune is not sent again, however often one presses", async () => {
  const before = await tunes();
  const { page, close } = await openPage(browser, `${atlas.url}/#/share`);
  await fillTune(page, 1.14);
  const held = Promise.withResolvers<void>();
  let posts = 0;
  await page.route("**/api/tunes", async (route) => {
    posts++;
    await held.promise;
    await route.continue();
  });
  const send = page.locator("button.main");
  await send.dblclick();
  await page.getByRole("button", { name: shareWords.sending }).waitFor();
  await send.click({ force: true });
  await field(page, "low.pump_Hz").press("Enter");
  held.resolve();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  expect(posts).toBe(1);
  await expect.poll(() => tunes()).toBe(before + 1);
  await close();
});

test("storage wiped under an open page: it says what is gone, goes on, and keeps anew", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/share`);
  await page.route("**/api/tunes", (route) => route.abort());
  await fillTune(page, 1.15);
  await page.locator("button.main").click();
  await page.getByRole("heading", { name: offline.waitingTitle }).waitFor();
  await field(page, "low.pump_Hz").fill("1.16");

  const session = await page.context().newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: atlas.url, storageTypes: "all" });
  await page.locator(".notices").getByText(offline.wiped).waitFor();
  await page.getByRole("heading", { name: offline.waitingTitle }).waitFor({ state: "detached" });
  await expect.poll(() => field(page, "low.pump_Hz").inputValue()).toBe("1.16");

  await page.unroute("**/api/tunes");
  await fillTune(page, 1.16);
  await page.locator("button.main").click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await page.reload();
  await page
    .locator(".receipts li")
    .getByText(/1\.16\sHz and 3\.7\sHz/)
    .waitFor();
  await page.goto(`${atlas.url}/#/`);
  expect((await shownRates(page)).every((rate) => rate > 0)).toBe(true);
  await close(CUT_OFF);
});
