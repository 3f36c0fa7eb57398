import { nightsAt } from "../../model/trip/stop.ts";
import type { TripAnswer } from "../../model/trip/trip.ts";
import { shiftsShown } from "./shown-shift.ts";
import type { Trip } from "./trip.ts";

/** Files of a trip to take along; figures in SI, units in the names. */

const HEAD = [
  "name",
  "elevation_m",
  "temperature_C",
  "lat",
  "lon",
  "nights",
  "temperature_assumed",
  "density_kg_m3",
  ...["low", "high"].flatMap((end) => [
    `${end}_fan_rpm`,
    `${end}_pump_Hz`,
    `${end}_heater_95_from_Hz`,
    `${end}_heater_95_to_Hz`,
    `${end}_one_tune_shift_pct`,
    `${end}_fewest_tunes_shift_pct`,
  ]),
  "tune",
  "fuel_L",
  "battery_Ah",
  "fuel_a_night_L",
  "battery_a_night_Ah",
  "supply_V",
  "nights_a_tank_lasts",
  "fill_before_night",
  "then_every_nights",
];

/** One line a stop by RFC 4180. Its first columns are those a trip can be read from again. */
export function csvOfTrip({ heater }: Trip, answer: TripAnswer): string {
  const one = shiftsShown(answer, "one");
  const fewest = shiftsShown(answer, "fewest");
  const { tank } = answer;
  const refill = (stop: number) => tank?.refills.find((one) => one.stop === stop);
  const rows = answer.stops.map(({ stop, air, start, night, needs }, i) => [
    harmless(stop.name),
    stop.elevation_m,
    rounded(air.temperature_C, 1),
    stop.lat ?? "",
    stop.lon ?? "",
    nightsAt(stop),
    air.assumed.includes("temperature") ? "yes" : "no",
    rounded(air.density_kg_m3, 4),
    ...(["low", "high"] as const).flatMap((end) => [
      start[end].fan_rpm,
      rounded(start[end].pump_Hz_exact, 3),
      rounded(start[end].new_heater_bands_Hz.at(-1)?.lower, 3),
      rounded(start[end].new_heater_bands_Hz.at(-1)?.upper, 3),
      rounded(one[end][i], 1),
      rounded(fewest[end][i], 1),
    ]),
    answer.legs.findIndex(({ last }) => i <= last) + 1,
    rounded(needs.fuel_L, 2),
    rounded(needs.battery_Ah, 1),
    rounded(night.fuel_L, 2),
    rounded(night.battery_Ah, 1),
    heater.supply_V ?? 12,
    tank?.lasts[i] ?? "",
    refill(i)?.night ?? "",
    refill(i)?.every ?? "",
  ]);
  return [HEAD, ...rows].map((row) => `${row.map(quoted).join(",")}\r\n`).join("");
}

/** The trip and what came out of it, complete. */
export function jsonOfTrip(trip: Trip, answer: TripAnswer, fit: string): string {
  const { expected: _, ...told } = answer;
  return `${JSON.stringify({ fit, trip, answer: told }, null, 2)}\n`;
}

/** A name may have come with a link: no spreadsheet must take it for a formula. */
function harmless(name: string): string {
  return /^[=+\-@]/.test(name) ? `'${name}` : name;
}

function quoted(cell: string | number): string {
  const text = String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const rounded = (value: number | undefined, decimals: number): number | "" =>
  value === undefined ? "" : Number(value.toFixed(decimals));
