import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { dataWords } from "../../client/texts/data.ts";
import { mapWords } from "../../client/texts/map.ts";
import { shareWords } from "../../client/texts/share.ts";
import { trip } from "../../client/texts/trip.ts";
import { SAFETY } from "../../model/safety.ts";
import type { StartTune } from "../../model/start.ts";
import { faultsAt } from "./faults.ts";
import {
  askedRates,
  field,
  openFiner,
  openPage,
  openStop,
  openTripHeater,
  shownRates,
} from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, emptyAtlas, plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

let browser: Browser;
let demo: RunningAtlas;
let empty: RunningAtlas;

beforeAll(async () => {
  [browser, demo, empty] = await Promise.all([plainBrowser(), demoAtlas(), emptyAtlas()]);
});

/** Each view in the state in which it shows most; a drawn map has its own tests. */
const VIEWS: Record<string, (page: Page) => Promise<unknown>> = {
  start: async (page) => {
    await page.locator('.land-picture[data-drawn="yes"]').waitFor();
    await page.locator(".map-side summary").last().click();
    await openFiner(page);
    await field(page, "air.pressure_hPa").fill("1013");
    await field(page, "heater.dose_uL").fill("22");
    await field(page, "site.elevation_m").fill("5500");
    await field(page, "place").fill("Lead");
    await page.getByRole("option").first().waitFor();
  },
  share: async (page) => {
    await field(page, "site.elevation_m").fill("1600");
    for (const end of ["low", "high"]) {
      await field(page, `${end}.pump_Hz`).fill(end === "low" ? "60" : "234");
      await field(page, `${end}.fan_rpm`).fill(end === "low" ? "1700" : "4500");
      await field(page, `${end}.co_ppm`).fill("9");
    }
    await page.locator(".slips").waitFor();
    await page.getByRole("button", { name: shareWords.send }).click();
    await page.getByText(shareWords.needConsent).waitFor();
  },
  trip: async (page) => {
    for (const elevation of ["5", "2300", "5400"]) {
      await field(page, "new.elevation_m").fill(elevation);
      await field(page, "new.elevation_m").press("Enter");
    }
    await openStop(page, 1);
    await field(page, "stops.1.nights").fill("3");
    await openTripHeater(page);
    await field(page, "heater.tank_L").fill("4");
    await field(page, "heater.battery_Ah").fill("40");
    await page.getByText(trip.result.all).click();
    await page.getByText(trip.map.open).click();
  },
  scaling: (page) => page.locator(".scaling-chart").waitFor(),
  data: (page) => page.getByText(dataWords.privacy).waitFor(),
};

for (const [view, fill] of Object.entries(VIEWS)) {
  test(`${view}: accessible in both themes, wide and narrow; never scrolls sideways; large targets; cautions`, async () => {
    const { page, close } = await openPage(browser, `${demo.url}/#/${view}`);
    await fill(page);
    expect(await faultsAt(page, [LAPTOP, PHONE])).toEqual([]);
    await expect.poll(() => smallTargets(page)).toEqual([]);
    await page.getByText(SAFETY.notice).waitFor();
    await close();
  });
}

/** Controls that cold fingers would miss: less than 44 CSS pixels high, links within sentences aside. */
function smallTargets(page: Page): Promise<string[]> {
  return page.locator("button, select, input, summary, a, label.check").evaluateAll((controls) =>
    controls
      .filter((control) => {
        const { height, width } = control.getBoundingClientRect();
        const shown = width > 1 && height > 1 && !control.matches(".skip");
        return shown && height < 43.5 && !control.closest("label.check, .maplibregl-ctrl-attrib");
      })
      .map((control) => control.outerHTML.slice(0, 120)),
  );
}

test("an empty atlas answers from physics alone, says so, and its bands are wide", async () => {
  const { page, close } = await openPage(browser, empty.url);
  await page.getByText(basisWords.prior("5")).waitFor();
  await page.getByText(basisWords.priorFit).waitFor();
  await expect.poll(() => page.getByText(t.demo).count()).toBe(0);
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(empty.get, { heat_kW: 5, elevation_m: 1000 }));
  const { low } = await empty.get<StartTune>("/start?heat_kW=5&elevation_m=1000");
  const band = low.new_heater_bands_Hz.at(-1);
  expect((band?.upper ?? 0) / (band?.lower ?? 1)).toBeGreaterThan(2);
  await page.getByText(`${mapWords.cells} (0)`).click();
  await page.getByText(mapWords.cellsNone).waitFor();
  await close();
});

test("the keyboard alone leads from the top of the page to a place and through the views", async () => {
  const { page, close } = await openPage(browser, demo.url);
  await page.locator(".end output").first().waitFor();
  await page.locator("button.my-heater-line").waitFor();
  await field(page, "place").waitFor();
  await page.keyboard.press("Tab");
  await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe(t.skip);
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.className))
    .toBe("my-heater-line");
  await page.keyboard.press("Tab");
  await expect.poll(() => page.evaluate(() => document.activeElement?.className)).toBe("sun");
  await page.keyboard.press("Tab");
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute("name")))
    .toBe("place");
  await page.keyboard.type("Lhasa");
  await page.getByRole("option").first().waitFor();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  await page.getByText(/Lhasa, .*, 3,6\d\d\sm/).waitFor();
  const { places } = t;
  const { pages } = dataWords;
  for (const view of [places.trip, places.atlas, pages.share, pages.scaling, places.logbook]) {
    await page.getByRole("link", { name: view, exact: true }).press("Enter");
    await page.waitForFunction((title) => document.title.includes(title), view);
  }
  await close();
});

test("the data view leads to files that are there", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/data`);
  await page.locator(".files a").first().waitFor();
  const links = await page
    .locator(".files a")
    .evaluateAll((as) => as.map((a) => (a as HTMLAnchorElement).href));
  expect(links).toHaveLength(8);
  const said = await page.locator(".files code").allTextContents();
  expect(links.map((link) => new URL(link).pathname)).toEqual(said);
  for (const link of links) expect((await fetch(link)).status, link).toBe(200);
  for (const line of dataWords.licences) await page.getByText(line).waitFor();
  await close();
});
