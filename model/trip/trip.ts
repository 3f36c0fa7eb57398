import type { PublishedFit } from "../fit/group.ts";
import { fewestTunes, type Leg } from "./fewest-tunes.ts";
import { type Night, type NightNeeds, nightNeeds } from "./nights.ts";
import { type Expected, type KeptTune, oneTune, oneTuneWithin } from "./one-tune.ts";
import { type Stop, type StopStart, startAt, type TripHeater } from "./stop.ts";
import { type MixtureWindow, requireWindow } from "./window.ts";

/** What a trip is asked for. */
export interface TripQuestion {
  heater: TripHeater;
  /** In the order of the trip. */
  stops: readonly Stop[];
  window: MixtureWindow;
  night: Night;
}

/** A stop's start tune, and what its night takes. */
export interface StopAnswer extends StopStart {
  needs: NightNeeds;
}

/** What comes out of a trip. */
export interface TripAnswer {
  stops: StopAnswer[];
  /** Pump rates the fit expects at the stops, by end: the reference of every shift. */
  expected: Expected;
  /** The one tune whose worst shift is the least. */
  one: KeptTune;
  /** The same among those within the window at every stop; null: no one tune does for the trip. */
  one_within: KeptTune | null;
  /** The fewest tunes within the window, and the stops each serves. */
  legs: Leg[];
  total: NightNeeds;
}

/**
 * Start tunes at the stops of a trip, and how far one tune, or the fewest, go.
 * @throws RangeError when there is no stop, or naming a number that cannot be used
 */
export function planTrip(fit: PublishedFit, question: TripQuestion): TripAnswer {
  const { heater, window, night } = question;
  requireWindow(window);
  if (question.stops.length === 0) throw new RangeError("stops must be at least one.");
  const stops = question.stops.map((stop) => {
    const at = startAt(fit, heater, stop);
    return { ...at, needs: nightNeeds(at.start, heater.dose_uL, night) };
  });
  const expected: Expected = {
    low: stops.map(({ start }) => start.low.pump_Hz_exact),
    high: stops.map(({ start }) => start.high.pump_Hz_exact),
  };
  return {
    stops,
    expected,
    one: oneTune(expected),
    one_within: oneTuneWithin(expected, window),
    legs: fewestTunes(expected, window),
    total: {
      fuel_L: heater.dose_uL === undefined ? null : sum(stops.map((s) => s.needs.fuel_L ?? 0)),
      battery_Ah: sum(stops.map((s) => s.needs.battery_Ah)),
    },
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
