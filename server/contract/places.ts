import { z } from "zod";
import type { ListedPlace } from "../../model/geography/listed-place.ts";
import { num } from "./quantities.ts";

const foundPlace = z.strictObject({
  name: z.string(),
  region: z.string().nullable(),
  country: z.string().nullable().describe("In English"),
  country_code: z.string().nullable().describe("ISO 3166-1, two letters"),
  lat: num,
  lon: num,
  elevation_m: num.nullable(),
  elevation_sd_m: num
    .nullable()
    .describe("Standard deviation of the elevation of someone within a kilometre of the place"),
  population: num,
  kind: z.enum(["place", "pass"]),
  match: z
    .enum(["name", "beginning", "nearly"])
    .describe("Nearly: it is called otherwise than was asked"),
}) satisfies z.ZodType<ListedPlace>;

export type FoundPlace = z.infer<typeof foundPlace>;

export const places = z.strictObject({ places: z.array(foundPlace), credit: z.string() });

export type PlacesAnswer = z.infer<typeof places>;

export const elevation = z.strictObject({
  lat: num,
  lon: num,
  elevation_m: num,
  sd_m: num,
  uncertainty_68_m: num,
  uncertainty_95_m: num,
  source: z.string(),
  nearest: z.strictObject({ name: z.string().nullable(), distance_m: num }).nullable(),
  credit: z.string(),
});

export type ElevationAnswer = z.infer<typeof elevation>;
