import { cellToParent, getResolution, isValidCell } from "h3-js";
import { Hono } from "hono";
import { dataRevision, tunesOfCells } from "../../db/tunes.ts";
import { SAFETY } from "../../model/safety.ts";
import { KEPT_RESOLUTION, PLACE_RESOLUTION } from "../cells.ts";
import type { Services } from "../context.ts";
import type { Cell, CellsAnswer, CellTunesAnswer } from "../contract.ts";
import { unchangedSince } from "../freshness.ts";
import { RequestProblem } from "../problem.ts";

/** Name of the whole world where a parent cell is asked for. */
const WORLD = "world";

/** Tunes of one cell that an answer holds at most. */
const TUNES_MOST = 200;

/** Accepted tunes summed per cell, under a parent cell or over the whole world; and those of one cell. */
export function cellRoutes(services: Services): Hono {
  const { db, demo, prepared } = services;
  const app = new Hono();
  /** The answer of the world as text, for the cells it was made of: most ask for that one. */
  let world: { cells: readonly Cell[]; text: string } = { cells: [], text: "" };

  app.get("/cells/:cell/tunes", async (c) => {
    const cell = c.req.param("cell");
    // A cell is shown at a place's resolution at the coarsest: 49 kept cells, which one statement takes.
    const kept = [...(await prepared.shown())].filter(([, as]) => as === cell).map(([own]) => own);
    if (kept.length === 0) {
      throw new RequestProblem(
        404,
        `No tunes are shown under this cell. GET /api/cells/${WORLD} names those that have some.`,
      );
    }
    const unchanged = unchangedSince(c, `tunes.${await dataRevision(db)}`);
    if (unchanged) return unchanged;
    const { all, tunes } = await tunesOfCells(db, kept, TUNES_MOST);
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

  app.get("/cells/:parent", async (c) => {
    const parent = c.req.param("parent");
    if (parent !== WORLD && !(isValidCell(parent) && getResolution(parent) < KEPT_RESOLUTION)) {
      throw new RequestProblem(
        404,
        `Name an H3 cell of resolution 0 to ${KEPT_RESOLUTION - 1}, or "${WORLD}".`,
      );
    }
    const fit = await services.fit.current();
    const unchanged = unchangedSince(c, `${fit.version}.${await dataRevision(db)}`);
    if (unchanged) return unchanged;
    const cells = await prepared.cells(fit);
    const answer = (under: readonly Cell[]) =>
      ({ parent, cells: [...under], demo, safety: SAFETY }) satisfies CellsAnswer;
    if (parent !== WORLD) {
      return c.json(answer(cells.filter(({ cell }) => isUnder(cell, parent))));
    }
    if (world.cells !== cells) world = { cells, text: JSON.stringify(answer(cells)) };
    return c.body(world.text, 200, { "Content-Type": "application/json" });
  });

  return app;
}

/** A cell is looked for in its place at the finest: what is shown coarser must not come apart again. */
function isUnder(cell: string, parent: string): boolean {
  const resolution = Math.min(getResolution(parent), PLACE_RESOLUTION);
  return cellToParent(cell, resolution) === cellToParent(parent, resolution);
}
