import type { Tune } from "../tune.ts";
import { type Reason, type ScreenContext, say, tidy } from "./reason.ts";

/** Single figures with bounds of their own: temperature, dose, month. */

/** Nobody tunes a heater in hotter air; the hottest air measured on Earth is below 57 °C. */
const HOTTEST_C = 50;
/** Colder than any inhabited place; diesel of any grade has long since stopped flowing. */
const COLDEST_C = -60;

/** °F typed as °C shows only above 50: 68 does, 28 does not. */
export function screenTemperature(temperature_C: number | undefined): Reason[] {
  if (temperature_C === undefined) return [];
  if (temperature_C >= COLDEST_C && temperature_C <= HOTTEST_C) return [];
  const field = "air.temperature_C";
  const celsius = Math.round(((temperature_C - 32) / 1.8) * 10) / 10;
  if (temperature_C > HOTTEST_C && celsius <= HOTTEST_C) {
    return [
      {
        code: "temperature_in_fahrenheit",
        field,
        sentence: `${say(temperature_C, 1)} °C is hotter than any place a heater is tuned at; in °F it is ordinary. Did you mean ${say(celsius, 1)} °C?`,
        suggestion: celsius,
      },
    ];
  }
  return [
    {
      code: "temperature_out_of_range",
      field,
      sentence: `A temperature of ${say(temperature_C, 1)} °C is outside ${COLDEST_C} to ${HOTTEST_C} °C. Check it, and its unit.`,
    },
  ];
}

/** A pulse of a small metering pump moves 8–120 µL: its stroke and bore allow no more, and a flame needs no less. */
const DOSE_RANGE_uL = [8, 120] as const;

export function screenDose(dose_uL: number | undefined): Reason[] {
  if (dose_uL === undefined || isDose(dose_uL)) return [];
  const field = "heater.dose_uL";
  const inMicrolitres = tidy(dose_uL * 1000);
  if (isDose(inMicrolitres)) {
    return [
      {
        code: "dose_in_mL",
        field,
        sentence: `A dose of ${say(dose_uL, 4)} µL is too little to burn; as mL it is ordinary. Did you mean ${say(inMicrolitres, 1)} µL?`,
        suggestion: inMicrolitres,
      },
    ];
  }
  const shifted = [tidy(dose_uL / 10), tidy(dose_uL * 10)].find(isDose);
  if (shifted !== undefined) {
    return [
      {
        code: "dose_decimal_slip",
        field,
        sentence: `A dose of ${say(dose_uL, 2)} µL is outside what a pulse can move; with the decimal point one place over it is ordinary. Did you mean ${say(shifted, 2)} µL?`,
        suggestion: shifted,
      },
    ];
  }
  return [
    {
      code: "dose_out_of_range",
      field,
      sentence: `A dose of ${say(dose_uL, 2)} µL is outside ${DOSE_RANGE_uL[0]} to ${DOSE_RANGE_uL[1]} µL, all that one pulse can move. Check it, or leave it out.`,
    },
  ];
}

function isDose(value: number): boolean {
  return value >= DOSE_RANGE_uL[0] && value <= DOSE_RANGE_uL[1];
}

/** Months compare as text: "2026-10" < "2026-11". */
export function screenMonth(tune: Tune, context: ScreenContext): Reason[] {
  if (!tune.tuned_on || !context.month || tune.tuned_on <= context.month) return [];
  return [
    {
      code: "tuned_in_the_future",
      field: "tuned_on",
      sentence: `${tune.tuned_on} has not come yet; it is ${context.month}. Check the month of the tune.`,
    },
  ];
}
