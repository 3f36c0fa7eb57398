import type { Page } from "playwright-core";
import { FIRST_QUESTION } from "../../client/base/question.ts";
import { firstPreparation, planOf } from "../../client/on-site/plan.ts";
import {
  CHECKS,
  newSession,
  type Press,
  pressed,
  type Session,
} from "../../client/on-site/session.ts";
import { onsite } from "../../client/texts/onsite.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { startTune } from "../../model/start.ts";
import type { SweepReading } from "../../model/sweep/setup.ts";
import { seeded } from "../../seed-demo/random.ts";
import { AtTheHeater } from "../study/sweep/at-the-heater.ts";
import type { Heater } from "../study/sweep/heater.ts";
import { CALM } from "../study/sweep/meter.ts";
import { field } from "./open-page.ts";

/** An invented heater's ends, and where the CO of each is lowest. */
export const HEATER_ENDS: Record<"low" | "high", Heater> = {
  low: {
    minimum_Hz: 1.02,
    lowest_ppm: 14,
    lean_width: 0.09,
    rich_width: 0.07,
    shape: "power",
    flame_out_Hz: 0.7,
  },
  high: {
    minimum_Hz: 3.85,
    lowest_ppm: 10,
    lean_width: 0.06,
    rich_width: 0.08,
    shape: "quadratic",
    flame_out_Hz: 2.7,
  },
};
const METER = { ...CALM, lag_s: 20, resolution_ppm: 1, floor_ppm: 0, ceiling_ppm: 1000 };
const STEPS_MOST = 72;
/** What the pump is set to before the sweep. */
const BEFORE_Hz = { low: 1.3, high: 4.6 };

export const press = (page: Page, name: string) =>
  page.getByRole("button", { name, exact: true }).click();

/** How somebody does what the page says. */
export interface Hands {
  begin: (page: Page) => Promise<void>;
  /** The one large button of a step. */
  confirm: (page: Page, name: string) => Promise<void>;
  read: (page: Page, co_ppm: string) => Promise<void>;
}

/** Opens what On site's preparation folds away. */
export async function unfold(page: Page): Promise<void> {
  const folded = page.locator(".folded:not([open]) > summary");
  while ((await folded.count()) > 0) await folded.first().click();
}

/** From an empty form to the first step at the low end. */
export async function begin(page: Page): Promise<void> {
  await field(page, "low_before_Hz").fill("1.3");
  await field(page, "high_before_Hz").fill("4.6");
  await press(page, onsite.prepare.begin);
  for (const box of await page.locator('[name^="check."]').all()) await box.check();
  await press(page, onsite.checklist.light);
  await press(page, onsite.warmUp.already);
  await page.locator("[data-step=set]").waitFor();
}

/** Time that the test lets pass, once the view is there. */
export async function installClock(page: Page): Promise<void> {
  await field(page, "low_before_Hz").waitFor();
  await page.clock.install();
}

/** A person at an end of an invented heater who does what the page says, the clock going on as they wait. */
export async function sweepEnd(
  page: Page,
  end: "low" | "high",
  { confirm, read }: Hands,
  onWait: (step: number) => Promise<void> = async () => {},
): Promise<SweepReading[]> {
  const heater = new AtTheHeater(seeded(end === "low" ? 5 : 6), HEATER_ENDS[end], METER);
  heater.warm(BEFORE_Hz[end]);
  const readings: SweepReading[] = [];
  for (let step = 0; step < STEPS_MOST; step++) {
    const at = await page.locator("[data-step]").getAttribute("data-step");
    if (at === "found") return readings;
    if (at === "set") await confirm(page, onsite.step.isSet);
    await onWait(step);
    const { rate, left_s } = await asked(page);
    await page.clock.fastForward((left_s + 1) * 1000);
    await page.getByText(onsite.step.readNow).waitFor();
    const reading = heater.read(rate, left_s + 1);
    readings.push(reading);
    await read(page, String(reading.co_ppm));
  }
  throw new Error(`No minimum after ${STEPS_MOST} steps.`);
}

/** Types what the meter shows and waits until the page has taken it. */
export async function typeReading(page: Page, co_ppm: string): Promise<void> {
  await field(page, "co_ppm").fill(co_ppm);
  await press(page, onsite.step.take);
}

export const POINTER: Hands = { begin, confirm: press, read: typeReading };

/** Tab and Enter alone; every step begins where its heading has the focus, and its first control is the next Tab's. */
export const KEYBOARD: Hands = {
  async begin(page) {
    await field(page, "low_before_Hz").focus();
    await page.keyboard.type("1.3");
    await page.keyboard.press("Tab");
    await page.keyboard.type("4.6");
    await page.keyboard.press("Enter");
    await focusAt(page, onsite.checklist.title);
    for (const _ of CHECKS) {
      await page.keyboard.press("Tab");
      await page.keyboard.press("Space");
    }
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await focusAt(page, onsite.warmUp.title);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.locator("[data-step=set]").waitFor();
  },
  async confirm(page) {
    await focusAt(page);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
  },
  async read(page, co_ppm) {
    await focusAt(page);
    await page.keyboard.press("Tab");
    await page.keyboard.type(co_ppm);
    await page.keyboard.press("Enter");
  },
};

/** Waits until a heading has the focus. */
const focusAt = (page: Page, title?: string) =>
  page.locator("h2:focus", title === undefined ? {} : { hasText: title }).waitFor();

/** What the page asks for: the pump rate, and how long to wait by its own clock. */
export async function asked(page: Page): Promise<{ rate: number; left_s: number }> {
  const rate = await page
    .locator("[data-step] .rate output[data-value]")
    .getAttribute("data-value");
  const left = await page.locator("[data-left]").getAttribute("data-left");
  return { rate: Number(rate), left_s: Number(left) };
}

/** A sweep that is over, as the browser keeps it. */
export function overIn(
  fit: PublishedFit,
  fans?: { low_fan_rpm: number; high_fan_rpm: number },
): Session {
  const here = {
    ...FIRST_QUESTION,
    site: { elevation_m: 2240, elevation_sd_m: 0, elevation_source: "given" as const },
    air: { temperature_C: 12 },
    ...fans,
  };
  const ready = { ...firstPreparation(), low_before_Hz: 1.4, high_before_Hz: 4.8 };
  const result = (pump_Hz: number, co_ppm: number) => ({ pump_Hz, co_ppm, settled: 4 });
  const presses: Omit<Press, "at">[] = [
    { is: "lit" },
    { is: "warm" },
    { is: "accept", end: "low", result: result(1.1, 15) } as Press,
    { is: "accept", end: "high", result: result(4, 10) } as Press,
    { is: "skip" },
    { is: "skip" },
  ];
  const begun = Date.UTC(2026, 10, 26, 12);
  return presses.reduce<Session>(
    (session, one, i) => pressed(session, { ...one, at: begun + i * 600_000 } as Press),
    newSession(planOf(here, startTune(fit, here), ready, -14), "invented-session", begun),
  );
}
