import { expect, test } from "vitest";
import { standardTemperature } from "../../../model/air.ts";
import { carryOverShift, mixture, mixtureShift } from "../../../model/mixture.ts";
import { startTune } from "../../../model/start.ts";
import { nightNeeds, USUAL_NIGHT } from "../../../model/trip/nights.ts";
import { tuneKeptFrom } from "../../../model/trip/one-tune.ts";
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
    expect(shift_95_pct.low).toBeCloseTo(196 * slope * air.ln_density_sd, 9);
  }
  expect(stops[2]?.shift_95_pct.low).toBeGreaterThan(2 * (stops[1]?.shift_95_pct.low ?? 0));
});

test("the shift of a kept tune is that of its mixture against the mixture expected in the stop's air", () => {
  const { stops, expected } = planTrip(fit, question);
  const kept = tuneKeptFrom(expected, 0);
  for (const [i, { start, air }] of stops.entries()) {
    const fan_rpm = start.low.fan_rpm;
    const now = mixture({ pump_Hz: kept.low.pump_Hz_exact, fan_rpm }, air.density_kg_m3);
    const good = mixture({ pump_Hz: start.low.pump_Hz_exact, fan_rpm }, air.density_kg_m3);
    expect(kept.low.shifts_pct[i]).toBeCloseTo(mixtureShift(now, good), 9);
  }
});

test("where pump rate follows density exactly (slope 1) it is the carry-over shift ρA/ρB − 1", () => {
  const groups = fit.groups.map((group) => ({ ...group, slope: 1 }));
  const { stops, expected } = planTrip({ ...fit, groups }, question);
  const [a, b] = [stops[0], stops[1]].map((s) => s?.air.density_kg_m3 ?? 0) as [number, number];
  for (const end of ["low", "high"] as const) {
    expect(tuneKeptFrom(expected, 0)[end].shifts_pct[1]).toBeCloseTo(carryOverShift(a, b), 9);
  }
});

test("a crowd that re-tunes less than physics says shifts less: the fit's own slope is the reference", () => {
  const halved = fit.groups.map((group) => ({ ...group, slope: 0.5 }));
  const { stops, expected } = planTrip({ ...fit, groups: halved }, question);
  const [a, b] = [stops[0], stops[1]].map((s) => s?.air.density_kg_m3 ?? 0) as [number, number];
  const shift = tuneKeptFrom(expected, 0).low.shifts_pct[1];
  expect(shift).toBeCloseTo(((a / b) ** 0.5 - 1) * 100, 9);
});

test("one tune within the window exactly when the fewest is one, and then the same tune", () => {
  const far = planTrip(fit, question);
  expect(far.one_within).toBeNull();
  expect(far.legs.length).toBeGreaterThan(1);
  const near = planTrip(fit, { ...question, stops: STOPS.slice(0, 1).concat(STOPS.slice(0, 1)) });
  expect(near.legs).toHaveLength(1);
  expect(near.legs[0]?.tune).toEqual(near.one_within);
  expect(near.one_within).toEqual(near.one);
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
  for (const { L_per_h, Hz, mL_per_pulse } of combustion.doseVolume.derived) {
    const end = { pump_Hz_exact: Hz, fan_rpm: 3000 } as never;
    const needs = nightNeeds({ low: end, high: end }, mL_per_pulse * 1000, {
      hours: 10,
      power_share: 0.3,
    });
    expect(needs.fuel_L).toBeCloseTo(10 * L_per_h, 9);
  }
});

test("several nights at a stop take so many times as much, and count in the totals", () => {
  const once = planTrip(fit, question);
  const stops = question.stops.map((stop, i) => (i === 0 ? { ...stop, nights: 3 } : stop));
  const longer = planTrip(fit, { ...question, stops });
  const [first] = once.stops;
  expect(longer.stops[0]?.needs.fuel_L).toBeCloseTo(3 * (first?.needs.fuel_L ?? 0), 9);
  expect(longer.total.battery_Ah).toBeCloseTo(
    once.total.battery_Ah + 2 * (first?.needs.battery_Ah ?? 0),
    9,
  );
  for (const nights of [0, -1, 1.5, Number.NaN]) {
    const wrong = [{ ...stops[0], nights }] as typeof stops;
    expect(() => planTrip(fit, { ...question, stops: wrong })).toThrow(/nights/);
  }
});

test("charge of a night: run current between its ends, times hours; no dose, no litres", () => {
  const { stops, total } = planTrip(fit, { ...question, heater: { heat_kW: 5 } });
  const needs = (power_share: number) =>
    nightNeeds((stops[0] as never as { start: never }).start, undefined, {
      hours: 10,
      power_share,
    });
  expect(needs(0)).toEqual({ fuel_L: null, battery_Ah: 6 });
  expect(needs(1).battery_Ah).toBeCloseTo(35, 9);
  expect(total.fuel_L).toBeNull();
  const known = planTrip(fit, question);
  expect(known.total.fuel_L).toBeCloseTo(
    known.stops.reduce((sum, { needs: n }) => sum + (n.fuel_L ?? 0), 0),
    12,
  );
});
