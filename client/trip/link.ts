import { z } from "zod";
import { SUPPLIES_V } from "../../model/trip/nights.ts";
import type { MyHeater } from "../app/heater/my-heater.ts";
import { linkedHeater, ownTunes } from "../app/link/own-in.ts";
import { packed, unpacked } from "../app/link/packed.ts";
import { type UnitNames, units } from "../app/link/units-in.ts";
import { ownTunesOf, to, unitsText } from "../app/link/write-values.ts";
import { Refused } from "../base/refused.ts";
import {
  elevation_m,
  elevation_sd_m,
  lat,
  lon,
  MOST_STOPS,
  nights,
  temperature_C,
  tidyName,
} from "../base/stop-schema.ts";
import { trip as words } from "../texts/trip.ts";
import type { Unit } from "../units.ts";
import { BATTERY_Ah, NEW_TRIP, STEP_Hz, TANK_L, type Trip } from "./trip.ts";

/**
 * A trip as a link that holds it: "#/trip/1.…", the version of this form, a point, and the trip as a list in JSON,
 * UTF-8 and base64url. What follows the # is never sent to a server.
 */
const FORM = "1";
const LONGEST = 40_000;

const orNull = <T extends z.ZodType>(schema: T) =>
  schema.nullish().transform((v) => v ?? undefined);
const rpm = z.number().min(100).max(20_000);
const tank_L = z.number().min(TANK_L[0]).max(TANK_L[1]);
const step_Hz = z.number().min(STEP_Hz[0]).max(STEP_Hz[1]);
const battery_Ah = z.number().min(BATTERY_Ah[0]).max(BATTERY_Ah[1]);

const heater = fieldsOf([
  z.number().min(0.5).max(50),
  orNull(rpm),
  orNull(rpm),
  orNull(z.number().min(1).max(500)),
  orNull(z.literal(SUPPLIES_V)),
  orNull(tank_L),
  orNull(step_Hz),
  orNull(battery_Ah),
]);
const stop = fieldsOf([
  z.string().transform(tidyName),
  elevation_m,
  orNull(temperature_C),
  orNull(lat),
  orNull(lon),
  orNull(elevation_sd_m),
  orNull(nights),
]);
const form = fieldsOf([
  heater,
  z.tuple([z.number().min(0).max(100), z.number().min(0).max(90)]),
  z.tuple([z.number().min(0.1).max(24), z.number().min(0).max(1)]),
  z.array(stop).max(MOST_STOPS),
  orNull(units),
  orNull(ownTunes),
]);

/** A list of fields; those made before its last ones came are shorter. */
function fieldsOf<T extends [z.ZodType, ...z.ZodType[]]>(fields: T) {
  return z
    .array(z.unknown())
    .max(fields.length)
    .transform((values) => [...values, ...new Array(fields.length - values.length).fill(null)])
    .pipe(z.tuple(fields));
}

/** What a link holds beside the trip, for it to give the same answer elsewhere. */
interface Along {
  /** In which the trip is shown. */
  units: { elevation: Unit; temperature: Unit };
  /** The heater whose own tunes go along. */
  mine: MyHeater | null | undefined;
}

/** The last step of the trip's address; without more, what this browser keeps of it. */
export function textOf({ heater, window, night, stops }: Trip, along?: Along): string {
  const list = shortened([
    shortened([
      heater.heat_kW,
      heater.low_fan_rpm,
      heater.high_fan_rpm,
      heater.dose_uL,
      heater.supply_V,
      heater.tank_L,
      heater.step_Hz,
      heater.battery_Ah,
    ]),
    [window.rich_pct, window.lean_pct],
    [night.hours, night.power_share],
    stops.map((s) =>
      shortened([
        s.name,
        to(s.elevation_m, 2),
        to(s.temperature_C, 2),
        to(s.lat, 5),
        to(s.lon, 5),
        to(s.elevation_sd_m, 1),
        s.nights === 1 ? undefined : s.nights,
      ]),
    ),
    along && unitsText(along.units.elevation, along.units.temperature),
    along?.mine?.own_tunes.length ? ownTunesOf(along.mine) : undefined,
  ]);
  return `${FORM}.${packed(list)}`;
}

/** A trip with what its link holds beside it. */
export interface LinkedTrip {
  trip: Trip;
  units: UnitNames | undefined;
  /** The heater whose own tunes came along; null for the average one with the trip's facts. */
  mine: MyHeater | null;
}

/** @throws Refused in words when the text holds no trip this page can read */
export function tripOf(text: string): LinkedTrip {
  if (text.length > LONGEST) throw new Refused(words.refused.linkLong);
  const [version, payload] = text.split(".", 2);
  if (payload === undefined || !/^\d{1,3}$/.test(version ?? "")) {
    throw new Refused(words.refused.linkNone);
  }
  if (version !== FORM) {
    throw new Refused(words.refused.linkNewer);
  }
  const parsed = form.safeParse(listOf(payload));
  if (!parsed.success) {
    throw new Refused(words.refused.linkFigures);
  }
  const [
    [heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, supply_V, tank, step, battery],
    [rich_pct, lean_pct],
    night,
    stops,
    unitNames,
    own,
  ] = parsed.data;
  const trip: Trip = {
    heater: {
      ...{ heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, supply_V },
      ...{ tank_L: tank, step_Hz: step, battery_Ah: battery },
    },
    window: { rich_pct, lean_pct },
    night: { hours: night[0], power_share: night[1] },
    stops: stops.map(([name, elevation, temperature, latitude, longitude, sd, slept]) => ({
      name,
      elevation_m: elevation,
      temperature_C: temperature,
      lat: latitude,
      lon: longitude,
      elevation_sd_m: sd,
      nights: slept,
    })),
  };
  return { trip, units: unitNames, mine: own ? linkedHeater(trip.heater, own) : null };
}

/** What this browser kept, if it still reads as a trip: storage is no more to be trusted than a link. */
export function tripKept(text: string | undefined): Trip {
  try {
    return text === undefined ? NEW_TRIP : tripOf(text).trip;
  } catch {
    return NEW_TRIP;
  }
}

function listOf(payload: string): unknown {
  try {
    return unpacked(payload);
  } catch {
    throw new Refused(words.refused.linkDamaged);
  }
}

/** Without the empty fields at its end. */
function shortened(values: unknown[]): unknown[] {
  return values.slice(0, 1 + values.findLastIndex((value) => value !== undefined));
}
