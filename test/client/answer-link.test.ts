import fc from "fast-check";
import { expect, test } from "vitest";
import type { MyHeater } from "../../client/app/heater/my-heater.ts";
import { PAPERS, usualChoice } from "../../client/app/link/card-choice.ts";
import { cardIn, cardText } from "../../client/app/link/card-link.ts";
import { packed } from "../../client/app/link/packed.ts";
import { questionIn } from "../../client/app/link/question-link.ts";
import { questionText } from "../../client/app/link/question-text.ts";
import { FIRST_QUESTION, type Question } from "../../client/base/question.ts";
import { tidyName } from "../../client/base/stop-schema.ts";
import { UNITS } from "../../client/units.ts";
import type { OwnTune } from "../../model/tune.ts";

const [m, ft] = UNITS.elevation;
const [C, F] = UNITS.temperature;
const METRIC = { elevation: m, temperature: C };

const cents = (min: number, max: number) =>
  fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100);
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const name = fc
  .string({ unit: "grapheme", minLength: 1, maxLength: 20 })
  .map(tidyName)
  .filter((tidy) => tidy !== "");

const questions: fc.Arbitrary<Question> = fc
  .record({
    heat_kW: fc.integer({ min: 2, max: 30 }).map((half) => half / 2),
    site: fc.record({
      elevation_m: cents(-500, 6000),
      elevation_sd_m: fc.integer({ min: 0, max: 2000 }),
      elevation_source: fc.constantFrom("given", "known point", "interpolated", "tiles" as const),
    }),
    at: maybe(fc.record({ place: name, lat: cents(-90, 90), lon: cents(-180, 180) })),
    air: fc.record(
      {
        temperature_C: cents(-60, 45),
        pressure_hPa: cents(400, 1150),
        humidity_pct: cents(0, 100),
      },
      { requiredKeys: [] },
    ),
    low_fan_rpm: maybe(cents(100, 3000)),
    high_fan_rpm: maybe(cents(3001, 20_000)),
    dose_uL: maybe(cents(1, 500)),
    end: fc.constantFrom("low", "high", undefined),
  })
  .map(({ at, ...rest }) => ({
    ...(rest as Omit<Question, "place" | "lat" | "lon">),
    ...(at ?? { place: null, lat: null, lon: null }),
  }));

test("what an answer was asked for comes out of its address again", () => {
  fc.assert(
    fc.property(questions, fc.constantFrom(m, ft), fc.constantFrom(C, F), (asked, up, warm) => {
      const text = questionText(asked, null, { elevation: up, temperature: warm }, true);
      const { question, mine, units, refused } = questionIn(text);
      expect(refused).toEqual([]);
      expect(question).toEqual(asked);
      expect(mine).toBe(null);
      expect(units).toEqual({ elevation: up.name, temperature: warm.name });
    }),
  );
});

const FOUND: OwnTune = {
  site: { elevation_m: 1200 },
  air: { temperature_C: 4 },
  low: { pump_Hz: 1.2, fan_rpm: 1700, co_ppm: 12 },
  high: { pump_Hz: 4.3, fan_rpm: 4400, co_below_ppm: 30 },
  tuned_on: "2026-10",
};
const VAN: MyHeater = {
  heater: {
    id: "invented-van",
    name: "Van",
    heat_kW: 5,
    step_Hz: 0.05,
    step_rpm: 10,
    changed_at: "",
  },
  own_tunes: [FOUND],
  found_at: ["2026-10-05T18:00:00.000Z"],
  bracketed: 1,
  settings: { at: "2026-10-05T18:00:00.000Z", low: FOUND.low, high: FOUND.high },
};

test("own tunes, and what my heater is called and set to, are in no address unless asked for; its steps are", () => {
  const without = questionText(FIRST_QUESTION, VAN, METRIC, false);
  expect(without).not.toContain("own=");
  expect(without).not.toContain("Van");
  expect(questionIn(without).mine).toMatchObject({
    heater: { step_Hz: 0.05, step_rpm: 10 },
    own_tunes: [],
    settings: undefined,
  });
  const { mine, refused } = questionIn(questionText(FIRST_QUESTION, VAN, METRIC, true));
  expect(refused).toEqual([]);
  expect(mine).toMatchObject({
    own_tunes: [FOUND],
    found_at: ["2026-10-05"],
    bracketed: 1,
    settings: undefined,
  });
});

test("a position without a name may be the device's: it is in no address", () => {
  const here = { ...FIRST_QUESTION, lat: 46.12345, lon: 8.54321 };
  expect(questionText(here, null, METRIC, false)).not.toMatch(/46\.1|8\.5/);
});

test("a usual question makes an address that one can read, and read out", () => {
  const asked = {
    ...FIRST_QUESTION,
    place: "Graukar pass",
    lat: 46.5,
    lon: 8.25,
    air: { temperature_C: -12 },
  };
  expect(questionText(asked, null, METRIC, false)).toBe(
    "place=Graukar+pass&lat=46.5&lon=8.25&elevation_m=1000&temperature_C=-12&heat_kW=5&units=m,C",
  );
});

const own = (list: unknown) => `own=${packed(list)}`;

test("each value that cannot be is named, and falls back alone", () => {
  const wrong: [query: string, ...names: string[]][] = [
    ["elevation_m=99999", "elevation_m"],
    ["elevation_m=1e3", "elevation_m"],
    ["elevation_m=", "elevation_m"],
    ["elevation_m=0x10", "elevation_m"],
    ["elevation_m=Infinity", "elevation_m"],
    ["temperature_C=-61", "temperature_C"],
    ["heat_kW=5.2", "heat_kW"],
    ["heat_kW=<script>alert(1)</script>", "heat_kW"],
    ["place=%E2%80%AE%00", "place"],
    ["pressure_hPa=900&qnh_hPa=1013", "qnh_hPa"],
    ["low_fan_rpm=4000&high_fan_rpm=1700", "low_fan_rpm", "high_fan_rpm"],
    ["low_fan_rpm=-1", "low_fan_rpm"],
    ["lat=46", "lat"],
    ["lon=8", "lon"],
    ["lat=91&lon=8", "lat", "lon"],
    ["dose_uL=NaN", "dose_uL"],
    ["end=middle", "end"],
    ["units=C,m", "units"],
    ["units=__proto__", "units"],
    ["step_Hz=0", "step_Hz"],
    ["elevation_source=guess", "elevation_source"],
    ["own=%%%", "own"],
    [own([]), "own"],
    [own({ bracketed: 0, tunes: [] }), "own"],
    [own({ bracketed: 0, tunes: [[{ ...FOUND, low: { pump_Hz: "1" } }, "2026-10-05"]] }), "own"],
    [
      own({
        bracketed: 0,
        tunes: [
          [FOUND, "2026-10-05"],
          [FOUND, "2026-10-05"],
        ],
      }),
      "own",
    ],
    [
      own({
        bracketed: 0,
        tunes: Array.from({ length: 11 }, (_, i) => [
          { ...FOUND, site: { elevation_m: i } },
          "2026-10-05",
        ]),
      }),
      "own",
    ],
    [own({ bracketed: 99, tunes: [[FOUND, "2026-10-05"]] }), "own"],
    ["elevation_m=abc&temperature_C=hot&heat_kW=99", "elevation_m", "temperature_C", "heat_kW"],
  ];
  for (const [query, ...names] of wrong) {
    const { question, mine, refused } = questionIn(`${query}&humidity_pct=40`);
    expect(refused.map((one) => one.name).sort(), query).toEqual(names.sort());
    for (const { given } of refused) expect([...given].length).toBeLessThanOrEqual(31);
    expect(mine).toBe(null);
    const { pressure_hPa: _, humidity_pct, ...air } = question.air;
    expect([humidity_pct, air]).toEqual([40, {}]);
    expect({ ...question, air: {} }, query).toEqual(FIRST_QUESTION);
  }
});

test("what messengers add to an address is passed over; of a value given twice the first counts", () => {
  const { question, refused } = questionIn("elevation_m=2240&elevation_m=9&utm_source=x&fbclid=y");
  expect(question.site.elevation_m).toBe(2240);
  expect(refused).toEqual([]);
});

test("any text at all opens", () => {
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.webQueryParameters(),
        fc.json().map((json) => own(JSON.parse(json))),
        fc
          .tuple(fc.constantFrom("elevation_m", "place", "units", "own", "paper"), fc.string())
          .map(([key, value]) => `${key}=${encodeURIComponent(value)}`),
      ),
      (query) => {
        questionIn(query);
        cardIn(query);
      },
    ),
  );
  expect(questionIn(`own=${"A".repeat(1_000_000)}`).refused).toMatchObject([{ name: "own" }]);
});

test("a card's address holds the card, short enough for a code of a finger's breadth; own tunes never", () => {
  const cards = fc.record({
    heater: fc.record({
      heat_kW: fc.integer({ min: 2, max: 30 }).map((half) => half / 2),
      low_fan_rpm: maybe(cents(100, 3000)),
      high_fan_rpm: maybe(cents(3001, 20_000)),
      dose_uL: maybe(cents(1, 500)),
    }),
    elevation_m: fc.tuple(cents(-400, 2000), cents(2300, 5800)),
    temperature_C: fc.tuple(cents(-45, -6), cents(0, 40)),
    paper: fc.constantFrom(...PAPERS),
  });
  fc.assert(
    fc.property(cards, (choice) => {
      const withOwn = { ...choice, heater: { ...choice.heater, own_tunes: [FOUND] } };
      const text = cardText(withOwn, { elevation: ft, temperature: F });
      expect(cardIn(text)).toEqual({
        choice,
        units: { elevation: "ft", temperature: "°F" },
        refused: [],
      });
      expect(text.length).toBeLessThan(180);
    }),
  );
  expect(cardText(usualChoice(FIRST_QUESTION), METRIC)).toBe("heat_kW=5&units=m,C");
});

test("a card's wrong values are named and fall back", () => {
  const wrong: [query: string, ...names: string[]][] = [
    ["elevation_m=0", "elevation_m"],
    ["elevation_m=3000,1000", "elevation_m"],
    ["elevation_m=0,100", "elevation_m"],
    ["elevation_m=-9000,9000", "elevation_m"],
    ["temperature_C=-30,x", "temperature_C"],
    ["paper=a0", "paper"],
    ["low_fan_rpm=5000&high_fan_rpm=1700", "low_fan_rpm", "high_fan_rpm"],
  ];
  for (const [query, ...names] of wrong) {
    const { choice, refused } = cardIn(query);
    expect(refused.map((one) => one.name)).toEqual(names);
    expect(choice).toEqual(usualChoice(FIRST_QUESTION));
  }
});
