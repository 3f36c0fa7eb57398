import { readFileSync } from "node:fs";
import { encode } from "fast-png";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { logbookWords as words } from "../../client/texts/logbook.ts";
import { shareWords } from "../../client/texts/share.ts";
import type { Tune } from "../../model/tune.ts";
import type { Health } from "../../server/contract.ts";
import { faultsAt } from "./faults.ts";
import { type Line, openLine } from "./line.ts";
import { CUT_OFF, openPage } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;
let line: Line;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
  line = await openLine(atlas.url);
});

afterAll(async () => {
  await line?.close();
  await atlas?.close();
});

const openLogbook = (url = atlas.url) => openPage(browser, `${url}/#/logbook`);
const button = (page: Page, name: string | RegExp) =>
  page.getByRole("button", { name, exact: typeof name === "string" });
/** The night's supply beside the form asks for a temperature too. */
const field = (page: Page, name: string) => page.locator(`form [name="${name}"]`);
const entries = (page: Page) => page.locator(".entries > li");
const tunes = async () => (await atlas.get<Health>("/health")).tunes;

async function addHeater(page: Page, name: string): Promise<void> {
  await button(page, words.heater.add).click();
  await field(page, "heater.name").fill(name);
  await field(page, "heater.dose_uL").fill("22");
  await field(page, "heater.tank_L").fill("10");
  await button(page, words.heater.save).click();
  await page.getByText(words.entry.kept).waitFor();
}

async function logTune(page: Page, change: Record<string, string> = {}): Promise<void> {
  await button(page, words.entry.add.tune).click();
  const fields: Record<string, string> = {
    "site.elevation_m": "1600",
    "air.temperature_C": "-9",
    "low.pump_Hz": "0.9",
    "low.fan_rpm": "1700",
    "low.ppm": "14",
    "high.pump_Hz": "3.7",
    "high.fan_rpm": "4500",
    "high.ppm": "9",
    "meter.distance_m": "0.3",
    ...change,
  };
  for (const [name, value] of Object.entries(fields)) await field(page, name).fill(value);
  await field(page, "meter.kind").selectOption("portable meter");
  await field(page, "found").selectOption("bracketed");
  await button(page, words.entry.save).click();
  await page.getByText(words.entry.kept).waitFor();
}

async function exported(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent("download"), button(page, name).click()]);
  return readFileSync(await download.path(), "utf8");
}

const bring = (page: Page, name: string, text: string) =>
  page
    .locator("#logbook-file")
    .setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });

const PICTURE = Buffer.from(
  encode({ width: 2, height: 1, channels: 3, data: new Uint8Array([200, 0, 0, 0, 0, 200]) }),
);

test("heater, tune with photo, cleaning, note; exported, wiped, brought back the same; axe empty and full", async () => {
  const { page, close } = await openLogbook();
  await page.getByText(words.empty).waitFor();
  expect(await faultsAt(page, [PHONE, LAPTOP], ".logbook")).toEqual([]);
  await addHeater(page, "Trailer, =one");

  await button(page, words.entry.add.tune).click();
  await button(page, words.entry.save).click();
  await page.getByText(words.entry.fix).waitFor();
  await field(page, "photo").setInputFiles({
    name: "dots.png",
    mimeType: "image/png",
    buffer: PICTURE,
  });
  await button(page, words.entry.photoDrop).waitFor();
  await button(page, words.entry.cancel).click();
  await logTune(page, { hours: "120", notes: "first\nnight", "low.power": "1" });
  await expect.poll(() => entries(page).count()).toBe(1);
  await button(page, words.entry.add.cleaning).click();
  await field(page, "hours").fill("130");
  await button(page, words.entry.save).click();
  await expect.poll(() => entries(page).count()).toBe(2);
  await button(page, words.entry.add.note).click();
  await field(page, "notes").fill("New hose");
  await button(page, words.entry.save).click();
  await expect.poll(() => entries(page).count()).toBe(3);

  // A photo comes with a change, and stays.
  await entries(page)
    .last()
    .getByRole("button", { name: /^Change/ })
    .click();
  await field(page, "photo").setInputFiles({
    name: "dots.png",
    mimeType: "image/png",
    buffer: PICTURE,
  });
  await button(page, words.entry.photoDrop).waitFor();
  await button(page, words.entry.save).click();
  await entries(page).locator("img.photo").waitFor();
  expect(await faultsAt(page, [PHONE, LAPTOP], ".logbook")).toEqual([]);

  // Removed and taken back.
  await entries(page)
    .first()
    .getByRole("button", { name: /^Remove/ })
    .click();
  await expect.poll(() => entries(page).count()).toBe(2);
  await button(page, words.entry.undo).click();
  await expect.poll(() => entries(page).count()).toBe(3);

  const json = await exported(page, words.files.json);
  const csv = await exported(page, words.files.csv);
  const shown = await entries(page).allInnerTexts();
  await bring(page, "again.json", json);
  await page.getByText(words.files.brought(0, 0, 4)).waitFor();

  await page.evaluate(
    () =>
      new Promise((done) => {
        const wipe = indexedDB.deleteDatabase("hypsotune-logbook");
        wipe.onsuccess = done;
        wipe.onblocked = done;
      }),
  );
  await page.reload();
  await page.getByText(words.lost(3)).waitFor();
  await bring(page, "broken.csv", csv.replace(/,3\.7(?=,)/, ",fast"));
  await page.getByText(/Line \d+: high.pump_Hz: must be a number\. Nothing was imported/).waitFor();
  await expect.poll(() => entries(page).count()).toBe(0);
  await bring(page, "back.json", json);
  await page.getByText(words.files.brought(4, 0, 0)).waitFor();
  await expect.poll(() => entries(page).allInnerTexts()).toEqual(shown);
  expect(await exported(page, words.files.json)).toBe(json);
  expect(await exported(page, words.files.csv)).toBe(csv);

  await button(page, words.heater.remove).click();
  await button(page, words.heater.removeSure(3)).click();
  await page.getByText(words.empty).waitFor();
  await button(page, words.entry.undo).click();
  await expect.poll(() => entries(page).count()).toBe(3);
  await close();
});

test("a tune shared from its entry with the line cut arrives once, with nothing of the person; it is revised and withdrawn there", async () => {
  const { page, close } = await openLogbook(line.url);
  const before = await tunes();
  await addHeater(page, "Hut");
  await logTune(page, { notes: "private words" });
  // The consent's words are fetched; now nothing goes out any more.
  line.cut();
  await button(page, /^Share this tune:/).click();
  await button(page, shareWords.send).click();
  await page.getByText(shareWords.needConsent).waitFor();
  await page.locator("[name=consent]").check();
  // Any try may be the one that arrives, even the first, if it is still on its way when the line is mended.
  const tried: Tune[] = [];
  page.on("request", (request) => {
    if (request.method() === "POST") tried.push(request.postDataJSON());
  });
  await button(page, shareWords.send).click();
  await page.getByText(words.share.waits).waitFor();
  line.mend();
  await page.evaluate(() => dispatchEvent(new Event("online")));
  await page.getByText(words.share.receiptNotKept).waitFor();
  const body = tried.at(-1) as Tune;
  expect(line.keys.filter((key) => key !== "undefined")).toHaveLength(1);
  await expect.poll(() => tunes()).toBe(before + 1);
  expect(JSON.stringify(body)).not.toMatch(/private|Hut|hours|T\d\d:/);
  expect(body.found).toBe("bracketed");
  expect(body.tuned_on).toMatch(/^\d{4}-\d\d$/);

  await entries(page)
    .first()
    .getByRole("button", { name: /^Change/ })
    .click();
  await field(page, "high.pump_Hz").fill("3.8");
  await button(page, words.entry.save).click();
  await entries(page)
    .getByText(/3\.8\sHz/)
    .waitFor();
  await button(page, words.share.revise).click();
  await page.locator("[name=consent]").check();
  await button(page, shareWords.sendRevision).click();
  await page.getByText(words.share.revised(shareWords.accepted)).waitFor();
  await expect.poll(() => tunes()).toBe(before + 1);
  const csv = await (await fetch(`${atlas.url}/api/tunes.csv`)).text();
  expect(csv).toContain("3.8");

  await button(page, shareWords.withdraw).click();
  await button(page, shareWords.withdrawSure).click();
  await page.getByText(shareWords.withdrawn).waitFor();
  await button(page, /^Share this tune:/).waitFor();
  await expect.poll(() => tunes()).toBe(before);
  await close(CUT_OFF);
});

test("many entries with rising CO: the drift is said, a cleaning ends it; forbidden storage is said", async () => {
  const { page, close } = await openLogbook();
  await addHeater(page, "Van");
  const [, heaterLine] =
    /(\{.*"name":"Van".*\})/.exec(await exported(page, words.files.json)) ?? [];
  const heater = JSON.parse(heaterLine ?? "{}");
  const end = (pump_Hz: number, fan_rpm: number, co_ppm: number) => ({ pump_Hz, fan_rpm, co_ppm });
  const rising = Array.from({ length: 16 }, (_, i) => ({
    id: `rising-${10 + i}`,
    heater_id: heater.id,
    kind: "tune",
    at: `2026-10-${10 + i}T20:00:00Z`,
    site: { elevation_m: 1600 },
    air: { temperature_C: (i * 5) % 9 },
    low: end(0.9, 1700, Math.round(12 * Math.exp(0.065 * i + (i % 3) * 0.1))),
    high: end(3.7, 4500, 9 + (i % 3)),
    meter: { kind: "portable meter", distance_m: 0.3 },
    hours: 100 + 10 * i,
    changed_at: "2026-11-01T00:00:00Z",
  }));
  const file = { format: "hypsotune logbook", version: 1, heaters: [heater], entries: rising };
  await bring(page, "rising.json", JSON.stringify(file));
  await page.getByText(words.files.brought(16, 0, 1)).waitFor();
  await page.locator(".drift[data-shown=true]").waitFor();
  await page
    .getByText(/rose from 1\d to 3\d\sppm over 150 hours: soot or a clogged intake/)
    .waitFor();
  await button(page, words.entry.add.cleaning).click();
  await button(page, words.entry.save).click();
  await page.locator(".drift[data-shown=false]").waitFor();
  await close();

  const barred = await openPage(browser, `${atlas.url}/#/start`, { alone: true });
  await barred.page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("not here", "SecurityError");
    };
  });
  await barred.page.goto(`${atlas.url}/?barred#/logbook`);
  await barred.page.getByText(words.store.forbidden).waitFor();
  await barred.close();
});
