import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Hono } from "hono";
import type { Database } from "../../db/database.ts";
import { acceptedFitRows } from "../../db/fit-rows.ts";
import { groupCommit } from "../../db/group-commit.ts";
import { openDatabase } from "../../db/open.ts";
import type { FitRow } from "../../model/fit/row.ts";
import type { Tune } from "../../model/tune.ts";
import { createApp } from "../../server/app.ts";
import type { Gazetteer } from "../../server/context.ts";
import { type FitMaker, fitsHere } from "../../server/fitted.ts";
import { openKeys } from "../../server/keys.ts";
import { limitsHere } from "../../server/limits.ts";
import { preparedHere } from "../../server/prepared.ts";
import { preparedInThread } from "../../server/prepared-in-thread.ts";
import { type AlarmNews, FitKeeper } from "../../server/published-fit.ts";
import { oncePerDay, type TroubleNews } from "../../server/trouble.ts";

/** Flat invented country at 1,300 m with one town, so that server tests need no built geography. */
export const flatCountry: Gazetteer = {
  search: async (query, limit) =>
    [
      {
        name: "Flatfield",
        region: null,
        country: null,
        country_code: null,
        lat: 41.2,
        lon: 74.9,
        elevation_m: 1300,
        elevation_sd_m: 20,
        population: 100,
        kind: "place" as const,
        match: "name" as const,
      },
    ]
      .filter(({ name }) => name.toLowerCase().includes(query.toLowerCase()))
      .slice(0, limit),
  elevation: async (lat, lon) => ({
    lat,
    lon,
    elevation_m: 1300,
    sd_m: 20,
    uncertainty_68_m: 20,
    uncertainty_95_m: 80,
    source: "grid",
    nearest: null,
  }),
  ready: async () => true,
};

export interface TestAtlas {
  app: Hono;
  db: Database;
  fit: FitKeeper;
  file: string;
  /** Moves the atlas's clock, ms. */
  pass: (ms: number) => void;
  /** Stops as on a signal; the file stays for another atlas. */
  stop: () => Promise<void>;
  /** Waits for a refresh of the fit under way, and deletes the file. */
  close: () => Promise<void>;
}

/** An atlas on a real SQLite file in a temporary folder, with a clock that tests can move. */
export async function openTestAtlas(
  options: {
    writeLimit?: number;
    readLimit?: number;
    floodLimit?: number;
    demo?: boolean;
    gazetteer?: Gazetteer;
    stewardToken?: string;
    newKeyDays?: number;
    /** A database that another atlas left; a new one otherwise. */
    file?: string;
    /** What its clock says first. */
    opened?: string;
    /** Whether exports and cells are prepared in threads, as the server's own command does. */
    prepared?: boolean;
    /** What makes its fits, in place of this thread. */
    fits?: (here: FitMaker) => FitMaker;
    /** Told of alarms. */
    onAlarms?: (news: AlarmNews) => void;
    /** Told of other troubles. */
    onTrouble?: (news: TroubleNews) => void;
    /** The file grows no further, bytes. */
    most_bytes?: number;
    /** What the disk must have left for new tunes, bytes; then there is a ballast, too. */
    disk_reserve_bytes?: number;
  } = {},
): Promise<TestAtlas> {
  const file = options.file ?? join(mkdtempSync(join(tmpdir(), "hypsotune-")), "atlas.db");
  const { db, storage, close } = await openDatabase(file, {
    most_bytes: options.most_bytes,
    disk_reserve_bytes: options.disk_reserve_bytes,
  });
  let time = Date.parse(options.opened ?? "2026-11-25T12:00:00Z");
  const now = () => new Date(time);
  const demo = options.demo ?? false;
  const newKeyDays = options.newKeyDays ?? 0;
  const believe_ms = Number.POSITIVE_INFINITY;
  const onTrouble = oncePerDay(options.onTrouble ?? (() => {}), now);
  const { onAlarms, fits = (here: FitMaker) => here } = options;
  const maker = fits(fitsHere(db));
  let isOver = false;
  const fit = new FitKeeper({
    ...{ db, now, demo, believe_ms, newKeyDays },
    ...(onAlarms && { onAlarms }),
    onFailing: () => onTrouble("fit failing"),
    fits: {
      fit: async (order) =>
        isOver
          ? { rows_sha256: order.known[0] ?? "", tunes: 0, fit: null, took_ms: 0 }
          : maker.fit(order),
      without: (tunes) => maker.without(tunes),
    },
  });
  const prepared = options.prepared
    ? preparedInThread(db, file, demo, options.disk_reserve_bytes)
    : { ...preparedHere(db, demo), close: async () => {} };
  const keys = await openKeys("a secret for tests only");
  const app = createApp({
    db,
    commit: groupCommit(db),
    storage,
    stopping: () => false,
    keys,
    fit,
    prepared,
    gazetteer: options.gazetteer ?? flatCountry,
    now,
    demo,
    onTrouble,
    limits: limitsHere(
      {
        writes: options.writeLimit ?? 0,
        reads: options.readLimit ?? 0,
        tunes: options.floodLimit ?? 0,
      },
      keys,
      now,
      () => onTrouble("flood"),
    ),
    newKeyDays,
    stewardToken: options.stewardToken,
    clientAddress: (c) => c.req.header("X-Test-Client") ?? "one client",
    afterWrite: () => fit.refreshSoon(),
    map: { basemap_style: null, elevation_tiles: null },
  });
  await fit.current();
  const stop = async () => {
    await fit.settle();
    await prepared.close();
    close();
  };
  return {
    app,
    db,
    fit,
    file,
    pass: (ms) => {
      time += ms;
    },
    stop,
    close: async () => {
      // Nobody would read another fit.
      isOver = true;
      await stop();
      rmSync(dirname(file), { recursive: true });
    },
  };
}

/** All rows that the fit is made of. */
export async function allFitRows(db: Database): Promise<FitRow[]> {
  const rows: FitRow[] = [];
  for await (const page of acceptedFitRows(db, 1000)) rows.push(...page.flat());
  return rows;
}

/** A plausible invented tune; `n` varies contributor and mixture a little. */
export function goodTune(n = 0): Tune {
  return {
    heater: { heat_kW: 5, dose_uL: 22, supply_V: 12 },
    site: { elevation_m: 1300, lat: 41.2, lon: 74.9 },
    air: { temperature_C: -3 - (n % 7), humidity_pct: 60 },
    low: { pump_Hz: 1.1 + 0.02 * (n % 5), fan_rpm: 1700, co_ppm: 14, power: 1 },
    high: { pump_Hz: 3.9 + 0.06 * (n % 5), fan_rpm: 4400, co_ppm: 11, power: 10 },
    meter: { kind: "portable meter", distance_m: 0.3 },
    tuned_on: "2026-10",
    contributor: `contributor-key-${String(n).padStart(4, "0")}`,
  };
}

export async function post(
  app: Hono,
  body: unknown,
  headers: Record<string, string> = {},
): Promise<Response> {
  return app.request("/api/tunes", {
    method: "POST",
    headers: { "Content-Type": "application/json", ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
}
