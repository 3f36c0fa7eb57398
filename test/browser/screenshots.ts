import { mkdirSync } from "node:fs";
import { scenario } from "../../seed-demo/scenario.ts";
import { launchChromium } from "./chromium.ts";
import { openPage } from "./open-page.ts";
import { runAtlas } from "./running-atlas.ts";

/** Every view at both sizes and in both themes, with the demo and empty, into data/screenshots/; and the README's picture. */
const SIZES = [
  { width: 360, height: 740 },
  { width: 1280, height: 800 },
];
const VIEWS = ["atlas", "share", "scaling", "data"];
/** Time for the map's tiles to be drawn in software, ms. */
const DRAWN_AFTER_ms = 5000;

mkdirSync("data/screenshots", { recursive: true });
mkdirSync("docs", { recursive: true });
const browser = await launchChromium();
for (const name of ["demo", "empty"]) {
  const atlas = await runAtlas(name === "demo" ? ["--demo"] : []);
  if (name === "demo") await atlas.load(scenario().map(({ tune }) => tune));
  for (const viewport of SIZES) {
    for (const colorScheme of ["light", "dark"] as const) {
      for (const view of VIEWS) {
        const { page, close } = await openPage(browser, `${atlas.url}/#/${view}`, {
          viewport,
          colorScheme,
        });
        await page.waitForTimeout(view === "atlas" ? DRAWN_AFTER_ms : 1500);
        const file = `data/screenshots/${name}-${view}-${viewport.width}-${colorScheme}.png`;
        await page.screenshot({ path: file, fullPage: viewport.width < 1000 });
        await close();
        console.log(file);
      }
    }
  }
  if (name === "demo") {
    const { page, close } = await openPage(browser, atlas.url);
    await page.getByRole("combobox", { name: "Place" }).fill("Leadville");
    await page.getByRole("option").first().click();
    await page.waitForTimeout(DRAWN_AFTER_ms);
    await page.screenshot({ path: "docs/atlas.png" });
    await close();
  }
  await atlas.close();
}
await browser.close();
