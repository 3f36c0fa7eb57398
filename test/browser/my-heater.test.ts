import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { LANGUAGES } from "../../client/language.ts";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { heaterWords as words } from "../../client/texts/heater.ts";
import { logbookWords } from "../../client/texts/logbook.ts";
import { onsite } from "../../client/texts/onsite.ts";
import { shareWords } from "../../client/texts/share.ts";
import { trip } from "../../client/texts/trip.ts";
import { formatFineRate, formatRate } from "../../client/units.ts";
import type { Band } from "../../model/fit/bands.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { startForHeater } from "../../model/own-start.ts";
import { settablePump } from "../../model/rounding.ts";
import { type StartTune, startTune } from "../../model/start.ts";
import type { OwnTune } from "../../model/tune.ts";
import type { NearAnswer } from "../../server/contract.ts";
import { axeFinds, sideways } from "./faults.ts";
import {
  CUT_OFF,
  field,
  openPage,
  openSite,
  openStop,
  openTripHeater,
  shownRates,
  shownText,
  shownTexts,
  spaced,
} from "./open-page.ts";
import {
  addFoundHeater,
  button,
  FOUND,
  fillFound,
  fillHeater,
  inForm,
  line,
} from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;
let fit: PublishedFit;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
  fit = await atlas.get<PublishedFit>("/fit");
});

const PHONE = { viewport: { width: 360, height: 740 } };
const FANS = { low_fan_rpm: 1700, high_fan_rpm: 4500 };
const COLD_PASS = { elevation_m: 2980, temperature_C: -12 };

function startAt(own_tunes: OwnTune[], more: object = FANS): StartTune {
  const { elevation_m, temperature_C } = COLD_PASS;
  const site = { elevation_m, elevation_sd_m: 0, elevation_source: "given" as const };
  const question = { heat_kW: 5, site, air: { temperature_C }, ...more };
  return own_tunes.length > 0 ? startForHeater(fit, question, own_tunes) : startTune(fit, question);
}

const digits = (rate: number) => Number(rate.toPrecision(9));
const rates = ({ low, high }: StartTune) => [low, high].map((end) => digits(end.pump_Hz_exact));
const expectShown = (page: Page, tune: StartTune) =>
  expect.poll(async () => (await shownRates(page)).map(digits)).toEqual(rates(tune));

async function openAtPass(): ReturnType<typeof openPage> {
  const opened = await openPage(browser, atlas.url, PHONE);
  const { page } = opened;
  await openSite(page);
  await field(page, "site.elevation_m").fill(String(COLD_PASS.elevation_m));
  await field(page, "air.temperature_C").fill(String(COLD_PASS.temperature_C));
  await line(page).waitFor();
  return opened;
}

test("present settings found with a meter narrow and move the answer; Trip, Card and On site begin from it; another heater changes it back", async () => {
  const { page, close } = await openAtPass();
  await expect.poll(() => shownText(line(page))).toContain(words.line.none);
  await expectShown(page, startAt([], {}));

  await page.evaluate(() => scrollTo(0, 0));
  await line(page).click();
  // It opens in place: the first field is in focus, and nothing has moved.
  await page.locator('[name="heater.name"]:focus').waitFor();
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
  const facts = { "heater.dose_uL": "22", "heater.low_fan_rpm": "1700", "heater.step_Hz": "0.05" };
  await fillHeater(page, "Van", { ...facts, "heater.high_fan_rpm": "4500" });
  await page.getByText(words.settings.meterWhy).waitFor();
  expect(await axeFinds(page)).toEqual([]);
  // Neither is chosen for anyone: factory settings are not to pass for found ones.
  await expect
    .poll(() => page.locator("form [name='low.pump_Hz'], form [name^='settings.']").count())
    .toBe(0);
  await button(page, words.settings.meter).click();
  // What Start was asked about is not asked again.
  const asked = inForm(page, "site.elevation_m");
  await expect.poll(() => asked.inputValue()).toBe(String(COLD_PASS.elevation_m));
  await fillFound(page);

  const van = { ...FANS, dose_uL: 22, step_Hz: 0.05 };
  const mine = startAt([FOUND], van);
  await expectShown(page, mine);
  expect(rates(mine)[0]).toBeGreaterThan(1.05 * (rates(startAt([], van))[0] as number));
  await expect.poll(() => shownText(line(page))).toContain(words.line.own(1));
  const basis = await shownText(page.locator(".own-basis"));
  expect(basis).toContain("and 1 of your own");
  // The answer is for one heater: it does not say where others are.
  await expect.poll(() => shownText(page.locator(".answer"))).not.toContain("heaters");
  const all = page.locator("[data-figures=low]");
  await expect.poll(() => shownText(all)).toContain(basisWords.heatersMine("80"));
  await expect.poll(() => shownText(all)).not.toContain("heaters");
  const [own = 0, others = 0] = [...basis.matchAll(/±(\d+) %/g)].map(([, pct]) => Number(pct));
  expect(own).toBeGreaterThan(0);
  expect(own).toBeLessThan(others);
  // What the thin air there makes of settings found low down.
  const lead = page.locator(".lead");
  expect(Number(await lead.getAttribute("data-low"))).toBeGreaterThan(12);
  await expect.poll(() => shownText(lead)).toContain(words.lead.richMeans);
  await expect.poll(() => page.locator(".band-now").count()).toBe(2);
  await expect
    .poll(() => shownText(page.locator('[data-end="low"] .rate output')))
    .toMatch(/\.\d[05]$/);
  await expect.poll(() => sideways(page)).toBe(0);
  expect(await axeFinds(page)).toEqual([]);

  await page.goto(`${atlas.url}/#/trip`);
  await openTripHeater(page);
  await page.getByText(words.fromMine("Van")).waitFor();
  await expect.poll(() => field(page, "heater.dose_uL").count()).toBe(0);
  await field(page, "new.elevation_m").fill(String(COLD_PASS.elevation_m));
  await field(page, "new.temperature_C").fill(String(COLD_PASS.temperature_C));
  await field(page, "new.elevation_m").press("Enter");
  const set = page.locator(".trip-table td[data-value]");
  await set.first().waitFor({ state: "attached" });
  const onTrip = await set.evaluateAll((cells) =>
    cells.map((cell) => Number((cell as HTMLElement).dataset.value)),
  );
  // In the steps of its controller; the bands are its own, and said to be.
  expect(onTrip).toEqual([mine.low, mine.high].map((end) => settablePump(end.pump_Hz_exact, 0.05)));
  await openStop(page, 0);
  const atStop = page.locator(".stop-answer");
  for (const end of [mine.low, mine.high]) {
    const { lower, upper } = end.new_heater_bands_Hz[0] as Band;
    const band = trip.result.band(formatFineRate(lower), formatFineRate(upper));
    await expect.poll(() => shownText(atStop)).toContain(trip.result.bandMine("8", band));
  }
  await expect.poll(() => shownText(atStop.locator(".own-basis"))).toBe(basis);
  await expect.poll(() => shownText(atStop.locator(".lead"))).toContain(words.lead.richMeans);
  await page.locator(".trip-answer > .own-basis").waitFor();
  // What the settings of the plain make of the thin air there, said of the drawing as of the stop.
  await field(page, "shown").selectOption("now");
  const asSet = await page
    .locator(".profile .drawing .bar")
    .evaluateAll((bars) => bars.map((bar) => Number((bar as SVGElement).dataset.shift)));
  expect(asSet).toEqual(
    (["low", "high"] as const).map((end) =>
      Math.round(100 * (FOUND[end].pump_Hz / mine[end].pump_Hz_exact - 1)),
    ),
  );
  await expect.poll(() => shownText(page.locator(".profile .rates"))).toBe("1.40 / 5.00");

  await page.goto(`${atlas.url}/#/card`);
  await page.getByText(words.fromMine("Van")).waitFor();
  await expect.poll(() => field(page, "low.fan_rpm").count()).toBe(0);
  const printed = () => shownTexts(page.locator("table[data-end=low] .card-rate"));
  const ofVan = await printed();

  await page.goto(`${atlas.url}/#/onsite`);
  // In the air of the moment, of which nothing was said.
  const now = startAt([FOUND], { ...van, air: {} });
  await page
    .getByText(
      onsite.prepare.start(formatRate(now.low.pump_Hz, 0.05), formatRate(now.high.pump_Hz, 0.05)),
    )
    .waitFor();
  // Its fans are known: nothing is said of fields that are not asked.
  await expect.poll(() => page.getByText(onsite.prepare.fanWhy).count()).toBe(0);
  await page.getByText(onsite.prepare.fansAt("1,700", "4,500")).waitFor();
  await expect.poll(() => field(page, "low_before_Hz").inputValue()).toBe("1.4");
  await expect.poll(() => field(page, "high_before_Hz").inputValue()).toBe("5");
  await expect.poll(() => field(page, "step_Hz").count()).toBe(0);
  await expect.poll(() => field(page, "low.fan_rpm").count()).toBe(0);

  await page.goto(`${atlas.url}/#/share`);
  await page.getByText(words.fromMine("Van")).waitFor();
  await expect.poll(() => field(page, "low.fan_rpm").inputValue()).toBe("1700");

  // Another heater of the same size, with nothing of its own.
  await line(page).click();
  await button(page, logbookWords.heater.add).click();
  await fillHeater(page, "Boat", { "heater.low_fan_rpm": "1700", "heater.high_fan_rpm": "4500" });
  await expect.poll(() => shownText(line(page))).toContain("Boat");
  await page.goto(`${atlas.url}/#/start`);
  await expectShown(page, startAt([]));
  await expect.poll(() => page.locator(".own-basis, .lead").count()).toBe(0);
  await page.goto(`${atlas.url}/#/card`);
  await page.getByText(words.fromMine("Boat")).waitFor();
  await expect.poll(() => printed()).not.toEqual(ofVan);

  // A reload forgets neither; the average heater is a choice too.
  await page.goto(`${atlas.url}/#/start`);
  await page.reload();
  await line(page).click();
  await field(page, "my-heater").selectOption({ label: `Van, ${t.heater.heatOption(5)}` });
  await expectShown(page, mine);
  await field(page, "my-heater").selectOption({ label: words.line.average });
  await expectShown(page, startAt([], {}));
  await close();
});

test("factory settings say how they would run and leave the answer as it is", async () => {
  const { page, close } = await openAtPass();
  await line(page).click();
  await fillHeater(page, "Hut", {});
  await button(page, words.settings.guess).click();
  await button(page, words.settings.keep).click();
  // Nothing is kept while a rate is missing.
  await page.locator('[name="settings.low.pump_Hz"][aria-invalid]').waitFor();
  await inForm(page, "settings.low.pump_Hz").fill("1.6");
  await inForm(page, "settings.high.pump_Hz").fill("5.5");
  await button(page, words.settings.keep).click();
  await page.getByText(words.settings.kept).waitFor();
  await page.locator(".lead").waitFor();
  await expect.poll(() => page.locator(".own-basis").count()).toBe(0);
  await expectShown(page, startAt([], {}));
  await expect.poll(() => shownText(line(page))).toContain(words.line.own(0));
  // The logbook has the same heater, with no tune; what was said of the settings is not said there.
  await page.goto(`${atlas.url}/#/logbook`);
  await page.getByText(words.settings.kept).waitFor({ state: "detached" });
  await page.getByText(logbookWords.entry.none).waitFor();
  await close();
});

test("own figures that cannot be are asked about as they are typed; a press corrects them, a second one saves them as they are, and they answer nothing", async () => {
  const { page, close } = await openAtPass();
  await line(page).click();
  await fillHeater(page, "Van", { "heater.dose_uL": "0.022" });
  await page.locator('[name="heater.dose_uL"]:focus').waitFor();
  await button(page, shareWords.use("22 µL")).click();
  await button(page, logbookWords.heater.save).click();
  await button(page, words.settings.meter).click();
  await fillFound(page, { "low.pump_Hz": "84" });
  // The press has saved nothing: it shows what looks mistyped.
  await inForm(page, "low.pump_Hz").and(page.locator(":focus")).waitFor();
  await expect.poll(() => inForm(page, "low.pump_Hz").getAttribute("aria-invalid")).toBe("true");
  const slips = page.locator(".slips");
  await slips.getByText(logbookWords.entry.looks).waitFor();
  await expect.poll(() => shownText(line(page))).toContain(words.line.own(0));
  expect(await axeFinds(page)).toEqual([]);
  await expect.poll(() => sideways(page)).toBe(0);
  await button(page, shareWords.use("1.4 Hz")).click();
  await slips.waitFor({ state: "detached" });
  await expect.poll(() => inForm(page, "low.pump_Hz").inputValue()).toBe("1.4");

  await inForm(page, "high.pump_Hz").fill("15");
  await inForm(page, "high.fan_rpm").fill("450");
  await slips.waitFor();
  await button(page, logbookWords.entry.save).click();
  await button(page, logbookWords.entry.saveAsIs).click();
  await page.getByText(logbookWords.entry.keptAside).waitFor();
  await expect.poll(() => shownText(line(page))).toContain(words.line.own(1));
  // Neither its fans nor its settings say anything, and one sentence says why.
  const mistyped = { ...FOUND, high: { pump_Hz: 15, fan_rpm: 450, co_ppm: 9 } };
  await expectShown(page, startAt([mistyped], { dose_uL: 22 }));
  await expect.poll(() => page.locator(".lead, .own-basis").count()).toBe(0);
  const said = page.locator("p.warning", { hasText: "does not count" });
  await said.waitFor();
  await expect.poll(() => shownText(said)).toContain(words.aside.figures.fan_rpm);

  await line(page).click();
  await button(page, words.settings.add).click();
  await button(page, words.settings.guess).click();
  await inForm(page, "settings.low.pump_Hz").fill("1.6");
  await inForm(page, "settings.high.pump_Hz").fill("330");
  await button(page, words.settings.keep).click();
  await slips.waitFor();
  await button(page, logbookWords.entry.saveAsIs).waitFor();
  await button(page, shareWords.use("5.5 Hz")).click();
  await button(page, words.settings.keep).click();
  await page.getByText(words.settings.kept).waitFor();
  await page.locator(".lead").waitFor();
  await close();
});

test("on a phone the line says size, dose and own tunes in every language, and offers a newcomer to add theirs first; nothing is cut off", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  await line(page).waitFor();
  /** What of the line is seen, and what of it runs out of its box. */
  const seen = () =>
    line(page).evaluate((button) => {
      const parts = document.createTreeWalker(button, NodeFilter.SHOW_TEXT);
      const box = button.getBoundingClientRect();
      const seen = { said: "", cut: [] as string[], height: box.height };
      for (let part = parts.nextNode(); part; part = parts.nextNode()) {
        const around = part.parentElement as HTMLElement;
        if (around.closest(".on-wide")?.getBoundingClientRect().width === 1) continue;
        const range = document.createRange();
        range.selectNodeContents(part);
        seen.said += part.textContent;
        if (part.textContent?.trim() === "") continue;
        const { left, right, top, bottom } = range.getBoundingClientRect();
        const isIn = left >= box.left && right <= box.right && top >= box.top;
        const { scrollWidth, clientWidth } = around.closest("button > span") ?? around;
        if (!isIn || bottom > box.bottom || scrollWidth > clientWidth) seen.cut.push(seen.said);
      }
      return seen;
    });
  for (const whose of ["nobody", "the van"]) {
    if (whose === "the van") await addFoundHeater(page, "Van");
    for (const language of LANGUAGES) {
      const { heaterWords } = await import(`../../client/texts/${language}/heater.ts`);
      await page.evaluate((code) => localStorage.setItem("hypsotune.language", code), language);
      await page.reload();
      await line(page).waitFor();
      const first = whose === "nobody" ? heaterWords.settings.add : "Van, 5 kW, 22 µL, ";
      const last = whose === "nobody" ? heaterWords.line.none : heaterWords.line.own(1);
      const { said, cut, height } = await seen();
      const shown = spaced(said);
      expect(shown.trim().startsWith(first), `${language}: ${shown}`).toBe(true);
      expect(shown, language).toContain(last);
      expect(cut, language).toEqual([]);
      // Two lines at most, where the answer begins as high as with one.
      expect(height, `${language}: ${shown}`).toBeLessThanOrEqual(46);
    }
    await page.evaluate(() => localStorage.setItem("hypsotune.language", "en"));
    await page.reload();
  }
  await close();
});

test("tunes like this one are the atlas's, and out of reach it says so", async () => {
  const { page, close } = await openAtPass();
  const { elevation_m, temperature_C } = COLD_PASS;
  const query = `heat_kW=5&elevation_m=${elevation_m}&temperature_C=${temperature_C}`;
  const { tunes } = await atlas.get<NearAnswer>(`/tunes/near?${query}`);
  expect(tunes.length).toBe(10);
  const rows = page.locator(".near tbody tr");
  await page.locator(".near").scrollIntoViewIfNeeded();
  const first = tunes.map(({ low, high }) => `${low.pump_Hz} / ${high.pump_Hz}`);
  const shown = () =>
    rows.locator("th").evaluateAll((cells) =>
      cells.map((cell) =>
        (cell.textContent ?? "")
          .split(" / ")
          .map((rate) => String(Number(rate)))
          .join(" / "),
      ),
    );
  await expect.poll(shown).toEqual(first);
  const beside = await shownTexts(rows.locator("td:nth-child(4)"));
  for (const [i, { against_average_pct }] of tunes.entries()) {
    const [low = ""] = beside[i]?.split(" / ") ?? [];
    if (Math.abs(against_average_pct.low) >= 1)
      expect(low).toContain(against_average_pct.low > 0 ? "richer" : "leaner");
  }
  await page.route("**/api/tunes/near*", (route) => route.abort());
  await field(page, "air.temperature_C").fill("5");
  await page.getByText(words.near.offline).waitFor();
  await close(CUT_OFF);
});
