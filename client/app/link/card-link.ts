import { z } from "zod";
import * as field from "../../../model/tune.ts";
import { FIRST_QUESTION } from "../../base/question.ts";
import { heaterSchema } from "../records/schema.ts";
import {
  type CardChoice,
  type CardUnits,
  ELEVATIONS_m,
  LEAST_CLIMB_m,
  LEAST_WARMTH_C,
  PAPERS,
  type Span,
  TEMPERATURES_C,
  usualChoice,
} from "./card-choice.ts";
import { type UnitNames, units } from "./units-in.ts";
import { numberIn, type Refusal, readValues } from "./values.ts";
import { to, unitsText, writeValues } from "./write-values.ts";

const fan_rpm = z.number().min(100).max(20_000);

/** "-400,5800": from and to, so far apart at least. */
const spanIn = ([least, most]: Span, apart: number) =>
  z
    .string()
    .regex(/^-?\d{1,5}(\.\d{1,2})?,-?\d{1,5}(\.\d{1,2})?$/)
    .transform((text): Span => text.split(",").map(Number) as [number, number])
    .refine(([from, upTo]) => from >= least && upTo <= most && upTo - from >= apart - 0.01);

const schemas = {
  heat_kW: numberIn(field.heat_kW),
  low_fan_rpm: numberIn(fan_rpm),
  high_fan_rpm: numberIn(fan_rpm),
  dose_uL: numberIn(z.number().min(1).max(500)),
  step_Hz: numberIn(heaterSchema.shape.step_Hz.unwrap()),
  elevation_m: spanIn(ELEVATIONS_m, LEAST_CLIMB_m),
  temperature_C: spanIn(TEMPERATURES_C, LEAST_WARMTH_C),
  paper: z.enum(PAPERS),
  units,
};

export interface LinkedCard {
  choice: CardChoice;
  units: UnitNames | undefined;
  refused: Refusal[];
}

/** A card's address: short, since it is printed as a code; what is as usual is left out. Own tunes are in none. */
export function cardText(choice: CardChoice, shown: CardUnits): string {
  const { heater, elevation_m, temperature_C, paper } = choice;
  const usual = usualChoice(FIRST_QUESTION);
  const span = (one: Span, usually: Span) =>
    String(one) === String(usually) ? undefined : one.map((value) => to(value, 2)).join(",");
  return writeValues({
    heat_kW: heater.heat_kW,
    low_fan_rpm: to(heater.low_fan_rpm, 2),
    high_fan_rpm: to(heater.high_fan_rpm, 2),
    dose_uL: to(heater.dose_uL, 3),
    step_Hz: heater.step_Hz,
    elevation_m: span(elevation_m, usual.elevation_m),
    temperature_C: span(temperature_C, usual.temperature_C),
    paper: paper === usual.paper ? undefined : paper,
    units: unitsText(shown.elevation, shown.temperature),
  });
}

/** The card of an address, and what of it was not taken. */
export function cardIn(query: string): LinkedCard {
  const { values, refused } = readValues(query, schemas);
  const { units: names, heat_kW = FIRST_QUESTION.heat_kW, dose_uL, step_Hz } = values;
  let { low_fan_rpm, high_fan_rpm } = values;
  if (low_fan_rpm !== undefined && high_fan_rpm !== undefined && low_fan_rpm >= high_fan_rpm) {
    refused.push({ name: "low_fan_rpm", given: String(low_fan_rpm) });
    refused.push({ name: "high_fan_rpm", given: String(high_fan_rpm) });
    [low_fan_rpm, high_fan_rpm] = [undefined, undefined];
  }
  const usual = usualChoice(FIRST_QUESTION);
  const { elevation_m = usual.elevation_m, temperature_C = usual.temperature_C } = values;
  const { paper = usual.paper } = values;
  const heater = { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz };
  return { choice: { heater, elevation_m, temperature_C, paper }, units: names, refused };
}
