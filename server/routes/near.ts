import { greatCircleDistance, gridDisk } from "h3-js";
import { z } from "zod";
import { dataRevision } from "../../db/decisions.ts";
import { tunesAbout } from "../../db/shown-tunes.ts";
import { airAt } from "../../model/air.ts";
import { ENDS, type End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { asideOf, residualOf } from "../../model/fit/standing.ts";
import { exp, ln } from "../../model/numerics/ln-exp.ts";
import { SAFETY } from "../../model/safety.ts";
import { groupOf } from "../../model/start.ts";
import { centre, coarsePosition, shownCellOf, shownPlaceOf } from "../cells.ts";
import type { Services } from "../context.ts";
import { fromTexts } from "../contract/from-text.ts";
import { type NearTune, near } from "../contract/near.ts";
import { api, declareRoute, json } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { stateOf } from "../prepared.ts";
import { questionFields, questionOf } from "../question.ts";

const { low_fan_rpm: _, high_fan_rpm: __, dose_uL: ___, ...siteAndAir } = questionFields;

const nearRoute = declareRoute({
  method: "get",
  path: "/tunes/near",
  summary:
    "Accepted tunes of a size, nearest in air first; where lat and lon are given, place orders those in like air",
  request: { query: z.strictObject(fromTexts(siteAndAir)) },
  responses: { 200: json(near) },
  problems: [404, 422, 503],
});

const TUNES_MOST = 10;
/** Looked at to either side of the air, and about the place, to find the nearest among. */
const LOOKED_AT = 60;

/** Tunes whose densities differ by less than this, as a difference of ln(density), are in like air: our own working value. */
const LIKE_AIR = 0.03;
/** At this distance place counts half of all that it may, km: our own working value. */
const HALFWAY_km = 300;

type Candidate = Awaited<ReturnType<typeof tunesAbout>>[number];

/**
 * The accepted tunes nearest in air, and in place where one is asked about. With densities ρ in kg/m³ and x km between places
 * a tune is |ln(ρ_tune/ρ_asked)| + {@link LIKE_AIR} · x/(x + {@link HALFWAY_km}) away, a number without a unit: however far, place
 * weighs no more than air that differs by 3 %, so that it orders only tunes in like air. A tune without a place may be anywhere and
 * counts as farthest; without a place in the question air alone counts.
 */
export function nearRoutes(services: Services) {
  const { db, demo, prepared } = services;
  return api().openapi(nearRoute, async (c) => {
    const query = c.req.valid("query");
    const { heat_kW, site, air: given } = await questionOf(services, query);
    const fit = await services.fit.current();
    const shown = await prepared.shownSoon();
    const state = stateOf(fit, await dataRevision(db));
    const unchanged = unchangedSince(c, shown ? state : `${state}.without-cells`);
    if (unchanged) return unchanged;
    const { density_kg_m3 } = airAt(site.elevation_m, given, site.elevation_sd_m);
    const here =
      query.lat === undefined || query.lon === undefined
        ? null
        : coarsePosition(query.lat, query.lon);
    const places = here ? gridDisk(here.place, 1) : [];
    const found = await tunesAbout(db, { heat_kW, density_kg_m3, places }, LOOKED_AT);
    const away = (tune: Candidate) => {
      const inAir = Math.abs(ln(tune.density_kg_m3 / density_kg_m3));
      if (!here) return inAir;
      // Measured to where it is shown: to where it is, the order would tell more of its place than the open data.
      const place = shownPlaceOf(tune);
      const x = place ? kmBetween(here, centre(place)) : Number.MAX_VALUE;
      return inAir + LIKE_AIR * (x / (x + HALFWAY_km));
    };
    const tunes = [...new Map(found.map((tune) => [tune.id, tune])).values()]
      .filter((tune) => ENDS.every((end) => counts(fit, tune, end)))
      .map((tune) => ({ tune, away: away(tune) }))
      .sort((p, q) => p.away - q.away || (p.tune.id < q.tune.id ? -1 : 1))
      .slice(0, TUNES_MOST)
      .map(({ tune }) => nearTune(fit, tune, shown));
    const answer = { heat_kW, density_kg_m3, fit: fit.version, tunes, demo, safety: SAFETY };
    return c.json(answer, 200);
  });
}

const kmBetween = (p: { lat: number; lon: number }, q: { lat: number; lon: number }) =>
  greatCircleDistance([p.lat, p.lon], [q.lat, q.lon], "km");

function rowOf(tune: Candidate, end: End) {
  const { id, heat_kW, density_kg_m3, dose_uL } = tune;
  const { pump_Hz, fan_rpm } = tune[end];
  const heater = { heat_kW, dose_uL: dose_uL ?? undefined };
  return { row: id, contributor: "", end, density_kg_m3, pump_Hz, fan_rpm, ...heater };
}

/** What the published fit sets aside is no example to follow. */
function counts(fit: PublishedFit, tune: Candidate, end: End): boolean {
  return asideOf(groupOf(fit, tune.heat_kW, end), rowOf(tune, end)) === null;
}

function nearTune(
  fit: PublishedFit,
  tune: Candidate,
  shown: ReadonlyMap<string, string> | null,
): NearTune {
  const against = (end: End) =>
    100 * (exp(residualOf(groupOf(fit, tune.heat_kW, end), rowOf(tune, end)).residual) - 1);
  const { several_places: _, dose_uL: __, ...rest } = tune;
  return {
    ...rest,
    // For a moment after a start of very many tunes, or after a withdrawal, it is not known how finely.
    cell: shown && shownCellOf(tune, shown),
    against_average_pct: { low: against("low"), high: against("high") },
  };
}
