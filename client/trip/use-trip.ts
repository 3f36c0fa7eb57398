import { useState } from "preact/hooks";
import type { MyHeater } from "../app/heater/my-heater.ts";
import type { UnitNames } from "../app/link/units-in.ts";
import type { Question } from "../base/question.ts";
import { Refused } from "../base/refused.ts";
import { recall, remember } from "../base/remember.ts";
import { trip as words } from "../texts/trip.ts";
import { useAddressChange } from "../ui/address-change.ts";
import { textOf, tripKept, tripOf } from "./link.ts";
import { NEW_TRIP, type Trip } from "./trip.ts";

export interface TripState {
  trip: Trip;
  /** Where it came from: kept here, or the link just opened. */
  from: "kept" | "link";
  /** The heater whose own tunes the link brought; null for the average one. */
  mine: MyHeater | null;
  /** Units that the link is shown in: they are not remembered. */
  units: UnitNames | undefined;
  /** Why a link was not taken. */
  refused: string | null;
  /** Whether the browser keeps it. */
  isKept: boolean;
}

const LINK = "#/trip/";

/** The trip in the address, else the one kept; whatever is changed is kept. */
export function useTrip(): [TripState, (trip: Trip) => void, (units: UnitNames) => void] {
  const [state, setState] = useState(opened);
  useAddressChange(() => {
    if (/^#\/?trip(\/|$)/.test(location.hash)) setState(opened());
  });
  const change = (trip: Trip) => {
    const isKept = remember("trip", textOf(trip));
    setState({ ...state, trip, from: "kept", mine: null, refused: null, isKept });
    // The address must not go on saying what is no longer so.
    if (location.hash !== "#/trip") history.replaceState(null, "", "#/trip");
  };
  return [state, change, (units) => setState({ ...state, units })];
}

function opened(): TripState {
  const kept = recall<string>("trip");
  const mine = (refused: string | null): TripState => ({
    trip: kept === undefined ? newTrip() : tripKept(kept),
    from: "kept",
    mine: null,
    units: undefined,
    refused,
    isKept: kept !== undefined,
  });
  const { hash } = location;
  if (!hash.startsWith(LINK) || hash.length === LINK.length) return mine(null);
  try {
    const linked = tripOf(hash.slice(LINK.length));
    return { ...linked, from: "link", refused: null, isKept: kept !== undefined };
  } catch (error) {
    return mine(error instanceof Refused ? error.message : words.refused.linkDamaged);
  }
}

/** A trip not begun, with the heater that Start was last asked about. */
function newTrip(): Trip {
  const { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL } =
    recall<Partial<Question>>("question") ?? {};
  if (heat_kW === undefined) return NEW_TRIP;
  return tripKept(textOf({ ...NEW_TRIP, heater: { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL } }));
}

/** The address that holds a trip, by its text. */
export function linkTo(text: string): string {
  return `${location.origin}${location.pathname}${LINK}${text}`;
}
