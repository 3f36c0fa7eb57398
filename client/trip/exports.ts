import { ENDS } from "../../model/end.ts";
import { toStep } from "../../model/rounding.ts";
import { nightsAt } from "../../model/trip/stop.ts";
import type { StorePlan } from "../../model/trip/stores.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { caution, csvWithCaution } from "../base/csv.ts";
import { trip as words } from "../texts/trip.ts";
import { planShown, standingAt } from "./shown-plan.ts";
import type { Trip } from "./trip.ts";

/** Files of a trip to take along; figures in SI, units in the names. */

/** The tunes whose rates and shifts a file holds, by the prefix of their columns. */
const TUNES = [
  ["one", "one_tune"],
  ["fewest", "fewest_tunes"],
] as const;

const HEAD = [
  "name",
  "elevation_m",
  "temperature_C",
  "lat",
  "lon",
  "nights",
  "temperature_assumed",
  "density_kg_m3",
  ...ENDS.flatMap((end) => [
    `${end}_fan_rpm`,
    `${end}_pump_Hz`,
    `${end}_pump_Hz_exact`,
    `${end}_heater_95_from_Hz`,
    `${end}_heater_95_to_Hz`,
    ...TUNES.flatMap(([, name]) => [`${end}_${name}_pump_Hz`, `${end}_${name}_shift_pct`]),
    `${end}_shift_unsure_pct`,
  ]),
  ...TUNES.map(([, name]) => `${name}_in_window`),
  "tune",
  "fuel_L",
  "battery_Ah",
  "fuel_a_night_L",
  "battery_a_night_Ah",
  "supply_V",
  "nights_a_tank_lasts",
  "fill_before_night",
  "then_every_nights",
  "left_before_filling_L",
  "nights_a_battery_lasts",
  "charge_before_night",
  "then_charge_every_nights",
  "left_before_charging_Ah",
];

const IN_WINDOW = { roomy: "yes", tight: "tight", beyond: "no" } as const;

/** One line a stop. Its first columns are those a trip can be read from again; rates and shifts are those on screen. */
export function csvOfTrip(trip: Trip, answer: TripAnswer): string {
  const { heater, window } = trip;
  const plans = {
    one: planShown(answer, "one", trip),
    fewest: planShown(answer, "fewest", trip),
  };
  const rows = answer.stops.map(({ stop, air, start, night, needs, shift_95_pct }, i) => {
    const leg = answer.legs.findIndex(({ last }) => i <= last);
    return [
      stop.name,
      stop.elevation_m,
      toStep(air.temperature_C, 0.1),
      stop.lat ?? "",
      stop.lon ?? "",
      nightsAt(stop),
      air.assumed.includes("temperature") ? "yes" : "no",
      toStep(air.density_kg_m3, 0.0001),
      ...ENDS.flatMap((end) => {
        const band = start[end].new_heater_bands_Hz.at(-1);
        return [
          start[end].fan_rpm,
          start[end].pump_Hz,
          toStep(start[end].pump_Hz_exact, 0.001),
          band ? toStep(band.lower, 0.001) : "",
          band ? toStep(band.upper, 0.001) : "",
          ...TUNES.flatMap(([shown]) => [
            plans[shown].rates_Hz[end][i] ?? "",
            plans[shown].shifts[end][i] ?? "",
          ]),
          shift_95_pct[end],
        ];
      }),
      ...TUNES.map(([shown]) => IN_WINDOW[standingAt(answer, plans[shown].shifts, i, window)]),
      leg + 1,
      toStep(needs.fuel_L, 0.01),
      toStep(needs.battery_Ah, 0.1),
      toStep(night.fuel_L, 0.01),
      toStep(night.battery_Ah, 0.1),
      heater.supply_V ?? 12,
      ...filledUp(answer.tank, i),
      ...filledUp(answer.battery, i),
    ];
  });
  return csvWithCaution(HEAD, rows);
}

/** How long a tank or a battery lasts at a stop, and where it is filled up there. */
function filledUp(plan: StorePlan | undefined, stop: number) {
  const refill = plan?.refills.find((one) => one.stop === stop);
  return [
    plan?.lasts[stop] ?? "",
    refill?.night ?? "",
    refill?.every ?? "",
    refill ? toStep(refill.left, 0.01) : "",
  ];
}

/** The trip and what came out of it, complete. */
export function jsonOfTrip(trip: Trip, answer: TripAnswer, fit: string): string {
  const { expected: _, ...told } = answer;
  const cautions = [caution(), ...words.cautions.lines];
  return `${JSON.stringify({ cautions, fit, trip, answer: told }, null, 2)}\n`;
}
