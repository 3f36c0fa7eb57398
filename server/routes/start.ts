import { Hono } from "hono";
import { z } from "zod";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { type StartSite, type StartTune, startTune } from "../../model/start.ts";
import * as field from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { unchangedSince } from "../freshness.ts";
import { invalid } from "../problem.ts";
import { fromText, readQuery } from "../query.ts";

const [LOWEST_m, HIGHEST_m] = ELEVATION_RANGE_m;
const between = (name: string, unit: string, min: number, max: number) =>
  z
    .number({ error: `${name} must be a number in ${unit}.` })
    .min(min, `${name} must be at least ${min} ${unit}.`)
    .max(max, `${name} must be at most ${max} ${unit}.`);

/** What GET /api/start understands. */
export const startQuery = z.strictObject({
  heat_kW: fromText(field.heat_kW),
  elevation_m: fromText(between("Elevation", "m", LOWEST_m, HIGHEST_m).optional()),
  lat: fromText(field.lat.optional()),
  lon: fromText(field.lon.optional()),
  temperature_C: fromText(between("Temperature", "°C", -60, 50).optional()),
  pressure_hPa: fromText(field.pressure_hPa.optional()),
  qnh_hPa: fromText(field.qnh_hPa.optional()),
  humidity_pct: fromText(field.humidity_pct.optional()),
  low_fan_rpm: fromText(between("Fan speed", "rpm", 500, 8000).optional()),
  high_fan_rpm: fromText(between("Fan speed", "rpm", 500, 8000).optional()),
  dose_uL: fromText(between("Dose", "µL per pulse", 5, 150).optional()),
});
type StartQuery = z.infer<typeof startQuery>;

/** Answers kept for the published fit: many ask about the same places. */
const ANSWERS_KEPT = 2000;

export function startRoutes(services: Services): Hono {
  let kept = { version: "", answers: new Map<string, string>() };

  return new Hono().get("/start", async (c) => {
    const fit = await services.fit.current();
    if (kept.version !== fit.version) kept = { version: fit.version, answers: new Map() };
    const question = c.req.url.slice(c.req.url.indexOf("?"));
    const { answers } = kept;
    let answer = answers.get(question);
    if (answer === undefined) {
      answer = JSON.stringify(await answerTo(services, fit, readQuery(c, startQuery)));
      if (answers.size >= ANSWERS_KEPT) answers.delete(answers.keys().next().value as string);
      answers.set(question, answer);
    }
    const unchanged = unchangedSince(c, fit.version);
    if (unchanged) return unchanged;
    return c.body(answer, 200, { "Content-Type": "application/json" });
  });
}

async function answerTo(
  services: Services,
  fit: PublishedFit,
  query: StartQuery,
): Promise<StartTune> {
  requireConsistent(query);
  const { temperature_C, pressure_hPa, qnh_hPa, humidity_pct, lat, lon, elevation_m, ...rest } =
    query;
  const site = await siteOf(services, query);
  return startTune(fit, {
    ...rest,
    site,
    air: { temperature_C, pressure_hPa, qnh_hPa, humidity_pct },
  });
}

/** What no single field can tell: a place or an elevation, one pressure, ends in order. */
function requireConsistent(query: StartQuery): void {
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
    bad("low_fan_rpm", "ends_swapped", "The low end's fan speed must be below the high end's.");
  }
  if (errors.length > 0) throw invalid(errors);
}

async function siteOf(services: Services, query: StartQuery): Promise<StartSite> {
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
