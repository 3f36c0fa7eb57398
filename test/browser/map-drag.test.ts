import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { mapWords } from "../../client/texts/map.ts";
import { mapDrawn, type OpenPage, openPage } from "./open-page.ts";
import { emptyAtlas, mapBrowser } from "./shared.ts";

/** No pixel is looked at, and drawing in software takes its time by the pixel. */
const SMALL = {
  viewport: { width: 1040, height: 720 },
  deviceScaleFactor: 0.5,
  reducedMotion: "no-preference",
} as const;

/** One map, each test pulling it from where the one before left it. */
let opened: OpenPage;

beforeAll(async () => {
  const [browser, atlas] = await Promise.all([mapBrowser(), emptyAtlas()]);
  opened = await openPage(browser, atlas.url, SMALL);
  const { page } = opened;
  await mapDrawn(page);
  await page.locator(".map").hover();
  await mapDrawn(page);
});

afterAll(() => opened?.close());

/** Width of the world at the zoom the map opens with, px. */
const WORLD_px = 1024;
/** Longer than the sheet remembers how fast it was pulled, so that it does not glide. */
const STILL_ms = 250;

/** How often the map has been drawn, counted from the first call. */
function drawings(page: Page): Promise<number> {
  return page.evaluate(() => {
    const counted = globalThis as unknown as { drawings?: number };
    if (counted.drawings === undefined) {
      counted.drawings = 0;
      const { prototype } = WebGL2RenderingContext;
      const { clear } = prototype;
      prototype.clear = function (mask) {
        if (mask & this.COLOR_BUFFER_BIT) counted.drawings = (counted.drawings ?? 0) + 1;
        clear.call(this, mask);
      };
    }
    return counted.drawings;
  });
}

/** Presses in the middle of the upper half, where nothing lies over the map, and moves; lets go when told. */
async function pull(page: Page, across: number, down: number): Promise<void> {
  await page
    .locator(".map")
    .evaluate((map) => map.scrollIntoView({ block: "center", behavior: "instant" }));
  const box = await page.locator(".map").boundingBox();
  if (!box) throw new Error("There is no map.");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 4];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + across, y + down, { steps: 10 });
  await page.waitForTimeout(STILL_ms);
}

interface Point {
  lat: number | null;
  lon: number | null;
}

/** The question's point; null while it has none. */
const asked = (page: Page) =>
  page.evaluate((): Point => {
    const { lat = null, lon = null } = JSON.parse(
      localStorage.getItem("hypsotune.question") ?? "{}",
    );
    return { lat, lon };
  });

/** The point in the map's middle, as the question takes it. */
async function middle(page: Page): Promise<Point> {
  const before = await asked(page);
  await page.getByRole("button", { name: mapWords.takeMiddle }).click();
  await expect.poll(async () => (await asked(page)).lon).not.toBe(before.lon);
  return asked(page);
}

/** Degrees that so many pixels are. */
const degrees = (px: number) => (px / WORLD_px) * 360;

test("a drag pulls the map as it is drawn; let go, it is drawn afresh there, and that was no click", async () => {
  const { page } = opened;
  const still = await drawings(page);
  await pull(page, 120, 40);
  expect(await drawings(page)).toBe(still);
  await page.mouse.up();
  await expect.poll(() => drawings(page)).toBeGreaterThan(still);
  await mapDrawn(page);
  expect((await asked(page)).lat).toBe(null);
  // The keyboard goes on where the mouse has been.
  await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("CANVAS");
  const { lat, lon } = await middle(page);
  expect(lon).toBeCloseTo(10 - degrees(120), 1);
  const north = (deg: number) => Math.asinh(Math.tan((deg * Math.PI) / 180)) / (2 * Math.PI);
  expect(north(Number(lat)) - north(25)).toBeCloseTo(40 / WORLD_px, 3);
});

test("pulled twice in a row it is where both have left it", async () => {
  const { page } = opened;
  // Back to where it began.
  await pull(page, -160, -40);
  await page.mouse.up();
  await pull(page, 40, 0);
  await page.mouse.up();
  await mapDrawn(page);
  const { lat, lon } = await middle(page);
  expect(Number(lon)).toBeCloseTo(10, 1);
  expect(Number(lat)).toBeCloseTo(25, 1);
});

test("pulled further than the sheet reaches it is drawn on the way; the world's northern edge stops it", async () => {
  const { page } = opened;
  const box = await page.locator(".map").boundingBox();
  const across = Math.round(0.7 * (box?.width ?? 0));
  const down = 600;
  await pull(page, across, down);
  await page.mouse.up();
  await mapDrawn(page);
  const { lat, lon } = await middle(page);
  expect(Number(lon)).toBeCloseTo(10 - degrees(across), 1);
  // What is seen ends where the world does.
  const edge = (WORLD_px - (box?.height ?? 0)) / 2 / WORLD_px;
  const north = Math.asinh(Math.tan((Number(lat) * Math.PI) / 180)) / (2 * Math.PI);
  expect(north).toBeCloseTo(edge, 2);
});

test("a last move that overruns the sheet is followed all the way", async () => {
  const { page } = opened;
  const before = Number((await asked(page)).lon);
  await pull(page, -20, 0);
  const box = await page.locator(".map").boundingBox();
  if (!box) throw new Error("There is no map.");
  const across = -Math.round(0.7 * box.width);
  await page.mouse.move(box.x + box.width / 2 + across, box.y + box.height / 4);
  await page.waitForTimeout(STILL_ms);
  await page.mouse.up();
  await mapDrawn(page);
  const { lon } = await middle(page);
  expect(Number(lon)).toBeCloseTo(before - degrees(across), 1);
});
