import { celsius, FOOT_m, INCH_OF_MERCURY_hPa } from "../../model/units.ts";

/** What a spreadsheet's column may hold, and where in a tune it goes. */
export interface Field {
  /** Path in a tune, as errors and reasons name it. */
  path: string;
  /** How a number becomes the tune's own unit; none for words and months. */
  toSi?: (value: number) => number;
  is: "number" | "word" | "month";
}

const number = (path: string, toSi = (value: number) => value): Field => ({
  path,
  toSi,
  is: "number",
});
const word = (path: string): Field => ({ path, is: "word" });

const ofEnd = (end: "low" | "high"): Record<string, Field> => ({
  [`${end}_pump_Hz`]: number(`${end}.pump_Hz`),
  [`${end}_pump_per_min`]: number(`${end}.pump_Hz`, (pulses) => pulses / 60),
  [`${end}_fan_rpm`]: number(`${end}.fan_rpm`),
  [`${end}_co_ppm`]: number(`${end}.co_ppm`),
  [`${end}_co_below_ppm`]: number(`${end}.co_below_ppm`),
  [`${end}_power`]: number(`${end}.power`),
});

/** The fields by their names: those of the open data, and some in other units. */
export const FIELDS: Readonly<Record<string, Field>> = {
  heat_kW: number("heater.heat_kW"),
  dose_uL: number("heater.dose_uL"),
  dose_mL: number("heater.dose_uL", (mL) => mL * 1000),
  supply_V: number("heater.supply_V"),
  elevation_m: number("site.elevation_m"),
  elevation_ft: number("site.elevation_m", (ft) => ft * FOOT_m),
  lat: number("site.lat"),
  lon: number("site.lon"),
  temperature_C: number("air.temperature_C"),
  temperature_F: number("air.temperature_C", celsius),
  pressure_hPa: number("air.pressure_hPa"),
  pressure_inHg: number("air.pressure_hPa", (inHg) => inHg * INCH_OF_MERCURY_hPa),
  qnh_hPa: number("air.qnh_hPa"),
  qnh_inHg: number("air.qnh_hPa", (inHg) => inHg * INCH_OF_MERCURY_hPa),
  humidity_pct: number("air.humidity_pct"),
  ...ofEnd("low"),
  ...ofEnd("high"),
  found: word("found"),
  meter_kind: word("meter.kind"),
  meter_distance_m: number("meter.distance_m"),
  tuned_on: { path: "tuned_on", is: "month" },
};

/** What every tune has: for each one of these must have a column. */
export const NEEDED: readonly (readonly string[])[] = [
  ["heat_kW"],
  ["elevation_m", "elevation_ft"],
  ...["low", "high"].flatMap((end) => [
    [`${end}_pump_Hz`, `${end}_pump_per_min`],
    [`${end}_fan_rpm`],
    [`${end}_co_ppm`, `${end}_co_below_ppm`],
  ]),
];
