import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { fitAtlas } from "../../model/fit/fit.ts";
import { twoFits } from "../../model/two-fits.ts";
import type { AlarmsAnswer } from "../../server/contract.ts";
import * as answers from "../../server/contract.ts";
import type { AlarmNews } from "../../server/published-fit.ts";
import { openTestAtlas, post } from "./atlas.ts";
import { honestCrowd, tuneAt } from "./crowd.ts";
import { openStewardsAtlas, type StewardsAtlas } from "./stewards-atlas.ts";

let atlas: StewardsAtlas;
let told: AlarmNews[];
/** Trial fits are made once it opens. */
let gate: Promise<void> | undefined;
const warned = vi.spyOn(console, "warn").mockImplementation(() => {});

/** Ten honest owners who count already, and new ones who must wait. */
beforeEach(async () => {
  const before = await openTestAtlas({ opened: "2026-11-10T12:00:00Z" });
  for (const tune of honestCrowd(10, 1)) await post(before.app, tune);
  await before.stop();
  told = [];
  gate = undefined;
  atlas = await openStewardsAtlas({
    file: before.file,
    newKeyDays: 6,
    onAlarms: (news) => told.push(news),
    fits: (here) => ({
      ...here,
      without: async (tunes) => {
        await gate;
        return here.without(tunes);
      },
    }),
  });
  await atlas.fit.refresh();
  told.length = 0;
});
afterEach(async () => {
  warned.mockClear();
  await atlas.close();
});

const PLACE = { lat: 41.2, lon: 74.9 };
/** Too lean at a high place, where it moves the average of ten by more than 2 %. */
const lean = (n: number) =>
  tuneAt(4000, 0.75 + 0.001 * n, `lean-owner-of-the-pass-${String(n).padStart(4, "0")}`);

/** Has a steward let a lean owner count, whom the freeze then stops. */
async function freeze(): Promise<string> {
  const { id } = await atlas.submit(lean(0));
  const [{ contributor }] = (await atlas.json("/api/steward/waiting")).waiting;
  await atlas.send(`/api/steward/contributors/${contributor}/count`, { reason: "By mistake." });
  await atlas.fit.settle();
  return id;
}
const alarms = async (): Promise<AlarmsAnswer> =>
  answers.alarmsAnswer.parse(await atlas.json("/api/steward/alarms"));
const WEEK_ms = 7 * 86_400_000;

describe("publication held back", () => {
  test("is told of once, with nothing about a person", async () => {
    await freeze();
    const { refused } = await alarms();
    expect(refused).toMatchObject({ kept_back_on: null, let_through: false });
    const published = (await atlas.fit.current()).version;
    expect(told).toEqual([{ event: "held back", fit: published, alarms: refused?.alarms }]);
    expect(Object.keys(told[0]?.alarms[0] ?? {}).sort()).toEqual([
      ...["code", "end", "heat_kW", "sentence", "threshold", "value"],
    ]);
    await atlas.fit.refresh();
    expect(told.length).toBe(1);
  });

  test("stays so for a week from when a steward says so, with a reason in the log", async () => {
    await freeze();
    const before = (await atlas.fit.current()).version;
    atlas.pass(WEEK_ms - 86_400_000);
    const reason = "Waiting for its owner to answer.";
    const kept = await atlas.send("/api/steward/keep-back", { reason });
    expect([kept.status, answers.publicationAnswer.parse(await kept.json()).fit]).toEqual([
      ...[200, before],
    ]);
    expect((await alarms()).refused?.kept_back_on).toBe("2026-12-01");
    atlas.pass(2 * 86_400_000);
    await atlas.fit.refresh();
    expect((await atlas.fit.current()).version).toBe(before);
    const [newest] = (await atlas.json("/api/steward/decisions")).decisions;
    expect(newest).toMatchObject({
      ...{ tune: null, by: "steward", verdict: "held" },
      reasons: [{ code: "kept_back_by_steward", sentence: reason }],
    });
    atlas.pass(WEEK_ms);
    await atlas.fit.refresh();
    expect((await atlas.fit.current()).version).not.toBe(before);
    expect((await atlas.send("/api/steward/keep-back", { reason })).status).toBe(409);
  });

  test("ends when a steward lets it through", async () => {
    await freeze();
    const before = (await atlas.fit.current()).version;
    await atlas.send("/api/steward/publish", { reason: "The heater is a known odd one." });
    expect((await alarms()).refused?.let_through).toBe(true);
    await atlas.fit.settle();
    expect((await atlas.fit.current()).version).not.toBe(before);
    expect((await alarms()).refused).toBeNull();
  });
});

describe("the fit without a selection", () => {
  const without = async (tunes: string[]) =>
    answers.withoutAnswer.parse(await (await atlas.send("/api/steward/without", { tunes })).json());

  test("is the one that the other tunes alone give, beside the published one; nothing changes by it", async () => {
    const id = await freeze();
    const published = await atlas.fit.current();
    const seen = await without([id]);
    // The frozen tune left out, what is left are the published rows: the same fit again.
    expect(seen).toMatchObject({ fit: published.version, left_out: 1, tunes: 10 });
    for (const { change_pct, published: one, other } of seen.compared) {
      expect(change_pct).toBeCloseTo(0, 10);
      expect(other).toEqual(one);
    }
    expect(seen.compared.map((at) => at.elevation_m)).toEqual([
      ...[0, 1500, 3000, 4500],
      ...[0, 1500, 3000, 4500],
    ]);
    // Another one left out in its place, the lean one moves the average: what the freeze saw.
    const csv = await (await atlas.get("/api/tunes.csv")).text();
    const counted = [...new Set(csv.match(/^[0-9a-f]{24}/gm))].filter((one) => one !== id);
    const moved: number[] = [];
    for (const one of counted)
      moved.push(...(await without([one])).compared.map((at) => at.change_pct));
    expect(Math.min(...moved)).toBeLessThan(-2);
    expect((await atlas.fit.current()).version).toBe(published.version);
  });

  test("says so when none of the selection counts", async () => {
    const { id } = await atlas.submit(lean(1));
    expect(await without([id])).toMatchObject({ left_out: 0, tunes: 10 });
    expect(await without(["unknown"])).toMatchObject({ left_out: 0, compared: [] });
    expect((await atlas.send("/api/steward/without", { tunes: [] })).status).toBe(422);
  });

  test("a few at once; one more is told to wait", async () => {
    const { promise, resolve } = Promise.withResolvers<void>();
    gate = promise;
    const one = () => atlas.send("/api/steward/without", { tunes: ["x"] });
    const sent = Array.from({ length: 4 }, one);
    const refused = await Promise.race(sent);
    expect([refused.status, refused.headers.get("Retry-After")]).toEqual([429, "10"]);
    resolve();
    const statuses = (await Promise.all(sent)).map(({ status }) => status);
    expect(statuses.sort()).toEqual([200, 200, 200, 429]);
    expect((await atlas.send("/api/steward/without", { tunes: ["x"] })).status).toBe(200);
  });
});

test("two fits side by side are the published bands, at elevations of the standard atmosphere", async () => {
  const fit = await atlas.fit.current();
  const prior = fitAtlas([]);
  const [sea] = twoFits(fit, prior, [5]);
  const group = fit.groups.find(({ end }) => end === "low");
  expect(sea?.published.pump_Hz_per_krpm).toBeCloseTo(Math.exp(group?.intercept ?? 0), 6);
  expect(sea?.published.mean_band[0]).toBeLessThan(sea?.published.pump_Hz_per_krpm ?? 0);
  // Physics alone knows less.
  const width = ([lower, upper]: [number, number]) => upper / lower;
  expect(width(sea?.other.mean_band ?? [1, 1])).toBeGreaterThan(
    width(sea?.published.mean_band ?? [1, 1]),
  );
});

describe("clusters", () => {
  test("new keys that agree in one place and month are found, honest owners beside them are not", async () => {
    const ids = [];
    for (let n = 0; n < 5; n++) {
      const tune = tuneAt(
        1300,
        1.12,
        `alike-owner-of-the-town-${String(n).padStart(4, "0")}`,
        PLACE,
      );
      ids.push((await atlas.submit(tune)).id);
    }
    await atlas.submit(tuneAt(1300, 0.97, "honest-owner-of-the-place", PLACE));
    const { clusters, looked_at } = answers.clustersAnswer.parse(
      await atlas.json("/api/steward/clusters"),
    );
    expect(looked_at).toBe(16);
    expect(clusters).toMatchObject([
      { month: "2026-11", heat_kW: 5, contributors: 5, new_contributors: 5, as_suggested: 0 },
    ]);
    expect(clusters[0]?.tunes.toSorted()).toEqual(ids.toSorted());
    expect(clusters[0]?.chance).toBeLessThan(0.03);
    expect(clusters[0]?.shift_pct.low).toBeGreaterThan(5);
    // Removed together, they are none any more.
    await atlas.send("/api/steward/decisions", {
      ...{ tunes: ids, verdict: "removed", usual_reason: "steward_many_alike" },
    });
    expect((await atlas.json("/api/steward/clusters")).clusters).toEqual([]);
  });
});
