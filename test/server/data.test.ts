import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import { parse } from "csv-parse/sync";
import { parquetMetadata, parquetReadObjects } from "hyparquet";
import { afterEach, expect, test } from "vitest";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { SAFETY } from "../../model/safety.ts";
import * as answers from "../../server/contract.ts";
import { COLUMNS, isNumber, LICENCE } from "../../server/dictionary.ts";
import { ParquetRows } from "../../server/parquet.ts";
import { preparedHere } from "../../server/prepared.ts";
import { putTunes } from "../torture/many-tunes.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

let atlas: TestAtlas;
afterEach(() => atlas.close());

const get = (path: string, headers: Record<string, string> = {}) =>
  atlas.app.request(path, { headers });
const index = async () => answers.data.parse(await (await get("/api/data")).json());
const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest();
const bytesOf = async (response: Response) => Buffer.from(await response.arrayBuffer());

test("the same data are the same revision, made in a thread or here", async () => {
  atlas = await openTestAtlas({ prepared: true });
  await post(atlas.app, goodTune());
  await atlas.fit.settle();
  const { files, revision } = await index();
  const other = await openTestAtlas({ file: atlas.file });
  const here = answers.data.parse(await (await other.app.request("/api/data")).json());
  expect(here).toMatchObject({ files, revision });
  await other.stop();
});

test.each([
  ["in a thread", true],
  ["here", false],
])("files made %s: never to change, with checksums and in parts", async (_, prepared) => {
  atlas = await openTestAtlas({ prepared });
  for (const n of [1, 2, 3]) await post(atlas.app, goodTune(n));
  await atlas.fit.settle();
  const { files, revision } = await index();
  expect(files.map(({ name }) => name)).toEqual(["tunes.csv", "tunes.geojson", "tunes.parquet"]);
  for (const { name, address, size_bytes, sha256: sum, media_type } of files) {
    const whole = await get(address);
    expect(whole.headers.get("Cache-Control")).toContain("immutable");
    expect(whole.headers.get("Content-Type")).toBe(media_type);
    expect(whole.headers.get("Accept-Ranges")).toBe("bytes");
    const bytes = await bytesOf(whole);
    expect(bytes.length).toBe(size_bytes);
    expect(sha256(bytes).toString("hex")).toBe(sum);
    // RFC 9530, 3: a dictionary of byte sequences, of the representation whole.
    const digest = `sha-256=:${sha256(bytes).toString("base64")}:`;
    expect(whole.headers.get("Repr-Digest")).toBe(digest);
    const newest = await get(`/api/${name}`);
    expect(await bytesOf(newest)).toEqual(bytes);
    if (prepared) expect(newest.headers.get("Content-Location")).toBe(address);

    // RFC 9110, 14.1.2: the examples of a file of 10,000 bytes, for this one's size.
    const size = bytes.length;
    const parts: [range: string, first: number, last: number][] = [
      ["bytes=0-499", 0, 499],
      ["bytes=500-999", 500, 999],
      ["bytes=-500", size - 500, size - 1],
      [`bytes=${size - 100}-`, size - 100, size - 1],
      [`bytes=10-${size * 2}`, 10, size - 1],
    ];
    for (const [range, first, last] of parts) {
      const part = await get(address, { Range: range, "Accept-Encoding": "gzip" });
      expect(part.status, range).toBe(206);
      expect(part.headers.get("Content-Range"), range).toBe(`bytes ${first}-${last}/${size}`);
      expect(part.headers.get("Repr-Digest")).toBe(digest);
      expect(await bytesOf(part), range).toEqual(bytes.subarray(first, last + 1));
    }
    const tag = whole.headers.get("ETag") ?? "";
    const range = { Range: "bytes=0-9" };
    expect((await get(address, { ...range, "If-Range": tag })).status).toBe(206);
    expect((await get(address, { ...range, "If-Range": '"another"' })).status).toBe(200);
    expect((await get(address, { Range: "bytes=0-1,5-6" })).status).toBe(200);
    const beyond = await get(address, { Range: `bytes=${size}-` });
    expect(beyond.status).toBe(416);
    expect(beyond.headers.get("Content-Range")).toBe(`bytes */${size}`);
    expect((await get(address, { "If-None-Match": tag })).status).toBe(304);

    const packed = await get(address, { "Accept-Encoding": "gzip" });
    if (prepared && name !== "tunes.parquet") {
      expect(packed.headers.get("ETag")).not.toBe(tag);
      expect(gunzipSync(await bytesOf(packed))).toEqual(bytes);
    }
  }
  expect((await get(`/api/data/${revision}/tunes.xlsx`)).status).toBe(404);
  expect((await get("/api/data/0000000000000000/tunes.csv")).status).toBe(404);
});

test.each([true, false])(
  "the newest revision and the one before it are kept; none with a withdrawn tune (%s)",
  async (prepared) => {
    atlas = await openTestAtlas({ prepared });
    const revisions: string[] = [];
    let last = { id: "", receipt: "" };
    for (const n of [1, 2, 3]) {
      last = await (await post(atlas.app, goodTune(n))).json();
      await atlas.fit.settle();
      revisions.push((await index()).revision);
    }
    const [oldest, older, newest] = revisions as [string, string, string];
    expect(new Set(revisions).size).toBe(3);
    expect((await index()).before).toEqual([older]);
    const status = async (revision: string) =>
      (await get(`/api/data/${revision}/tunes.csv`)).status;
    expect(await Promise.all([oldest, older, newest].map(status))).toEqual([404, 200, 200]);
    await atlas.app.request(`/api/tunes/${last.id}`, {
      method: "DELETE",
      headers: { Authorization: `Bearer ${last.receipt}` },
    });
    await atlas.fit.settle();
    const { revision, before } = await index();
    expect(before).toEqual([]);
    // The same tunes as before it came.
    expect(revision).toBe(older);
    expect(await status(newest)).toBe(404);
    const { id, receipt } = await (await post(atlas.app, goodTune(4))).json();
    await atlas.fit.settle();
    expect((await index()).before).toEqual([older]);
    await atlas.app.request(`/api/tunes/${id}`, {
      method: "PUT",
      headers: { Authorization: `Bearer ${receipt}`, "Content-Type": "application/json" },
      body: JSON.stringify(goodTune(5)),
    });
    expect((await index()).before).toEqual([]);
  },
);

test("where others write to the same database, as at the edge, no revision with what they withdrew is left", async () => {
  atlas = await openTestAtlas();
  await post(atlas.app, goodTune(1));
  const { id, receipt } = await (await post(atlas.app, goodTune(2))).json();
  const isolate = preparedHere(atlas.db, false, true);
  const kept = async () => (await isolate.releases()).map(({ revision }) => revision);
  const before = await kept();
  const headers = { Authorization: `Bearer ${receipt}` };
  await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers });
  const after = await kept();
  expect(after).toHaveLength(1);
  expect(after).not.toEqual(before);
});

test.each([0, 1, 2500])("Parquet has the rows of the CSV, %i of them", async (count) => {
  atlas = await openTestAtlas({ prepared: true, demo: true });
  if (count > 0) {
    await post(atlas.app, { ...goodTune(), meter: undefined, tuned_on: undefined });
    await atlas.fit.settle();
    const { value } = await acceptedTunes(atlas.db).next();
    await putTunes(atlas.db, (value as TuneRow[])[0] as TuneRow, count - 1);
  }
  const csv = parse(await (await get("/api/tunes.csv")).text(), { columns: true });
  const file = await (await get("/api/tunes.parquet")).arrayBuffer();
  const rows = await parquetReadObjects({ file });
  expect(rows).toHaveLength(count);
  const asText = (row: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(row).map(([name, value]) => [name, String(value ?? "")]));
  expect(rows.map(asText)).toEqual(csv);

  const { columns } = (await (await get("/api/tunes.csv-metadata.json")).json()).tableSchema;
  const { schema, key_value_metadata } = parquetMetadata(file);
  expect(schema.slice(1).map(({ name, type }) => [name, type])).toEqual(
    columns.map((column: { name: string; datatype: string }) => [
      column.name,
      column.datatype === "number" ? "DOUBLE" : "BYTE_ARRAY",
    ]),
  );
  const about = Object.fromEntries((key_value_metadata ?? []).map((e) => [e.key, e.value]));
  expect(about).toMatchObject({ licence: LICENCE.url, demo: "true" });
  expect(about.cautions).toContain(SAFETY.notice);
});

test("Parquet of more rows than are packed together loses none", async () => {
  atlas = await openTestAtlas();
  const given = Array.from({ length: 45_000 }, (_, n) =>
    Object.fromEntries(
      COLUMNS.map((column, k) => {
        const isLeftOut = column.name !== "id" && (n + k) % 3 === 0;
        return [column.name, isLeftOut ? null : isNumber(column) ? n / 7 + k : `${n}.${k} µ`];
      }),
    ),
  );
  const rows = new ParquetRows(false);
  const parts: Uint8Array<ArrayBuffer>[] = [];
  for (let n = 0; n < given.length; n += 1000) parts.push(rows.add(given.slice(n, n + 1000)));
  const file = await new Blob([...parts, rows.end()]).arrayBuffer();
  expect(parquetMetadata(file).row_groups.map(({ num_rows }) => Number(num_rows))).toEqual([
    20_000, 20_000, 5_000,
  ]);
  const read = await parquetReadObjects({ file });
  const text = (row: unknown) => JSON.stringify(row);
  expect(read.map(text).join("\n") === given.map(text).join("\n")).toBe(true);
});

test("how to cite it is as CITATION.cff has it", async () => {
  atlas = await openTestAtlas();
  const { citation, revision, fit } = await index();
  const cff = readFileSync("CITATION.cff", "utf8");
  for (const field of ["title", "version"]) {
    const value = new RegExp(`^${field}: "?(.+?)"?$`, "m").exec(cff)?.[1] as string;
    expect(citation, field).toContain(value);
  }
  expect(citation).toContain(/- name: "(.+)"/.exec(cff)?.[1] as string);
  expect(citation).toContain(`revision ${revision}, fit ${fit}`);
});

test("versions of the fit, newest first, with what each changed", async () => {
  atlas = await openTestAtlas();
  const fits = async () => answers.fits.parse(await (await get("/api/fits")).json()).fits;
  expect(await fits()).toEqual([]);
  await post(atlas.app, goodTune(1));
  await atlas.fit.settle();
  const rich = goodTune(2);
  for (const end of [rich.low, rich.high]) end.pump_Hz *= 1.2;
  await post(atlas.app, rich);
  await atlas.fit.settle();
  const [newest, first] = await fits();
  expect(first).toMatchObject({ tunes: 1, tunes_more: null, most_moved: null });
  expect(newest).toMatchObject({ tunes: 2, tunes_more: 1, most_moved: { heat_kW: 5 } });
  expect(newest?.most_moved?.change_pct).toBeGreaterThan(0);
  for (const fit of [newest, first]) {
    const kept = answers.publishedFit.parse(await (await get(`/api/fit/${fit?.version}`)).json());
    expect(kept).toMatchObject({ published_at: fit?.published_at, estimator: fit?.estimator });
  }
});
