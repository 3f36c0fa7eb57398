import { expect, test } from "vitest";
import { standardTemperature } from "../../../model/air.ts";
import { carryOverShift, mixture, mixtureShift } from "../../../model/mixture.ts";
import { settablePump, wholePercent } from "../../../model/rounding.ts";
import { type StartTune, startTune } from "../../../model/start.ts";
import { usualFlow } from "../../../model/supply.ts";
import { nightAt, USUAL_NIGHT } from "../../../model/trip/nights.ts";
import { type Expected, tuneKeptFrom } from "../../../model/trip/one-tune.ts";
import { planTrip, type TripQuestion } from "../../../model/trip/trip.ts";
import { WORKING_WINDOW } from "../../../model/trip/window.ts";
import combustion from "../../reference/combustion.json" with { type: "json" };
import { EMPTY_ATLAS, inventedFit } from "../invented-fit.ts";

const fit = inventedFit();
const STOPS = [
  { name: "Harbour", elevation_m: 5, temperature_C: 8 },
  { name: "Pass", elevation_m: 2300, temperature_C: -9 },
  { name: "High lake", elevation_m: 4600 },
];
const question: TripQuestion = {
  heater: { heat_kW: 5, low_fan_rpm: 1700, high_fan_rpm: 4500, dose_uL: 22 },
  stops: STOPS,
  window: WORKING_WINDOW,
  night: USUAL_NIGHT,
};

test("each stop's start tune is the atlas's own answer for its elevation and night", () => {
  const { stops } = planTrip(fit, question);
  for (const { stop, start, air } of stops) {
    const { temperature_C } = stop;
    const asked = startTune(fit, {
      ...question.heater,
      site: { elevation_m: stop.elevation_m, elevation_sd_m: 0, elevation_source: "given" },
      air: temperature_C === undefined ? {} : { temperature_C },
    });
    expect(start).toEqual(asked);
    expect(air.assumed.includes("temperature")).toBe(temperature_C === undefined);
  }
  expect(stops[2]?.air.temperature_C).toBeCloseTo(standardTemperature(4600), 9);
});

test("an elevation that was worked out from a position widens the bands", () => {
  const [sure, vague] = [undefined, 120].map((elevation_sd_m) => {
    const { stops } = planTrip(fit, {
      ...question,
      stops: [{ ...STOPS[1], elevation_sd_m } as never],
    });
    const band = stops[0]?.start.low.new_heater_bands_Hz[0];
    return (band?.upper ?? 0) - (band?.lower ?? 0);
  });
  expect(vague).toBeGreaterThan(sure as number);
});

test("a guessed night leaves a shift less sure than a given one, by the fit's slope", () => {
  const { stops } = planTrip(fit, question);
  for (const { air, shift_95_pct } of stops) {
    const slope = fit.groups.find(({ end }) => end === "low")?.slope ?? 0;
    // Whole percents, and never less than it is.
    expect(shift_95_pct.low).toBe(Math.ceil(196 * slope * air.ln_density_sd));
  }
  expect(stops[2]?.shift_95_pct.low).toBeGreaterThan(2 * (stops[1]?.shift_95_pct.low ?? 0));
});

test("the shift of a kept tune is that of its mixture against the mixture expected in the stop's air", () => {
  const { stops, expected } = planTrip(fit, question);
  const kept = tuneKeptFrom(expected, 0);
  for (const [i, { start, air }] of stops.entries()) {
    const fan_rpm = start.low.fan_rpm;
    const now = mixture({ pump_Hz: kept.low.pump_Hz, fan_rpm }, air.density_kg_m3);
    const good = mixture({ pump_Hz: start.low.pump_Hz_exact, fan_rpm }, air.density_kg_m3);
    expect(kept.low.shifts_pct[i]).toBe(wholePercent(mixtureShift(now, good)));
  }
});

/** The shift of the first stop's best pump rate at the second, %, before anything is set. */
function unrounded([first, second]: Expected["low"]): number {
  return mixtureShift(first?.pump_Hz ?? Number.NaN, second?.pump_Hz ?? Number.NaN);
}

test("where pump rate follows density exactly (slope 1) it is the carry-over shift ρA/ρB − 1", () => {
  const groups = fit.groups.map((group) => ({ ...group, slope: 1 }));
  const { stops, expected } = planTrip({ ...fit, groups }, question);
  const [a, b] = [stops[0], stops[1]].map((s) => s?.air.density_kg_m3 ?? 0) as [number, number];
  for (const end of ["low", "high"] as const) {
    expect(unrounded(expected[end])).toBeCloseTo(carryOverShift(a, b), 9);
  }
});

test("a crowd that re-tunes less than physics says shifts less: the fit's own slope is the reference", () => {
  const halved = fit.groups.map((group) => ({ ...group, slope: 0.5 }));
  const { stops, expected } = planTrip({ ...fit, groups: halved }, question);
  const [a, b] = [stops[0], stops[1]].map((s) => s?.air.density_kg_m3 ?? 0) as [number, number];
  expect(unrounded(expected.low)).toBeCloseTo(((a / b) ** 0.5 - 1) * 100, 9);
});

test("one tune within the window exactly when the fewest is one, and then the same tune", () => {
  const far = planTrip(fit, question);
  expect(far.one.edge.standing).toBe("beyond");
  expect(far.legs.length).toBeGreaterThan(1);
  const near = planTrip(fit, { ...question, stops: STOPS.slice(0, 1).concat(STOPS.slice(0, 1)) });
  expect(near.legs).toHaveLength(1);
  expect(near.one.edge.standing).toBe("roomy");
  expect(near.legs[0]?.tune).toEqual(near.one);
});

test("four nights from the coast over two passes: one tune that can be set, and one figure for it everywhere", () => {
  const stops = [
    { name: "Coast", elevation_m: 5, temperature_C: 10 },
    { name: "Village", elevation_m: 1200, temperature_C: -2 },
    { name: "Pass", elevation_m: 3000, temperature_C: -10 },
    { name: "Hut", elevation_m: 2400, temperature_C: -14 },
  ];
  const heater = { heat_kW: 5 };
  const { one, legs, expected } = planTrip(fit, { ...question, heater, stops });
  // Unrounded, a rate 12.0 % rich at the pass would just do; no controller can be set to it, nor to any near it.
  expect(one.edge.standing).not.toBe("beyond");
  expect(legs).toHaveLength(1);
  expect(legs[0]?.tune).toEqual(one);
  for (const end of ["low", "high"] as const) {
    expect(one[end].pump_Hz).toBe(settablePump(one[end].pump_Hz));
    for (const [i, shift] of one[end].shifts_pct.entries()) {
      const reference = expected[end][i]?.pump_Hz ?? Number.NaN;
      expect(shift).toBe(wholePercent(100 * (one[end].pump_Hz / reference - 1)));
      expect(shift).toBeLessThanOrEqual(12);
      expect(shift).toBeGreaterThanOrEqual(-25);
    }
  }
});

test("an empty atlas plans from physics alone", () => {
  const { legs, stops } = planTrip(EMPTY_ATLAS, question);
  expect(legs.length).toBeGreaterThan(1);
  expect(stops.every(({ start }) => start.basis.prior_only)).toBe(true);
});

test("no stop, or numbers that are none, are refused by name", () => {
  expect(() => planTrip(fit, { ...question, stops: [] })).toThrow(/stops/);
  const wrong = { name: "x", elevation_m: Number.NaN };
  expect(() => planTrip(fit, { ...question, stops: [wrong] })).toThrow(/elevation_m/);
  expect(() => planTrip(fit, { ...question, night: { hours: 0, power_share: 0 } })).toThrow(
    /hours/,
  );
  expect(() => planTrip(fit, { ...question, night: { hours: 8, power_share: 2 } })).toThrow(
    /power_share/,
  );
});

test("fuel of a night: litres an hour times hours, at flows computed elsewhere from pump rate and dose", () => {
  const start = planTrip(fit, question).stops[0]?.start as StartTune;
  for (const { L_per_h, Hz, mL_per_pulse } of combustion.doseVolume.derived) {
    const end = { ...start.low, pump_Hz: Hz };
    const { fuel_L } = nightAt(
      { ...start, low: end, high: end },
      { heat_kW: 5, dose_uL: mL_per_pulse * 1000 },
      { hours: 10, power_share: 0.3 },
    );
    expect(fuel_L).toBeCloseTo(10 * L_per_h, 9);
  }
});

test("several nights at a stop take so many times as much, and count in the totals", () => {
  const once = planTrip(fit, question);
  const stops = question.stops.map((stop, i) => (i === 0 ? { ...stop, nights: 3 } : stop));
  const longer = planTrip(fit, { ...question, stops });
  const [first] = once.stops;
  expect(longer.stops[0]?.needs.fuel_L).toBeCloseTo(3 * (first?.needs.fuel_L ?? 0), 9);
  expect(longer.stops[0]?.night).toEqual(first?.needs);
  expect(longer.total.battery_Ah).toBeCloseTo(
    once.total.battery_Ah + 2 * (first?.needs.battery_Ah ?? 0),
    9,
  );
  for (const nights of [0, -1, 1.5, Number.NaN]) {
    const wrong = [{ ...stops[0], nights }] as typeof stops;
    expect(() => planTrip(fit, { ...question, stops: wrong })).toThrow(/nights/);
  }
});

test("charge of a night: its start and the current between its ends, half as much at 24 V", () => {
  const needs = (power_share: number, supply_V?: 24) => {
    const heater = { ...question.heater, supply_V };
    const { stops, total } = planTrip(fit, {
      ...question,
      heater,
      night: { hours: 10, power_share },
    });
    expect(total.battery_Ah).toBeCloseTo(3 * (stops[0]?.night.battery_Ah ?? 0), 9);
    return stops[0]?.night.battery_Ah;
  };
  // 10 A for 4 minutes, then 10 h at 0.6 or 3.5 A.
  expect(needs(0)).toBeCloseTo(40 / 60 + 6, 9);
  expect(needs(1)).toBeCloseTo(40 / 60 + 35, 9);
  expect(needs(1, 24)).toBeCloseTo((40 / 60 + 35) / 2, 9);
});

test("a battery is set against all nights, at the voltage it has; a heater's own step is what its tunes are set in", () => {
  const heater = { heat_kW: 5, dose_uL: 22 };
  const plan = (more: object) => planTrip(fit, { ...question, heater: { ...heater, ...more } });
  const { total, battery } = plan({});
  expect(battery).toBeUndefined();
  expect(plan({ battery_Ah: 2 * total.battery_Ah }).battery).toMatchObject({
    ...{ refills: [], tight: false },
    left: expect.closeTo(total.battery_Ah, 5),
  });
  // The same power at twice the voltage takes half the charge.
  expect(plan({ battery_Ah: total.battery_Ah, supply_V: 24 }).battery?.left).toBeCloseTo(
    total.battery_Ah / 2,
    5,
  );
  expect(plan({ battery_Ah: total.battery_Ah - 1 }).battery?.refills).toHaveLength(1);
  for (const step_Hz of [0.05, 0.2]) {
    const { stops, one, legs } = plan({ step_Hz });
    const rates = [
      ...stops.flatMap(({ start }) => [start.low.pump_Hz, start.high.pump_Hz]),
      ...[one, ...legs.map(({ tune }) => tune)].flatMap(({ low, high }) => [
        low.pump_Hz,
        high.pump_Hz,
      ]),
    ];
    for (const rate of rates) expect(rate / step_Hz).toBeCloseTo(Math.round(rate / step_Hz), 9);
    for (const { start } of stops)
      expect(Math.abs(start.low.pump_Hz - start.low.pump_Hz_exact)).toBeLessThanOrEqual(
        step_Hz / 2 + 1e-9,
      );
  }
});

test("without a dose the class's usual burn counts, less in thin air; the tank is set against all nights", () => {
  const { stops, total, tank } = planTrip(fit, { ...question, heater: { heat_kW: 5 } });
  for (const { fuel_from, night, air } of stops) {
    expect(fuel_from).toBe("class");
    expect(night.fuel_L).toBeCloseTo(10 * usualFlow(5, 0.3) * air.density_ratio, 9);
  }
  expect(total.fuel_L).toBeCloseTo(
    stops.reduce((sum, { needs }) => sum + needs.fuel_L, 0),
    12,
  );
  expect(tank).toBeUndefined();
  const tanked = (tank_L: number) =>
    planTrip(fit, { ...question, heater: { heat_kW: 5, tank_L } }).tank?.refills;
  expect(tanked(total.fuel_L)).toEqual([]);
  const before_L = total.fuel_L - (stops[2]?.needs.fuel_L ?? 0);
  expect(tanked(total.fuel_L - 0.01)).toEqual([
    {
      ...{ stop: 2, night: 1, every: null, tight: false },
      left: expect.closeTo(total.fuel_L - 0.01 - before_L, 5),
    },
  ]);
});
