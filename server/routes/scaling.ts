import { z } from "zod";
import { dataRevision } from "../../db/decisions.ts";
import { heat_kW } from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { fromText } from "../contract/from-text.ts";
import { scaling } from "../contract/scaling.ts";
import { api, declareRoute, json } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { sendText } from "../json-text.ts";
import { stateOf } from "../prepared.ts";

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
  problems: [422, 503],
});

/** How settings scale with the air. */
export function scalingRoutes({ db, fit: keeper, prepared }: Services) {
  return api().openapi(scalingRoute, async (c) => {
    const query = c.req.valid("query");
    const fit = await keeper.current();
    const unchanged = unchangedSince(c, stateOf(fit, await dataRevision(db)));
    if (unchanged) return unchanged;
    const { text, made_from } = await prepared.scaling(fit, query);
    // It may be a little older.
    return unchangedSince(c, made_from) ?? sendText(c, text);
  });
}
