import { z } from "zod";
import { type CoReading, type CoReadingKind, FINAL_CO, kindsGiven } from "./co-reading.ts";
import { atPower } from "./end.ts";
import { FOUND } from "./fit/row.ts";

/**
 * One tune as a contributor sends it: the form, the API, the CSV and the API's description all use this schema.
 * Its bounds are wide on purpose. They are the physical range stretched by the largest named slip (feet for metres,
 * pulses a minute for Hz, mL for µL …), so that a slip reaches screening and is answered with a sentence there;
 * a number beyond them cannot be meant at all.
 */

/** What to say when a value is not there, or is not of its kind. */
const asked = (what: string, kind: string) => ({
  error: (issue: { code?: string | undefined; input?: unknown }) =>
    issue.code !== "invalid_type"
      ? undefined
      : issue.input === undefined
        ? `${what}${MISSING} Give ${kind}.`
        : `${what} must be ${kind}.`,
});
const MISSING = " is missing.";

const number = (field: string, unit: string, min: number, max: number) =>
  z
    .number(asked(field, `a number in ${unit}`))
    .min(min, `${field} must be at least ${min} ${unit}.`)
    .max(max, `${field} must be at most ${max} ${unit}.`);

/** Steps of 0.5 kW from the smallest to the largest small air heater. */
export const heat_kW = number("Heater size", "kW", 1, 15)
  .multipleOf(
    0.5,
    "Heater size is the nominal full heat output in steps of 0.5 kW, for example 2, 5 or 8.",
  )
  // What describes the API does not see it otherwise.
  .meta({ multipleOf: 0.5 });
/** A pulse moves 8–120 µL; the lower bound lets 0.008 mL through to be recognised. */
export const dose_uL = number("Dose", "µL per pulse", 0.005, 200_000);
/** Dead Sea shore to 6,000 m, stretched to 6,000 m written in feet. */
export const elevation_m = number("Elevation", "m", -1_500, 20_000);
/** Standard deviation of an elevation that was worked out, not read: up to what no estimate exceeds, with a margin. */
export const elevation_sd_m = number("Elevation's uncertainty", "m", 0, 2_000);
export const lat = number("Latitude", "degrees", -90, 90);
export const lon = number("Longitude", "degrees", -180, 180);
/** −60…50 °C, stretched to 50 °C written as 122 °F. */
export const temperature_C = number("Temperature", "°C", -80, 125);
/** Station pressure at 6,000 m in a deep low to the highest ever measured (1,084 hPa at sea level), taken to the Dead Sea shore. */
export const pressure_hPa = number("Station pressure", "hPa", 400, 1_150);
/** Lowest and highest sea-level pressures ever measured, with a margin. */
export const qnh_hPa = number("Sea-level pressure (QNH)", "hPa", 850, 1_100);
export const humidity_pct = number("Relative humidity", "%", 0, 100);
/** 0.3–12 Hz, stretched to 12 Hz written as 720 pulses a minute. */
export const pump_Hz = number("Pump rate", "Hz", 0.03, 1_000);
/** 500–8,000 rpm, stretched to tens, hundreds and a doubled pickup. */
export const fan_rpm = number("Fan speed", "rpm", 5, 20_000);
/** What a meter can show, most up to 1,000 or 2,000 ppm, and where it shows no figure the end of its scale. */
export const CO_READING = {
  co_ppm: number("Final CO", "ppm", 0, 10_000),
  /** Its floor when it shows nothing: "below 30" is not 0. */
  co_below_ppm: number("The meter's floor", "ppm", 1, 100),
  co_above_ppm: number("The most that the meter can show", "ppm", 1, 10_000),
} satisfies Record<CoReadingKind, z.ZodNumber>;

/** Cross-checks are asked even when fields are wrong, so that everything is reported at once. */
const atOnce = { when: () => true };
const isObject = (value: unknown) => typeof value === "object" && value !== null;
const isGiven = (value: unknown, key: string) =>
  isObject(value) && Object(value)[key] !== undefined;

const end = (which: "low" | "high") =>
  z
    .strictObject(
      {
        pump_Hz,
        fan_rpm,
        co_ppm: CO_READING.co_ppm.optional(),
        co_below_ppm: CO_READING.co_below_ppm.optional(),
        /** Plain number of the power setting, where the controller has one. */
        power: number("Power setting", "(a plain number)", 0, 100).optional(),
      },
      asked(
        `The tune ${atPower(which)}`,
        "an object with pump_Hz, fan_rpm and co_ppm or co_below_ppm",
      ),
    )
    .refine((e) => !isObject(e) || kindsGiven(e as CoReading, FINAL_CO).length === 1, {
      ...atOnce,
      path: ["co_ppm"],
      message:
        "Give the final CO as co_ppm, or, when the meter shows nothing, its floor as co_below_ppm: one of the two.",
    });

/** Kinds of meter in general words: what a reading can be compared with depends on it. */
export const METER_KINDS = ["room alarm", "portable meter", "flue analyser", "other"] as const;
export type MeterKind = (typeof METER_KINDS)[number];

const heater = z.strictObject(
  {
    heat_kW,
    dose_uL: dose_uL.optional(),
    /** 12 or 24 V supplies, from a flat battery to full charge. */
    supply_V: number("Supply voltage", "V", 6, 36).optional(),
  },
  asked("The heater", "an object with heat_kW"),
);

const site = z
  .strictObject(
    {
      elevation_m,
      /** Left out where the contributor knows the elevation: from a sign or a map. */
      elevation_sd_m: elevation_sd_m
        .optional()
        .describe(
          "Standard deviation of elevation_m where it was worked out from a position or a name",
        ),
      lat: lat.optional(),
      lon: lon.optional(),
    },
    asked("The site", "an object with elevation_m"),
  )
  .refine((s) => isGiven(s, "lat") === isGiven(s, "lon"), {
    ...atOnce,
    path: ["lat"],
    message: "Give latitude and longitude together, or neither.",
  });

const air = z
  .strictObject(
    {
      temperature_C: temperature_C.optional(),
      pressure_hPa: pressure_hPa.optional(),
      qnh_hPa: qnh_hPa.optional(),
      humidity_pct: humidity_pct.optional(),
    },
    asked("The air", "an object, for example with temperature_C, or leave it out"),
  )
  .refine((a) => !(isGiven(a, "pressure_hPa") && isGiven(a, "qnh_hPa")), {
    ...atOnce,
    path: ["qnh_hPa"],
    message:
      "Give station pressure (pressure_hPa) or sea-level pressure (qnh_hPa), not both: they differ by over 20 % at 1,700 m.",
  });

const meter = z.strictObject(
  {
    kind: z
      .enum(METER_KINDS, { error: `Kind of meter is one of: ${METER_KINDS.join(", ")}.` })
      .optional(),
    /** Distance from the exhaust's mouth; usual is about 0.3 m (common practice, no source). */
    distance_m: number("Meter distance", "m", 0.01, 10).optional(),
  },
  asked("The meter", "an object, for example with kind, or leave it out"),
);

/** A tune as submitted. Unknown fields are refused, so a misspelt one is never silently lost. */
export const tuneSchema = z.strictObject(
  {
    heater,
    site,
    air: air.optional(),
    low: end("low"),
    high: end("high"),
    /** The worse of its two ends. */
    found: z
      .enum(FOUND, { error: `How it was found is one of: ${FOUND.join(", ")}.` })
      .optional()
      .describe(
        "bracketed: CO was seen to rise on both sides of the lowest reading, at both ends; stopped early: not on both; as suggested: left at the atlas's rates",
      ),
    meter: meter.optional(),
    tuned_on: z
      .string(asked("Month of the tune", 'year and month as text, like "2026-10"'))
      .regex(
        /^20\d\d-(0[1-9]|1[0-2])$/,
        'Month of the tune must look like "2026-10": year and month, no day.',
      )
      .optional(),
    contributor: z
      .string(asked("Contributor", "this browser's random key as text"))
      .regex(
        /^[A-Za-z0-9_-]{16,64}$/,
        "Contributor must be a random key of 16 to 64 letters, digits, - or _ (no name, no address).",
      ),
  },
  asked("The tune", "an object with heater, site, low, high and contributor"),
);

export type Tune = z.infer<typeof tuneSchema>;

/** A tune of the heater that is asked about: what of it bears on the answer, in the same words. */
export const ownTuneSchema = z.strictObject(
  tuneSchema.pick({ site: true, air: true, low: true, high: true, tuned_on: true }).shape,
  asked("An own tune", "an object with site, low and high"),
);

export type OwnTune = z.infer<typeof ownTuneSchema>;

/** One thing wrong with what was sent: where, a stable code, and a sentence with the remedy. */
export interface FieldError {
  field: string;
  code: string;
  message: string;
}

/** Every zod issue as field, code, message: all bad fields at once, paths joined by dots, the whole called "tune". */
export function fieldErrors(error: z.ZodError): FieldError[] {
  return error.issues.flatMap((issue) => {
    const path = issue.path.join(".");
    if (issue.code === "unrecognized_keys") {
      return issue.keys.map((key) => ({
        field: path ? `${path}.${key}` : key,
        code: "unknown_field",
        message: "This field is not known. Check its spelling, or leave it out.",
      }));
    }
    // An issue no longer holds what was sent, so its own sentence tells a missing value from a wrong one.
    const isMissing = issue.code === "invalid_type" && issue.message.includes(MISSING);
    return [
      { field: path || "tune", code: isMissing ? "missing" : issue.code, message: issue.message },
    ];
  });
}
