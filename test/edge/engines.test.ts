import { parquetReadObjects } from "hyparquet";
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from "vitest";
import { proofOf } from "../../client/app/offline/proof-of-work.ts";
import { keepRefusal } from "../../db/refusal.ts";
import * as answers from "../../server/contract.ts";
import { openGeography } from "../../server/geography/geography.ts";
import { readFrom } from "../../server/geography/read-files.ts";
import { servePage } from "../../server/static-files.ts";
import { WAIT_ms } from "../limits.ts";
import { goodTune, openTestAtlas } from "../server/atlas.ts";
import { openWorkerd } from "./workerd.ts";

/** One contract, two engines: SQLite in this process, and workerd with D1 as wrangler runs it. */
type Ask = (path: string, init?: RequestInit) => Promise<Response>;

interface Engine {
  ask: Ask;
  /** Has a version made; where writes alone do that, nothing. */
  settle: () => Promise<void>;
  close: () => Promise<void>;
}

const STEWARD_TOKEN = "steward-token-for-tests-only";

/** A version held back, as a steward finds it. */
const HELD_BACK = { since: "2099-01-01", alarms: "[]" };

async function sqlite(newKeyDays: number, floodLimit = 0, isHeldBack = false): Promise<Engine> {
  const gazetteer = openGeography(readFrom("data/geography"), undefined);
  const options = { stewardToken: STEWARD_TOKEN, newKeyDays, floodLimit, gazetteer };
  const atlas = await openTestAtlas(options);
  if (isHeldBack) await keepRefusal(atlas.db, HELD_BACK.since, HELD_BACK.alarms);
  servePage(atlas.app, { pageDir: "dist", geographyDir: "data/geography", mapOrigins: [] });
  return {
    ask: async (path, init) => atlas.app.request(path, init),
    settle: async () => {},
    close: atlas.close,
  };
}

async function d1(newKeyDays: number, floodLimit = 0, isHeldBack = false): Promise<Engine> {
  const vars = {
    ATLAS_SECRET: "a secret for tests only",
    WRITE_LIMIT: 0,
    FLOOD_LIMIT: floodLimit,
    NEW_KEY_DAYS: newKeyDays,
    STEWARD_TOKEN,
  };
  const row = `1, '${HELD_BACK.since}', '${HELD_BACK.alarms}', 0`;
  const sql = `INSERT INTO refused_fits (number, since, alarms, allowed) VALUES (${row})`;
  const { ask, close, everyFiveMinutes } = await openWorkerd(vars, isHeldBack ? { sql } : {});
  return { ask, close, settle: everyFiveMinutes };
}

const ENGINES = [
  ["SQLite", sqlite],
  ["workerd and D1", d1],
] as const;

/** By engine: what was asked and answered with a success, as "GET /api/fit". */
const answered = new Map<string, Set<string>>();
/** By engine: the routes that it describes. */
const described = new Map<string, Record<string, object>>();

/** Has a version made, and finds it in the list once it rests on as many tunes. */
async function newestFit({ ask, settle }: Engine, tunes: number): Promise<answers.FitAnswer> {
  await settle();
  const version = await vi.waitFor(
    async () => {
      const [newest] = answers.fits.parse(await (await ask("/api/fits")).json()).fits;
      expect(newest?.tunes).toBe(tunes);
      return newest?.version;
    },
    { timeout: WAIT_ms, interval: 100 },
  );
  return answers.publishedFit.parse(await (await ask(`/api/fit/${version}`)).json());
}

/** An engine that writes down what it answered. */
async function opened(name: string, open: typeof sqlite, ...settings: Parameters<typeof sqlite>) {
  const engine = await open(...settings);
  const known = answered.get(name) ?? new Set();
  answered.set(name, known);
  const ask: Ask = async (path, init) => {
    const response = await engine.ask(path, init);
    if (response.ok) known.add(`${init?.method ?? "GET"} ${path.replace(/\?.*/, "")}`);
    return response;
  };
  return { ...engine, ask };
}

describe.each(ENGINES)("%s", (name, open) => {
  let engine: Engine;
  beforeAll(async () => {
    engine = await opened(name, open, 0);
  });
  afterAll(() => engine?.close());

  const json = async (path: string) => (await engine.ask(path)).json();
  const post = (body: unknown, headers: Record<string, string> = {}) =>
    engine.ask("/api/tunes", {
      method: "POST",
      headers: { "Content-Type": "application/json", ...headers },
      body: JSON.stringify(body),
    });
  const tune = (n: number) => ({
    ...goodTune(n),
    site: { elevation_m: 1300 },
    found: "stopped early",
  });

  test("an empty atlas answers from the prior, labelled", async () => {
    const start = answers.startTune.parse(await json("/api/start?heat_kW=5&elevation_m=1500"));
    expect(start.basis).toMatchObject({ prior_only: true, fit: "prior" });
  });

  test("submissions, many at once, are stored and reach the fit and the start tune", async () => {
    const responses = await Promise.all([0, 1, 2, 3, 4, 5].map((n) => post(tune(n))));
    for (const response of responses) {
      expect(response.status).toBe(201);
      answers.submitted.parse(await response.json());
    }
    const fit = await newestFit(engine, 6);
    // Answers may be of the version before for some seconds.
    await vi.waitFor(async () => expect(await json("/api/fit")).toEqual(fit), {
      ...{ timeout: WAIT_ms, interval: 100 },
    });
    const { basis } = await json("/api/start?heat_kW=5&elevation_m=1300");
    expect(basis).toMatchObject({ prior_only: false, fit: fit.version, contributors: 6 });
  });

  test("a tune's life with its receipt, and its idempotency key", async () => {
    const key = { "Idempotency-Key": "engine-key-1" };
    const first = await (await post(tune(7), key)).json();
    expect(await (await post(tune(7), key)).json()).toEqual(first);
    expect((await post(tune(8), { ...key })).status).toBe(201);
    expect((await post({ ...tune(7), tuned_on: "2026-09" }, key)).status).toBe(409);
    const mine = { headers: { Authorization: `Bearer ${first.receipt}` } };
    answers.keptTune.parse(await (await engine.ask(`/api/tunes/${first.id}`, mine)).json());
    expect((await engine.ask(`/api/tunes/${first.id}`, { ...mine, method: "DELETE" })).status).toBe(
      204,
    );
    expect((await engine.ask(`/api/tunes/${first.id}`, mine)).status).toBe(404);
    await newestFit(engine, 7);
  });

  test("reads: scaling, cells, open data, tags", async () => {
    const scaling = answers.scaling.parse(await json("/api/scaling?heat_kW=5&end=low"));
    expect(scaling.points.length).toBe(7);
    const { cells } = answers.cells.parse(await json("/api/cells/world"));
    for (const { cell, tunes } of cells) {
      const { tunes_total } = answers.cellTunes.parse(await json(`/api/cells/${cell}/tunes`));
      expect(tunes_total).toBe(tunes);
    }
    const csv = await (await engine.ask("/api/tunes.csv")).text();
    expect(csv.trim().split("\r\n").length).toBe(8);
    const file = await (await engine.ask("/api/tunes.parquet")).arrayBuffer();
    expect(await parquetReadObjects({ file })).toHaveLength(7);
    const { files } = answers.data.parse(await json("/api/data"));
    for (const { name, address, size_bytes } of files) {
      const whole = await (await engine.ask(address)).arrayBuffer();
      expect(whole.byteLength, name).toBe(size_bytes);
      const part = await engine.ask(address, { headers: { Range: "bytes=5-14" } });
      expect(part.status, name).toBe(206);
      expect(await part.arrayBuffer(), name).toEqual(whole.slice(5, 15));
    }
    const { features } = await json("/api/tunes.geojson");
    expect(features.length).toBe(7);
    for (const { properties } of features) {
      expect(properties.found).toBe("stopped early");
      expect(properties.low_suggested_Hz_per_krpm).toBeGreaterThan(0);
      expect(properties.high_suggested_Hz_per_krpm).toBeGreaterThan(0);
    }
    const tag = (await engine.ask("/api/fit")).headers.get("ETag") ?? "";
    expect((await engine.ask("/api/fit", { headers: { "If-None-Match": tag } })).status).toBe(304);
  });

  test("reads: places, elevations, tunes near by, the own heater, and what the atlas says of itself", async () => {
    const [place] = answers.places.parse(await json("/api/places?q=innsbruck")).places;
    const { lat = 0, lon = 0 } = place ?? {};
    const elevation = answers.elevation.parse(await json(`/api/elevation?lat=${lat}&lon=${lon}`));
    const site = { elevation_m: Math.round(elevation.elevation_m), lat, lon };
    expect((await post({ ...goodTune(20), site })).status).toBe(201);
    await newestFit(engine, 8);
    const { cells } = answers.cells.parse(await json("/api/cells/world"));
    expect(cells).toHaveLength(1);
    const { tunes_total } = answers.cellTunes.parse(
      await json(`/api/cells/${cells[0]?.cell}/tunes`),
    );
    expect(tunes_total).toBe(1);
    const near = answers.near.parse(await json("/api/tunes/near?heat_kW=5&elevation_m=1300"));
    expect(near.tunes.length).toBeGreaterThan(6);
    const { low, high } = goodTune();
    const own = await engine.ask("/api/start", {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ heat_kW: 5, elevation_m: 2000, own_tunes: [{ site, low, high }] }),
    });
    expect(answers.ownStartTune.parse(await own.json()).own_heater.tunes).toBe(1);
    expect(answers.fits.parse(await json("/api/fits")).fits.length).toBeGreaterThan(0);
    answers.map.parse(await json("/api/map"));
    answers.ready.parse(await json("/api/ready"));
    expect(await json("/api/tunes.csv-metadata.json")).toHaveProperty("tableSchema");
    expect(await json("/api/dictionary.json")).toBeTruthy();
    described.set(name, (await json("/api/openapi.json")).paths);
  });

  test("a steward sees what is held, and accepts it into the fit; strangers see nothing", async () => {
    const asSteward = { Authorization: `Bearer ${STEWARD_TOKEN}` };
    const { id, verdict } = await (await post({ ...tune(9), tuned_on: "2099-01" })).json();
    expect(verdict).toBe("held");
    for (const headers of [{}, { Authorization: "Bearer wrong" }]) {
      expect((await engine.ask("/api/steward/held", { headers })).status).toBe(401);
    }
    const held = await engine.ask("/api/steward/held?undecided=true", { headers: asSteward });
    expect(held.headers.get("Cache-Control")).toBe("no-store");
    expect(answers.heldAnswer.parse(await held.json()).tunes.map((one) => one.id)).toEqual([id]);
    const send = async (path: string, body: unknown) =>
      (
        await engine.ask(`/api/steward/${path}`, {
          method: "POST",
          headers: { "Content-Type": "application/json", ...asSteward },
          body: JSON.stringify(body),
        })
      ).json();
    const reason = "The clock was ahead; all else agrees.";
    const decide = async (verdict: string) =>
      answers.decidedAnswer.parse(await send("decisions", { tunes: [id], verdict, reason }));
    const [removed] = (await decide("removed")).decisions;
    answers.decidedAnswer.parse(await send("undo", { decisions: [removed?.number] }));
    await decide("accepted");
    await newestFit(engine, 9);
    expect(answers.withoutAnswer.parse(await send("without", { tunes: [id] }))).toMatchObject({
      left_out: 1,
      tunes: 8,
    });
    const look = async (path: string) =>
      (await engine.ask(`/api/steward/${path}`, { headers: asSteward })).json();
    const [seen] = answers.tunesAnswer.parse(await look(`tunes?ids=${id}`)).tunes;
    const { decisions } = answers.trailAnswer.parse(await look(`decisions?tune=${id}`));
    expect(decisions.map(({ verdict }) => verdict).toSorted()).toEqual([
      ...["accepted", "held", "held", "removed"],
    ]);
    const own = await look(`tunes?contributor=${seen?.contributor}`);
    expect(answers.tunesAnswer.parse(own).tunes.map((one) => one.id)).toEqual([id]);
    expect(answers.clustersAnswer.parse(await look("clusters")).looked_at).toBeGreaterThan(7);
  });

  test("the page, its service worker and manifest come with their types, and are kept as long as they should be", async () => {
    const page = await (await engine.ask("/")).text();
    const script = /src="(\/assets\/[^"]+\.js)"/.exec(page)?.[1] ?? "no script";
    const files: [path: string, type: RegExp, kept: string][] = [
      ["/", /^text\/html/, "no-cache"],
      ["/service-worker.js", /^(text|application)\/javascript/, "no-cache"],
      ["/manifest.webmanifest", /^application\/manifest\+json/, "no-cache"],
      [script, /^(text|application)\/javascript/, "public, max-age=31536000, immutable"],
      ["/geography/labels.json", /^application\/json/, "public, max-age=86400"],
    ];
    for (const [path, type, kept] of files) {
      const { status, headers } = await engine.ask(path);
      expect([path, status]).toEqual([path, 200]);
      expect(headers.get("Content-Type")).toMatch(type);
      expect(headers.get("Cache-Control")).toBe(kept);
      expect(headers.get("Content-Security-Policy")).toContain("script-src 'self';");
      expect(headers.get("X-Content-Type-Options")).toBe("nosniff");
    }
    expect((await engine.ask("/assets/no-such-script.js")).status).toBe(404);
  });

  test("bad input is named, and nothing is stored", async () => {
    const { tunes } = await json("/api/health");
    expect((await post({ ...tune(1), low: "x", extra: 1 })).status).toBe(422);
    expect((await engine.ask("/api/tunes", { method: "POST", body: "{" })).status).toBe(415);
    expect((await engine.ask("/api/nothing")).status).toBe(404);
    expect((await json("/api/health")).tunes).toBe(tunes);
  });
});

test.each(ENGINES)(
  "%s: new contributors wait, and leave no trace when they withdraw; a steward lets one count; in a flood a proof of work lets a tune in",
  async (name, open) => {
    const engine = await opened(name, open, 6, 3, true);
    onTestFinished(() => engine.close());
    const ask = (method: string, path: string, token?: string, body?: unknown) =>
      engine.ask(`/api/${path}`, {
        method,
        headers: {
          "Content-Type": "application/json",
          ...(token !== undefined && { Authorization: `Bearer ${token}` }),
        },
        ...(body !== undefined && { body: JSON.stringify(body) }),
      });
    const tuneOf = (n: number) => ({ ...goodTune(n), site: { elevation_m: 1300 } });
    const send = async (n: number) => {
      const sent = await ask("POST", "tunes", undefined, tuneOf(n));
      const { id, receipt, counts_from } = answers.submitted.parse(await sent.json());
      return { id, receipt: receipt as string, counts_from: counts_from as string };
    };
    const reason = "A member of the club whose heater we tuned together.";
    const heldBack = async () =>
      answers.alarmsAnswer.parse(await (await ask("GET", "steward/alarms", STEWARD_TOKEN)).json())
        .refused;
    expect(await heldBack()).toMatchObject({ since: HELD_BACK.since, kept_back_on: null });
    for (const [path, status] of [
      ["keep-back", 200],
      ["publish", 202],
    ] as const) {
      const said = await ask("POST", `steward/${path}`, STEWARD_TOKEN, { reason });
      expect(said.status).toBe(status);
      answers.publicationAnswer.parse(await said.json());
    }
    expect(await heldBack()).toMatchObject({ let_through: true });

    const waiting = async () => {
      const answer = await ask("GET", "steward/waiting", STEWARD_TOKEN);
      return answers.waitingAnswer.parse(await answer.json()).waiting;
    };
    const [first, second, third] = [await send(0), await send(1), await send(2)];
    expect(first.counts_from < second.counts_from).toBe(true);
    expect((await waiting()).map(({ crowded }) => crowded)).toEqual([false, true, true]);

    const moved = await ask("PUT", `tunes/${third.id}`, third.receipt, tuneOf(3));
    expect(moved.status).toBe(200);
    expect((await ask("DELETE", `tunes/${second.id}`, second.receipt)).status).toBe(204);
    expect(await waiting()).toHaveLength(2);

    const newcomer = (await waiting())[0]?.contributor;
    const path = `steward/contributors/${newcomer}/count`;
    const counted = await ask("POST", path, STEWARD_TOKEN, { reason });
    expect(answers.countedAnswer.parse(await counted.json())).toEqual({
      contributor: newcomer,
      tunes: 1,
    });
    expect(await waiting()).toHaveLength(1);
    await newestFit(engine, 1);
    const csv = await (await ask("GET", "tunes.csv")).text();
    expect([csv.includes(first.id), csv.includes(third.id)]).toEqual([true, false]);
    expect((await ask("POST", "steward/publish", STEWARD_TOKEN, { reason })).status).toBe(409);

    const asked = await ask("POST", "tunes", undefined, tuneOf(4));
    const { challenge } = answers.problem.parse(await asked.json());
    if (!challenge) throw new Error("There is no challenge.");
    const proved = await engine.ask("/api/tunes", {
      method: "POST",
      headers: { "Content-Type": "application/json", ...(await proofOf(challenge)) },
      body: JSON.stringify(tuneOf(4)),
    });
    expect([asked.status, proved.status]).toEqual([429, 201]);
  },
);

test.each(ENGINES)("%s: every route of the description was answered by a case above", (name) => {
  const routes = Object.entries(described.get(name) ?? {}).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
  );
  expect(routes.length).toBeGreaterThan(30);
  const asked = [...(answered.get(name) ?? [])];
  const unanswered = routes.filter((route) => {
    const pattern = route.replaceAll(".", "\\.").replaceAll(/\{\w+\}/g, "[^/]+");
    // An address that a path without blanks has is that path's alone.
    const own = asked.filter((one) => one === route || !routes.includes(one));
    return !own.some((one) => new RegExp(`^${pattern}$`).test(one));
  });
  expect(unanswered).toEqual([]);
});
