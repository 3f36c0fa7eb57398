import { mkdirSync } from "node:fs";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "./chromium.ts";
import { choosePlace, mapDrawn, openPage } from "./open-page.ts";
import { runAtlas } from "./running-atlas.ts";
import { pictureName, SIZES, THEMES, VIEWS } from "./views.ts";

/** Every view at both sizes and in both themes, with the demo and empty, into data/screenshots/; and the README's picture. */
/** The README's picture, small enough to be kept. */
const PICTURE = { width: 1120, height: 720 };
/** Charts and lists need no longer, ms. */
const SETTLED_AFTER_ms = 1500;

mkdirSync("data/screenshots", { recursive: true });
mkdirSync("docs", { recursive: true });
const browser = await launchChromium();
for (const name of ["demo", "empty"]) {
  const atlas = await runAtlas(name === "demo" ? ["--demo"] : []);
  if (name === "demo") await atlas.load(scenario().map(({ tune }) => tune));
  for (const viewport of SIZES) {
    for (const colorScheme of THEMES) {
      for (const view of Object.keys(VIEWS)) {
        const { page, close } = await openPage(browser, `${atlas.url}/#/${view}`, {
          viewport,
          colorScheme,
        });
        if (view === "map") await mapDrawn(page);
        await page.waitForTimeout(SETTLED_AFTER_ms);
        const file = `data/screenshots/${name}-${pictureName(view)}-${viewport.width}-${colorScheme}.png`;
        await page.screenshot({ path: file, fullPage: viewport.width < 1000 });
        await close();
        console.log(file);
      }
    }
  }
  if (name === "demo") {
    const { page, close } = await openPage(browser, atlas.url, { viewport: PICTURE });
    await mapDrawn(page);
    await choosePlace(page, "Leadville", /Leadville, Colorado/);
    await page.locator('[name="air.temperature_C"]').fill("-12");
    await page.waitForTimeout(SETTLED_AFTER_ms);
    await mapDrawn(page);
    await page.screenshot({ path: "docs/atlas.png" });
    await close();
  }
  await atlas.close();
}
await browser.close();
