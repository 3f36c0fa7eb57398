import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { again } from "../../client/texts/again.ts";
import { t } from "../../client/texts/app.ts";
import { format } from "../../client/units.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { FOUND } from "../../model/fit/row.ts";
import type { Tune } from "../../model/tune.ts";
import type { Health } from "../../server/contract.ts";
import type { FitReport } from "../../server/fit-report.ts";
import { inventedTunes, tuneFarOff } from "./crowd.ts";
import { faultsAt } from "./faults.ts";
import { openPage } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";
import { LAPTOP, PHONE } from "./views.ts";

let browser: Browser;
let atlas: RunningAtlas;
let published: PublishedFit;
let tunes: number;

/** Two classes; some tunes without a temperature, place or month, some with high CO, found in every way, one far off. */
function variedTunes(): Tune[] {
  const tunes = inventedTunes(90).map((tune, n) => ({
    ...tune,
    heater: n % 7 === 3 ? { heat_kW: 2 } : tune.heater,
    air: n % 3 === 0 ? {} : tune.air,
    site: n % 8 === 5 ? { elevation_m: tune.site.elevation_m } : tune.site,
    tuned_on: n % 5 === 0 ? undefined : `2026-${String(1 + (n % 10)).padStart(2, "0")}`,
    low: n % 4 === 1 ? { ...tune.low, co_ppm: 60 + n } : tune.low,
    found: FOUND[n % 4],
  }));
  return [...tunes, tuneFarOff(91)];
}

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas()]);
  await atlas.load(variedTunes());
  published = await atlas.get<PublishedFit>("/fit");
  ({ tunes } = await atlas.get<Health>("/health"));
});

afterAll(async () => {
  await atlas?.close();
});

const open = (options = {}) => openPage(browser, `${atlas.url}/#/data`, options);
const outcome = (page: Page) => page.locator(".again");
/** Presses the button, whatever it says, and waits for a sentence. */
async function press(page: Page, sentence: string) {
  await page.locator("section[aria-labelledby=again] button").click();
  await expect.poll(() => outcome(page).textContent()).toBe(sentence);
}

const SAME = () => again.same(published.version, format(2 * tunes), published.groups.length);

test("the browser makes the published fit again, every figure to the last digit", async () => {
  expect(published.groups).toHaveLength(4);
  expect(published.groups.every(({ may_copy }) => may_copy > 0 && may_copy < 1)).toBe(true);
  const { page, close } = await open();
  await press(page, SAME());
  const rows = await page
    .getByRole("region", { name: again.tableLabel })
    .locator("tbody tr")
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.children].map((cell) => cell.textContent?.replaceAll("\u00a0", " ")),
      ),
    );
  expect(rows).toEqual(
    published.groups.map(({ heat_kW, end, intercept, slope, spread }) => [
      `${t.heater.heatOption(heat_kW)}, ${t.endWord[end]}`,
      ...[intercept, slope, spread].map((figure) => `${figure}${again.agrees}`),
      again.agrees,
    ]),
  );
  await expect.poll(() => outcome(page).getAttribute("aria-live")).toBe("polite");
  await close();
});

test("meanwhile it says how many fits are made, of how many", async () => {
  const { page, close } = await open();
  await page.locator(".again").waitFor({ state: "attached" });
  await page.evaluate(() => {
    const seen: string[] = [];
    Object.assign(window, { seen });
    new MutationObserver(() => {
      const bar = document.querySelector<HTMLProgressElement>(".again progress");
      if (bar?.hasAttribute("value")) seen.push(`${bar.value} of ${bar.max}`);
    }).observe(document.querySelector(".again") as Node, {
      subtree: true,
      childList: true,
      attributes: true,
    });
  });
  await press(page, SAME());
  const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  // Two sizes with two ends each, alone and together.
  expect(seen.at(-1)).toMatch(/^[1-8] of 8$/);
  expect(seen).toEqual(seen.toSorted());
  await expect.poll(() => page.locator(".again progress").count()).toBe(0);
  await close();
});

test("the command makes the same of the same file", async () => {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-again-")), "tunes.csv");
  writeFileSync(file, await (await fetch(`${atlas.url}/api/tunes.csv`)).text());
  const { stdout } = spawnSync(process.execPath, ["server/fit-command.ts", file, "--json"], {
    encoding: "utf8",
  });
  const { groups, code, settings, rows_sha256 } = JSON.parse(stdout) as FitReport;
  const plain = groups.map(({ at, rejected, ...rest }) => ({ ...rest, rejected: rejected.length }));
  expect({ groups: plain, code, settings, rows_sha256 }).toEqual({
    groups: published.groups,
    code: published.code,
    settings: published.settings,
    rows_sha256: published.rows_sha256,
  });
});

/** Opens the page over an atlas that answers one question otherwise. */
async function openWith(path: string, answer: (real: unknown) => unknown) {
  const opened = await open();
  await opened.page.route(`**${path}`, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, json: answer(await response.json()) });
  });
  return opened;
}

/** The same fit but for the last digit of one figure. */
const oneDigitOff = (real: unknown) => {
  const fit = real as PublishedFit;
  const [first, ...rest] = fit.groups as [PublishedFit["groups"][0]];
  const off = { ...first, slope: first.slope + 2 ** -53 * Math.sign(first.slope) * 2 };
  return { ...fit, groups: [off, ...rest] };
};

test("one last digit off is said, with both figures", async () => {
  const { page, close } = await openWith("/api/fit", oneDigitOff);
  await press(page, again.differs(published.version, 1, published.groups.length));
  await expect.poll(() => page.locator("tr[data-same=false]").count()).toBe(1);
  const first = published.groups[0] as PublishedFit["groups"][0];
  const cell = page.locator("tr[data-same=false] td").nth(1);
  await expect.poll(() => cell.textContent()).toContain(String(first.slope));
  await expect.poll(() => cell.textContent()).toContain(again.published(""));
  await close();
});

test("a figure that is not in the table is compared too", async () => {
  const { page, close } = await openWith("/api/fit", (real) => {
    const fit = real as PublishedFit;
    return { ...fit, groups: fit.groups.map((g) => ({ ...g, votes: g.votes + 1 })) };
  });
  const all = published.groups.length;
  await press(page, again.differs(published.version, all, all));
  await expect
    .poll(() => page.locator("td:last-child").allTextContents())
    .toEqual(published.groups.map(() => again.differ));
  await close();
});

test("a fit that is being made again is no difference: it says so and tries again", async () => {
  const { page, close } = await openWith("/api/fit", oneDigitOff);
  await page.route("**/api/health", async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, json: { ...(await response.json()), fit_pending: true } });
  });
  await press(page, again.moving(published.version));
  await expect
    .poll(() => page.getByRole("button", { name: again.retry, exact: true }).count())
    .toBe(1);
  await page.unrouteAll();
  await press(page, SAME());
  await close();
});

test("a fit by another estimator is told from a difference", async () => {
  const { page, close } = await openWith("/api/fit", (real) => ({
    ...(oneDigitOff(real) as PublishedFit),
    estimator: "another",
  }));
  await press(page, again.otherCode(published.version));
  await close();
});

test("no connection, a failing atlas and a torn answer are said in plain words", async () => {
  const { page, close } = await open();
  await press(page, SAME());
  await page.context().setOffline(true);
  await press(page, again.unreachable);
  await page.context().setOffline(false);
  await page.route("**/api/tunes.csv", (route) => route.fulfill({ status: 503, body: "busy" }));
  await press(page, again.failed(503));
  await page.unrouteAll();
  await page.route("**/api/tunes.csv", (route) => route.fulfill({ body: 'id,"contributor\r\na' }));
  await press(page, again.broken);
  await page.unrouteAll();
  await press(page, SAME());
  await close(/Failed to load resource: (net::|.* 503)/);
});

test("nothing of it is fetched before it is asked for", async () => {
  const { page, close } = await open();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await page.getByRole("button", { name: again.button }).waitFor();
  expect(asked.filter((path) => path.includes("fit-again") || path.includes("csv"))).toEqual([]);
  await press(page, SAME());
  expect(asked.filter((path) => path.includes("/fit-again"))).toHaveLength(1);
  await close();
});

test("accessible in both themes at both sizes, never scrolls sideways, a large target", async () => {
  const { page, close } = await open();
  await press(page, SAME());
  expect(await faultsAt(page, [LAPTOP, PHONE])).toEqual([]);
  const height = await page
    .getByRole("button", { name: again.button })
    .evaluate((one) => one.getBoundingClientRect().height);
  expect(height).toBeGreaterThanOrEqual(43.5);
  await close();
});
