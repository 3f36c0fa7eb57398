import { describe, expect, test } from "vitest";
import { type ScreenContext, screen } from "../../model/screen.ts";
import type { Tune } from "../../model/tune.ts";

/** The sentences people read, one by one, on an invented crew's good row. */

const GOOD: Tune = {
  heater: { heat_kW: 5, dose_uL: 22, supply_V: 12 },
  site: { elevation_m: 1300, lat: 41.2, lon: 74.9 },
  air: { temperature_C: -9, humidity_pct: 60 },
  low: { pump_Hz: 1.3, fan_rpm: 1650, co_ppm: 14, power: 1 },
  high: { pump_Hz: 4.2, fan_rpm: 4400, co_ppm: 11, power: 10 },
  meter: { kind: "room alarm", distance_m: 0.3 },
  tuned_on: "2026-10",
  contributor: "an-invented-key-of-a-crew",
};
const HERE: ScreenContext = {
  terrain: { elevation_m: 1290, uncertainty_95_m: 200, sd_m: 80 },
  month: "2026-11",
};

function reasonsFor(change: (tune: Tune) => void, context: ScreenContext = HERE) {
  const tune = structuredClone(GOOD);
  change(tune);
  return screen(tune, context).reasons;
}

test("the good row itself is accepted", () => {
  expect(screen(GOOD, HERE)).toEqual({ verdict: "accepted", reasons: [] });
  expect(screen(GOOD)).toEqual({ verdict: "accepted", reasons: [] });
});

describe("sentences", () => {
  const cases: [
    string,
    (tune: Tune) => void,
    { code: string; field: string; sentence: string; suggestion?: number },
  ][] = [
    [
      "elevation in feet",
      (t) => {
        t.site.elevation_m = 4265;
      },
      {
        code: "elevation_in_feet",
        field: "site.elevation_m",
        sentence: "4,265 at this place is its elevation in feet. Did you mean 1,300 m?",
        suggestion: 1300,
      },
    ],
    [
      "elevation at odds with the place",
      (t) => {
        t.site.elevation_m = 2240;
      },
      {
        code: "elevation_against_place",
        field: "site.elevation_m",
        sentence:
          "The ground at this place is near 1,290 m (± 200 m), not 2,240 m. Check the elevation and the place.",
      },
    ],
    [
      "°F",
      (t) => {
        if (t.air) t.air.temperature_C = 68;
      },
      {
        code: "temperature_in_fahrenheit",
        field: "air.temperature_C",
        sentence:
          "68 °C is hotter than any place a heater is tuned at; in °F it is ordinary. Did you mean 20 °C?",
        suggestion: 20,
      },
    ],
    [
      "too cold to be meant",
      (t) => {
        if (t.air) t.air.temperature_C = -75;
      },
      {
        code: "temperature_out_of_range",
        field: "air.temperature_C",
        sentence: "A temperature of -75 °C is outside -60 to 50 °C. Check it, and its unit.",
      },
    ],
    [
      "QNH",
      (t) => {
        if (t.air) t.air.pressure_hPa = 1013.2;
      },
      {
        code: "qnh_as_station_pressure",
        field: "air.pressure_hPa",
        sentence:
          "1,013.2 hPa at 1,300 m is a sea-level pressure (QNH). Did you mean a station pressure of 866.5 hPa? Or give it as QNH.",
        suggestion: 866.5,
      },
    ],
    [
      "a station pressure that fits nothing",
      (t) => {
        if (t.air) t.air.pressure_hPa = 640;
      },
      {
        code: "pressure_against_elevation",
        field: "air.pressure_hPa",
        sentence:
          "A station pressure of 640 hPa does not go with 1,300 m, where it is usually near 867 hPa. Check both.",
      },
    ],
    [
      "dose in mL",
      (t) => {
        t.heater.dose_uL = 0.022;
      },
      {
        code: "dose_in_mL",
        field: "heater.dose_uL",
        sentence:
          "A dose of 0.022 µL is too little to burn; as mL it is ordinary. Did you mean 22 µL?",
        suggestion: 22,
      },
    ],
    [
      "dose ten times off",
      (t) => {
        t.heater.dose_uL = 220;
      },
      {
        code: "dose_decimal_slip",
        field: "heater.dose_uL",
        sentence:
          "A dose of 220 µL is outside what a pulse can move; with the decimal point one place over it is ordinary. Did you mean 22 µL?",
        suggestion: 22,
      },
    ],
    [
      "dose beyond any pump",
      (t) => {
        t.heater.dose_uL = 5000;
      },
      {
        code: "dose_out_of_range",
        field: "heater.dose_uL",
        sentence:
          "A dose of 5,000 µL is outside 8 to 120 µL, all that one pulse can move. Check it, or leave it out.",
      },
    ],
    [
      "a month to come",
      (t) => {
        t.tuned_on = "2026-12";
      },
      {
        code: "tuned_in_the_future",
        field: "tuned_on",
        sentence: "2026-12 has not come yet; it is 2026-11. Check the month of the tune.",
      },
    ],
    [
      "pump rate ten times too high",
      (t) => {
        t.high.pump_Hz = 42;
      },
      {
        code: "pump_decimal_slip",
        field: "high.pump_Hz",
        sentence:
          "The pump rate of 42 Hz at highest power is ten times what is usual: a lost decimal point. Did you mean 4.2 Hz?",
        suggestion: 4.2,
      },
    ],
    [
      "far too lean to burn",
      (t) => {
        t.low.pump_Hz = 0.03;
      },
      {
        code: "mixture_out_of_range",
        field: "low.pump_Hz",
        sentence:
          "A pump rate of 0.03 Hz at 1,650 rpm is far too lean to burn at 1,300 m; 0.7 to 1.8 Hz is usual. Check both figures at lowest power.",
      },
    ],
    [
      "a fan no heater has",
      (t) => {
        t.high.fan_rpm = 15_000;
      },
      {
        code: "fan_speed_out_of_range",
        field: "high.fan_rpm",
        sentence:
          "A fan speed of 15,000 rpm at highest power is far from the usual 3,500 to 5,000 rpm. Check it.",
      },
    ],
  ];
  test.each(cases)("%s", (_, change, expected) => {
    expect(reasonsFor(change)).toEqual([expected]);
  });
});

test("an elevation above any camp is known for feet without a place", () => {
  expect(
    reasonsFor((t) => {
      t.site.elevation_m = 14_000;
    }, {}),
  ).toEqual([
    {
      code: "elevation_in_feet",
      field: "site.elevation_m",
      sentence:
        "14,000 is no elevation in metres that people camp at; in feet it is ordinary. Did you mean 4,267 m?",
      suggestion: 4267,
    },
  ]);
  expect(
    reasonsFor((t) => {
      t.site.elevation_m = 19_900;
    }, {}).map((r) => r.code),
  ).toEqual(["elevation_out_of_range"]);
});

test("the low end must be below the high end, in pump rate and in fan speed", () => {
  const codes = reasonsFor((t) => {
    t.low = { ...t.high };
    t.high.fan_rpm = 4410;
    t.low.fan_rpm = 4410;
  }).map((r) => `${r.code} ${r.field}`);
  expect(codes).toEqual(["ends_out_of_order low.pump_Hz", "ends_out_of_order low.fan_rpm"]);
});

test("QNH under its own name is no slip, and a QNH at the Dead Sea neither", () => {
  expect(
    reasonsFor((t) => {
      t.air = { qnh_hPa: 1013 };
    }),
  ).toEqual([]);
  expect(
    reasonsFor((t) => {
      t.site = { elevation_m: 0 };
      t.air = { pressure_hPa: 1013 };
    }, {}),
  ).toEqual([]);
});

test("several slips at once are each reported", () => {
  const codes = reasonsFor((t) => {
    t.site.elevation_m = 4265;
    t.heater.dose_uL = 0.022;
    t.air = { temperature_C: 59, pressure_hPa: 1015 };
    t.low = { ...t.low, pump_Hz: 78, fan_rpm: 3300 };
    t.high = { ...t.high, pump_Hz: 252, fan_rpm: 8800 };
  }).map((r) => `${r.code} ${r.suggestion}`);
  expect(codes).toEqual([
    "elevation_in_feet 1300",
    "qnh_as_station_pressure 868.1",
    "temperature_in_fahrenheit 15",
    "dose_in_mL 22",
    "pump_pulses_per_minute 1.3",
    "fan_rpm_doubled 1650",
    "pump_pulses_per_minute 4.2",
    "fan_rpm_doubled 4400",
  ]);
});

test("the air of a repaired site judges the mixture", () => {
  // At 4,265 m this would be far too rich, at the 1,300 m that were meant it is ordinary: one reason, not two.
  const codes = reasonsFor((t) => {
    t.site.elevation_m = 4265;
    t.air = { pressure_hPa: 866 };
  }, {}).map((r) => r.code);
  expect(codes).toEqual(["elevation_in_feet"]);
});
