import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { offline } from "../../client/texts/offline.ts";
import { onsite } from "../../client/texts/onsite.ts";
import { shareWords } from "../../client/texts/share.ts";
import type { Tune } from "../../model/tune.ts";
import type { Health } from "../../server/contract.ts";
import {
  asked,
  begin,
  HEATER_ENDS,
  installClock,
  KEYBOARD,
  POINTER,
  press,
  sweepEnd,
  typeReading,
} from "./at-the-heater.ts";
import { inventedTunes } from "./crowd.ts";
import { axeFinds, sideways } from "./faults.ts";
import { type Line, openLine } from "./line.ts";
import { CUT_OFF, field, openPage } from "./open-page.ts";
import { basisOf } from "./own-heater.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;
let line: Line;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
  await atlas.load(inventedTunes());
  line = await openLine(atlas.url);
});

afterAll(async () => {
  await line?.close();
  await atlas?.close();
});

const tunes = async () => (await atlas.get<Health>("/health")).tunes;
/** With a clock of its own. */
const PHONE = { viewport: { width: 360, height: 740 }, alone: true };
async function openOnSite() {
  const opened = await openPage(browser, `${atlas.url}/#/onsite`, PHONE);
  await installClock(opened.page);
  return opened;
}

/** What axe finds in light and dark, and whether anything runs out of the screen. */
async function faults(
  page: Page,
  state: string,
  themes: readonly ("light" | "dark")[] = ["light", "dark"],
): Promise<string[]> {
  const found = (await axeFinds(page, { within: ".onsite", themes })).map(
    (one) => `${state}, ${one}`,
  );
  const overflow = await sideways(page);
  if (overflow > 0) found.push(`${state}: ${overflow} px too wide`);
  const small = await page
    .locator(
      ".onsite button, .onsite select, .onsite input:not([type=checkbox]), .onsite label.check",
    )
    .evaluateAll((all) =>
      all
        .filter((one) => {
          const least = one.closest(".full") ? 64 : 44;
          return one.getBoundingClientRect().height < least - 0.5;
        })
        .map((one) => one.outerHTML),
    );
  return [...found, ...small.map((html) => `${state}: too small: ${html.slice(0, 100)}`)];
}

test("both ends without a network, one by keyboard alone, a reload on the way: minima found, logged, shared once when the network is back; the next answer is narrower", async () => {
  const { page, close } = await openPage(browser, `${line.url}/#/onsite`, {
    ...PHONE,
    serviceWorkers: "allow",
  });
  const before = await tunes();
  // From here on the page is kept in the browser.
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  line.cut();
  await page.reload();
  await installClock(page);
  await KEYBOARD.begin(page);
  await sweepEnd(page, "low", KEYBOARD);
  const low = Number(await page.locator(".rate output").getAttribute("data-value"));
  expect(Math.abs(low - HEATER_ENDS.low.minimum_Hz)).toBeLessThanOrEqual(0.15);
  const found = await faults(page, "found");
  await KEYBOARD.confirm(page, onsite.found.nextHigh);
  await sweepEnd(page, "high", POINTER, async (step) => {
    if (step !== 2) return;
    // In the middle of a wait, with the screen off for a while.
    const { rate, left_s } = await asked(page);
    await page.clock.fastForward(10_000);
    await page.reload();
    await page.locator("[data-step=read]").waitFor();
    const after = await asked(page);
    expect(after.rate).toBe(rate);
    expect(after.left_s).toBeLessThanOrEqual(left_s - 10);
  });
  const high = Number(await page.locator(".rate output").getAttribute("data-value"));
  expect(Math.abs(high - HEATER_ENDS.high.minimum_Hz)).toBeLessThanOrEqual(0.25);
  await press(page, onsite.found.nextCheck);

  // The middle: half way in pump and fan; then full power.
  await page.getByText(onsite.check.setTo.middle).waitFor();
  for (const [ppm, onward] of [
    ["12", onsite.check.next],
    ["11", onsite.check.finish],
  ] as const) {
    await press(page, onsite.step.isSet);
    await page.clock.fastForward(200_000);
    await typeReading(page, ppm);
    await page.locator("[data-step=good]").waitFor();
    if (ppm === "12") found.push(...(await faults(page, "check")));
    await press(page, onward);
  }
  await page.getByText(onsite.done.logged).waitFor();
  await page.getByText(onsite.check.title.middle).first().waitFor();

  await press(page, shareWords.send);
  await page.getByText(shareWords.needConsent).waitFor();
  found.push(...(await faults(page, "done")));
  expect(found).toEqual([]);
  await field(page, "consent").check();
  await press(page, shareWords.send);
  await page.getByText(offline.waits).first().waitFor();
  await expect.poll(() => tunes()).toBe(before);
  const logged = () =>
    page.evaluate(
      () =>
        new Promise<{ id: string; low: { pump_Hz: number }; found?: string; shared?: object }[]>(
          (done) => {
            const asking = indexedDB.open("hypsotune-logbook");
            asking.onsuccess = () => {
              const all = asking.result.transaction("entries").objectStore("entries").getAll();
              all.onsuccess = () => done(all.result);
            };
          },
        ),
    );
  const [entry, ...more] = await logged();
  expect(more).toEqual([]);
  expect(entry?.low).toMatchObject({ pump_Hz: low });
  expect(entry?.shared).toEqual({ key: entry?.id });

  const arriving = page.waitForRequest((request) => request.method() === "POST");
  line.mend();
  await page.reload();
  const {
    low: sentLow,
    high: sentHigh,
    meter,
    found: by,
  } = (await arriving).postDataJSON() as Tune;
  expect([sentLow.pump_Hz, sentHigh.pump_Hz]).toEqual([low, high]);
  expect(meter).toEqual({ kind: "portable meter", distance_m: 0.3 });
  expect([by, entry?.found]).toEqual(["bracketed", "bracketed"]);
  await page.locator(".onsite [data-verdict=accepted]").waitFor();
  await expect.poll(tunes).toBe(before + 1);
  await expect
    .poll(async () => (await logged())[0]?.shared)
    .toMatchObject({ receipt: expect.any(String) });
  await page.reload();
  await page.locator(".onsite [data-verdict=accepted]").waitFor();
  expect(line.keys).toEqual([entry?.id]);
  await expect.poll(() => tunes()).toBe(before + 1);

  // It stands in the logbook, shared; and the next answer is this heater's own, narrower than any other's.
  const nav = page.locator("nav.places");
  await nav.getByRole("link", { name: t.places.logbook }).click();
  await page.locator(`[data-entry="${entry?.id}"] .shared`).waitFor();
  await nav.getByRole("link", { name: t.places.start }).click();
  const [own, others] = await basisOf(page);
  expect(own).toBeGreaterThan(0);
  expect(own).toBeLessThan(others);
  await close(CUT_OFF);
});

test("the flame goes out: richer, two attempts at most, then the manual and what to put back; undo takes it back", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  // The sweep is worth as much as the fan speeds it was made at.
  await page.locator(".setting").getByText(t.answer.fanAt("1,650")).waitFor();
  await press(page, onsite.step.isSet);
  const { rate } = await asked(page);
  await press(page, onsite.step.out);
  await page.getByText(onsite.relight.rule(2)).waitFor();
  await press(page, onsite.step.undo);
  await page.locator("[data-step=read]").waitFor();
  await press(page, onsite.step.out);
  await press(page, onsite.relight.attempt);
  await press(page, onsite.relight.burns);
  const richer = await asked(page);
  expect(richer.rate).toBeGreaterThan(rate);
  expect(richer.left_s).toBeGreaterThan(120);
  await page.getByRole("cell", { name: onsite.chart.flameOut }).waitFor();
  await press(page, onsite.step.out);
  await page.getByText(onsite.relight.rule(1)).waitFor();
  await press(page, onsite.relight.attempt);
  await press(page, onsite.relight.noLight);
  await page.getByRole("heading", { name: onsite.stopped.flame.title }).waitFor();
  const putBack = await page.locator(".put-back td").allTextContents();
  expect(putBack).toEqual(["1.3", "4.6"]);
  await expect
    .poll(() => page.getByRole("button", { name: onsite.stopped.resume }).count())
    .toBe(0);
  expect(await faults(page, "flame", ["light"])).toEqual([]);
  await close();
});

test("leaving the sweep shows what to put back", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  await press(page, onsite.step.leave);
  await press(page, onsite.step.leaveSure);
  await page.getByRole("heading", { name: onsite.stopped.putBack }).waitFor();
  expect(await faults(page, "left off", ["light"])).toEqual([]);
  await close();
});

test("every state is accessible in both themes on a phone, with large targets", async () => {
  const { page, close } = await openOnSite();
  await press(page, onsite.prepare.begin);
  await page.getByText(onsite.prepare.fix).waitFor();
  const found = await faults(page, "prepare");
  await field(page, "low_before_Hz").fill("1.3");
  await field(page, "high_before_Hz").fill("4.6");
  await press(page, onsite.prepare.begin);
  await press(page, onsite.checklist.light);
  found.push(...(await faults(page, "checklist")));
  for (const box of await page.locator('[name^="check."]').all()) await box.check();
  await press(page, onsite.checklist.light);
  found.push(...(await faults(page, "warm-up")));
  await press(page, onsite.warmUp.already);
  await press(page, onsite.step.isSet);
  await page.clock.fastForward(121_000);
  await press(page, onsite.step.take);
  await page.getByText(onsite.step.noReading).waitFor();
  await field(page, "still").check();
  await typeReading(page, "30");
  found.push(...(await faults(page, "set")));
  await press(page, onsite.step.isSet);
  found.push(...(await faults(page, "read")));
  await press(page, onsite.step.out);
  found.push(...(await faults(page, "relight")));
  expect(found).toEqual([]);
  await close();
});

/** Somebody who has watched the figure, at a rate of which the test knows the CO. */
async function watched(page: Page, onReading: (rate: number) => Promise<void>): Promise<void> {
  if ((await page.locator("[data-step=set]").count()) > 0) await press(page, onsite.step.isSet);
  const { rate } = await asked(page);
  await page.clock.fastForward(400_000);
  await field(page, "still").check();
  await onReading(rate);
}

test("a room alarm that shows nothing below 30: a range and its middle, no minimum, in few steps that it counts", async () => {
  const { page, close } = await openOnSite();
  await page.locator("#onsite-meter").selectOption("room alarm");
  await begin(page);
  const ended = page.locator("[data-step='below floor']");
  for (let k = 1; k <= 8 && (await ended.count()) === 0; k++) {
    await expect
      .poll(() => page.locator("[data-progress]").getAttribute("data-progress"))
      .toBe(`${k}`);
    await watched(page, async (rate) => {
      if (rate > 1.15) await typeReading(page, "80");
      else if (rate < 0.95) await typeReading(page, "60");
      else {
        await press(page, onsite.step.below("30"));
        await press(page, onsite.step.take);
      }
    });
  }
  await ended.waitFor();
  const { means, middle } = onsite.ended["below floor"];
  await page.getByText(`${means("30", "1.0", "1.1")} ${middle}`).waitFor();
  expect(await faults(page, "below floor", ["light"])).toEqual([]);
  await press(page, onsite.ended.goOn);
  await page.locator("[data-step=set]").waitFor();
  await close();
});

test("CO that falls until the flame goes out is no minimum, high CO is not called good, and beside the flame-out it says so", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  // It begins where the pump is set.
  const rate = page.locator("[data-step] output[data-value]").first();
  await expect.poll(() => rate.getAttribute("data-value")).toBe("1.3");
  const CO: Record<number, string> = { 1.3: "140", 1.2: "80", 1.1: "46" };
  const ended = page.locator("[data-step='not bracketed']");
  for (let k = 0; k < 10 && (await ended.count()) === 0; k++) {
    if ((await page.locator("[data-step=set]").count()) > 0) await press(page, onsite.step.isSet);
    if (Number(await rate.getAttribute("data-value")) < 1.05) {
      await press(page, onsite.step.out);
      await press(page, onsite.relight.attempt);
      await press(page, onsite.relight.burns);
      continue;
    }
    await watched(page, (at) => typeReading(page, CO[at] ?? "200"));
  }
  await ended.waitFor();
  for (const sentence of [
    onsite.ended["not bracketed"].means,
    onsite.found.besideFlameOut("1.0"),
    shareWords.highCo(t.low, "46", "30"),
    shareWords.highCoCauses,
  ]) {
    await page.getByText(sentence).waitFor();
  }
  await page.getByText(onsite.ended["not bracketed"].lean["flame-out"]()).waitFor();
  // Richer CO rose, leaner the flame goes out: nobody is sent to look farther out.
  await expect.poll(() => page.getByText(onsite.ended["not bracketed"].farther).count()).toBe(0);
  await expect.poll(() => page.getByText(onsite.found.practice).count()).toBe(0);
  await expect.poll(() => rate.getAttribute("data-value")).toBe("1.1");
  expect(await faults(page, "not bracketed")).toEqual([]);
  await press(page, onsite.ended.goOn);
  // The heater runs at lowest power still.
  await page.getByText(onsite.step.why.turnUp).waitFor();
  await expect.poll(() => rate.getAttribute("data-value")).toBe("4.6");
  await close();
});
