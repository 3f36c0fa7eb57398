import { z } from "zod";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { trip } from "../texts/trip.ts";

/** What a stop from a file or a link may be: whoever made it may be careless, or mean ill. */

export const MOST_STOPS = 100;
const LONGEST_NAME = 80;

/** Letters as they are; line breaks, control and direction characters, which could hide what is written, as spaces. */
export function tidyName(name: string): string {
  const plain = name
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return [...plain].slice(0, LONGEST_NAME).join("").trim();
}

const between = (name: string, unit: string, least: number, most: number) => {
  const error = trip.refused.mustBe(name, least, most, unit);
  return z.number({ error }).min(least, { error }).max(most, { error });
};

export const elevation_m = between("elevation", " m", ...ELEVATION_RANGE_m);
/** Nights that anyone plans for. */
export const TEMPERATURES_C = [-60, 45] as const;
export const temperature_C = between("temperature", " °C", ...TEMPERATURES_C);
export const lat = between("lat", "", -90, 90);
export const lon = between("lon", "", -180, 180);
export const elevation_sd_m = between("elevation's uncertainty", " m", 0, 2000);

export const MOST_NIGHTS = 99;
const wholeNights = trip.refused.mustBe("nights", 1, MOST_NIGHTS, "");
export const nights = z
  .number({ error: wholeNights })
  .int({ error: wholeNights })
  .min(1, { error: wholeNights })
  .max(MOST_NIGHTS, { error: wholeNights });

/** A stop as a file gives it: an elevation, or a position to work it out from. */
export const fileStop = z
  .object({
    name: z.string().transform(tidyName),
    elevation_m: elevation_m.optional(),
    temperature_C: temperature_C.optional(),
    lat: lat.optional(),
    lon: lon.optional(),
    // One is what is taken when nothing is said.
    nights: nights.optional().transform((n) => (n === 1 ? undefined : n)),
  })
  .refine((stop) => (stop.lat === undefined) === (stop.lon === undefined), {
    error: trip.refused.pair,
  })
  .refine((stop) => stop.elevation_m !== undefined || stop.lat !== undefined, {
    error: trip.refused.nowhere,
  });

export type FileStop = z.infer<typeof fileStop>;
