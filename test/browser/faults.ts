import axe from "axe-core";
import type { Page, ViewportSize } from "playwright-core";
import { THEMES } from "./views.ts";

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
  // What is looked at may still be on its way.
  if (within) await page.locator(within).first().waitFor();
  for (const colorScheme of themes) {
    await page.emulateMedia({ colorScheme });
    // Reading it takes a page as long as looking for faults.
    if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(axe.source);
    const faults = await page.evaluate(
      async ({ place, rules }) => {
        const { run } = (globalThis as unknown as { axe: typeof axe }).axe;
        const { violations } = await run(
          { ...(place && { include: [place] }), exclude: [".maplibregl-canvas"] },
          // What passes need not be told node by node.
          {
            resultTypes: ["violations"],
            ...(rules && { runOnly: { type: "rule", values: rules } }),
          },
        );
        return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
      },
      {
        place: within,
        rules: coloursOnly || colorScheme === "dark" ? ["color-contrast"] : undefined,
      },
    );
    found.push(...faults.map((fault) => `${colorScheme}, ${fault}`));
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
