import { wcagLuminance } from "culori";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { channels, PALETTES } from "../../client/map/palette.ts";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { heaterWords } from "../../client/texts/heater.ts";
import { mapWords } from "../../client/texts/map.ts";
import { ENDS } from "../../model/end.ts";
import { settablePairsOf } from "../../model/settable.ts";
import type { StartTune } from "../../model/start.ts";
import type { CellsAnswer, CellTunesAnswer, NearAnswer } from "../../server/contract.ts";
import { axeFinds } from "./faults.ts";
import { apart, type Colour, coloursOf } from "./map-colours.ts";
import {
  askedRates,
  choosePlace,
  mapDrawn,
  type OpenPage,
  openPage,
  outOfSight,
  pointOnMap,
  rendered,
  shownRates,
  shownText,
  shownTexts,
} from "./open-page.ts";
import { addFoundHeater } from "./own-heater.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, mapBrowser, plainBrowser } from "./shared.ts";
import { goTo } from "./views.ts";

let browser: Browser;
let plain: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, plain, atlas] = await Promise.all([mapBrowser(), plainBrowser(), demoAtlas()]);
});

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true } as const;
/** Where no line is looked at: drawing in software takes its time by the pixel. */
const COARSE_PHONE: BrowserContextOptions = { ...PHONE, deviceScaleFactor: 0.5 };

/** A screen with room for the map beside the answer. */
const SMALL = { viewport: { width: 1040, height: 720 }, deviceScaleFactor: 1 } as const;

/** Taps a point in the desert: what it comes to is in sight. */
async function footOfTap(page: Page) {
  await lookAtMap(page);
  await tap(page, 21, 1);
  const foot = page.locator(".map-foot");
  const goToAnswer = foot.getByRole("button", { name: mapWords.foot.goToAnswer });
  await goToAnswer.waitFor();
  await expect.poll(() => outOfSight(page, ".map-foot")).toBeLessThan(1);
  return { foot, goToAnswer };
}

/** Scrolls as somebody who looks at the map: its heading at the top of the screen. */
async function lookAtMap(page: Page): Promise<void> {
  await mapDrawn(page);
  await page.locator("#map").evaluate((heading) => heading.scrollIntoView({ block: "start" }));
}

async function tap(page: Page, lat: number, lon: number): Promise<void> {
  const { x, y } = await pointOnMap(page, lat, lon);
  await page.touchscreen.tap(x, y);
}

/** What a cell's list says of each tune, all of owners who tuned in two places: year, elevation, air, heater, both ends. */
const rowsOf = ({ tunes }: CellTunesAnswer) =>
  tunes.map(({ elevation_m, temperature_C, heat_kW, low, high }) =>
    [
      "2026",
      `${elevation_m.toLocaleString("en")} m`,
      `${temperature_C} °C`.replace("-", "−"),
      `${heat_kW} kW`,
      ...[low, high].map(
        ({ pump_Hz, fan_rpm, co_ppm }) =>
          `${mapWords.cell.set(pump_Hz.toFixed(1), fan_rpm.toLocaleString("en"))}, ${co_ppm} ppm`,
      ),
    ].join("|"),
  );

/** The cell's list as it is read. */
async function listed(page: Page): Promise<string[]> {
  const rows = await page.locator(".cell-tunes tbody tr").all();
  return Promise.all(rows.map(async (row) => (await shownTexts(row.locator("th, td"))).join("|")));
}

/** What each end says of rates, fans and band, on Start or in the map's foot: it is the same, words before the band apart. */
const briefly = (page: Page, where: string) =>
  Promise.all(
    ENDS.map((end) =>
      page
        .locator(`${where} [data-end="${end}"]`)
        .locator("dd, .rate, .fan, .note, .times")
        .evaluateAll((parts) =>
          parts.map((part) => (part.textContent ?? "").split(": ").at(-1)).join("|"),
        ),
    ),
  );

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id);

describe("a phone's map", () => {
  let opened: OpenPage;

  beforeAll(async () => {
    opened = await openPage(browser, `${atlas.url}/#/map`, COARSE_PHONE);
    await lookAtMap(opened.page);
  });

  afterAll(() => opened?.close());

  test("a tap on a disc opens its cell: how many tunes, how high, from when, and each of them", async () => {
    const { page } = opened;
    const { cells } = await atlas.get<CellsAnswer>("/cells/world");
    const north = cells.toSorted((a, b) => b.lat - a.lat)[0] as CellsAnswer["cells"][0];
    const answer = await atlas.get<CellTunesAnswer>(`/cells/${north.cell}/tunes`);
    await tap(page, north.lat, north.lon);
    const foot = page.locator(".map-foot");
    const summary = `${mapWords.cell.count(north.tunes, north.contributors)}, ${mapWords.atElevation("0 m")}, 2026.`;
    await foot.getByText(summary).waitFor();
    await expect.poll(() => outOfSight(page, ".map-foot")).toBeLessThan(1);
    // It asks for nothing there.
    await expect
      .poll(() => page.evaluate(() => localStorage.getItem("hypsotune.question")))
      .toBe(null);
    await foot.getByRole("button", { name: mapWords.cell.show }).click();
    await expect.poll(() => focused(page)).toBe("cell-tunes");
    await page.locator(".cell-tunes tbody tr").first().waitFor();
    await expect.poll(() => listed(page)).toEqual(rowsOf(answer));
    await expect.poll(() => shownText(page.locator(".cell-tunes"))).toContain(mapWords.cell.wide);
    await expect.poll(() => outOfSight(page, ".cell-tunes h3")).toBe(0);
    expect(await axeFinds(page, { within: ".cell-tunes" })).toEqual([]);
    await page.locator(".cell-tunes").getByRole("button", { name: mapWords.foot.close }).click();
  });

  test("by keyboard a cell opens from its row in the table", async () => {
    const { page } = opened;
    const { cells } = await atlas.get<CellsAnswer>("/cells/world");
    const high = cells.toSorted((a, b) => b.elevation_m - a.elevation_m)[0];
    const answer = await atlas.get<CellTunesAnswer>(`/cells/${high?.cell}/tunes`);
    await page.getByText(`${mapWords.cells} (${cells.length})`).click();
    const name = mapWords.cell.title(
      `${high?.lat.toFixed(1)}`.replace("-", "−"),
      `${high?.lon.toFixed(1)}`.replace("-", "−"),
    );
    await page.getByRole("button", { name }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => focused(page)).toBe("cell-tunes");
    await expect.poll(() => shownText(page.locator(".cell-tunes h3"))).toBe(name);
    await expect.poll(() => listed(page)).toEqual(rowsOf(answer));
  });

  test("a tap says where, how high and what to set there, in sight without scrolling; the answer is a press away", async () => {
    const { page } = opened;
    const { foot, goToAnswer } = await footOfTap(page);
    // The point is moved out from under it.
    const pinAboveFoot = async () => {
      const [pin, over] = await Promise.all([
        page.locator(".maplibregl-marker").boundingBox(),
        foot.boundingBox(),
      ]);
      return pin && over ? over.y - (pin.y + pin.height) : Number.NEGATIVE_INFINITY;
    };
    await expect.poll(pinAboveFoot).toBeGreaterThan(0);
    await expect.poll(() => outOfSight(page, ".maplibregl-marker")).toBe(0);
    const { lat, lon, site } = JSON.parse(
      (await page.evaluate(() => localStorage.getItem("hypsotune.question"))) ?? "{}",
    );
    expect(lat).toBeCloseTo(21, 0);
    const said = await shownText(foot);
    expect(said).toContain(t.answer.elevationOnly(`${site.elevation_m} m`));
    // What can be set, the fan making up for the pump's step; then where 8 in 10 are.
    const tune = await atlas.get<StartTune>(`/start?heat_kW=5&lat=${lat}&lon=${lon}`);
    for (const end of ENDS) {
      const [first] = settablePairsOf(tune, end, {});
      expect(said).toContain(`${first?.pump_Hz.toFixed(1)} Hz`);
      expect(said).toContain(t.answer.fanAt(`${first?.fan_rpm.toLocaleString("en")}`));
      const [inner] = tune[end].new_heater_bands_Hz;
      expect(said).toContain(
        basisWords.times("8", `${inner?.lower.toFixed(2)}`, `${inner?.upper.toFixed(2)}`),
      );
    }
    const inFoot = await briefly(page, ".map-foot");
    expect(said).toContain(t.safety.brief);
    expect(await axeFinds(page, { within: ".map-foot" })).toEqual([]);
    // Tunes like it stand below the map, once they are asked for.
    const { tunes } = await atlas.get<NearAnswer>(
      `/tunes/near?heat_kW=5&elevation_m=${site.elevation_m}`,
    );
    await foot.getByRole("button", { name: heaterWords.near.title }).click();
    await expect.poll(() => focused(page)).toBe("near-here");
    const near = page.getByRole("region", { name: heaterWords.near.title }).first();
    await expect.poll(() => near.locator("tbody tr").count()).toBe(tunes.length);
    await expect.poll(() => outOfSight(page, "#near-here")).toBe(0);
    await near.getByRole("button", { name: mapWords.foot.close }).click();
    await goToAnswer.click();
    await page.locator(".end output").first().waitFor();
    await expect
      .poll(() => shownRates(page))
      .toEqual(await askedRates(atlas.get, { heat_kW: 5, lat, lon }));
    expect(inFoot).toEqual(await briefly(page, ".answer"));
    await expect.poll(() => outOfSight(page, "#tune")).toBe(0);
    await expect.poll(() => focused(page)).toBe("content");
  });

  test("with a heater of one's own the tap gives its answer, as Start does, and the map says whose its colours are", async () => {
    const { page } = opened;
    await page.goto(`${atlas.url}/#/start`);
    await addFoundHeater(page, "Van");
    await goTo(page, "map");
    const { foot, goToAnswer } = await footOfTap(page);
    await expect.poll(() => page.getByText(mapWords.ofAverage).isVisible()).toBe(true);
    const said = await shownText(foot);
    expect(said).toContain("1 of your own");
    expect(said).not.toContain("heaters");
    const [inFoot, basis] = [
      await briefly(page, ".map-foot"),
      await shownText(foot.locator(".own-basis")),
    ];
    await goToAnswer.click();
    await page.locator(".start .own-basis").waitFor();
    expect(inFoot).toEqual(await briefly(page, ".answer"));
    expect(basis).toBe(await shownText(page.locator(".start .own-basis")));
    // In the steps of its controller.
    expect(inFoot.join()).toMatch(/\d\.\d[05]\sHz/);
  });

  test("discs counted together come apart when they are pressed", async () => {
    const { page } = opened;
    await goTo(page, "map");
    await lookAtMap(page);
    const { cells } = await atlas.get<CellsAnswer>("/cells/world");
    const europe = cells.filter(({ lat, lon }) => lat > 40 && lat < 60 && lon > 0 && lon < 20);
    const mean = (of: "lat" | "lon") =>
      europe.reduce((sum, cell) => sum + cell[of], 0) / europe.length;
    const scale = page.locator(".maplibregl-ctrl-scale");
    const before = await shownText(scale);
    await tap(page, mean("lat"), mean("lon"));
    await page.locator(".maplibregl-ctrl-scale", { hasNotText: before }).waitFor();
  });
});

/** The map's pixels, a colour each. */
const pixels = async (page: Page) => coloursOf(await page.locator(".map").screenshot()).colours;

describe("a map beside the answer", () => {
  let opened: OpenPage;

  /** The map before any name was on it. */
  let bare: Colour[];

  beforeAll(async () => {
    opened = await openPage(browser, "about:blank", SMALL);
    const { page } = opened;
    await page.route("**/geography/labels.json", (route) =>
      route.fulfill({ json: { type: "FeatureCollection", features: [] } }),
    );
    await page.goto(atlas.url);
    await mapDrawn(page);
    bare = await pixels(page);
    await page.unrouteAll();
  });

  afterAll(() => opened?.close());

  /** Names carry elevations, and come anew in another unit. */
  async function inUnit(name: "m" | "ft"): Promise<void> {
    const { page } = opened;
    await page.getByLabel(`${t.site.elevation}: ${t.unit}`).selectOption(name);
    await mapDrawn(page);
  }

  test("no name lies over a disc or its number", async () => {
    const { page } = opened;
    await inUnit("ft");
    const named = await pixels(page);
    const mark = channels(PALETTES.light.mark);
    const discs = bare.flatMap((colour, i) => (apart(colour, mark) < 12 ? [i] : []));
    expect(discs.length).toBeGreaterThan(300);
    expect(discs.filter((i) => apart(bare[i] as Colour, named[i] as Colour) > 12)).toEqual([]);
    // There are names on it.
    expect(
      named.filter((colour, i) => apart(colour, bare[i] as Colour) > 60).length,
    ).toBeGreaterThan(1000);
  });

  test("the scale bar is as long as it says, in the elevation's units", async () => {
    const { page } = opened;
    const scale = page.locator(".maplibregl-ctrl-scale");
    // WGS 84: equatorial radius 6,378,137 m. The map opens on 25° north with the world 1,024 px wide.
    const metres_a_px = (2 * Math.PI * 6_378_137 * Math.cos((25 * Math.PI) / 180)) / 1024;
    for (const [unit, bar, metres] of [
      ["ft", "mi", 1609.344],
      ["m", "km", 1000],
    ] as const) {
      await inUnit(unit);
      const [, number, said] = /^([\d.]+)\s*(\w+)$/.exec(await shownText(scale)) ?? [];
      expect(said).toBe(bar);
      const width = await scale.evaluate((one) => Number.parseFloat(getComputedStyle(one).width));
      const says = Number(number) * metres;
      expect(Math.abs((width * metres_a_px) / says - 1)).toBeLessThan(0.03);
    }
    await expect
      .poll(() => scale.evaluate((bar) => Number.parseFloat(getComputedStyle(bar).fontSize)))
      .toBeGreaterThanOrEqual(13);
  });

  test("a drag moves the map as far as the mouse and asks for nothing; the keyboard goes on from there", async () => {
    const { page } = opened;
    const asked = async () =>
      JSON.parse((await page.evaluate(() => localStorage.getItem("hypsotune.question"))) ?? "{}");
    const { x, y } = await pointOnMap(page, 40, 10);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 100, y, { steps: 10 });
    await page.mouse.up();
    await mapDrawn(page);
    expect((await asked()).lon).toBe(undefined);
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("CANVAS");
    await page.keyboard.press("Enter");
    // The map opens on 10° east with the world 1,024 px wide.
    await expect.poll(async () => (await asked()).lon).toBeCloseTo(10 - (100 / 1024) * 360, 0);
  });

  test("beside the map a tap leads to the answer's heading; a place found by name puts the tapped one away", async () => {
    const { page } = opened;
    const { x, y } = await pointOnMap(page, 21, 1);
    await page.mouse.click(x, y);
    await page.getByRole("button", { name: mapWords.foot.goToAnswer }).click();
    await expect.poll(() => focused(page)).toBe("tune");
    await expect.poll(() => outOfSight(page, "#tune")).toBe(0);
    await choosePlace(page, "Leadville", /Leadville, Colorado/);
    await page.locator(".map-foot").waitFor({ state: "detached" });
  });
});

test("until the map is drawn its place is dark in the dark theme, and what it says can be read; who leaves before the names have come leaves nothing behind that falls over them", async () => {
  const { page, close } = await openPage(browser, "about:blank", { ...SMALL, colorScheme: "dark" });
  const library = await held(page, "**/assets/atlas-map*");
  const labels = await held(page, "**/geography/labels.json");
  await page.goto(atlas.url);
  await page.locator(".map").scrollIntoViewIfNeeded();
  await page.getByText(mapWords.loading).waitFor();
  // Relative luminance (WCAG 2.2): the page's own dark paper has 0.01.
  const luminances = (await pixels(page)).map(([r = 0, g = 0, b = 0]) =>
    wcagLuminance({ mode: "rgb", r: r / 255, g: g / 255, b: b / 255 }),
  );
  expect(luminances.reduce((a, b) => a + b) / luminances.length).toBeLessThan(0.08);
  expect(await axeFinds(page, { within: ".map", themes: ["dark"] })).toEqual([]);
  library.free();
  await labels.asked;
  const names = page.waitForResponse("**/geography/labels.json");
  await goTo(page, "data/method");
  await page.locator(".map").waitFor({ state: "detached" });
  labels.free();
  await (await names).finished();
  await rendered(page);
  await close();
});

/** Holds what is asked for under an address until it is freed. */
async function held(
  page: Page,
  address: string,
): Promise<{ asked: Promise<void>; free: () => void }> {
  const [asked, free] = [Promise.withResolvers<void>(), Promise.withResolvers<void>()];
  await page.route(address, async (route) => {
    asked.resolve();
    await free.promise;
    await route.continue();
  });
  return { asked: asked.promise, free: free.resolve };
}

test.each(["en", "de", "es"])(
  "at 360 px no choice about the map is cut short, in %s",
  async (locale) => {
    const { page, close } = await openPage(plain, `${atlas.url}/#/map`, { ...PHONE, locale });
    await page.locator(".map-head select").first().waitFor();
    await page.evaluate(() => document.fonts.ready);
    const cut = await page.locator(".map-side .field select").evaluateAll((selects) =>
      (selects as HTMLSelectElement[]).flatMap((select) => {
        const context = document.createElement("canvas").getContext("2d");
        const style = getComputedStyle(select);
        if (!context) throw new Error("This browser draws no canvas.");
        context.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
        // The arrow takes as much of the right as the padding leaves it, at least 16 px.
        const ARROW_px = 20;
        const room =
          select.clientWidth -
          Number.parseFloat(style.paddingLeft) -
          Number.parseFloat(style.paddingRight) -
          ARROW_px;
        return [...select.options].flatMap(({ text }) =>
          context.measureText(text).width > room ? [text] : [],
        );
      }),
    );
    expect(cut).toEqual([]);
    await close();
  },
);
