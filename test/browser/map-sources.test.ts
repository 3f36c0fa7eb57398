import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { decode, encode } from "fast-png";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { PALETTES } from "../../client/map/palette.ts";
import { mapWords } from "../../client/texts/map.ts";
import { CUT_OFF, field, mapDrawn, type OpenPage, openPage, pointOnMap } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { mapBrowser } from "./shared.ts";

/** How the server of elevations and basemap behaves. */
type Manner = "good" | "broken" | "refusing";

let manner: Manner = "good";
let asked: string[] = [];
let sources: Server;
let origin: string;
let browser: Browser;
let atlas: RunningAtlas;

/** All land at 4,000 m. */
const HIGH = tile([(32_768 + 4000) >> 8, (32_768 + 4000) & 255, 0]);
const PINK = tile([255, 0, 200]);

function tile([red, green, blue]: [number, number, number]): Uint8Array {
  const data = new Uint8Array(256 * 256 * 3);
  for (let i = 0; i < data.length; i += 3) data.set([red, green, blue], i);
  return encode({ width: 256, height: 256, data, channels: 3, depth: 8 });
}

const STYLE = JSON.stringify({
  version: 8,
  sources: { picture: { type: "raster", tiles: ["picture/{z}/{x}/{y}.png"], tileSize: 256 } },
  layers: [{ id: "picture", type: "raster", source: "picture" }],
});

beforeAll(async () => {
  sources = createServer((request, response) => {
    const path = request.url ?? "";
    asked.push(path);
    response.setHeader("Access-Control-Allow-Origin", "*");
    response.setHeader("Cache-Control", "no-store");
    if (manner === "refusing") return request.socket.destroy();
    if (manner === "broken") return response.end("no picture, no style");
    response.end(path === "/style.json" ? STYLE : path.startsWith("/picture") ? PINK : HIGH);
  }).listen(0, "127.0.0.1");
  await new Promise((ready) => sources.once("listening", ready));
  origin = `http://127.0.0.1:${(sources.address() as AddressInfo).port}`;
  [browser, atlas] = await Promise.all([
    mapBrowser(),
    runAtlas([], {
      ELEVATION_TILES: `${origin}/ground/{z}/{x}/{y}.png`,
      BASEMAP_STYLE: `${origin}/style.json`,
    }),
  ]);
});

afterAll(async () => {
  await atlas?.close();
  sources?.close();
});

/** Drawing in software takes its time by the pixel. */
const COARSE = { viewport: { width: 1040, height: 720 }, deviceScaleFactor: 0.5 };

/** Those two origins alone are another's, and may be out of reach. */
const expected = () => new RegExp(`${origin}/|${CUT_OFF.source}`);

async function drawnWhile(how: Manner): Promise<OpenPage> {
  manner = how;
  asked = [];
  const { page, close } = await openPage(browser, atlas.url, COARSE);
  // On such a night all of an empty atlas is hatched as on any other; between the stripes the tint shows.
  await field(page, "air.temperature_C").fill("-5");
  await mapDrawn(page);
  return { page, close: () => close(expected()) };
}

type Colour = [number, number, number];

/** The lightest tenth of a square of the map: the tint between the stripes. */
async function tintAt(page: Page, lat: number, lon: number): Promise<Colour> {
  const { x, y } = await pointOnMap(page, lat, lon);
  const { data, channels } = decode(
    await page.screenshot({ clip: { x: x - 8, y: y - 8, width: 16, height: 16 } }),
  );
  const pixels = Array.from(
    { length: data.length / channels },
    (_, i): Colour => [
      Number(data[i * channels]),
      Number(data[i * channels + 1]),
      Number(data[i * channels + 2]),
    ],
  ).sort((a, b) => lightness(b) - lightness(a));
  return pixels[Math.floor(pixels.length / 10)] as Colour;
}

const lightness = (colour: Colour) => colour.reduce((sum, value) => sum + value);
const STEPPE = [50, 60] as const;

test("configured elevations tint the land, and a configured basemap lies over it", async () => {
  const { page, close } = await drawnWhile("good");
  await expect.poll(() => asked.some((path) => path.startsWith("/picture/"))).toBe(true);
  expect(asked.some((path) => path.startsWith("/ground/"))).toBe(true);
  await expect
    .poll(async () => {
      const [red, green] = await tintAt(page, ...STEPPE);
      return red - green;
    })
    // No colour of high land has more red than green by so much, before the wash.
    .toBeGreaterThan(70);
  // The sea lies under the wash as well.
  const sea = await tintAt(page, 0, -25);
  const own = [1, 3, 5].map((i) => Number.parseInt(PALETTES.light.sea.slice(i, i + 2), 16));
  const washed = own.map((value, i) => 0.7 * value + 0.3 * ([255, 0, 200][i] as number));
  sea.forEach((value, i) => {
    expect(Math.abs(value - (washed[i] as number))).toBeLessThan(4);
  });
  await expect.poll(() => page.getByText(mapWords.builtInGround).count()).toBe(0);
  await expect.poll(() => page.getByText(mapWords.builtInBasemap).count()).toBe(0);
  await close();
});

for (const how of ["broken", "refusing"] as const) {
  test(`sources that are ${how}: the built-in land and waters stand in, and the page says so`, async () => {
    const { page, close } = await drawnWhile(how);
    await page.getByText(mapWords.builtInGround).waitFor();
    await page.getByText(mapWords.builtInBasemap).waitFor();
    await expect
      .poll(async () => lightness(await tintAt(page, 33, 85)))
      .toBeGreaterThan(lightness(await tintAt(page, ...STEPPE)) + 100);
    const [red, green, blue] = await tintAt(page, 0, -25);
    expect([red, green, blue]).toEqual([185, 205, 216]);
    await close();
  });
}

test("the page may ask those two origins and no other", async () => {
  const policy = (await fetch(atlas.url)).headers.get("content-security-policy") ?? "";
  const connect = /connect-src ([^;]*)/.exec(policy)?.[1]?.split(" ");
  expect(connect).toEqual(["'self'", origin]);
});
