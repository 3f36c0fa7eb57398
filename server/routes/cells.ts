import { getResolution, isValidCell } from "h3-js";
import { Hono } from "hono";
import { dataRevision, type ShownTogether, tunesTogether } from "../../db/tunes.ts";
import { SAFETY } from "../../model/safety.ts";
import { KEPT_RESOLUTION, placeOf, placesOfWide } from "../cells.ts";
import type { Services } from "../context.ts";
import type { CellTunesAnswer } from "../contract.ts";
import { unchangedSince } from "../freshness.ts";
import { WORLD } from "../open-documents.ts";
import { sendPacked } from "../packed.ts";
import { stateOf } from "../prepared.ts";
import { RequestProblem } from "../problem.ts";

/** Tunes of one cell that an answer holds at most. */
const TUNES_MOST = 200;

/** Accepted tunes summed per cell, under a parent cell or over the whole world; and those of one cell. */
export function cellRoutes(services: Services): Hono {
  const { db, demo, prepared } = services;
  const app = new Hono();

  app.get("/cells/:cell/tunes", async (c) => {
    const cell = c.req.param("cell");
    const unchanged = unchangedSince(c, `tunes.${await dataRevision(db)}`);
    if (unchanged) return unchanged;
    const { all, tunes } = await tunesTogether(db, await shownAs(cell), TUNES_MOST);
    if (all.count === 0) {
      throw new RequestProblem(
        404,
        `No tunes are shown under this cell. GET /api/cells/${WORLD} names those that have some.`,
      );
    }
    return c.json({
      cell,
      tunes_total: all.count,
      elevation_range_m: [all.lowest_m, all.highest_m],
      month_range: [all.oldest, all.newest],
      tunes,
      demo,
      safety: SAFETY,
    } satisfies CellTunesAnswer);
  });

  /** What is shown as one cell: 7 places at the most, or the 49 kept cells of one, which one statement takes. */
  async function shownAs(cell: string): Promise<ShownTogether> {
    const places = placesOfWide(cell);
    if (places) return { places };
    const shown = [...(await prepared.shown())];
    const cells = shown.filter(([, as]) => as === cell).map(([kept]) => kept);
    return { place: placeOf(cell), cells };
  }

  app.get("/cells/:parent", async (c) => {
    const parent = c.req.param("parent");
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
