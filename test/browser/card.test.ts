import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { PAPERS } from "../../client/app/link/card-choice.ts";
import { LANGUAGES, type Language } from "../../client/language.ts";
import { cardWords } from "../../client/texts/card.ts";
import { tuneAt } from "../../model/card/card-table.ts";
import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { faultsAt } from "./faults.ts";
import { openLine } from "./line.ts";
import { CUT_OFF, field, openPage, shownText } from "./open-page.ts";
import { addFoundHeater, line as heaterLine } from "./own-heater.ts";
import { readPdf } from "./pdf.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, emptyAtlas, plainBrowser } from "./shared.ts";
import { PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;
let empty: RunningAtlas;
let fit: PublishedFit;

beforeAll(async () => {
  [browser, atlas, empty] = await Promise.all([plainBrowser(), demoAtlas(), emptyAtlas()]);
  fit = await atlas.get<PublishedFit>("/fit");
});

const HEATER = { heat_kW: 5, low_fan_rpm: 1800, high_fan_rpm: 4700, dose_uL: 22 };

async function openCard(options: Parameters<typeof openPage>[2] = {}, at = atlas) {
  const opened = await openPage(browser, `${at.url}/#/card`, options);
  const { page } = opened;
  await page.locator(".nomogram").waitFor();
  await field(page, "low.fan_rpm").fill(String(HEATER.low_fan_rpm));
  await field(page, "high.fan_rpm").fill(String(HEATER.high_fan_rpm));
  await field(page, "heater.dose_uL").fill(String(HEATER.dose_uL));
  return opened;
}

/** The table of one end as printed: rows' elevations, columns' temperatures, cells, as texts. */
function tableOf(page: Page, end: End) {
  return page.locator(`table[data-end=${end}]`).evaluate((table) => {
    const texts = (selector: string) =>
      [...table.querySelectorAll(selector)].map((cell) => cell.textContent ?? "");
    return {
      columns: texts("thead tr:last-child th").slice(0, -2),
      rows: texts("tbody th"),
      rates: [...table.querySelectorAll("tbody tr")].map((row) =>
        [...row.querySelectorAll(".card-rate")].map((cell) => cell.textContent ?? ""),
      ),
    };
  });
}

const numberOf = (text: string) => Number(text.replaceAll(/[(),]/g, "").replace("−", "-"));

async function expectStartTunes(page: Page, toMetres: number, toCelsius: (t: number) => number) {
  for (const end of ENDS) {
    const { columns, rows, rates } = await tableOf(page, end);
    expect(rows.length).toBeGreaterThan(5);
    expect(columns.length).toBeGreaterThan(3);
    for (const [i, row] of rows.entries()) {
      for (const [j, column] of columns.entries()) {
        const tune = tuneAt(fit, HEATER, numberOf(row) * toMetres, toCelsius(numberOf(column)));
        const rate = rates[i]?.[j] ?? "";
        expect(numberOf(rate), `${end}, ${row}, ${column}`).toBeCloseTo(tune[end].pump_Hz, 6);
        expect(rate.startsWith("(")).toBe(tune.basis.extrapolated);
      }
    }
  }
}

test("every cell is the start tune for the owner's fan speeds, in metres and in feet", async () => {
  const { page, close } = await openCard();
  await expectStartTunes(page, 1, (t) => t);
  await page.getByText(cardWords.dose("22", "0.079")).waitFor();
  await field(page, "elevation.to_m").locator("xpath=../select").selectOption("ft");
  await field(page, "temperature.to_C").locator("xpath=../select").selectOption("°F");
  await page.getByText(cardWords.elevation("ft")).first().waitFor();
  await expectStartTunes(page, 0.3048, (t) => (t - 32) / 1.8);
  await page.getByText(cardWords.holds("1,600 ft", "27 °F")).waitFor();
  await expect.poll(() => cutParts(page)).toEqual([]);
  await close();
});

interface DrawnTick {
  value: number;
  x: number;
  y: number;
}

/** The ticks as they stand on the screen, pixels, each at the end that touches its line. */
async function drawnTicks(page: Page): Promise<Record<string, DrawnTick[]>> {
  return page.locator(".nomogram").evaluate((svg) => {
    const scales: Record<string, DrawnTick[]> = {};
    for (const scale of svg.querySelectorAll<SVGGElement>("[data-scale]")) {
      scales[scale.dataset.scale as string] = [...scale.querySelectorAll("line")].map((line) => {
        const place = line.getScreenCTM() as DOMMatrix;
        const foot = new DOMPoint(line.x1.baseVal.value, line.y1.baseVal.value);
        const { x, y } = foot.matrixTransform(place);
        return { value: Number(line.dataset.value), x, y };
      });
    }
    return scales;
  });
}

test("a straight-edge over the drawn ticks gives the model's start tune at both ends", async () => {
  const { page, close } = await openCard();
  const { elevation = [], temperature = [], low = [], high = [] } = await drawnTicks(page);
  const scales = { low, high };
  expect(elevation.length).toBeGreaterThan(20);
  expect(temperature.length).toBeGreaterThan(20);
  // The card says how far a perfect reading may be off: the moisture of the air is not quite a sum of two scales.
  const figure = "8.8";
  const [before = "", after = ""] = cardWords.nomogram.error(figure).split(figure);
  const said = await shownText(page.getByText(before).first());
  const stated_pct = Number.parseFloat(said.slice(said.indexOf(before) + before.length));
  expect(said).toContain(after.trim());
  expect(stated_pct).toBeLessThan(0.5);
  let read = 0;
  for (const left of elevation.filter((_, i) => i % 7 === 0)) {
    for (const right of temperature.filter((_, i) => i % 9 === 0)) {
      const tune = tuneAt(fit, HEATER, left.value, right.value);
      for (const end of ENDS) {
        const scale = scales[end].toSorted((a, b) => a.y - b.y);
        const x = scale[0]?.x ?? Number.NaN;
        const y = left.y + ((right.y - left.y) * (x - left.x)) / (right.x - left.x);
        const below = scale.findIndex((tick) => tick.y >= y);
        if (below < 1) continue;
        const [a, b] = [scale[below - 1] as DrawnTick, scale[below] as DrawnTick];
        // The scale is logarithmic, and so is what lies between two of its ticks.
        const rate = a.value * (b.value / a.value) ** ((y - a.y) / (b.y - a.y));
        expect(Math.abs(rate / tune[end].pump_Hz_exact - 1)).toBeLessThan(
          (stated_pct + 0.02) / 100,
        );
        read++;
      }
    }
  }
  expect(read).toBeGreaterThan(60);
  // Figures stand at their ticks: as many as are labelled, none on another.
  const boxes = await page.locator(".nomogram [data-scale] text").evaluateAll((texts) =>
    texts.map((text) => {
      const { left, right, top, bottom } = text.getBoundingClientRect();
      return { left, right, top, bottom };
    }),
  );
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) {
      const apart =
        a.right <= b.left || b.right <= a.left || a.bottom <= b.top + 4 || b.bottom <= a.top + 4;
      expect(apart).toBe(true);
    }
  }
  await close();
});

const PAPERS_mm = {
  a6: { pages: 2, size: [105, 148] },
  letter: { pages: 1, size: [279.4, 215.9] },
} as const;

const CARBON_MONOXIDE: Record<string, string> = {
  "en-US": "Carbon monoxide kills: tune outdoors",
  "de-DE": "Kohlenmonoxid tötet: nur im Freien abstimmen",
  "es-ES": "El monóxido de carbono mata: ajusta al aire libre",
};

for (const locale of ["en-US", "de-DE", "es-ES"]) {
  test(`a real PDF in ${locale}: sizes, pages, every word of the card, nothing cut`, async () => {
    const { page, close } = await openCard({ locale });
    for (const [paper, { pages, size }] of Object.entries(PAPERS_mm)) {
      await field(page, "paper").selectOption(paper);
      await page.locator(`[data-paper=${paper}]`).waitFor();
      const pdf = await readPdf(await page.pdf({ preferCSSPageSize: true }));
      expect(pdf.pages_mm).toHaveLength(pages);
      for (const sides of pdf.pages_mm) {
        for (const i of [0, 1] as const) {
          expect(Math.abs(sides[i] - size[i])).toBeLessThan(0.5);
        }
      }
      const words = await page
        .locator(".card-side :is(h3, h4, p, li, caption, th, td, svg text, .card-notes span)")
        .allTextContents();
      expect(words.length).toBeGreaterThan(200);
      // A front may be printed, or photographed, without its back: carbon monoxide stands first on it.
      const [title = "", first = ""] = await page
        .locator(".card-side[data-side=front] > *")
        .allTextContents();
      const front = pages === 2 ? pdf.page_letters[0] : pdf.letters;
      expect(first).toContain(CARBON_MONOXIDE[locale]);
      expect(front?.startsWith(`${title}${first}`.replaceAll(/\s/g, ""))).toBe(true);
      for (const word of words) expect(pdf.letters).toContain(word.replaceAll(/\s/g, ""));
      await expect.poll(() => cutParts(page), { message: paper }).toEqual([]);
    }
    // Papers of their own: whatever is said of reading them holds.
    for (const paper of PAPERS) {
      await field(page, "paper").selectOption(paper);
      await page.locator(`[data-paper=${paper}]`).waitFor();
      await expect.poll(() => cutParts(page), { message: paper }).toEqual([]);
      const isInHand = paper === "a6" || paper === "index";
      await expect
        .poll(() => readFrom_mm(page), { message: paper })
        .toBeGreaterThan(isInHand ? 390 : 500);
    }
    await close();
  });
}

/** Latin letters must subtend 16′ at the least to be read, and 20′ to be read with ease: ISO 9241-303:2011, from memory. */
const LEAST_LETTER_rad = (16 / 60) * (Math.PI / 180);
/** Height of a figure in Noto Sans, of its size. */
const FIGURE_HEIGHT = 0.714;

/** From how far the card's rates can be read, mm. */
async function readFrom_mm(page: Page): Promise<number> {
  await page.emulateMedia({ media: "print" });
  const size_px = await page
    .locator(".card-rate")
    .first()
    .evaluate((rate) => Number.parseFloat(getComputedStyle(rate).fontSize));
  await page.emulateMedia({ media: null });
  return (FIGURE_HEIGHT * size_px * (25.4 / 96)) / LEAST_LETTER_rad;
}

test("a card with own tunes says on paper, in every language, whose bands they are, what it rests on, and that the code leaves them out", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await heaterLine(page).waitFor();
  await addFoundHeater(page, "Van");
  const letters = (text: string) => text.replaceAll(/\s/g, "");
  const basis = letters((await page.locator(".own-basis").textContent()) ?? "").split(":")[0] ?? "";
  for (const language of LANGUAGES) {
    await page.evaluate((code) => {
      localStorage.setItem("hypsotune.language", code);
      location.hash = "#/card";
    }, language);
    await page.reload();
    await page.locator(".card-side").getByText(OWN[language].band).waitFor();
    for (const paper of Object.keys(PAPERS_mm)) {
      await field(page, "paper").selectOption(paper);
      await page.locator(`[data-paper=${paper}]`).waitFor();
      await expect.poll(() => cutParts(page), { message: `${language}, ${paper}` }).toEqual([]);
    }
    await field(page, "paper").selectOption("a6");
    const pdf = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    for (const said of Object.values(OWN[language])) expect(pdf.letters).toContain(letters(said));
    if (language === "en") {
      expect(pdf.letters).toContain(basis);
      expect(pdf.letters).not.toContain(letters(cardWords.bandsMean));
      expect(pdf.letters).not.toContain(letters(cardWords.code.title));
    }
  }
  await close();
});

/** Of the bands, of what the card rests on, and at the code. */
const OWN: Record<Language, { band: string; basis: string; code: string }> = {
  en: {
    band: "your heater's best one lies",
    basis: "and 1 of your own.",
    code: "without your own tunes",
  },
  de: {
    band: "liegt deine beste Frequenz",
    basis: "und 1 eigenen.",
    code: "ohne deine eigenen Abstimmungen",
  },
  es: {
    band: "queda tu mejor frecuencia",
    basis: "y 1 tuyo.",
    code: "sin tus ajustes propios",
  },
};

/** As laid out for paper: what reaches out of its side, and text too small for A6 (x-height under 1.2 mm). */
async function cutParts(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: "print" });
  const cut = await page.locator(".card-side").evaluateAll((sides) =>
    sides.flatMap((side) => {
      const room = side.getBoundingClientRect();
      return [...side.querySelectorAll("*")]
        .filter((part) => {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          const isOut =
            left < room.left - 1 ||
            right > room.right + 1 ||
            top < room.top - 1 ||
            bottom > room.bottom + 1;
          const inSvg = part.closest("svg");
          const scale = inSvg
            ? inSvg.getBoundingClientRect().width / inSvg.viewBox.baseVal.width
            : 1;
          const size_mm = (Number.parseFloat(getComputedStyle(part).fontSize) * scale * 25.4) / 96;
          return isOut || (part.textContent !== "" && size_mm < 2.25);
        })
        .map((part) => part.outerHTML.slice(0, 90));
    }),
  );
  await page.emulateMedia({ media: null });
  return cut;
}

test("the print button prints, and on paper there is nothing but the card", async () => {
  const { page, close } = await openCard();
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute("data-asked-to-print", "");
  });
  await page.getByRole("button", { name: cardWords.print }).press("Enter");
  await page.locator("body[data-asked-to-print]").waitFor({ state: "attached" });
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  for (const gone of ["nav", "h2", ".cautions", ".card-fields", ".offline"]) {
    const shown = await page
      .locator(gone)
      .evaluateAll((all) => all.filter((e) => e.checkVisibility()));
    expect(shown, gone).toHaveLength(0);
  }
  const ink = await page
    .locator(".card-side p")
    .first()
    .evaluate((p) => getComputedStyle(p).color);
  expect(ink).toBe("rgb(0, 0, 0)");
  await close();
});

test("accessible in both themes, from 360 to 2,560 px, never scrolling sideways; a range the wrong way round is refused", async () => {
  const { page, close } = await openCard();
  for (const viewport of [PHONE, { width: 2560, height: 1200 }]) {
    expect(await faultsAt(page, [viewport])).toEqual([]);
    for (const paper of PAPERS) {
      await field(page, "paper").selectOption(paper);
      await page.locator(`[data-paper=${paper}]`).waitFor();
      await expect
        .poll(() => previewed(page), { message: `${paper}, ${viewport.width} px` })
        .toEqual([]);
    }
  }
  const before = await tableOf(page, "low");
  await field(page, "elevation.from_m").fill("5000");
  await page.getByText(cardWords.fields.atMost("4,200 m")).waitFor();
  await field(page, "temperature.to_C").fill("70");
  await page.getByText(cardWords.fields.outOfRange("−45 °C", "40 °C")).waitFor();
  await expect.poll(() => tableOf(page, "low")).toEqual(before);
  await field(page, "low.fan_rpm").fill("5000");
  await page.getByText(cardWords.fields.fansSwapped).waitFor();
  await close();
});

/** What of the card reaches out of the screen or out of its side, as previewed. */
function previewed(page: Page): Promise<string[]> {
  return page.locator(".card-side").evaluateAll((sides) =>
    sides.flatMap((side) => {
      const room = side.getBoundingClientRect();
      return [side, ...side.querySelectorAll("*")]
        .filter((part) => {
          const { left, right, bottom } = part.getBoundingClientRect();
          return (
            left < Math.max(0, room.left - 1) ||
            right > Math.min(document.documentElement.clientWidth, room.right + 1) ||
            bottom > room.bottom + 1
          );
        })
        .map((part) => part.outerHTML.slice(0, 90));
    }),
  );
}

test("the card of an empty atlas says that it is physics alone", async () => {
  const { page, close } = await openCard({}, empty);
  await page.locator(".card-side").getByText(cardWords.prior).waitFor();
  await page.locator(".card-side").getByText(cardWords.noFit).waitFor();
  expect((await tableOf(page, "low")).rates.flat().some((rate) => rate.includes("("))).toBe(false);
  await expect.poll(() => cutParts(page)).toEqual([]);
  await close();
});

test("without a network the card is made from the kept fit, its figures the same", async () => {
  const line = await openLine(atlas.url);
  const { page, close } = await openPage(browser, `${line.url}/#/card`, {
    serviceWorkers: "allow",
  });
  await page.locator(".nomogram").waitFor();
  const before = await tableOf(page, "high");
  // The worker is installed once it holds every part of the page.
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    while (active?.state !== "activated") await new Promise((done) => setTimeout(done, 50));
  });
  line.cut();
  await page.reload();
  await page.locator(".nomogram").waitFor();
  await expect.poll(() => tableOf(page, "high")).toEqual(before);
  await field(page, "high.fan_rpm").fill("3900");
  await page.getByText("3,900 rpm").first().waitFor();
  const { columns, rows, rates } = await tableOf(page, "high");
  const tune = tuneAt(
    fit,
    { heat_kW: 5, high_fan_rpm: 3900 },
    numberOf(rows[3] ?? ""),
    numberOf(columns[2] ?? ""),
  );
  expect(numberOf(rates[3]?.[2] ?? "")).toBeCloseTo(tune.high.pump_Hz, 6);
  await close(CUT_OFF);
  await line.close();
});
