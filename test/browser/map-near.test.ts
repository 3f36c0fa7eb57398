import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { unMercator } from "../../client/map/coasts.ts";
import { channels, PALETTES } from "../../client/map/palette.ts";
import { mapWords } from "../../client/texts/map.ts";
import { gridElevation } from "../../model/geography/terrain.ts";
import type { ElevationAnswer, PlacesAnswer } from "../../server/contract.ts";
import { apart, type Colour, colourOn, coloursOf, legendOf } from "./map-colours.ts";
import {
  askedRates,
  CUT_OFF,
  choosePlace,
  mapDrawn,
  type OpenPage,
  openPage,
} from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, mapBrowser } from "./shared.ts";

let browser: Browser;
let atlas: RunningAtlas;

beforeAll(async () => {
  [browser, atlas] = await Promise.all([mapBrowser(), demoAtlas()]);
});

/** Drawing in software takes its time by the pixel. */
const SMALL = { viewport: { width: 1040, height: 620 }, deviceScaleFactor: 1 } as const;
/** Where the map ends to come nearer, and how wide the world is there. */
const NEAREST_ZOOM = 8;
const WORLD_px = 512 * 2 ** NEAREST_ZOOM;

/** Brings a place to the map's middle. */
async function goThere(page: Page, place: string): Promise<void> {
  await choosePlace(page, place, new RegExp(place));
  await mapDrawn(page);
}

/** The map as it is seen, without what lies at its edges. */
async function look(page: Page) {
  const box = await page.locator(".map").boundingBox();
  if (!box) throw new Error("There is no map.");
  const [across, down] = [90, 50];
  const { colours, width } = coloursOf(
    await page.screenshot({
      clip: {
        x: Math.ceil(box.x + across),
        y: Math.ceil(box.y + down),
        width: Math.floor(box.width - 2 * across),
        height: Math.floor(box.height - 2 * down),
      },
    }),
  );
  return { colours, width, height: colours.length / width };
}

/** How much of the map is sea, and how much is written on it. */
function shares(colours: Colour[]) {
  const of = (colour: string) =>
    colours.filter((seen) => apart(seen, channels(colour)) < 6).length / colours.length;
  return { sea: of(PALETTES.light.sea), text: of(PALETTES.light.text) };
}

/** One map, come near once. */
let near: OpenPage;
/** What it showed of Split while names and coasts from near could not be had. */
let coarse: ReturnType<typeof shares>;

beforeAll(async () => {
  near = await openPage(browser, "about:blank", SMALL);
  const { page } = near;
  await page.route("**/geography/near/**", (route) => route.abort());
  await page.goto(atlas.url);
  await mapDrawn(page);
  await choosePlace(page, "Split", /Split/);
  const nearer = page.getByRole("button", { name: "Zoom in" });
  while (await nearer.isEnabled()) await nearer.click();
  await mapDrawn(page);
  coarse = shares((await look(page)).colours);
  await page.unroute("**/geography/near/**");
  await goThere(page, "Innsbruck");
});

afterAll(() => near?.close(CUT_OFF));

test("from near the land has the colour of what a tap there would answer", async () => {
  const { page } = near;
  const { places } = await atlas.get<PlacesAnswer>("/places?q=Innsbruck&limit=1");
  const { lat, lon } = places[0] as PlacesAnswer["places"][0];
  const grid = new Uint8Array(await readFile("data/geography/grid.bin"));
  const legend = await legendOf(page);
  const { colours, width, height } = await look(page);
  const [x, y] = [
    (lon + 180) / 360,
    0.5 - Math.asinh(Math.tan((lat * Math.PI) / 180)) / (2 * Math.PI),
  ];
  const right = { answered: 0, coarse: 0, of: 0 };
  for (let row = 0; row < height; row += 37)
    for (let column = 0; column < width; column += 41) {
      const position = unMercator(
        x + (column - width / 2) / WORLD_px,
        y + (row - height / 2) / WORLD_px,
      );
      const seen = colours[row * width + column] as [number, number, number];
      const isOf = async (elevation_m: number) => {
        const [low] = await askedRates(atlas.get, { heat_kW: 5, elevation_m });
        return apart(seen, colourOn(legend, low)) < 5 ? 1 : 0;
      };
      const [atLat, atLon] = position;
      const { elevation_m } = await atlas.get<ElevationAnswer>(
        `/elevation?lat=${atLat}&lon=${atLon}`,
      );
      right.of++;
      right.answered += await isOf(elevation_m);
      right.coarse += await isOf(gridElevation(grid, atLat, atLon));
    }
  // Some points lie on a name, a line or a cell.
  expect(right.answered / right.of).toBeGreaterThan(0.7);
  expect(right.answered - right.coarse).toBeGreaterThan(0.2 * right.of);
});

test("lines of equal pump rate run over the land, not where the colours show something else", async () => {
  const { page } = near;
  const lines = async () => {
    const { colours } = await look(page);
    const ink = channels(PALETTES.light.contour);
    return colours.filter((seen) => apart(seen, ink) < 25).length / colours.length;
  };
  const drawn = await lines();
  await page.getByLabel(mapWords.shown).selectOption("sure");
  await mapDrawn(page);
  expect(drawn - (await lines())).toBeGreaterThan(0.005);
  await page.getByLabel(mapWords.shown).selectOption("rate");
});

test("from near there are more names and finer coasts than where those cannot be had and the coarser stand in", async () => {
  const { page } = near;
  await goThere(page, "Split");
  const { sea, text } = shares((await look(page)).colours);
  expect(text - coarse.text).toBeGreaterThan(0.0005);
  expect(Math.abs(coarse.sea - sea)).toBeLessThan(0.1);
  expect(sea).toBeGreaterThan(0.1);
});

test("nearer than its data the map says so, and further off no more", async () => {
  const { page } = near;
  await page.getByText(mapWords.beyond).waitFor();
  const further = page.getByRole("button", { name: "Zoom out" });
  await further.click();
  await mapDrawn(page);
  await further.click();
  await page.getByText(mapWords.beyond).waitFor({ state: "detached" });
});
