import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { logbookWords } from "../../client/texts/logbook.ts";
import { onsite } from "../../client/texts/onsite.ts";
import { format, formatRate } from "../../client/units.ts";
import { ENDS } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { PUMP_STEP_Hz } from "../../model/heater.ts";
import { retunedFor } from "../../model/own-night.ts";
import { startForHeater } from "../../model/own-start.ts";
import { isOnStep, settablePump } from "../../model/rounding.ts";
import { type StartQuestion, startTune } from "../../model/start.ts";
import { field, openPage, openSite, shownText, shownTexts } from "./open-page.ts";
import { addFoundHeater, FOUND, line } from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;
let fit: PublishedFit;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
  fit = await atlas.get<PublishedFit>("/fit");
});

const STEP_Hz = 0.05;
/** Rows and columns of the card as it is at first. */
const ELEVATIONS_m = [500, 1000, 1500, 2000, 2500, 3000, 3500, 4000];
const NIGHTS_C = [-20, -10, 0, 10, 20];

function asked(elevation_m: number, temperature_C: number): StartQuestion {
  return {
    heat_kW: 5,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
    air: { temperature_C },
    low_fan_rpm: 1700,
    high_fan_rpm: 4500,
    dose_uL: 22,
  };
}

test("a heater that is set in 0.05 Hz reads the same on Start, Trip, Card and On site, and its night in the logbook too", async () => {
  const found = startTune(fit, asked(FOUND.site.elevation_m, FOUND.air?.temperature_C as number));
  // Where such a controller's steps tell its rates from the usual one's.
  const [seen] = ELEVATIONS_m.flatMap((elevation_m) =>
    NIGHTS_C.flatMap((temperature_C) => {
      const exact = startForHeater(fit, asked(elevation_m, temperature_C), [FOUND]);
      const rates = ENDS.map((end) => settablePump(exact[end].pump_Hz_exact, STEP_Hz));
      const retuned = retunedFor(
        FOUND,
        found,
        startTune(fit, asked(elevation_m, temperature_C)),
        STEP_Hz,
      );
      const isBetween = (rate: number) => !isOnStep(rate, PUMP_STEP_Hz);
      const differ = rates.every(isBetween) && ENDS.some((end) => isBetween(retuned[end].pump_Hz));
      return differ ? [{ elevation_m, temperature_C, rates, retuned }] : [];
    }),
  );
  if (!seen) throw new Error("No cell of the card tells the two steps apart.");
  const { rates, retuned, ...site } = seen;
  const [low = "", high = ""] = rates.map((rate) => formatRate(rate, STEP_Hz));
  expect([low, high].join(" ")).toMatch(/^\d\.\d\d \d\.\d\d$/);

  const { page, close } = await openPage(browser, atlas.url, { viewport: PHONE });
  await line(page).waitFor();
  await addFoundHeater(page, "Van");
  await openSite(page);
  await field(page, "site.elevation_m").fill(String(site.elevation_m));
  await field(page, "air.temperature_C").fill(String(site.temperature_C));
  await expect.poll(() => shownTexts(page.locator(".end .rate output"))).toEqual([low, high]);
  // Fuel is that of the rate shown: 22 µL a pulse.
  const burnt = ((rates[0] as number) * 22e-6 * 3600).toFixed(2);
  await expect.poll(() => shownText(page.locator(".burn").first())).toContain(`${burnt} L/h`);
  // So is the way that keeps the fan.
  const way = page.locator(".ways tbody tr");
  await expect.poll(() => shownText(way.nth(0).locator("td").first())).toContain(`${low} Hz`);
  await expect.poll(() => shownText(way.nth(1).locator("td").first())).toContain(`${high} Hz`);

  await page.goto(`${atlas.url}/#/trip`);
  await field(page, "new.elevation_m").fill(String(site.elevation_m));
  await field(page, "new.temperature_C").fill(String(site.temperature_C));
  await field(page, "new.elevation_m").press("Enter");
  const starts = page.locator(".trip-table td[data-value] strong");
  await starts.first().waitFor({ state: "attached" });
  await expect.poll(() => shownTexts(starts)).toEqual([`${low} Hz`, `${high} Hz`]);

  await page.goto(`${atlas.url}/#/card`);
  await page.locator(".nomogram").waitFor();
  const [row, column] = [site.elevation_m, site.temperature_C].map((value) => format(value));
  const onCard = await page.locator(".card-side table").evaluateAll(
    (tables, [wantedRow = "", wantedColumn = ""]) =>
      tables.map((table) => {
        const texts = (of: ParentNode, selector: string) =>
          [...of.querySelectorAll(selector)].map((cell) => cell.textContent ?? "");
        const at = texts(table, "thead tr:last-child th").indexOf(wantedColumn);
        const rows = [...table.querySelectorAll("tbody tr")];
        const here = rows[texts(table, "tbody th").indexOf(wantedRow)];
        return here && texts(here, ".card-rate")[at];
      }),
    [row, column],
  );
  expect(onCard).toEqual([low, high]);
  // Whoever opens the card by its code has the same steps.
  await expect
    .poll(() => page.locator(".code-address").getAttribute("data-address"))
    .toContain(`step_Hz=${STEP_Hz}`);

  await page.goto(`${atlas.url}/#/onsite`);
  await field(page, "now.temperature_C").fill(String(site.temperature_C));
  await page.getByText(onsite.prepare.start(low, high)).waitFor();
  // The sweep begins where it was said to.
  await page.getByRole("button", { name: onsite.prepare.begin }).click();
  await page.locator('[name^="check."]').first().waitFor();
  const { plan } = JSON.parse(
    (await page.evaluate(() => localStorage.getItem("hypsotune.onsite"))) ?? "{}",
  );
  expect(ENDS.map((end) => plan.ends[end].start_Hz)).toEqual(rates);
  await page.evaluate(() => localStorage.removeItem("hypsotune.onsite"));

  await page.goto(`${atlas.url}/#/logbook`);
  await page.reload();
  await field(page, "tonight.elevation_m").fill(String(site.elevation_m));
  await field(page, "air.temperature_C").fill(String(site.temperature_C));
  const set = ENDS.map((end) => formatRate(retuned[end].pump_Hz, STEP_Hz)) as [string, string];
  const [said = ""] = logbookWords.supply.retuned(...set, "|").split("|");
  await page.getByText(said).waitFor();
  await close();
});
