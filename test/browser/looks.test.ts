import { globSync, statSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { apart_pct, draw, keep, kept, LOOKS, nameOf, openForLooks, type Picture } from "./looks.ts";
import type { OpenPage } from "./open-page.ts";
import { demoAtlas, plainBrowser } from "./shared.ts";
import { VIEWS } from "./views.ts";

/** Another machine's letters move this many points at most; a heading's height more in all that follows moves more. */
const ALIKE_pct = 4;

let opened: OpenPage;

beforeAll(async () => {
  const [browser, atlas] = await Promise.all([plainBrowser(), demoAtlas()]);
  opened = await openForLooks(browser, atlas.url);
});

afterAll(() => opened?.close());

test.each(Object.keys(VIEWS))(
  "%s looks as it did, in both sizes and themes (npm run looks, if it should not)",
  async (view) => {
    const pictures = await draw(
      opened.page,
      view,
      (name, picture) => apart_pct(picture, kept(name)) <= ALIKE_pct,
    );
    for (const [name, picture] of pictures) {
      const apart = apart_pct(picture, kept(name));
      // To look at beside the one that is kept.
      if (apart > ALIKE_pct) keep("data/looks", name, picture);
      expect(apart, `${name}: see data/looks/ beside ${LOOKS}/`).toBeLessThanOrEqual(ALIKE_pct);
    }
  },
);

test("the pictures can tell views, themes and moved blocks apart, and are small", () => {
  const light = kept(nameOf("share", 360, "light"));
  expect(apart_pct(light, kept(nameOf("share", 360, "dark")))).toBeGreaterThan(50);
  expect(apart_pct(light, kept(nameOf("data", 360, "light")))).toBeGreaterThan(ALIKE_pct);
  expect(apart_pct(light, lowered(light, 3))).toBeGreaterThan(ALIKE_pct);
  const files = globSync(`${LOOKS}/*.png`);
  expect(files).toHaveLength(4 * Object.keys(VIEWS).length);
  expect(files.reduce((sum, file) => sum + statSync(file).size, 0)).toBeLessThan(1_000_000);
});

/** All of a picture some rows further down. */
function lowered({ width, height, data }: Picture, rows: number): Picture {
  const moved = new Uint8Array(data.length);
  moved.set(data.subarray(0, data.length - rows * width * 3), rows * width * 3);
  return { width, height, data: moved };
}
