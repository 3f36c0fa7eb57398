import { parse } from "csv-parse/sync";
import { afterEach, beforeEach, expect, test } from "vitest";
import { formOf } from "../../model/fit/row-from-text.ts";
import { SAFETY } from "../../model/safety.ts";
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
