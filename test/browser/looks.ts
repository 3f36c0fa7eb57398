import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { decode, encode } from "fast-png";
import type { Browser, Page } from "playwright-core";
import { type OpenPage, openPage, rendered } from "./open-page.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { goTo, pictureName, SIZES, THEMES, VIEWS } from "./views.ts";

/**
 * Every view as a small picture, to notice when it looks otherwise than it did. Eight pixels each way become one, so
 * that how a machine smooths letters does not matter, while a block that moved, grew or changed colour does.
 * `npm run looks` draws the pictures kept in test/reference/looks/ anew.
 */
export const LOOKS = "test/reference/looks";
const SHRINK = 8;
/** Five bits of each channel are kept: smaller files, and nothing that an eye would miss. */
const STEP = 8;

export interface Picture {
  width: number;
  height: number;
  /** Red, green, blue, row by row. */
  data: Uint8Array;
}

/** A screenshot with each 8 × 8 pixels averaged. */
export function shrunk(png: Uint8Array): Picture {
  const { width, height, data, channels } = decode(png);
  const small = { width: Math.floor(width / SHRINK), height: Math.floor(height / SHRINK) };
  const out = new Uint8Array(small.width * small.height * 3);
  for (let i = 0; i < out.length; i++) {
    const channel = i % 3;
    const x = Math.floor(i / 3) % small.width;
    const y = Math.floor(i / 3 / small.width);
    let sum = 0;
    for (let at = 0; at < SHRINK * SHRINK; at++) {
      const row = y * SHRINK + Math.floor(at / SHRINK);
      sum += data[(row * width + x * SHRINK + (at % SHRINK)) * channels + channel] as number;
    }
    out[i] = Math.floor(sum / SHRINK ** 2 / STEP) * STEP;
  }
  return { ...small, data: out };
}

/** How far two pictures are apart: in how many of 100 points a channel differs by more than the eye would overlook. */
export function apart_pct(one: Picture, other: Picture): number {
  if (one.width !== other.width || one.height !== other.height) return 100;
  const SEEN = 40;
  let points = 0;
  for (let i = 0; i < one.data.length; i += 3) {
    const off = [0, 1, 2].map((c) => Math.abs((one.data[i + c] ?? 0) - (other.data[i + c] ?? 0)));
    if (Math.max(...off) > SEEN) points++;
  }
  return (100 * points) / (one.data.length / 3);
}

export const nameOf = (view: string, width: number, theme: string) =>
  `${pictureName(view)}-${width}-${theme}`;

export function kept(name: string): Picture {
  const { width, height, data } = decode(readFileSync(`${LOOKS}/${name}.png`));
  return { width, height, data: new Uint8Array(data) };
}

export function keep(folder: string, name: string, picture: Picture): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/${name}.png`, encode({ ...picture, channels: 3, depth: 8 }));
}

/** A page for all the pictures. */
export const openForLooks = (browser: Browser, url: string): Promise<OpenPage> =>
  openPage(browser, `${url}/#/steward`, { deviceScaleFactor: 1 });

/**
 * Draws one view in both sizes and themes. What changes from run to run is covered: the map, and the fit's name.
 * A picture that is as `expected` has settled; others are drawn until two in a row are alike.
 */
export async function draw(
  page: Page,
  view: string,
  expected: (name: string, picture: Picture) => boolean = () => false,
): Promise<Map<string, Picture>> {
  await goTo(page, view);
  const drawn = new Map<string, Picture>();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    for (const colorScheme of THEMES) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      const name = nameOf(view, size.width, colorScheme);
      drawn.set(name, await settled(page, (picture) => expected(name, picture)));
    }
  }
  return drawn;
}

/** The screenshot once two in a row are alike: charts draw themselves anew for another width, the land for a theme. */
async function settled(page: Page, isExpected: (picture: Picture) => boolean): Promise<Picture> {
  await page.evaluate(() => document.fonts.ready);
  const shoot = async () => {
    await landDrawn(page);
    return page.screenshot({
      animations: "disabled",
      mask: [page.locator(".map"), page.locator("[data-offline]")],
      maskColor: "#808080",
    });
  };
  let before = await shoot();
  let picture = shrunk(before);
  for (let tries = 0; tries < 5 && !isExpected(picture); tries++) {
    const now = await shoot();
    if (now.equals(before)) break;
    before = now;
    picture = shrunk(now);
  }
  return picture;
}

/** Settles once what the screen shows of the land is drawn; another theme reaches it two frames later. */
async function landDrawn(page: Page): Promise<void> {
  await rendered(page);
  await page.waitForFunction(() =>
    [...document.querySelectorAll("[data-state=loading], [data-drawn=no]")].every(
      (waiting) => waiting.getBoundingClientRect().top >= innerHeight,
    ),
  );
}

if (import.meta.main) {
  const [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
  const { page } = await openForLooks(browser, atlas.url);
  for (const view of Object.keys(VIEWS)) {
    for (const [name, picture] of await draw(page, view)) keep(LOOKS, name, picture);
    console.log(view);
  }
  await browser.close();
  await atlas.close();
}
