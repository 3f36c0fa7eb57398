import { chmodSync, existsSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { parse } from "csv-parse/sync";
import { sql } from "drizzle-orm";
import { expect, test } from "vitest";
import { decisions, tunes } from "../../db/schema.ts";
import { airAt } from "../../model/air.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { Tune } from "../../model/tune.ts";
import { readFitFile } from "../../server/fit-file.ts";
import { goodTune, openTestAtlas, post } from "./atlas.ts";
import { TOKEN } from "./stewards-atlas.ts";

/** As somebody with good instruments would type it. */
const fine = (n: number): Tune => ({
  ...goodTune(n),
  site: { ...goodTune(n).site, elevation_m: 1297.3 + n, elevation_sd_m: 12.4 },
  air: {
    temperature_C: -3.27 - n,
    humidity_pct: 61.8,
    ...(n % 2 ? { pressure_hPa: 866.41 } : { qnh_hPa: 1019.62 }),
  },
});

test("elevations are kept to 10 m, air to whole °C, hPa and %, wherever the database keeps anything of a tune", async () => {
  const atlas = await openTestAtlas();
  const key = { "Idempotency-Key": "at-rest-0000001" };
  expect((await post(atlas.app, fine(1), key)).status).toBe(201);
  // Held, with sentences about its figures.
  const held = { ...fine(2), site: { elevation_m: 12_023.6 }, air: { temperature_C: 99.73 } };
  expect((await (await post(atlas.app, held)).json()).verdict).toBe("held");
  await atlas.fit.settle();
  for (const row of await atlas.db.select().from(tunes)) {
    expect(row.elevation_m % 10).toBe(0);
    for (const value of [row.temperature_C, row.pressure_hPa, row.qnh_hPa, row.humidity_pct]) {
      expect(value === null || Number.isInteger(value)).toBe(true);
    }
  }
  for (const table of ["tunes", "decisions", "idempotency_keys", "fits", "waiting"]) {
    const all = JSON.stringify(await atlas.db.values(sql.raw(`SELECT * FROM ${table}`)));
    for (const typed of [
      "1298.3",
      "12.4",
      "12,023",
      "12023",
      "99.7",
      "4.27",
      "61.8",
      "866.4",
      "1019.6",
    ]) {
      // A figure of its own, not part of a density's or a hash's digits.
      expect(all, table).not.toMatch(
        new RegExp(`(?<![\\d.])${typed.replace(".", "\\.")}(?!\\d{3})`),
      );
    }
  }
  await atlas.close();
});

test("what is decided on a tune is dated by the month, by the day only what is about none", async () => {
  const atlas = await openTestAtlas({ newKeyDays: 6, stewardToken: TOKEN });
  const { id, receipt } = await (await post(atlas.app, goodTune(1))).json();
  const ask = (path: string, method: string, token: string, body?: unknown) =>
    atlas.app.request(`/api${path}`, {
      method,
      headers: { Authorization: `Bearer ${token}`, "Content-Type": "application/json" },
      ...(body !== undefined && { body: JSON.stringify(body) }),
    });
  const decision = { tunes: [id], verdict: "held", reason: "To look at it again." };
  const decided = await ask("/steward/decisions", "POST", TOKEN, decision);
  expect(decided.status).toBe(200);
  expect((await ask(`/tunes/${id}`, "PUT", receipt, goodTune(1))).status).toBe(200);
  expect((await post(atlas.app, goodTune(2))).status).toBe(201);
  atlas.pass(31 * 86_400_000);
  await atlas.fit.settle();
  const other = await (await post(atlas.app, goodTune(3))).json();
  expect((await ask(`/tunes/${other.id}`, "DELETE", other.receipt)).status).toBe(204);
  const log = await atlas.db.select().from(decisions);
  expect(log.map(({ tune, by, decided_on }) => [tune !== "", by, decided_on])).toEqual([
    [true, "screening", "2026-11"],
    [true, "steward", "2026-11"],
    [true, "screening", "2026-11"],
    [true, "screening", "2026-11"],
    [false, "waiting", "2026-12-26"],
    [false, "contributor", "2026-12-26"],
  ]);
  await atlas.close();
});

test("the density is that of the kept figures, to 0.01 kg/m³, and the published fit follows from the published data digit by digit", async () => {
  const atlas = await openTestAtlas();
  for (let n = 0; n < 12; n++) expect((await post(atlas.app, fine(n))).status).toBe(201);
  await atlas.fit.settle();
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const openRows = parse(csv, { columns: true }) as Record<string, string>[];
  const kept = await atlas.db.select().from(tunes);
  expect(kept).toHaveLength(12);
  for (const row of kept) {
    const { temperature_C, pressure_hPa, qnh_hPa, humidity_pct } = row;
    const given = Object.fromEntries(
      Object.entries({ temperature_C, pressure_hPa, qnh_hPa, humidity_pct }).filter(
        ([, value]) => value !== null,
      ),
    );
    const air = airAt(row.elevation_m, given, row.elevation_sd_m ?? 0);
    const open = openRows.find(({ id }) => id === row.id);
    expect(open?.density_kg_m3).toBe(String(Number(air.density_kg_m3.toFixed(2))));
    expect(open?.ln_density_sd).toBe(String(Number(air.ln_density_sd.toFixed(3))));
    expect(Math.abs(Number(open?.elevation_m) - row.elevation_m)).toBeLessThanOrEqual(50);
    expect(Number(open?.elevation_m) % 100).toBe(0);
    expect(Number(open?.pressure_hPa) % 10).toBe(0);
  }
  const file = join(dirname(atlas.file), "tunes.csv");
  writeFileSync(file, csv);
  const published = await (await atlas.app.request("/api/fit")).json();
  expect(published.groups).toHaveLength(2);
  expect(JSON.parse(JSON.stringify(fitAtlas(readFitFile(file).rows).groups))).toEqual(
    published.groups,
  );
  await atlas.close();
});

test("the files are their owner's alone, also those of an atlas that was left open to others", async () => {
  const atlas = await openTestAtlas();
  await post(atlas.app, goodTune());
  const files = () => ["", "-wal", "-shm"].map((end) => `${atlas.file}${end}`).filter(existsSync);
  expect(files()).toHaveLength(3);
  for (const file of files()) expect(statSync(file).mode & 0o777, file).toBe(0o600);
  await atlas.stop();
  chmodSync(atlas.file, 0o644);
  const again = await openTestAtlas({ file: atlas.file });
  await post(again.app, goodTune(1));
  for (const file of files()) expect(statSync(file).mode & 0o777, file).toBe(0o600);
  await again.stop();
  rmSync(dirname(atlas.file), { recursive: true });
});
