import { z } from "zod";
import { fitByVersion, newestVersions } from "../../db/fits.ts";
import type { End } from "../../model/end.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import { exp } from "../../model/numerics/ln-exp.ts";
import { SAFETY } from "../../model/safety.ts";
import type { Services } from "../context.ts";
import { type FitAnswer, fits, type ListedFit, publishedFit } from "../contract/fit.ts";
import { api, declareRoute, json } from "../declare.ts";
import { ASKED_EACH_TIME, FOR_EVER, unchangedSince } from "../freshness.ts";
import { RequestProblem } from "../problem.ts";

/** Versions that are listed at most. */
const FITS_MOST = 100;

const fitRoute = declareRoute({
  method: "get",
  path: "/fit",
  summary: "The published fit",
  responses: { 200: json(publishedFit) },
});

const fitsRoute = declareRoute({
  method: "get",
  path: "/fits",
  summary: "The newest versions of the fit that are kept, and what each changed",
  responses: { 200: json(fits) },
});

const versionRoute = declareRoute({
  method: "get",
  path: "/fit/{version}",
  summary: "A version of the fit; never changes",
  request: { params: z.object({ version: z.string() }) },
  responses: { 200: json(publishedFit) },
  problems: [404],
});

/** The published fit and its versions. */
export function fitRoutes(services: Services) {
  const app = api();

  app.openapi(fitRoute, async (c) => {
    const fit = await services.fit.current();
    return unchangedSince(c, fit.version, ASKED_EACH_TIME) ?? c.json(withSafety(fit), 200);
  });

  app.openapi(fitsRoute, async (c) => {
    const { version } = await services.fit.current();
    const unchanged = unchangedSince(c, `fits.${version}`);
    if (unchanged) return unchanged;
    // One more than listed, to compare the oldest of them with.
    const found = (await newestVersions(services.db, FITS_MOST + 1)).map(({ fit }) => fit);
    const listed = found.slice(0, FITS_MOST).map((fit, i) => listedFit(fit, found[i + 1]));
    return c.json({ fits: listed }, 200);
  });

  app.openapi(versionRoute, async (c) => {
    const { version } = c.req.valid("param");
    const current = await services.fit.current();
    const fit = version === current.version ? current : await fitByVersion(services.db, version);
    if (!fit)
      throw new RequestProblem(
        404,
        "No fit of that version is kept: of older ones each day's last is, later each week's. GET /api/fit names the newest.",
      );
    // Only the prior may change under its name, with a new release of the code.
    return (
      unchangedSince(c, fit.version, fit.version === "prior" ? undefined : FOR_EVER) ??
      c.json(withSafety(fit), 200)
    );
  });

  return app;
}

function listedFit(fit: PublishedFit, before: PublishedFit | undefined): ListedFit {
  const { version, published_at, code, estimator, groups, alarms } = fit;
  const moves = groups.flatMap((group) => {
    const { heat_kW, end } = group;
    const same = before?.groups.find((g) => g.heat_kW === heat_kW && g.end === end);
    return same
      ? [{ heat_kW, end, change_pct: 100 * (exp(group.intercept - same.intercept) - 1) }]
      : [];
  });
  const by = (move: (typeof moves)[number]) => Math.abs(move.change_pct);
  const tunes = countedIn(fit);
  return {
    ...{ version, published_at, code, estimator, tunes },
    tunes_more: before ? tunes - countedIn(before) : null,
    most_moved: moves.toSorted((p, q) => by(q) - by(p))[0] ?? null,
    alarms: alarms.map((alarm) => alarm.code),
  };
}

/** A tune has two ends, and each may be set aside alone. */
function countedIn({ groups }: PublishedFit): number {
  const at = (end: End) =>
    groups.filter((g) => g.end === end).reduce((sum, { tunes }) => sum + tunes, 0);
  return Math.min(at("low"), at("high"));
}

function withSafety(fit: PublishedFit): FitAnswer {
  return { ...fit, safety: SAFETY };
}
