import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page, ViewportSize } from "playwright-core";
import { THEMES } from "./views.ts";

/** The packed one, since each page reads it anew for each look. */
const axeSource = readFileSync(
  createRequire(import.meta.resolve("@axe-core/playwright")).resolve("axe-core/axe.min.js"),
  "utf8",
);

/**
 * What axe-core finds, a line each: by all its rules in the light theme, by colour contrast in the dark one, since
 * nothing else differs between them. The map's canvas is tested by its pixels.
 */
export async function axeFinds(
  page: Page,
  {
    within,
    themes = THEMES,
  }: { within?: string; themes?: readonly (typeof THEMES)[number][] } = {},
): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of themes) {
    await page.emulateMedia({ colorScheme });
    // Without a second page to run in, which only frames of other origins need: half the time.
    const axe = new AxeBuilder({ page, axeSource })
      .setLegacyMode(true)
      // What passes need not be told node by node.
      .options({ resultTypes: ["violations"] })
      .exclude(".maplibregl-canvas");
    if (within) axe.include(within);
    if (colorScheme === "dark") axe.withRules("color-contrast");
    const { violations } = await axe.analyze();
    for (const { id, nodes } of violations)
      found.push(...nodes.map(({ html }) => `${colorScheme}, ${id}: ${html}`));
  }
  return found;
}

/**
 * What axe finds at each size, and whether the page can be scrolled sideways there. The dark theme's contrast is looked at
 * once: a size changes no colour, and of a long page it takes as much as all the rest.
 */
export async function faultsAt(
  page: Page,
  sizes: readonly ViewportSize[],
  within?: string,
): Promise<string[]> {
  const found: string[] = [];
  for (const [i, size] of sizes.entries()) {
    await page.setViewportSize(size);
    const themes = i === 0 ? THEMES : (["light"] as const);
    const faults = await axeFinds(page, { ...(within && { within }), themes });
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
