import { z } from "zod";
import type { OwnEnd, OwnHeater } from "../../model/own-start.ts";
import type { StartTune } from "../../model/start.ts";
import { band, end, num, pair } from "./quantities.ts";
import { safety } from "./safety.ts";
import { air } from "./tunes.ts";

const startEnd = z.strictObject({
  fan_rpm: num,
  pump_Hz: num.describe("Rounded to what a controller can be set to"),
  pump_Hz_exact: num,
  mean_band_Hz: band,
  new_heater_bands_Hz: z.array(band),
  fuel_L_h: num.optional(),
  heat_kW: num.optional(),
});

const keepFan = z.strictObject({ low: startEnd, high: startEnd, heat_fraction: num });

export const startTune = z.strictObject({
  site: z.strictObject({ elevation_m: num, elevation_sd_m: num, elevation_source: z.string() }),
  air,
  low: startEnd,
  high: startEnd,
  strategies: z.strictObject({
    keep_fan: keepFan,
    keep_heat: keepFan.extend({ fan_suffices: z.boolean(), fan_limit_rpm: num }),
  }),
  basis: z.strictObject({
    heat_kW: num,
    tunes: num,
    contributors: num,
    density_range: pair.nullable(),
    extrapolated: z.boolean(),
    prior_only: z.boolean(),
    fit: z.string(),
    demo: z.boolean(),
  }) satisfies z.ZodType<StartTune["basis"]>,
  safety,
});

const ownEnd = z.strictObject({
  fan_rpm: num,
  pump_Hz: num.describe("Rounded to what a controller can be set to"),
  pump_Hz_exact: num,
  next_tune_bands_Hz: z.array(band).describe("Where this heater's next tune is expected"),
  best_bands_Hz: z.array(band).describe("Where its best setting lies: no tune hits it"),
}) satisfies z.ZodType<OwnEnd>;

const tuneNumber = num.describe("Which of own_tunes, counted from 1");

export const ownStartTune = startTune.extend({
  own_heater: z.strictObject({
    tunes: num.describe("How many own tunes count at one end at least"),
    set_aside: z.array(
      z.strictObject({
        tune: tuneNumber,
        end: end.nullable().describe("Null: both"),
        code: z.string(),
        field: z
          .string()
          .optional()
          .describe("Path of the figure that looks mistyped, such as low.pump_Hz"),
        sentence: z.string(),
      }),
    ),
    contradictions: z.array(
      z.strictObject({ tunes: z.array(tuneNumber), end, sentence: z.string() }),
    ),
    low: ownEnd,
    high: ownEnd,
  }) satisfies z.ZodType<OwnHeater>,
});
