import type { Context } from "hono";
import { stream } from "hono/streaming";
import { dataRevision } from "../../db/decisions.ts";
import { SAFETY } from "../../model/safety.ts";
import type { Services } from "../context.ts";
import { api, declareRoute, media } from "../declare.ts";
import { COLUMNS, LICENCE, METADATA_OF, tableMetadata } from "../dictionary.ts";
import { unchangedSince } from "../freshness.ts";
import { chunksOf, type DocumentName } from "../open-documents.ts";
import { sendPacked } from "../packed.ts";
import { STORAGE_SHORT } from "../problem.ts";
import type { ReleasedFile } from "../release.ts";
import { addressOf, MEDIA_TYPES } from "./data.ts";

const csvRoute = declareRoute({
  method: "get",
  path: "/tunes.csv",
  summary: "All accepted tunes, CSV (CC0)",
  responses: { 200: media("text/csv") },
  problems: [429, 503, STORAGE_SHORT],
});

const csvMetadataRoute = declareRoute({
  method: "get",
  path: `/tunes.csv${METADATA_OF}`,
  summary: "The cautions, the licence and the columns of that CSV, by the W3C's vocabulary",
  responses: { 200: media("application/csvm+json") },
});

const geojsonRoute = declareRoute({
  method: "get",
  path: "/tunes.geojson",
  summary: "All accepted tunes, GeoJSON (CC0)",
  responses: { 200: media("application/geo+json") },
  problems: [429, 503, STORAGE_SHORT],
});

const parquetRoute = declareRoute({
  method: "get",
  path: "/tunes.parquet",
  summary: "All accepted tunes, Parquet (CC0)",
  responses: { 200: media("application/vnd.apache.parquet") },
  problems: [429, 503, STORAGE_SHORT],
});

const dictionaryRoute = declareRoute({
  method: "get",
  path: "/dictionary.json",
  summary: "The cautions, and what the columns of the open data mean",
  responses: { 200: media("application/json") },
});

/** All accepted tunes, and what their columns mean. */
export function openDataRoutes(services: Services) {
  const { db, demo, prepared, limits, clientAddress } = services;

  /** A document from what is prepared, or sent a page at a time while it is made. */
  async function send(c: Context, name: DocumentName, headers: Record<string, string>) {
    const known = unchangedSince(c, `tunes.${await dataRevision(db)}`);
    if (known) return known;
    await limits.read(clientAddress(c));
    for (const [header, value] of Object.entries(headers)) c.header(header, value);
    if (!prepared.hasFiles) {
      return stream(c, async (out) => {
        for await (const chunk of chunksOf(name, db, demo)) await out.write(chunk);
      });
    }
    const [{ revision, data_revision, files }] = await prepared.releases();
    // It may be a little older.
    const same = unchangedSince(c, `tunes.${data_revision}`);
    if (same) return same;
    c.header("Content-Location", addressOf(revision, name));
    return sendPacked(c, files.find((file) => file.name === name) as ReleasedFile);
  }

  return api()
    .openapi(csvRoute, (c) =>
      send(c, "tunes.csv", {
        "Content-Type": MEDIA_TYPES["tunes.csv"],
        "Content-Disposition": 'attachment; filename="hypsotune-tunes.csv"',
        Link: [
          `<${LICENCE.url}>; rel="license"`,
          `</api/tunes.csv${METADATA_OF}>; rel="describedby"; type="application/csvm+json"`,
          '</api/dictionary.json>; rel="describedby"; type="application/json"',
        ].join(", "),
      }),
    )
    .openapi(csvMetadataRoute, (c) => {
      c.header("Content-Type", "application/csvm+json");
      return c.body(JSON.stringify(tableMetadata(demo)));
    })
    .openapi(geojsonRoute, (c) =>
      send(c, "tunes.geojson", { "Content-Type": MEDIA_TYPES["tunes.geojson"] }),
    )
    .openapi(parquetRoute, (c) =>
      send(c, "tunes.parquet", { "Content-Type": MEDIA_TYPES["tunes.parquet"] }),
    )
    .openapi(dictionaryRoute, (c) =>
      c.json({
        title: "Tunes of the atlas, one row a tune",
        licence: LICENCE,
        demo,
        safety: SAFETY,
        columns: COLUMNS,
      }),
    );
}
