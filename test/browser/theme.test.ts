import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { axeFinds, sideways } from "./faults.ts";
import { type OpenPage, openPage, rendered } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { goTo, PHONE, shown, VIEWS } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const paper = (page: Page) =>
  page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--paper"));
const press = (page: Page, name: string) =>
  page.locator("footer").getByRole("button", { name, exact: true }).click();

const LIGHT = /^#f6f2e7$/;
const DARK = /^#1c1a15$/;
const SUN = /^#fff(fff)?$/;

test("the system's theme is taken, one that is chosen here stays, and the system's comes back", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await shown(page, "start");
  await expect.poll(() => paper(page)).toMatch(LIGHT);
  await page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(() => paper(page)).toMatch(DARK);
  await page.emulateMedia({ contrast: "more" });
  await expect.poll(() => paper(page)).toMatch(SUN);
  await press(page, t.theme.dark);
  await expect.poll(() => paper(page)).toMatch(DARK);
  await press(page, t.theme.light);
  await expect.poll(() => paper(page)).toMatch(LIGHT);
  await page.reload();
  await shown(page, "start");
  await expect.poll(() => paper(page)).toMatch(LIGHT);
  await page.emulateMedia({ colorScheme: "light", contrast: "no-preference" });
  await press(page, t.theme.dark);
  await page.locator('.land-picture[data-drawn="yes"]').waitFor();
  await expect.poll(() => paper(page)).toMatch(DARK);
  await press(page, t.theme.system);
  await expect.poll(() => paper(page)).toMatch(LIGHT);
  await expect.poll(() => page.evaluate(() => localStorage.getItem("hypsotune.theme"))).toBe(null);
  await close();
});

test("high contrast is one press away on the first screen, and one press back", async () => {
  const { page, close } = await openPage(browser, atlas.url, {
    viewport: PHONE,
    colorScheme: "dark",
  });
  const sun = page.locator(".sun");
  await sun.click();
  await expect.poll(() => paper(page)).toMatch(SUN);
  await expect.poll(() => sun.getAttribute("aria-pressed")).toBe("true");
  const box = await sun.boundingBox();
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
  await page.reload();
  await shown(page, "start");
  await expect.poll(() => paper(page)).toMatch(SUN);
  await sun.click();
  await expect.poll(() => paper(page)).toMatch(DARK);
  await close();
});

/** What is written smaller than it should be, or in other letters than the page's. Paper has sizes of its own. */
function smallPrint(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found = new Set<string>();
    const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (words.nextNode()) {
      const text = words.currentNode.textContent?.trim();
      const element = words.currentNode.parentElement;
      if (!text || !element || element.closest(".card-papers, sub, sup")) continue;
      const { width } = element.getBoundingClientRect();
      if (width < 2) continue;
      const style = getComputedStyle(element);
      const drawing = element.closest("svg");
      const scale = drawing ? (drawing.getScreenCTM()?.a ?? 1) : 1;
      const size = Number.parseFloat(style.fontSize) * scale;
      const least = drawing || element.closest(".axis-title, .chart, .maplibregl-ctrl") ? 13 : 16;
      if (size < least - 0.1) found.add(`${size.toFixed(1)} px: ${text.slice(0, 60)}`);
      const isCode = element.closest("code, pre, kbd");
      if (!isCode && !style.fontFamily.includes("Noto Sans"))
        found.add(`${style.fontFamily}: ${text.slice(0, 60)}`);
    }
    return [...found];
  });
}

describe("high contrast on a phone", () => {
  let opened: OpenPage;

  beforeAll(async () => {
    opened = await openPage(browser, `${atlas.url}/#/steward`, {
      viewport: PHONE,
      contrast: "more",
    });
  });

  afterAll(() => opened?.close());

  test.each(Object.keys(VIEWS))(
    "#/%s: text of 16 px and charts of 13 px at least, in the page's letters; axe finds no colour too faint",
    async (view) => {
      const { page } = opened;
      await goTo(page, view);
      await rendered(page);
      await expect.poll(() => smallPrint(page)).toEqual([]);
      expect(await axeFinds(page, { themes: ["light"], coloursOnly: true })).toEqual([]);
      await expect.poll(() => sideways(page)).toBe(0);
    },
  );
});
