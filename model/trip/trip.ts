import type { End } from "../end.ts";
import type { PublishedFit } from "../fit/group.ts";
import { percentOutwards } from "../rounding.ts";
import { groupOf } from "../start.ts";
import type { Supply } from "../supply.ts";
import { fewestTunes, type Leg } from "./fewest-tunes.ts";
import { type Night, type NightNeeds, needsOf, nightAt } from "./nights.ts";
import { type Expected, type KeptTune, oneTune } from "./one-tune.ts";
import { nightsAt, type Stop, type StopStart, startAt, type TripHeater } from "./stop.ts";
import { type StorePlan, storePlan } from "./stores.ts";
import { type MixtureWindow, requireWindow } from "./window.ts";

/** Half-width of a normal distribution's middle 95 in 100, in standard deviations. */
const WITHIN_95 = 1.96;

/** What a trip is asked for. */
export interface TripQuestion {
  heater: TripHeater;
  /** In the order of the trip. */
  stops: readonly Stop[];
  window: MixtureWindow;
  night: Night;
}

/** A stop's start tune, and what a night there takes, and all its nights. */
export interface StopAnswer extends StopStart {
  fuel_from: Supply["fuel_from"];
  night: NightNeeds;
  needs: NightNeeds;
  /** How far a shift here may be off, 95 in 100, by what is not known of the night's air and the elevation, whole %, by end. */
  shift_95_pct: Record<End, number>;
}

/** What comes out of a trip. */
export interface TripAnswer {
  stops: StopAnswer[];
  /** What the fit expects at the stops, by end: the reference of every shift. */
  expected: Expected;
  /** The one tune for all stops; where its edge is beyond the window, no one tune does for the trip. */
  one: KeptTune;
  /** The fewest tunes within the window, and the stops each serves. */
  legs: Leg[];
  total: NightNeeds;
  /** Missing where the tank's size is not given. */
  tank?: StorePlan;
  /** Missing where the battery's size is not given. */
  battery?: StorePlan;
}

/**
 * Start tunes at the stops of a trip, and how far one tune, or the fewest, go.
 * @throws RangeError when there is no stop, or naming a number that cannot be used
 */
export function planTrip(fit: PublishedFit, question: TripQuestion): TripAnswer {
  const { heater, window, night } = question;
  const { supply_V = 12, tank_L, battery_Ah, step_Hz } = heater;
  requireWindow(window);
  if (question.stops.length === 0) throw new RangeError("stops must be at least one.");
  const stops = question.stops.map((stop) => {
    const at = startAt(fit, heater, stop);
    const supply = nightAt(at.start, heater, night);
    const off = (end: End) =>
      percentOutwards(
        100 * WITHIN_95 * groupOf(fit, heater.heat_kW, end).slope * at.air.ln_density_sd,
      );
    return {
      ...at,
      fuel_from: supply.fuel_from,
      night: needsOf(supply, supply_V, 1),
      needs: needsOf(supply, supply_V, nightsAt(stop)),
      shift_95_pct: { low: off("low"), high: off("high") },
    };
  });
  const at = (end: End) =>
    stops.map(({ start, shift_95_pct }) => ({
      pump_Hz: start[end].pump_Hz_exact,
      unsure_pct: shift_95_pct[end],
    }));
  const expected: Expected = { low: at("low"), high: at("high") };
  const along = (what: keyof NightNeeds) =>
    stops.map(({ stop, night }) => ({ nights: nightsAt(stop), a_night: night[what] }));
  return {
    stops,
    expected,
    one: oneTune(expected, window, step_Hz),
    legs: fewestTunes(expected, window, step_Hz),
    total: {
      fuel_L: sum(stops.map(({ needs }) => needs.fuel_L)),
      battery_Ah: sum(stops.map(({ needs }) => needs.battery_Ah)),
    },
    ...(tank_L !== undefined && { tank: storePlan(tank_L, along("fuel_L")) }),
    ...(battery_Ah !== undefined && { battery: storePlan(battery_Ah, along("battery_Ah")) }),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
