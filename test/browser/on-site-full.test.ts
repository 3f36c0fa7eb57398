import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { coWords } from "../../client/texts/co.ts";
import { onsite as german } from "../../client/texts/de/onsite.ts";
import { onsite } from "../../client/texts/en/onsite.ts";
import { onsite as spanish } from "../../client/texts/es/onsite.ts";
import { begin, installClock, press, typeReading, unfold } from "./at-the-heater.ts";
import { axeFinds, sideways } from "./faults.ts";
import { field, openPage, shownText, spaced } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const PHONE = { width: 360, height: 740 };

async function openOnSite(locale = "en-US") {
  const opened = await openPage(browser, `${atlas.url}/#/onsite`, {
    viewport: PHONE,
    locale,
    alone: true,
  });
  await installClock(opened.page);
  return opened;
}

const key = (page: Page, name: string) => page.locator(".keys").getByText(name, { exact: true });
const around = "#app > header, #app > nav, #app > footer, .my-heater, .tagline";

test.each(Object.entries({ en: onsite, de: german, es: spanish }))(
  "while a sweep runs it has the screen: no tabs, no foot, no heater line; on a phone all that a reading takes is in sight, in large buttons, the flame-out apart: %s",
  async (locale, words) => {
    const { page, close } = await openOnSite(locale);
    const pressed = (name: string) => page.getByRole("button", { name, exact: true }).click();
    await expect.poll(() => page.locator(around).first().isVisible()).toBe(true);
    // On the second screen of a phone the way on is in sight, above the bar of places.
    const lowest = await page.locator("form button[type=submit]").evaluate((begin) => {
      scrollTo(0, innerHeight);
      const bar = document.querySelector(".places")?.getBoundingClientRect().top ?? 0;
      return begin.getBoundingClientRect().bottom - bar;
    });
    expect(lowest).toBeLessThanOrEqual(0);
    await field(page, "low_before_Hz").fill("1.3");
    await field(page, "high_before_Hz").fill("4.6");
    await pressed(words.prepare.begin);
    for (const box of await page.locator('[name^="check."]').all()) await box.check();
    await pressed(words.checklist.light);
    await pressed(words.warmUp.already);
    for (const ppm of ["48", "29"]) {
      await pressed(words.step.isSet);
      await page.clock.fastForward(400_000);
      await field(page, "still").check();
      await field(page, "co_ppm").fill(ppm);
      await pressed(words.step.take);
    }
    await pressed(words.step.isSet);
    await page.evaluate(() => scrollTo(0, 0));
    for (const one of await page.locator(around).all())
      await expect.poll(() => one.isVisible()).toBe(false);
    const boxes = await page
      .locator(".always a, .step :is(.rate output, input[type=text], button, .check, .seen)")
      .evaluateAll((all) =>
        all.map((one) => {
          const { top, bottom } = one.getBoundingClientRect();
          return {
            what: one.textContent || one.tagName,
            isButton: one.matches("a, button, .check, input"),
            top,
            bottom,
          };
        }),
      );
    // Ten digits, below, over, delete, take, flame-out, the alarm, the figure, the tick, the rate, the wait, what was seen.
    expect(boxes.length).toBe(21);
    const unseen = boxes.filter(({ top, bottom }) => top < 0 || bottom > PHONE.height);
    expect(unseen).toEqual([]);
    const small = boxes.filter(({ isButton, top, bottom }) => isButton && bottom - top < 63.5);
    expect(small).toEqual([]);
    const out = boxes.find(({ what }) => what === words.step.out);
    const others = boxes.filter(({ isButton, what }) => isButton && what !== words.step.out);
    expect((out?.top ?? 0) - Math.max(...others.map(({ bottom }) => bottom))).toBeGreaterThan(24);
    // The alarm stays where it is, however far one scrolls.
    await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
    const bar = await page.locator(".always").boundingBox();
    expect(bar?.y).toBe(0);
    await expect.poll(() => sideways(page)).toBe(0);
    await pressed(words.step.leave);
    await pressed(words.step.leaveSure);
    await page.getByRole("heading", { name: words.stopped.putBack }).waitFor();
    await expect.poll(() => page.locator(around).first().isVisible()).toBe(true);
    await close();
  },
);

test("a reading is typed with the page's own keys, a keyboard, or told as below or over; what is over the meter's own highest is refused", async () => {
  const { page, close } = await openOnSite();
  await unfold(page);
  await field(page, "meter.ceiling_ppm").fill("500");
  await field(page, "meter.resolution_ppm").fill("0.5");
  await begin(page);
  await press(page, onsite.step.isSet);
  const figure = field(page, "co_ppm");
  // No keyboard of the system's opens over the page.
  await expect.poll(() => figure.getAttribute("inputmode")).toBe("none");
  for (const one of ["4", "8", "7"]) await key(page, one).click();
  await expect.poll(() => figure.inputValue()).toBe("487");
  await key(page, onsite.keys.remove).click();
  await page.getByRole("button", { name: onsite.keys.decimal }).click();
  await key(page, "5").click();
  await expect.poll(() => figure.inputValue()).toBe("48.5");

  const below = page.getByRole("button", { name: onsite.step.below("1"), exact: true });
  await below.click();
  await expect.poll(() => figure.inputValue()).toBe("");
  await expect.poll(() => figure.getAttribute("placeholder")).toBe(coWords.below("1"));
  await expect.poll(() => below.getAttribute("aria-pressed")).toBe("true");
  await key(page, onsite.keys.remove).click();
  await expect.poll(() => below.getAttribute("aria-pressed")).toBe("false");
  await press(page, onsite.step.take);
  await page.getByText(onsite.step.noReading).waitFor();
  await below.click();
  await expect.poll(() => page.getByText(onsite.step.noReading).count()).toBe(0);

  // A figure typed takes its place.
  await figure.focus();
  await page.keyboard.type("501");
  await expect.poll(() => below.getAttribute("aria-pressed")).toBe("false");
  await page.keyboard.press("Enter");
  await page.getByText(onsite.step.aboveCeiling("500")).waitFor();
  await page.locator('[name="co_ppm"]:focus').waitFor();
  await expect.poll(() => figure.inputValue()).toBe("501");
  await expect.poll(() => page.locator("[data-step=read]").count()).toBe(1);
  await expect.poll(() => page.getByText(onsite.chart.none).count()).toBe(1);
  await figure.fill("-3");
  await page.getByText(onsite.step.belowZero).waitFor();
  await figure.fill("4x");
  await press(page, onsite.step.take);
  await expect.poll(() => page.getByText(onsite.chart.none).count()).toBe(1);
  expect(await axeFinds(page, { within: ".onsite" })).toEqual([]);

  await figure.fill("500");
  await page.clock.fastForward(400_000);
  await field(page, "still").check();
  await figure.press("Enter");
  await page.locator("table.readings td").first().waitFor();
  await expect.poll(() => shownText(page.locator("table.readings td").nth(1))).toBe("500");
  await close();
});

test("what was seen on either side is said in words as the sweep goes, with the reading that showed it", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  const side = (way: string) => page.locator(`[data-side=${way}]`);
  const { seen, at, next } = onsite.progress;
  for (const way of ["lean", "rich"])
    await expect.poll(() => shownText(side(way))).toContain(seen.open);
  for (const ppm of ["48", "29"]) {
    await press(page, onsite.step.isSet);
    await page.clock.fastForward(400_000);
    await field(page, "still").check();
    await typeReading(page, ppm);
  }
  await page.locator("[data-side=rich][data-seen=rose]").waitFor();
  await expect
    .poll(() => shownText(side("rich")))
    .toBe(spaced(`${onsite.progress.rich}: ${seen.rose}${at("48", "1.3")}`));
  const rate = Number(await page.locator(".setting output").getAttribute("data-value"));
  await expect
    .poll(() => shownText(side("lean")))
    .toBe(`${onsite.progress.lean}: ${seen.open}${next(rate.toFixed(1))}`);
  await close();
});

/** What the page asked of the device, written down before it can ask. */
async function listen(page: Page, { refuses }: { refuses: boolean }): Promise<void> {
  await page.addInitScript((isRefused) => {
    const told: string[] = [];
    Object.assign(globalThis, { told });
    Object.defineProperty(navigator, "wakeLock", {
      value: {
        request: async (what: string) => {
          told.push(`lock ${what}`);
          if (isRefused) throw new DOMException("Low battery", "NotAllowedError");
          return { release: async () => void told.push("unlock") };
        },
      },
    });
    navigator.vibrate = (pattern) => {
      told.push(`buzz ${[pattern].flat().length}`);
      return true;
    };
    const start = OscillatorNode.prototype.start;
    OscillatorNode.prototype.start = function (when) {
      told.push("tone");
      start.call(this, when);
    };
  }, refuses);
  await page.reload();
  await installClock(page);
}

const told = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { told: string[] }).told.splice(0));

test("the screen is kept on while the sweep runs; the end of a wait is heard and felt once, and not when that is switched off", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/onsite`, {
    viewport: PHONE,
    alone: true,
  });
  await listen(page, { refuses: false });
  await expect.poll(() => told(page)).toEqual([]);
  await begin(page);
  await expect.poll(() => told(page)).toEqual(["lock screen"]);
  const onOff = field(page, "signal");
  await press(page, onsite.step.isSet);
  await expect.poll(() => onOff.isChecked()).toBe(true);
  await page.clock.fastForward(100_000);
  await expect.poll(() => told(page)).toEqual([]);
  await page.clock.fastForward(30_000);
  await page.getByText(onsite.step.readNow).waitFor();
  await expect.poll(() => told(page)).toEqual(["buzz 3", "tone", "tone"]);
  await page.clock.fastForward(300_000);
  await expect.poll(() => told(page)).toEqual([]);

  // Its owner's choice is kept; a page that nobody has touched yet may make no sound, and does not say it will.
  await onOff.uncheck();
  await field(page, "still").check();
  await typeReading(page, "48");
  await press(page, onsite.step.isSet);
  await page.clock.fastForward(500_000);
  await page.getByText(onsite.step.readNow).waitFor();
  await expect.poll(() => told(page)).toEqual([]);
  await onOff.check();
  await expect.poll(() => told(page)).toEqual(["buzz 3", "tone", "tone"]);
  // Driven by a test, every page counts as touched; this one says that it was not.
  const untouched = await page.context().newPage();
  await untouched.addInitScript(() =>
    Object.defineProperty(navigator, "userActivation", { value: { hasBeenActive: false } }),
  );
  await untouched.goto(page.url());
  await field(untouched, "signal").waitFor();
  await expect.poll(() => field(untouched, "signal").isChecked()).toBe(false);
  await untouched.close();

  await press(page, onsite.step.leave);
  await press(page, onsite.step.leaveSure);
  await page.getByRole("heading", { name: onsite.stopped.putBack }).waitFor();
  await expect.poll(() => told(page)).toEqual(["unlock"]);
  await close();
});

test("a screen that will not be kept on goes unsaid: the sweep goes on", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/onsite`, {
    viewport: PHONE,
    alone: true,
  });
  await listen(page, { refuses: true });
  await begin(page);
  await expect.poll(() => told(page)).toEqual(["lock screen"]);
  await press(page, onsite.step.isSet);
  await typeReading(page, "48");
  await page.getByRole("cell", { name: "48" }).waitFor();
  await close();
});
