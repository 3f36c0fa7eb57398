import { z } from "zod";
import { ELEVATION_RANGE_m } from "../../../model/air.ts";
import { ENDS } from "../../../model/end.ts";
import * as field from "../../../model/tune.ts";
import { FIRST_QUESTION, type Question } from "../../base/question.ts";
import { tidyName } from "../../base/stop-schema.ts";
import { AIR_RANGE_C } from "../../ui/temperature-field.tsx";
import type { MyHeater } from "../heater/my-heater.ts";
import { heaterSchema } from "../records/schema.ts";
import { linkedHeater, ownTunes } from "./own-in.ts";
import { unpacked } from "./packed.ts";
import { type UnitNames, units } from "./units-in.ts";
import { numberIn, type Refusal, readValues } from "./values.ts";

const SOURCES = ["given", "known point", "interpolated", "grid", "sea", "tiles"] as const;
const fan_rpm = z.number().min(100).max(20_000);

const own = z
  .string()
  .transform((text, context) => {
    try {
      return unpacked(text);
    } catch {
      context.addIssue({ code: "custom" });
      return z.NEVER;
    }
  })
  .pipe(ownTunes);

/** What an answer's address may hold, under the names of `GET /api/start` where it has them. */
const schemas = {
  place: z.string().transform(tidyName).pipe(z.string().min(1)),
  lat: numberIn(field.lat),
  lon: numberIn(field.lon),
  elevation_m: numberIn(z.number().min(ELEVATION_RANGE_m[0]).max(ELEVATION_RANGE_m[1])),
  elevation_sd_m: numberIn(field.elevation_sd_m),
  elevation_source: z.enum(SOURCES),
  temperature_C: numberIn(z.number().min(AIR_RANGE_C[0]).max(AIR_RANGE_C[1])),
  pressure_hPa: numberIn(field.pressure_hPa),
  qnh_hPa: numberIn(field.qnh_hPa),
  humidity_pct: numberIn(field.humidity_pct),
  heat_kW: numberIn(field.heat_kW),
  low_fan_rpm: numberIn(fan_rpm),
  high_fan_rpm: numberIn(fan_rpm),
  dose_uL: numberIn(z.number().min(1).max(500)),
  step_Hz: numberIn(heaterSchema.shape.step_Hz.unwrap()),
  step_rpm: numberIn(heaterSchema.shape.step_rpm.unwrap()),
  end: z.enum(ENDS),
  units,
  own,
};

export type LinkName = keyof typeof schemas;

/** What an address asks: the question, for whose heater, in which units. */
export interface LinkedQuestion {
  question: Question;
  /** A heater that the address tells more of than the question can; null for the average one with these facts. */
  mine: MyHeater | null;
  units: UnitNames | undefined;
  refused: Refusal[];
}

/** What stands in an address, and what of it was not taken; in its place stands what is asked when nothing is said. */
export function questionIn(query: string): LinkedQuestion {
  const { values, refused } = readValues(query, schemas);
  const drop = (name: LinkName) => {
    if (values[name] === undefined) return;
    refused.push({ name, given: String(values[name]) });
    delete values[name];
  };
  // What cannot stand together: one pressure, ends in order, both halves of a position.
  if (values.pressure_hPa !== undefined) drop("qnh_hPa");
  const { low_fan_rpm: low, high_fan_rpm: high } = values;
  if (low !== undefined && high !== undefined && low >= high) {
    drop("low_fan_rpm");
    drop("high_fan_rpm");
  }
  if (values.lat === undefined) drop("lon");
  if (values.lon === undefined) drop("lat");
  const { elevation_m = FIRST_QUESTION.site.elevation_m, heat_kW = FIRST_QUESTION.heat_kW } =
    values;
  const { temperature_C, pressure_hPa, qnh_hPa, humidity_pct } = values;
  const { place = null, lat = null, lon = null } = values;
  const air = { temperature_C, pressure_hPa, qnh_hPa, humidity_pct };
  const isTold = values.elevation_m !== undefined;
  const question: Question = {
    heat_kW,
    site: {
      elevation_m,
      elevation_sd_m: (isTold && values.elevation_sd_m) || 0,
      elevation_source: (isTold && values.elevation_source) || "given",
    },
    place,
    lat,
    lon,
    air: Object.fromEntries(Object.entries(air).filter(([, value]) => value !== undefined)),
    low_fan_rpm: values.low_fan_rpm,
    high_fan_rpm: values.high_fan_rpm,
    dose_uL: values.dose_uL,
    step_Hz: values.step_Hz,
    step_rpm: values.step_rpm,
    end: values.end,
  };
  return { question, mine: heaterOf(question, values), units: values.units, refused };
}

/** The heater that the answer was for, as far as more of it is told than the question has room for. */
function heaterOf(
  { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL }: Question,
  values: { step_Hz?: number; step_rpm?: number; own?: z.infer<typeof own> },
): MyHeater | null {
  const { step_Hz, step_rpm, own: owned } = values;
  if (step_Hz === undefined && step_rpm === undefined && !owned) return null;
  return linkedHeater({ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz, step_rpm }, owned);
}
