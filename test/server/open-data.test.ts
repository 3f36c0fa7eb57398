import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { getResolution } from "h3-js";
import { afterEach, beforeEach, expect, test } from "vitest";
import { ENDS } from "../../model/end.ts";
import { formOf } from "../../model/row-from-text.ts";
import { SAFETY } from "../../model/safety.ts";
import type { CellsAnswer } from "../../server/contract.ts";
import { cellTunes } from "../../server/contract.ts";
import { LICENCE } from "../../server/dictionary.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas();
  await post(atlas.app, goodTune());
});
afterEach(() => atlas.close());

/** As the export says where its header document is: a Link of RFC 8288. */
async function headerDocument() {
  const csv = await atlas.app.request("/api/tunes.csv");
  const links = csv.headers.get("Link") ?? "";
  const [, address = ""] =
    /<([^>]+)>; rel="describedby"; type="application\/csvm\+json"/.exec(links) ?? [];
  const answer = await atlas.app.request(address);
  return { csv: await csv.text(), address, answer, document: await answer.json() };
}

test("the CSV export leads to its header document, where the cautions stand; at the address a reader looks by itself, too", async () => {
  const { address, answer, document } = await headerDocument();
  // "Model for Tabular Data and Metadata on the Web" (W3C Recommendation, 17 December 2015), 5.2 and 5.3.
  expect(address).toBe("/api/tunes.csv-metadata.json");
  expect(answer.headers.get("Content-Type")).toContain("application/csvm+json");
  expect(new URL(document.url, `http://atlas.example${address}`).pathname).toBe("/api/tunes.csv");
  const said = document["rdfs:comment"].join("\n");
  for (const line of [SAFETY.notice, ...SAFETY.not_for, ...SAFETY.defer_to]) {
    expect(said).toContain(line);
  }
  expect(document["dc:license"]).toEqual({ "@id": LICENCE.url });
  expect((await (await atlas.app.request("/api/dictionary.json")).json()).safety).toEqual(SAFETY);
});

test("the CSV itself stays plain RFC 4180: a header and rows, nothing a reader or the fit would stumble over", async () => {
  const { csv, document } = await headerDocument();
  const rows = parse(csv, { columns: true }) as Record<string, string>[];
  expect(rows).toHaveLength(1);
  const names = document.tableSchema.columns.map((column: { name: string }) => column.name);
  expect(csv.split("\r\n")[0]).toBe(names.join(","));
  expect(formOf(names)).toBe("export");
  const { features } = await (await atlas.app.request("/api/tunes.geojson")).json();
  const values = { id: features[0].id, ...features[0].properties };
  for (const { name, datatype } of document.tableSchema.columns) {
    if (values[name] !== null)
      expect(`${name}: ${typeof values[name]}`).toBe(`${name}: ${datatype}`);
  }
});

test("the tunes of a cell are those that the open data show under it, no finer in place or time, and nobody's", async () => {
  // Five contributors of one cell are shown in it; a neighbour by the place, and so is one alone far off; one who has been in both, in wide cells.
  const elsewhere = (n: number, lat: number, lon: number, elevation_m: number) => ({
    ...goodTune(n),
    site: { elevation_m, lat, lon },
    tuned_on: `2026-0${1 + (n % 9)}`,
  });
  for (const tune of [
    elsewhere(1, 41.21, 74.91, 1310),
    elsewhere(2, 41.22, 74.92, 1290),
    elsewhere(3, 41.45, 74.95, 1360),
    elsewhere(4, -20.1, -68.2, 1240),
    { ...goodTune(5), tuned_on: undefined },
    elsewhere(6, 41.21, 74.91, 1270),
    elsewhere(7, 41.21, 74.91, 1360),
    elsewhere(7, -20.1, -68.2, 1250),
  ])
    expect((await (await post(atlas.app, tune)).json()).verdict).toBe("accepted");
  const get = async (path: string) => (await atlas.app.request(`/api${path}`)).json();
  const { cells } = (await get("/cells/world")) as CellsAnswer;
  const { features } = await get("/tunes.geojson");
  expect(cells.map(({ cell }) => getResolution(cell)).toSorted()).toEqual([2, 2, 3, 3, 5]);
  for (const { cell, tunes } of cells) {
    const answer = cellTunes.parse(await get(`/cells/${cell}/tunes`));
    const open = features
      .map(({ properties }: { properties: Record<string, unknown> }) => properties)
      .filter((row: Record<string, unknown>) => row.cell === cell);
    expect(answer.tunes_total).toBe(tunes);
    expect(answer.tunes).toHaveLength(tunes);
    const heights = open.map((row: { elevation_m: number }) => row.elevation_m);
    expect(answer.elevation_range_m).toEqual([Math.min(...heights), Math.max(...heights)]);
    const months = answer.tunes.map(({ month }) => month);
    expect(months).toEqual(months.toSorted().toReversed());
    expect(answer.month_range).toEqual([months.at(-1), months[0]]);
    const told = ({ low, high, month, ...rest }: (typeof answer.tunes)[number]) =>
      JSON.stringify([month, rest.elevation_m, rest.temperature_C, low.pump_Hz, high.co_ppm]);
    const shown = (row: Record<string, unknown>) =>
      JSON.stringify([
        row.tuned_on ?? row.submitted_on,
        row.elevation_m,
        row.temperature_C,
        row.low_pump_Hz,
        row.high_co_ppm,
      ]);
    expect(answer.tunes.map(told).toSorted()).toEqual(open.map(shown).toSorted());
    const text = JSON.stringify(answer.tunes);
    for (const { id, contributor } of open) {
      expect(text).not.toContain(contributor);
      expect(text).not.toContain(id ?? "no id among the properties");
    }
  }
});

test.each(["world", "85283473fffffff", "nowhere"])(
  "no tunes are shown under %s: 404, and where to look",
  async (cell) => {
    const answer = await atlas.app.request(`/api/cells/${cell}/tunes`);
    expect(answer.status).toBe(404);
    expect((await answer.json()).detail).toContain("/api/cells/world");
  },
);

test("the columns that the page on R and Python reads are in the export, and the cautions on it", async () => {
  const page = readFileSync("docs/open-data.md", "utf8");
  const columns = (await (await atlas.app.request("/api/tunes.csv")).text())
    .split("\r\n")[0]
    ?.split(",");
  for (const name of ["heat_kW", "density_kg_m3", "contributor"]) {
    expect(page.match(new RegExp(`[$.]${name}\\b|groupby\\("${name}"\\)`)), name).not.toBeNull();
    expect(columns).toContain(name);
  }
  for (const name of ["_pump_Hz", "_fan_rpm"]) {
    expect(page.split(name).length, name).toBeGreaterThan(2);
    for (const end of ENDS) expect(columns).toContain(`${end}${name}`);
  }
  expect(page).toContain("Carbon monoxide kills");
});
