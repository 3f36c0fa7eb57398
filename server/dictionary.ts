import { shownElevation } from "../db/shown-tunes.ts";
import type { TuneRow } from "../db/tunes.ts";
import { atPower } from "../model/end.ts";
import { SAFETY } from "../model/safety.ts";
import { shownCellOf } from "./cells.ts";

/** Licence of the contributed tunes, as the share form says. */
export const LICENCE = {
  name: "CC0 1.0 Universal",
  url: "https://creativecommons.org/publicdomain/zero/1.0/",
} as const;

/** One column of the open data. */
export interface Column {
  name: string;
  unit: string | null;
  meaning: string;
}

const end = (name: "low" | "high"): Column[] => [
  { name: `${name}_pump_Hz`, unit: "Hz", meaning: `Pump rate ${atPower(name)}` },
  { name: `${name}_fan_rpm`, unit: "rpm", meaning: `Combustion fan speed ${atPower(name)}` },
  {
    name: `${name}_co_ppm`,
    unit: "ppm",
    meaning:
      "Final CO as the meter showed it: diluted by an unknown amount, comparable only with the same meter at the same spot. Empty when the meter showed nothing",
  },
  {
    name: `${name}_co_below_ppm`,
    unit: "ppm",
    meaning: "The meter's floor when it showed nothing",
  },
  { name: `${name}_power`, unit: null, meaning: "Power setting as a plain number, where given" },
  {
    name: `${name}_suggested_Hz_per_krpm`,
    unit: "Hz per 1,000 rpm",
    meaning:
      "What the atlas answered for this heater in this air when the tune was sent: the pump rate to set, by the tune's fan speed. Empty where it was not kept yet",
  },
];

/** The columns of /api/tunes.csv in their order; /api/tunes.geojson has the same as properties. Missing is empty (null), never 0. */
export const COLUMNS: readonly Column[] = [
  { name: "id", unit: null, meaning: "The tune's random id" },
  {
    name: "contributor",
    unit: null,
    meaning:
      "Pseudonym: random, joins the tunes of one contributor, leads nowhere else; gone with the last of them",
  },
  {
    name: "home",
    unit: null,
    meaning:
      "Name without a meaning of the place and month of the contributor's first tune with a place: owners with the same one share votes in the fit. Empty without a place",
  },
  {
    name: "cell",
    unit: "H3",
    meaning:
      "Cell the tune is shown in: resolution 5, coarser, to 3, where fewer than 5 contributors would show; 2 for contributors who tuned in several",
  },
  { name: "heat_kW", unit: "kW", meaning: "Heater size: nominal full heat output" },
  { name: "dose_uL", unit: "µL", meaning: "Fuel per pump pulse" },
  { name: "supply_V", unit: "V", meaning: "Supply voltage" },
  { name: "elevation_m", unit: "m", meaning: "Elevation above mean sea level, to 100 m" },
  {
    name: "elevation_sd_m",
    unit: "m",
    meaning:
      "Standard deviation of an elevation worked out from a position or a place's name; empty where the contributor knew it",
  },
  { name: "temperature_C", unit: "°C", meaning: "Air temperature at the intake, whole degrees" },
  { name: "pressure_hPa", unit: "hPa", meaning: "Station pressure, where measured, to 10 hPa" },
  { name: "qnh_hPa", unit: "hPa", meaning: "Sea-level pressure (QNH), where given instead" },
  { name: "humidity_pct", unit: "%", meaning: "Relative humidity" },
  { name: "density_kg_m3", unit: "kg/m³", meaning: "Moist air density the fit uses, to 0.01" },
  {
    name: "density_assumed",
    unit: null,
    meaning: "What of temperature, pressure, humidity that density assumes",
  },
  {
    name: "ln_density_sd",
    unit: null,
    meaning:
      "Standard deviation of the density's logarithm, for what it assumes and for elevation_sd_m",
  },
  ...end("low"),
  ...end("high"),
  {
    name: "found",
    unit: null,
    meaning:
      "How its owner found the tune: bracketed (CO was seen to rise on both sides of the lowest reading, at both ends), stopped early, or as suggested (left at the atlas's rates). Empty where nobody said. Only a bracketed tune, or one without a suggestion, can make the published spread between heaters narrower",
  },
  { name: "meter_kind", unit: null, meaning: "Kind of carbon monoxide meter" },
  {
    name: "meter_distance_m",
    unit: "m",
    meaning: "Distance of the meter from the exhaust's mouth",
  },
  {
    name: "tuned_on",
    unit: "month",
    meaning: "Month of the tune; the year alone of contributors who tuned in several places",
  },
  {
    name: "submitted_on",
    unit: "month",
    meaning: "Month it was submitted; the year alone likewise",
  },
];

/** Units of what is no number. */
const NO_NUMBER: readonly Column["unit"][] = ["H3", "month"];
/** Numbers without a unit. */
const PLAIN_NUMBERS = ["ln_density_sd", "low_power", "high_power"];

export function isNumber({ name, unit }: Column): boolean {
  return unit === null ? PLAIN_NUMBERS.includes(name) : !NO_NUMBER.includes(unit);
}

/** The name of a table's own description by its address: "Model for Tabular Data and Metadata on the Web", W3C 2015, section 5.3. */
export const METADATA_OF = "-metadata.json";

/**
 * The header document of /api/tunes.csv: the cautions, the licence, and what each column is, by the "Metadata Vocabulary for
 * Tabular Data" (W3C Recommendation, 17 December 2015). CSV knows no comments (RFC 4180), so the cautions stand here.
 */
export function tableMetadata(demo: boolean): object {
  const { notice, not_for, defer_to } = SAFETY;
  return {
    "@context": ["http://www.w3.org/ns/csvw", { "@language": "en" }],
    url: "tunes.csv",
    "dc:title": "Tunes of the atlas, one row a tune",
    "dc:license": { "@id": LICENCE.url },
    "rdfs:comment": [
      notice,
      `Not for ${not_for.join("; ")}.`,
      `These come first: ${defer_to.join("; ")}.`,
      ...(demo ? ["Invented data: no tune here is real."] : []),
    ],
    "rdfs:seeAlso": { "@id": "dictionary.json" },
    dialect: { encoding: "utf-8", header: true, delimiter: ",", lineTerminators: ["\r\n"] },
    tableSchema: {
      columns: COLUMNS.map((column) => ({
        name: column.name,
        titles: column.name,
        "dc:description": column.unit ? `${column.meaning}, ${column.unit}` : column.meaning,
        datatype: isNumber(column) ? "number" : "string",
        required: column.name === "id",
      })),
      primaryKey: "id",
    },
  };
}

export type OpenRecord = Record<string, string | number | null>;

/** To 10 hPa a pressure tells no more of an elevation than the elevation shown does. */
const PRESSURE_STEP_hPa = 10;

/** A tune as the open data shows it: pseudonym for contributor, shown cell for cell, and no trail of whoever was in several. */
export function openRecord(tune: TuneRow, shown: ReadonlyMap<string, string>): OpenRecord {
  const { several_places, pressure_hPa, ...rest } = tune;
  const time = (month: string | null) => (several_places && month ? month.slice(0, 4) : month);
  const values: OpenRecord = {
    ...rest,
    contributor: tune.pseudonym,
    cell: shownCellOf(tune, shown),
    elevation_m: shownElevation(tune.elevation_m),
    pressure_hPa: pressure_hPa && Math.round(pressure_hPa / PRESSURE_STEP_hPa) * PRESSURE_STEP_hPa,
    tuned_on: time(tune.tuned_on),
    submitted_on: time(tune.submitted_on),
  };
  return Object.fromEntries(COLUMNS.map(({ name }) => [name, values[name] ?? null]));
}
