import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { allFitRows, goodTune, openTestAtlas, post } from "./atlas.ts";
import { bearer, freshAtlas } from "./fresh-atlas.ts";

const atlas = freshAtlas();
const { get } = atlas;

describe("a tune's life", () => {
  test("submitted, read, revised, withdrawn; the fit follows", async () => {
    const response = await post(atlas.app, goodTune());
    expect(response.status).toBe(201);
    const { id, receipt, verdict } = await response.json();
    expect(verdict).toBe("accepted");
    await atlas.fit.refresh();
    const read = await get(`/api/tunes/${id}`, bearer(receipt));
    expect(await read.json()).toMatchObject({ id, fit: { low: "kept", high: "kept" } });
    const revised = { ...goodTune(), low: { ...goodTune().low, pump_Hz: 1.2 } };
    const put = await atlas.app.request(`/api/tunes/${id}`, {
      method: "PUT",
      headers: { "Content-Type": "application/json", ...bearer(receipt) },
      body: JSON.stringify(revised),
    });
    expect(put.status).toBe(200);
    expect(
      (await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) }))
        .status,
    ).toBe(204);
    expect((await get(`/api/tunes/${id}`, bearer(receipt))).status).toBe(404);
    await atlas.fit.refresh();
    expect((await (await get("/api/fit")).json()).groups).toEqual([]);
    expect(await (await get("/api/tunes.csv")).text()).not.toContain(id);
  });

  test("a month that has begun somewhere has come, one that has begun nowhere has not", async () => {
    const verdictAt = async (instant: string, n: number) => {
      const atlas = await openTestAtlas();
      atlas.pass(Date.parse(instant) - Date.parse("2026-11-25T12:00:00Z"));
      const { verdict } = await (
        await post(atlas.app, { ...goodTune(n), tuned_on: "2026-12" })
      ).json();
      await atlas.close();
      return verdict;
    };
    // On Kiritimati, 14 h ahead, December begins at 10:00 UTC of 30 November.
    expect(await verdictAt("2026-11-30T10:05:00Z", 1)).toBe("accepted");
    expect(await verdictAt("2026-11-30T09:55:00Z", 2)).toBe("held");
  });

  test("without a receipt 401, with a wrong one 404", async () => {
    const { id } = await (await post(atlas.app, goodTune())).json();
    expect((await get(`/api/tunes/${id}`)).status).toBe(401);
    expect((await get(`/api/tunes/${id}`, bearer("wrong"))).status).toBe(404);
  });

  test("a repeated submission gets the same answer and receipt; another body with its key 409", async () => {
    const key = { "Idempotency-Key": "key-0000001" };
    const first = await (await post(atlas.app, goodTune(), key)).json();
    const again = await (await post(atlas.app, goodTune(), key)).json();
    expect(again).toEqual(first);
    expect((await post(atlas.app, { ...goodTune(), tuned_on: "2026-09" }, key)).status).toBe(409);
    const together = await Promise.all(
      [1, 2, 3].map(() =>
        post(atlas.app, goodTune(9), { "Idempotency-Key": "key-0000002" }).then((r) => r.json()),
      ),
    );
    expect(new Set(together.map((t) => t.id)).size).toBe(1);
    expect((await (await get("/api/health")).json()).tunes).toBe(2);
  });

  test("a slip is held with a sentence and stays out of the fit", async () => {
    const tune = { ...goodTune(), site: { ...goodTune().site, elevation_m: 4265 } };
    const { verdict, reasons } = await (await post(atlas.app, tune)).json();
    expect(verdict).toBe("held");
    expect(reasons[0]).toMatchObject({ code: "elevation_in_feet" });
    await atlas.fit.refresh();
    expect((await (await get("/api/fit")).json()).version).toBe("prior");
  });
});

describe("an elevation worked out from a position", () => {
  const site = { ...goodTune().site, elevation_sd_m: 123 };
  const vague = { ...goodTune(1), site };

  test("widens the density's spread as far as the standard atmosphere's gradient makes it, in the answer and in the rows of the fit", async () => {
    const exact = await (await post(atlas.app, goodTune(1))).json();
    const { id, receipt, air } = await (await post(atlas.app, vague)).json();
    // ISO 2533: near the ground pressure, and with it density at a known temperature, falls by 12 % a kilometre.
    const added = Math.sqrt(air.ln_density_sd ** 2 - exact.air.ln_density_sd ** 2);
    expect(added).toBeCloseTo(0.12 * 0.13, 6);
    expect(air.density_kg_m3).toBe(exact.air.density_kg_m3);
    const kept = await (await get(`/api/tunes/${id}`, bearer(receipt))).json();
    expect(kept.air).toEqual(air);
    expect(kept.tune.site.elevation_sd_m).toBe(130);
    const rows = (await allFitRows(atlas.db)).map((row) => [row.row, row.ln_density_sd]);
    expect(rows).toEqual(
      expect.arrayContaining([
        [id, Number(air.ln_density_sd.toFixed(3))],
        [exact.id, Number(exact.air.ln_density_sd.toFixed(3))],
      ]),
    );
  });

  test("a station pressure makes it of no account", async () => {
    const given = { temperature_C: -4, humidity_pct: 60, pressure_hPa: 866 };
    const answers = [vague, goodTune(1)].map((tune) => post(atlas.app, { ...tune, air: given }));
    const [a, b] = await Promise.all(answers.map(async (answer) => (await answer).json()));
    expect(a.air).toEqual(b.air);
  });

  test("is in the open data, and goes when the owner states the elevation", async () => {
    const { id, receipt } = await (await post(atlas.app, vague)).json();
    const columns = async () => {
      const [head, line] = (await (await get("/api/tunes.csv")).text()).split("\r\n");
      const cells = line?.split(",") ?? [];
      return Object.fromEntries((head ?? "").split(",").map((name, i) => [name, cells[i]]));
    };
    const property = async () =>
      (await (await get("/api/tunes.geojson")).json()).features[0].properties.elevation_sd_m;
    const before = await columns();
    expect([before.elevation_sd_m, await property()]).toEqual(["130", 130]);
    const { columns: described } = await (await get("/api/dictionary.json")).json();
    expect(described).toContainEqual(
      expect.objectContaining({ name: "elevation_sd_m", unit: "m" }),
    );
    const revise = (tune: unknown) =>
      atlas.app.request(`/api/tunes/${id}`, {
        method: "PUT",
        headers: { "Content-Type": "application/json", ...bearer(receipt) },
        body: JSON.stringify(tune),
      });
    // Revised with the same site it stays; stated by the owner it is gone.
    await revise({ ...vague, tuned_on: "2026-09" });
    expect(await columns()).toMatchObject({ elevation_sd_m: "130", tuned_on: "2026-09" });
    await revise(goodTune(1));
    const after = await columns();
    expect([after.elevation_sd_m, await property()]).toEqual(["", null]);
    expect(Number(after.ln_density_sd)).toBeLessThan(Number(before.ln_density_sd));
  });
});

test("a high final CO is accepted with a word on the heater's safety, in every answer about the tune", async () => {
  const sooty = {
    ...goodTune(),
    low: { ...goodTune().low, co_ppm: 450 },
    high: { ...goodTune().high, co_ppm: 600 },
  };
  const key = { "Idempotency-Key": "key-sooty-01" };
  const answer = answers.submitted.parse(await (await post(atlas.app, sooty, key)).json());
  expect([answer.verdict, answer.reasons]).toEqual(["accepted", []]);
  expect(answer.advice.map(({ code, field, value }) => [code, field, value])).toEqual([
    ["final_co_high", "low.co_ppm", 450],
    ["final_co_high", "high.co_ppm", 600],
  ]);
  for (const { sentence } of answer.advice) expect(sentence).toContain("before anyone sleeps");
  expect(await (await post(atlas.app, sooty, key)).json()).toEqual(answer);
  const { id, receipt = "" } = answer;
  const kept = answers.keptTune.parse(
    await (await get(`/api/tunes/${id}`, bearer(receipt))).json(),
  );
  expect(kept.advice).toEqual(answer.advice);
  const put = await atlas.app.request(`/api/tunes/${id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", ...bearer(receipt) },
    body: JSON.stringify(goodTune()),
  });
  expect(answers.submitted.parse(await put.json()).advice).toEqual([]);
  const { paths } = await (await get("/api/openapi.json")).json();
  expect(JSON.stringify(paths["/api/tunes"])).toContain("final_co_high");
});

test("nothing finer than the cell, no key and no receipt reach the file", async () => {
  const tune = {
    ...goodTune(),
    site: { elevation_m: 1300, elevation_sd_m: 83.75, lat: 41.23456, lon: 74.98765 },
  };
  const { receipt } = await (await post(atlas.app, tune)).json();
  const bytes = ["", "-wal"].map((end) => readFileSync(atlas.file + end, "latin1")).join("");
  for (const secret of [tune.contributor, receipt, "41.23456", "74.98765", "83.75"]) {
    expect(bytes).not.toContain(secret);
  }
});
