import { parse } from "csv-parse/sync";
import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { trip as words } from "../../client/texts/trip.ts";
import { textOf } from "../../client/trip/link.ts";
import { NEW_TRIP } from "../../client/trip/trip.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { planTrip, type TripAnswer } from "../../model/trip/trip.ts";
import { choosePlace, field, openPage } from "./open-page.ts";
import { readPdf } from "./pdf.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";

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

async function typeStop(page: Page, stop: (typeof STOPS)[number]): Promise<void> {
  await field(page, "new.name").fill(stop.name);
  await field(page, "new.elevation_m").fill(String(stop.elevation_m));
  if (stop.temperature_C !== undefined)
    await field(page, "new.temperature_C").fill(String(stop.temperature_C));
  await field(page, "new.elevation_m").press("Enter");
  await page.getByText(new RegExp(`Stop \\d: ${stop.name}$`)).waitFor();
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

async function expectShown(page: Page, answer: TripAnswer): Promise<void> {
  await expect.poll(() => page.locator(".trip-table tbody tr").count()).toBe(answer.stops.length);
  const close = (shown: number[], right: number[]) => {
    expect(shown).toHaveLength(right.length);
    for (const [i, value] of shown.entries()) expect(value).toBeCloseTo(right[i] as number, 9);
  };
  close(
    await numbers(page, ".trip-table td[data-value]", "value"),
    answer.stops.flatMap(({ start }) => [start.low.pump_Hz, start.high.pump_Hz]),
  );
  close(
    await numbers(page, ".trip-table td[data-shift]", "shift"),
    answer.stops.flatMap((_, i) => [
      answer.one.low.shifts_pct[i] as number,
      answer.one.high.shifts_pct[i] as number,
    ]),
  );
  close(await numbers(page, "[data-tune=one] strong", "value"), [
    answer.one.low.pump_Hz,
    answer.one.high.pump_Hz,
  ]);
  expect(await page.locator(".plan").getAttribute("data-tunes")).toBe(String(answer.legs.length));
}

test("three stops typed: start tunes, one tune, the fewest with the change-over, fuel; the link opens the same elsewhere", async () => {
  const { page, close } = await openTrip();
  await page.getByText(words.list.empty).waitFor();
  for (const stop of STOPS) await typeStop(page, stop);
  await field(page, "heater.dose_uL").fill("22");
  const answer = await asked(STOPS, 22);
  await expectShown(page, answer);
  await page.getByText(words.plan.no("12", "25")).waitFor();
  const change = answer.legs[1]?.first ?? -1;
  await page.getByText(words.plan.changeAt(STOPS[change]?.name ?? "")).waitFor();
  await page.getByText(/is used, from the standard atmosphere/).waitFor();
  await page.getByText(/L of diesel, [\d.]+ Ah at 12 V/).waitFor();
  await page.getByText(words.nights.noTank).waitFor();
  const { fuel_L } = answer.total;
  await field(page, "heater.supply_V").selectOption("24");
  const tank = async (tank_L: number) => {
    await field(page, "heater.tank_L").fill(tank_L.toFixed(1));
    return page.locator(".nights [data-tight]");
  };
  // Nearly twice what is needed, then just enough.
  const roomy = await tank(Math.ceil(fuel_L) * 2);
  await page
    .getByText(/^A full tank of .* lasts all of them, with [\d.]+ L \([45]\d %\) to spare/)
    .waitFor();
  expect(await roomy.getAttribute("data-tight")).toBe("false");
  const full = Math.ceil(10 * fuel_L) / 10 + 0.1;
  const tight = await tank(full);
  await page.getByText(/lasts all of them only just: 0\.[12] L \([1-5] %\) to spare/).waitFor();
  expect(await tight.getAttribute("data-tight")).toBe("true");
  await page.getByText(words.nights.tightWhy).waitFor();
  await tank(fuel_L - 0.1);
  await page.getByText(words.nights.refill("High lake", 1)).waitFor();
  const nights = page.getByText(/L of diesel, [\d.]+ Ah at 24 V/);
  await nights.waitFor();

  const link = await field(page, "link").inputValue();
  expect(link).toContain("/#/trip/1.");
  const fresh = await openPage(browser, link);
  await expectShown(fresh.page, answer);
  expect(await fresh.page.locator(".trip-table").textContent()).toBe(
    await page.locator(".trip-table").textContent(),
  );
  expect(await field(fresh.page, "heater.dose_uL").inputValue()).toBe("22");
  expect(await fresh.page.locator(".refills").textContent()).toBe(
    await page.locator(".refills").textContent(),
  );
  await fresh.page.getByText((await nights.textContent()) ?? "").waitFor();
  await fresh.page.getByText(words.keep.opened(3)).waitFor();
  await fresh.close();

  await page.reload();
  await expectShown(page, answer);
  await close();
});

test("order by keyboard, shifts of a stop's own tune, a place by search, one removed", async () => {
  const { page, close } = await openTrip();
  for (const stop of STOPS.slice(0, 2)) await typeStop(page, stop);
  await button(page, words.list.earlierThan("Pass")).press("Enter");
  await expectShown(page, await asked([STOPS[1] as object, STOPS[0] as object]));
  await page.waitForFunction(() => (document.activeElement as HTMLElement)?.dataset.stop === "0");
  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await page.getByText(/Stop 3: Leadville/).waitFor();
  await field(page, "shown").selectOption("0");
  const shifts = await numbers(page, ".trip-table td[data-shift]", "shift");
  // What can be set there is no more than half a step off.
  for (const shift of shifts.slice(0, 2)) expect(Math.abs(shift)).toBeLessThan(7);
  const rows = await page.locator(".trip-table tbody tr").allTextContents();
  expect(rows[1]).toMatch(/\d+ % lean/);
  expect(rows[2]).toMatch(/\d+ % rich/);
  const bars = await numbers(page, ".profile .drawing .bar", "shift");
  expect(bars).toEqual(shifts);
  await button(page, words.list.removeThis("Pass")).click();
  await expect.poll(() => page.locator(".trip-table tbody tr").count()).toBe(2);
  await button(page, words.list.clear).click();
  await page.getByText(words.list.empty).waitFor();
  await button(page, words.list.bringBack).click();
  await expect.poll(() => page.locator(".trip-table tbody tr").count()).toBe(2);
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
  expect(await page.locator(".stops li").count()).toBe(0);
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
  await page.getByText(/Stop 1: Pass & hut/).waitFor();
  await page.getByText(/Stop 2: No elevation/).waitFor();
  await page.getByText(/Estimated from the position, ±/).waitFor();
  const elevation = Number(await field(page, "stops.1.elevation_m").inputValue());
  expect(Math.abs(elevation - 3097)).toBeLessThan(300);
  // What Chromium makes of bad XML is a page with a style of its own, which our policy refuses.
  await close(/inline style/);
});

test("a hostile or damaged link is refused in words, and the trip kept here stays", async () => {
  const first = await openTrip();
  await typeStop(first.page, STOPS[0] as never);
  await first.page.goto(`${atlas.url}/#/trip/1.PHNjcmlwdD4`);
  await first.page.getByRole("alert").getByText(words.refused.linkDamaged).waitFor();
  expect(await first.page.locator(".stops li").count()).toBe(1);
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
  await page.locator('[name="stops.3.nights"]').fill("3");
  await page.getByText(words.nights.count(6)).waitFor();
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

test("verdict, tune, table, chart, paper and file say the same figures, of rates that can be set", async () => {
  const { page, close } = await openTrip(`/${textOf({ ...NEW_TRIP, stops: FOUR })}`);
  await page.getByText(words.plan.yes("12", "25")).waitFor();
  const low = await numbers(page, ".trip-table td[data-shift]", "shift");
  const ends = { low: low.filter((_, i) => i % 2 === 0), high: low.filter((_, i) => i % 2 === 1) };
  const all = [...ends.low, ...ends.high];
  expect(Math.max(...all)).toBeLessThanOrEqual(12);
  expect(Math.min(...all)).toBeGreaterThanOrEqual(-25);
  // One tune, said once; its rates lie on the controller's steps, and nothing is said to be exact.
  const plan = (await page.locator(".plan").textContent()) ?? "";
  expect([...plan.matchAll(/[\d.]+ Hz/g)]).toHaveLength(2);
  for (const [rate] of plan.matchAll(/[\d.]+(?= Hz)/g)) expect(rate).toMatch(/^\d\.\d$/);
  const said = shiftsIn(plan);
  expect(said.slice(0, 4)).toEqual([
    ...[Math.min(...ends.low), Math.max(...ends.low)],
    ...[Math.min(...ends.high), Math.max(...ends.high)],
  ]);
  const cells = await page.locator(".trip-table td[data-shift]").allTextContents();
  expect(cells.join(" ")).not.toContain(words.result.beyond);
  expect(shiftsIn(cells.join(" "))).toEqual(low);
  expect(await numbers(page, ".profile .drawing .bar", "shift")).toEqual(low);
  const larger = ends.low.map((shift, i) => {
    const other = ends.high[i] as number;
    return Math.abs(shift) > Math.abs(other) ? shift : other;
  });
  const drawn = await page.locator(".profile .drawing text").allTextContents();
  expect(shiftsIn(drawn.join(" "))).toEqual(larger);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    button(page, words.keep.csv).click(),
  ]);
  const csv = Buffer.concat(await (await download.createReadStream()).toArray()).toString("utf8");
  const lines = parse(csv, { columns: true }) as Record<string, string>[];
  for (const end of ["low", "high"] as const) {
    for (const tune of ["one_tune", "fewest_tunes"]) {
      expect(lines.map((line) => Number(line[`${end}_${tune}_shift_pct`]))).toEqual(ends[end]);
    }
  }
  const { letters } = readPdf(await page.pdf({ format: "A4" }));
  const facts = await page.locator(".verdict, .plan dd, .plan [data-standing]").allTextContents();
  for (const text of [...facts, ...cells, ...drawn]) {
    expect(letters).toContain(text.replaceAll(/\s/g, ""));
  }
  await close();
});

test("a yes at the window's very edge is called tight, with the room that is left", async () => {
  const { page, close } = await openTrip(`/${textOf({ ...NEW_TRIP, stops: FOUR })}`);
  expect(await page.locator(".plan").getAttribute("data-standing")).toBe("roomy");
  // The window drawn in until the model finds no room in it any more.
  const fit = await atlas.get<PublishedFit>("/fit");
  const windows = Array.from({ length: 12 }, (_, i) => ({ rich_pct: 12 - i, lean_pct: 25 - i }));
  const narrow = windows.find((window) => {
    const { one } = planTrip(fit, { ...NEW_TRIP, stops: FOUR, window });
    return one.edge.standing === "tight";
  });
  await field(page, "window.rich_pct").fill(String(narrow?.rich_pct));
  await field(page, "window.lean_pct").fill(String(narrow?.lean_pct));
  await page.locator('.plan[data-standing="tight"]').waitFor();
  const edge = (await page.locator(".plan [data-standing]").first().textContent()) ?? "";
  expect(edge).toMatch(/^Tight: .*, (only )?[0-3] % from the limit/);
  await page.getByText(/^Yes, but only just: with one tune/).waitFor();
  await page.locator(".trip-table .beyond").first().waitFor();
  expect(await page.locator(".trip-table .beyond").first().textContent()).toMatch(
    /^tight: [0-3] % from the limit$/,
  );
  await close();
});

for (const locale of ["en-US", "de-DE", "es-ES"]) {
  test(`a trip on real paper in ${locale}: the answer from the first page on, every sign filled, every caution, nothing for the hand`, async () => {
    const trip = { ...NEW_TRIP, heater: { heat_kW: 5, dose_uL: 22, tank_L: 6 }, stops: FOUR };
    const { page, close } = await openPage(browser, `${atlas.url}/#/trip/${textOf(trip)}`, {
      locale,
      colorScheme: "dark",
    });
    await page.locator(".trip-table").waitFor();
    await page.locator(".cautions").waitFor();
    const texts = async (selector: string) =>
      (await page.locator(selector).allTextContents()).map((text) => text.replaceAll(/\s/g, ""));
    const signs = await page.locator(".swatch, .profile .drawing .bar").count();
    expect(signs).toBeGreaterThan(12);
    for (const format of ["A4", "Letter"]) {
      const pdf = readPdf(await page.pdf({ format, printBackground: false }));
      const [first = ""] = pdf.page_letters;
      for (const text of await texts(".verdict, .on-paper, .plan dd, .profile figcaption")) {
        expect(first, format).toContain(text);
      }
      // A shape of no height has no pattern to show: a shift of 0.
      const flat = await page.locator('.profile .drawing .bar[data-shift="0"]').count();
      expect(pdf.patterns, format).toBeGreaterThanOrEqual(signs - flat);
      for (const text of [
        ...(await texts(".cautions p, .cautions h3, .cautions li")),
        ...(await texts(".road li")),
        ...(await texts(".trip-table td, .trip-table th")),
        ...(await texts(".nights td, .nights th")),
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
    expect(await page.locator(".cautions details").getAttribute("open")).toBeNull();
    await close();
  });
}

// test/browser/views.test.ts looks at the whole view in both themes, wide and narrow.
test("cautions of the road stand below the trip", async () => {
  const { page, close } = await openTrip();
  for (const line of words.cautions.lines) await page.getByText(line).waitFor();
  await close();
});
