import { type Air, standardTemperature } from "../air.ts";
import type { PublishedFit } from "../fit/group.ts";
import { startForHeater } from "../own-start.ts";
import type { StartQuestion, StartTune } from "../start.ts";
import type { OwnTune } from "../tune.ts";
import type { Supply_V } from "./nights.ts";

/** A place to sleep at, in the order of the trip. */
export interface Stop {
  name: string;
  elevation_m: number;
  /** Standard deviation of an elevation that was worked out from a position; none when given. */
  elevation_sd_m?: number | undefined;
  /** Of the night; the standard atmosphere's is taken, and said so, when not given. */
  temperature_C?: number | undefined;
  /** How many nights are slept there, a whole number; one when not given. */
  nights?: number | undefined;
  lat?: number | undefined;
  lon?: number | undefined;
}

/** The nights slept at a stop. */
export function nightsAt({ nights = 1 }: Stop): number {
  if (!Number.isInteger(nights) || nights < 1) {
    throw new RangeError(`nights must be a whole number from 1, not ${nights}.`);
  }
  return nights;
}

/** The heater that goes along: usual fan speeds of its class and 12 V unless given. */
export interface TripHeater {
  heat_kW: number;
  low_fan_rpm?: number | undefined;
  high_fan_rpm?: number | undefined;
  dose_uL?: number | undefined;
  supply_V?: Supply_V | undefined;
  tank_L?: number | undefined;
  /** What its battery gives before it must be charged, at the voltage it is fed with. */
  battery_Ah?: number | undefined;
  /** The smallest step of its pump rate; the usual one when not given. */
  step_Hz?: number | undefined;
  /** Tunes found on it with a meter. */
  own_tunes?: readonly OwnTune[] | undefined;
}

/** A stop with the air of its night and the tune to begin from there. */
export interface StopStart {
  stop: Stop;
  air: Air;
  start: StartTune;
}

/**
 * The start tune at a stop.
 * @throws RangeError naming the field when a number cannot be used
 */
export function startAt(fit: PublishedFit, heater: TripHeater, stop: Stop): StopStart {
  const { elevation_m, elevation_sd_m = 0, temperature_C } = stop;
  const { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz, own_tunes } = heater;
  const question: StartQuestion = {
    ...{ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, step_Hz },
    site: {
      elevation_m,
      elevation_sd_m,
      elevation_source: elevation_sd_m > 0 ? "interpolated" : "given",
    },
    air: temperature_C === undefined ? {} : { temperature_C },
  };
  const start = startForHeater(fit, question, own_tunes);
  return { stop, air: start.air, start };
}

/** What a night is taken to be when nobody says: the standard atmosphere's temperature there, °C. */
export function guessedTemperature(elevation_m: number): number {
  return standardTemperature(elevation_m);
}
