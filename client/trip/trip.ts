import { USUAL_CLASS_kW } from "../../model/heater.ts";
import { type Night, USUAL_NIGHT } from "../../model/trip/nights.ts";
import type { Stop, TripHeater } from "../../model/trip/stop.ts";
import { type MixtureWindow, WORKING_WINDOW } from "../../model/trip/window.ts";

/** A trip as a person keeps it, SI throughout. */
export interface Trip {
  heater: TripHeater;
  window: MixtureWindow;
  night: Night;
  stops: Stop[];
}

/** Sizes of tanks that are taken, L: what a logbook's heater may have. */
export const TANK_L = [0.1, 1000] as const;

export const NEW_TRIP: Trip = {
  heater: { heat_kW: USUAL_CLASS_kW },
  window: WORKING_WINDOW,
  night: USUAL_NIGHT,
  stops: [],
};

/** The trip with one stop exchanged for the one before or after it. */
export function moved(trip: Trip, from: number, to: number): Trip {
  const stops = [...trip.stops];
  const [stop] = stops.splice(from, 1);
  if (stop) stops.splice(to, 0, stop);
  return { ...trip, stops };
}

export function changed(trip: Trip, at: number, part: Partial<Stop>): Trip {
  return { ...trip, stops: trip.stops.map((stop, i) => (i === at ? { ...stop, ...part } : stop)) };
}

export function without(trip: Trip, at: number): Trip {
  return { ...trip, stops: trip.stops.filter((_, i) => i !== at) };
}
