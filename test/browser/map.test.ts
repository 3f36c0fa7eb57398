import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { mapWords } from "../../client/texts/map.ts";
import { trip } from "../../client/texts/trip.ts";
import { airAt, standardTemperature } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { groupOf, type StartTune } from "../../model/start.ts";
import { mostWanted, oneMoreTune } from "../../model/wanted.ts";
import type { CellsAnswer, ElevationAnswer, PlacesAnswer } from "../../server/contract.ts";
import { axeFinds } from "./faults.ts";
import { apart, type Colour, colourOn, coloursAt, legendOf, middle } from "./map-colours.ts";
import {
  askedRates,
  choosePlace,
  field,
  mapDrawn,
  type OpenPage,
  openPage,
  openStop,
  outOfSight,
  pointOnMap,
  shownRates,
  shownText,
  shownTexts,
  spaced,
} from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, mapBrowser, plainBrowser } from "./shared.ts";
import { PHONE } from "./views.ts";

let browser: Browser;
/** Without WebGL, for what needs no map. */
let plain: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, plain, atlas] = await Promise.all([mapBrowser(), plainBrowser(), demoAtlas()]);
});

/** Wide plains and plateaus with no label upon them at the first zoom, from low to high. */
const GROUND = {
  siberia: [61, 79],
  sahara: [21, 1],
  greenland: [68.5, -40],
} as const satisfies Record<string, [lat: number, lon: number]>;
/** High above every tune of the invented crowd. */
const TIBET: [lat: number, lon: number] = [33, 85];

/** Drawing in software takes its time by the pixel. */
const SMALL = { viewport: { width: 1040, height: 720 } };
/** Where no line is looked at. */
const COARSE = { ...SMALL, deviceScaleFactor: 0.5 };

describe("one map, drawn once", () => {
  let drawn: OpenPage;

  beforeAll(async () => {
    drawn = await openPage(browser, atlas.url, SMALL);
    await mapDrawn(drawn.page);
  });

  afterAll(() => drawn?.close(/CONTEXT_LOST/));

  /** What is shown already is not drawn anew. */
  async function look(shown: "rate" | "sure" | "wanted"): Promise<void> {
    await drawn.page.getByLabel(mapWords.shown).selectOption(shown);
    await mapDrawn(drawn.page);
  }

  async function night(temperature_C: string): Promise<void> {
    await field(drawn.page, "air.temperature_C").fill(temperature_C);
    await mapDrawn(drawn.page);
  }

  test("the slider sets the night for answer and map alike, by keyboard; the standard atmosphere is a state of it", async () => {
    const { page } = drawn;
    const slider = page.locator('[name="map.temperature_C"]');
    const standard = page.getByLabel(mapWords.standardAir, { exact: true });
    await expect.poll(() => standard.isChecked()).toBe(true);
    const night = async () => spaced(await slider.getAttribute("aria-valuetext"));
    const before = middle(await coloursAt(page, GROUND.siberia));
    await slider.focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("-39");
    await expect.poll(() => night()).toBe("−39 °C");
    await expect
      .poll(() => shownRates(page))
      .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 1000, temperature_C: -39 }));
    await page.getByLabel(mapWords.nightUnit).selectOption("°F");
    await expect.poll(() => night()).toBe("−38 °F");
    await standard.check();
    await expect.poll(() => field(page, "air.temperature_C").inputValue()).toBe("");
    await page.getByLabel(mapWords.nightUnit).selectOption("°C");
    await mapDrawn(page);
    expect(apart(middle(await coloursAt(page, GROUND.siberia)), before)).toBeLessThan(3);
  });

  test("the land is tinted as the legend says, for either end and for the night asked", async () => {
    const { page } = drawn;
    const seen: Record<string, Colour[]> = {};
    for (const [end, temperature_C] of [
      ["low", undefined],
      ["low", -20],
      ["high", -20],
    ] as const) {
      await page.getByLabel(mapWords.end).selectOption(end);
      await night(String(temperature_C ?? ""));
      const legend = await legendOf(page);
      const colours: Colour[] = [];
      for (const [lat, lon] of Object.values(GROUND)) {
        const { elevation_m } = await atlas.get<ElevationAnswer>(
          `/elevation?lat=${lat}&lon=${lon}`,
        );
        const [low, high] = await askedRates(atlas.get, {
          heat_kW: 5,
          elevation_m,
          ...(temperature_C === undefined ? {} : { temperature_C }),
        });
        const colour = middle(await coloursAt(page, [lat, lon]));
        const told = colourOn(legend, end === "low" ? low : high);
        expect(
          apart(colour, told),
          `${end} end, ${elevation_m} m: ${colour} for ${told}`,
        ).toBeLessThan(14);
        colours.push(colour);
      }
      const [low, , high] = colours as [Colour, Colour, Colour];
      expect(apart(low, high)).toBeGreaterThan(40);
      seen[`${end} ${temperature_C}`] = colours;
    }
    // A colder night re-tints the land.
    const [[before], [after]] = [seen["low undefined"], seen["low -20"]] as [[Colour], [Colour]];
    expect(apart(before, after)).toBeGreaterThan(8);
  });

  test("a lost drawing context: a word and a still picture, and the same map when it is back", async () => {
    const { page } = drawn;
    const before = middle(await coloursAt(page, GROUND.sahara));
    await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>(".map .maplibregl-canvas");
      const lose = canvas?.getContext("webgl2")?.getExtension("WEBGL_lose_context");
      const frame = requestAnimationFrame;
      Object.assign(globalThis, {
        // Back with frames that are late, as on a busy machine.
        giveBack: () => {
          globalThis.requestAnimationFrame = (draw) => setTimeout(frame, 1_000, draw) as never;
          lose?.restoreContext();
        },
        hurry: () => {
          globalThis.requestAnimationFrame = frame;
        },
      });
      lose?.loseContext();
    });
    await page.getByText(mapWords.lost).waitFor();
    await page.locator('.land-picture[data-drawn="yes"]').waitFor();
    // A question asked meanwhile is not lost on the map that comes back.
    await field(page, "air.temperature_C").fill("");
    await page.evaluate("giveBack()");
    await page.getByText(mapWords.lost).waitFor({ state: "detached" });
    await page.evaluate("hurry()");
    await mapDrawn(page);
    await expect
      .poll(async () => apart(middle(await coloursAt(page, GROUND.sahara)), before))
      .toBeGreaterThan(8);
  });

  test("the other look tells how sure it is, with its own legend, hatched as before", async () => {
    const { page } = drawn;
    await page.getByLabel(mapWords.end).selectOption("low");
    await look("sure");
    const legend = await legendOf(page);
    const told = await shownTexts(page.locator(".legend ol li"));
    expect(new Set(told).size, told.join()).toBe(legend.length);
    for (const [lat, lon] of Object.values(GROUND)) {
      const { elevation_m } = await atlas.get<ElevationAnswer>(`/elevation?lat=${lat}&lon=${lon}`);
      const { low } = await atlas.get<StartTune>(`/start?heat_kW=5&elevation_m=${elevation_m}`);
      const band = low.new_heater_bands_Hz.find(({ level }) => level === 0.95);
      const told_pct = (50 * ((band?.upper ?? 0) - (band?.lower ?? 0))) / low.pump_Hz_exact;
      const colour = middle(await coloursAt(page, [lat, lon]));
      expect(apart(colour, colourOn(legend, told_pct)), `${elevation_m} m`).toBeLessThan(14);
    }
  });

  test("land outside the tuned air is hatched, land inside is not, the sea is neither", async () => {
    const { page } = drawn;
    // The share of pixels clearly darker than the ground between them.
    const dark = (colours: Colour[]) => {
      const light = colours.map(([r, g, b]) => r + g + b).sort((a, b) => b - a);
      const ground = light[light.length >> 2] as number;
      return light.filter((value) => value < 0.75 * ground).length / light.length;
    };
    // Where no contour runs.
    await look("sure");
    expect(dark(await coloursAt(page, TIBET))).toBeGreaterThan(0.1);
    // A border may touch a corner.
    for (const place of Object.values(GROUND))
      expect(dark(await coloursAt(page, place))).toBeLessThan(0.02);
    const sea = middle(await coloursAt(page, [0, -25]));
    expect(apart(sea, [185, 205, 216])).toBeLessThan(3);
    // Nobody of the crowd has tuned in the air that −40 °C makes of a plain.
    await night("-40");
    expect(dark(await coloursAt(page, GROUND.siberia))).toBeGreaterThan(0.1);
  });

  test("a third look tells where one more tune would narrow the average's band, and so does a list", async () => {
    const { page } = drawn;
    const fit = await atlas.get<PublishedFit>("/fit");
    const group = groupOf(fit, 5, "low");
    await night("");
    await look("wanted");
    const legend = await legendOf(page);
    for (const [lat, lon] of Object.values(GROUND)) {
      const { elevation_m } = await atlas.get<ElevationAnswer>(`/elevation?lat=${lat}&lon=${lon}`);
      const air = airAt(elevation_m, { temperature_C: standardTemperature(elevation_m) });
      const { before, after } = oneMoreTune(group, air);
      const colour = middle(await coloursAt(page, [lat, lon]));
      expect(apart(colour, colourOn(legend, before - after)), `${elevation_m} m`).toBeLessThan(14);
    }
    const [first] = mostWanted(group);
    const said = await shownText(page.locator(".wanted li").first());
    const [before = 0, after = 0] = [...said.matchAll(/±([\d.]+)/g)].map(([, width]) =>
      Number(width),
    );
    expect(said).toContain(`${first?.elevation_m.toLocaleString("en")} m`);
    expect(said).toContain(`${first?.temperature_C} °C`.replace("-", "−"));
    expect(before).toBeCloseTo(first?.before ?? 0, 1);
    expect(after).toBeCloseTo(first?.after ?? 0, 1);
    expect(after).toBeLessThan(before);
  });

  // From here on the map may lie elsewhere.
  test("a click on the map asks for that point, says how sure its elevation is, and takes a better one", async () => {
    const { page } = drawn;
    const { x, y } = await pointOnMap(page, ...GROUND.sahara);
    await page.mouse.click(x, y);
    await page.getByText(/^Estimated, ±/).waitFor();
    const { lat, lon } = JSON.parse(
      (await page.evaluate(() => localStorage.getItem("hypsotune.question"))) ?? "{}",
    );
    expect(lat).toBeCloseTo(GROUND.sahara[0], 0);
    expect(lon).toBeCloseTo(GROUND.sahara[1], 0);
    await expect
      .poll(() => shownRates(page))
      .toEqual(await askedRates(atlas.get, { heat_kW: 5, lat, lon }));
    await field(page, "site.elevation_m").fill("321");
    await page.getByText(/^Estimated, ±/).waitFor({ state: "detached" });
    await expect
      .poll(() => shownRates(page))
      .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 321 }));
    await page.locator(".map-foot").getByRole("button", { name: mapWords.foot.close }).click();
  });

  test("axe finds nothing in the map; the dark theme draws it in colours of its own, in the same place", async () => {
    const { page } = drawn;
    expect(await axeFinds(page, { within: ".map-side" })).toEqual([]);
    await page.emulateMedia({ colorScheme: "dark" });
    await page.locator(".map").waitFor();
    await expect
      .poll(async () => apart(middle(await coloursAt(page, [0, -25])), [43, 58, 69]))
      .toBeLessThan(4);
  });
});

test("this device's position, asked for only on a press, gives the tune that search and the API give", async () => {
  const { places } = await atlas.get<PlacesAnswer>("/places?q=Leadville&limit=1");
  const { lat, lon, elevation_m } = places[0] as PlacesAnswer["places"][0];
  const { page, close } = await openPage(plain, atlas.url, {
    ...SMALL,
    permissions: ["geolocation"],
    geolocation: { latitude: lat, longitude: lon },
  });
  await page.evaluate(() => {
    const ask = navigator.geolocation.getCurrentPosition.bind(navigator.geolocation);
    navigator.geolocation.getCurrentPosition = (...args) => {
      document.body.dataset.asked = "yes";
      ask(...args);
    };
  });
  await expect.poll(() => page.locator("body").getAttribute("data-asked")).toBe(null);
  const sent: string[] = [];
  page.on("request", (request) => sent.push(request.url()));
  await page.getByRole("button", { name: t.site.position }).click();
  await page.getByText(/^Estimated, ±/).waitFor();
  const byPosition = await shownRates(page);
  expect(byPosition).toEqual(await askedRates(atlas.get, { heat_kW: 5, lat, lon }));
  // The elevation was worked out here: no request carries the position.
  expect(sent.filter((url) => url.includes(String(lat)) || url.includes("lat="))).toEqual([]);

  await choosePlace(page, "Leadville", /Leadville, Colorado/);
  await expect.poll(() => field(page, "site.elevation_m").inputValue()).toBe(String(elevation_m));
  await expect.poll(() => shownRates(page)).toEqual(byPosition);
  await close();
});

test("a device that does not tell its position is no dead end", async () => {
  const { page, close } = await openPage(plain, atlas.url, { ...SMALL, permissions: [] });
  await page.getByRole("button", { name: t.site.position }).click();
  await page.getByText(t.site.positionDenied).waitFor();
  await close();
});

test("every cell of the map is also a row of text", async () => {
  const { page, close } = await openPage(plain, atlas.url, SMALL);
  const { cells } = await atlas.get<CellsAnswer>("/cells/world");
  expect(cells.length).toBeGreaterThan(5);
  await page.getByText(`${mapWords.cells} (${cells.length})`).click();
  const rows = await shownTexts(page.locator(".map-side tbody tr"));
  expect(rows).toHaveLength(cells.length);
  const tunes = await shownTexts(page.locator(".map-side tbody td:nth-child(3)"));
  expect(tunes.map(Number)).toEqual(cells.map((cell) => cell.tunes));
  await close();
});

test("the trip fetches its map when that is opened; a tap, or Enter for its middle, adds a stop, and says in sight which", async () => {
  const { page, close } = await openPage(browser, `${atlas.url}/#/trip`, {
    ...COARSE,
    viewport: PHONE,
  });
  await page.getByText(trip.map.open).waitFor();
  const library = () =>
    page.evaluate(() =>
      performance.getEntriesByType("resource").some(({ name }) => name.includes("atlas-map")),
    );
  await expect.poll(() => library()).toBe(false);
  await page.getByText(trip.map.open).click();
  await mapDrawn(page);
  await expect.poll(() => library()).toBe(true);
  expect(await axeFinds(page, { within: ".map", themes: ["light"] })).toEqual([]);
  await page.locator(".map .maplibregl-canvas").focus();
  await page.keyboard.press("Enter");
  await page.getByText("Stop 1: 25.00, 10.00.").waitFor();
  await page.getByRole("button", { name: trip.map.middle }).click();
  await page.getByText("Stop 2: 25.00, 10.00.").waitFor();
  await mapDrawn(page);
  const { x, y } = await pointOnMap(page, 50, 60);
  await page.mouse.click(x, y);
  const foot = page.locator(".map-foot").filter({ hasNotText: "25.00, 10.00" });
  await foot.getByText(trip.add.added(1)).waitFor();
  await expect.poll(() => outOfSight(page, ".map-foot")).toBeLessThan(1);
  const told = await shownText(page.locator(".profile .elevation").nth(2));
  await expect.poll(() => shownText(foot)).toContain(told ?? "no elevation");
  await openStop(page, 2);
  const third = field(page, "stops.2.elevation_m");
  const { elevation_m } = await atlas.get<ElevationAnswer>("/elevation?lat=50&lon=60");
  await expect.poll(async () => Number(await third.inputValue())).toBeGreaterThan(0);
  expect(Math.abs(Number(await third.inputValue()) - elevation_m)).toBeLessThan(150);
  await close();
});

test("without WebGL the page says so in a word and everything else works", async () => {
  const { page, close } = await openPage(plain, atlas.url);
  await page.getByText(mapWords.none).waitFor();
  await field(page, "site.elevation_m").fill("2500");
  await expect
    .poll(() => shownRates(page))
    .toEqual(await askedRates(atlas.get, { heat_kW: 5, elevation_m: 2500 }));
  await page.getByText(mapWords.cells).click();
  await expect.poll(() => page.locator(".map-side tbody tr").count()).toBeGreaterThan(5);
  // The still picture has the legend's colours, and a click on it asks like one on the map.
  await page.locator('.land-picture[data-drawn="yes"]').waitFor();
  const siberia = await page.locator(".land-picture canvas").evaluate((canvas) => {
    const context = (canvas as HTMLCanvasElement).getContext("2d");
    return [...(context?.getImageData(369, 88, 1, 1).data ?? [])].slice(0, 3);
  });
  const legend = await legendOf(page);
  const { elevation_m } = await atlas.get<ElevationAnswer>("/elevation?lat=61&lon=79");
  const [low] = await askedRates(atlas.get, { heat_kW: 5, elevation_m });
  expect(apart(siberia as Colour, colourOn(legend, low))).toBeLessThan(14);
  await page.locator(".land-picture canvas").click();
  await page.getByText(/^Estimated, ±/).waitFor();
  await close();
});
