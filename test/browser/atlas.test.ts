import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { finerAir } from "../../client/texts/finer-air.ts";
import { estimateHint } from "../../client/ui/estimate-hint.ts";
import { format, UNITS } from "../../client/units.ts";
import type { StartTune } from "../../model/start.ts";
import type { PlacesAnswer } from "../../server/contract.ts";
import {
  askedRates,
  CUT_OFF,
  choosePlace,
  field,
  openFiner,
  openPage,
  shownRates,
  shownText,
  shownTexts,
} from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  // Drawing the map in software would take most of the time; it has tests of its own.
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const LEADVILLE_m = 3097;

test("a mountain town searched gives the start tune of both ends with its bands", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await choosePlace(page, "leadville", /Leadville, Colorado.*3,097\sm/);
  await page.getByText("Leadville, Colorado, United States, 3,097 m").waitFor();
  const { places } = await atlas.get<PlacesAnswer>("/places?q=Leadville, CO");
  const { lat = 0, lon = 0 } = places[0] ?? {};
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, lat, lon }));

  // A town's elevation is that of one point in it: the bands carry that, as they do when the API is asked for the point.
  const asked = await atlas.get<StartTune>(`/start?heat_kW=5&lat=${lat}&lon=${lon}`);
  expect(asked.site).toMatchObject({ elevation_m: LEADVILLE_m, elevation_source: "known point" });
  await page
    .getByText(estimateHint(asked.site.elevation_sd_m, UNITS.elevation[0]) ?? "none")
    .waitFor();
  for (const end of ["low", "high"] as const) {
    const section = page.locator(`.end[data-end=${end}]`);
    await expect
      .poll(() => shownText(section.locator("output")))
      .toBe(format(asked[end].pump_Hz, 1));
    const bands = await shownTexts(page.locator(`[data-figures=${end}] dd`));
    const told = [asked[end].mean_band_Hz, ...asked[end].new_heater_bands_Hz];
    expect(bands).toEqual(
      told.map(({ lower, upper }) => basisWords.span(format(lower, 2), format(upper, 2))),
    );
    await expect.poll(() => page.locator(`.range[data-end=${end}] svg rect`).count()).toBe(2);
  }
  const { tunes, contributors } = asked.basis;
  expect(contributors).toBeGreaterThan(30);
  await page.getByText(basisWords.tunes(String(tunes), String(contributors), "5")).waitFor();
  await page.getByText(t.demo).waitFor();
  await close();
});

test("a name that no place has: said so with what to do, and Enter takes nothing that is called otherwise", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  const search = page.getByRole("combobox", { name: t.site.place });
  const before = await shownRates(page);
  for (const unknown of ["Abra Patapampa", "Paris Pass"]) {
    await search.fill(unknown);
    await search.press("Enter");
    await page.getByText(t.site.noPlace(unknown)).waitFor();
    // It stays while one looks for the elevation.
    await field(page, "site.elevation_m").focus();
    await expect.poll(() => page.getByText(t.site.noPlace(unknown)).isVisible()).toBe(true);
  }
  // One letter wrong: offered, taken only once it is chosen.
  await search.fill("leadvile");
  await page.getByText(t.site.similar("leadvile")).waitFor();
  await search.press("Enter");
  await expect.poll(() => search.inputValue()).toBe("leadvile");
  await expect.poll(() => shownRates(page)).toEqual(before);
  await search.press("ArrowDown");
  await search.press("Enter");
  await page.getByText("Leadville, Colorado, United States, 3,097 m").waitFor();

  // Enter before the list is there takes what was typed, not what its first letters had found.
  await search.fill("Sani");
  await page.getByRole("option", { name: /^Sani Pass, Lesotho/ }).waitFor();
  await search.fill("San Francisco Pass");
  await search.press("Enter");
  await page.getByText("Paso de San Francisco, Catamarca, Argentina, 4,726 m").waitFor();
  await close();
});

test("elevation, temperature, pressure, humidity, fans, dose and class change it live, as the API answers", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  const question: Record<string, number> = { heat_kW: 5, elevation_m: LEADVILLE_m };
  const matches = async () => {
    await expect.poll(() => shownRates(page)).toEqual(await askedRates(atlas.get, question));
  };
  await field(page, "site.elevation_m").fill("3097");
  await matches();
  await openFiner(page);
  const changes: [name: string, asked: string, value: number][] = [
    ["air.temperature_C", "temperature_C", -15],
    ["air.pressure_hPa", "pressure_hPa", 691.5],
    ["air.humidity_pct", "humidity_pct", 80],
    ["low.fan_rpm", "low_fan_rpm", 1500],
    ["high.fan_rpm", "high_fan_rpm", 4700],
    ["heater.dose_uL", "dose_uL", 22],
  ];
  for (const [name, asked, value] of changes) {
    const before = await shownRates(page);
    await field(page, name).fill(String(value));
    question[asked] = value;
    await matches();
    // A dose adds fuel and heat, and leaves the pump rate as it is.
    if (asked !== "dose_uL") await expect.poll(() => shownRates(page)).not.toEqual(before);
  }
  await page
    .locator(".burn")
    .first()
    .getByText(/L\/h, about [\d.]+\skW/)
    .waitFor();
  await field(page, "heater.heat_kW").selectOption("2");
  question.heat_kW = 2;
  await matches();
  await page.getByText(basisWords.prior("2")).waitFor();
  await close();
});

test("keeping the fan and keeping the heat stand side by side, as the API answers", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await field(page, "site.elevation_m").fill("4300");
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 4300 }));
  const asked = await atlas.get<StartTune>("/start?heat_kW=5&elevation_m=4300");
  const { keep_fan, keep_heat } = asked.strategies;
  await page.locator(".ways").waitFor();
  const rows = await shownTexts(page.locator(".ways tbody tr"));
  const heads = await shownTexts(page.locator(".ways thead th"));
  expect(heads.slice(1)).toEqual([basisWords.keepFan, basisWords.keepHeat]);
  for (const [i, end] of (["low", "high"] as const).entries()) {
    const cells = [keep_fan, keep_heat].map(
      (way) => `${format(way[end].pump_Hz, 1)} Hz, ${format(way[end].fan_rpm)} rpm`,
    );
    expect(rows[i]).toBe(t[end] + cells.join(""));
  }
  // Another fan speed than the answer's is explained.
  const fans = await shownTexts(page.locator(".answer .fan"));
  const usual = [keep_fan.low, keep_fan.high].map((end) => t.answer.fanAt(format(end.fan_rpm)));
  expect(fans).not.toEqual(usual);
  await page.getByText(basisWords.fanMakesUp).waitFor();
  expect(keep_heat.fan_suffices).toBe(false);
  await page.getByText(basisWords.fanShort(format(keep_heat.fan_limit_rpm))).waitFor();
  await close();
});

test.each(["en-US", "de-DE", "es-ES"])(
  "the two ways fit a phone without being moved aside: %s",
  async (locale) => {
    const phone = { viewport: { width: 360, height: 740 }, locale };
    const { page, close } = await openPage(browser, atlas.url, phone);
    const around = page.locator(".scrolls", { has: page.locator(".ways") });
    await around.waitFor();
    await expect.poll(() => around.evaluate((box) => box.scrollWidth - box.clientWidth)).toBe(0);
    await close();
  },
);

test("a sea-level pressure at high elevation is questioned, and taken as QNH when told so", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await field(page, "site.elevation_m").fill("3097");
  await openFiner(page);
  await field(page, "air.pressure_hPa").fill("1021");
  await page.getByText(/a barometer shows about 69\d\.\d\shPa/).waitFor();
  await field(page, "air.pressure_kind").selectOption("qnh");
  await page.getByText(/a barometer shows about/).waitFor({ state: "detached" });
  const question = { heat_kW: 5, elevation_m: LEADVILLE_m, qnh_hPa: 1021 };
  await expect.poll(() => shownRates(page)).toEqual(await askedRates(atlas.get, question));
  await close();
});

test("feet, °F and inHg are typed and remembered field by field", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  const unit = (label: string) => page.getByLabel(`${label}: unit`);
  await openFiner(page);
  await unit(t.site.elevation).selectOption("ft");
  await unit(t.air.temperature).selectOption("°F");
  await unit(finerAir.pressure).selectOption("inHg");
  await field(page, "site.elevation_m").fill("10160");
  await field(page, "air.temperature_C").fill("5");
  await field(page, "air.pressure_hPa").fill("20.42");
  // 1 ft = 0.3048 m and 1 inHg = 33.86389 hPa (NIST SP 811, appendix B.8).
  const asked = await askedRates(atlas.get, {
    heat_kW: 5,
    elevation_m: 10160 * 0.3048,
    temperature_C: (5 - 32) / 1.8,
    pressure_hPa: 20.42 * 33.86389,
  });
  const shown = await shownRates(page);
  for (const i of [0, 1] as const) expect(shown[i]).toBeCloseTo(asked[i], 6);
  await page.getByText("at 10,160 ft").waitFor();

  await page.reload();
  await page.getByText("at 10,160 ft").waitFor();
  await expect.poll(() => unit(t.air.temperature).inputValue()).toBe("°F");
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("5");
  await expect.poll(() => shownRates(page)).toEqual(shown);
  await unit(t.site.elevation).selectOption("m");
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe("3097");
  await close();
});

test("who chose feet and °F once is asked in them everywhere, unless a field was given its own", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  const unit = (label: string) => page.getByLabel(`${label}: unit`).first();
  await unit(t.site.elevation).selectOption("ft");
  await unit(t.air.temperature).selectOption("°F");
  for (const view of ["share", "trip"]) {
    await page.goto(`${atlas.url}/#/${view}`);
    await expect.poll(() => unit(t.site.elevation).inputValue()).toBe("ft");
  }
  await expect.poll(() => unit(t.air.temperature).inputValue()).toBe("°F");
  await unit(t.site.elevation).selectOption("m");
  await page.goto(`${atlas.url}/#/start`);
  await expect.poll(() => unit(t.site.elevation).inputValue()).toBe("ft");
  await close();
});

test("what cannot be answered says so and keeps the last good answer", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await field(page, "site.elevation_m").fill("9000");
  await page.getByText(t.site.outOfRange("−500 m", "6,000 m")).waitFor();
  await field(page, "site.elevation_m").fill("high");
  await page.getByText(t.site.notNumber).waitFor();
  await field(page, "site.elevation_m").fill("5900");
  await page.getByText(basisWords.extrapolated).waitFor();
  await close();
});

test("with the atlas out of reach the kept fit answers, and says so", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  await page.locator(".end output").first().waitFor();
  await page.route("**/api/fit", (route) => route.abort());
  await page.reload();
  await page.getByText(t.unreachable).waitFor();
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 1000 }));
  await close(CUT_OFF);
});
