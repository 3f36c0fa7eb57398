import { z } from "zod";
import { lat, lon } from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { fromText } from "../contract/from-text.ts";
import { elevation, places } from "../contract/places.ts";
import { api, declareRoute, json } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { CODE_VERSION } from "../version.ts";

const CREDIT = "Places and elevations: GeoNames, CC BY 4.0.";

/** Places that an answer holds at most. */
const PLACES_MOST = 50;

const placesQuery = z.strictObject({
  q: z
    .string({ error: "Give the name of a place as q." })
    .trim()
    .min(1, "Type at least one letter.")
    .max(100, "A name of at most 100 letters, please."),
  limit: fromText(
    z
      .number({ error: "Limit must be a number." })
      .int("Limit is a whole number.")
      .min(1, "Limit is at least 1.")
      .max(PLACES_MOST, `Limit is at most ${PLACES_MOST}.`)
      .default(10),
  ),
});

const placesRoute = declareRoute({
  method: "get",
  path: "/places",
  summary: "Places by name, with elevation",
  request: { query: placesQuery },
  responses: { 200: json(places) },
  problems: [404, 422],
});

const elevationRoute = declareRoute({
  method: "get",
  path: "/elevation",
  summary: "Elevation of any point, with its uncertainty",
  request: { query: z.strictObject({ lat: fromText(lat), lon: fromText(lon) }) },
  responses: { 200: json(elevation) },
  problems: [404, 422],
});

/** Place search and the elevation of any point. */
export function placeRoutes({ gazetteer }: Services) {
  return api()
    .openapi(placesRoute, async (c) => {
      const { q, limit } = c.req.valid("query");
      const unchanged = unchangedSince(c, `places.${CODE_VERSION}`);
      if (unchanged) return unchanged;
      return c.json({ places: await gazetteer.search(q, limit), credit: CREDIT }, 200);
    })
    .openapi(elevationRoute, async (c) => {
      const query = c.req.valid("query");
      const unchanged = unchangedSince(c, `elevation.${CODE_VERSION}`);
      if (unchanged) return unchanged;
      const found = await gazetteer.elevation(query.lat, query.lon);
      return c.json({ ...found, credit: CREDIT }, 200);
    });
}
