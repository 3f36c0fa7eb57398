import type { Page } from "playwright-core";
import { heaterWords as words } from "../../client/texts/heater.ts";
import { logbookWords } from "../../client/texts/logbook.ts";
import type { OwnTune } from "../../model/tune.ts";
import { shownText } from "./open-page.ts";

/** Invented: richer than the average, found low down in mild air. */
export const FOUND: OwnTune = {
  site: { elevation_m: 600 },
  air: { temperature_C: 10 },
  low: { pump_Hz: 1.4, fan_rpm: 1700, co_ppm: 14 },
  high: { pump_Hz: 5, fan_rpm: 4500, co_ppm: 9 },
};

export const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true });
export const line = (page: Page) => page.locator("button.my-heater-line");
export const inForm = (page: Page, name: string) => page.locator(`form [name="${name}"]`);

export async function fillHeater(
  page: Page,
  name: string,
  more: Record<string, string>,
): Promise<void> {
  for (const [path, value] of Object.entries({ "heater.name": name, ...more }))
    await inForm(page, path).fill(value);
  await button(page, logbookWords.heater.save).click();
}

/** With other figures in some fields where they are given. */
export async function fillFound(page: Page, typed: Record<string, string> = {}): Promise<void> {
  const { site, air, low, high } = FOUND;
  const fields: Record<string, number | undefined> = {
    "site.elevation_m": site.elevation_m,
    "air.temperature_C": air?.temperature_C,
    "low.pump_Hz": low.pump_Hz,
    "low.fan_rpm": low.fan_rpm,
    "low.ppm": low.co_ppm,
    "high.pump_Hz": high.pump_Hz,
    "high.fan_rpm": high.fan_rpm,
    "high.ppm": high.co_ppm,
  };
  for (const [path, value] of Object.entries({ ...fields, ...typed }))
    await inForm(page, path).fill(`${value}`);
  await button(page, logbookWords.entry.save).click();
}

/** Adds the first heater by its line, in English, with nothing known of it but its usual size. */
export async function addHeater(page: Page, name: string): Promise<void> {
  await line(page).click();
  await fillHeater(page, name, {});
  await button(page, logbookWords.entry.cancel).click();
}

/** Adds the first heater by its line, in English, with present settings found with a meter. */
export async function addFoundHeater(page: Page, name: string): Promise<void> {
  await line(page).click();
  await fillHeater(page, name, {
    "heater.dose_uL": "22",
    "heater.low_fan_rpm": "1700",
    "heater.high_fan_rpm": "4500",
    "heater.step_Hz": "0.05",
  });
  await button(page, words.settings.meter).click();
  await fillFound(page);
  await page.locator(".own-basis").waitFor();
}

/** How sure the answer is with its own tunes, and would be without, ±%. */
export async function basisOf(page: Page): Promise<[own: number, others: number]> {
  const said = await shownText(page.locator(".own-basis"));
  const [own = 0, others = 0] = [...said.matchAll(/±(\d+) %/g)].map(([, pct]) => Number(pct));
  return [own, others];
}
