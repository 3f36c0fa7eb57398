import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { heaterWords } from "../../client/texts/heater.ts";
import { mapWords } from "../../client/texts/map.ts";
import { scalingWords } from "../../client/texts/scaling.ts";
import { format, formatOfRates, formatRate } from "../../client/units.ts";
import type { End } from "../../model/end.ts";
import type { CellTunesAnswer, NearAnswer } from "../../server/contract.ts";
import { axeFinds, sideways } from "./faults.ts";
import { field, openPage, openSite, shownText, shownTexts, spaced } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const PHONE = { viewport: { width: 360, height: 740 } };
const words = heaterWords.near;

async function openNear() {
  const opened = await openPage(browser, atlas.url, PHONE);
  await openSite(opened.page);
  await field(opened.page, "site.elevation_m").fill("2980");
  await field(opened.page, "air.temperature_C").fill("-12");
  const { tunes } = await atlas.get<NearAnswer>(
    "/tunes/near?heat_kW=5&elevation_m=2980&temperature_C=-12",
  );
  const rows = opened.page.locator(".near tbody tr");
  await opened.page.locator(".near").scrollIntoViewIfNeeded();
  const rate = formatOfRates(tunes.flatMap(({ low, high }) => [low.pump_Hz, high.pump_Hz]));
  await expect
    .poll(() => shownText(rows.first()))
    .toContain(words.pair(rate(tunes[0]?.low.pump_Hz ?? 0), rate(tunes[0]?.high.pump_Hz ?? 0)));
  return { ...opened, tunes, rows };
}

test("each tune like this one opens in the chart, by keyboard: read out and marked, at either power; the arrow keys go on from it", async () => {
  const { page, close, tunes, rows } = await openNear();
  await expect.poll(() => rows.count()).toBe(tunes.length);
  const [tune] = tunes;
  if (!tune) throw new Error("There is no tune.");
  await rows.first().getByText(words.chart).focus();
  await page.keyboard.press("Enter");
  const slider = page.locator(".readable input[type=range]").first();
  await page.locator(".readable input[type=range]:focus").waitFor();
  await page.locator(".scaling-chart .reading-mark circle").first().waitFor();
  for (const end of ["low", "high"] as const) {
    await page.getByLabel(scalingWords.end, { exact: true }).selectOption(end);
    const { pump_Hz, fan_rpm } = tune[end];
    await page
      .getByRole("img", { name: scalingWords.chartLabel(t.endWord[end], scalingWords.density) })
      .waitFor();
    await expect
      .poll(async () => spaced(await slider.getAttribute("aria-valuetext")))
      .toContain(`${formatRate(pump_Hz)} Hz`);
    await expect.poll(() => slider.getAttribute("aria-valuetext")).toContain(format(fan_rpm));
    await page.locator(".scaling-chart .reading-mark circle").first().waitFor();
  }
  const before = await slider.inputValue();
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  expect(Number(await slider.inputValue())).toBe(Number(before) + 1);
  expect(await axeFinds(page, { within: "main", themes: ["light"] })).toEqual([]);
  // What was asked for by the address is not what the page remembers.
  await page.goto(`${atlas.url}/#/map`);
  await page.goto(`${atlas.url}/#/scaling`);
  await page.getByLabel(scalingWords.readCurve).waitFor();
  await page.goto(`${atlas.url}/#/scaling/tune/5/1/2/3/4/5`);
  await page.getByText(scalingWords.notAmong).waitFor();
  await page.goto(`${atlas.url}/#/map`);
  await page.goto(`${atlas.url}/#/scaling/tune/5/x/2/3/4/5`);
  await page.getByLabel(scalingWords.readCurve).waitFor();
  await close();
});

test("each tune with a place opens on the map, by keyboard: its cell with its tunes; a cell that is gone is said", async () => {
  const { page, close, tunes, rows } = await openNear();
  const at = tunes.findIndex(({ cell }) => cell !== null);
  const tune = tunes[at];
  if (!tune) throw new Error("No tune has a place.");
  const without = tunes.filter(({ cell }) => cell === null).length;
  await expect
    .poll(() => rows.getByText(words.map, { exact: true }).count())
    .toBe(tunes.length - without);
  const small = await rows
    .locator("a")
    .evaluateAll((all) => all.filter((link) => link.getBoundingClientRect().height < 43.5).length);
  expect(small).toBe(0);
  await expect.poll(() => sideways(page)).toBe(0);
  await rows.nth(at).getByText(words.map, { exact: true }).focus();
  await page.keyboard.press("Enter");
  const list = page.locator(".cell-tunes");
  await list.getByRole("row").nth(1).waitFor();
  const pairs = await shownTexts(list.getByRole("row"));
  const { tunes: inCell } = await atlas.get<CellTunesAnswer>(`/cells/${tune.cell}/tunes`);
  const set = (end: End) =>
    mapWords.cell.set(
      formatOfRates(inCell.map((one) => one[end].pump_Hz))(tune[end].pump_Hz),
      format(tune[end].fan_rpm),
    );
  expect(pairs.some((row) => row.includes(set("low")) && row.includes(set("high")))).toBe(true);
  expect(await axeFinds(page, { within: ".cell-tunes", themes: ["light"] })).toEqual([]);
  await page.goto(`${atlas.url}/#/map/800000000000000`);
  await page.getByText(mapWords.cell.gone).waitFor();
  await close();
});
