import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type axe from "axe-core";
import type { Page, ViewportSize } from "playwright-core";
import { THEMES } from "./views.ts";

/** Without blanks and comments, which every page would have to read. */
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The rule that takes most of the time. */
const CONTRAST = "color-contrast";

/**
 * What axe-core finds, a line each: by all its rules in the light theme, by colour contrast in the dark one and wherever
 * only colours are asked about, since nothing else differs there. The map's canvas is tested by its pixels.
 */
export async function axeFinds(
  page: Page,
  {
    within,
    themes = THEMES,
    coloursOnly = false,
  }: { within?: string; themes?: readonly (typeof THEMES)[number][]; coloursOnly?: boolean } = {},
): Promise<string[]> {
  const found: string[] = [];
  for (const theme of themes) {
    const rules = coloursOnly || theme === "dark" ? "contrast" : "all";
    found.push(...(await breaches(page, theme, rules, within)));
  }
  return found;
}

/** What of a theme breaks some of axe-core's rules, a line each. */
async function breaches(
  page: Page,
  theme: (typeof THEMES)[number],
  rules: "all" | "contrast" | "all but contrast",
  within?: string,
): Promise<string[]> {
  // What is looked at may still be on its way.
  if (within) await page.locator(within).first().waitFor();
  await page.emulateMedia({ colorScheme: theme });
  // Reading it takes a page as long as looking for faults.
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  const faults = await page.evaluate(
    async ({ place, options }) => {
      const { run } = (globalThis as unknown as { axe: typeof axe }).axe;
      const { violations } = await run(
        { ...(place && { include: [place] }), exclude: [".maplibregl-canvas"] },
        // What passes need not be told node by node.
        { resultTypes: ["violations"], ...options },
      );
      return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
    },
    {
      place: within,
      options: {
        ...(rules === "contrast" && { runOnly: CONTRAST }),
        ...(rules === "all but contrast" && { rules: { [CONTRAST]: { enabled: false } } }),
      },
    },
  );
  return faults.map((fault) => `${theme}, ${fault}`);
}

/**
 * What axe finds at each size, and whether the page can be scrolled sideways there. A size changes hardly a colour, and of a
 * long page contrast takes as much as all the rest: it is looked at in the light theme at the first, in the dark one at the last.
 */
export async function faultsAt(
  page: Page,
  sizes: readonly ViewportSize[],
  within?: string,
): Promise<string[]> {
  const found: string[] = [];
  for (const size of sizes) {
    await page.setViewportSize(size);
    const faults = await breaches(
      page,
      "light",
      size === sizes[0] ? "all" : "all but contrast",
      within,
    );
    if (size === sizes.at(-1)) faults.push(...(await breaches(page, "dark", "contrast", within)));
    const px = await sideways(page);
    if (px !== 0) faults.push(`scrolls sideways by ${px} px`);
    found.push(...faults.map((fault) => `${size.width} px: ${fault}`));
  }
  return found;
}

/** How far the page can be scrolled sideways, whichever way its text runs, px. */
export function sideways(page: Page): Promise<number> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth, dir } = document.documentElement;
    scrollTo(dir === "rtl" ? -9999 : 9999, 0);
    const moved = Math.abs(scrollX);
    scrollTo(0, 0);
    return Math.max(moved, scrollWidth - clientWidth);
  });
}
