import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import type { Session } from "../../client/on-site/session.ts";
import { t } from "../../client/texts/app.ts";
import { onsite } from "../../client/texts/onsite.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { tuneAtNight } from "../../model/night-air.ts";
import { installClock, overIn, press, unfold } from "./at-the-heater.ts";
import { axeFinds, sideways } from "./faults.ts";
import { field, openPage, openSite, shownText, shownTexts } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

/** With a clock of its own. */
const PHONE = { viewport: { width: 360, height: 740 }, alone: true };
const words = onsite.done.night;
const HOUR_ms = 3_600_000;

test("the air of the moment is On site's, the night's is the Atlas's: neither overwrites the other", async () => {
  const { page, close } = await openPage(browser, atlas.url, PHONE);
  await openSite(page);
  await field(page, "air.temperature_C").fill("-12");
  const answer = page.locator(".answer");
  await answer.waitFor();
  const before = await shownText(answer);
  await page.goto(`${atlas.url}/#/onsite`);
  await installClock(page);
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-12");
  await expect.poll(() => field(page, "now.temperature_C").inputValue()).toBe("");
  const begins = () => shownText(page.locator("form p", { hasText: "looks near" }));
  const atNight = await begins();
  await unfold(page);
  await field(page, "now.temperature_C").fill("25");
  await field(page, "now.pressure_hPa").fill("893");
  await field(page, "now.humidity_pct").fill("35");
  await expect.poll(() => begins()).not.toBe(atNight);
  // Another night is no other moment: the sweep begins where it did.
  const now = await begins();
  await field(page, "air.temperature_C").fill("-20");
  await expect.poll(() => begins()).toBe(now);
  await field(page, "air.temperature_C").fill("-12");

  await page.goto(`${atlas.url}/#/start`);
  await answer.waitFor();
  await openSite(page);
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-12");
  await expect.poll(() => field(page, "air.pressure_hPa").inputValue()).toBe("");
  await expect.poll(() => shownText(answer)).toBe(before);

  // It is kept for a reload, and no longer than it is the air of the moment.
  await page.goto(`${atlas.url}/#/onsite`);
  await page.reload();
  await expect.poll(() => field(page, "now.temperature_C").inputValue()).toBe("25");
  await page.clock.fastForward(3 * HOUR_ms);
  await page.reload();
  await field(page, "now.temperature_C").waitFor();
  await expect.poll(() => field(page, "now.temperature_C").inputValue()).toBe("");
  await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-12");
  await field(page, "now.temperature_C").fill("77");
  await press(page, onsite.prepare.begin);
  await page.locator('[name="now.temperature_C"]:focus').waitFor();
  await close();
});

/** The same, the flame having gone out at a rate beside the one an end was left at. */
const outBeside = (session: Session, at: "low" | "high", flame_out_Hz: number): Session => ({
  ...session,
  presses: session.presses.map((one) =>
    one.is === "accept" && one.end === at
      ? { ...one, result: { ...one.result, flame_out_Hz } }
      : one,
  ),
});

async function openOver(session: Session): Promise<{ page: Page; close: () => Promise<void> }> {
  const opened = await openPage(browser, `${atlas.url}/#/onsite`, PHONE);
  await opened.page.evaluate(
    (text) => localStorage.setItem("hypsotune.onsite", text),
    JSON.stringify(session),
  );
  await opened.page.reload();
  await opened.page.getByRole("heading", { name: words.title }).waitFor();
  return opened;
}

/** The table's cells, row by row. */
const cells = (page: Page) => shownTexts(page.locator("table.night td"));

test("when the sweep is over it says how the tune sits in the coming night's air, and what to set for it, as the model works it out", async () => {
  const fit = await atlas.get<PublishedFit>("/fit");
  const session = overIn(fit, { low_fan_rpm: 1650, high_fan_rpm: 4400 });
  const { page, close } = await openOver(session);
  const asked = (night_C: number) =>
    tuneAtNight(fit, {
      heat_kW: 5,
      site: { elevation_m: 2240, elevation_sd_m: 0, elevation_source: "given" },
      air: { temperature_C: 12 },
      night_C,
      tune: { low: { pump_Hz: 1.1, fan_rpm: 1650 }, high: { pump_Hz: 4, fan_rpm: 4400 } },
    });
  const cold = asked(-14);
  await expect.poll(() => field(page, "night.temperature_C").inputValue()).toBe("-14");
  await page
    .getByText(words.air("−14 °C", words.denser(String(cold.denser_pct)), "12 °C"))
    .waitFor();
  await page.getByText(words.stay("12", "25")).waitFor();
  expect((await cells(page)).slice(0, 2)).toEqual([
    words.leaner(String(-cold.low.shift_pct)),
    words.leaner(String(-cold.high.shift_pct)),
  ]);
  expect((await cells(page))[2]).toContain(`${cold.low.pump_Hz.toFixed(1)}: `);
  expect((await cells(page))[3]).toContain(`${cold.high.pump_Hz.toFixed(1)}: `);
  expect((await cells(page))[4]).toContain(`${cold.low.fan_rpm?.toLocaleString("en")}: `);
  expect(await axeFinds(page, { within: ".onsite" })).toEqual([]);
  await expect.poll(() => sideways(page)).toBe(0);

  // Tuned in the warm, a cold night; and the other way round.
  await field(page, "night.temperature_C").fill("35");
  await page.getByText(words.stay("12", "25")).waitFor();
  expect((await cells(page))[0]).toBe(words.richer(String(asked(35).low.shift_pct)));
  await field(page, "night.temperature_C").fill("12");
  await page.getByText(words.well).waitFor();
  await field(page, "night.temperature_C").fill("-100");
  await page.getByText(t.site.outOfRange("−60 °C", "45 °C")).waitFor();
  await field(page, "night.temperature_C").fill("");
  await page.getByText(words.type).waitFor();
  await expect.poll(() => page.locator("table.night").count()).toBe(0);
  await field(page, "night.temperature_C").fill("-30");
  await page.reload();
  await page.locator("table.night").waitFor();
  await expect.poll(() => field(page, "night.temperature_C").inputValue()).toBe("-30");
  await close();
});

test("without the owner's fan speeds none is made up; a guessed temperature is called one; too far is a warning", async () => {
  const fit = await atlas.get<PublishedFit>("/fit");
  const session = overIn(fit);
  const { temperature_C: _, ...air } = session.plan.air;
  const { page, close } = await openOver({ ...session, plan: { ...session.plan, air } });
  await page.getByText(words.assumed("0 °C")).waitFor();
  const [, , , , fan = ""] = await cells(page);
  expect(fan).toMatch(/^\d+ % slower$/);
  await close();

  const winter = { ...session.plan, air: { temperature_C: -25 }, night_C: 20 };
  const warm = await openOver({ ...session, plan: winter });
  await warm.page.locator(".warning", { hasText: words.set("12", "25") }).waitFor();
  await warm.close();
});

test("beside a rate at which the flame went out, a leaner night is never called good enough; a richer one is", async () => {
  const fit = await atlas.get<PublishedFit>("/fit");
  const { page, close } = await openOver(outBeside(overIn(fit), "high", 3.7));
  await page.locator(".warning", { hasText: words.nearOut(t.high, "−14 °C") }).waitFor();
  await expect.poll(() => page.getByText(words.stay("12", "25")).count()).toBe(0);
  await field(page, "night.temperature_C").fill("30");
  await page.getByText(words.stay("12", "25")).waitFor();
  await expect.poll(() => page.getByText(words.nearOut(t.high, "30 °C")).count()).toBe(0);
  await close();
});
