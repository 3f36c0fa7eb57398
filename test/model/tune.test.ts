import { describe, expect, test } from "vitest";
import { z } from "zod";
import { type FieldError, fieldErrors, type Tune, tuneSchema } from "../../model/tune.ts";

/** The one schema of a tune: what it lets in, and what it says of everything else. */

const TUNE: Tune = {
  heater: { heat_kW: 5, dose_uL: 22, supply_V: 12 },
  site: { elevation_m: 2240, lat: 41.2, lon: 74.9 },
  air: { temperature_C: -9, pressure_hPa: 772.4, humidity_pct: 60 },
  low: { pump_Hz: 1.1, fan_rpm: 1650, co_ppm: 14, power: 1 },
  high: { pump_Hz: 4.2, fan_rpm: 4400, co_ppm: 11, power: 10 },
  meter: { kind: "room alarm", distance_m: 0.3 },
  tuned_on: "2026-10",
  contributor: "invented-key_0123456789",
};

/** Errors after setting (or, with undefined, removing) fields by their paths. */
function errorsWith(changes: Record<string, unknown>): FieldError[] {
  const sent: Record<string, unknown> = structuredClone(TUNE);
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split(".");
    const last = keys.pop() as string;
    const parent = keys.reduce((o, key) => o[key] as Record<string, unknown>, sent);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return errorsOf(sent);
}

function errorsOf(sent: unknown): FieldError[] {
  const { error } = tuneSchema.safeParse(sent);
  return error ? fieldErrors(error) : [];
}

describe("lets in", () => {
  test("the full example, unchanged", () => {
    expect(tuneSchema.parse(TUNE)).toEqual(TUNE);
  });

  test("the least: heat class, elevation, both ends and the contributor", () => {
    const end = { pump_Hz: 1.1, fan_rpm: 1650, co_ppm: 14 };
    const { contributor } = TUNE;
    const least = {
      heater: { heat_kW: 5 },
      site: { elevation_m: 0 },
      low: end,
      high: end,
      contributor,
    };
    expect(errorsOf(least)).toEqual([]);
  });

  test("a meter's floor instead of a reading, and QNH instead of station pressure", () => {
    expect(errorsWith({ "low.co_ppm": undefined, "low.co_below_ppm": 30 })).toEqual([]);
    expect(errorsWith({ "air.pressure_hPa": undefined, "air.qnh_hPa": 1013 })).toEqual([]);
  });

  test("optional fields that a form leaves as undefined", () => {
    const sent = { ...TUNE, air: { temperature_C: undefined }, meter: undefined };
    expect(errorsOf({ ...sent, low: { ...TUNE.low, co_below_ppm: undefined } })).toEqual([]);
  });

  test("every named slip, so that screening can answer it with a sentence", () => {
    for (const slip of [
      { "site.elevation_m": 5500 / 0.3048 },
      { "air.temperature_C": 104 },
      { "low.pump_Hz": 250, "high.pump_Hz": 420 },
      { "low.pump_Hz": 0.08, "high.pump_Hz": 0.42 },
      { "low.fan_rpm": 12, "high.fan_rpm": 50 },
      { "low.fan_rpm": 4800, "high.fan_rpm": 10_000 },
      { "heater.dose_uL": 0.016 },
      { "air.pressure_hPa": 1040 },
    ]) {
      expect(errorsWith(slip)).toEqual([]);
    }
  });
});

describe("says what is wrong, where, and what to do", () => {
  const cases: [string, Record<string, unknown>, FieldError][] = [
    [
      "an end missing",
      { low: undefined },
      {
        field: "low",
        code: "missing",
        message:
          "The tune at lowest power is missing. Give an object with pump_Hz, fan_rpm and co_ppm or co_below_ppm.",
      },
    ],
    [
      "an end that is no object",
      { high: 4.2 },
      {
        field: "high",
        code: "invalid_type",
        message:
          "The tune at highest power must be an object with pump_Hz, fan_rpm and co_ppm or co_below_ppm.",
      },
    ],
    [
      "heater missing",
      { heater: undefined },
      {
        field: "heater",
        code: "missing",
        message: "The heater is missing. Give an object with heat_kW.",
      },
    ],
    [
      "site missing",
      { site: undefined },
      {
        field: "site",
        code: "missing",
        message: "The site is missing. Give an object with elevation_m.",
      },
    ],
    [
      "elevation missing",
      { "site.elevation_m": undefined },
      {
        field: "site.elevation_m",
        code: "missing",
        message: "Elevation is missing. Give a number in m.",
      },
    ],
    [
      "a number as text",
      { "low.pump_Hz": "1.1" },
      { field: "low.pump_Hz", code: "invalid_type", message: "Pump rate must be a number in Hz." },
    ],
    [
      "null",
      { "high.fan_rpm": null },
      {
        field: "high.fan_rpm",
        code: "invalid_type",
        message: "Fan speed must be a number in rpm.",
      },
    ],
    [
      "NaN",
      { "air.temperature_C": Number.NaN },
      {
        field: "air.temperature_C",
        code: "invalid_type",
        message: "Temperature must be a number in °C.",
      },
    ],
    [
      "infinity",
      { "heater.dose_uL": Number.POSITIVE_INFINITY },
      {
        field: "heater.dose_uL",
        code: "invalid_type",
        message: "Dose must be a number in µL per pulse.",
      },
    ],
    [
      "too high",
      { "site.lat": 91 },
      { field: "site.lat", code: "too_big", message: "Latitude must be at most 90 degrees." },
    ],
    [
      "too low",
      { "low.co_ppm": -1 },
      { field: "low.co_ppm", code: "too_small", message: "Final CO must be at least 0 ppm." },
    ],
    [
      "a heat class between steps",
      { "heater.heat_kW": 5.3 },
      {
        field: "heater.heat_kW",
        code: "not_multiple_of",
        message:
          "Heater size is the nominal full heat output in steps of 0.5 kW, for example 2, 5 or 8.",
      },
    ],
    [
      "both a reading and a floor",
      { "low.co_below_ppm": 30 },
      {
        field: "low.co_ppm",
        code: "custom",
        message:
          "Give the final CO as co_ppm, or, when the meter shows nothing, its floor as co_below_ppm: one of the two.",
      },
    ],
    [
      "neither",
      { "high.co_ppm": undefined },
      {
        field: "high.co_ppm",
        code: "custom",
        message:
          "Give the final CO as co_ppm, or, when the meter shows nothing, its floor as co_below_ppm: one of the two.",
      },
    ],
    [
      "both pressures",
      { "air.qnh_hPa": 1013 },
      {
        field: "air.qnh_hPa",
        code: "custom",
        message:
          "Give station pressure (pressure_hPa) or sea-level pressure (qnh_hPa), not both: they differ by over 20 % at 1,700 m.",
      },
    ],
    [
      "half a position",
      { "site.lon": undefined },
      {
        field: "site.lat",
        code: "custom",
        message: "Give latitude and longitude together, or neither.",
      },
    ],
    [
      "a misspelt field",
      { "low.pump_hz": 1.1 },
      {
        field: "low.pump_hz",
        code: "unknown_field",
        message: "This field is not known. Check its spelling, or leave it out.",
      },
    ],
    [
      "a field too many at the top",
      { note: "<b>hi</b>" },
      {
        field: "note",
        code: "unknown_field",
        message: "This field is not known. Check its spelling, or leave it out.",
      },
    ],
    [
      "a kind of meter not listed",
      { "meter.kind": "nose" },
      {
        field: "meter.kind",
        code: "invalid_value",
        message: "Kind of meter is one of: room alarm, portable meter, flue analyser, other.",
      },
    ],
    [
      "a day where a month is asked",
      { tuned_on: "2026-10-04" },
      {
        field: "tuned_on",
        code: "invalid_format",
        message: 'Month of the tune must look like "2026-10": year and month, no day.',
      },
    ],
    [
      "a thirteenth month",
      { tuned_on: "2026-13" },
      {
        field: "tuned_on",
        code: "invalid_format",
        message: 'Month of the tune must look like "2026-10": year and month, no day.',
      },
    ],
    [
      "a month as number",
      { tuned_on: 202610 },
      {
        field: "tuned_on",
        code: "invalid_type",
        message: 'Month of the tune must be year and month as text, like "2026-10".',
      },
    ],
    [
      "no contributor",
      { contributor: undefined },
      {
        field: "contributor",
        code: "missing",
        message: "Contributor is missing. Give this browser's random key as text.",
      },
    ],
    [
      "an address as contributor",
      { contributor: "someone@example.org" },
      {
        field: "contributor",
        code: "invalid_format",
        message:
          "Contributor must be a random key of 16 to 64 letters, digits, - or _ (no name, no address).",
      },
    ],
    [
      "air that is a list",
      { air: [] },
      {
        field: "air",
        code: "invalid_type",
        message: "The air must be an object, for example with temperature_C, or leave it out.",
      },
    ],
    [
      "a meter that is text",
      { meter: "alarm" },
      {
        field: "meter",
        code: "invalid_type",
        message: "The meter must be an object, for example with kind, or leave it out.",
      },
    ],
  ];

  test.each(cases)("%s", (_, changes, expected) => {
    expect(errorsWith(changes)).toEqual([expected]);
  });

  test.each([[null], [5], ["tune"], [[]], [undefined]])("no tune at all: %j", (sent) => {
    expect(errorsOf(sent)).toMatchObject([{ field: "tune" }]);
  });

  test("every bad field at once, cross-checks included", () => {
    const errors = errorsWith({
      "heater.heat_kW": "5",
      "site.lat": undefined,
      "air.qnh_hPa": 2000,
      "low.pump_Hz": "x",
      "low.co_below_ppm": 30,
      high: undefined,
      colour: "red",
    });
    expect(errors.map(({ field, code }) => `${field} ${code}`).sort()).toEqual([
      "air.qnh_hPa custom",
      "air.qnh_hPa too_big",
      "colour unknown_field",
      "heater.heat_kW invalid_type",
      "high missing",
      "low.co_ppm custom",
      "low.pump_Hz invalid_type",
      "site.lat custom",
    ]);
  });

  test("no message is the library's own", () => {
    for (const [, changes] of cases) {
      for (const { message } of errorsWith(changes)) {
        expect(message).toMatch(/^[A-Z].*\.$/);
        expect(message).not.toMatch(/Invalid input|expected|received/);
      }
    }
  });
});

test("every numeric bound is refused just beyond and let in at itself", () => {
  const fields = [
    ["site.elevation_m", -1500, 20_000],
    ["site.elevation_sd_m", 0, 2000],
    ["air.temperature_C", -80, 125],
    ["air.pressure_hPa", 400, 1150],
    ["air.humidity_pct", 0, 100],
    ["heater.dose_uL", 0.005, 200_000],
    ["heater.supply_V", 6, 36],
    ["low.pump_Hz", 0.03, 1000],
    ["high.fan_rpm", 5, 20_000],
    ["low.co_ppm", 0, 10_000],
    ["meter.distance_m", 0.01, 10],
  ] as const;
  for (const [field, min, max] of fields) {
    expect(errorsWith({ [field]: min })).toEqual([]);
    expect(errorsWith({ [field]: max })).toEqual([]);
    expect(errorsWith({ [field]: min - 0.001 })).toMatchObject([{ field, code: "too_small" }]);
    expect(errorsWith({ [field]: max + 0.001 })).toMatchObject([{ field, code: "too_big" }]);
  }
});

test("the schema describes itself as JSON Schema, bounds and required fields included", () => {
  const described = z.toJSONSchema(tuneSchema);
  expect(described.required).toEqual(["heater", "site", "low", "high", "contributor"]);
  expect(described).toMatchObject({
    additionalProperties: false,
    properties: {
      low: { properties: { pump_Hz: { type: "number", minimum: 0.03, maximum: 1000 } } },
    },
  });
});
