import { Hono } from "hono";
import { z } from "zod";
import { lat, lon } from "../../model/tune.ts";
import type { Services } from "../context.ts";
import type { ElevationAnswer, PlacesAnswer } from "../contract.ts";
import { unchangedSince } from "../freshness.ts";
import { fromText, readQuery } from "../query.ts";
import { CODE_VERSION } from "../version.ts";

const CREDIT = "Places and elevations: GeoNames, CC BY 4.0.";

export const placesQuery = z.strictObject({
  q: z
    .string({ error: "Give the name of a place as q." })
    .trim()
    .min(1, "Type at least one letter.")
    .max(100, "A name of at most 100 letters, please."),
  limit: fromText(z.number().int().min(1).max(50).default(10)),
});

export const elevationQuery = z.strictObject({ lat: fromText(lat), lon: fromText(lon) });

/** Place search and the elevation of any point. */
export function placeRoutes({ gazetteer }: Services): Hono {
  return new Hono()
    .get("/places", async (c) => {
      const { q, limit } = readQuery(c, placesQuery);
      const unchanged = unchangedSince(c, `places.${CODE_VERSION}`);
      if (unchanged) return unchanged;
      return c.json({
        places: await gazetteer.search(q, limit),
        credit: CREDIT,
      } satisfies PlacesAnswer);
    })
    .get("/elevation", async (c) => {
      const query = readQuery(c, elevationQuery);
      const unchanged = unchangedSince(c, `elevation.${CODE_VERSION}`);
      if (unchanged) return unchanged;
      const found = await gazetteer.elevation(query.lat, query.lon);
      return c.json({ ...found, credit: CREDIT } satisfies ElevationAnswer);
    });
}
