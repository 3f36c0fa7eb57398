import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { EMERGENCY_NUMBERS } from "../../client/on-site/alarm-screen.tsx";
import { t as german } from "../../client/texts/de/app.ts";
import { t as english } from "../../client/texts/en/app.ts";
import { t as spanish } from "../../client/texts/es/app.ts";
import { onsite } from "../../client/texts/onsite.ts";
import { begin, installClock, press, unfold } from "./at-the-heater.ts";
import { axeFinds, sideways } from "./faults.ts";
import { CUT_OFF, field, openPage } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { goTo, VIEWS } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const PHONE = { viewport: { width: 360, height: 740 } };
const SMALL_PHONE = { width: 320, height: 568 };
const WORDS = { en: english, de: german, es: spanish };
const screen = (page: Page) => page.locator(".alarm-screen");
const alarmLink = (page: Page) => page.getByRole("link", { name: english.alarm.open, exact: true });

/** Presses the first way to the alarm that there is, which must be seen without scrolling and be large enough. */
async function raiseAlarm(page: Page): Promise<void> {
  const link = alarmLink(page).first();
  const box = await link.boundingBox();
  expect(box, "in sight").not.toBeNull();
  if (!box) return;
  expect(box.height).toBeGreaterThanOrEqual(44);
  expect(box.y).toBeGreaterThanOrEqual(0);
  expect(box.y + box.height).toBeLessThanOrEqual(PHONE.viewport.height);
  await link.click();
  await screen(page).waitFor();
}

test("every view has a way to the alarm, at its head and beside the cautions, and so has a page that cannot reach the atlas", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/`, PHONE);
  await page.locator(".end output").first().waitFor();
  const linked = new Set<string>();
  for (const view of Object.keys(VIEWS).filter((name) => name !== "alarm")) {
    await goTo(page, view);
    const links = await page
      .locator('a[href^="#/"]')
      .evaluateAll((all) => all.map((link) => (link.getAttribute("href") as string).slice(2)));
    for (const link of links) linked.add(link || "start");
    await expect
      .poll(() => page.locator(".cautions .alarm-link").count(), { message: view })
      .toBe(1);
    await expect.poll(() => sideways(page), { message: view }).toBe(0);
    await raiseAlarm(page);
  }
  // A tune's address is its view's, and its own: tunes like the answer come a moment after it.
  const views = [...linked].map((view) => view.replace(/^(map|scaling)\/.*/, "$1"));
  expect(
    views.filter((view) => !(view in VIEWS)),
    "on no list of the tests",
  ).toEqual([]);
  await close();

  const cut = await openPage(browser, "about:blank", PHONE);
  await cut.page.route("**/api/**", (route) => route.abort());
  await cut.page.goto(`${atlas.url}/#/onsite`);
  await cut.page.getByText(english.noFit).waitFor();
  await raiseAlarm(cut.page);
  await cut.close(CUT_OFF);
});

test.each(Object.entries(WORDS))(
  "the alarm's screen says out, everyone, now, then whom to call from outside, and nothing else: %s",
  async (locale, { alarm }) => {
    const { page, close } = await openPage(browser, `${atlas.url}/#/alarm`, {
      ...PHONE,
      locale,
    });
    await page.locator("h1:focus", { hasText: alarm.title }).waitFor();
    const closed = (text: string | null) => text?.replace(/\s+/g, "");
    expect(closed(await page.locator("#app").textContent())).toBe(
      closed([alarm.title, alarm.call, ...EMERGENCY_NUMBERS, alarm.local, alarm.outside].join("")),
    );
    await expect.poll(() => page.locator("button, table, input, select, nav").count()).toBe(0);
    await expect
      .poll(() => page.locator("a").evaluateAll((all) => all.map((a) => a.getAttribute("href"))))
      .toEqual([...EMERGENCY_NUMBERS.map((number) => `tel:${number}`), "#/alarm/outside"]);
    expect(await axeFinds(page)).toEqual([]);
    for (const size of [PHONE.viewport, SMALL_PHONE]) {
      await page.setViewportSize(size);
      await expect.poll(() => sideways(page)).toBe(0);
      const below = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
      expect(below, `${size.height} px`).toBeLessThanOrEqual(0);
    }
    await close();
  },
);

test("the numbers are those of the named sources", () => {
  const { numbers } = JSON.parse(readFileSync("test/reference/emergency-numbers.json", "utf8"));
  expect(EMERGENCY_NUMBERS).toEqual(numbers.map(({ number }: { number: string }) => number));
});

test("an alarm during a sweep: the settings come later, on a screen of their own, with what the owner gave alone; a press by mistake is taken back", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/onsite`, {
    ...PHONE,
    alone: true,
  });
  await installClock(page);
  await begin(page);
  await alarmLink(page).last().click();
  await screen(page).waitFor();
  await page.reload();
  await screen(page).waitFor();
  await page.getByRole("link", { name: english.alarm.outside }).click();
  await page.locator("h2:focus", { hasText: onsite.stopped.alarm.title }).waitFor();
  for (const line of onsite.stopped.alarm.lines) await page.getByText(line).waitFor();
  await expect.poll(() => page.locator("table").count()).toBe(0);
  for (const gone of [onsite.stopped.anew, onsite.stopped.resume, onsite.step.stay]) {
    await expect
      .poll(() => page.getByRole("button", { name: gone, exact: true }).count(), { message: gone })
      .toBe(0);
  }
  const found = await axeFinds(page, { within: ".onsite" });
  await press(page, onsite.stopped.alarm.later);
  await page.locator("h2:focus", { hasText: onsite.stopped.putBack }).waitFor();
  // No fan speed was typed, so none is made up.
  await expect.poll(() => page.locator(".put-back td").allTextContents()).toEqual(["1.3", "4.6"]);
  found.push(...(await axeFinds(page, { within: ".onsite" })));
  await press(page, onsite.stopped.alarm.notYet);

  // The sweep itself stands at the same place, however one comes to it.
  await page.goto(`${atlas.url}/#/onsite`);
  await page.locator("[data-step=alarm]").waitFor();
  await press(page, onsite.stopped.alarm.mistaken);
  await press(page, onsite.stopped.alarm.mistakenSure);
  await page.locator("[data-step=set]").waitFor();

  await press(page, onsite.step.leave);
  await press(page, onsite.step.leaveSure);
  await press(page, onsite.stopped.anew);
  await press(page, onsite.stopped.anewSure);
  await unfold(page);
  await field(page, "low.fan_rpm").fill("1700");
  await field(page, "high.fan_rpm").fill("4450");
  await begin(page);
  await alarmLink(page).last().click();
  await page.getByRole("link", { name: english.alarm.outside }).click();
  await press(page, onsite.stopped.alarm.later);
  await expect
    .poll(() => page.locator(".put-back td").allTextContents())
    .toEqual(["1.3", "1,700", "4.6", "4,450"]);
  await press(page, onsite.stopped.alarm.areBack);
  await press(page, onsite.stopped.alarm.endSweep);
  await page.locator(".end output").first().waitFor();
  await page.goto(`${atlas.url}/#/onsite`);
  await field(page, "low_before_Hz").waitFor();
  expect(found).toEqual([]);
  await close();
});
