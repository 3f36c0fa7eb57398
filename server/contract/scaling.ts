import { z } from "zod";
import type { ScalingCurvePoint } from "../../model/scaling-curve.ts";
import { band, end, num } from "./quantities.ts";
import { safety } from "./safety.ts";

const asideReason = z.strictObject({ code: z.string(), figures: z.record(z.string(), num) });

/** Why a tune does not count: a stable short name, and the figures that a sentence of it needs. */
export type AsideReason = z.infer<typeof asideReason>;

const scalingPoint = z.strictObject({
  contributor: z
    .string()
    .describe("Pseudonym: joins one contributor's tunes at several elevations"),
  elevation_m: num,
  density_kg_m3: num,
  pump_Hz: num,
  fan_rpm: num,
  pump_Hz_per_krpm: num,
  status: z.enum(["kept", "rejected", "held"]),
  reason: z.string().nullable().describe("Why it was rejected or held"),
  aside: asideReason.nullable().describe("The same for a page of another language"),
});

export type ScalingPoint = z.infer<typeof scalingPoint>;

export const scaling = z.strictObject({
  heat_kW: num,
  end,
  fit: z.string(),
  prior_only: z.boolean(),
  demo: z.boolean(),
  points: z.array(scalingPoint).describe("At most 2,000: an even sample, if there are more"),
  points_total: num,
  curve: z.array(
    z.strictObject({
      density_kg_m3: num,
      elevation_m: num,
      pump_Hz_per_krpm: num,
      mean_band: band,
      new_heater_bands: z.array(band),
    }) satisfies z.ZodType<ScalingCurvePoint>,
  ),
  safety,
});

export type ScalingAnswer = z.infer<typeof scaling>;
