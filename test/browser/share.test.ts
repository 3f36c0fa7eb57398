import { cellToLatLng, latLngToCell } from "h3-js";
import type { Browser, Page, Request } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { locale } from "../../client/language.ts";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { offline } from "../../client/texts/offline.ts";
import { shareWords } from "../../client/texts/share.ts";
import { estimateHint } from "../../client/ui/estimate-hint.ts";
import { UNITS } from "../../client/units.ts";
import { ACCEPTED_MEANS } from "../../model/safety.ts";
import type { Tune } from "../../model/tune.ts";
import type { ElevationAnswer, Health, Submitted } from "../../server/contract.ts";
import { inventedTunes } from "./crowd.ts";
import { CUT_OFF, choosePlace, field, openPage, shownText } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  // Drawing the map in software would take most of the time; it has tests of its own.
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
  await atlas.load(inventedTunes());
});

afterAll(async () => {
  await atlas?.close();
});

const openShare = () => openPage(browser, `${atlas.url}/#/share`);
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });
const tunes = async () => (await atlas.get<Health>("/health")).tunes;
const fitNow = async () => (await atlas.get<Health>("/health")).fit;

/** Everything a plausible tune at Leadville needs beside its place. */
async function fillSettings(page: Page): Promise<void> {
  const settings: Record<string, string> = {
    "air.temperature_C": "-9",
    "low.pump_Hz": "0.9",
    "low.fan_rpm": "1700",
    "low.co_ppm": "14",
    "high.pump_Hz": "3.3",
    "high.fan_rpm": "4500",
    "high.co_ppm": "9",
  };
  for (const [name, value] of Object.entries(settings)) await field(page, name).fill(value);
}

test("a slip is caught before sending and mended; verdict, comparison and receipt follow; the atlas moves", async () => {
  const { page, close } = await openShare();
  const sent: Request[] = [];
  page.on("request", (request) => request.method() === "POST" && sent.push(request));
  const [tunesBefore, fitBefore] = [await tunes(), await fitNow()];

  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe("3097");
  await fillSettings(page);
  await field(page, "site.elevation_m").fill("10160");
  const slips = page.locator(".slips");
  await slips.getByText(/10,160 at this place is its elevation in feet/).waitFor();
  await field(page, "consent").check();
  await slips.getByRole("button", { name: shareWords.use("3,097 m") }).click();
  await slips.waitFor({ state: "detached" });
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe("3097");
  expect(sent).toEqual([]);

  await button(page, shareWords.send).click();
  const outcome = page.locator(".outcome");
  await outcome.getByText(shareWords.accepted, { exact: true }).waitFor();
  await outcome.getByText(ACCEPTED_MEANS).waitFor();
  await expect.poll(() => outcome.getByText(/the atlas expects at this density/).count()).toBe(2);
  const receipt = (await outcome.locator(".receipt").textContent()) ?? "";
  expect(receipt.length).toBeGreaterThan(20);

  // What left the browser: the middle of the map cell, a random key, nothing of the town itself.
  expect(sent).toHaveLength(1);
  const body = sent[0]?.postDataJSON() as Tune;
  const [lat, lon] = cellToLatLng(latLngToCell(39.25082, -106.29252, 5));
  expect(body.site).toEqual({
    elevation_m: 3097,
    lat: Number(lat.toFixed(4)),
    lon: Number(lon.toFixed(4)),
  });
  expect(JSON.stringify(body)).not.toContain("Leadville");
  expect(body.contributor).toMatch(/^[\w-]{16,64}$/);
  expect(body).not.toHaveProperty("found");
  expect(sent[0]?.headers()["idempotency-key"]).toMatch(/^[\w-]{16,}$/);

  const version = await atlas.movedFrom(fitBefore);
  await expect.poll(() => tunes()).toBe(tunesBefore + 1);
  await page.goto(`${atlas.url}/#/start`);
  await page.getByText(`Fit ${version}`).waitFor();
  await page.getByText(basisWords.tunes(String(tunesBefore + 1), "49", "5")).waitFor();
  await close();
});

test("a new owner reads from when the tune counts and what its size waits for, beside the receipt and when asking for it", async () => {
  const careful = await runAtlas([], { NEW_KEY_DAYS: "6" });
  const { page, close } = await openPage(browser, `${careful.url}/#/share`);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await fillSettings(page);
  await field(page, "consent").check();
  const answered = page.waitForResponse((answer) => answer.request().method() === "POST");
  await button(page, shareWords.send).click();
  const { counts_from } = (await (await answered).json()) as Submitted;
  const day = new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" });
  // Nobody has shared a tune of this size before.
  const sentence = [
    shareWords.countsFrom(day.format(new Date(counts_from as string))),
    shareWords.countsOnce(3),
  ].join(" ");
  await page.locator(".outcome").getByText(sentence).waitFor();
  await button(page, shareWords.check).click();
  await page.locator(".receipts li").getByText(`${shareWords.accepted}; ${sentence}`).waitFor();
  expect((await careful.get<Health>("/health")).fit).toBe("prior");
  await close();
  await careful.close();
});

test("in a flood the page finds the proof that the atlas asks for, and its sender sees nothing of it", async () => {
  const flooded = await runAtlas([], { FLOOD_LIMIT: "1" });
  await flooded.load(inventedTunes().slice(0, 1));
  const { page, close } = await openPage(browser, `${flooded.url}/#/share`);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await fillSettings(page);
  await field(page, "consent").check();
  const asked = page.waitForResponse((answer) => answer.request().method() === "POST");
  await button(page, shareWords.send).click();
  expect((await asked).status()).toBe(429);
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  expect((await flooded.get<Health>("/health")).tunes).toBe(2);
  await close(/status of 429/);
  await flooded.close();
});

test("a shared tune is looked up, revised and withdrawn from the list in this browser", async () => {
  const { page, close } = await openShare();
  const before = await tunes();
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await fillSettings(page);
  // How it was found is nobody's to guess: until it is said nothing is sent of it.
  const found = page.getByLabel(shareWords.found);
  await expect.poll(() => found.inputValue()).toBe("");
  await found.selectOption(shareWords.foundWays["stopped early"]);
  await field(page, "consent").check();
  await button(page, shareWords.send).click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await expect.poll(() => found.inputValue()).toBe("");
  await page.reload();
  await expect.poll(() => page.locator(".outcome").count()).toBe(0);
  const mine = page.locator(".receipts li");
  await mine.getByText(/5\skW near Leadville.* at 3,100\sm, 0.9\sHz and 3.3\sHz/).waitFor();
  await button(page, shareWords.check).click();
  await mine.getByText(/Accepted; lowest power/).waitFor();

  await button(page, shareWords.revise).click();
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3.3");
  await expect.poll(() => found.inputValue()).toBe("stopped early");
  await field(page, "high.pump_Hz").fill("3.4");
  await found.selectOption(shareWords.foundWays.bracketed);
  await field(page, "consent").check();
  const revision = page.waitForRequest((request) => request.method() === "PUT");
  await button(page, shareWords.sendRevision).click();
  expect(((await revision).postDataJSON() as Tune).found).toBe("bracketed");
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await mine.getByText(/0.9\sHz and 3.4\sHz/).waitFor();
  await expect.poll(() => tunes()).toBe(before + 1);

  await button(page, shareWords.withdraw).click();
  await button(page, shareWords.withdrawSure).click();
  await page.getByText(shareWords.withdrawn).waitFor();
  await page.getByText(shareWords.none).waitFor();
  await expect.poll(() => tunes()).toBe(before);
  await close();
});

test("a position's elevation is sent as an estimate, revised as one, and as exact once it is typed", async () => {
  const position = { latitude: 46.9, longitude: 9.7 };
  const { page, close } = await openPage(browser, `${atlas.url}/#/share`, {
    geolocation: position,
    permissions: ["geolocation"],
  });
  const sent: Tune["site"][] = [];
  page.on("request", (request) => {
    if (["POST", "PUT"].includes(request.method())) sent.push(request.postDataJSON().site);
  });
  const there = await atlas.get<ElevationAnswer>(
    `/elevation?lat=${position.latitude}&lon=${position.longitude}`,
  );
  await button(page, t.site.position).click();
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).not.toBe("");
  // What is said at the field is what goes with it.
  await page.getByText(estimateHint(there.sd_m, UNITS.elevation[0]) ?? "none").waitFor();
  await fillSettings(page);
  await field(page, "consent").check();
  await button(page, shareWords.send).click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  const [lat, lon] = cellToLatLng(latLngToCell(position.latitude, position.longitude, 5));
  const estimate = {
    elevation_m: Math.round(there.elevation_m / 10) * 10,
    elevation_sd_m: Math.ceil(there.sd_m / 10) * 10,
    lat: Number(lat.toFixed(4)),
    lon: Number(lon.toFixed(4)),
  };
  expect(sent).toEqual([estimate]);

  await button(page, shareWords.revise).click();
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3.3");
  await page
    .getByText(estimateHint(estimate.elevation_sd_m, UNITS.elevation[0]) ?? "none")
    .waitFor();
  await field(page, "high.pump_Hz").fill("3.4");
  await field(page, "consent").check();
  await button(page, shareWords.sendRevision).click();
  await page
    .locator(".receipts li")
    .getByText(/3.4\sHz/)
    .waitFor();
  expect(sent.at(-1)).toEqual(estimate);

  await button(page, shareWords.revise).click();
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3.4");
  await field(page, "site.elevation_m").fill(String(estimate.elevation_m + 3));
  await field(page, "consent").check();
  await button(page, shareWords.sendRevision).click();
  await expect.poll(() => sent.length).toBe(3);
  const { elevation_sd_m: _, ...known } = estimate;
  expect(sent.at(-1)).toEqual({ ...known, elevation_m: estimate.elevation_m + 3 });
  await close();
});

test("a tune sent as it is in spite of a slip is held with its reason, and a suggestion then mends it", async () => {
  const { page, close } = await openShare();
  await field(page, "site.elevation_m").fill("1600");
  await fillSettings(page);
  await field(page, "low.pump_Hz").fill("60");
  await field(page, "high.pump_Hz").fill("234");
  await field(page, "consent").check();
  // The first press only shows what looks wrong.
  await button(page, shareWords.send).click();
  await button(page, shareWords.sendAsIs).click();
  const outcome = page.locator(".outcome[data-verdict=held]");
  await outcome.getByText(/The pump rate of 60\sHz at lowest power/).waitFor();
  const useAll = outcome.getByRole("button", { name: shareWords.useAll(2) });
  // Out of reach the press is answered too.
  await page.route("**/api/tunes/*", (route) => route.abort());
  await useAll.click();
  await page.locator(".said-bar .error").getByText(t.notReached).waitFor();
  await page.unroute("**/api/tunes/*");
  await useAll.click();
  await expect.poll(() => field(page, "low.pump_Hz").inputValue()).toBe("1");
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3.9");
  await field(page, "consent").check();
  await button(page, shareWords.sendRevision).click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await close(CUT_OFF);
});

test("what is missing or out of bounds is said at its field, and nothing is sent without consent", async () => {
  const { page, close } = await openShare();
  let posts = 0;
  page.on("request", (request) => request.method() === "POST" && posts++);
  await field(page, "high.fan_rpm").fill("99999");
  await page.getByText("Fan speed must be at most 20000 rpm.").waitFor();
  await field(page, "high.fan_rpm").fill("4500");
  await page.getByText("Fan speed must be at most 20000 rpm.").waitFor({ state: "detached" });
  await button(page, shareWords.send).click();
  await page.getByText(shareWords.needConsent).waitFor();
  // Elevation, both pump rates, the low end's fan speed.
  await expect.poll(() => page.getByText(shareWords.missing, { exact: true }).count()).toBe(4);
  await expect.poll(() => page.getByText(shareWords.missingCo).count()).toBe(2);
  expect(posts).toBe(0);
  await close();
});

test("a high final CO is said before it is sent, with the verdict, and beside the receipt", async () => {
  const { page, close } = await openShare();
  const said = (end: string, ppm: string) => shareWords.highCo(end, ppm, "30");
  await field(page, "site.elevation_m").fill("1600");
  await fillSettings(page);
  await expect.poll(() => page.locator(".high-co").count()).toBe(0);
  await field(page, "low.co_ppm").fill("450");
  await field(page, "high.co_ppm").fill("600");
  const form = page.locator("form .high-co");
  for (const line of [said(t.low, "450"), said(t.high, "600"), shareWords.highCoCauses]) {
    await form.getByText(line).waitFor();
  }
  // At the field too, where it is typed, and read aloud with it.
  await expect.poll(() => field(page, "low.co_ppm").getAttribute("aria-invalid")).toBe(null);
  const note = await field(page, "low.co_ppm").getAttribute("aria-describedby");
  await expect.poll(() => shownText(page.locator(`[id="${note}"]`))).toBe(said(t.low, "450"));
  // What was typed before "the meter shows nothing" was ticked is no reading.
  await field(page, "low.nothing_shown").check();
  await form.getByText(said(t.low, "450")).waitFor({ state: "detached" });
  await field(page, "low.nothing_shown").uncheck();
  await field(page, "consent").check();
  await button(page, shareWords.send).click();
  const outcome = page.locator(".outcome[data-verdict=accepted] .high-co");
  await outcome.getByText(said(t.low, "450")).waitFor();
  await outcome.getByText(said(t.high, "600")).waitFor();
  await page.reload();
  const mine = page.locator(".receipts li");
  await mine.getByText(said(t.high, "600")).waitFor();
  await button(page, shareWords.check).click();
  await mine.getByText(/Accepted; lowest power/).waitFor();
  await expect.poll(() => mine.getByText(shareWords.highCoCauses).count()).toBe(1);
  // Put right, it is silent.
  await button(page, shareWords.revise).click();
  await expect.poll(() => field(page, "low.co_ppm").inputValue()).toBe("450");
  await field(page, "low.co_ppm").fill("12");
  await field(page, "high.co_ppm").fill("9");
  await field(page, "consent").check();
  await button(page, shareWords.sendRevision).click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await expect.poll(() => page.locator(".high-co").count()).toBe(0);
  await close();
});

test("below the meter's floor is a reading of its own kind", async () => {
  const { page, close } = await openShare();
  await field(page, "site.elevation_m").fill("1600");
  await fillSettings(page);
  await field(page, "low.nothing_shown").check();
  await expect.poll(() => field(page, "low.co_below_ppm").inputValue()).toBe("30");
  await field(page, "consent").check();
  const posted = page.waitForRequest((request) => request.method() === "POST");
  await button(page, shareWords.send).click();
  const { low, high } = (await posted).postDataJSON() as Tune;
  expect(low).toEqual({ pump_Hz: 0.9, fan_rpm: 1700, co_below_ppm: 30 });
  expect(high).toEqual({ pump_Hz: 3.3, fan_rpm: 4500, co_ppm: 9 });
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  await close();
});

test("a tune whose answer was lost waits, and sending again stores it once", async () => {
  const { page, close } = await openShare();
  const before = await tunes();
  const keys: (string | undefined)[] = [];
  let lose = true;
  await page.route("**/api/tunes", async (route) => {
    keys.push(route.request().headers()["idempotency-key"]);
    if (!lose) return route.continue();
    lose = false;
    // The atlas gets it; the answer never comes back.
    await route.fetch();
    return route.abort();
  });
  await field(page, "site.elevation_m").fill("1600");
  await fillSettings(page);
  await field(page, "consent").check();
  await button(page, shareWords.send).click();
  await page.getByText(offline.waits).waitFor();
  await button(page, offline.sendNow).click();
  await page.locator(".receipts li").getByText(shareWords.accepted, { exact: true }).waitFor();
  expect(keys).toHaveLength(2);
  expect(keys[0]).toBe(keys[1]);
  await expect.poll(() => tunes()).toBe(before + 1);
  await close(CUT_OFF);
});

test("the contributor key is made on sending, shared by this browser's tunes, and can be forgotten", async () => {
  const { page, close } = await openShare();
  const keys: string[] = [];
  page.on("request", (request) => {
    if (request.method() === "POST") keys.push(request.postDataJSON().contributor);
  });
  const share = async () => {
    await field(page, "site.elevation_m").fill("1600");
    await fillSettings(page);
    await field(page, "consent").check();
    await button(page, shareWords.send).click();
    await page.locator(".outcome[data-verdict=accepted]").waitFor();
    await page.reload();
  };
  await expect.poll(() => button(page, shareWords.forgetKey).isDisabled()).toBe(true);
  await share();
  await share();
  await button(page, shareWords.forgetKey).click();
  await page.getByText(shareWords.keyForgotten).waitFor();
  await share();
  expect(keys[1]).toBe(keys[0]);
  expect(keys[2]).not.toBe(keys[0]);
  await close();
});
