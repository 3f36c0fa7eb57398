import type { Browser, Locator, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { onsite as german } from "../../client/texts/de/onsite.ts";
import { onsite } from "../../client/texts/en/onsite.ts";
import { onsite as spanish } from "../../client/texts/es/onsite.ts";
import { begin, installClock, press, typeReading, unfold } from "./at-the-heater.ts";
import { field, openPage } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

/** With a clock of its own. */
const PHONE = { viewport: { width: 360, height: 740 }, alone: true };

async function openOnSite() {
  const opened = await openPage(browser, `${atlas.url}/#/onsite`, PHONE);
  await installClock(opened.page);
  return opened;
}

const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });

/** Which of these a finger could not press: out of the screen, or something lies over the middle or a corner. */
async function covered(controls: Locator[]): Promise<string[]> {
  const found: string[] = [];
  for (const control of controls) {
    const over = await control.evaluate((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const points = [
        [(left + right) / 2, (top + bottom) / 2],
        [left + 3, top + 3],
        [right - 3, bottom - 3],
      ] as const;
      return points.some(([x, y]) => !element.contains(document.elementFromPoint(x, y)));
    });
    if (over) found.push((await control.textContent()) ?? "");
  }
  return found;
}

/** Scrolls until a control stands right above the screen's lower edge. */
async function atTheFoot(control: Locator): Promise<void> {
  const left = await control.evaluate((element) => {
    scrollBy(0, element.getBoundingClientRect().bottom - innerHeight + 4);
    return innerHeight - element.getBoundingClientRect().bottom;
  });
  expect(Math.abs(left)).toBeLessThan(10);
}

test("what asks back is in sight, wherever it was pressed, and so, below the alarm's bar, is what takes the focus either way", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  await press(page, onsite.step.isSet);
  await page.clock.fastForward(200_000);
  await field(page, "still").check();
  await typeReading(page, "48");
  await button(page, onsite.step.isSet).waitFor();
  const leave = button(page, onsite.step.leave);
  await atTheFoot(leave);
  await leave.click();
  const answers = [button(page, onsite.step.leaveSure), button(page, onsite.step.stay)];
  await answers[0]?.waitFor();
  await expect.poll(() => covered(answers)).toEqual([]);
  await press(page, onsite.step.stay);
  await page.locator("button:focus", { hasText: onsite.step.leave }).waitFor();

  await page.evaluate(() => scrollTo(0, 0));
  await page.locator("h2:visible").first().focus();
  const hidden: string[] = [];
  for (const key of ["Tab", "Shift+Tab"]) {
    for (let k = 0; k < 6; k++) {
      await page.keyboard.press(key);
      const focused = page.locator(":focus");
      if (await focused.evaluate((element) => element.closest(".always") !== null)) break;
      hidden.push(...(await covered([focused])));
    }
    if (key === "Tab") await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  }
  expect(hidden).toEqual([]);

  await press(page, onsite.step.leave);
  await press(page, onsite.step.leaveSure);
  const anew = button(page, onsite.stopped.anew);
  await anew.click();
  const sure = [button(page, onsite.stopped.anewSure), button(page, onsite.step.stay)];
  await sure[0]?.waitFor();
  await expect.poll(() => covered(sure)).toEqual([]);
  await close();
});

test("while the meter settles the page says to wait, and no longer why the pump was to be set; then it says to read", async () => {
  const { page, close } = await openOnSite();
  await begin(page);
  const reasons = page.locator("[data-step]").getByText(onsite.step.why.start, { exact: true });
  await reasons.waitFor();
  for (const co_ppm of ["48", "29"]) {
    const why = await page.locator("[data-step] h2 + p").textContent();
    await page.getByRole("heading", { name: onsite.step.title(t.low) }).waitFor();
    await press(page, onsite.step.isSet);
    await page.getByRole("heading", { name: onsite.step.titleWait(t.low) }).waitFor();
    const settling = page.getByText(onsite.step.settling, { exact: true });
    await expect.poll(() => settling.isVisible()).toBe(true);
    await expect.poll(() => page.locator("[data-step]").textContent()).not.toContain(why);
    const take = button(page, onsite.step.take);
    const before = await page.getByText(onsite.step.reading).boundingBox();
    await page.clock.fastForward(400_000);
    await page.getByText(onsite.step.readNow).waitFor();
    await expect.poll(() => settling.isVisible()).toBe(false);
    expect((await page.getByText(onsite.step.reading).boundingBox())?.y).toBe(before?.y);
    await take.waitFor();
    await field(page, "still").check();
    await typeReading(page, co_ppm);
    await page.locator("[data-step=set]").waitFor();
  }
  await close();
});

test("what is missing or wrong on the way in is gone to: the first field, a figure that is none, an unticked line, an empty reading", async () => {
  const { page, close } = await openOnSite();
  /** The field in focus, with its label and what is said of it in sight. */
  const goneTo = async (name: string) => {
    const focused = page.locator(`[name="${name}"]:focus`);
    await focused.waitFor();
    await expect
      .poll(() =>
        focused.evaluate((input) => {
          const around = input.closest(".with-unit, .check")?.getBoundingClientRect();
          const note = document.getElementById(input.getAttribute("aria-describedby") ?? "");
          const end = Math.max(around?.bottom ?? 0, note?.getBoundingClientRect().bottom ?? 0);
          const bar = document.querySelector(".always")?.getBoundingClientRect();
          return around && around.top >= (bar?.bottom ?? 0) && end <= innerHeight;
        }),
      )
      .toBe(true);
  };
  await press(page, onsite.prepare.begin);
  await goneTo("low_before_Hz");
  await field(page, "low_before_Hz").fill("1.3");
  await press(page, onsite.prepare.begin);
  await goneTo("high_before_Hz");
  await field(page, "high_before_Hz").fill("4.6");
  await unfold(page);
  await field(page, "meter.lag_s").fill("");
  // Folded away again, it is found all the same.
  await page.locator(".folded > summary", { hasText: onsite.prepare.figures }).click();
  await press(page, onsite.prepare.begin);
  await goneTo("meter.lag_s");
  await field(page, "meter.lag_s").fill("25");
  await field(page, "site.elevation_m").fill("high up");
  await press(page, onsite.prepare.begin);
  await goneTo("site.elevation_m");
  await field(page, "site.elevation_m").fill("2240");
  await field(page, "low.fan_rpm").fill("0");
  await press(page, onsite.prepare.begin);
  await page.locator("[role=alert]:focus", { hasText: onsite.prepare.cannot }).waitFor();
  await field(page, "low.fan_rpm").fill("1650");
  await press(page, onsite.prepare.begin);

  await field(page, "check.air").check();
  await press(page, onsite.checklist.light);
  await goneTo("check.alarm");
  for (const box of await page.locator('[name^="check."]').all()) await box.check();
  await press(page, onsite.checklist.light);
  await press(page, onsite.warmUp.already);
  await press(page, onsite.step.isSet);
  await press(page, onsite.step.take);
  await goneTo("co_ppm");
  await close();
});

test("the checklist wants the vehicle outdoors and open, in all languages: no door makes a closed space good enough", () => {
  expect(onsite.checklist.checks.air).toBe(
    "The vehicle stands outdoors, its doors open, and nobody is asleep in it.",
  );
  const or = { en: / or /, de: / oder /, es: / [ou] / };
  for (const [language, { checklist }] of [
    ["en", onsite],
    ["de", german],
    ["es", spanish],
  ] as const) {
    expect(checklist.checks.air).not.toMatch(or[language]);
  }
});
