import type { Page } from "playwright-core";

/** As every view is looked at. */
export const PHONE = { width: 360, height: 740 };
export const LAPTOP = { width: 1280, height: 800 };
export const SIZES = [PHONE, LAPTOP];
export const THEMES = ["light", "dark"] as const;

/** Every view and every page of one, by its address, with what tells that all of it is there. */
export const VIEWS: Record<string, string> = {
  start: ".ways",
  trip: "h2",
  onsite: ".onsite",
  alarm: ".alarm-screen",
  "alarm/outside": ".emergency",
  logbook: ".logbook",
  card: ".nomogram",
  map: ':is(.land-picture[data-drawn="yes"], .map[aria-busy="false"])',
  share: "form",
  scaling: ".scaling-chart",
  data: ".files",
  "data/bands": ".study-chart",
  "data/method": ".method table",
  "data/style": ".contrasts",
  steward: ".steward form",
};

/** Waits until all of a view is there. */
export const shown = (page: Page, view: string): Promise<void> =>
  page
    .locator(VIEWS[view] ?? "main h2")
    .first()
    .waitFor();

/** Goes to a view as a link does, without the page being loaded anew. */
export async function goTo(page: Page, view: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/${view}`);
  await shown(page, view);
}
