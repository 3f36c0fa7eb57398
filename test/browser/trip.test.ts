import { parse } from "csv-parse/sync";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { heaterWords } from "../../client/texts/heater.ts";
import { trip as words } from "../../client/texts/trip.ts";
import { textOf } from "../../client/trip/link.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { planTrip, type TripAnswer } from "../../model/trip/trip.ts";
import type { NearAnswer } from "../../server/contract.ts";
import { sideways } from "./faults.ts";
import {
  choosePlace,
  field,
  openPage,
  openStop,
  openTripHeater,
  shownText,
  shownTexts,
} from "./open-page.ts";
import { readPdf } from "./pdf.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
});

const STOPS = [
  { name: "Harbour", elevation_m: 5, temperature_C: 8 },
  { name: "Pass", elevation_m: 2300, temperature_C: -9 },
  { name: "High lake", elevation_m: 4600 },
];
const openTrip = (last = "") => openPage(browser, `${atlas.url}/#/trip${last}`);
const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });

/** The button over a stop's column of the drawing. */
const column = (page: Page, name: string) =>
  page.getByRole("button", { name: new RegExp(`^Stop \\d+: ${name}\\.`) });

/** How often tunes in similar air were asked for. */
const nearAsked = (page: Page) =>
  page.evaluate(
    () =>
      performance.getEntriesByType("resource").filter(({ name }) => /tunes.near/.test(name)).length,
  );

async function typeStop(page: Page, stop: (typeof STOPS)[number]): Promise<void> {
  await field(page, "new.name").fill(stop.name);
  await field(page, "new.elevation_m").fill(String(stop.elevation_m));
  if (stop.temperature_C !== undefined)
    await field(page, "new.temperature_C").fill(String(stop.temperature_C));
  await field(page, "new.elevation_m").press("Enter");
  await column(page, stop.name).waitFor();
}

/** What the model says of the same stops from the fit this atlas publishes. */
async function asked(stops: object[] = STOPS, dose_uL?: number): Promise<TripAnswer> {
  const fit = await atlas.get<PublishedFit>("/fit");
  return planTrip(fit, { ...NEW_TRIP, heater: { heat_kW: 5, dose_uL }, stops: stops as never });
}

const numbers = (page: Page, selector: string, key: string) =>
  page
    .locator(selector)
    .evaluateAll((all, name) => all.map((one) => Number((one as HTMLElement).dataset[name])), key);

/** Both ends' shifts, stop by stop, of the fewest tunes. */
const shiftsOfLegs = ({ legs }: TripAnswer): number[] =>
  legs.flatMap(({ tune: { low, high } }) =>
    low.shifts_pct.flatMap((shift, i) => [shift, high.shifts_pct[i] as number]),
  );

async function expectShown(page: Page, answer: TripAnswer): Promise<void> {
  await expect.poll(() => page.locator("[data-stop-button]").count()).toBe(answer.stops.length);
  const close = (shown: number[], right: number[]) => {
    expect(shown).toHaveLength(right.length);
    for (const [i, value] of shown.entries()) expect(value).toBeCloseTo(right[i] as number, 9);
  };
  close(
    await numbers(page, ".trip-table td[data-value]", "value"),
    answer.stops.flatMap(({ start }) => [start.low.pump_Hz, start.high.pump_Hz]),
  );
  close(await numbers(page, ".trip-table td[data-shift]", "shift"), shiftsOfLegs(answer));
  // Drawn are the tunes that serve: each stop has the rates of its own.
  const set = answer.legs.flatMap(({ first, last, tune }) =>
    new Array<string>(last - first + 1).fill(
      `${tune.low.pump_Hz.toFixed(1)} / ${tune.high.pump_Hz.toFixed(1)}`,
    ),
  );
  await expect.poll(() => shownTexts(page.locator(".profile .rates"))).toEqual(set);
  await expect
    .poll(() => numbers(page, ".profile .drawing .bar", "shift"))
    .toEqual(shiftsOfLegs(answer));
  await expect
    .poll(() => page.locator(".trip-answer").getAttribute("data-tunes"))
    .toBe(String(answer.legs.length));
}

test("three stops typed: start tunes, one tune, the fewest with the change-over, fuel; the link opens the same elsewhere", async () => {
  const { page, close } = await openTrip();
  await page.getByText(words.list.empty).waitFor();
  for (const stop of STOPS) await typeStop(page, stop);
  await openTripHeater(page);
  await field(page, "heater.dose_uL").fill("22");
  const answer = await asked(STOPS, 22);
  await expectShown(page, answer);
  await page.getByText(words.plan.no(answer.legs.length)).waitFor();
  const change = answer.legs[1]?.first ?? -1;
  await page.getByText(words.plan.changeAt(STOPS[change]?.name ?? ""), { exact: true }).waitFor();
  await openStop(page, 2);
  await page.getByText(/is used, from the standard atmosphere/).waitFor();
  // Tunes like what stands there, asked for once they are wanted.
  const { tunes } = await atlas.get<NearAnswer>("/tunes/near?heat_kW=5&elevation_m=4600");
  const near = page.locator(".open-stop details");
  await expect.poll(() => nearAsked(page)).toBe(0);
  await near.getByText(heaterWords.near.title, { exact: true }).click();
  await expect.poll(() => near.locator("tbody tr").count()).toBe(tunes.length);
  await expect.poll(() => nearAsked(page)).toBe(1);
  await expect.poll(() => sideways(page)).toBe(0);
  // What the tank, or the battery, leaves of itself, and when that is little.
  const supply = page.locator(".supply dd");
  const { fuel_L, battery_Ah } = answer.total;
  for (const [i, name, needs] of [
    [0, "heater.tank_L", fuel_L],
    [1, "heater.battery_Ah", battery_Ah],
  ] as const) {
    const holds = async (amount: number) => {
      await field(page, name).fill(amount.toFixed(1));
      return supply.nth(i);
    };
    await expect.poll(() => shownText(supply.nth(i))).toMatch(/^[\d.]+ (L|Ah)$/);
    const roomy = await holds(Math.ceil(needs) * 2);
    await expect.poll(() => shownText(roomy)).toMatch(/ of [\d.]+ (L|Ah): [45]\d % to spare$/);
    await expect.poll(() => roomy.getAttribute("data-tight")).toBe("false");
    const tight = await holds(Math.ceil(10 * needs) / 10 + 0.1);
    await expect.poll(() => shownText(tight)).toMatch(/: tight, only [0-5] % to spare$/);
    await expect.poll(() => tight.getAttribute("data-tight")).toBe("true");
    await page.getByText(words.nights[i === 0 ? "tank" : "battery"].tightWhy).waitFor();
    const short = await holds(needs - 0.1);
    await expect.poll(() => shownText(short)).toMatch(/is more than [\d.]+ (L|Ah)$/);
    await page
      .locator(`[data-of=${i === 0 ? "tank" : "battery"}]`)
      .getByText(words.nights.refill("High lake", 1))
      .waitFor();
  }
  // The same power at twice the voltage: half the charge, and the battery lasts.
  await field(page, "heater.supply_V").selectOption("24");
  await expect.poll(() => shownText(supply.nth(1))).toMatch(/: 4\d % to spare$/);

  const link = await field(page, "link").inputValue();
  expect(link).toContain("/#/trip/1.");
  const fresh = await openPage(browser, link);
  await expectShown(fresh.page, answer);
  await expect
    .poll(() => shownText(fresh.page.locator(".trip-table")))
    .toBe(await shownText(page.locator(".trip-table")));
  await expect.poll(() => field(fresh.page, "heater.dose_uL").inputValue()).toBe("22");
  await expect
    .poll(() => shownText(fresh.page.locator(".supply")))
    .toBe(await shownText(page.locator(".supply")));
  await fresh.page.getByText(words.keep.opened(3)).waitFor();
  await fresh.close();

  await page.reload();
  await expectShown(page, answer);
  await close();
});

test("order by keyboard, shifts of a stop's own tune, a place by search, one removed", async () => {
  const { page, close } = await openTrip();
  for (const stop of STOPS.slice(0, 2)) await typeStop(page, stop);
  const focused = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
  await column(page, "Pass").press("Enter");
  // What was opened is heard first.
  await page.locator("#open-stop:focus").waitFor();
  await button(page, words.list.earlierThan("Pass")).press("Enter");
  await expectShown(page, await asked([STOPS[1] as object, STOPS[0] as object]));
  await expect.poll(focused).toBe(words.list.laterThan("Pass"));
  await page.getByText(words.list.nowAt("Pass", 1, 2)).waitFor();
  await button(page, words.list.close).press("Enter");
  await page.locator('[data-stop-button="0"]:focus').waitFor();
  await expect.poll(() => page.locator(".open-stop").count()).toBe(0);
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await column(page, "Leadville, .*").waitFor();
  await field(page, "shown").selectOption("0");
  const shifts = await numbers(page, ".trip-table td[data-shift]", "shift");
  // What can be set there is no more than half a step off.
  for (const shift of shifts.slice(0, 2)) expect(Math.abs(shift)).toBeLessThan(7);
  const rows = await shownTexts(page.locator(".trip-table tbody tr"));
  expect(rows[1]).toMatch(/\d+ % lean/);
  expect(rows[2]).toMatch(/\d+ % rich/);
  const bars = await numbers(page, ".profile .drawing .bar", "shift");
  expect(bars).toEqual(shifts);
  // A new tune at each stop is half a step off at most, and each has its own rates.
  await field(page, "shown").selectOption("each");
  const each = await numbers(page, ".profile .drawing .bar", "shift");
  for (const shift of each) expect(Math.abs(shift)).toBeLessThan(7);
  expect(new Set(await shownTexts(page.locator(".profile .rates"))).size).toBe(3);
  await column(page, "Pass").click();
  await button(page, words.list.removeThis("Pass")).click();
  const columns = page.locator("[data-stop-button]");
  await expect.poll(() => columns.count()).toBe(2);
  await page.locator('[data-stop-button="0"]:focus').waitFor();
  await button(page, words.list.clear).click();
  await page.getByText(words.list.empty).waitFor();
  await button(page, words.list.bringBack).click();
  await expect.poll(() => columns.count()).toBe(2);
  await close();
});

const fileOf = (name: string, text: string) => ({
  name,
  mimeType: "text/plain",
  buffer: Buffer.from(text, "utf8"),
});

const GPX = `<?xml version="1.0"?>
<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1">
  <wpt lat="46.5" lon="7.9"><ele>2300</ele><name>Pass &amp; hut</name></wpt>
  <rte><rtept lat="39.25" lon="-106.29"><name>No elevation</name></rtept></rte>
</gpx>`;

test("a bad CSV is refused with its line and leaves the trip as it was; mended it is taken", async () => {
  const { page, close } = await openTrip();
  const bad = "name,elevation_m,temperature_C\nHarbour,5,8\nPass,high,-9\n";
  await field(page, "file").setInputFiles(fileOf("trip.csv", bad));
  await page.getByText(/^Line 3: elevation_m is not a number: “high”/).waitFor();
  await expect.poll(() => page.locator("[data-stop-button]").count()).toBe(0);
  await field(page, "file").setInputFiles(fileOf("trip.csv", bad.replace("high", "2300")));
  await page.getByText(words.add.added(2)).first().waitFor();
  await expectShown(page, await asked(STOPS.slice(0, 2)));
  await close();
});

test("GPX: waypoints and route points; an elevation is estimated and widens the band; bad XML is refused", async () => {
  const { page, close } = await openTrip();
  const refused: [string, RegExp][] = [
    [GPX.replace("</rte>", ""), /Line \d+: this is not XML/],
    [GPX.replace("<gpx", '<!DOCTYPE gpx [<!ENTITY a "b">]><gpx'), /document type/],
    [GPX.replaceAll("gpx", "kml"), /not GPX/],
    [GPX.replace("2300", "high"), /Line 3: ele is not a number/],
    [GPX.replaceAll(/wpt|rtept/g, "trkpt"), /recorded track only/],
  ];
  for (const [text, reason] of refused) {
    await field(page, "file").setInputFiles(fileOf("trip.gpx", text));
    await page.getByText(reason).waitFor();
  }
  await field(page, "file").setInputFiles(fileOf("trip.gpx", GPX));
  await column(page, "Pass & hut").waitFor();
  await openStop(page, 1);
  await page.getByText(/Estimated from the position, ±/).waitFor();
  const elevation = Number(await field(page, "stops.1.elevation_m").inputValue());
  expect(Math.abs(elevation - 3097)).toBeLessThan(300);
  // What Chromium makes of bad XML is a page with a style of its own, which our policy refuses.
  await close(/inline style|style-src-attr/);
});

test("a hostile or damaged link is refused in words, and the trip kept here stays", async () => {
  const first = await openTrip();
  await typeStop(first.page, STOPS[0] as never);
  await first.page.goto(`${atlas.url}/#/trip/1.PHNjcmlwdD4`);
  await first.page.getByRole("alert").getByText(words.refused.linkDamaged).waitFor();
  await expect.poll(() => first.page.locator("[data-stop-button]").count()).toBe(1);
  await first.page.goto(`${atlas.url}/#/trip/9.AAAA`);
  await first.page.getByRole("alert").getByText(words.refused.linkNewer).waitFor();
  await first.close();
});

test("with the network gone the trip goes on, from the fit kept", async () => {
  const { page, close } = await openTrip();
  await typeStop(page, STOPS[0] as never);
  await page.context().setOffline(true);
  await typeStop(page, STOPS[1] as never);
  await expectShown(page, await asked(STOPS.slice(0, 2)));
  await close();
});

test("CSV, JSON, GPX and GeoJSON to take along", async () => {
  const { page, close } = await openTrip();
  for (const stop of STOPS) await typeStop(page, stop);
  // Where no map is drawn the still picture takes a point as well.
  await page.getByText(words.map.open).click();
  await page.locator('.land-picture[data-drawn="yes"] canvas').click();
  await openStop(page, 3);
  await field(page, "stops.3.nights").fill("3");
  await expect.poll(() => shownText(page.locator(".profile .nights"))).toBe("3 nights");
  await page.getByText(words.keep.unplaced(3)).waitFor();
  for (const [name, sign] of [
    [words.keep.csv, "High lake,4600"],
    [words.keep.json, '"name": "High lake"'],
    [words.keep.gpx, "<trip:nights>3</trip:nights>"],
    [words.keep.geojson, '"nights": 3'],
  ] as const) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      button(page, name).click(),
    ]);
    const chunks = await (await download.createReadStream()).toArray();
    expect(Buffer.concat(chunks).toString("utf8")).toContain(sign);
  }
  await close();
});

test("on a phone the form stays under the thumb while the answer grows above it", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/trip`, { viewport: PHONE });
  const elevation = field(page, "new.elevation_m");
  const top = async () => (await elevation.boundingBox())?.y ?? Number.NaN;
  for (const stop of STOPS) {
    await elevation.fill(String(stop.elevation_m));
    const before = await top();
    await elevation.press("Enter");
    await expect.poll(() => elevation.inputValue()).toBe("");
    await expect.poll(async () => Math.abs((await top()) - before)).toBeLessThan(2);
  }
  await expect.poll(() => page.locator("[data-stop-button]").count()).toBe(3);
  await close();
});

const FOUR = [
  { name: "Coast", elevation_m: 5, temperature_C: 10 },
  { name: "Village", elevation_m: 1200, temperature_C: -2 },
  { name: "Pass", elevation_m: 3000, temperature_C: -10 },
  { name: "Hut", elevation_m: 2400, temperature_C: -14 },
];

/** "12 % richer" as 12, "3 % leaner" as −3, in the order they stand. */
function shiftsIn(text: string): number[] {
  return [...text.matchAll(/(\d+) % (rich|lean)|no shift/g)].map(([, size, side]) =>
    side === undefined ? 0 : side === "rich" ? Number(size) : -Number(size),
  );
}

test("verdict, drawing, what is heard, table, paper and file say the same figures, of rates that can be set", async () => {
  const { page, close } = await openTrip(`/${textOf({ ...NEW_TRIP, stops: FOUR })}`);
  const answer = await asked(FOUR);
  const rates = `${answer.one.low.pump_Hz.toFixed(1)} / ${answer.one.high.pump_Hz.toFixed(1)}`;
  await page.getByText(words.plan.yes(rates)).waitFor();
  await page.locator(".profile .rates").first().waitFor();
  const all = await numbers(page, ".trip-table td[data-shift]", "shift");
  const ends = { low: all.filter((_, i) => i % 2 === 0), high: all.filter((_, i) => i % 2 === 1) };
  expect(Math.max(...all)).toBeLessThanOrEqual(12);
  expect(Math.min(...all)).toBeGreaterThanOrEqual(-25);
  // Its rates lie on the controller's steps, and nothing is said to be exact.
  const set = await shownTexts(page.locator(".profile .rates"));
  expect(set).toEqual(new Array(4).fill(rates));
  // The margin is that of the shift nearest to its limit.
  const room = Math.min(...all.map((shift) => Math.min(12 - shift, 25 + shift)));
  await expect
    .poll(() => shownText(page.locator(".verdict + p")))
    .toContain(`${room} % from the limit`);
  const cells = await shownTexts(page.locator(".trip-table td[data-shift]"));
  expect(cells.join(" ")).not.toContain(words.result.beyond);
  expect(shiftsIn(cells.join(" "))).toEqual(all);
  await expect.poll(() => numbers(page, ".profile .drawing .bar", "shift")).toEqual(all);
  const larger = ends.low.map((shift, i) => {
    const other = ends.high[i] as number;
    return Math.abs(shift) > Math.abs(other) ? shift : other;
  });
  const drawn = await shownTexts(page.locator(".profile .drawing text"));
  expect(shiftsIn(drawn.join(" "))).toEqual(larger);
  const heard = await shownTexts(page.locator("[data-stop-button]"));
  expect(heard.flatMap(shiftsIn)).toEqual(all);
  for (const [i, { name, elevation_m, temperature_C }] of FOUR.entries()) {
    const [low, high] = rates.split(" / ");
    for (const part of [
      `Stop ${i + 1}: ${name}.`,
      `${elevation_m.toLocaleString("en")} m`,
      `${temperature_C} °C`.replace("-", "−"),
      `${low} Hz at lowest power`,
      `${high} Hz at highest power`,
    ]) {
      expect(heard[i]).toContain(part);
    }
  }
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    button(page, words.keep.csv).click(),
  ]);
  const csv = Buffer.concat(await (await download.createReadStream()).toArray()).toString("utf8");
  const lines = parse(csv, { columns: true }) as Record<string, string>[];
  for (const end of ["low", "high"] as const) {
    for (const tune of ["one_tune", "fewest_tunes"]) {
      expect(lines.map((line) => Number(line[`${end}_${tune}_shift_pct`]))).toEqual(ends[end]);
      expect(lines.map((line) => Number(line[`${end}_${tune}_pump_Hz`]))).toEqual(
        new Array(4).fill(answer.one[end].pump_Hz),
      );
    }
  }
  const { letters } = await readPdf(await page.pdf({ format: "A4" }));
  const facts = await shownTexts(page.locator(".verdict, .verdict + p, .supply dd"));
  for (const text of [...facts, ...cells, ...drawn]) {
    expect(letters).toContain(text.replaceAll(/\s/g, ""));
  }
  await close();
});

test("a yes at the window's very edge is called tight, with the room that is left", async () => {
  const { page, close } = await openTrip(`/${textOf({ ...NEW_TRIP, stops: FOUR })}`);
  const answered = page.locator(".trip-answer");
  await expect.poll(() => answered.getAttribute("data-standing")).toBe("roomy");
  // The window drawn in until the model finds no room in it any more.
  const fit = await atlas.get<PublishedFit>("/fit");
  const windows = Array.from({ length: 12 }, (_, i) => ({ rich_pct: 12 - i, lean_pct: 25 - i }));
  const narrow = windows.find((window) => {
    const { one } = planTrip(fit, { ...NEW_TRIP, stops: FOUR, window });
    return one.edge.standing === "tight";
  });
  await openTripHeater(page);
  await field(page, "window.rich_pct").fill(String(narrow?.rich_pct));
  await field(page, "window.lean_pct").fill(String(narrow?.lean_pct));
  await page.locator('.trip-answer[data-standing="tight"]').waitFor();
  const edge = await shownText(page.locator(".verdict + p"));
  expect(edge).toMatch(/^Tight: .*, (only )?[0-3] % from the limit/);
  await page.getByText(/^One tune will do, but only just: /).waitFor();
  await expect
    .poll(() => shownText(page.locator(".trip-table .beyond").first()))
    .toMatch(/^tight: [0-3] % from the limit$/);
  // The limits drawn are those typed.
  await page
    .getByText(words.profile.window(`${narrow?.rich_pct}`, `${narrow?.lean_pct}`))
    .waitFor();
  await close();
});

test("a stop is edited where it was tapped: the drawing follows at once, and the page stays where it was", async () => {
  const { page, close } = await openPage(
    browser,
    `${atlas.url}/#/trip/${textOf({ ...NEW_TRIP, stops: FOUR })}`,
    { viewport: PHONE },
  );
  await column(page, "Pass").click();
  await field(page, "stops.2.elevation_m").waitFor();
  // Of the stop that was tapped and of no other; its heading and the drawing are both in sight.
  await expect.poll(() => page.locator('[name^="stops."]').count()).toBe(4);
  const seen = async (selector: string) => {
    const box = await page.locator(selector).boundingBox();
    return box !== null && box.y >= 0 && box.y + box.height <= PHONE.height;
  };
  await expect.poll(() => seen("#open-stop")).toBe(true);
  await expect.poll(() => seen(".profile .drawing")).toBe(true);
  await field(page, "stops.2.elevation_m").fill("3900");
  await field(page, "stops.2.temperature_C").fill("-20");
  const changed = FOUR.map((stop, i) =>
    i === 2 ? { ...stop, elevation_m: 3900, temperature_C: -20 } : stop,
  );
  await expectShown(page, await asked(changed));
  await expect.poll(() => shownTexts(page.locator(".profile .elevation"))).toContain("3,900 m");
  await expect.poll(() => shownTexts(page.locator(".profile .night"))).toContain("−20 °C");
  await expect.poll(() => column(page, "Pass").getAttribute("aria-expanded")).toBe("true");
  await column(page, "Pass").click();
  await expect.poll(() => page.locator(".open-stop").count()).toBe(0);
  await close();
});

for (const locale of ["en-US", "de-DE", "es-ES"]) {
  test(`a trip on real paper in ${locale}: the answer from the first page on, every sign filled, every caution, nothing for the hand`, async () => {
    const trip = {
      ...NEW_TRIP,
      heater: { heat_kW: 5, dose_uL: 22, tank_L: 6, battery_Ah: 100 },
      stops: FOUR,
    };
    const { page, close } = await openPage(browser, `${atlas.url}/#/trip/${textOf(trip)}`, {
      locale,
      colorScheme: "dark",
    });
    await page.locator(".profile .rates").first().waitFor();
    await page.locator(".cautions").waitFor();
    const texts = async (selector: string) =>
      (await shownTexts(page.locator(selector))).map((text) => text.replaceAll(/\s/g, ""));
    const signs = await page.locator(".swatch, .profile .drawing .bar").count();
    expect(signs).toBeGreaterThan(12);
    for (const format of ["A4", "Letter"]) {
      const pdf = await readPdf(await page.pdf({ format, printBackground: false }));
      const [first = ""] = pdf.page_letters;
      for (const text of await texts(
        ".verdict, .on-paper, .verdict + p, .profile .drawing text, .supply dd, .profile-key .signs",
      )) {
        expect(first, format).toContain(text);
      }
      // A shape of no height has no pattern to show: a shift of 0.
      const flat = await page.locator('.profile .drawing .bar[data-shift="0"]').count();
      expect(pdf.patterns, format).toBeGreaterThanOrEqual(signs - flat);
      for (const text of [
        ...(await texts(".cautions p, .cautions h3, .cautions li")),
        ...(await texts(".road li")),
        ...(await texts(".trip-table td, .trip-table th")),
      ]) {
        expect(pdf.letters, format).toContain(text);
      }
      for (const text of [
        ...(await texts(".languages button, nav a, .trip button, .offline summary")),
        ...(await texts(".trip label")),
      ]) {
        // A word of the page may be part of what is printed; a whole row of them is not.
        if (text.length > 8) expect(pdf.letters, format).not.toContain(text);
      }
      expect(pdf.letters).not.toContain((await texts(".languages button")).join(""));
      expect(
        pdf.page_letters.every((letters) => letters.length > 50),
        format,
      ).toBe(true);
    }
    // On the screen it is as it was.
    await expect.poll(() => page.locator(".cautions details").getAttribute("open")).toBeNull();
    await close();
  });
}

// test/browser/views.test.ts looks at the whole view in both themes, wide and narrow.
test("cautions of the road stand below the trip", async () => {
  const { page, close } = await openTrip();
  for (const line of words.cautions.lines) await page.getByText(line).waitFor();
  await close();
});
