import fc from "fast-check";
import { expect, test } from "vitest";
import type { MyHeater } from "../../client/app/heater/my-heater.ts";
import { Refused } from "../../client/base/refused.ts";
import { MOST_STOPS, tidyName } from "../../client/base/stop-schema.ts";
import { textOf, tripKept, tripOf } from "../../client/trip/link.ts";
import { NEW_TRIP, type Trip } from "../../client/trip/trip.ts";
import { UNITS, type Unit } from "../../client/units.ts";
import { SUPPLIES_V } from "../../model/trip/nights.ts";
import type { OwnTune } from "../../model/tune.ts";

const cents = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });

const trips: fc.Arbitrary<Trip> = fc.record({
  heater: fc.record({
    heat_kW: cents(0.5, 50),
    low_fan_rpm: maybe(cents(100, 20000)),
    high_fan_rpm: maybe(cents(100, 20000)),
    dose_uL: maybe(cents(1, 500)),
    supply_V: maybe(fc.constantFrom(...SUPPLIES_V)),
    tank_L: maybe(cents(1, 1000)),
    step_Hz: maybe(cents(0.01, 0.5)),
    battery_Ah: maybe(cents(1, 5000)),
  }),
  window: fc.record({ rich_pct: cents(0, 100), lean_pct: cents(0, 90) }),
  night: fc.record({ hours: cents(1, 24), power_share: cents(0, 1) }),
  stops: fc.array(
    fc.record({
      name: fc.string({ unit: "grapheme", maxLength: 20 }).map(tidyName),
      elevation_m: cents(-500, 6000),
      temperature_C: maybe(cents(-60, 45)),
      lat: maybe(cents(-90, 90)),
      lon: maybe(cents(-180, 180)),
      elevation_sd_m: maybe(fc.integer({ min: 0, max: 2000 })),
      nights: maybe(fc.integer({ min: 2, max: 99 })),
    }),
    { maxLength: 12 },
  ),
});

const unitNamed = (quantity: "elevation" | "temperature", called: string) =>
  (UNITS[quantity] as readonly Unit[]).find(({ name }) => name === called) as Unit;

const inForm = (list: unknown, form = "1") =>
  `${form}.${Buffer.from(JSON.stringify(list), "utf8").toString("base64url")}`;
const GOOD = [[5], [12, 25], [10, 0.3], [["Pass", 2300, -9]]];

test("what goes into a link comes out of it", () => {
  fc.assert(
    fc.property(trips, (trip) => {
      const text = textOf(trip);
      expect(text).toMatch(/^1\.[\w-]+$/);
      expect(tripOf(text)).toEqual({ trip, units: undefined, mine: null });
    }),
  );
});

test("three stops make a link short enough for any message", () => {
  const stops = ["Harbour", "Pass", "Lake"].map((name, i) => ({ name, elevation_m: 1000 * i }));
  expect(textOf({ ...NEW_TRIP, stops }).length).toBeLessThan(200);
});

test("a link made by hand is read; one step back is the same trip", () => {
  const { trip } = tripOf(inForm([[5, null, null, null], ...GOOD.slice(1)]));
  expect(trip.stops).toMatchObject([{ name: "Pass", elevation_m: 2300, temperature_C: -9 }]);
  expect(tripKept(textOf(trip))).toEqual(trip);
});

test("a link made before heaters had a tank still opens; a voltage or a tank that cannot be is refused", () => {
  const heater = (...fields: unknown[]) => inForm([fields, ...GOOD.slice(1)]);
  expect(tripOf(heater(5, null, null, 22)).trip.heater).toEqual({ heat_kW: 5, dose_uL: 22 });
  expect(tripOf(heater(5, null, null, null, 24, 10)).trip.heater).toEqual({
    heat_kW: 5,
    supply_V: 24,
    tank_L: 10,
  });
  for (const [supply_V, tank_L] of [
    [13, 10],
    ["24", 10],
    [24, 0],
    [24, 1e9],
  ])
    expect(() => tripOf(heater(5, null, null, null, supply_V, tank_L))).toThrow(/cannot be/);
});

test("a link made before heaters had a step or a battery still opens; either that cannot be is refused", () => {
  const heater = (...fields: unknown[]) =>
    tripOf(inForm([[5, null, null, null, null, ...fields], ...GOOD.slice(1)])).trip.heater;
  expect(heater(10)).toEqual({ heat_kW: 5, tank_L: 10 });
  expect(heater(null, 0.05, 95)).toEqual({ heat_kW: 5, step_Hz: 0.05, battery_Ah: 95 });
  for (const [step_Hz, battery_Ah] of [
    [0, 95],
    [0.7, 95],
    [0.1, 0],
    [0.1, 1e9],
    [0.1, "95"],
  ])
    expect(() => heater(null, step_Hz, battery_Ah)).toThrow(/cannot be/);
});

test("a link made before stops had nights still opens; nights that cannot be are refused", () => {
  const old = inForm([...GOOD.slice(0, 3), [["Pass", 2300, -9, 46.5, 8.3, 20]]]);
  expect(tripOf(old).trip.stops[0]).toMatchObject({ elevation_sd_m: 20, nights: undefined });
  const three = inForm([...GOOD.slice(0, 3), [["Pass", 2300, null, null, null, null, 3]]]);
  expect(tripOf(three).trip.stops[0]).toMatchObject({ nights: 3 });
  for (const nights of [0, 1.5, 100, "3"]) {
    const wrong = inForm([...GOOD.slice(0, 3), [["Pass", 2300, null, null, null, null, nights]]]);
    expect(() => tripOf(wrong)).toThrow(/cannot be/);
  }
});

const OWN = {
  bracketed: 1,
  tunes: [
    [
      {
        site: { elevation_m: 600 },
        air: { temperature_C: 10 },
        low: { pump_Hz: 1.4, fan_rpm: 1700, co_ppm: 14 },
        high: { pump_Hz: 5, fan_rpm: 4500, co_ppm: 9 },
      },
      "2026-10-10",
    ],
  ],
};

test("units and own tunes go along when they are given; a link made before they could still opens; what cannot be is refused", () => {
  const [tune] = OWN.tunes[0] as [OwnTune, string];
  const mine: MyHeater = {
    heater: { id: "mine", name: "Van", heat_kW: 5, changed_at: "2026-11-01T00:00:00.000Z" },
    own_tunes: [tune],
    found_at: ["2026-10-10T20:00:00.000Z"],
    bracketed: 1,
    settings: undefined,
  };
  const units = {
    elevation: unitNamed("elevation", "ft"),
    temperature: unitNamed("temperature", "°F"),
  };
  const text = textOf(NEW_TRIP, { units, mine });
  const opened = tripOf(text);
  expect(opened).toMatchObject({
    units: { elevation: "ft", temperature: "°F" },
    mine: { own_tunes: [tune], found_at: ["2026-10-10"], bracketed: 1, heater: { heat_kW: 5 } },
  });
  // The name that somebody gave a heater stays with its owner.
  expect(JSON.stringify(opened)).not.toContain("Van");
  expect(tripOf(textOf(NEW_TRIP, { units, mine: null })).mine).toBe(null);
  expect(tripOf(inForm(GOOD))).toMatchObject({ units: undefined, mine: null });
  for (const wrong of [
    ["yd,C"],
    [5],
    ["m,C", {}],
    ["m,C", { ...OWN, tunes: [] }],
    ["m,C", { ...OWN, tunes: [OWN.tunes[0], OWN.tunes[0]] }],
    ["m,C", { ...OWN, tunes: [[{ ...tune, low: { pump_Hz: 1e9, fan_rpm: 1700 } }, "2026-10-10"]] }],
    ["m,C", OWN, "more"],
  ])
    expect(() => tripOf(inForm([...GOOD, ...wrong])), JSON.stringify(wrong)).toThrow(/cannot be/);
});

test("hostile and damaged links are refused in words, whatever they hold", () => {
  const many = Array.from({ length: MOST_STOPS + 1 }, () => ["x", 1]);
  const hostile: [string, RegExp][] = [
    ["", /no trip/],
    ["x", /no trip/],
    ["2.AAAA", /newer version/],
    [`1.${"A".repeat(100_000)}`, /longer/],
    ["1.%%%", /damaged/],
    ["1.AAAA", /damaged/],
    [textOf(NEW_TRIP).slice(0, -9), /damaged/],
    [inForm({ __proto__: null, constructor: 1 }), /cannot be/],
    [inForm(null), /cannot be/],
    [inForm([GOOD[0], GOOD[1], GOOD[2], many]), /cannot be/],
    [inForm([GOOD[0], GOOD[1], GOOD[2], [["x", 1e9]]]), /cannot be/],
    [inForm([GOOD[0], GOOD[1], GOOD[2], [["x", "1"]]]), /cannot be/],
    [inForm([GOOD[0], GOOD[1], GOOD[2], [[{ toString: 1 }, 5]]]), /cannot be/],
    [inForm([[5, null, null, null], [12, 100], [10, 0.3], []]), /cannot be/],
    [inForm([[0, null, null, null], [12, 25], [10, 0.3], []]), /cannot be/],
    [
      inForm([[5, null, null, null], [12, 25], [10, 0.3], [["a", 1, 2, 3, 4, 5, 6, 7]]]),
      /cannot be/,
    ],
  ];
  for (const [text, reason] of hostile) {
    expect(() => tripOf(text), text.slice(0, 60)).toThrow(Refused);
    expect(() => tripOf(text), text.slice(0, 60)).toThrow(reason);
    expect(tripKept(text)).toBe(NEW_TRIP);
  }
});

test("any text at all gives a trip or a refusal, nothing else", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.json().map((j) => inForm(JSON.parse(j))),
      ),
      (text) => {
        try {
          tripOf(text);
        } catch (error) {
          expect(error).toBeInstanceOf(Refused);
        }
      },
    ),
  );
});

test("names from outside lose what could hide or turn them round", () => {
  expect(tidyName("  Pass\u202e\n of\u0000 wind\t")).toBe("Pass of wind");
  expect([...tidyName("ä".repeat(500))]).toHaveLength(80);
});
