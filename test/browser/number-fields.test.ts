import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { z } from "zod";
import { ELEVATIONS_m, TEMPERATURES_C } from "../../client/app/link/card-choice.ts";
import { entrySchema, heaterSchema } from "../../client/app/records/schema.ts";
import { RANGES } from "../../client/on-site/plan.ts";
import { t } from "../../client/texts/app.ts";
import { logbookWords } from "../../client/texts/logbook.ts";
import { onsite } from "../../client/texts/onsite.ts";
import { tuneSchema } from "../../model/tune.ts";
import { begin, press, unfold } from "./at-the-heater.ts";
import { field, openFiner, openPage, openStop, openTripHeater } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { emptyAtlas, plainBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), emptyAtlas()]);
});

/** Least value of every number of a schema, by its path and by its last step. */
function leastOf(schema: z.ZodType, under = ""): [path: string, least: number][] {
  const described = z.toJSONSchema(schema, { io: "input", unrepresentable: "any" });
  const walk = (part: z.core.JSONSchema.BaseSchema, path: string[]): [string, number][] => {
    if (part.type === "number" || part.type === "integer") {
      return [[path.join("."), part.minimum ?? Number.NEGATIVE_INFINITY]];
    }
    return Object.entries(part.properties ?? {}).flatMap(([name, inner]) =>
      walk(inner as z.core.JSONSchema.BaseSchema, [...path, name]),
    );
  };
  return walk(described, under ? [under] : []);
}

/** What each number field may be at least, by its name, from the schemas and ranges that judge it. */
const LEAST = new Map<string, number>([
  ...leastOf(heaterSchema, "heater"),
  ...leastOf(entrySchema),
  ...leastOf(tuneSchema),
  ...Object.entries(RANGES).map(([name, [least]]) => [name, least] as const),
  ["elevation.from_m", ELEVATIONS_m[0]],
  ["elevation.to_m", ELEVATIONS_m[0]],
  ["temperature.from_C", TEMPERATURES_C[0]],
  ["temperature.to_C", TEMPERATURES_C[0]],
  // What a meter shows, at any end and in any kind of reading.
  ["ppm", 0],
  ["co_ppm", 0],
  // Hours, shares, sizes and counts, each refused below 0 where it is typed.
  ...["tonight.hours", "tonight.power_pct", "window.rich_pct", "window.lean_pct"].map(
    (name) => [name, 0] as const,
  ),
  ...["night.hours", "night.power_share", "nights", "heater.battery_Ah"].map(
    (name) => [name, 0] as const,
  ),
]);

/** "stops.0.elevation_m" is an elevation like any other. */
function leastIn(name: string): number {
  const [last = ""] = name.split(".").slice(-1);
  const byLast = [...LEAST].find(([path]) => path.split(".").at(-1) === last)?.[1];
  const least = LEAST.get(name) ?? byLast;
  if (least === undefined) throw new Error(`Say what ${name} may be at least: no schema knows it.`);
  return least;
}

/** Every view that asks for numbers, with all of its fields shown. */
const VIEWS: Record<string, (page: Page) => Promise<unknown>> = {
  atlas: async (page) => {
    await openFiner(page);
    await field(page, "heater.dose_uL").waitFor();
  },
  trip: async (page) => {
    await field(page, "new.elevation_m").fill("1200");
    await field(page, "new.elevation_m").press("Enter");
    await openStop(page, 0);
    await openTripHeater(page);
  },
  onsite: async (page) => {
    await field(page, "low_before_Hz").waitFor();
    await unfold(page);
  },
  "onsite reading": async (page) => {
    await field(page, "low_before_Hz").waitFor();
    await begin(page);
    await press(page, onsite.step.isSet);
    await field(page, "co_ppm").waitFor();
  },
  "logbook heater": async (page) => {
    await press(page, logbookWords.heater.add);
    await field(page, "heater.tank_L").waitFor();
  },
  logbook: async (page) => {
    await press(page, logbookWords.heater.add);
    await field(page, "heater.name").fill("Hut");
    await press(page, logbookWords.heater.save);
    await press(page, logbookWords.entry.add.tune);
    await field(page, "low.ppm").waitFor();
    await field(page, "tonight.elevation_m").waitFor();
  },
  card: (page) => field(page, "temperature.to_C").waitFor(),
  share: async (page) => {
    await field(page, "low.nothing_shown").check();
    await field(page, "low.co_below_ppm").waitFor();
  },
};

interface NumberInput {
  name: string;
  /** Buttons of the page's own that type into it. */
  keys: string;
  inputMode: string;
  type: string;
  placeholder: string;
}

const numberInputs = (page: Page): Promise<NumberInput[]> =>
  page.locator("input").evaluateAll((inputs) =>
    (inputs as HTMLInputElement[])
      .filter((input) => input.inputMode !== "" || input.type === "number")
      .map((input) => {
        const { name, inputMode, type, placeholder } = input;
        const keys = input.closest(".keyed")?.querySelector(".keys")?.textContent ?? "";
        return { name, keys, inputMode, type, placeholder };
      }),
  );

test.each(Object.keys(VIEWS))(
  "%s: a field that may lie below 0 has the keyboard with a minus sign, any other the keypad, or the page's own keys",
  async (view) => {
    const { page, close } = await openPage(browser, `${atlas.url}/#/${view.split(" ")[0]}`);
    await VIEWS[view]?.(page);
    const inputs = await numberInputs(page);
    expect(inputs.length).toBeGreaterThan(0);
    for (const { name, keys, inputMode, type, placeholder } of inputs) {
      // A number typed with a comma, or a true minus sign, would be lost in a field of that type.
      expect([name, type]).toEqual([name, "text"]);
      if (inputMode === "none") {
        for (const digit of "0123456789")
          expect([name, keys]).toEqual([name, expect.stringContaining(digit)]);
        expect([name, keys.includes("−")]).toEqual([name, leastIn(name) < 0]);
      } else expect([name, inputMode]).toEqual([name, leastIn(name) < 0 ? "text" : "decimal"]);
      // What the field itself shows as an example can be typed on its keypad.
      if (inputMode !== "text")
        expect([name, placeholder]).toEqual([name, placeholder.match(/^[\d.,]*$/)?.[0]]);
    }
    await close();
  },
);

test("the month of a tune, which has a hyphen in it, does not ask for a keypad of digits", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/share`);
  await field(page, "tuned_on").waitFor();
  await expect
    .poll(() => field(page, "tuned_on").evaluate((i) => (i as HTMLInputElement).inputMode))
    .toBe("");
  await close();
});

test("a temperature below 0 is taken with any minus sign and with a decimal comma; a sign alone is no error until the field is left", async () => {
  const { page, close } = await openPage(browser, atlas.url);
  const temperature = field(page, "air.temperature_C");
  const asked = () =>
    page.evaluate(() => JSON.parse(localStorage.getItem("hypsotune.question") ?? "{}").air);
  await temperature.waitFor();
  for (const typed of ["-10,5", "−10.5", "–10,5", "—10,5", "‑10,5", "- 10,5"]) {
    await temperature.fill("");
    await temperature.fill(typed);
    expect([typed, await asked()]).toEqual([typed, { temperature_C: -10.5 }]);
    await expect.poll(() => temperature.getAttribute("aria-invalid")).toBe(null);
  }
  await temperature.fill("");
  await temperature.pressSequentially("−");
  await expect.poll(() => temperature.getAttribute("aria-invalid")).toBe(null);
  await temperature.blur();
  await page.getByText(t.site.notNumber).waitFor();
  await temperature.fill("−3");
  await expect.poll(() => temperature.getAttribute("aria-invalid")).toBe(null);
  await expect.poll(() => asked()).toEqual({ temperature_C: -3 });
  await close();
});
