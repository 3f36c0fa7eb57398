import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { coWords } from "../../client/texts/co.ts";
import { logbookWords as words } from "../../client/texts/logbook.ts";
import { formatPercent } from "../../client/units.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { bandByTune_pct } from "../../model/own-steps.ts";
import { faultsAt } from "./faults.ts";
import { openPage, shownText, shownTexts, spaced } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const picture = words.drift.picture;
const HEATER = {
  id: "invented-van",
  name: "Van",
  heat_kW: 5,
  changed_at: "2026-09-01T00:00:00.000Z",
};

/** Invented: CO that rises, read with one meter; the fourth with another, the fifth below its floor; then a cleaning. */
const ENTRIES = [
  ...Array.from({ length: 8 }, (_, i) => ({
    id: `invented-${10 + i}`,
    heater_id: HEATER.id,
    kind: "tune",
    at: `2026-10-${10 + i}T20:00:00.000Z`,
    site: { elevation_m: 1600 },
    air: { temperature_C: -4 },
    low: {
      pump_Hz: i === 6 ? 1.1 : 1,
      fan_rpm: 1700,
      ...(i === 4 ? { co_below_ppm: 30 } : { co_ppm: 12 + 3 * i }),
    },
    high: { pump_Hz: 3.7, fan_rpm: 4500, co_ppm: 9 },
    meter: { kind: i === 3 ? "room alarm" : "portable meter", distance_m: 0.3 },
    hours: 100 + 12 * i,
    changed_at: "2026-11-01T00:00:00.000Z",
  })),
];
const CLEANING = {
  id: "invented-cleaning",
  heater_id: HEATER.id,
  kind: "cleaning",
  at: "2026-10-20T10:00:00.000Z",
  hours: 200,
  changed_at: "2026-11-01T00:00:00.000Z",
};

async function openLogbook(entries: object[]): ReturnType<typeof openPage> {
  const opened = await openPage(browser, `${atlas.url}/#/logbook`, { viewport: PHONE });
  const { page } = opened;
  const file = { format: "hypsotune logbook", version: 1, heaters: [HEATER], entries };
  await page.locator("#logbook-file").setInputFiles({
    name: "invented.json",
    mimeType: "text/plain",
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await page.getByText(words.files.brought(entries.length + 1, 0, 0)).waitFor();
  return opened;
}

const chart = (page: Page, name: string) => page.getByRole("img", { name, exact: true });

test("drift is a picture: mixture and CO over hours, each tune read by keyboard; what does not compare looks otherwise and says so; a cleaning stands in it", async () => {
  const { page, close } = await openLogbook([...ENTRIES, CLEANING]);
  const mixture = chart(page, picture.mixtureLabel(t.endWord.low));
  const co = chart(page, picture.coLabel(t.endWord.low));
  await co.waitFor();
  await expect.poll(() => mixture.locator(".kept circle").count()).toBe(ENTRIES.length);
  // 1.1 Hz in place of 1.0 with the same fan in the same air.
  const [mixtures, readings] = await page.locator(".drift-pictures input[type=range]").all();
  if (!mixtures || !readings) throw new Error("The charts have no readers.");
  const said = async (slider: typeof mixtures, presses: number) => {
    await slider.focus();
    await page.keyboard.press("Home");
    for (let k = 0; k < presses; k++) await page.keyboard.press("ArrowRight");
    return spaced(await slider.getAttribute("aria-valuetext"));
  };
  await expect.poll(() => said(mixtures, 0)).toContain(`100 hours: ${picture.same}`);
  await expect.poll(() => said(mixtures, 6)).toContain(`172 hours: ${picture.richer("10")}`);
  await expect.poll(() => said(readings, 4)).toContain(`148 hours: ${coWords.below("30")} ppm`);
  await expect.poll(() => said(readings, 3)).toContain(picture.apart);
  await page.locator(".drift-chart .reading-mark circle").first().waitFor();
  // After the cleaning nothing compares with what was before it: all are rings, one is a triangle.
  await expect.poll(() => co.locator(".other circle").count()).toBe(ENTRIES.length - 1);
  await expect.poll(() => co.locator(".cleaning line").count()).toBe(1);
  await page.getByText(picture.cleaning).waitFor();
  await page.locator('[name="drift.end"]').selectOption("high");
  await chart(page, picture.mixtureLabel(t.endWord.high)).waitFor();
  expect(await faultsAt(page, [PHONE, LAPTOP], ".written")).toEqual([]);
  await close();
});

test("without a cleaning the dots that compare are full, with their line", async () => {
  const { page, close } = await openLogbook(ENTRIES);
  const co = chart(page, picture.coLabel(t.endWord.low));
  await co.waitFor();
  // All but the other meter, the one below its floor and the richer mixture.
  await expect.poll(() => co.locator(".kept circle").count()).toBe(ENTRIES.length - 3);
  await expect.poll(() => co.locator(".other circle").count()).toBe(2);
  await expect.poll(() => co.locator("path.curve, .curve path").count()).toBe(1);
  await page.getByText(picture.line).waitFor();
  await close();
});

test("entries without hours or fuel have no picture, and it says what it takes", async () => {
  const { page, close } = await openLogbook(ENTRIES.map(({ hours: _, ...entry }) => entry));
  await page.getByText(picture.none).waitFor();
  await close();
});

test("what each own tune did to the band is listed oldest first, as the model works it out", async () => {
  const { page, close } = await openLogbook(ENTRIES.slice(0, 4));
  const fit = await atlas.get<PublishedFit>("/fit");
  const rows = page.locator(".own-steps tbody tr");
  await expect.poll(() => rows.count()).toBe(5);
  const own = ENTRIES.slice(0, 4).map(({ site, air, low, high, at }) => ({
    site,
    air,
    low,
    high,
    tuned_on: at.slice(0, 7),
  }));
  const halves = bandByTune_pct(
    fit,
    {
      heat_kW: 5,
      site: { elevation_m: 1600, elevation_sd_m: 0, elevation_source: "given" },
      air: { temperature_C: -4 },
      low_fan_rpm: 1700,
      high_fan_rpm: 4500,
    },
    own,
  );
  const shown = await shownTexts(rows.locator("td:nth-child(2)"));
  expect(shown.map((cell) => cell.trim())).toEqual(
    halves.map((half) => `±${formatPercent(half)} %`),
  );
  await expect.poll(() => shownText(rows.first())).toContain(words.ownSteps.average);
  expect(halves[4]).toBeLessThan(halves[0] as number);
  const narrower = formatPercent((halves[0] as number) - (halves[1] as number));
  await expect.poll(() => shownText(rows.nth(1))).toContain(words.ownSteps.narrower(narrower));
  await close();
});
