import { Hono } from "hono";
import { z } from "zod";
import { ELEVATION_RANGE_m } from "../../model/air.ts";
import { MOST_OWN_ROWS } from "../../model/fit/own-heater.ts";
import { ownStartTune } from "../../model/own-start.ts";
import { type StartQuestion, type StartSite, startTune } from "../../model/start.ts";
import * as field from "../../model/tune.ts";
import { readBody } from "../body.ts";
import type { Services } from "../context.ts";
import { unchangedSince } from "../freshness.ts";
import { invalid } from "../problem.ts";
import { fromTexts, readQuery } from "../query.ts";

const [LOWEST_m, HIGHEST_m] = ELEVATION_RANGE_m;
const between = (name: string, unit: string, min: number, max: number) =>
  z
    .number({ error: `${name} must be a number in ${unit}.` })
    .min(min, `${name} must be at least ${min} ${unit}.`)
    .max(max, `${name} must be at most ${max} ${unit}.`);

/** What is asked of a start tune, as numbers. */
const fields = {
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

/** What GET /api/start understands. */
export const startQuery = z.strictObject(fromTexts(fields));

/** What POST /api/start understands: the same question of a heater that has tunes of its own. */
export const startBody = z.strictObject(
  {
    ...fields,
    own_tunes: z
      .array(field.ownTuneSchema, { error: "own_tunes must be a list of tunes of this heater." })
      .min(1, "Give at least one tune of this heater, or ask GET /api/start.")
      .max(
        MOST_OWN_ROWS,
        `Give at most ${MOST_OWN_ROWS} tunes, the newest or those of the most different air.`,
      )
      .superRefine(refuseRepeated),
  },
  { error: "The question must be an object with heat_kW, elevation_m and own_tunes." },
);
type StartQuery = z.infer<typeof startQuery>;

/** The same tune twice would count as two that agree. */
function refuseRepeated(tunes: readonly field.OwnTune[], context: z.RefinementCtx): void {
  const first = new Map<string, number>();
  for (const [i, { site, air, low, high, tuned_on }] of tunes.entries()) {
    const text = JSON.stringify([site.elevation_m, air?.temperature_C, low, high, tuned_on]);
    const before = first.get(text);
    if (before === undefined) first.set(text, i);
    else
      context.addIssue({
        code: "custom",
        path: [i],
        message: `Own tune ${i + 1} repeats own tune ${before + 1}. Give each once: twice it would count as two that agree.`,
      });
  }
}

/** Answers kept for the published fit: many ask about the same places. */
const ANSWERS_KEPT = 2000;

export function startRoutes(services: Services): Hono {
  let kept = { version: "", answers: new Map<string, string>() };

  const app = new Hono();
  app.get("/start", async (c) => {
    const fit = await services.fit.current();
    if (kept.version !== fit.version) kept = { version: fit.version, answers: new Map() };
    const question = c.req.url.slice(c.req.url.indexOf("?"));
    const { answers } = kept;
    let answer = answers.get(question);
    if (answer === undefined) {
      const asked = await questionOf(services, readQuery(c, startQuery));
      answer = JSON.stringify(startTune(fit, asked));
      if (answers.size >= ANSWERS_KEPT) answers.delete(answers.keys().next().value as string);
      answers.set(question, answer);
    }
    const unchanged = unchangedSince(c, fit.version);
    if (unchanged) return unchanged;
    return c.body(answer, 200, { "Content-Type": "application/json" });
  });
  app.post("/start", async (c) => {
    const { own_tunes, ...query } = await readBody(c, "question", startBody);
    const question = await questionOf(services, query);
    // Own tunes are answered and forgotten: no copy of theirs anywhere, in no cache on the way either.
    c.header("Cache-Control", "no-store");
    return c.json(ownStartTune(await services.fit.current(), question, own_tunes));
  });
  return app;
}

async function questionOf(services: Services, query: StartQuery): Promise<StartQuestion> {
  requireConsistent(query);
  const { temperature_C, pressure_hPa, qnh_hPa, humidity_pct, lat, lon, elevation_m, ...rest } =
    query;
  const site = await siteOf(services, query);
  return { ...rest, site, air: { temperature_C, pressure_hPa, qnh_hPa, humidity_pct } };
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
