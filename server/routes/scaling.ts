import { z } from "zod";
import {
  countOfClass,
  dataRevision,
  fitRows,
  type PointRow,
  shownElevation,
  tunesOfClass,
} from "../../db/tunes.ts";
import type { End } from "../../model/end.ts";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { asideOf, asideSentence } from "../../model/fit/standing.ts";
import { SAFETY } from "../../model/safety.ts";
import { scalingCurve } from "../../model/scaling-curve.ts";
import { groupOf } from "../../model/start.ts";
import { heat_kW } from "../../model/tune.ts";
import { farOff, HELD_AT_THE_DOOR } from "../aside-reason.ts";
import type { Services } from "../context.ts";
import { fromText } from "../contract/from-text.ts";
import { type ScalingAnswer, type ScalingPoint, scaling } from "../contract/scaling.ts";
import { api, declareRoute, json } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { type JsonText, jsonText, sendText } from "../json-text.ts";
import { stateOf } from "../prepared.ts";

/** Points a chart gets at most. */
const POINTS_MOST = 2000;

const scalingQuery = z.strictObject({
  heat_kW: fromText(heat_kW),
  end: z.enum(["low", "high"], { error: 'End must be "low" or "high".' }),
});

const scalingRoute = declareRoute({
  method: "get",
  path: "/scaling",
  summary: "Points, curve and bands of a heater size and one end of its power",
  request: { query: scalingQuery },
  responses: { 200: json(scaling) },
  problems: [422],
});

/** How settings scale with the air. */
export function scalingRoutes(services: Services) {
  return api().openapi(scalingRoute, async (c) => {
    const query = c.req.valid("query");
    const fit = await services.fit.current();
    const state = stateOf(fit, await dataRevision(services.db));
    const unchanged = unchangedSince(c, state);
    if (unchanged) return unchanged;
    const { answers } = services.prepared;
    return sendText(c, await answers.get(state, JSON.stringify(query), () => answer(fit, query)));
  });

  async function answer(
    fit: PublishedFit,
    { heat_kW, end }: z.output<typeof scalingQuery>,
  ): Promise<JsonText<ScalingAnswer>> {
    const rows = await tunesOfClass(services.db, heat_kW, POINTS_MOST);
    const group = groupOf(fit, heat_kW, end);
    return jsonText({
      heat_kW,
      end,
      fit: fit.version,
      prior_only: group.contributors === 0,
      demo: services.demo,
      points: rows.map((row) => pointOf(row, end, group)),
      points_total: await countOfClass(services.db, heat_kW),
      curve: scalingCurve(group),
      safety: SAFETY,
    });
  }
}

function pointOf(row: PointRow, end: End, group: GroupFit): ScalingPoint {
  const own = fitRows(row).find((r) => r.end === end) as FitRow;
  const { pump_Hz, fan_rpm } = own;
  const held = row.verdict === "held";
  const aside = group.contributors > 0 ? asideOf(group, own) : null;
  return {
    contributor: row.pseudonym,
    elevation_m: shownElevation(row.elevation_m),
    density_kg_m3: row.density_kg_m3,
    pump_Hz,
    fan_rpm,
    pump_Hz_per_krpm: (pump_Hz * 1000) / fan_rpm,
    status: held ? "held" : aside ? "rejected" : "kept",
    reason: held
      ? "Held at the door; its contributor knows why."
      : aside && asideSentence(aside, end),
    aside: held ? HELD_AT_THE_DOOR : aside && farOff(aside, own),
  };
}
