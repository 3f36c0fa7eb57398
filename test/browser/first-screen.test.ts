import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { LANGUAGES } from "../../client/language.ts";
import { t } from "../../client/texts/app.ts";
import { heaterWords } from "../../client/texts/heater.ts";
import { textOf } from "../../client/trip/link.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";
import type { Stop } from "../../model/trip/stop.ts";
import { sideways } from "./faults.ts";
import { choosePlace, field, openPage, openSite, rendered, shownText } from "./open-page.ts";
import { addFoundHeater, button, inForm, line } from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, emptyAtlas, plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

let browser: Browser;
let atlases: Record<"demo" | "empty", RunningAtlas>;

beforeAll(async () => {
  const [chromium, demo, empty] = await Promise.all([plainBrowser(), demoAtlas(), emptyAtlas()]);
  browser = chromium;
  atlases = { demo, empty };
});

/** Where each lies that must be seen at once, and where the bar of places begins, px from the top of the screen. */
async function seenAtOnce(page: Page): Promise<{ parts: Record<string, number[]>; bar: number }> {
  await page.evaluate(() => document.fonts.ready);
  // A page loaded anew may go on where it was left.
  await page.evaluate(() => scrollTo(0, 0));
  await rendered(page);
  return page.evaluate(() => {
    const box = (selector: string) =>
      [...document.querySelectorAll(selector)].flatMap((part) => {
        const { top, bottom, height } = part.getBoundingClientRect();
        return height > 0 ? [top, bottom] : [];
      });
    const parts = {
      // Only a heater whose settings are known has it.
      ...(document.querySelector(".own-basis") && { lead: box(".lead") }),
      place: box(".site-row button"),
      rates: box(".answer .rate output"),
      fans: box(".answer .fan"),
      bands: box(".answer .band-drawing"),
      times: box(".answer .times"),
      certainty: box(".answer .certainty"),
    };
    return { parts, bar: document.querySelector(".places")?.getBoundingClientRect().top ?? 0 };
  });
}

async function expectOnFirstScreen(page: Page, what: string): Promise<void> {
  await page.locator(".answer .certainty").waitFor();
  const { parts, bar } = await seenAtOnce(page);
  await expect.poll(() => sideways(page), { message: what }).toBe(0);
  expect(bar, what).toBeGreaterThan(600);
  for (const [part, edges] of Object.entries(parts)) {
    expect(edges.length, `${what}: ${part}`).toBe(["lead", "certainty"].includes(part) ? 2 : 4);
    for (const edge of edges) {
      expect(edge, `${what}: ${part}`).toBeGreaterThanOrEqual(0);
      expect(edge, `${what}: ${part}`).toBeLessThanOrEqual(bar);
    }
  }
}

/** On a laptop, where the fields of place and night stand above the answer: what to set and how sure that is. */
async function expectCertaintyOnLaptop(page: Page, what: string): Promise<void> {
  await page.setViewportSize(LAPTOP);
  await field(page, "place").waitFor();
  const { parts } = await seenAtOnce(page);
  for (const edge of [...(parts.rates ?? []), ...(parts.certainty ?? [])]) {
    expect(edge, `${what}, laptop`).toBeGreaterThan(0);
    expect(edge, `${what}, laptop`).toBeLessThanOrEqual(LAPTOP.height);
  }
  await page.setViewportSize(PHONE);
}

/** A heater with a tune of its own, now set rich at one end and lean at the other: no more is ever said before the answer. */
async function addHeaterSetApart(page: Page): Promise<void> {
  await addFoundHeater(page, "The van's heater");
  await line(page).click();
  await button(page, heaterWords.settings.add).click();
  await button(page, heaterWords.settings.guess).click();
  await inForm(page, "settings.low.pump_Hz").fill("1.6");
  await inForm(page, "settings.high.pump_Hz").fill("2.6");
  await button(page, heaterWords.settings.keep).click();
  await page.getByText(heaterWords.lead.bothMean).waitFor();
}

test.each(["demo", "empty"] as const)(
  "on a phone the whole answer is on the first screen, in every language, with and without an own heater: %s",
  async (kind) => {
    const { page, close } = await openPage(browser, atlases[kind].url, { viewport: PHONE });
    await page.locator(".my-heater-line").waitFor();
    await choosePlace(page, "Leadville", /Leadville, Colorado/);
    // A place chosen folds the fields.
    await field(page, "place").waitFor({ state: "detached" });
    for (const whose of ["the average heater", "my heater"]) {
      if (whose === "my heater") await addHeaterSetApart(page);
      for (const language of LANGUAGES) {
        await page.evaluate((code) => localStorage.setItem("hypsotune.language", code), language);
        await page.reload();
        await page.locator(".my-heater-line").waitFor();
        if (whose === "my heater") await page.locator(".own-basis").waitFor();
        await expectOnFirstScreen(page, `${language}, ${whose}`);
        // The demo has a line more above it, which says that its data are invented.
        if (kind === "empty" && whose === "the average heater")
          await expectCertaintyOnLaptop(page, language);
      }
      await page.evaluate(() => localStorage.setItem("hypsotune.language", "en"));
      await page.reload();
      await page.locator("button.my-heater-line").waitFor();
    }
    await close();
  },
);

/** Where one tune will do, and where it takes two. */
const TRIPS: Record<string, Stop[]> = {
  "one tune": [
    { name: "Coast", elevation_m: 5, temperature_C: 10 },
    { name: "Village", elevation_m: 1200, temperature_C: -2 },
    { name: "Pass", elevation_m: 3000, temperature_C: -10 },
    { name: "Hut", elevation_m: 2400, temperature_C: -14 },
  ],
  "two tunes": [
    { name: "Coast", elevation_m: 5, temperature_C: 10 },
    { name: "Village", elevation_m: 1200, temperature_C: -2, nights: 3 },
    { name: "Pass", elevation_m: 3000, temperature_C: -10 },
    { name: "High lake", elevation_m: 4600 },
  ],
};

test("on a phone a trip's verdict, its whole drawing, fuel and charge are on the first screen, in every language, with and without an own heater", async () => {
  const { page, close } = await openPage(browser, `${atlases.demo.url}/#/start`, {
    viewport: PHONE,
  });
  await page.locator("button.my-heater-line").waitFor();
  for (const whose of ["the average heater", "my heater"]) {
    if (whose === "my heater") await addFoundHeater(page, "The van's heater");
    for (const language of LANGUAGES) {
      for (const [name, stops] of Object.entries(TRIPS)) {
        const heater = { heat_kW: 5, dose_uL: 22, tank_L: 10, battery_Ah: 120 };
        const kept = textOf({ ...NEW_TRIP, heater, stops });
        await page.evaluate(
          ([code, trip]) => {
            localStorage.setItem("hypsotune.language", code as string);
            localStorage.setItem("hypsotune.trip", JSON.stringify(trip));
            location.hash = "#/trip";
          },
          [language, kept],
        );
        await page.reload();
        await page.locator(".my-heater-line").waitFor();
        if (whose === "my heater") await page.locator(".trip .own-basis").waitFor();
        await expectTripOnFirstScreen(page, `${language}, ${whose}, ${name}`);
      }
    }
    await page.evaluate(() => {
      localStorage.setItem("hypsotune.language", "en");
      location.hash = "#/start";
    });
    await page.reload();
    await page.locator("button.my-heater-line").waitFor();
  }
  await close();
});

async function expectTripOnFirstScreen(page: Page, what: string): Promise<void> {
  await page.locator(".profile .drawing").waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.evaluate(() => scrollTo(0, 0));
  await rendered(page);
  const parts = [".verdict", ".verdict + p", ".profile .drawing", ".supply dl"];
  const bar = await page.locator(".places").boundingBox();
  for (const part of parts) {
    const box = await page.locator(part).boundingBox();
    expect(box?.y, `${what}: ${part}`).toBeGreaterThan(0);
    expect((box?.y ?? 0) + (box?.height ?? 0), `${what}: ${part}`).toBeLessThanOrEqual(bar?.y ?? 0);
  }
  // Four stops need no scrolling to the side either.
  await expect
    .poll(() => page.locator(".profile .scrolls").evaluate((p) => p.scrollWidth - p.clientWidth), {
      message: what,
    })
    .toBe(0);
  await expect.poll(() => sideways(page), { message: what }).toBe(0);
}

test("the row of place and night opens the field that was pressed, and says what is assumed", async () => {
  const { page, close } = await openPage(browser, atlases.demo.url, { viewport: PHONE });
  const place = page.locator(".site-row button").nth(0);
  const night = page.locator(".site-row button").nth(1);
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute("name"));
  await expect.poll(() => shownText(place)).toBe(`1,000 m ${t.site.choose}`);
  // Of the standard atmosphere at 1,000 m: 8.5 °C (ISO 2533:1975).
  await expect.poll(() => shownText(night)).toMatch(/^(8\.5|9) °C /);
  await expect.poll(() => shownText(night)).toContain(t.site.assumed);
  await night.click();
  await expect.poll(focused).toBe("air.temperature_C");
  await page.keyboard.type("-12");
  await expect.poll(() => shownText(night)).toBe(`−12 °C ${t.site.tonight}`);
  // As a phone's keyboard ends it: the answer is what is seen next.
  await page.keyboard.press("Enter");
  await field(page, "place").waitFor({ state: "detached" });
  await openSite(page);
  await expect.poll(focused).toBe("place");
  await close();
});
