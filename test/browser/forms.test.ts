import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { cardWords } from "../../client/texts/card.ts";
import { logbookWords as words } from "../../client/texts/logbook.ts";
import { offline } from "../../client/texts/offline.ts";
import { shareWords } from "../../client/texts/share.ts";
import { trip } from "../../client/texts/trip.ts";
import { choosePlace, field, openPage, openSite, openStop, shownText } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";

// What every form owes to who fills it in on a phone: nothing that was put right stays marked, nothing that is not read is
// kept or sent, what came of a press is in sight, and what opens is seen from its beginning.

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
});

afterAll(async () => {
  await atlas?.close();
});

const PHONE = { viewport: { width: 360, height: 740 } };
const open = (view: string, options = {}) =>
  openPage(browser, `${atlas.url}/#/${view}`, { ...PHONE, ...options });
const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, exact: typeof name === "string" });
const inForm = (page: Page, name: string) => page.locator(`form [name="${name}"]`);
const isMarked = async (one: Locator) => (await one.getAttribute("aria-invalid")) === "true";

/** Whether all of it is on the screen, with nothing over it. */
const isInSight = (one: Locator): Promise<boolean> =>
  one.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return top >= 0 && bottom <= innerHeight && element.contains(over);
  });

/** Waits until a heading has the focus and the part of the page that it heads begins at the top of the screen. */
async function beginsWith(page: Page, title: string): Promise<void> {
  const heading = page.locator("h2:focus", { hasText: title });
  await heading.waitFor();
  await expect.poll(() => isInSight(heading)).toBe(true);
  await expect.poll(() => heading.evaluate((h) => h.getBoundingClientRect().top)).toBeLessThan(120);
}

async function addHeater(page: Page, figures: Record<string, string> = {}): Promise<void> {
  await button(page, words.heater.add).click();
  await inForm(page, "heater.name").fill("Van");
  for (const [name, value] of Object.entries(figures)) await inForm(page, name).fill(value);
  await button(page, words.heater.save).click();
  await page.getByText(words.entry.kept).waitFor();
}

const TUNE: Record<string, string> = {
  "site.elevation_m": "1600",
  "low.pump_Hz": "1.2",
  "low.fan_rpm": "1700",
  "low.ppm": "14",
  "high.pump_Hz": "4",
  "high.fan_rpm": "4500",
  "high.ppm": "9",
};

async function logTune(page: Page, change: Record<string, string> = {}): Promise<void> {
  await button(page, words.entry.add.tune).click();
  for (const [name, value] of Object.entries({ ...TUNE, ...change })) {
    await inForm(page, name).fill(value);
  }
  await button(page, words.entry.save).click();
  await page.locator(".entries h3:focus").waitFor();
}

const SHARED: Record<string, string> = {
  "site.elevation_m": "1600",
  "air.temperature_C": "-9",
  "low.pump_Hz": "0.9",
  "low.fan_rpm": "1700",
  "low.co_ppm": "14",
  "high.pump_Hz": "3.7",
  "high.fan_rpm": "4500",
  "high.co_ppm": "9",
};

async function fillShare(page: Page): Promise<void> {
  for (const [name, value] of Object.entries(SHARED)) await field(page, name).fill(value);
  await field(page, "consent").check();
}

test("a night's fuel is that of the rates logged last and the heater's dose, and it is said what it would be set for tonight's air", async () => {
  const { page, close } = await open("logbook");
  await addHeater(page, { "heater.dose_uL": "22" });
  const needs = page.locator(".needs li");
  const about = page.locator(".needs + .note");
  // Before any tune: the start tune's rates.
  await about.getByText(words.supply.dose).waitFor();
  await logTune(page);
  await about.getByText(/Fuel use from your tune of .*, 1\.2 and 4\.0\sHz/).waitFor();
  // 1.2 + 0.3 · 2.8 = 2.04 Hz of 22 µL for 10 h are 1.62 L; what must be taken along is rounded up.
  await needs.first().getByText(words.supply.fuel("1.7", "10")).waitFor();
  // In the air it was tuned in there is nothing else to set; in thinner air there is, and it takes less.
  await expect.poll(() => needs.getByText(/^Set for tonight's air/).count()).toBe(0);
  await page.locator('[name="tonight.elevation_m"]').fill("4200");
  const retuned = needs.getByText(/^Set for tonight's air, about [\d.]+ and [\d.]+\sHz, it would/);
  await retuned.waitFor();
  const [, low, high, litres] =
    /about ([\d.]+) and ([\d.]+) Hz, it would take ([\d.]+) L/.exec(await shownText(retuned)) ?? [];
  expect(Number(low)).toBeLessThan(1.2);
  expect(Number(high)).toBeLessThan(4);
  expect(Number(litres)).toBeLessThan(1.6);
  await needs.first().getByText(words.supply.fuel("1.7", "10")).waitFor();
  // The dose counts, and without one the class does.
  const edit = async () => {
    await button(page, words.heater.edit).click();
    await page.locator('[name="heater.name"]:focus').waitFor();
  };
  await edit();
  await inForm(page, "heater.dose_uL").fill("33");
  await button(page, words.heater.save).click();
  await needs.first().getByText(words.supply.fuel("2.5", "10")).waitFor();
  await edit();
  await inForm(page, "heater.dose_uL").fill("");
  await button(page, words.heater.save).click();
  await about.getByText(words.supply.class).waitFor();
  await close();
});

test("logbook: a field put right is marked no more, and what is no number is not kept as the number before it", async () => {
  const { page, close } = await open("logbook");
  await button(page, words.heater.add).click();
  await page.locator('[name="heater.name"]:focus').waitFor();
  await button(page, words.heater.save).click();
  const name = inForm(page, "heater.name");
  await expect.poll(() => isMarked(name)).toBe(true);
  await name.fill("Hut");
  await expect.poll(() => isMarked(name)).toBe(false);
  await inForm(page, "heater.dose_uL").fill("9000");
  await button(page, words.heater.save).click();
  await expect.poll(() => isMarked(inForm(page, "heater.dose_uL"))).toBe(true);
  await inForm(page, "heater.dose_uL").fill("22");
  await expect.poll(() => isMarked(inForm(page, "heater.dose_uL"))).toBe(false);
  await button(page, words.heater.save).click();
  await page.getByText(words.entry.kept).waitFor();

  await button(page, words.entry.add.tune).click();
  await button(page, words.entry.save).click();
  const missing = page.locator(".error", { hasText: words.check.missing });
  await expect.poll(() => missing.count()).toBe(3);
  await inForm(page, "site.elevation_m").fill("1600");
  await expect.poll(() => isMarked(inForm(page, "site.elevation_m"))).toBe(false);
  await expect.poll(() => missing.count()).toBe(2);
  for (const [field_, value] of Object.entries(TUNE)) await inForm(page, field_).fill(value);
  await expect.poll(() => page.locator("form [aria-invalid=true]").count()).toBe(0);
  await expect.poll(() => page.getByText(words.entry.fix).count()).toBe(0);
  await inForm(page, "high.pump_Hz").fill("4.x");
  await button(page, words.entry.save).click();
  await page.locator('[name="high.pump_Hz"]:focus').waitFor();
  await expect.poll(() => page.locator(".entries > li").count()).toBe(0);
  await inForm(page, "high.pump_Hz").fill("4.1");
  await button(page, words.entry.save).click();
  await page
    .locator(".entries > li")
    .getByText(/4\.1\sHz/)
    .waitFor();
  await close();
});

test("logbook: an entry's form is seen from its beginning, what was kept is gone on from, and Undo is in sight and in focus", async () => {
  const { page, close } = await open("logbook");
  await addHeater(page);
  for (const hours of ["10", "20", "30", "40"]) await logTune(page, { hours });
  const entries = page.locator(".entries > li");
  await expect.poll(() => entries.count()).toBe(4);
  const last = entries.last();
  await last.getByRole("button", { name: /^Change/ }).click();
  await beginsWith(page, words.entry.newTitle.tune);
  await inForm(page, "notes").fill("Looked at again");
  await button(page, words.entry.save).click();
  const heading = last.locator("h3:focus");
  await heading.waitFor();
  await expect.poll(() => isInSight(heading)).toBe(true);
  await last.getByText("Looked at again").waitFor();
  // Left, it is gone on from the same entry; a new one from where it began.
  await last.getByRole("button", { name: /^Change/ }).click();
  await button(page, words.entry.cancel).click();
  await heading.waitFor();
  await button(page, words.entry.add.note).click();
  await button(page, words.entry.cancel).click();
  await page.locator("button:focus", { hasText: words.entry.add.tune }).waitFor();

  await last.getByRole("button", { name: /^Remove/ }).click();
  const undo = page.locator("button:focus", { hasText: words.entry.undo });
  await undo.waitFor();
  await expect.poll(() => isInSight(undo)).toBe(true);
  await expect.poll(() => entries.count()).toBe(3);
  await page.keyboard.press("Enter");
  await page.getByText(words.entry.undone).waitFor();
  await expect.poll(() => entries.count()).toBe(4);
  // Nothing is left without the focus, and it can be put away.
  await page.locator("button:focus", { hasText: shareWords.close }).waitFor();
  await page.keyboard.press("Enter");
  await page.getByText(words.entry.undone).waitFor({ state: "detached" });
  await close();
});

test("logbook: a high final reading is said while it is typed, with the entry, and before it is shared", async () => {
  const { page, close } = await open("logbook");
  await addHeater(page);
  await button(page, words.entry.add.tune).click();
  const form = page.locator("form .high-co");
  await inForm(page, "low.ppm").fill("450");
  await form.getByText(shareWords.highCo(t.low, "450", "30")).waitFor();
  await form.getByText(shareWords.highCoCauses).waitFor();
  // At the meter's end it is at least that; below its floor it is none.
  await inForm(page, "low.reading").selectOption("co_above_ppm");
  await form.getByText(shareWords.highCo(t.low, "450", "30")).waitFor();
  await inForm(page, "low.reading").selectOption("co_below_ppm");
  await form.waitFor({ state: "detached" });
  await inForm(page, "low.reading").selectOption("co_ppm");
  for (const [name, value] of Object.entries({ ...TUNE, "low.ppm": "450" })) {
    await inForm(page, name).fill(value);
  }
  await button(page, words.entry.save).click();
  const entry = page.locator(".entries > li");
  await entry
    .locator(".high-co")
    .getByText(shareWords.highCo(t.low, "450", "30"))
    .waitFor();
  await button(page, /^Share this tune:/).click();
  await expect.poll(() => entry.locator(".shared .high-co").count()).toBe(1);
  await close();
});

test("share: revising begins at the form's heading; a withdrawal is said in sight; what is no number is not sent", async () => {
  const { page, close } = await open("share");
  await fillShare(page);
  await field(page, "high.pump_Hz").fill("3.7");
  await field(page, "high.pump_Hz").fill("3.7o");
  await button(page, shareWords.send).click();
  await page.locator('[name="high.pump_Hz"]:focus').waitFor();
  await expect.poll(() => page.locator(".outcome").count()).toBe(0);
  await field(page, "high.pump_Hz").fill("3.7");
  await button(page, shareWords.send).click();
  await beginsWith(page, shareWords.accepted);

  const receipts = page.locator(".receipts li");
  await receipts.getByRole("button", { name: shareWords.revise }).click();
  await beginsWith(page, shareWords.revising);
  await expect.poll(() => field(page, "high.pump_Hz").inputValue()).toBe("3.7");
  await button(page, shareWords.cancelRevision).click();
  await beginsWith(page, shareWords.title);

  await button(page, shareWords.withdraw).click();
  await button(page, shareWords.withdrawSure).click();
  const said = page.getByText(shareWords.withdrawn);
  await said.waitFor();
  await expect.poll(() => isInSight(said)).toBe(true);
  await close();
});

test("share: a tune that waits says so in sight; one to mend begins at the form's heading; a refusal goes with the first change", async () => {
  const { page, close } = await open("share");
  let answer: "none" | "refusal" = "none";
  await page.route("**/api/tunes", (route) =>
    answer === "none"
      ? route.abort()
      : route.fulfill({
          status: 422,
          contentType: "application/problem+json",
          body: JSON.stringify({ type: "about:blank", title: "Not so", status: 422 }),
        }),
  );
  await fillShare(page);
  await button(page, shareWords.send).click();
  const waits = page.locator("p:focus", { hasText: offline.waits });
  await waits.waitFor();
  await expect.poll(() => isInSight(waits)).toBe(true);
  answer = "refusal";
  await button(page, offline.sendNow).click();
  await button(page, offline.mend).click();
  await beginsWith(page, shareWords.title);
  await field(page, "consent").check();
  await button(page, shareWords.send).click();
  await page.getByText(shareWords.keptForm).waitFor();
  await field(page, "low.co_ppm").fill("13");
  await page.getByText(shareWords.keptForm).waitFor({ state: "detached" });
  await close(/Failed to load resource: (net::|.* 422)/);
});

test("trip: what is missing or out of bounds is said at its own field until it is put right", async () => {
  const { page, close } = await open("trip");
  await button(page, trip.add.button).click();
  await page.locator('[name="new.elevation_m"]:focus').waitFor();
  await page.getByText(trip.add.needElevation).waitFor();
  await field(page, "new.elevation_m").fill("1200");
  await page.getByText(trip.add.needElevation).waitFor({ state: "detached" });
  await field(page, "new.temperature_C").fill("-90");
  await button(page, trip.add.button).click();
  await expect.poll(() => isMarked(field(page, "new.temperature_C"))).toBe(true);
  await expect.poll(() => isMarked(field(page, "new.elevation_m"))).toBe(false);
  await field(page, "new.temperature_C").fill("-9");
  await expect.poll(() => isMarked(field(page, "new.temperature_C"))).toBe(false);
  await button(page, trip.add.button).click();
  await openStop(page, 0);
  const nights = field(page, "stops.0.nights");
  for (const [typed, wrong] of [
    ["1.5", true],
    ["2", false],
    ["120", true],
    ["3", false],
  ] as const) {
    await nights.fill(typed);
    expect([typed, await isMarked(nights)]).toEqual([typed, wrong]);
  }
  await close();
});

test("card: an end of a range that the other end kept out is taken once the other makes room", async () => {
  const { page, close } = await open("card");
  const [from, to] = [field(page, "elevation.from_m"), field(page, "elevation.to_m")];
  await from.fill("4400");
  await page.getByText(cardWords.fields.atMost("4,200 m")).waitFor();
  await to.fill("5200");
  await page.getByText(cardWords.fields.atMost("4,200 m")).waitFor({ state: "detached" });
  await expect.poll(() => isMarked(from)).toBe(false);
  await expect.poll(() => from.inputValue()).toBe("4400");
  const choice = () =>
    page.evaluate(() => JSON.parse(localStorage.getItem("hypsotune.card") ?? "{}").elevation_m);
  await expect.poll(choice).toEqual([4400, 5200]);
  await close();
});

test("atlas: an elevation out of bounds is marked no more once a place is chosen in its stead", async () => {
  const { page, close } = await open("start");
  await openSite(page);
  const elevation = field(page, "site.elevation_m");
  await elevation.fill("9999");
  await expect.poll(() => isMarked(elevation)).toBe(true);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  // With a place chosen the fields fold away.
  await openSite(page);
  await expect.poll(() => elevation.inputValue()).toBe("3097");
  await expect.poll(() => isMarked(elevation)).toBe(false);
  await close();
});

test("what opens has the focus before a frame is drawn: whoever types already loses no figure to it", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  await openSite(page);
  await field(page, "site.elevation_m").press("Enter");
  await field(page, "place").waitFor({ state: "detached" });
  const focused = await page.evaluate(async () => {
    document.querySelector<HTMLElement>(".site-row button")?.click();
    // Not a frame: what is drawn in one piece.
    await Promise.resolve().then(() => {});
    return document.activeElement?.getAttribute("name");
  });
  expect(focused).toBe("place");
  await close();
});
