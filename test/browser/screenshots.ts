import { mkdirSync } from "node:fs";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "./chromium.ts";
import { openLine } from "./line.ts";
import { choosePlace, mapDrawn, openPage } from "./open-page.ts";
import { addFoundHeater } from "./own-heater.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { FILLED_TRIP, goTo, PHONE, pictureName, SIZES, VIEWS } from "./views.ts";

// Every view in three sizes and three themes, filled, empty and offline, into data/screenshots/; and the README's pictures.

const FOLDER = "data/screenshots";
const TABLET = { width: 768, height: 1024 };
const THEMES: Record<string, BrowserContextOptions> = {
  light: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  sun: { contrast: "more" },
};
/** Small enough to be kept. */
const PICTURE = { width: 1280, height: 880 };
/** Charts and lists need no longer, ms. */
const SETTLED_AFTER_ms = 1500;

type State = "filled" | "empty" | "offline";

async function everyView(browser: Browser, atlas: RunningAtlas, state: State): Promise<void> {
  const line = await openLine(atlas.url);
  for (const viewport of [...SIZES, TABLET]) {
    for (const [theme, options] of Object.entries(THEMES)) {
      line.mend();
      const { page, close } = await openPage(browser, line.url, {
        viewport,
        ...options,
        serviceWorkers: state === "offline" ? "allow" : "block",
      });
      if (state === "filled") await addFoundHeater(page, "My van");
      if (state === "offline") {
        await page.locator(".offline[data-offline=kept]").waitFor();
        line.cut();
        await page.reload();
        await page.locator(".notices").waitFor();
      }
      for (const view of Object.keys(VIEWS)) {
        await goTo(page, view);
        if (view === "map") await mapDrawn(page);
        await page.waitForTimeout(SETTLED_AFTER_ms);
        const file = `${FOLDER}/${state}-${pictureName(view)}-${viewport.width}-${theme}.png`;
        await page.screenshot({ path: file, fullPage: viewport.width < 1000 });
        console.log(file);
      }
      await close(/./);
    }
  }
  await line.close();
}

async function picture(
  browser: Browser,
  file: string,
  address: string,
  viewport: typeof PICTURE,
  fill: (page: Page) => Promise<void>,
): Promise<void> {
  const { page, close } = await openPage(browser, address, { viewport });
  await fill(page);
  await page.waitForTimeout(SETTLED_AFTER_ms);
  await page.screenshot({ path: file });
  await close();
  console.log(file);
}

mkdirSync(FOLDER, { recursive: true });
const browser = await launchChromium();
const demo = await runAtlas(["--demo"]);
await demo.load(scenario().map(({ tune }) => tune));
if (!process.argv.includes("--readme")) {
  const empty = await runAtlas();
  await everyView(browser, demo, "filled");
  await everyView(browser, demo, "offline");
  await everyView(browser, empty, "empty");
  await empty.close();
}
await picture(browser, "docs/start.png", demo.url, PICTURE, async (page) => {
  await mapDrawn(page);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await page.locator('[name="air.temperature_C"]').fill("-12");
  await page.waitForTimeout(SETTLED_AFTER_ms);
  await mapDrawn(page);
});
await picture(browser, "docs/trip.png", `${demo.url}/#/${FILLED_TRIP}`, PHONE, (page) =>
  page.locator(".profile").first().waitFor(),
);
await picture(browser, "docs/scaling.png", `${demo.url}/#/scaling`, PHONE, (page) =>
  page.locator(".scaling-chart").first().scrollIntoViewIfNeeded(),
);
await demo.close();
await browser.close();
