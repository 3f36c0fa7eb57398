import { ELEVATION_RANGE_m, type GivenAir } from "../../model/air.ts";
import type { End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { USUAL_CLASS_kW } from "../../model/heater.ts";
import { type StartSite, type StartTune, startTune } from "../../model/start.ts";
import type { Stop, TripHeater } from "../../model/trip/stop.ts";
import type { Place } from "../../server/contract.ts";

/** What is asked on Start: a site, its air, a heater. */
export interface Question {
  heat_kW: number;
  site: StartSite;
  /** Name of the place, when it was chosen by name. */
  place: string | null;
  lat: number | null;
  lon: number | null;
  /** Whether the position is nobody's business though the place has a name: a trip's names are its owner's. */
  position_stays?: boolean | undefined;
  air: GivenAir;
  low_fan_rpm: number | undefined;
  high_fan_rpm: number | undefined;
  dose_uL: number | undefined;
  /** The smallest steps of its controller; the usual ones where nothing is known of them. */
  step_Hz?: number | undefined;
  step_rpm?: number | undefined;
  /** The end that the map shows; the first one where nothing was chosen. */
  end?: End | undefined;
}

export const FIRST_QUESTION: Question = {
  heat_kW: USUAL_CLASS_kW,
  site: { elevation_m: 1000, elevation_sd_m: 0, elevation_source: "given" },
  place: null,
  lat: null,
  lon: null,
  air: {},
  low_fan_rpm: undefined,
  high_fan_rpm: undefined,
  dose_uL: undefined,
};

/** The start tune for a question, or null while its numbers cannot stand together. */
export function answer(fit: PublishedFit, question: Question): StartTune | null {
  try {
    return startTune(fit, question);
  } catch {
    return null;
  }
}

/** An elevation typed in: a better one for the same place, no doubt about the number. */
export function atElevation(question: Question, elevation_m: number): Question {
  return {
    ...question,
    site: { elevation_m, elevation_sd_m: 0, elevation_source: "given" },
  };
}

/** A place chosen by name, at the elevation it is listed with: that of one point of it. */
export function atPlace(question: Question, place: Place, name: string): Question {
  return {
    ...question,
    site: {
      elevation_m: place.elevation_m as number,
      elevation_sd_m: place.elevation_sd_m ?? 0,
      elevation_source: "known point",
    },
    place: name,
    lat: place.lat,
    lon: place.lon,
    position_stays: undefined,
    ...airElsewhere(question),
  };
}

/** A point on the map or this device's position, at an estimated elevation. */
export function atPoint(question: Question, found: EstimatedPoint): Question {
  const [lowest, highest] = ELEVATION_RANGE_m;
  return {
    ...question,
    site: {
      elevation_m: Math.min(highest, Math.max(lowest, found.elevation_m)),
      elevation_sd_m: found.sd_m,
      elevation_source: found.source as StartSite["elevation_source"],
    },
    place: null,
    lat: found.lat,
    lon: found.lon,
    position_stays: undefined,
    ...airElsewhere(question),
  };
}

/** The question of a stop's night, asked for the heater that goes along. */
export function atStop(question: Question, stop: Stop, heater: TripHeater): Question {
  const { name, elevation_m, elevation_sd_m = 0, temperature_C, lat = null, lon = null } = stop;
  const { heat_kW, low_fan_rpm, high_fan_rpm, dose_uL } = heater;
  return {
    ...{ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL },
    site: {
      elevation_m,
      elevation_sd_m,
      elevation_source: elevation_sd_m > 0 ? "interpolated" : "given",
    },
    place: name,
    lat,
    lon,
    position_stays: true,
    air: {
      ...(question.air.humidity_pct !== undefined && { humidity_pct: question.air.humidity_pct }),
      ...(temperature_C !== undefined && { temperature_C }),
    },
  };
}

/** What of the given air holds at another place: a pressure was read at the old one. */
function airElsewhere({ air }: Question): { air: GivenAir } {
  return { air: withoutPressure(air) };
}

export function withoutPressure({ pressure_hPa: _, qnh_hPa: __, ...rest }: GivenAir): GivenAir {
  return rest;
}

interface EstimatedPoint {
  lat: number;
  lon: number;
  elevation_m: number;
  sd_m: number;
  source: string;
}
