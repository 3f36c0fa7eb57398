import type { Question } from "../../base/question.ts";
import type { Unit } from "../../units.ts";
import type { MyHeater } from "../heater/my-heater.ts";
import { packed } from "./packed.ts";
import { ownTunesOf, to, unitsText, writeValues } from "./write-values.ts";

/** A position without a name may be the device's, and a trip's is its owner's: they are in no address. */
export function questionText(
  question: Question,
  mine: MyHeater | null | undefined,
  shown: { elevation: Unit; temperature: Unit },
  withOwnTunes: boolean,
): string {
  const { site, air, place, lat, lon, heat_kW, low_fan_rpm, high_fan_rpm, dose_uL, end } = question;
  const isKnown = site.elevation_source !== "given";
  const tunes = withOwnTunes ? (mine?.own_tunes ?? []) : [];
  return writeValues({
    place: place ?? undefined,
    ...(place !== null &&
      !question.position_stays && { lat: to(lat ?? undefined, 5), lon: to(lon ?? undefined, 5) }),
    elevation_m: to(site.elevation_m, 2),
    elevation_sd_m: site.elevation_sd_m > 0 ? to(site.elevation_sd_m, 1) : undefined,
    elevation_source: isKnown ? site.elevation_source : undefined,
    temperature_C: to(air.temperature_C, 2),
    pressure_hPa: to(air.pressure_hPa, 2),
    qnh_hPa: to(air.qnh_hPa, 2),
    humidity_pct: to(air.humidity_pct, 2),
    heat_kW,
    low_fan_rpm: to(low_fan_rpm, 2),
    high_fan_rpm: to(high_fan_rpm, 2),
    dose_uL: to(dose_uL, 3),
    step_Hz: mine?.heater.step_Hz,
    step_rpm: mine?.heater.step_rpm,
    end,
    units: unitsText(shown.elevation, shown.temperature),
    own: mine && tunes.length > 0 ? packed(ownTunesOf(mine)) : undefined,
  });
}
