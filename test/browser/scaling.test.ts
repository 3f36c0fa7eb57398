import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { scalingWords } from "../../client/texts/scaling.ts";
import { format } from "../../client/units.ts";
import type { ScalingAnswer } from "../../server/contract.ts";
import { launchChromium } from "./chromium.ts";
import { inventedTunes, tuneFarOff, tuneInPulsesAMinute } from "./crowd.ts";
import { openPage } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([launchChromium(), runAtlas(["--demo"])]);
  await atlas.load([...inventedTunes(), tuneInPulsesAMinute(), tuneFarOff(2), tuneFarOff(5)]);
});

afterAll(async () => {
  await browser?.close();
  await atlas?.close();
});

const openScaling = () => openPage(browser, `${atlas.url}/#/scaling`);
const marks = (page: Page, name: string) => page.locator(`.scaling-chart .${name}`);

/** Centres of the dots of a chart, in its own coordinates. */
function dotsOf(page: Page): Promise<{ x: number; y: number }[]> {
  return marks(page, "kept")
    .locator("circle")
    .evaluateAll((circles) =>
      circles.map((circle) => ({
        x: Number(circle.getAttribute("cx")),
        y: Number(circle.getAttribute("cy")),
      })),
    );
}

/** The straight line through pairs, and how far the worst lies off it. */
function straight(pairs: [number, number][]): { slope: number; worst: number } {
  const n = pairs.length;
  const mean = (i: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[i], 0) / n;
  const [mx, my] = [mean(0), mean(1)];
  const slope =
    pairs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) /
    pairs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
  return { slope, worst: Math.max(...pairs.map(([x, y]) => Math.abs(y - my - slope * (x - mx)))) };
}

test("every tune stands in the chart at its figures, over density and over elevation, inside both bands", async () => {
  const { page, complaints, close } = await openScaling();
  for (const end of ["low", "high"] as const) {
    await page.getByLabel(scalingWords.end, { exact: true }).selectOption(end);
    const scaling = await atlas.get<ScalingAnswer>(`/scaling?heat_kW=5&end=${end}`);
    const kept = scaling.points.filter(({ status }) => status === "kept");
    expect(kept.length).toBeGreaterThan(80);
    for (const over of ["density", "elevation"] as const) {
      await page.getByLabel(scalingWords.over, { exact: true }).selectOption(over);
      await page
        .getByRole("img", { name: scalingWords.chartLabel(t.endWord[end], scalingWords[over]) })
        .waitFor();
      const dots = await dotsOf(page);
      expect(dots).toHaveLength(kept.length);
      // Pixels are a straight function of the figures: upwards for more, to the right for denser or higher.
      const key = over === "density" ? "density_kg_m3" : "elevation_m";
      const x = straight(dots.map((dot, i) => [kept[i]?.[key] ?? 0, dot.x]));
      const y = straight(dots.map((dot, i) => [kept[i]?.pump_Hz_per_krpm ?? 0, dot.y]));
      expect(x.slope).toBeGreaterThan(0);
      expect(y.slope).toBeLessThan(0);
      expect(Math.max(x.worst, y.worst)).toBeLessThan(0.01);
      for (const area of ["area-mean", "area-inner", "area-outer"]) {
        expect(await marks(page, area).locator("path").count()).toBe(1);
      }
      expect(await marks(page, "curve").locator("path").count()).toBe(1);
    }
  }
  expect(complaints).toEqual([]);
  await close();
});

test("the bands of the chart nest: the mean's within 80 in 100 heaters, these within 95", async () => {
  const { page, close } = await openScaling();
  await marks(page, "area-mean").locator("path").waitFor();
  const heights = [];
  for (const area of ["area-mean", "area-inner", "area-outer"]) {
    const box = await marks(page, area).locator("path").boundingBox();
    heights.push(box?.height ?? 0);
  }
  expect(heights).toEqual([...heights].sort((a, b) => a - b));
  expect(new Set(heights).size).toBe(3);
  await close();
});

test("what is set aside is marked by form, listed with its reason, and never dropped", async () => {
  const { page, close } = await openScaling();
  const scaling = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  const aside = scaling.points.filter(({ status }) => status !== "kept");
  expect(aside.map(({ status }) => status).sort()).toEqual(["held", "rejected", "rejected"]);
  await marks(page, "rejected").locator("path").first().waitFor();
  expect(await marks(page, "rejected").locator("path").count()).toBe(2);
  expect(await marks(page, "held").locator("path").count()).toBe(1);
  const rows = await page.locator("section[aria-labelledby=aside] tbody tr").allTextContents();
  expect(rows).toHaveLength(3);
  for (const [i, { reason, density_kg_m3 }] of aside.entries()) {
    expect(rows[i]).toContain(reason);
    expect(rows[i]).toContain(format(density_kg_m3, 3));
  }
  await page.getByText(scalingWords.showRows(scaling.points.length)).click();
  await page.locator("section[aria-labelledby=points] tbody").waitFor();
  const all = await page.locator("section[aria-labelledby=points] tbody tr").count();
  expect(all).toBe(scaling.points.length);
  await page.getByText(/beyond the frame/).waitFor();
  await close();
});

test("lines join the tunes of one contributor and no others", async () => {
  const { page, close } = await openScaling();
  const scaling = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  const contributors = new Set(scaling.points.map(({ contributor }) => contributor));
  await marks(page, "contributor-lines").locator("path").first().waitFor();
  expect(await marks(page, "contributor-lines").locator("path").count()).toBe(contributors.size);
  await close();
});

test("a class that nobody has tuned shows physics alone and says so", async () => {
  const { page, complaints, close } = await openScaling();
  await page.getByLabel(t.heater.heat).selectOption("8");
  await page.getByText(scalingWords.prior).waitFor();
  await page.getByText(scalingWords.asideNone).waitFor();
  await marks(page, "area-outer").locator("path").waitFor();
  expect(complaints).toEqual([]);
  await close();
});
