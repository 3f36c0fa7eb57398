import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { sql } from "drizzle-orm";
import { cellToChildren, cellToLatLng, cellToParent, getResolution, latLngToCell } from "h3-js";
import { afterEach, beforeEach, expect, test } from "vitest";
import { decisions, tunes, waiting } from "../../db/schema.ts";
import { findTune, type TuneRow } from "../../db/tunes.ts";
import { ENDS } from "../../model/end.ts";
import type { Tune } from "../../model/tune.ts";
import { scenario } from "../../seed-demo/scenario.ts";
import { SITES } from "../../seed-demo/sites.ts";
import type { Gazetteer } from "../../server/context.ts";
import type { CellsAnswer, CellTune, NearAnswer } from "../../server/contract.ts";
import { countDue, NEW_KEY_DAYS } from "../../server/new-keys.ts";
import { flatCountry, goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

/**
 * Here somebody collects every public answer, again and again, and joins them by everything that is equal, to find out where
 * contributors have been. Fine is a place, 12,400 km², and all that lies in one.
 */

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
});
afterEach(() => atlas.close());

const PLACE = 3;
const json = async (path: string) => (await atlas.app.request(`/api${path}`)).json();

type Line = Record<string, string>;

/** What tells one tune from another wherever it is shown. */
const figures = (tune: Pick<CellTune, "heat_kW" | "density_kg_m3" | "low" | "high">) =>
  [
    tune.heat_kW,
    tune.density_kg_m3,
    ...ENDS.flatMap((end) => [tune[end].pump_Hz, tune[end].fan_rpm]),
    ...ENDS.map((end) => tune[end].co_ppm ?? ""),
  ].join(" ");

const figuresOf = (line: Line) =>
  [
    line.heat_kW,
    line.density_kg_m3,
    ...ENDS.flatMap((end) => [line[`${end}_pump_Hz`], line[`${end}_fan_rpm`]]),
    ...ENDS.map((end) => line[`${end}_co_ppm`] ?? ""),
  ].join(" ");

/** What has been seen of tunes so far: by id, every line of the open data and every fine cell. */
class Collector {
  readonly #lines = new Map<string, Line>();
  readonly #cells = new Map<string, Set<string>>();
  /** Ids, pseudonyms and homes that ever stood in one line. */
  readonly #namesOf = new Map<string, Set<string>>();

  async collect(): Promise<void> {
    const csv = await (await atlas.app.request("/api/tunes.csv")).text();
    const lines: Line[] = parse(csv, { columns: true });
    const byFigures = new Map<string, string[]>();
    for (const line of lines) {
      const id = line.id as string;
      this.#lines.set(id, line);
      this.#names(id).add(line.contributor as string);
      this.#see(id, line.cell);
      byFigures.set(figuresOf(line), [...(byFigures.get(figuresOf(line)) ?? []), id]);
    }
    for (const feature of (await json("/tunes.geojson")).features) {
      const [lon, lat] = feature.geometry?.coordinates ?? [];
      this.#see(feature.id, feature.properties.cell);
      // A point finer than its cell would tell more.
      if (lat !== undefined) {
        const { cell } = feature.properties;
        expect(latLngToCell(lat, lon, getResolution(cell))).toBe(cell);
        expect(Math.hypot(cellToLatLng(cell)[0] - lat, cellToLatLng(cell)[1] - lon)).toBeLessThan(
          0.001,
        );
      }
    }
    // The points of the chart of all tunes have pseudonyms, too.
    for (const heat_kW of [2, 5, 8]) {
      for (const end of ENDS) {
        const { points } = await json(`/scaling?heat_kW=${heat_kW}&end=${end}`);
        for (const { pump_Hz, fan_rpm, density_kg_m3, contributor } of points) {
          const set = [heat_kW, density_kg_m3, pump_Hz, fan_rpm].map(String).join(" ");
          const same = lines.filter(
            (line) =>
              [
                line.heat_kW,
                line.density_kg_m3,
                line[`${end}_pump_Hz`],
                line[`${end}_fan_rpm`],
              ].join(" ") === set,
          );
          if (same.length === 1) this.#names(same[0]?.id as string).add(contributor);
        }
      }
    }
    // Cells tell no ids: figures that are one tune's alone in the open data do.
    const join = (tune: CellTune, cell: string | null) => {
      const ids = byFigures.get(figures(tune)) ?? [];
      if (ids.length === 1) this.#see(ids[0] as string, cell);
    };
    const { cells } = (await json("/cells/world")) as CellsAnswer;
    for (const { cell } of cells) {
      for (const tune of (await json(`/cells/${cell}/tunes`)).tunes) join(tune, cell);
    }
    for (const heat_kW of [2, 5, 8]) {
      for (const { lat, lon, elevation_m } of SITES) {
        const asked = `heat_kW=${heat_kW}&elevation_m=${elevation_m}&lat=${lat}&lon=${lon}`;
        const { tunes } = (await json(`/tunes/near?${asked}`)) as NearAnswer;
        for (const tune of tunes) {
          this.#see(tune.id, tune.cell);
          join(tune, tune.cell);
        }
      }
    }
  }

  /** The places in which each contributor was found, by pseudonyms that some tune's id joins; the home that others share included. */
  placesOfEach(): Set<string>[] {
    const placeOfHome = new Map<string, string>();
    for (const [id, line] of this.#lines) {
      // Whoever is alone in a place was at home there first.
      for (const cell of this.#cells.get(id) ?? []) {
        if (line.home) placeOfHome.set(line.home, cellToParent(cell, PLACE));
      }
    }
    const found = new Map<string, Set<string>>();
    for (const [id, line] of this.#lines) {
      const own = [...this.#names(id)].map((name) => found.get(name)).find(Boolean) ?? new Set();
      for (const name of this.#names(id)) {
        for (const place of found.get(name) ?? []) own.add(place);
      }
      for (const name of this.#names(id)) found.set(name, own);
      for (const cell of this.#cells.get(id) ?? []) own.add(cellToParent(cell, PLACE));
      const home = line.home && placeOfHome.get(line.home);
      if (home) own.add(home);
    }
    return [...new Set(found.values())];
  }

  #names(id: string): Set<string> {
    const names = this.#namesOf.get(id) ?? new Set();
    this.#namesOf.set(id, names);
    return names;
  }

  #see(id: string, cell: string | null | undefined): void {
    if (!cell || getResolution(cell) < PLACE) return;
    const cells = this.#cells.get(id) ?? new Set();
    this.#cells.set(id, cells.add(cell));
  }
}

const withTrail = (places: Set<string>[]) => places.filter((own) => own.size > 1).length;

/** The demo's sites and nothing between. */
const sites: Gazetteer = {
  ...flatCountry,
  elevation: async (lat, lon) => {
    const away = (site: (typeof SITES)[number]) => Math.hypot(site.lat - lat, site.lon - lon);
    const nearest = SITES.toSorted((p, q) => away(p) - away(q))[0] as (typeof SITES)[number];
    return { ...(await flatCountry.elevation(lat, lon)), elevation_m: nearest.elevation_m };
  },
};

test("all public answers of the demo together show nobody in two places, and would without the protection", async () => {
  await atlas.close();
  atlas = await openTestAtlas({ gazetteer: sites });
  for (const { tune } of scenario()) expect((await post(atlas.app, tune)).status).toBe(201);
  await atlas.fit.settle();
  const seen = new Collector();
  await seen.collect();
  const places = seen.placesOfEach();
  expect(places.length).toBeGreaterThan(200);
  // It does find where people are who have been nowhere else.
  expect(places.filter((own) => own.size === 1).length).toBeGreaterThan(50);
  expect(withTrail(places)).toBe(0);
  // What remains, as docs/privacy.md says.
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const lines: Line[] = parse(csv, { columns: true });
  const cellsOf = [...Map.groupBy(lines, ({ contributor }) => contributor).values()];
  const wide = cellsOf
    .map((own) => new Set(own.map(({ cell }) => cell ?? "")))
    .filter((cells) => [...cells].some((cell) => cell && getResolution(cell) < PLACE));
  expect(wide.every((cells) => cells.size > 1)).toBe(true);
  const said = readFileSync("docs/privacy.md", "utf8").replaceAll("\n", " ");
  expect(said).toContain(`In the demo ${wide.length} of ${cellsOf.length} contributors`);
  expect(said).toContain(`each of the ${wide.length} shows two such cells or more`);

  await atlas.db.update(tunes).set({ several_places: false });
  await atlas.db.insert(decisions).values({
    ...{ tune: "", by: "waiting", verdict: "accepted", reasons: "[]", decided_on: "2026-11-25" },
  });
  const unprotected = new Collector();
  await unprotected.collect();
  expect(withTrail(unprotected.placesOfEach())).toBeGreaterThan(100);
});

const at = (n: number, lat: number, lon: number): Tune => ({
  ...goodTune(n),
  site: { elevation_m: 1300, lat, lon },
});
const HERE = [41.2, 74.9] as const;
const THERE = [-20.1, -68.2] as const;

async function sent(tune: Tune) {
  const { id, receipt } = (await (await post(atlas.app, tune)).json()) as Record<string, string>;
  const ask = (method: string, body?: Tune) =>
    atlas.app.request(`/api/tunes/${id}`, {
      method,
      headers: { Authorization: `Bearer ${receipt}`, "Content-Type": "application/json" },
      ...(body && { body: JSON.stringify(body) }),
    });
  return {
    withdraw: async () => expect((await ask("DELETE")).status).toBe(204),
    revise: async (to: Tune) => expect((await ask("PUT", to)).status).toBe(200),
  };
}

test.each<[string, (seen: Collector) => Promise<unknown>]>([
  [
    "somebody who goes on, and takes the first tune back",
    async (seen) => {
      const first = await sent(at(1, ...HERE));
      await seen.collect();
      await sent(at(1, ...THERE));
      await seen.collect();
      await first.withdraw();
    },
  ],
  [
    "somebody who takes the only tune back, and shares another elsewhere",
    async (seen) => {
      const first = await sent(at(1, ...HERE));
      await seen.collect();
      await first.withdraw();
      await sent(at(1, ...THERE));
    },
  ],
  [
    "somebody who takes back the only tune with a place, but not all, and shares another elsewhere",
    async (seen) => {
      const first = await sent(at(1, ...HERE));
      await sent({ ...goodTune(1), site: { elevation_m: 1300 } });
      await seen.collect();
      await first.withdraw();
      await sent(at(1, ...THERE));
    },
  ],
  [
    "somebody who takes a place out, and puts another one in",
    async (seen) => {
      const tune = await sent(at(1, ...HERE));
      await seen.collect();
      await tune.revise({ ...goodTune(1), site: { elevation_m: 1300 } });
      await tune.revise(at(1, ...THERE));
    },
  ],
  [
    "somebody who puts the place right",
    async (seen) => {
      const tune = await sent(at(1, ...HERE));
      await seen.collect();
      await tune.revise(at(1, ...THERE));
    },
  ],
  [
    "somebody whose second tune is of the next cell, and the third far off",
    async (seen) => {
      await sent(at(1, ...HERE));
      await sent(at(1, HERE[0] + 0.3, HERE[1]));
      await seen.collect();
      await sent(at(1, ...THERE));
    },
  ],
])("copies of the answers from before and after show no trail of %s", async (_, happens) => {
  // Others, so that cells are fine.
  for (let n = 10; n < 20; n++) {
    const [lat, lon] = n % 2 ? HERE : THERE;
    await sent(at(n, lat, lon));
  }
  const seen = new Collector();
  await happens(seen);
  await seen.collect();
  const places = seen.placesOfEach();
  expect(places.filter((own) => own.size === 1).length).toBeGreaterThanOrEqual(10);
  expect(withTrail(places)).toBe(0);
});

test("tunes of several places are dated by the year, in every answer", async () => {
  await sent(at(1, ...HERE));
  await sent(at(1, ...THERE));
  const text = await (await atlas.app.request("/api/tunes.csv")).text();
  const lines: Line[] = parse(text, { columns: true });
  expect(lines.map((line) => [line.tuned_on, line.submitted_on])).toEqual([
    ["2026", "2026"],
    ["2026", "2026"],
  ]);
  const near = (await json("/tunes/near?heat_kW=5&elevation_m=1300")) as NearAnswer;
  expect(near.tunes.map(({ month }) => month)).toEqual(["2026", "2026"]);
  const { cells } = (await json("/cells/world")) as CellsAnswer;
  expect(cells).toHaveLength(2);
  for (const { cell } of cells) {
    const { month_range, tunes } = await json(`/cells/${cell}/tunes`);
    expect([...month_range, tunes[0].month]).toEqual(["2026", "2026", "2026"]);
  }
});

/** A lone tune, and cells of its place among which somebody looks for it. */
const LONE = latLngToCell(...HERE, 5);
const CELLS = cellToChildren(cellToParent(LONE, PLACE), 5);

async function shownOf(contributorsTune: string): Promise<string> {
  const csv = await (await atlas.app.request("/api/tunes.csv")).text();
  const line = (parse(csv, { columns: true }) as Line[]).find(({ id }) => id === contributorsTune);
  return line?.cell ?? "";
}

/** Keys that send a tune in every cell, or a key for every cell; with a mixture so many times a good one's. */
async function sendEverywhere(keys: number, each: "one key" | "its own key", times = 1) {
  for (const [i, cell] of CELLS.entries()) {
    for (let k = 0; k < keys; k++) {
      const n = 100 + k + (each === "one key" ? 0 : keys * i);
      const tune = at(n, ...(cellToLatLng(cell) as [number, number]));
      const low = { ...tune.low, pump_Hz: tune.low.pump_Hz * times };
      expect((await post(atlas.app, { ...tune, low })).status).toBe(201);
    }
  }
}

async function lone(): Promise<string> {
  const { id } = await (await post(atlas.app, at(1, ...HERE))).json();
  return id;
}

test("98 tunes of two keys in every cell of its place bring a lone tune to none finer, and those of ten keys neither", async () => {
  const id = await lone();
  expect(getResolution(await shownOf(id))).toBe(PLACE);
  await sendEverywhere(2, "one key");
  expect(getResolution(await shownOf(id))).toBe(PLACE);
  await sendEverywhere(10, "one key");
  expect(getResolution(await shownOf(id))).toBe(PLACE);
});

/** New keys that send a tune in a cell, each one of its own; three are too few, and so many show a cell with a lone tune in it. */
const ENOUGH = 4;
let lastKey = 1000;
async function sendInto(cell: string, keys: number) {
  for (let k = 0; k < keys; k++) {
    const tune = at(lastKey++, ...(cellToLatLng(cell) as [number, number]));
    expect((await post(atlas.app, tune)).status).toBe(201);
  }
}

test("without waiting, 52 keys would find a lone tune: four in each cell between, then four in each within that one; three do not", async () => {
  const id = await lone();
  await sendInto(LONE, ENOUGH - 1);
  expect(getResolution(await shownOf(id))).toBe(PLACE);
  await atlas.db.delete(tunes).where(sql`id <> ${id}`);
  // Somebody who knows the place alone: into one cell of each between, and never by chance into the right one.
  const between = cellToChildren(cellToParent(LONE, PLACE), PLACE + 1);
  const first = between.map(
    (cell) => cellToChildren(cell, 5).find((one) => one !== LONE) as string,
  );
  for (const cell of first) await sendInto(cell, ENOUGH);
  const found = await shownOf(id);
  expect(found).toBe(cellToParent(LONE, PLACE + 1));
  const untried = cellToChildren(found, 5).filter((cell) => !first.includes(cell));
  for (const cell of untried) await sendInto(cell, ENOUGH);
  expect(await shownOf(id)).toBe(LONE);
  expect(ENOUGH * (first.length + untried.length)).toBe(KEYS_TO_FIND);
});

/** As docs/privacy.md says. */
const KEYS_TO_FIND = 52;

/** Weeks until so many new keys count beside owners who do, all sent on one day. */
async function weeksToCount(owners: number, crowded: boolean): Promise<number> {
  const { id } = await (await post(atlas.app, at(1, ...HERE))).json();
  const tune = (await findTune(atlas.db, id)) as TuneRow;
  await atlas.db.delete(tunes);
  await atlas.db.delete(decisions);
  const names = Array.from({ length: owners + KEYS_TO_FIND }, (_, n) => `contributor ${n}`);
  const own = (contributor: string) => ({
    ...{ id: contributor, receipt_sha256: contributor, pseudonym: contributor, contributor },
  });
  await atlas.db.insert(tunes).values(names.map((name) => ({ ...tune, ...own(name) })));
  const since = "2026-12-01";
  const waits = names.slice(owners).map((contributor) => ({ contributor, since, crowded }));
  await atlas.db.insert(waiting).values(waits);
  for (let day = 0; ; day++) {
    await countDue(atlas.db, new Date(Date.parse(since) + day * 86_400_000), NEW_KEY_DAYS);
    if ((await atlas.db.$count(waiting)) === 0) return Math.ceil(day / 7);
  }
}

test("keys that wait speak for no finer cell", async () => {
  // It counts from before there was the rule.
  const id = await lone();
  await atlas.stop();
  atlas = await openTestAtlas({ file: atlas.file, newKeyDays: NEW_KEY_DAYS });
  await sendInto(LONE, ENOUGH);
  const finest: number[] = [];
  for (let week = 0; week < 8; week++) {
    finest.push(getResolution(await shownOf(id)));
    atlas.pass(7 * 86_400_000);
    await atlas.fit.settle();
  }
  // The first counts after a week, the others, of one network, after thirty days and one a week.
  expect(finest.slice(0, 7)).toEqual(Array(7).fill(PLACE));
  expect(await shownOf(id)).toBe(LONE);
});

test("how long the keys wait that could find a lone tune is as docs/privacy.md says", async () => {
  const weeks = [
    await weeksToCount(10, true),
    await weeksToCount(10, false),
    await weeksToCount(200, false),
  ];
  const said = readFileSync("docs/privacy.md", "utf8").replaceAll("\n", " ");
  expect(said).toContain(
    `${weeks[0]} weeks from one network in an atlas of ten owners, ${weeks[1]} from many, and ${weeks[2]} from many in one of 200`,
  );
});

test("tunes that the fit sets aside do not speak for a finer cell", async () => {
  const id = await lone();
  // Honest ones elsewhere, so that the fit knows what is far off.
  for (let n = 10; n < 40; n++) await sent(at(n, ...THERE));
  const neighbours = async (times: number) => {
    for (let k = 0; k < 8; k++) {
      const tune = at(200 + k, ...HERE);
      await sent({ ...tune, low: { ...tune.low, pump_Hz: tune.low.pump_Hz * times } });
    }
    await atlas.fit.settle();
  };
  await neighbours(1.7);
  expect(getResolution(await shownOf(id))).toBe(PLACE);
  await neighbours(1);
  expect(await shownOf(id)).toBe(LONE);
});
