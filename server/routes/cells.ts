import { cellToParent, getResolution, isValidCell } from "h3-js";
import { Hono } from "hono";
import { median } from "simple-statistics";
import {
  acceptedTunes,
  cellContributors,
  dataRevision,
  type TuneRow,
  tunesOfCells,
} from "../../db/tunes.ts";
import { compareWithAtlas } from "../../model/compare.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { SAFETY } from "../../model/safety.ts";
import { centre, KEPT_RESOLUTION, PLACE_RESOLUTION, shownCells } from "../cells.ts";
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
  const { db, demo } = services;
  const app = new Hono();

  app.get("/cells/:cell/tunes", async (c) => {
    const cell = c.req.param("cell");
    const shown = shownCells(await cellContributors(db));
    // A cell is shown at a place's resolution at the coarsest: 49 kept cells, which one statement takes.
    const kept = [...shown].filter(([, as]) => as === cell).map(([own]) => own);
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
    const shown = shownCells(await cellContributors(db));
    const members = new Map<string, TuneRow[]>();
    for await (const page of acceptedTunes(db)) {
      for (const tune of page) {
        const cell = tune.cell && shown.get(tune.cell);
        if (!cell || !isUnder(tune.cell as string, parent)) continue;
        const known = members.get(cell);
        if (known) known.push(tune);
        else members.set(cell, [tune]);
      }
    }
    const cells = [...members].map(([cell, tunes]) => summed(cell, tunes, fit));
    return c.json({ parent, cells, demo, safety: SAFETY } satisfies CellsAnswer);
  });

  return app;
}

/** A cell is looked for in its place at the finest: what is shown coarser must not come apart again. */
function isUnder(cell: string, parent: string): boolean {
  if (parent === WORLD) return true;
  const resolution = Math.min(getResolution(parent), PLACE_RESOLUTION);
  return cellToParent(cell, resolution) === cellToParent(parent, resolution);
}

function summed(cell: string, tunes: TuneRow[], fit: PublishedFit): Cell {
  const shifts = tunes.map((t) =>
    compareWithAtlas(fit, t.heat_kW, t.density_kg_m3, {
      low: { pump_Hz: t.low_pump_Hz, fan_rpm: t.low_fan_rpm },
      high: { pump_Hz: t.high_pump_Hz, fan_rpm: t.high_fan_rpm },
    }),
  );
  const shift = (end: 0 | 1) => median(shifts.map((s) => s[end]?.mixture_shift_pct ?? 0));
  return {
    cell,
    ...centre(cell),
    tunes: tunes.length,
    contributors: new Set(tunes.map((t) => t.contributor)).size,
    elevation_m: Math.round(tunes.reduce((sum, t) => sum + t.elevation_m, 0) / tunes.length),
    mixture_shift_pct: { low: shift(0), high: shift(1) },
  };
}
