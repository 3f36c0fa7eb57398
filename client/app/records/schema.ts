import { z } from "zod";
import { kindsGiven } from "../../../model/co-reading.ts";
import { FOUND } from "../../../model/fit/row.ts";
import {
  CO_READING,
  elevation_m,
  fan_rpm,
  METER_KINDS,
  pump_Hz,
  temperature_C,
} from "../../../model/tune.ts";
import { logbookWords } from "../../texts/logbook.ts";
import { format } from "../../units.ts";
import { ENTRY_KINDS } from "./entry.ts";

/** What a heater or an entry may hold: the forms and the files are judged by the same. Messages follow a field's name. */
const { check } = logbookWords;

const LONGEST_TEXT = 10_000;
const LARGEST_PHOTO_bytes = 2_000_000;

const between = (least: number, most: number) => {
  const shown = (value: number) => format(value, Number.isInteger(value) ? 0 : 2);
  const error = check.between(shown(least), shown(most));
  const kind = (issue: { input?: unknown }) =>
    issue.input === undefined ? check.missing : check.number;
  return z.number({ error: kind }).min(least, { error }).max(most, { error });
};
/** As wide as a shared tune's: a slip is no error, it is asked about with a sentence. */
const as = ({ minValue, maxValue }: z.ZodNumber) => between(minValue ?? 0, maxValue ?? 0);
const text = (most = LONGEST_TEXT) =>
  z.string({ error: check.text }).max(most, { error: check.text });
const name = text(80).refine((value) => value.trim() !== "", { error: check.missing });
const id = z.string({ error: check.missing }).regex(/^[\w-]{8,64}$/, { error: check.text });
/** UTC to the millisecond, so that times sort as text. */
const when = z.iso
  .datetime({ error: check.when })
  .transform((written) => new Date(written).toISOString());
const choice = { error: check.choice };

const setting = z.strictObject({ pump_Hz: as(pump_Hz), fan_rpm: as(fan_rpm) });

const meter = z.strictObject({
  name: text(80).optional(),
  kind: z.enum(METER_KINDS, choice).optional(),
  distance_m: between(0.01, 10).optional(),
});

export const heaterSchema = z.strictObject({
  id,
  name,
  heat_kW: between(1, 15).multipleOf(0.5, { error: check.classStep }),
  dose_uL: between(1, 500).optional(),
  low_fan_rpm: between(100, 20_000).optional(),
  high_fan_rpm: between(100, 20_000).optional(),
  supply_V: between(6, 36).optional(),
  tank_L: between(0.1, 1000).optional(),
  step_Hz: between(0.01, 0.5).optional(),
  step_rpm: between(1, 500).optional(),
  settings: z.strictObject({ at: when, low: setting, high: setting }).optional(),
  hours: between(0, 1e6).optional(),
  meter: meter
    .extend({
      resolution_ppm: between(0.1, 20).optional(),
      floor_ppm: between(0, 100).optional(),
      ceiling_ppm: between(50, 10_000).optional(),
      lag_s: between(1, 300).optional(),
    })
    .optional(),
  changed_at: when,
});

const sweep = z.strictObject({
  minimum_Hz: between(0.1, 20),
  lower_Hz: between(0, 20),
  upper_Hz: between(0, 40),
  level: between(0.01, 0.999).optional(),
  flat_lower_Hz: between(0, 20).optional(),
  flat_upper_Hz: between(0, 40).optional(),
});

const end = z
  .strictObject({
    pump_Hz: as(pump_Hz),
    fan_rpm: as(fan_rpm),
    co_ppm: as(CO_READING.co_ppm).optional(),
    co_below_ppm: as(CO_READING.co_below_ppm).optional(),
    co_above_ppm: as(CO_READING.co_above_ppm).optional(),
    power: between(0, 100).optional(),
    sweep: sweep.optional(),
  })
  .superRefine((value, { addIssue }) => {
    const given = kindsGiven(value).length;
    if (given === 1) return;
    const message = given === 0 ? check.oneReading : check.oneReadingOnly;
    addIssue({ code: "custom", path: ["co_ppm"], message });
  });

const site = z
  .strictObject({
    place: text(200).optional(),
    elevation_m: as(elevation_m),
    elevation_sd_m: between(0, 2000).optional(),
    lat: between(-90, 90).optional(),
    lon: between(-180, 180).optional(),
  })
  .refine(({ lat, lon }) => (lat === undefined) === (lon === undefined), {
    path: ["lat"],
    error: check.pair,
  });

const air = z
  .strictObject({
    temperature_C: as(temperature_C).optional(),
    pressure_hPa: between(400, 1150).optional(),
    qnh_hPa: between(850, 1100).optional(),
    humidity_pct: between(0, 100).optional(),
  })
  .refine(({ pressure_hPa, qnh_hPa }) => pressure_hPa === undefined || qnh_hPa === undefined, {
    path: ["pressure_hPa"],
    error: check.onePressure,
  });

const shared = z.union(
  [z.strictObject({ key: id }), z.strictObject({ id: text(200), receipt: text(500) })],
  choice,
);

export const entrySchema = z
  .strictObject({
    id,
    heater_id: id,
    kind: z.enum(ENTRY_KINDS, choice),
    at: when,
    site: site.optional(),
    air: air.optional(),
    low: end.optional(),
    high: end.optional(),
    found: z.enum(FOUND, choice).optional(),
    meter: meter.optional(),
    hours: between(0, 1e6).optional(),
    fuel_L: between(0, 10_000).optional(),
    notes: text().optional(),
    photo: z
      .instanceof(Blob, { error: check.photo })
      .refine(({ size }) => size <= LARGEST_PHOTO_bytes, { error: check.photo })
      .optional(),
    shared: shared.optional(),
    changed_at: when,
  })
  .refine(({ kind, site, low, high }) => kind !== "tune" || (site && low && high), {
    path: ["kind"],
    error: check.bothEnds,
    when: () => true,
  });

/** What is wrong, by field; a field that is not known is named itself. */
export function errorsOf(error: z.ZodError): [field: string, message: string][] {
  return error.issues.flatMap((issue): [string, string][] => {
    const path = issue.path.join(".");
    if (issue.code === "unrecognized_keys") {
      return issue.keys.map((key) => [path ? `${path}.${key}` : key, check.unknown]);
    }
    return [[path, issue.message]];
  });
}
