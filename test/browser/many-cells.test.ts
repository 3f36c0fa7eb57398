import { cellToChildren, latLngToCell } from "h3-js";
import type { Browser } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { mapWords } from "../../client/texts/map.ts";
import { centre } from "../../server/cells.ts";
import type { Cell } from "../../server/contract.ts";
import { mapDrawn, type OpenPage, openPage, pointOnMap } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, mapBrowser, plainBrowser } from "./shared.ts";
import { PHONE } from "./views.ts";

/** Drawing in software takes its time by the pixel. */
const COARSE_PHONE = { viewport: PHONE, deviceScaleFactor: 0.5 };

let atlas: RunningAtlas;
beforeAll(async () => {
  atlas = await demoAtlas();
});

const of = (cell: string, tunes: number): Cell => ({
  ...{ cell, ...centre(cell), tunes, contributors: tunes, elevation_m: 1500 },
  mixture_shift_pct: { low: 1, high: -1 },
});
const WIDE = latLngToCell(20, 0, 1);
const WITHIN = cellToChildren(WIDE, 3);

/** A page of an atlas that tells its world in one wide cell, and what it asked for. */
async function openWide(browser: Browser, view: string): Promise<OpenPage & { asked: string[] }> {
  const opened = await openPage(browser, "about:blank", COARSE_PHONE);
  const asked: string[] = [];
  await opened.page.route(/\/api\/cells\/[^/]+$/, async (route) => {
    const parent = new URL(route.request().url()).pathname.split("/").at(-1) ?? "";
    asked.push(parent);
    const world = [{ ...of(WIDE, 5 * WITHIN.length), cells_within: WITHIN.length }];
    const cells = parent === WIDE ? WITHIN.map((cell) => of(cell, 5)) : world;
    const answer = await (await route.fetch({ url: `${atlas.url}/api/cells/world` })).json();
    await route.fulfill({ json: { ...answer, parent, cells } });
  });
  await opened.page.goto(`${atlas.url}/#/${view}`);
  return { ...opened, asked };
}

test("in the list a wide cell says how many it stands for, and gives way to them on a press", async () => {
  const { page, close, asked } = await openWide(await plainBrowser(), "map");
  await page.getByText(`${mapWords.cells} (1)`).click();
  await page.getByText(mapWords.cellsWithin(WITHIN.length)).waitFor();
  expect(asked).toEqual(["world"]);
  await page.getByRole("region", { name: mapWords.cells }).getByRole("button").click();
  await page.getByText(`${mapWords.cells} (${WITHIN.length})`).waitFor();
  expect(asked).toEqual(["world", WIDE]);
  await close();
});

test("a cell that the address names is looked for in the wide one it lies in", async () => {
  const { page, close, asked } = await openWide(await plainBrowser(), `map/${WITHIN[3]}`);
  await page.getByText(`${mapWords.cells} (${WITHIN.length})`).waitFor();
  expect(asked).toEqual(["world", WIDE]);
  await close(/404/);
});

test("on the map a press on a wide cell's disc leads near, and what lies in it comes", async () => {
  const { page, close, asked } = await openWide(await mapBrowser(), "map");
  await mapDrawn(page);
  const { lat, lon } = centre(WIDE);
  const { x, y } = await pointOnMap(page, lat, lon);
  expect(asked).toEqual(["world"]);
  await page.mouse.click(x, y);
  await expect.poll(() => asked).toEqual(["world", WIDE]);
  await page.getByText(`${mapWords.cells} (${WITHIN.length})`).waitFor();
  await close();
});
