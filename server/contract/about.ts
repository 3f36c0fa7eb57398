import { z } from "zod";
import { num } from "./quantities.ts";

export const health = z.strictObject({
  ok: z.boolean(),
  demo: z.boolean(),
  tunes: num,
  fit: z.string(),
  fit_age_s: num.nullable(),
  fit_pending: z.boolean(),
  frozen: z.boolean().describe("Whether an alarm keeps newer versions from being published"),
  geography: z.boolean(),
});

export type Health = z.infer<typeof health>;

export const ready = z.strictObject({
  ready: z.literal(true),
});

export const map = z.strictObject({
  basemap_style: z.string().nullable(),
  elevation_tiles: z.string().nullable(),
});

/** Map sources set by the configuration; null for the built-in ones. */
export type MapConfiguration = z.infer<typeof map>;
