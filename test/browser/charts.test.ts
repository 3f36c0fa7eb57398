import { decode } from "fast-png";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { LANGUAGES, type Language } from "../../client/language.ts";
import { asideWords as german } from "../../client/texts/de/reasons.ts";
import { asideWords as english } from "../../client/texts/en/reasons.ts";
import { scalingWords } from "../../client/texts/en/scaling.ts";
import { asideWords as spanish } from "../../client/texts/es/reasons.ts";
import type { ScalingAnswer, ScalingPoint } from "../../server/contract.ts";
import {
  cutChoices,
  cutTables,
  cutTexts,
  foreignDecimals,
  overlappingTexts,
  tallHeads,
} from "./chart-faults.ts";
import { openPage } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, emptyAtlas, plainBrowser } from "./shared.ts";
import { goTo, LAPTOP, PHONE, SIZES, VIEWS } from "./views.ts";

let browser: Browser;
let demo: RunningAtlas;
let empty: RunningAtlas;

beforeAll(async () => {
  [browser, demo, empty] = await Promise.all([plainBrowser(), demoAtlas(), emptyAtlas()]);
});

const LOCALES: Record<Language, string> = { en: "en-GB", de: "de-DE", es: "es-ES" };
/** The views in which an atlas without tunes has something else to say. */
const OF_TUNES = ["start", "card", "map", "scaling", "data"];
/** Two lines and their padding. */
const HEAD_px = 60;

/** Once every chart is drawn for the width that it has now. */
async function chartsDrawn(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    [...document.querySelectorAll(".chart")].every(
      (place) =>
        Number(place.querySelector("svg")?.getAttribute("width")) ===
        Math.max(240, place.clientWidth),
    ),
  );
}

const openAll = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll<HTMLDetailsElement>("main details")) {
      details.open = true;
    }
  });

async function expectNothingCut(page: Page, where: string): Promise<void> {
  for (const viewport of SIZES) {
    await page.setViewportSize(viewport);
    await chartsDrawn(page);
    const at = `${where}, ${viewport.width} px`;
    await expect.poll(() => cutTexts(page), { message: at }).toEqual([]);
    await expect.poll(() => overlappingTexts(page), { message: at }).toEqual([]);
    await expect.poll(() => tallHeads(page, HEAD_px), { message: at }).toEqual([]);
    await expect.poll(() => cutTables(page), { message: at }).toEqual([]);
    await expect.poll(() => cutChoices(page), { message: at }).toEqual([]);
  }
}

// Whatever a page complains of meanwhile fails it too.
test.each(
  LANGUAGES.flatMap((language) => (["demo", "empty"] as const).map((of) => [language, of])),
)(
  "%s, %s: in no view or size is anything cut off, do texts overlap, are figures written in another language's way; wide tables show that they scroll",
  async (language, of) => {
    const atlas = of === "demo" ? demo : empty;
    const { page, close } = await openPage(browser, `${atlas.url}/#/data`, {
      locale: LOCALES[language as Language],
    });
    for (const view of of === "demo" ? Object.keys(VIEWS) : OF_TUNES) {
      await goTo(page, view);
      await openAll(page);
      await expectNothingCut(page, `${language}, ${of}, #/${view}`);
      await expect
        .poll(() => foreignDecimals(page, language === "en" ? "," : "."), {
          message: `${language}, ${of}, #/${view}`,
        })
        .toEqual([]);
      if (view !== "scaling") continue;
      await page.locator(".choices select").nth(2).selectOption("elevation");
      await page.locator(".choices select").nth(3).selectOption("tunes");
      await expectNothingCut(page, `${language}, ${of}, #/${view} over elevation`);
    }
    await close();
  },
);

test("German axes have a decimal comma, English ones a point", async () => {
  for (const [language, mark] of [
    ["en", "."],
    ["de", ","],
  ] as const) {
    const { page, close } = await openPage(browser, `${demo.url}/#/scaling`, {
      locale: LOCALES[language],
    });
    await page.locator(".residual-chart").waitFor();
    const figures = await page.locator("main .chart svg text").allTextContents();
    expect(figures).toContain(`0${mark}8`);
    expect(figures).toContain(`1${mark}2`);
    await close();
  }
});

test("three held slips at 10,000 m: the axes stay, the edge says how many lie beyond, and so does a sentence", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/data`);
  const slips = (point: ScalingPoint): ScalingPoint[] =>
    [9800, 10_000, 10_200].map((elevation_m) => ({
      ...point,
      elevation_m,
      density_kg_m3: 0.41,
      status: "held",
    }));
  await page.route("**/api/scaling?*", async (route) => {
    const answer = (await (await route.fetch()).json()) as ScalingAnswer;
    const points = answer.points.filter(({ status }) => status === "kept");
    await route.fulfill({
      json: { ...answer, points: [...points, ...slips(points[0] as ScalingPoint)] },
    });
  });
  await goTo(page, "scaling");
  await page.getByText(scalingWords.beyond(3)).first().waitFor();
  for (const [over, side] of [
    ["density", "start"],
    ["elevation", "end"],
  ] as const) {
    await page.getByLabel(scalingWords.over, { exact: true }).selectOption(over);
    const note = page.locator(`.scaling-chart .edge-note[data-side=${side}]`);
    await note.waitFor();
    await expect.poll(() => note.textContent()).toContain(scalingWords.beyondHere("3"));
    await expect.poll(() => marksOutside(page, ".scaling-chart", ".held path")).toEqual([]);
  }
  const figures = await page.locator(".scaling-chart text").allTextContents();
  expect(figures).toContain("5,000");
  expect(figures.filter((text) => /^([6-9]|\d{2}),\d{3}$/.test(text))).toEqual([]);
  await close();
});

/** Marks of a chart that reach out of its frame. */
function marksOutside(page: Page, chart: string, marks: string): Promise<string[]> {
  return page.locator(chart).evaluate((svg, selector) => {
    const frame = svg.querySelector(".chart-frame")?.getBoundingClientRect();
    if (!frame) return ["there is no frame"];
    return [...svg.querySelectorAll(selector)]
      .filter((mark) => {
        const { left, right, top, bottom } = mark.getBoundingClientRect();
        return left < frame.left || right > frame.right || top < frame.top || bottom > frame.bottom;
      })
      .map((mark) => mark.outerHTML);
  }, marks);
}

// The languages of long words.
test.each(["de", "es"] as const)(
  "%s: a chart and what is read off it are on one screen",
  async (language) => {
    const { page, close } = await openPage(browser, `${demo.url}/#/scaling`, {
      locale: LOCALES[language],
      viewport: LAPTOP,
    });
    await page.locator(".residual-chart").waitFor();
    await chartsDrawn(page);
    const readable = page.locator(".readable").first();
    await readable.getByRole("slider").press("End");
    await readable.locator(".reading-mark").waitFor();
    // From the top of the page on a laptop.
    await page.evaluate(() => scrollTo(0, 0));
    await expect
      .poll(() => spanOf(page, ".scaling-chart", ".reader output"))
      .toMatchObject({ seen: true });
    await page.setViewportSize(PHONE);
    await chartsDrawn(page);
    for (const chart of [".scaling-chart", ".residual-chart"]) {
      const { height } = await spanOf(page, chart, ".reader output");
      expect(height, `${chart} on a phone`).toBeLessThan(PHONE.height);
    }
    await close();
  },
);

/** From the top of a chart to the foot of its reading, px, and whether all of it is on the screen. */
function spanOf(page: Page, chart: string, reading: string) {
  return page.locator(chart).evaluate((svg, selector) => {
    const boxes = [svg, svg.closest(".readable")?.querySelector(selector) as Element].map((part) =>
      part.getBoundingClientRect(),
    );
    const [top, bottom] = [
      Math.min(...boxes.map((box) => box.top)),
      Math.max(...boxes.map((box) => box.bottom)),
    ];
    return { height: bottom - top, seen: top >= 0 && bottom <= innerHeight };
  }, reading);
}

/** What a part of the page looks like now. */
async function picture(page: Page, selector: string) {
  const png = await page.locator(selector).first().screenshot({ animations: "disabled" });
  return decode(png);
}

test("lines that join one owner's tunes hide neither tunes nor bands", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/scaling`, {
    deviceScaleFactor: 1,
  });
  await page.locator(".residual-chart").waitFor();
  await chartsDrawn(page);
  const lines = page.locator(".scaling-chart .contributor-lines");
  const withLines = await picture(page, ".scaling-chart");
  await lines.evaluate((group) => group.setAttribute("display", "none"));
  const without = await picture(page, ".scaling-chart");
  const share = (least: number) => {
    let points = 0;
    for (let i = 0; i < without.data.length; i += without.channels) {
      const off = [0, 1, 2].map((c) =>
        Math.abs((withLines.data[i + c] as number) - (without.data[i + c] as number)),
      );
      if (Math.max(...off) >= least) points++;
    }
    return points / (without.width * without.height);
  };
  // They are there, and few points differ by more than the eye would overlook.
  expect(share(5)).toBeGreaterThan(0.005);
  expect(share(40)).toBeLessThan(0.005);
  await close();
});

test("a wide table is shaded where it goes on, and no longer once its end is reached; arrow keys move it", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/scaling`, {
    viewport: PHONE,
    deviceScaleFactor: 1,
  });
  const table = "section[aria-labelledby=aside] .scrolls";
  const place = page.locator(table);
  await place.waitFor();
  /** How far each edge differs from the sheet beside it, 0 to 255: the median of its points, few of which are letters. */
  const shades = async () => {
    const { data, width, height, channels } = await picture(page, table);
    const shadeAt = (x: number, inner: number) => {
      const red = (px: number, y: number) => data[(y * width + px) * channels] as number;
      const off = Array.from({ length: height }, (_, y) => Math.abs(red(x, y) - red(inner, y)));
      return off.sort((a, b) => a - b)[Math.floor(height / 2)] as number;
    };
    return { start: shadeAt(1, 40), end: shadeAt(width - 2, width - 40) };
  };
  const scrolled = () =>
    place.evaluate(({ scrollLeft, scrollWidth, clientWidth }) => ({
      now: scrollLeft,
      most: scrollWidth - clientWidth,
    }));
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    await place.evaluate((element) => {
      element.scrollLeft = 0;
    });
    const atStart = await shades();
    expect(atStart.end, colorScheme).toBeGreaterThan(25);
    expect(atStart.start, colorScheme).toBeLessThan(8);
    await place.focus();
    await expect
      .poll(async () => {
        await page.keyboard.press("ArrowRight");
        const { now, most } = await scrolled();
        return most - now;
      })
      .toBeLessThan(1);
    const atEnd = await shades();
    expect(atEnd.start, colorScheme).toBeGreaterThan(25);
    expect(atEnd.end, colorScheme).toBeLessThan(8);
  }
  await close();
});

test("without tunes every band is seen: that of most heaters lies over no wider one of the average", async () => {
  const { page, close } = await openPage(browser, `${empty.url}/#/scaling`);
  await page.locator(".scaling-chart .area-inner path").waitFor();
  await chartsDrawn(page);
  const painted = await page.locator(".scaling-chart").evaluate((svg) => {
    const frame = svg.querySelector(".chart-frame")?.getBoundingClientRect() as DOMRect;
    const x = frame.left + frame.width / 2;
    const order: string[] = [];
    for (let y = frame.top + 2; y < frame.bottom; y++) {
      const name = document.elementFromPoint(x, y)?.parentElement?.getAttribute("class") ?? "";
      if (name !== order.at(-1) && /area|edge|curve/.test(name)) order.push(name);
    }
    return order.join(" ");
  });
  expect(painted).toBe(
    [
      ...["area-outer", "edge-mean", "area-outer", "area-inner", "curve"],
      ...["area-inner", "area-outer", "edge-mean", "area-outer"],
    ].join(" "),
  );
  await page.goto(empty.url);
  await page.locator(".band-drawing").first().waitFor();
  // The first view draws the bands of heaters alone; the average's is a figure there.
  for (const drawing of await page.locator(".band-drawing").all()) {
    const names = await drawing
      .locator("rect")
      .evaluateAll((bars) => bars.map((bar) => bar.getAttribute("class")));
    expect(names).toEqual(["band-outer", "band-inner"]);
  }
  await close();
});

test("in a window however narrow nothing is drawn of a negative width", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/scaling`);
  for (const [view, shown] of [
    ["scaling", ".residual-chart"],
    ["data/bands", ".study-chart"],
  ] as const) {
    await goTo(page, view);
    await page.locator(shown).first().waitFor();
    for (const width of [320, 120, 60, 1280]) {
      await page.setViewportSize({ width, height: 800 });
      await chartsDrawn(page);
    }
  }
  await close();
});

test.each([
  ["en", english],
  ["de", german],
  ["es", spanish],
] as const)(
  "%s: why a tune was set aside is said in the page's language",
  async (language, words) => {
    const { page, close } = await openPage(browser, "about:blank", { locale: LOCALES[language] });
    await page.route("**/api/scaling?*", async (route) => {
      const answer = (await (await route.fetch()).json()) as ScalingAnswer;
      const [point] = answer.points.filter(({ status }) => status === "rejected");
      const unknown = { ...(point as ScalingPoint), aside: { code: "of_tomorrow", figures: {} } };
      await route.fulfill({ json: { ...answer, points: [...answer.points, unknown] } });
    });
    await page.goto(`${demo.url}/#/scaling`);
    const reasons = page.locator("section[aria-labelledby=aside] td.reason");
    await reasons.first().waitFor();
    const said = await reasons.evaluateAll((cells) =>
      cells.map(
        (cell) => [cell.textContent ?? "", cell.querySelector("[lang=en]") !== null] as const,
      ),
    );
    expect(said).toHaveLength(4);
    const known = said.slice(0, -1);
    const begins = Object.values(words).map((say) => say(() => "#").split("#")[0] as string);
    for (const [sentence, marked] of known) {
      expect(marked, sentence).toBe(false);
      expect(
        begins.some((start) => sentence.startsWith(start)),
        sentence,
      ).toBe(true);
    }
    const [sentence, marked] = said.at(-1) as (typeof said)[0];
    expect(sentence).toMatch(/richer/);
    expect(marked).toBe(language !== "en");
    await close();
  },
);
