import { decode } from "fast-png";
import type { Browser, Page } from "playwright-core";
import decodeQR from "qr/decode.js";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { cardWords } from "../../client/texts/card.ts";
import { linkWords as words } from "../../client/texts/link.ts";
import { trip } from "../../client/texts/trip.ts";
import { textOf } from "../../client/trip/link.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";
import { axeFinds, sideways } from "./faults.ts";
import {
  choosePlace,
  field,
  leave,
  openFiner,
  openPage,
  shownRates,
  shownText,
  shownTexts,
} from "./open-page.ts";
import { fillHeater, line } from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const PHONE = { viewport: { width: 360, height: 740 } };
const LAPTOP = { viewport: { width: 1280, height: 800 } };
/** Listened to. */
const ALONE = { ...LAPTOP, alone: true };

/** Keeps what the page hands to the system's share sheet or to the clipboard. */
async function listen(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const handed: unknown[] = [];
    Object.assign(globalThis, { handed });
    navigator.share = async (data) => void handed.push(data);
    Object.defineProperty(navigator, "clipboard", {
      value: { writeText: async (text: string) => void handed.push(text) },
    });
  });
  await page.reload();
}
const handed = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { handed: unknown[] }).handed.splice(0));

/** The answer as anybody sees it. */
async function answerOf(page: Page) {
  await page.locator(".end output").first().waitFor();
  return {
    rates: await shownRates(page),
    at: await shownText(page.locator("#tune .at")),
    answer: await shownText(page.locator(".answer")),
  };
}

test("an answer is sent by the share sheet or copied; opened elsewhere, where another heater and other units are at home, it is the same answer", async () => {
  const { page, close } = await openPage(browser, atlas.url, ALONE);
  await listen(page);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await field(page, "site.elevation_m").locator("xpath=../select").selectOption("ft");
  await field(page, "air.temperature_C").fill("-12");
  await openFiner(page);
  await field(page, "low.fan_rpm").fill("1810");
  await field(page, "heater.dose_uL").fill("24.5");
  await page.locator("#map-end").selectOption("high");
  const sent = await answerOf(page);
  expect(sent.at).toContain("ft");
  await page.getByRole("button", { name: words.send, exact: true }).click();
  const [shared] = (await handed(page)) as { url: string }[];
  await page.getByRole("button", { name: words.copy, exact: true }).click();
  await page.getByText(words.copied).waitFor();
  await expect.poll(() => handed(page)).toEqual([shared?.url]);
  await expect.poll(() => field(page, "link").inputValue()).toBe(shared?.url);
  expect(await axeFinds(page, { within: ".answer-side" })).toEqual([]);
  await close();

  const elsewhere = await openPage(browser, "about:blank", ALONE);
  await elsewhere.page.addInitScript(() => {
    localStorage.setItem("hypsotune.question", JSON.stringify({ heat_kW: 2, low_fan_rpm: 1500 }));
    localStorage.setItem("hypsotune.unit.atlas.temperature", '"°F"');
  });
  await elsewhere.page.goto(shared?.url ?? "");
  await elsewhere.page.getByText(words.opened).waitFor();
  await expect.poll(() => answerOf(elsewhere.page)).toEqual(sent);
  await expect.poll(() => elsewhere.page.locator("#map-end").inputValue()).toBe("high");
  await expect.poll(() => field(elsewhere.page, "air.temperature_C").inputValue()).toBe("-12");
  expect(await axeFinds(elsewhere.page, { within: ".linked" })).toEqual([]);
  await expect.poll(() => sideways(elsewhere.page)).toBe(0);
  // What is changed stands in the address, and is there after a reload; what was at home stays as it was.
  await field(elsewhere.page, "air.temperature_C").fill("-20");
  const colder = await answerOf(elsewhere.page);
  expect(colder.rates).not.toEqual(sent.rates);
  await elsewhere.page.reload();
  await elsewhere.page.getByText(words.opened).waitFor();
  await expect.poll(() => answerOf(elsewhere.page)).toEqual(colder);
  await elsewhere.page.getByRole("button", { name: words.leave, exact: true }).click();
  await elsewhere.page.locator(".linked").waitFor({ state: "detached" });
  await expect.poll(() => field(elsewhere.page, "air.temperature_C").inputValue()).toBe("");

  await elsewhere.page.goto(shared?.url ?? "");
  await elsewhere.page.getByText(words.opened).waitFor();
  await line(elsewhere.page).waitFor();
  // There is no heater to ask it for; once there is one, it can be.
  const take = elsewhere.page.getByRole("button", { name: words.take, exact: true });
  await expect.poll(() => take.count()).toBe(0);
  await line(elsewhere.page).click();
  await fillHeater(elsewhere.page, "Boat", {});
  await take.click();
  await elsewhere.page.locator(".linked").waitFor({ state: "detached" });
  expect((await answerOf(elsewhere.page)).at).toContain("Leadville");
  const kept = await elsewhere.page.evaluate(() => localStorage.getItem("hypsotune.question"));
  expect(JSON.parse(kept ?? "{}")).toMatchObject({
    heat_kW: 2,
    low_fan_rpm: 1500,
    air: { temperature_C: -12 },
  });
  await elsewhere.close();
});

test("a link with wrong or hostile values says which, one sentence each, and what stands in their place", async () => {
  const { page, close } = await openPage(
    browser,
    `${atlas.url}/#/?elevation_m=99999&temperature_C=<img src=x onerror=alert(1)>&heat_kW=2&units=m,K&utm_source=chat`,
    PHONE,
  );
  await page.locator(".linked li").first().waitFor();
  await expect
    .poll(() => shownTexts(page.locator(".linked li")))
    .toEqual([
      words.refused(t.site.elevation, "99999", words.instead("1,000 m")),
      words.refused(t.air.temperature, "<img src=x onerror=alert(1)>", words.leftOut),
      words.refused(words.labels.units, "m,K", words.yourUnits),
    ]);
  expect((await answerOf(page)).at).toContain("1,000 m");
  await close();

  const card = await openPage(browser, `${atlas.url}/#/card?heat_kW=99&paper=a0`, PHONE);
  await card.page.locator(".linked li").first().waitFor();
  await expect
    .poll(() => shownTexts(card.page.locator(".linked li")))
    .toEqual([
      words.refused(t.heater.heat, "99", words.instead("5 kW")),
      words.refused(cardWords.fields.paper, "a0", words.instead(cardWords.papers.a6)),
    ]);
  await card.close();
});

/** What a reader of codes finds in a picture of the card. */
async function codeOn(page: Page): Promise<string> {
  const picture = await page.locator(".card-side[data-side=back]").screenshot();
  const { width, height, data, channels } = decode(picture);
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let i = 0; i < width * height; i++)
    for (let c = 0; c < 3; c++) rgba[4 * i + c] = Number(data[channels * i + c]);
  return decodeQR({ width, height, data: rgba }, { timeLimit: 5000 });
}

test("the card carries its address as a code that another program reads, with its view in letters; opened, it is the same card", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/card`, {
    viewport: { width: 1280, height: 800 },
    deviceScaleFactor: 3,
    colorScheme: "dark",
  });
  await page.locator(".nomogram").waitFor();
  await field(page, "low.fan_rpm").fill("1812");
  await field(page, "high.fan_rpm").fill("4715");
  await field(page, "heater.dose_uL").fill("22.5");
  await field(page, "elevation.to_m").locator("xpath=../select").selectOption("ft");
  for (const [from, to] of [
    ["0", "14000"],
    // The middle scale moves to the other side, and the code with it.
    ["0", "2000"],
  ] as const) {
    await field(page, "elevation.from_m").fill(from);
    await field(page, "elevation.to_m").fill(to);
    const address = page.locator(".code-address");
    const told = await address.getAttribute("data-address");
    expect(await codeOn(page)).toBe(told);
    // Short enough to type: where the atlas is, and the view.
    const { host } = new URL(atlas.url);
    const printed = (await shownText(address))?.replaceAll(" ", "");
    expect(printed).toBe(`${cardWords.code.title.replaceAll(" ", "")}${host}/#/card`);
  }
  const address = (await page.locator(".code-address").getAttribute("data-address")) as string;
  expect(address.startsWith(`${atlas.url}/#/card?`)).toBe(true);
  const tables = () => shownTexts(page.locator(".card-side table"));
  const before = await tables();
  await page.evaluate(() => localStorage.clear());
  await leave(page);
  await page.goto(address);
  await page.getByText(words.opened).waitFor();
  await page.locator(".nomogram").waitFor();
  await expect.poll(() => tables()).toEqual(before);
  await field(page, "low.fan_rpm").fill("1900");
  await page.getByText("1,900 rpm").first().waitFor();
  expect(page.url()).toContain("low_fan_rpm=1900");
  await close();
});

/** Invented: richer than the average heater. */
const VAN = { id: "invented-van", name: "Van", heat_kW: 5, changed_at: "2026-09-01T00:00:00.000Z" };
const FOUND = {
  id: "invented-tune",
  heater_id: VAN.id,
  kind: "tune",
  at: "2026-10-10T20:00:00.000Z",
  site: { elevation_m: 600 },
  air: { temperature_C: 10 },
  low: { pump_Hz: 1.4, fan_rpm: 1700, co_ppm: 14 },
  high: { pump_Hz: 5, fan_rpm: 4500, co_ppm: 9 },
  changed_at: "2026-11-01T00:00:00.000Z",
};

function logbookFile() {
  const file = { format: "hypsotune logbook", version: 1, heaters: [VAN], entries: [FOUND] };
  return {
    name: "invented.json",
    mimeType: "text/plain",
    buffer: Buffer.from(JSON.stringify(file)),
  };
}

test("own tunes are in a link only when asked for: with them it opens as my answer, without as the average one; it stays on the way to the heater", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/logbook`, ALONE);
  await listen(page);
  await page.locator("#logbook-file").setInputFiles(logbookFile());
  await page.locator(".own-steps").waitFor();
  await page.goto(`${atlas.url}/#/`);
  await page.locator(".own-basis").waitFor();
  const mine = await shownRates(page);
  const links: string[] = [];
  for (const withOwn of [false, true]) {
    await field(page, "link.own").setChecked(withOwn);
    await page.getByRole("button", { name: words.copy, exact: true }).click();
    await expect
      .poll(async () => {
        links.push(...((await handed(page)) as string[]));
        return links.length;
      })
      .toBe(withOwn ? 2 : 1);
  }
  await close();
  const [average = "", own = ""] = links;
  expect(average).not.toContain("own=");

  const elsewhere = await openPage(browser, own, LAPTOP);
  await elsewhere.page.locator(".own-basis").waitFor();
  await expect.poll(() => shownRates(elsewhere.page)).toEqual(mine);
  await elsewhere.page.goto(average);
  await elsewhere.page.locator(".own-basis").waitFor({ state: "detached" });
  await expect.poll(() => shownRates(elsewhere.page)).not.toEqual(mine);
  await expect.poll(() => elsewhere.page.locator(".linked li").count()).toBe(0);
  // On the way to the heater it is still the link's question.
  await elsewhere.page.getByRole("link", { name: t.answer.tuneHere, exact: true }).click();
  await field(elsewhere.page, "low_before_Hz").waitFor();
  await elsewhere.page.getByText(words.opened).waitFor();
  await expect.poll(() => field(elsewhere.page, "low.fan_rpm").inputValue()).toBe("1700");
  await elsewhere.close();
});

/** Elevations, rates, bands and shifts at every stop. */
async function tripShown(page: Page): Promise<string> {
  const figures = await shownTexts(page.locator(".trip-table, .profile-stops, .verdict"));
  return figures.join("\n");
}

test("a trip's link opens elsewhere with the same answer in the same units: with own tunes where they were asked for, else it says whose it is", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/logbook`, ALONE);
  await listen(page);
  await page.locator("#logbook-file").setInputFiles(logbookFile());
  await page.locator(".own-steps").waitFor();
  const stops = [
    { name: "Harbour", elevation_m: 5, temperature_C: 10 },
    { name: "Hut", elevation_m: 2600, temperature_C: -6 },
  ];
  await page.evaluate(
    (kept) => {
      for (const [name, value] of Object.entries(kept))
        localStorage.setItem(`hypsotune.${name}`, JSON.stringify(value));
    },
    {
      trip: textOf({ ...NEW_TRIP, stops }),
      "unit.trip.elevation": "ft",
      "unit.trip.temperature": "°F",
    },
  );
  await page.goto(`${atlas.url}/#/trip`);
  await page.locator(".trip .own-basis").waitFor();
  const mine = await tripShown(page);
  expect(mine).toContain("ft");
  const links: string[] = [];
  for (const withOwn of [false, true]) {
    await field(page, "link.own").setChecked(withOwn);
    await page.getByRole("button", { name: trip.keep.link, exact: true }).click();
    await expect
      .poll(async () => links.push(...((await handed(page)) as string[])))
      .toBe(withOwn ? 2 : 1);
  }
  await close();

  const [average = "", own = ""] = links;
  const elsewhere = await openPage(browser, own, LAPTOP);
  await elsewhere.page.locator(".trip .own-basis").waitFor();
  await elsewhere.page.getByText(trip.keep.openedOwn(1)).waitFor();
  await expect.poll(() => tripShown(elsewhere.page)).toBe(mine);
  await elsewhere.page.goto(average);
  await elsewhere.page.getByText(trip.keep.openedAverage).waitFor();
  await expect.poll(() => elsewhere.page.locator(".trip .own-basis").count()).toBe(0);
  await expect.poll(() => tripShown(elsewhere.page)).not.toBe(mine);
  await expect.poll(() => tripShown(elsewhere.page)).toContain("ft");
  await elsewhere.close();
});
