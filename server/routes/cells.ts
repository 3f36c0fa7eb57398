import { getResolution, isValidCell } from "h3-js";
import { z } from "zod";
import { dataRevision } from "../../db/decisions.ts";
import { type ShownTogether, tunesTogether } from "../../db/shown-tunes.ts";
import { SAFETY } from "../../model/safety.ts";
import { KEPT_RESOLUTION, placeOf, placesOfWide } from "../cells.ts";
import type { Services } from "../context.ts";
import { cells, cellTunes } from "../contract/cells.ts";
import { api, declareRoute, json } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { WORLD } from "../open-documents.ts";
import { sendPacked } from "../packed.ts";
import { stateOf } from "../prepared.ts";
import { RequestProblem } from "../problem.ts";

/** Tunes of one cell that an answer holds at most. */
const TUNES_MOST = 200;

const cellTunesRoute = declareRoute({
  method: "get",
  path: "/cells/{cell}/tunes",
  summary: "Accepted tunes shown under one cell of those that /api/cells names",
  request: { params: z.object({ cell: z.string() }) },
  responses: { 200: json(cellTunes) },
  problems: [404, 503],
});

const cellsRoute = declareRoute({
  method: "get",
  path: "/cells/{parent}",
  summary: `Accepted tunes summed per H3 cell under a parent cell, or over the "${WORLD}"`,
  request: { params: z.object({ parent: z.string() }) },
  responses: { 200: json(cells) },
  problems: [404, 503],
});

/** Accepted tunes summed per cell, under a parent cell or over the whole world; and those of one cell. */
export function cellRoutes(services: Services) {
  const { db, demo, prepared } = services;
  const app = api();

  app.openapi(cellTunesRoute, async (c) => {
    const { cell } = c.req.valid("param");
    const unchanged = unchangedSince(c, `tunes.${await dataRevision(db)}`);
    if (unchanged) return unchanged;
    const { all, tunes } = await tunesTogether(db, await shownAs(cell), TUNES_MOST);
    if (all.count === 0) {
      throw new RequestProblem(
        404,
        `No tunes are shown under this cell. GET /api/cells/${WORLD} names those that have some.`,
      );
    }
    return c.json(
      {
        cell,
        tunes_total: all.count,
        elevation_range_m: [all.lowest_m, all.highest_m],
        month_range: [all.oldest, all.newest],
        tunes,
        demo,
        safety: SAFETY,
      },
      200,
    );
  });

  /** What is shown as one cell: 7 places at the most, or the 49 kept cells of one, which one statement takes. */
  async function shownAs(cell: string): Promise<ShownTogether> {
    const places = placesOfWide(cell);
    if (places) return { places };
    const shown = [...(await prepared.shown())];
    const cells = shown.filter(([, as]) => as === cell).map(([kept]) => kept);
    return { place: placeOf(cell), cells };
  }

  app.openapi(cellsRoute, async (c) => {
    const { parent } = c.req.valid("param");
    if (parent !== WORLD && !(isValidCell(parent) && getResolution(parent) < KEPT_RESOLUTION)) {
      throw new RequestProblem(
        404,
        `Name an H3 cell of resolution 0 to ${KEPT_RESOLUTION - 1}, or "${WORLD}".`,
      );
    }
    const fit = await services.fit.current();
    const unchanged = unchangedSince(c, stateOf(fit, await dataRevision(db)));
    if (unchanged) return unchanged;
    const packed = await prepared.cells(fit, parent);
    // It may be a little older.
    const known = unchangedSince(c, packed.made_from);
    if (known) return known;
    c.header("Content-Type", "application/json");
    return sendPacked(c, packed);
  });

  return app;
}
