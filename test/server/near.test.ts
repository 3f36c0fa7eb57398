import { describe, expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { flatCountry, goodTune, openTestAtlas, post } from "./atlas.ts";
import { tuneAt } from "./crowd.ts";
import { freshAtlas } from "./fresh-atlas.ts";

const atlas = freshAtlas();
const { get } = atlas;

describe("tunes in air like this", () => {
  const near = async (query: string) =>
    answers.near.parse(await (await get(`/api/tunes/near?heat_kW=5&${query}`)).json());

  test("nearest in air first, of that size, counted ones alone, with how they stand against the average", async () => {
    for (let n = 0; n < 12; n++) {
      const at = 200 + 300 * n;
      const tune = goodTune(n);
      await post(atlas.app, { ...tune, site: { elevation_m: at }, air: { temperature_C: 0 } });
    }
    const other = goodTune(20);
    await post(atlas.app, { ...other, heater: { heat_kW: 2 }, site: { elevation_m: 1400 } });
    await atlas.fit.refresh();
    const { tunes } = await near("elevation_m=1400&temperature_C=0");
    expect(tunes).toHaveLength(10);
    const off = tunes.map(({ elevation_m }) => Math.abs(elevation_m - 1400));
    expect(off).toEqual(off.toSorted((p, q) => p - q));
    expect(tunes.every(({ heat_kW, cell }) => heat_kW === 5 && cell === null)).toBe(true);
    for (const { against_average_pct } of tunes) {
      expect(Math.abs(against_average_pct.low)).toBeLessThan(60);
    }
  });

  test("of tunes in the same air those of the place come first; nothing tells more of where than the open data", async () => {
    for (let n = 0; n < 6; n++) {
      const site = n < 3 ? { elevation_m: 1300, lat: 41.2, lon: 74.9 } : { elevation_m: 1300 };
      await post(atlas.app, { ...goodTune(n), site, air: { temperature_C: -3 } });
    }
    const far = { elevation_m: 1300, lat: 41.2, lon: 60 };
    await post(atlas.app, { ...goodTune(9), site: far, air: { temperature_C: -3 } });
    const { tunes } = await near("elevation_m=1300&temperature_C=-3&lat=41.2&lon=74.9");
    expect(tunes.at(-1)?.cell).not.toBe(tunes[0]?.cell);
    const open = await (await get("/api/tunes.geojson")).json();
    const cells = open.features.map((f: { properties: { cell: string } }) => f.properties.cell);
    for (const { cell } of tunes) expect([...cells, null]).toContain(cell);
  });

  test("air leads: a place next door never comes before like air elsewhere, and orders tunes within 3 % of density", async () => {
    const pass = { lat: 46.5, lon: 8.6 };
    const sites = [
      { of: "the beach next door", elevation_m: 0, lat: 46.5, lon: 8.6, temperature_C: 31 },
      { of: "far, the same air", elevation_m: 2700, lat: -33, lon: -70, temperature_C: -8 },
      {
        of: "near, nearly the same air",
        elevation_m: 2900,
        lat: 46.5,
        lon: 8.6,
        temperature_C: -8,
      },
      { of: "no place, the same air", elevation_m: 2800, temperature_C: -8 },
      { of: "near, other air", elevation_m: 1900, lat: 46.5, lon: 8.6, temperature_C: 2 },
    ];
    const anyHeight = async (lat: number, lon: number) => ({
      ...(await flatCountry.elevation(lat, lon)),
      sd_m: 2000,
      uncertainty_95_m: 4000,
    });
    const hills = await openTestAtlas({ gazetteer: { ...flatCountry, elevation: anyHeight } });
    for (const [n, { of: _, temperature_C, ...site }] of sites.entries()) {
      const tune = tuneAt(site.elevation_m, 1, `contributor-key-${n}${n}${n}${n}`, site);
      const sent = await post(hills.app, { ...tune, air: { temperature_C } });
      expect((await sent.json()).verdict).toBe("accepted");
    }
    await hills.fit.refresh();
    const names = async (place: string) => {
      const query = `heat_kW=5&elevation_m=2720&temperature_C=-8${place}`;
      const answer = await hills.app.request(`/api/tunes/near?${query}`);
      const { tunes } = answers.near.parse(await answer.json());
      return tunes.map((tune) => sites.find((s) => s.elevation_m === tune.elevation_m)?.of);
    };
    expect(await names(`&lat=${pass.lat}&lon=${pass.lon}`)).toEqual([
      "near, nearly the same air",
      "far, the same air",
      "no place, the same air",
      "near, other air",
      "the beach next door",
    ]);
    expect(await names("")).toEqual([
      "far, the same air",
      "no place, the same air",
      "near, nearly the same air",
      "near, other air",
      "the beach next door",
    ]);
    await hills.close();
  });

  test("none yet: an empty list; a bad question: 422", async () => {
    expect((await near("elevation_m=1400")).tunes).toEqual([]);
    expect((await get("/api/tunes/near?heat_kW=5")).status).toBe(422);
    expect((await get("/api/tunes/near?heat_kW=5&elevation_m=1&dose_uL=20")).status).toBe(422);
  });
});
