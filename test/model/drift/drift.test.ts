import {
  assert,
  boolean,
  constantFrom,
  double,
  integer,
  property,
  record,
  shuffledSubarray,
} from "fast-check";
import { expect, test } from "vitest";
import { driftOf, type EndDrift } from "../../../model/drift/drift.ts";
import type { Logged, LoggedTune } from "../../../model/drift/logged.ts";
import { seeded } from "../../../seed-demo/random.ts";
import { watch } from "../../study/drift/looking.ts";
import { QUIET, seasonOf } from "../../study/drift/season.ts";

/** 12 to 31 ppm in 140 h. */
const RISE = Math.log(31 / 12) / 1.4;
const rising = (seed = 1, entries = 20) =>
  seasonOf({ ...QUIET, entries, co_rise: RISE }, seeded(seed));
const tunes = (logged: Logged[], change: (tune: LoggedTune, i: number) => LoggedTune): Logged[] =>
  logged.map((one, i) => (one.kind === "tune" ? change(one, i) : one));

test("with nothing there, looking after each entry speaks of a drift in under 5 % of seasons", () => {
  for (const kind of [{ entries: 10 }, { entries: 30 }, { entries: 30, cleanings: 2 }]) {
    expect(watch({ ...QUIET, ...kind }, 60, 11).any_pct).toBeLessThan(5);
  }
});

test("a real rise is found in most seasons, a slow one in some", () => {
  expect(watch({ ...QUIET, co_rise: RISE }, 30, 12).co_pct).toBeGreaterThan(90);
  expect(watch({ ...QUIET, mixture_change: 0.05 }, 30, 13).mixture_pct).toBeGreaterThan(70);
});

test("a rise is said with from, to, hours and an interval around the truth", () => {
  const { co } = driftOf(rising()).low;
  if (!co) throw new Error("no comparison");
  expect(co.shown).toBe(true);
  const truth = Math.exp((RISE * co.over.amount) / 100);
  expect(co.interval.lower).toBeLessThan(truth);
  expect(co.interval.upper).toBeGreaterThan(truth);
  expect(co.to_ppm / co.from_ppm).toBeCloseTo(co.factor, 9);
  expect(co.over.axis).toBe("hours");
});

const season = record({
  seed: integer({ min: 1, max: 1e6 }),
  entries: integer({ min: 3, max: 14 }),
  cleanings: integer({ min: 0, max: 2 }),
  co_rise: double({ min: -0.5, max: 0.9, noNaN: true }),
  floor_ppm: constantFrom(0, 10, 30),
  travels: boolean(),
}).map(({ seed, ...kind }) => seasonOf({ ...QUIET, ...kind }, seeded(seed)));

test("the order in which entries are given does not matter", () => {
  const anyOrder = season.chain((logged) =>
    shuffledSubarray(logged, { minLength: logged.length }).map((shuffled) => ({
      logged,
      shuffled,
    })),
  );
  assert(
    property(anyOrder, ({ logged, shuffled }) => {
      expect(driftOf(shuffled)).toEqual(driftOf(logged));
    }),
  );
});

test("another scale of ppm, of fuel or of the fan changes no verdict", () => {
  const close = (a: EndDrift["mixture"], b: EndDrift["mixture"]) => {
    expect(a === null).toBe(b === null);
    if (!a || !b) return;
    expect(a.factor).toBeCloseTo(b.factor, 6);
    expect(a.evidence / b.evidence).toBeCloseTo(1, 6);
    expect(a.shown).toBe(b.shown);
  };
  assert(
    property(season, double({ min: 0.5, max: 2, noNaN: true }), (logged, k) => {
      const fan = tunes(logged, (tune) => ({
        ...tune,
        ...(tune.low && { low: { ...tune.low, fan_rpm: tune.low.fan_rpm * k } }),
      }));
      close(driftOf(fan).low.mixture, driftOf(logged).low.mixture);
      close(driftOf(fan).low.co, driftOf(logged).low.co);
    }),
  );
});

test("another meter or spot breaks the comparison, and one that is not described is never compared", () => {
  const logged = rising();
  const halves = tunes(logged, (tune, i) => ({ ...tune, meter: i < 19 ? "one" : "another" }));
  expect(driftOf(logged).low.co?.shown).toBe(true);
  expect(driftOf(halves).low.co).toBeNull();
  expect(driftOf(halves).low.readings.seen).toBe(1);
  const nameless = driftOf(tunes(logged, (tune) => ({ ...tune, meter: undefined }))).low;
  expect([nameless.co, nameless.without_meter]).toEqual([null, 20]);
  // The settings need no meter.
  expect(nameless.mixture?.points).toBe(20);
});

test("a cleaning starts a new stretch", () => {
  const logged = rising();
  const cleaned: Logged[] = [
    ...logged,
    { kind: "cleaning", id: "c", at: "2027-06-01T00:00:00Z", hours: 999 },
  ];
  expect(driftOf(cleaned).low).toMatchObject({ co: null, mixture: null });
  expect(driftOf(cleaned).high.readings.seen).toBe(0);
});

test("readings at another mixture stand apart", () => {
  const logged = tunes(rising(), (tune, i) =>
    tune.low && i > 9 ? { ...tune, low: { ...tune.low, fan_rpm: tune.low.fan_rpm * 0.8 } } : tune,
  );
  expect(driftOf(logged).low.co?.points).toBeLessThanOrEqual(10);
});

test("below the floor and at the ceiling are no numbers: counted, never in the trend", () => {
  const floor = tunes(rising(3), (tune, i) => ({
    ...tune,
    low: { pump_Hz: 1, fan_rpm: 1650, ...(i < 19 ? { co_below_ppm: 30 } : { co_ppm: 45 }) },
    density_kg_m3: 1.225,
  }));
  expect(driftOf(floor).low).toMatchObject({
    co: null,
    readings: { seen: 1, below_floor: 19, at_ceiling: 0 },
    risen_above_floor: { from_below_ppm: 30, to_ppm: 45 },
  });
  const ceiling = tunes(floor, (tune) => ({
    ...tune,
    low: { pump_Hz: 1, fan_rpm: 1650, co_above_ppm: 999 },
  }));
  expect(driftOf(ceiling).low).toMatchObject({ co: null, readings: { seen: 0, at_ceiling: 20 } });
});

test("without hours the fuel counts; without either nothing is compared", () => {
  const fuel = tunes(rising(), (tune) => ({ ...tune, hours: undefined, fuel_L: 3.5 }));
  expect(driftOf(fuel).low.co?.over).toEqual({ axis: "fuel_L", amount: 19 * 3.5 });
  const neither = tunes(rising(), (tune) => ({ ...tune, hours: undefined }));
  expect(driftOf(neither).low.co).toBeNull();
});

test("what cannot be used is refused by its entry and name", () => {
  const bad = tunes(rising(), (tune) => ({ ...tune, density_kg_m3: 0 }));
  expect(() => driftOf(bad)).toThrow("t0.density_kg_m3");
});
