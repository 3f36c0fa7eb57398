import { USUAL_CLASS_kW } from "../../model/heater.ts";
import { type Night, SUPPLIES_V, type Supply_V, USUAL_NIGHT } from "../../model/trip/nights.ts";
import type { Stop, TripHeater } from "../../model/trip/stop.ts";
import { type MixtureWindow, WORKING_WINDOW } from "../../model/trip/window.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { withMine, withoutMine } from "../app/heater/with-mine.ts";

/** A trip as a person keeps it, SI throughout. */
export interface Trip {
  heater: TripHeater;
  window: MixtureWindow;
  night: Night;
  stops: Stop[];
}

/** Sizes of tanks that are taken, L: what a logbook's heater may have. */
export const TANK_L = [0.1, 1000] as const;
/** The same for the smallest step of its pump rate. */
export const STEP_Hz = [0.01, 0.5] as const;
/** Usable charge of batteries that are taken, Ah. */
export const BATTERY_Ah = [1, 5000] as const;

export const NEW_TRIP: Trip = {
  heater: { heat_kW: USUAL_CLASS_kW },
  window: WORKING_WINDOW,
  night: USUAL_NIGHT,
  stops: [],
};

/** The trip with my heater going along: what is known of it, and its own tunes. */
export function tripFor(trip: Trip, mine: MyHeater | null | undefined): Trip {
  return { ...trip, heater: withMine(trip.heater, mine, mine ? knownOf(mine) : {}) };
}

/** What of it the trip keeps: not what the logbook knows. */
export function keptTrip(next: Trip, before: Trip, mine: MyHeater | null | undefined): Trip {
  const known = mine ? knownOf(mine) : {};
  return { ...next, heater: withoutMine(next.heater, before.heater, mine, known) };
}

/** The trip for its reader, who keeps it: the tunes that came with a link are somebody else's. */
export function withoutOwnTunes({ heater: { own_tunes: _, ...heater }, ...trip }: Trip): Trip {
  return { ...trip, heater };
}

function knownOf({ heater, own_tunes }: MyHeater) {
  const { supply_V, tank_L } = heater;
  const near = supply_V === undefined ? undefined : supplyNear(supply_V);
  return { supply_V: near, tank_L, own_tunes };
}

/** A battery at 13.6 V is a 12 V supply. */
function supplyNear(volts: number): Supply_V {
  return SUPPLIES_V.reduce((near, one) =>
    Math.abs(one - volts) < Math.abs(near - volts) ? one : near,
  );
}

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
