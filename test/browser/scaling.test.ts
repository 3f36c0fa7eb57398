import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { inWords } from "../../client/atlas/scaling/aside-sentence.tsx";
import { byContributor } from "../../client/atlas/scaling/by-contributor.ts";
import { t } from "../../client/texts/app.ts";
import { scalingWords } from "../../client/texts/scaling.ts";
import { format } from "../../client/units.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { residual_pct } from "../../model/residual.ts";
import { groupOf } from "../../model/start.ts";
import type { ScalingAnswer } from "../../server/contract.ts";
import { openPage, shownText, shownTexts, spaced } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
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
  const { page, close } = await openScaling();
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
        await expect.poll(() => marks(page, area).locator("path").count()).toBe(1);
      }
      await expect.poll(() => marks(page, "curve").locator("path").count()).toBe(1);
    }
  }
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
  await expect.poll(() => marks(page, "rejected").locator("path").count()).toBe(2);
  await expect.poll(() => marks(page, "held").locator("path").count()).toBe(1);
  const rows = await shownTexts(page.locator("section[aria-labelledby=aside] tbody tr"));
  expect(rows).toHaveLength(3);
  for (const [i, { aside: why, density_kg_m3 }] of aside.entries()) {
    expect(rows[i]).toContain(why && inWords(why));
    expect(rows[i]).toContain(format(density_kg_m3, 3));
  }
  await page.getByText(scalingWords.showRows(scaling.points.length)).click();
  await page.locator("section[aria-labelledby=points] tbody").waitFor();
  const all = await page.locator("section[aria-labelledby=points] tbody tr").count();
  expect(all).toBe(scaling.points.length);
  await page
    .getByText(/beyond this chart and/)
    .first()
    .waitFor();
  await close();
});

test("lines join the tunes of one contributor and no others; the one that is read stands out", async () => {
  const { page, close } = await openScaling();
  const { points } = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  const tunes = byContributor(points.filter(({ status }) => status !== "held"));
  const several = [...tunes.values()].filter(({ length }) => length > 1);
  expect(several.length).toBeGreaterThan(40);
  await marks(page, "contributor-lines").locator("path").first().waitFor();
  await expect
    .poll(() => marks(page, "contributor-lines").locator("path").count())
    .toBe(several.length);
  await page.getByLabel(scalingWords.read, { exact: true }).selectOption("tunes");
  const slider = page.getByRole("slider", { name: scalingWords.readTunes, exact: true });
  await expect
    .poll(async () => {
      await slider.press("Home");
      return marks(page, "reading-mark").locator(".joined").count();
    })
    .toBe(2);
  const thinnest = points.toSorted((a, b) => a.density_kg_m3 - b.density_kg_m3)[0];
  const own = points.filter(({ contributor }) => contributor === thinnest?.contributor);
  const drawn = await marks(page, "reading-mark").locator(".joined").last().getAttribute("d");
  expect(drawn?.split("L")).toHaveLength(own.length);
  await close();
});

test("a class that nobody has tuned shows physics alone and says so", async () => {
  const { page, close } = await openScaling();
  await page.getByLabel(t.heater.heat).selectOption("8");
  await page.getByText(scalingWords.prior).waitFor();
  await page.getByText(scalingWords.points("0", "0")).waitFor();
  await expect.poll(() => page.getByText(scalingWords.asideNone).count()).toBe(0);
  await marks(page, "area-outer").locator("path").waitFor();
  await close();
});

test("arrow keys walk along curve and tunes, and say in words what the model says there", async () => {
  const { page, close } = await openScaling();
  const { curve, points } = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  await page.locator(".scaling-chart").waitFor();
  const slider = page.getByRole("slider", { name: scalingWords.readCurve });
  const least = Number(await slider.getAttribute("min"));
  // The chart may just be drawn anew, at the width it found.
  const home = async () => {
    await slider.press("Home");
    return Number(await slider.inputValue());
  };
  await expect.poll(home).toBe(least);
  for (let step = 1; step <= 3; step++) {
    await slider.press("ArrowRight");
    await expect.poll(async () => Number(await slider.inputValue())).toBe(least + step);
  }
  const seen = curve.filter((d) => d.density_kg_m3 >= 0.7 && d.density_kg_m3 <= 1.4);
  const fourth = seen[3] as (typeof seen)[0];
  const saidOf = async (one: typeof slider) => spaced(await one.getAttribute("aria-valuetext"));
  await expect.poll(() => saidOf(slider)).toContain(format(fourth.density_kg_m3, 3));
  const said = await saidOf(slider);
  expect(said).toContain(format(fourth.pump_Hz_per_krpm, 3));
  for (const { lower, upper } of [fourth.mean_band, ...fourth.new_heater_bands]) {
    expect(said).toContain(`${format(lower, 3)}–${format(upper, 3)}`);
  }
  await expect.poll(() => shownText(page.locator(".reader output").first())).toBe(said);
  await expect.poll(() => marks(page, "reading-mark").count()).toBe(1);
  await page.getByLabel(scalingWords.read, { exact: true }).selectOption("tunes");
  const walker = page.getByRole("slider", { name: scalingWords.readTunes, exact: true });
  const densest = points.toSorted((a, b) => a.density_kg_m3 - b.density_kg_m3).at(-1);
  const end = async () => {
    await walker.press("End");
    return saidOf(walker);
  };
  await expect.poll(end).toContain(format(densest?.density_kg_m3 ?? 0, 3));
  expect(Number(await walker.getAttribute("max"))).toBe(points.length - 1);
  await close();
});

test("the pointer reads the tune it is on, at its residual against the published fit", async () => {
  const { page, close } = await openScaling();
  const scaling = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  const group = groupOf(await atlas.get<PublishedFit>("/fit"), 5, "low");
  const kept = scaling.points
    .filter(({ status }) => status === "kept")
    .toSorted((a, b) => a.density_kg_m3 - b.density_kg_m3);
  const dots = page.locator(".residual-chart .kept circle");
  await dots.first().waitFor();
  await expect.poll(() => dots.count()).toBe(kept.length);
  await dots.nth(7).scrollIntoViewIfNeeded();
  await dots.nth(7).hover({ force: true });
  const point = kept[7] as (typeof kept)[0];
  const off = residual_pct(group, point.density_kg_m3, point.pump_Hz_per_krpm);
  const said = await shownText(page.locator("section[aria-labelledby=residuals] output"));
  expect(said).toContain(`${off < 0 ? "−" : "+"}${format(Math.abs(off), 1)} %`);
  expect(said).toContain(format(point.density_kg_m3, 3));
  // Pixels are a straight function of the residuals.
  const ys = await dots.evaluateAll((all) => all.map((dot) => Number(dot.getAttribute("cy"))));
  const { slope, worst } = straight(
    kept.map((p, i) => [residual_pct(group, p.density_kg_m3, p.pump_Hz_per_krpm), ys[i] as number]),
  );
  expect(slope).toBeLessThan(0);
  expect(worst).toBeLessThan(0.05);
  await close();
});

test("the figures behind each chart are saved as CSV, row for row", async () => {
  const { page, close } = await openScaling();
  const scaling = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  const saved = async (label: string): Promise<Record<string, string>[]> => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: label }).click(),
    ]);
    return parse(readFileSync(await download.path(), "utf8"), { columns: true });
  };
  const tunes = await saved(scalingWords.csv.points);
  expect(tunes.map((row) => Number(row.pump_Hz))).toEqual(
    scaling.points.map(({ pump_Hz }) => pump_Hz),
  );
  expect(tunes.map(({ reason }) => reason)).toEqual(
    scaling.points.map(({ reason }) => reason ?? ""),
  );
  const curve = await saved(scalingWords.csv.curve);
  for (const row of [...tunes, ...curve]) expect(row.caution).toContain(t.safety.notice);
  expect(curve).toHaveLength(scaling.curve.length);
  expect(Number(curve[5]?.new_heater_95_upper)).toBeCloseTo(
    scaling.curve[5]?.new_heater_bands[1]?.upper ?? 0,
    4,
  );
  await close();
});
