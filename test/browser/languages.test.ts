import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t as german } from "../../client/texts/de/app.ts";
import { basisWords as germanBasis } from "../../client/texts/de/basis.ts";
import { dataWords as germanData } from "../../client/texts/de/data.ts";
import { offline as germanOffline } from "../../client/texts/de/offline.ts";
import { refusalWords as germanRefusals } from "../../client/texts/de/refusals.ts";
import { shareWords as germanShare } from "../../client/texts/de/share.ts";
import { again } from "../../client/texts/en/again.ts";
import { t as english } from "../../client/texts/en/app.ts";
import { b } from "../../client/texts/en/bands.ts";
import { dataWords } from "../../client/texts/en/data.ts";
import { offline } from "../../client/texts/en/offline.ts";
import { scalingWords } from "../../client/texts/en/scaling.ts";
import { shareWords } from "../../client/texts/en/share.ts";
import { styleWords } from "../../client/texts/en/style.ts";
import { t as spanish } from "../../client/texts/es/app.ts";
import type { CellsAnswer } from "../../server/contract.ts";
import { field, openPage, shownText, shownTexts } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { goTo, VIEWS } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

test("German: numbers with a comma, read and written; slips in German; nothing English that is not marked", async () => {
  const { page, close } = await openPage(browser, atlas.url, { locale: "de-DE" });
  await page.locator(".end output").first().waitFor();
  await expect
    .poll(() => page.evaluate(() => [document.documentElement.lang, document.documentElement.dir]))
    .toEqual(["de", "ltr"]);
  await page.getByText(german.safety.notice, { exact: true }).waitFor();
  await expect.poll(() => shownText(page.locator(".rate output").first())).toMatch(/^\d,\d$/);
  await field(page, "site.elevation_m").fill("1.700");
  await page.getByText(german.answer.elevationOnly("1.700 m"), { exact: true }).waitFor();
  await field(page, "air.temperature_C").fill("-9,5");
  await page
    .getByText(germanBasis.assumes(germanBasis.assumed.temperature))
    .waitFor({ state: "detached" });
  await page.reload();
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-10");
  await field(page, "place").first().fill("La Paz, Bolivien");
  await page.getByRole("option", { name: "La Paz, Bolivien" }).first().waitFor();
  await page.getByRole("link", { name: german.places.atlas, exact: true }).click();
  await page.getByRole("link", { name: germanData.pages.share, exact: true }).click();
  await field(page, "low.pump_Hz").fill("1,1");
  await field(page, "high.pump_Hz").fill("234");
  for (const [name, value] of [
    ["low.fan_rpm", "1.700"],
    ["high.fan_rpm", "4500"],
    ["low.co_ppm", "9"],
    ["high.co_ppm", "9"],
    ["site.elevation_m", "1609"],
  ] as const) {
    await field(page, name).fill(value);
  }
  const slip = page.locator(".slips li").first();
  await slip.waitFor();
  await expect
    .poll(() => shownText(slip))
    .toMatch(/Takten je Minute.*Sind 3,9 Hz gemeint\?.*3,9 Hz übernehmen/);
  await slip.getByRole("button", { name: germanShare.use("3,9 Hz") }).click();
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3,9");
  for (const view of Object.keys(VIEWS)) {
    await goTo(page, view);
    await expect.poll(() => page.evaluate(parted), { message: view }).toEqual([]);
    await expect
      .poll(
        () =>
          page.evaluate(
            leftovers,
            sentencesOf(
              english,
              shareWords,
              scalingWords,
              dataWords,
              again,
              b,
              offline,
              styleWords,
            ),
          ),
        { message: view },
      )
      .toEqual([]);
  }
  // The study's report is English, and nothing that comes of it is.
  await goTo(page, "data/bands");
  await page.locator("table.breakdown").waitFor();
  await expect.poll(() => page.locator('main [lang="en"]').count()).toBe(0);
  const figures = await shownTexts(page.locator("td, thead th, .line-key li, svg text"));
  expect(figures).toContain("1.500 m");
  expect(figures).toContain("Kleinste Quadrate");
  expect(figures.filter((text) => /\d,\d{3} m/.test(text))).toEqual([]);
  await close();
});

/** What no German page may show: the API's own words, where it has others for what it says. */
const IN_ENGLISH = "said in English alone";

const refused = (status: number, more: object = {}) => ({
  status,
  contentType: "application/problem+json",
  body: JSON.stringify({
    type: "about:blank",
    title: IN_ENGLISH,
    status,
    detail: IN_ENGLISH,
    ...more,
  }),
});

test("German where something fails: fields out of bounds and a refusing atlas are told in German; what has no words there is marked as English", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/`, { locale: "de-DE" });
  const { cells } = await atlas.get<CellsAnswer>("/cells/world");
  const english = () => page.getByText(IN_ENGLISH).count();
  const said = (text: string | RegExp) => page.getByText(text).first().waitFor();
  const statuses = germanRefusals?.statuses ?? {};

  await page.route("**/api/places?*", (route) => route.fulfill(refused(503)));
  await page.route("**/api/tunes/near?*", (route) => route.fulfill(refused(429)));
  await page.route("**/api/cells/*/tunes", (route) => route.fulfill(refused(507)));
  await page.locator(".end output").first().waitFor();
  await field(page, "place").first().fill("Leadville");
  await said(statuses[503] as string);
  await page.locator(".near").scrollIntoViewIfNeeded();
  await said(statuses[429] as string);
  await goTo(page, `map/${cells[0]?.cell}`);
  await said(statuses[507] as string);
  await expect.poll(() => english()).toBe(0);

  await goTo(page, "share");
  for (const [name, value, sentence] of [
    ["low.pump_Hz", "9999", "Höchstens 1.000 Hz."],
    ["high.pump_Hz", "0,001", "Mindestens 0,03 Hz."],
    ["low.fan_rpm", "99999", "Höchstens 20.000 U/min."],
    ["site.elevation_m", "99999", "Höchstens 20.000 m."],
    ["air.temperature_C", "999", "Höchstens 125 °C."],
  ] as const) {
    await field(page, name).fill(value);
    await said(sentence);
  }
  await expect.poll(() => shownTexts(page.locator('main .error [lang="en"]'))).toEqual([]);

  for (const [name, value] of [
    ["low.pump_Hz", "1,1"],
    ["high.pump_Hz", "3,9"],
    ["low.fan_rpm", "1700"],
    ["high.fan_rpm", "4500"],
    ["low.co_ppm", "9"],
    ["high.co_ppm", "9"],
    ["site.elevation_m", "1609"],
    ["air.temperature_C", "10"],
  ] as const)
    await field(page, name).fill(value);
  await field(page, "consent").check();
  const errors = [
    { field: "low.pump_Hz", code: "too_big", message: IN_ENGLISH },
    { field: "tuned_on", code: "invalid_format", message: IN_ENGLISH },
  ];
  let answer = refused(422, { errors });
  await page.route("**/api/tunes", (route) => route.fulfill(answer));
  const send = page.locator('form button[type="submit"]');
  await send.click();
  await said(statuses[422] as string);
  await said(/^Kleinste Leistung, Pumpenfrequenz: So groß/);
  await said(/^Monat: /);
  await expect.poll(() => english()).toBe(0);

  // Kept while the atlas is busy, refused later.
  answer = refused(503);
  await send.click();
  await said(germanOffline.waits);
  answer = refused(422, { errors });
  await page.getByRole("button", { name: germanOffline.sendNow }).click();
  await page
    .locator(".receipts .error")
    .getByText(/^Monat: /)
    .waitFor();
  await expect.poll(() => english()).toBe(0);

  answer = refused(418);
  await page.getByRole("button", { name: germanOffline.mend }).click();
  await field(page, "consent").check();
  await send.click();
  await said(IN_ENGLISH);
  await expect
    .poll(() => page.locator('[lang="en"]').getByText(IN_ENGLISH).count())
    .toBe(await english());
  await close(/Failed to load resource: .* (418|422|429|503|507)/);
});

test("Spanish by choice, each language named in itself; the choice is remembered", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await page.getByText(english.safety.notice).waitFor();
  const choice = page.getByRole("group", { name: english.language });
  await expect
    .poll(() =>
      choice
        .getByRole("button")
        .evaluateAll((all) =>
          all.map((one) => [
            one.textContent,
            one.getAttribute("lang"),
            one.getAttribute("aria-pressed"),
          ]),
        ),
    )
    .toEqual([
      ["English", "en", "true"],
      ["Deutsch", "de", "false"],
      ["Español", "es", "false"],
    ]);
  await choice.getByRole("button", { name: "Español" }).click();
  await page.getByText(spanish.safety.notice).waitFor();
  await page.reload();
  await page.getByText(spanish.safety.notice).waitFor();
  await page.locator(".end output").first().waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe("es");
  await expect.poll(() => shownText(page.locator(".rate output").first())).toMatch(/^\d,\d$/);
  await close();
});

test("a browser that names what is no language to itself is answered in its language's usual way", async () => {
  const { page, close } = await openPage(browser, "about:blank", { alone: true });
  await page.addInitScript(() =>
    Object.defineProperty(navigator, "languages", { get: () => ["en-US@posix", "en-US"] }),
  );
  await page.goto(atlas.url);
  await page.locator(".end output").first().waitFor();
  await expect.poll(() => page.evaluate(() => document.documentElement.lang)).toBe("en");
  await close();
});

/** Every text of some length in catalogues, those with blanks left out. */
function sentencesOf(...catalogues: object[]): string[] {
  const LONG = 12;
  return catalogues.flatMap((words) =>
    Object.values(words).flatMap((value): string[] =>
      typeof value === "string"
        ? value.length >= LONG && value.includes(" ")
          ? [value]
          : []
        : typeof value === "object" && value !== null
          ? sentencesOf(value)
          : [],
    ),
  );
}

/** Texts on the page in which a line may end between a figure and its unit; a drawing's have one line. Runs in the page. */
function parted(): string[] {
  const PARTED = /\d (%|°|Hz|U\/min|ppm|kW|µL|hPa|kg|k?m|V|L|Ah|min|h|s)(?!\p{L})/u;
  return [...document.querySelectorAll("p, li, dt, dd, th, td, h2, h3, label, summary")]
    .filter((block) => !block.querySelector("svg"))
    .map((block) => block.textContent ?? "")
    .filter((said) => PARTED.test(said));
}

/** Which of these English texts stand on the page without being marked as English. Runs in the page. */
function leftovers(texts: string[]): string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  while (walker.nextNode()) {
    const { textContent, parentElement } = walker.currentNode;
    if (
      texts.includes(textContent?.replaceAll("\u00a0", " ").trim() ?? "") &&
      !parentElement?.closest('[lang="en"]:not(html), code')
    )
      found.push(textContent ?? "");
  }
  return found;
}
