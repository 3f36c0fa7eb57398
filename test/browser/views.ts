import type { Page } from "playwright-core";
import { textOf } from "../../client/trip/link.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";

/** As every view is looked at. */
export const PHONE = { width: 360, height: 740 };
export const LAPTOP = { width: 1280, height: 800 };
export const SIZES = [PHONE, LAPTOP];
export const THEMES = ["light", "dark"] as const;

/** A trip that takes two tunes, with several nights at a stop, one of unknown temperature, a tank that lasts only just. */
export const FILLED_TRIP = `trip/${textOf({
  ...NEW_TRIP,
  heater: { heat_kW: 5, dose_uL: 22, tank_L: 9, battery_Ah: 120 },
  stops: [
    { name: "Harbour", elevation_m: 5, temperature_C: 10 },
    { name: "Old bridge", elevation_m: 1200, temperature_C: -2, nights: 3 },
    { name: "Hut on the high pass", elevation_m: 3000, temperature_C: -10 },
    { name: "Lake", elevation_m: 4600 },
  ],
})}`;

/** Every view and every page of one, by its address, with what tells that all of it is there. */
export const VIEWS: Record<string, string> = {
  start: ".ways",
  trip: "h2",
  [FILLED_TRIP]: ".profile .drawing",
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

/** What a view's pictures are called. */
export const pictureName = (view: string): string =>
  view === FILLED_TRIP ? "trip-filled" : view.replace("/", "-");

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
