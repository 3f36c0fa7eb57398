import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { ANSWERS_CACHE } from "../../client/base/answers/cache-names.ts";
import { t } from "../../client/texts/app.ts";
import { mapWords } from "../../client/texts/map.ts";
import { offline } from "../../client/texts/offline.ts";
import { scalingWords } from "../../client/texts/scaling.ts";
import { shareWords } from "../../client/texts/share.ts";
import type { Tune } from "../../model/tune.ts";
import type { Health, ScalingAnswer } from "../../server/contract.ts";
import { WAIT_ms } from "../limits.ts";
import { launchKeeping } from "./chromium.ts";
import { inventedTunes } from "./crowd.ts";
import { axeFinds } from "./faults.ts";
import { type Line, openLine } from "./line.ts";
import { askedRates, choosePlace, field, mapDrawn, openSite, shownRates } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { mapBrowser, plainBrowser } from "./shared.ts";
import { goTo, PHONE } from "./views.ts";

// A telephone: the map lies below the screen, and is drawn only for the test that goes there.
const VIEWPORT = { viewport: PHONE, deviceScaleFactor: 0.5, locale: "en-US" };

let atlas: RunningAtlas;
let line: Line;
/** Where page, map and places are kept once for all tests, since it takes long. */
let visitor: BrowserContext;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  // Elevations of another server's, which the line cut is cut off from as well.
  const tiles = "http://127.0.0.1:9/ground/{z}/{x}/{y}.png";
  atlas = await runAtlas([], { ELEVATION_TILES: tiles });
  await atlas.load([...inventedTunes(), ofClass(8)]);
  line = await openLine(atlas.url);
  visitor = await (await mapBrowser()).newContext(VIEWPORT);
});

afterAll(async () => {
  await visitor?.close();
  await line?.close();
  await atlas?.close();
});

/** A visitor who was here once, and has done nothing since. */
beforeEach(async () => {
  line.renew();
  context = visitor;
  page = await context.newPage();
  const session = await context.newCDPSession(page);
  const storageTypes = "local_storage,indexeddb";
  await session.send("Storage.clearDataForOrigin", { origin: line.url, storageTypes });
  await session.detach();
  page.setDefaultTimeout(WAIT_ms);
  await page.goto(line.url);
  await visited();
});

afterEach(async () => {
  if (context !== visitor) await context.close();
  for (const left of visitor.pages()) await left.close();
});

/** A browser that was never here, in place of the one that was. */
async function neverHere(options: BrowserContextOptions = {}): Promise<void> {
  context = await (await plainBrowser()).newContext({ ...VIEWPORT, ...options });
}

async function open(address = ""): Promise<Page> {
  const opened = await context.newPage();
  opened.setDefaultTimeout(WAIT_ms);
  await opened.goto(`${line.url}/${address}`);
  return opened;
}

const panel = (is: string) => page.locator(`.offline[data-offline=${is}]`);
/** One visit: the page is kept, and with it map, places and answers. */
const visited = () => panel("kept").waitFor();
const button = (name: string) => page.getByRole("button", { name });
const notice = (text: string | RegExp) => page.locator(".notices").getByText(text);
const tunes = async () => (await atlas.get<Health>("/health")).tunes;

function ofClass(heat_kW: number): Tune {
  const [tune] = inventedTunes(1) as [Tune];
  return { ...tune, heater: { heat_kW }, contributor: "invented-crew-elsewhere" };
}

async function fillTune(low_pump_Hz: number): Promise<void> {
  const settings: Record<string, string> = {
    "site.elevation_m": "1600",
    "air.temperature_C": "-9",
    "low.pump_Hz": String(low_pump_Hz),
    "low.fan_rpm": "1700",
    "low.co_ppm": "14",
    "high.pump_Hz": "3.7",
    "high.fan_rpm": "4500",
    "high.co_ppm": "9",
  };
  for (const [name, value] of Object.entries(settings)) await field(page, name).fill(value);
  await field(page, "consent").check();
}

test("the page is installable: manifest, icons that are there, a service worker", async () => {
  const manifest = await (await fetch(`${line.url}/manifest.webmanifest`)).json();
  expect(manifest).toMatchObject({ start_url: "/", display: "standalone" });
  for (const { src, type } of manifest.icons) {
    const icon = await fetch(line.url + src);
    expect([icon.status, icon.headers.get("content-type")?.split(";")[0]]).toEqual([200, type]);
  }
  // A private window installs nothing.
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-chromium-"));
  context = await launchKeeping(folder);
  // Map and places, which come after, are no part of it.
  line.replace("/geography/format", null);
  page = await open();
  await page.evaluate(() => navigator.serviceWorker.ready);
  const session = await context.newCDPSession(page);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual([]);
  await context.close();
  rmSync(folder, { recursive: true });
});

test("after one visit with the line cut: start tunes, place search, the map, charts, with the fit's version and age", async () => {
  const [{ fit }, rates] = [
    await atlas.get<Health>("/health"),
    await askedRates(atlas.get, { heat_kW: 5, elevation_m: 4321, temperature_C: -17 }),
  ];
  const { points_total } = await atlas.get<ScalingAnswer>("/scaling?heat_kW=5&end=low");
  line.cut();
  await page.reload();
  await notice(new RegExp(`Fit ${fit}, `)).waitFor();
  await page.getByText(t.unreachable).waitFor();

  await openSite(page);
  await field(page, "site.elevation_m").fill("4321");
  await field(page, "air.temperature_C").fill("-17");
  await expect.poll(() => shownRates(page)).toEqual(rates);

  // By another name, and one that is small: that is not kept.
  await choosePlace(page, "cologne", /Köln/);
  await openSite(page);
  await page.getByLabel(t.site.place, { exact: true }).first().fill("Leadville");
  await page.getByText(offline.notKept("Leadville")).waitFor();

  await goTo(page, "map");
  await mapDrawn(page);
  await expect.poll(() => page.locator(".map").getAttribute("data-state")).toBe("ready");
  await page.getByText(mapWords.builtInGround).waitFor();
  await page.locator(".map canvas").click({ position: { x: 200, y: 200 } });
  await page.locator(".map-foot").getByText(/ ± \d/).waitFor();

  for (const view of ["trip", "scaling", "data", "share"] as const) {
    await page.goto(`${line.url}/#/${view}`);
    await page.getByRole("heading", { level: 2 }).first().waitFor();
    await expect.poll(() => page.getByText(t.partMissing).count()).toBe(0);
  }
  await page.goto(`${line.url}/#/scaling`);
  await page.locator(".chart svg").first().waitFor();
  await page.getByText(scalingWords.points(String(points_total), String(points_total))).waitFor();
  // A class that was never opened: its few tunes came along. What was never seen at all is said.
  await page.evaluate(
    async (cache) => (await caches.open(cache)).delete("/api/scaling?heat_kW=8&end=high"),
    ANSWERS_CACHE,
  );
  await page.locator("#scaling-heat").selectOption("8");
  const [seen = ""] = scalingWords.seen("").split(",");
  await page.getByText(`${scalingWords.points("1", "1")} ${seen}`).waitFor();
  await page.getByLabel(scalingWords.end, { exact: true }).selectOption("high");
  await page.getByText(scalingWords.unseen).waitFor();
  await page.locator(".chart svg").first().waitFor();
  // No tunes at all: the curve, from the fit alone.
  await page.locator("#scaling-heat").selectOption("2");
  await page.getByText(scalingWords.prior).waitFor();
  await expect.poll(() => page.getByText(t.loading).count()).toBe(0);
});

test("a country is saved with its small places, and removed again", async () => {
  await page.locator(".offline summary").click();
  await page.getByLabel(offline.region).selectOption({ label: "Iceland" });
  await button(offline.save).click();
  await page.getByText(offline.saved, { exact: true }).waitFor();
  expect(await axeFinds(page, { within: ".offline", themes: ["light"] })).toEqual([]);
  line.cut();
  await page.reload();
  await choosePlace(page, "grindavik", /^Grindavík/);
  await page.locator(".offline summary").click();
  await button(offline.remove("Iceland")).click();
  await button(offline.remove("Iceland")).waitFor({ state: "detached" });
  await page.reload();
  await openSite(page);
  await page.getByLabel(t.site.place, { exact: true }).first().fill("Grindavík");
  await page.getByText(offline.notKept("Grindavík")).waitFor();
});

test("a tune shared without a network waits, arrives once, and its receipt is kept", async () => {
  const before = await tunes();
  line.cut();
  await page.goto(`${line.url}/#/share`);
  await fillTune(1.11);
  await button(shareWords.send).click();
  await page.getByText(offline.waits).waitFor();
  await page.getByRole("heading", { name: offline.waitingTitle }).waitFor();
  await notice(offline.waitingCount(1)).waitFor();
  await expect.poll(() => tunes()).toBe(before);

  line.mend();
  await page.reload();
  await notice(offline.arrived(1)).waitFor();
  await page
    .locator(".receipts li")
    .getByText(/1\.11\sHz and 3\.7\sHz/)
    .waitFor();
  await page.getByRole("heading", { name: offline.waitingTitle }).waitFor({ state: "detached" });
  await expect.poll(() => tunes()).toBe(before + 1);
  await page.reload();
  await page.locator(".receipts li").waitFor();
  expect(line.keys).toHaveLength(1);
});

test("killed between sending and the answer, the tune arrives exactly once all the same", async () => {
  const before = await tunes();
  await page.goto(`${line.url}/#/share`);
  await fillTune(1.12);
  line.swallowAnswers();
  await button(shareWords.send).click();
  await expect.poll(tunes).toBe(before + 1);
  await page.close();

  line.mend();
  page = await open("#/share");
  await notice(offline.arrived(1)).waitFor();
  await page.locator(".receipts li").waitFor();
  expect(line.keys).toHaveLength(2);
  // The form is as it was; sent again from there it is still the same tune.
  await field(page, "consent").check();
  await button(shareWords.send).click();
  await page.locator(".outcome[data-verdict=accepted]").waitFor();
  expect(new Set(line.keys).size).toBe(1);
  await expect.poll(() => page.locator(".receipts li").count()).toBe(1);
  await expect.poll(() => tunes()).toBe(before + 1);
});

test("what the atlas refuses of a tune that waited is said, and can be mended in the form", async () => {
  line.cut();
  await page.goto(`${line.url}/#/share`);
  await fillTune(1.13);
  await button(shareWords.send).click();
  await page.getByText(offline.waits).waitFor();
  line.mend();
  line.replace("/api/tunes", null);
  await button(offline.sendNow).click();
  await page.locator(".receipts .error").waitFor();
  await button(offline.mend).click();
  await page.getByRole("heading", { name: offline.waitingTitle }).waitFor({ state: "detached" });
  await expect.poll(() => field(page, "low.pump_Hz").inputValue()).toBe("1.13");
});

test("a part that is gone from the server, and kept nowhere, is said with a way on", async () => {
  const built = JSON.parse(readFileSync("dist/.vite/manifest.json", "utf8"));
  const part = `/${built["atlas/scaling/scaling.tsx"].file}`;
  await neverHere({ serviceWorkers: "block" });
  line.replace(part, null);
  page = await open();
  await panel("unable").waitFor();
  await page.goto(`${line.url}/#/scaling`);
  await notice(offline.oldPage).waitFor();
  line.replace(part, undefined);
  await page.locator(".notices").getByRole("button", { name: offline.reload }).click();
  await page.locator(".chart svg").first().waitFor();
});

test("what the page remembered is wiped and the line cut: the fit still comes from the service worker", async () => {
  const { fit } = await atlas.get<Health>("/health");
  await page.evaluate(() => localStorage.clear());
  line.cut();
  await page.reload();
  await notice(new RegExp(`Fit ${fit}, `)).waitFor();
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 1000 }));
  await page.locator(".offline summary").click();
  await page.getByText(offline.kept).waitFor();
});

test("everything wiped: the page begins as on a first visit; one whose connection breaks off says so, takes it up again on a press, and keeps all of it", async () => {
  const session = await context.newCDPSession(page);
  await session.send("Storage.clearDataForOrigin", { origin: line.url, storageTypes: "all" });
  line.replace("/icon-512.png", null);
  await page.reload();
  await panel("interrupted").waitFor();
  line.replace("/icon-512.png", undefined);
  await page.locator(".offline summary").click();
  await button(offline.retry).click();
  await visited();
  line.cut();
  await page.reload();
  await page.locator(".end output").first().waitFor();
});

test("storage cleared by the browser: what was kept is fetched again, with a word", async () => {
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      if (name.includes("geography")) await caches.delete(name);
    }
  });
  await page.reload();
  await page.getByText(offline.cleared).waitFor();
  await visited();
});

test("no room left: the page says so and its start tunes work on", async () => {
  await page.evaluate(async () => {
    for (const name of await caches.keys()) {
      if (name.includes("geography")) await caches.delete(name);
    }
  });
  const session = await context.newCDPSession(page);
  await session.send("Storage.overrideQuotaForOrigin", { origin: line.url, quotaSize: 1000 });
  await page.reload();
  await notice(offline.full).waitFor();
  await openSite(page);
  await field(page, "site.elevation_m").fill("2000");
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 2000 }));
  await session.send("Storage.overrideQuotaForOrigin", { origin: line.url });
  await page.locator(".notices").getByRole("button", { name: offline.retry }).click();
  await visited();
});

// The last one: whoever was here once has a newer release from here on.
test("a new release waits for a press, and the old tab works until then", async () => {
  line.replace("/service-worker.js", (text) => `${text}\n// a newer release`);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await notice(offline.newRelease).waitFor();
  await page.evaluate(() => {
    (globalThis as { before?: boolean }).before = true;
  });
  await page.goto(`${line.url}/#/scaling`);
  await page.locator(".chart svg").first().waitFor();
  const other = await open("#/share");
  await other.locator(".notices").getByText(offline.newRelease).waitFor();
  await page.bringToFront();
  await Promise.all([page.waitForEvent("load"), button(offline.reload).click()]);
  await page.locator(".chart svg").first().waitFor();
  await expect
    .poll(() => page.evaluate(() => (globalThis as { before?: boolean }).before))
    .toBe(undefined);
  // Another tab is told, and keeps what was typed until it is reloaded.
  await other.locator(".notices").getByText(offline.newReleaseElsewhere).waitFor();
  await notice(offline.newRelease).waitFor({ state: "detached" });
});
