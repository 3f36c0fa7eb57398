import { z } from "zod";
import { ELEVATION_RANGE_m } from "../model/air.ts";
import type { StartQuestion, StartSite } from "../model/start.ts";
import * as field from "../model/tune.ts";
import type { Services } from "./context.ts";
import { invalid } from "./problem.ts";

const [LOWEST_m, HIGHEST_m] = ELEVATION_RANGE_m;
const between = (name: string, unit: string, min: number, max: number) =>
  z
    .number({ error: `${name} must be a number in ${unit}.` })
    .min(min, `${name} must be at least ${min} ${unit}.`)
    .max(max, `${name} must be at most ${max} ${unit}.`);

/** What is asked of a start tune, as numbers. */
export const questionFields = {
  heat_kW: field.heat_kW,
  elevation_m: between("Elevation", "m", LOWEST_m, HIGHEST_m).optional(),
  lat: field.lat.optional(),
  lon: field.lon.optional(),
  temperature_C: between("Temperature", "°C", -60, 50).optional(),
  pressure_hPa: field.pressure_hPa.optional(),
  qnh_hPa: field.qnh_hPa.optional(),
  humidity_pct: field.humidity_pct.optional(),
  low_fan_rpm: between("Fan speed", "rpm", 500, 8000).optional(),
  high_fan_rpm: between("Fan speed", "rpm", 500, 8000).optional(),
  dose_uL: between("Dose", "µL per pulse", 5, 150).optional(),
};

const question = z.strictObject(questionFields);
type Question = z.infer<typeof question>;

/**
 * The question with its site: an elevation as given, or that of a place.
 * @throws RequestProblem naming the fields that cannot stand together
 */
export async function questionOf(services: Services, query: Question): Promise<StartQuestion> {
  requireConsistent(query);
  const { temperature_C, pressure_hPa, qnh_hPa, humidity_pct, lat, lon, elevation_m, ...rest } =
    query;
  const site = await siteOf(services, query);
  return { ...rest, site, air: { temperature_C, pressure_hPa, qnh_hPa, humidity_pct } };
}

/** What no single field can tell: a place or an elevation, one pressure, ends in order. */
function requireConsistent(query: Question): void {
  const errors: field.FieldError[] = [];
  const bad = (name: string, code: string, message: string) =>
    errors.push({ field: name, code, message });
  const { lat, lon, elevation_m, pressure_hPa, qnh_hPa, low_fan_rpm, high_fan_rpm } = query;
  if ((lat === undefined) !== (lon === undefined)) {
    bad(lat === undefined ? "lat" : "lon", "missing", "Give lat and lon together.");
  } else if (elevation_m === undefined && lat === undefined) {
    bad("elevation_m", "missing", "Give elevation_m, or lat and lon of the place.");
  }
  if (pressure_hPa !== undefined && qnh_hPa !== undefined) {
    bad(
      "qnh_hPa",
      "one_pressure",
      "Give station pressure (pressure_hPa) or sea-level pressure (qnh_hPa), not both.",
    );
  }
  if (low_fan_rpm !== undefined && high_fan_rpm !== undefined && low_fan_rpm >= high_fan_rpm) {
    bad(
      "low_fan_rpm",
      "ends_swapped",
      "The fan speed at lowest power must be below the one at highest power.",
    );
  }
  if (errors.length > 0) throw invalid(errors);
}

async function siteOf(services: Services, query: Question): Promise<StartSite> {
  if (query.elevation_m !== undefined) {
    return { elevation_m: query.elevation_m, elevation_sd_m: 0, elevation_source: "given" };
  }
  const found = await services.gazetteer.elevation(query.lat as number, query.lon as number);
  return {
    elevation_m: Math.min(HIGHEST_m, Math.max(LOWEST_m, found.elevation_m)),
    elevation_sd_m: found.sd_m,
    elevation_source: found.source as StartSite["elevation_source"],
  };
}
