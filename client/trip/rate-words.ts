import { formatRate } from "../units.ts";
import type { Trip } from "./trip.ts";

/** A pump rate along a trip, in the steps of the heater that goes along, Hz. */
export function rateInWords(pump_Hz: number, { heater }: Pick<Trip, "heater">): string {
  return formatRate(pump_Hz, heater.step_Hz);
}
