import type { Browser, Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { t } from "../../client/texts/app.ts";
import { basisWords } from "../../client/texts/basis.ts";
import { axeFinds, sideways } from "./faults.ts";
import { CUT_OFF, leave, openPage } from "./open-page.ts";
import type { RunningAtlas } from "./running-atlas.ts";
import { demoAtlas, emptyAtlas, plainBrowser } from "./shared.ts";
import { goTo, VIEWS } from "./views.ts";

let browser: Browser;
let demo: RunningAtlas;
let empty: RunningAtlas;

beforeAll(async () => {
  [browser, demo, empty] = await Promise.all([plainBrowser(), demoAtlas(), emptyAtlas()]);
});

/** axe looks at the others in their own tests, filled in. */
const AXE_HERE = ["data/style"];

/** A phone; a laptop at 200 %; a very wide screen. */
const WIDTHS = [
  { width: 360, height: 740 },
  { width: 640, height: 400 },
  { width: 2560, height: 1300 },
];
/** Longer lines lose the eye, in characters of average width. */
const LONGEST_LINE = 115;

test("every view: from a phone to a wide screen, from left and from right, by keyboard", async () => {
  const { page, close } = await openPage(browser, `${demo.url}/#/steward`);
  for (const view of Object.keys(VIEWS)) {
    await goTo(page, view);
    if (AXE_HERE.includes(view)) expect(await axeFinds(page)).toEqual([]);
    for (const size of WIDTHS) {
      await page.setViewportSize(size);
      for (const dir of ["rtl", "ltr"]) {
        await page.evaluate((d) => {
          document.documentElement.dir = d;
        }, dir);
        await expect
          .poll(() => sideways(page), { message: `#/${view}, ${size.width} px, ${dir}` })
          .toBe(0);
      }
    }
    await expect.poll(() => longLines(page), { message: `#/${view}, 2560 px` }).toEqual([]);
    await page.setViewportSize({ width: 1280, height: 800 });
    expect(await tabThrough(page), `#/${view}`).toEqual({ unseen: [], trapped: false });
  }
  await close();
});

function longLines(page: Page): Promise<string[]> {
  return page.locator("p:not(.visually-hidden), li, dd").evaluateAll(
    (texts, longest) =>
      texts
        .filter((element) => {
          const range = document.createRange();
          range.selectNodeContents(element);
          const width = Math.max(0, ...[...range.getClientRects()].map((line) => line.width));
          const size = Number.parseFloat(getComputedStyle(element).fontSize);
          return (element.textContent ?? "").length > longest && width > longest * size * 0.52;
        })
        .map((element) => (element.textContent ?? "").slice(0, 60)),
    LONGEST_LINE,
  );
}

/** What took the focus, in order, and whether it showed. */
type Focused = { html: string; ringed: boolean }[];

/** Presses Tab until the page is through: what took the focus without showing it, and whether there was no end to it. */
async function tabThrough(page: Page): Promise<{ unseen: string[]; trapped: boolean }> {
  await page.evaluate(() => {
    // The keyboard begins at the page's head, wherever it was.
    document.body.tabIndex = -1;
    document.body.focus();
    document.body.removeAttribute("tabindex");
    scrollTo(0, 0);
    const focused: Focused = [];
    Object.assign(globalThis, { focused });
    const noted = globalThis as unknown as { note?: (event: FocusEvent) => void };
    if (noted.note) removeEventListener("focusin", noted.note);
    noted.note = ({ target }) => {
      const element = target as Element;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      const ringed =
        (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== "none";
      focused.push({
        ringed: ringed && box.width > 1 && box.height > 1,
        html: element.outerHTML.slice(0, 140),
      });
    };
    addEventListener("focusin", noted.note);
  });
  for (let pressed = 0, most = 1; pressed < most; ) {
    // Asking after each press would take most of the time.
    for (const end = pressed + 8; pressed < end; pressed++) await page.keyboard.press("Tab");
    const { stops, focused } = await page.evaluate(() => ({
      stops: document.querySelectorAll(
        "a[href], button, input, select, summary, [tabindex='0'], canvas",
      ).length,
      focused: (globalThis as unknown as { focused: Focused }).focused,
    }));
    // Behind the last stop the browser begins again at the first.
    const again = focused.findIndex(({ html }, i) => i > 0 && html === focused[0]?.html);
    if (again > 0) {
      const unseen = focused.slice(0, again).filter(({ ringed }) => !ringed);
      return { unseen: [...new Set(unseen.map(({ html }) => html))], trapped: false };
    }
    // What comes meanwhile has stops of its own.
    most = stops + 20;
  }
  return { unseen: [], trapped: true };
}

test("waiting, failing, without tunes, out of reach, with everything opened: axe finds nothing", async () => {
  const { page, close } = await openPage(browser, "about:blank");
  let answering = false;
  let waiting = true;
  await page.route("**/api/fit", async (route) => {
    if (answering) return route.continue();
    return waiting ? undefined : route.abort();
  });
  await page.goto(empty.url);
  await page.getByText(t.loading).waitFor();
  expect(await axeFinds(page), "waiting").toEqual([]);
  waiting = false;
  await leave(page);
  await page.goto(empty.url);
  await page.getByText(t.noFit).waitFor();
  expect(await axeFinds(page), "failing").toEqual([]);
  answering = true;
  await page.getByRole("button", { name: t.retry }).click();
  await page.getByText(basisWords.prior("5")).waitFor();
  await page.locator("details.offline").waitFor();
  // One after the other, whatever comes to the page meanwhile.
  const closed = page.locator("details:not([open]) > summary");
  while ((await closed.count()) > 0) await closed.first().click();
  await page.getByText(t.safety.not_for[0] as string).waitFor();
  expect(await axeFinds(page), "without tunes, everything opened").toEqual([]);
  answering = false;
  await page.reload();
  await page.getByText(t.unreachable).waitFor();
  expect(await axeFinds(page), "out of reach").toEqual([]);
  await page.goto(`${empty.url}/#/scaling`);
  await page.locator(".scaling-chart").waitFor();
  expect(await axeFinds(page), "scaling without tunes").toEqual([]);
  await close(CUT_OFF);
});

test("the answer is heard as one sentence for each end", async () => {
  const { page, close } = await openPage(browser, demo.url);
  await page.locator(".end output").first().waitFor();
  const heard = await page.locator(".answer").ariaSnapshot();
  for (const end of [t.endWord.low, t.endWord.high]) {
    expect(heard).toMatch(
      new RegExp(
        `Start at \\d\\.\\d hertz at the ${end}; 8 in 10 times the best is between \\d\\.\\d\\d and \\d+\\.\\d\\d\\.`,
      ),
    );
  }
  expect(heard).not.toContain("img");
  await close();
});

test("less motion is honoured, and few colours are enough", async () => {
  const { page, close } = await openPage(browser, demo.url, {
    reducedMotion: "reduce",
    forcedColors: "active",
  });
  await page.locator(".end output").first().waitFor();
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll("*")]
      .filter((element) => {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(element);
        return (
          animationName !== "none" ||
          Number.parseFloat(transitionDuration) > 0 ||
          scrollBehavior === "smooth"
        );
      })
      .map((element) => element.outerHTML.slice(0, 100)),
  );
  expect(moving).toEqual([]);
  const bare = await page
    .locator("button:not(.skip, .plain), input:not([type=checkbox]), select")
    .evaluateAll((controls) =>
      controls
        .filter(
          (c) =>
            Number.parseFloat(getComputedStyle(c).borderBottomWidth) < 1 &&
            !c.closest(".maplibregl-map"),
        )
        .map((c) => c.outerHTML.slice(0, 100)),
    );
  expect(bare).toEqual([]);
  const current = page.locator("nav a[aria-current]").first();
  await expect
    .poll(() => current.evaluate((a) => getComputedStyle(a).textDecorationLine))
    .toBe("underline");
  const drawn = await page
    .locator(".band-value")
    .first()
    .evaluate((line) => getComputedStyle(line).stroke);
  const behind = await page
    .locator(".sheet")
    .first()
    .evaluate((sheet) => getComputedStyle(sheet).backgroundColor);
  expect(drawn).not.toBe(behind);
  await close();
});
