import { expect, test } from "vitest";
import { airAt } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import { bandsAt } from "../../model/fit/bands.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { Tune } from "../../model/tune.ts";
import { load } from "../../seed-demo/load.ts";
import { scenario } from "../../seed-demo/scenario.ts";
import { TRUTH } from "../../seed-demo/truth.ts";
import { ensureGeography } from "../../server/geography/build.ts";
import { openGeography } from "../../server/geography/geography.ts";
import { readFrom } from "../../server/geography/read-files.ts";
import { allFitRows, openTestAtlas } from "../server/atlas.ts";

const planted = scenario();

test("the same bodies every time", () => {
  expect(scenario()).toEqual(planted);
  expect(planted.length).toBeGreaterThan(400);
  // Some places were found on the map: their elevations are estimates, and say so.
  const good = planted.filter(({ kind }) => kind === "good");
  const vague = good.filter(({ tune }) => tune.site.elevation_sd_m !== undefined);
  expect(vague.length / good.length).toBeGreaterThan(0.1);
  expect(vague.length / good.length).toBeLessThan(0.3);
  // Most have swept, a few say nothing, and nobody has seen a minimum that the meter does not show.
  const ways = Map.groupBy(good, ({ tune }) => tune.found);
  const share = (found: Tune["found"]) => (ways.get(found)?.length ?? 0) / good.length;
  expect(share("bracketed")).toBeGreaterThan(0.55);
  expect(share("stopped early")).toBeGreaterThan(0.15);
  expect(share(undefined)).toBeLessThan(0.15);
  const swept = ways.get("bracketed") ?? [];
  expect(swept.filter(({ tune }) => tune.low.co_below_ppm ?? tune.high.co_below_ppm)).toEqual([]);
});

test("loaded through the API: slips held for the right reason, good tunes not, coefficients recovered", async () => {
  await ensureGeography("data/geography", { log: () => {} });
  const gazetteer = openGeography(readFrom("data/geography"));
  const atlas = await openTestAtlas({ demo: true, gazetteer });
  const verdicts = new Map<string, { verdict: string; reasons: { code: string }[]; id: string }>();
  const original = globalThis.fetch;
  globalThis.fetch = async (url, init) => {
    const response = await atlas.app.request(new URL(String(url)).pathname, init as RequestInit);
    const key = new Headers(init?.headers).get("Idempotency-Key") ?? "";
    verdicts.set(key, await response.clone().json());
    return response;
  };
  try {
    await load("http://atlas.test", planted);
    const once = (await (await atlas.app.request("/api/health")).json()).tunes;
    await load("http://atlas.test", planted);
    expect((await (await atlas.app.request("/api/health")).json()).tunes).toBe(once);
  } finally {
    globalThis.fetch = original;
  }
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const kept = csv
    .trimEnd()
    .split("\r\n")
    .map((line) => line.split(","));
  const at = kept[0]?.indexOf("elevation_sd_m") ?? -1;
  const vague = planted.filter(
    ({ key, tune }) =>
      tune.site.elevation_sd_m !== undefined && verdicts.get(key)?.verdict === "accepted",
  );
  expect(kept.slice(1).filter((cells) => cells[at] !== "")).toHaveLength(vague.length);
  await atlas.fit.refresh();
  const fit = await atlas.fit.current();
  const { rejected } = fitAtlas(await allFitRows(atlas.db));

  const good = planted.filter((p) => p.kind === "good");
  expect(good.filter((p) => verdicts.get(p.key)?.verdict === "held")).toEqual([]);
  for (const { key, reason } of planted.filter((p) => p.kind === "slip")) {
    const got = verdicts.get(key);
    expect(got?.verdict, `${key} ${reason}`).toBe("held");
    expect(got?.reasons.map((r) => r.code)).toContain(reason);
  }
  const setAside = new Set(rejected.map((r) => r.row));
  const rejectedGood = good.filter((p) => setAside.has(verdicts.get(p.key)?.id ?? ""));
  expect(rejectedGood.length / good.length).toBeLessThan(0.03);
  for (const { key, kind } of planted) {
    if (kind === "flood" || kind === "coordinated") {
      expect(setAside.has(verdicts.get(key)?.id ?? ""), key).toBe(true);
    }
  }
  for (const heat_kW of [2, 5, 8] as const) {
    for (const end of ENDS) {
      const group = fit.groups.find((g) => g.heat_kW === heat_kW && g.end === end);
      if (!group) throw new Error(`No fit for ${heat_kW} kW ${end}`);
      const { intercept, slope } = TRUTH[heat_kW][end];
      for (const elevation_m of [0, 1500, 3000]) {
        const { density_kg_m3 } = airAt(elevation_m);
        const [band] = bandsAt(group, density_kg_m3, { mean_levels: [0.99] }).mean_bands;
        const truth = Math.exp(intercept + slope * Math.log(density_kg_m3 / 1.225));
        expect(truth, `${heat_kW} kW ${end} at ${elevation_m} m`).toBeGreaterThan(
          band?.lower ?? Number.NaN,
        );
        expect(truth, `${heat_kW} kW ${end} at ${elevation_m} m`).toBeLessThan(
          band?.upper ?? Number.NaN,
        );
      }
    }
  }
  await atlas.close();
});
