import { rmSync } from "node:fs";
import { dirname } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, expect, test } from "vitest";
import { stewardWords as words } from "../../client/texts/steward.ts";
import type { AuditTrail, Health, HeldTunes } from "../../server/contract.ts";
import { WAIT_ms } from "../limits.ts";
import { openTestAtlas, post } from "../server/atlas.ts";
import { honestCrowd, tuneAt } from "../server/crowd.ts";
import { inventedTunes } from "./crowd.ts";
import { faultsAt } from "./faults.ts";
import { openPage } from "./open-page.ts";
import { type RunningAtlas, runAtlas } from "./running-atlas.ts";
import { plainBrowser } from "./shared.ts";
import { SIZES } from "./views.ts";

const TOKEN = "steward-token-for-tests-only";
const HELD = 12;
const DAY_ms = 86_400_000;

let browser: Browser;
let atlas: RunningAtlas;

/** Held: the elevation was typed in feet, by somebody else each time. */
function inFeet(n: number) {
  const [tune] = inventedTunes(1);
  if (!tune) throw new Error("There is no invented tune.");
  const { lat, lon, ...site } = { ...tune.site, elevation_m: 10_160 + n };
  return { ...tune, site, contributor: `in-feet-owner-${String(n).padStart(4, "0")}` };
}

beforeAll(async () => {
  [browser, atlas] = await Promise.all([plainBrowser(), runAtlas([], { STEWARD_TOKEN: TOKEN })]);
  await atlas.load(inventedTunes(16));
});

let sent = 0;
/** Each test finds a full queue. */
beforeEach(async () => {
  for (let left = await undecided(); left < HELD; left++) {
    await fetch(`${atlas.url}/api/tunes`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(inFeet(sent++)),
    });
  }
});

afterAll(async () => {
  await atlas?.close();
});

const asSteward = async <T>(path: string): Promise<T> =>
  (
    await fetch(`${atlas.url}/api/steward/${path}`, {
      headers: { Authorization: `Bearer ${TOKEN}` },
    })
  ).json();
const undecided = async () => (await asSteward<HeldTunes>("held?undecided=true")).held;
const trail = async () => (await asSteward<AuditTrail>("decisions?by=steward&limit=100")).decisions;

const soon = { timeout: WAIT_ms };
const sheet = (page: Page) => page.locator(".steward-tune > .sheet").first();
const shownTune = (page: Page) => sheet(page).getAttribute("data-tune");

/** Opens the page and gets in, all by keys. */
async function enter(page: Page): Promise<void> {
  const field = page.locator('[name="token"]');
  await field.waitFor();
  for (let n = 0; n < 40; n++) {
    if (await field.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press("Tab");
  }
  await page.keyboard.type(TOKEN);
  await page.keyboard.press("Enter");
  await page.locator(".steward-tune [data-tune]").waitFor();
}

const open = () => openPage(browser, `${atlas.url}/#/steward`);

/** Nothing is on its way any more: until then keys and buttons that decide do nothing. */
const idle = (page: Page) => page.locator('.steward-desk[aria-busy="false"]').waitFor();

async function key(page: Page, name: string): Promise<void> {
  await idle(page);
  await page.keyboard.press(name);
}

/** Asks for a verdict by its key, and waits for the reasons. */
async function ask(page: Page, name: string): Promise<void> {
  await key(page, name);
  await page.locator(".steward-why").waitFor();
}

/** A key, a reason's digit, and the next tune is there. */
async function decide(page: Page, name: string, digit: string): Promise<void> {
  const before = await shownTune(page);
  await ask(page, name);
  await page.keyboard.press(digit);
  await expect.poll(() => shownTune(page), soon).not.toBe(before);
}

test("a queue is cleared by the keyboard alone, undo included", async () => {
  const { page, close } = await open();
  await enter(page);
  await expect.poll(() => undecided()).toBe(HELD);

  // A look around changes nothing.
  const first = await shownTune(page);
  await key(page, "j");
  await expect.poll(() => shownTune(page), soon).not.toBe(first);
  await key(page, "ArrowUp");
  await expect.poll(() => shownTune(page), soon).toBe(first);

  await decide(page, "a", "1");
  await decide(page, "h", "1");
  await expect.poll(() => undecided()).toBe(HELD - 2);

  // A decision is taken back: the tune is before one again.
  const third = await shownTune(page);
  await decide(page, "r", "2");
  await key(page, "u");
  await expect.poll(() => shownTune(page), soon).toBe(third);
  await expect.poll(() => undecided()).toBe(HELD - 2);

  // Words are typed: no letter of them does anything else.
  await ask(page, "r");
  await page.keyboard.press("0");
  await page.keyboard.type("jkahrux 10 feet, told by its owner");
  await page.keyboard.press("Enter");
  await expect.poll(() => shownTune(page), soon).not.toBe(third);
  const [typed] = await trail();
  expect(typed).toMatchObject({
    tune: third,
    verdict: "removed",
    reasons: [{ sentence: "jkahrux 10 feet, told by its owner" }],
  });

  // Changed one's mind before the reason.
  await ask(page, "a");
  await page.keyboard.press("Escape");
  await page.locator(".steward-why").waitFor({ state: "detached" });

  // Several at once.
  for (const name of ["x", "j", "x", "j", "x"]) await key(page, name);
  await page.locator(".steward-list input:checked >> nth=2").waitFor();
  await ask(page, "r");
  await expect.poll(() => page.locator(".steward-why").textContent()).toContain(words.choosing(3));
  await page.keyboard.press("3");
  await expect.poll(undecided, soon).toBe(HELD - 6);

  for (let left = await undecided(); left > 0; left--) {
    await page.locator(".steward-tune [data-tune]").waitFor();
    await ask(page, "a");
    await page.keyboard.press("3");
    await expect.poll(undecided, soon).toBe(left - 1);
  }
  await page.getByRole("heading", { name: words.empty }).waitFor();

  // And the last one back from the empty queue.
  await key(page, "u");
  await page.locator(".steward-tune [data-tune]").waitFor();
  await expect.poll(() => undecided()).toBe(1);
  await close();
});

test("a hundred an hour is a key and a digit each: the list moves on by itself", async () => {
  const { page, close } = await open();
  await enter(page);
  const keys: string[] = [];
  page.on("request", (request) => {
    if (request.method() === "POST") keys.push(request.url());
  });
  for (let n = 0; n < HELD - 1; n++) await decide(page, "r", "1");
  // Nothing but the decisions was sent.
  expect(keys).toEqual(Array(HELD - 1).fill(`${atlas.url}/api/steward/decisions`));
  await expect.poll(() => undecided()).toBe(1);
  await close();
});

test("all of it by pointer too, with names for everything, on a phone and on a laptop", async () => {
  const { page, close } = await open();
  const faults: string[] = [];
  faults.push(...(await faultsAt(page, SIZES, ".steward")));
  await page.getByLabel(words.token).fill(TOKEN);
  await page.getByRole("button", { name: words.open, exact: true }).click();
  await page.locator(".steward-tune [data-tune]").waitFor();
  const press = async (name: string) => {
    await idle(page);
    await page.getByRole("button", { name, exact: true }).first().click();
  };
  await press(words.hold);
  await page.locator(".steward-why").waitFor();
  faults.push(...(await faultsAt(page, SIZES, ".steward")));
  await page.locator(".steward-why li button").first().click();
  await expect.poll(undecided, soon).toBe(HELD - 1);
  // A list asked for while something is on its way comes after it.
  await page.route(
    "**/api/steward/held*",
    async (route) => {
      await page.getByRole("button", { name: words.sameOwner, exact: true }).first().click();
      await route.continue();
    },
    { times: 1 },
  );
  await press(words.undo);
  await page.getByRole("button", { name: /^Owner/, pressed: true }).waitFor();
  await expect.poll(() => page.locator(".steward-list li").count()).toBe(1);
  await page.locator('.steward-list input[type="checkbox"]').check();
  await press(words.accept);
  await page.locator(".steward-why li button").nth(1).click();
  await expect.poll(undecided, soon).toBe(HELD - 1);
  // Now that it counts: what the fit would be without it.
  await press(words.without);
  await page.locator(".steward-trial tbody tr").nth(7).waitFor();
  faults.push(...(await faultsAt(page, SIZES, ".steward")));
  expect(faults).toEqual([]);
  // From the log, the same is taken back.
  await page
    .locator(".steward-trail")
    .getByRole("button", { name: /^Take back decision/ })
    .first()
    .click();
  await expect.poll(undecided, soon).toBe(HELD);
  await close();
});

test("no key does anything once keys are turned off, and none while somebody types", async () => {
  const { page, close } = await open();
  await enter(page);
  const shown = await shownTune(page);
  const keys = page.getByLabel(words.keysOn);
  await keys.uncheck();
  for (const name of ["j", "a", "r", "x", "u"]) await page.keyboard.press(name);
  await expect.poll(() => shownTune(page)).toBe(shown);
  await expect
    .poll(() => page.locator(".steward-why, .steward-list input:checked").count())
    .toBe(0);
  await keys.check();
  await key(page, "j");
  await expect.poll(() => shownTune(page), soon).not.toBe(shown);
  await close();
});

test("a wrong token is told as such and kept nowhere; the right one stays in the tab alone", async () => {
  const { page, close } = await open();
  const stored = () =>
    page.evaluate(() => JSON.stringify([{ ...localStorage }, { ...sessionStorage }]));
  await page.getByLabel(words.token).fill("not-the-token-at-all");
  await page.keyboard.press("Enter");
  await page.getByText(words.wrong).waitFor();
  await expect.poll(() => stored()).not.toContain("not-the-token");
  await expect.poll(() => page.getByLabel(words.token).getAttribute("type")).toBe("password");
  await page.getByLabel(words.token).fill(TOKEN);
  await page.keyboard.press("Enter");
  await page.locator(".steward-tune [data-tune]").waitFor();
  await expect
    .poll(() => page.evaluate(() => JSON.stringify({ ...localStorage })))
    .not.toContain(TOKEN);
  await page.reload();
  await page.locator(".steward-tune [data-tune]").waitFor();
  await page.getByRole("button", { name: words.leave, exact: true }).click();
  await page.getByLabel(words.token).waitFor();
  await expect.poll(() => stored()).not.toContain(TOKEN);
  await close(/401/);
});

test("new owners, alarms and clusters: somebody counts by mistake, the fit is held back, and the steward decides", async () => {
  // Ten owners who have counted for weeks.
  const before = await openTestAtlas({ opened: new Date(Date.now() - 20 * DAY_ms).toISOString() });
  for (const { tuned_on: _, ...tune } of honestCrowd(10, 1)) await post(before.app, tune);
  await before.stop();
  const own = await runAtlas([], {
    ATLAS_DB: before.file,
    ATLAS_SECRET: "a secret for tests only",
    STEWARD_TOKEN: TOKEN,
    NEW_KEY_DAYS: "6",
  });
  const alike = Array.from({ length: 5 }, (_, n) =>
    tuneAt(1300, 1.12, `alike-owner-of-the-town-${n}`, { lat: 41.2, lon: 74.9 }),
  );
  // One of the ten has a heater of a size that nobody else has.
  const contributor = honestCrowd(1, 1)[0]?.contributor ?? "";
  const ofNewSize = { ...tuneAt(500, 1, contributor), heater: { heat_kW: 8 } };
  // Too lean, high up: it moves the average of ten by more than 2 %.
  for (const tune of [tuneAt(4000, 0.75, "lean-owner-of-the-pass-0000"), ...alike, ofNewSize]) {
    const sent = await fetch(`${own.url}/api/tunes`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(tune),
    });
    expect(sent.status).toBe(201);
  }
  const frozen = async () => (await own.get<Health>("/health")).frozen;
  const { page, close } = await openPage(browser, `${own.url}/#/steward`);
  // As with very many who wait: three a page.
  await page.route(/steward\/waiting\?limit=50/, (route) =>
    route.continue({ url: route.request().url().replace("limit=50", "limit=3") }),
  );
  await page.getByLabel(words.token).fill(TOKEN);
  await page.keyboard.press("Enter");
  const owners = page.locator(".steward-new");
  // Without a reason nobody counts.
  const letCount = owners.getByRole("button", { name: words.letCount });
  await letCount.first().click();
  await owners.locator("[aria-invalid]").waitFor();
  await owners.getByLabel(words.reason).fill("Known from the club, or so it seemed.");
  await expect.poll(() => letCount.count()).toBe(4);
  const more = owners.getByRole("button", { name: words.more });
  await more.click();
  await more.waitFor({ state: "detached" });
  await expect.poll(() => letCount.count()).toBe(7);
  const size = owners.getByText(words.sizeWaits("8", 1, 3));
  await expect.poll(() => size.isVisible()).toBe(true);
  await letCount.last().click();
  await size.waitFor({ state: "detached" });
  await letCount.first().click();
  await expect.poll(() => letCount.count(), soon).toBe(5);
  await expect.poll(frozen, soon).toBe(true);

  await page.reload();
  const alarms = page.locator('.steward-alarms[data-frozen="true"]');
  await alarms.waitFor();
  const faults = await faultsAt(page, SIZES, ".steward");
  expect(faults).toEqual([]);
  await alarms.getByLabel(words.reason).fill("Its owner was asked.");
  await page.getByRole("button", { name: words.keepBack }).click();
  await alarms.getByText(words.keptBack("").slice(0, 20)).waitFor();
  await expect.poll(() => frozen()).toBe(true);

  // The cluster is looked at, all of it selected, and removed by a key and a digit.
  await page.locator(".steward-clusters button").first().click();
  await expect.poll(() => page.locator(".steward-list input:checked").count(), soon).toBe(5);
  await ask(page, "r");
  await page.keyboard.press("4");
  await page.locator(".steward-clusters li").waitFor({ state: "detached" });

  // Its owner answered: the heater is an odd one.
  await alarms.getByLabel(words.reason).fill("Its owner answered: an odd heater.");
  await page.getByRole("button", { name: words.publish, exact: true }).click();
  await expect.poll(frozen, soon).toBe(false);
  await close();
  await own.close();
  rmSync(dirname(before.file), { recursive: true });
});
