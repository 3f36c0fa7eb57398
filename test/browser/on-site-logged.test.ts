import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import type { LogbookEntry, LogbookHeater } from "../../client/app/records/entry.ts";
import type { Session } from "../../client/on-site/session.ts";
import { t } from "../../client/texts/app.ts";
import { heaterWords } from "../../client/texts/heater.ts";
import { logbookWords } from "../../client/texts/logbook.ts";
import { onsite } from "../../client/texts/onsite.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { overIn, press, unfold } from "./at-the-heater.ts";
import { axeFinds, sideways } from "./faults.ts";
import { field, openPage } from "./open-page.ts";
import { addHeater, basisOf, fillHeater, line } from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const PHONE = { viewport: { width: 360, height: 740 } };
const { done } = onsite;

const all = <T>(page: Page, store: "heaters" | "entries") =>
  page.evaluate(
    (name) =>
      new Promise<T[]>((got) => {
        const asking = indexedDB.open("hypsotune-logbook");
        asking.onsuccess = () => {
          const found = asking.result.transaction(name).objectStore(name).getAll();
          found.onsuccess = () => got(found.result);
        };
      }),
    store,
  );

/** On site at the end of a sweep that was begun for no heater. */
async function openOver(page: Page, view: string, over?: Session): Promise<void> {
  const session = JSON.stringify(over ?? overIn(await atlas.get<PublishedFit>("/fit")));
  await page.evaluate((text) => localStorage.setItem("hypsotune.onsite", text), session);
  await page.goto(`${atlas.url}/#/${view}`);
  await page.reload();
  await page.locator("[data-step=done]").waitFor();
}

async function expectNarrower(page: Page): Promise<void> {
  const [own, others] = await basisOf(page);
  expect(own).toBeGreaterThan(0);
  expect(own).toBeLessThan(others);
}

test("a sweep for the average heater asks whose it was, logs it there, and that heater's answer is narrower", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  await addHeater(page, "Van");
  await line(page).click();
  await press(page, logbookWords.heater.add);
  await fillHeater(page, "Boat", {});
  await field(page, "my-heater").selectOption({ label: heaterWords.line.average });
  await openOver(page, "onsite");
  await page.getByText(done.whoseWhy).waitFor();
  expect(await all(page, "entries")).toEqual([]);
  expect(await axeFinds(page, { within: ".onsite" })).toEqual([]);
  await expect.poll(() => sideways(page)).toBe(0);
  await press(page, "Van");
  await page.getByText(done.logged).waitFor();
  const heaters = await all<LogbookHeater>(page, "heaters");
  const van = heaters.find(({ name }) => name === "Van");
  expect(heaters).toHaveLength(2);
  expect((await all<LogbookEntry>(page, "entries")).map((one) => one.heater_id)).toEqual([van?.id]);
  await expect.poll(() => line(page).textContent()).toContain("Van");
  await page.goto(`${atlas.url}/#/`);
  await expectNarrower(page);
  await close();
});

test("a sweep under a link becomes no other heater's: one that is not listed is added and chosen, and the link's answer ends", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  await addHeater(page, "Van");
  await openOver(page, "onsite?elevation_m=2240&heat_kW=5&low_fan_rpm=1700&high_fan_rpm=4400");
  await page.locator(".linked").waitFor();
  await press(page, done.whoseNew);
  await page.getByText(done.logged).waitFor();
  await page.locator(".linked").waitFor({ state: "detached" });
  expect(new URL(page.url()).hash).toBe("#/onsite");
  const [entry, ...more] = await all<LogbookEntry>(page, "entries");
  expect(more).toEqual([]);
  const heaters = await all<LogbookHeater>(page, "heaters");
  const its = heaters.find(({ id }) => id === entry?.heater_id);
  expect(its?.name).toBe(done.heaterName);
  await expect.poll(() => line(page).textContent()).toContain(done.heaterName);
  await expect
    .poll(() => line(page).textContent())
    .toContain(heaterWords.meterKinds["portable meter"]);
  // Seen again it asks nothing and logs nothing twice.
  await page.reload();
  await page.getByText(done.logged).waitFor();
  expect(await all(page, "entries")).toHaveLength(1);
  await page.locator("nav.places").getByRole("link", { name: t.places.start }).click();
  await expectNarrower(page);
  await close();
});

test("the meter of the last reading stays with the heater: the logbook, Share and the next sweep begin with it", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  const over = overIn(await atlas.get<PublishedFit>("/fit"));
  const meter = { ...over.plan.meter, kind: "room alarm", distance_m: 0.45, floor_ppm: 25 };
  await openOver(page, "onsite", { ...over, plan: { ...over.plan, meter } } as Session);
  await page.getByText(done.logged).waitFor();
  await press(page, done.anew);
  await press(page, done.anew);
  const kind = page.locator("#onsite-meter");
  await kind.waitFor();
  await expect.poll(() => kind.inputValue()).toBe("room alarm");
  await unfold(page);
  await expect.poll(() => field(page, "meter.distance_m").inputValue()).toBe("0.45");
  await expect.poll(() => field(page, "meter.floor_ppm").inputValue()).toBe("25");
  // So do the rates that were found.
  await expect.poll(() => field(page, "low_before_Hz").inputValue()).toBe("1.1");

  await page.goto(`${atlas.url}/#/logbook`);
  await press(page, logbookWords.entry.add.tune);
  await field(page, "meter.kind").waitFor();
  await expect.poll(() => field(page, "meter.kind").inputValue()).toBe("room alarm");
  await expect.poll(() => field(page, "meter.distance_m").inputValue()).toBe("0.45");
  // Another one, in a newer tune: it is the last from then on.
  await field(page, "meter.kind").selectOption("flue analyser");
  await field(page, "meter.distance_m").fill("0.3");
  for (const [name, value] of Object.entries({
    "site.elevation_m": "2240",
    "low.pump_Hz": "1.1",
    "low.ppm": "14",
    "high.pump_Hz": "4",
    "high.ppm": "10",
  }))
    await field(page, name).fill(value);
  await press(page, logbookWords.entry.save);
  await page.getByText(logbookWords.entry.kept).waitFor();
  await page.goto(`${atlas.url}/#/share`);
  await expect.poll(() => field(page, "meter.kind").inputValue()).toBe("flue analyser");
  await expect.poll(() => field(page, "meter.distance_m").inputValue()).toBe("0.3");
  await page.goto(`${atlas.url}/#/onsite`);
  await expect.poll(() => kind.inputValue()).toBe("flue analyser");
  await close();
});
