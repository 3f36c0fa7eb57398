import { type Context, Hono } from "hono";
import { stream } from "hono/streaming";
import { acceptedTunes, cellContributors, dataRevision } from "../../db/tunes.ts";
import { SAFETY } from "../../model/safety.ts";
import { centre, shownCells } from "../cells.ts";
import type { Services } from "../context.ts";
import {
  COLUMNS,
  csvLine,
  LICENCE,
  METADATA_OF,
  openRecord,
  tableMetadata,
} from "../dictionary.ts";
import { unchangedSince } from "../freshness.ts";

/** All accepted tunes, streamed a page at a time, and what their columns mean. */
export function openDataRoutes(services: Services): Hono {
  const { db, demo } = services;
  const records = async function* () {
    const shown = shownCells(await cellContributors(db));
    for await (const page of acceptedTunes(db)) yield page.map((tune) => openRecord(tune, shown));
  };
  const unchanged = async (c: Context) => unchangedSince(c, `tunes.${await dataRevision(db)}`);

  return new Hono()
    .get("/tunes.csv", async (c) => {
      const known = await unchanged(c);
      if (known) return known;
      c.header("Content-Type", "text/csv; charset=utf-8; header=present");
      c.header("Content-Disposition", 'attachment; filename="hypsotune-tunes.csv"');
      c.header(
        "Link",
        [
          `<${LICENCE.url}>; rel="license"`,
          `</api/tunes.csv${METADATA_OF}>; rel="describedby"; type="application/csvm+json"`,
          '</api/dictionary.json>; rel="describedby"; type="application/json"',
        ].join(", "),
      );
      return stream(c, async (out) => {
        await out.write(csvLine(COLUMNS.map(({ name }) => name)));
        for await (const page of records()) {
          await out.write(page.map((r) => csvLine(COLUMNS.map(({ name }) => r[name]))).join(""));
        }
      });
    })
    .get(`/tunes.csv${METADATA_OF}`, (c) => {
      c.header("Content-Type", "application/csvm+json");
      return c.body(JSON.stringify(tableMetadata(demo)));
    })
    .get("/tunes.geojson", async (c) => {
      const known = await unchanged(c);
      if (known) return known;
      c.header("Content-Type", "application/geo+json");
      return stream(c, async (out) => {
        const head = { type: "FeatureCollection", licence: LICENCE, demo, safety: SAFETY };
        await out.write(`${JSON.stringify(head).slice(0, -1)},"features":[`);
        let separator = "";
        for await (const page of records()) {
          await out.write(separator + page.map((r) => JSON.stringify(feature(r))).join(","));
          separator = ",";
        }
        await out.write("]}");
      });
    })
    .get("/dictionary.json", (c) =>
      c.json({
        title: "Tunes of the atlas, one row a tune",
        licence: LICENCE,
        demo,
        safety: SAFETY,
        columns: COLUMNS,
      }),
    );
}

/** A GeoJSON feature (RFC 7946): the shown cell's centre; elevation above sea level stays a property. */
function feature(record: ReturnType<typeof openRecord>) {
  const { id, ...properties } = record;
  const at = typeof record.cell === "string" && record.cell !== "" ? centre(record.cell) : null;
  return {
    type: "Feature",
    id,
    geometry: at && { type: "Point", coordinates: [at.lon, at.lat] },
    properties,
  };
}
