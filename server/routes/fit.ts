import { Hono } from "hono";
import { z } from "zod";
import { fitByVersion, newestVersions } from "../../db/fits.ts";
import {
  countOfClass,
  dataRevision,
  fitRows,
  type PointRow,
  shownElevation,
  tunesOfClass,
} from "../../db/tunes.ts";
import type { End } from "../../model/end.ts";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { asideOf, asideSentence } from "../../model/fit/standing.ts";
import { exp } from "../../model/numerics/ln-exp.ts";
import { SAFETY } from "../../model/safety.ts";
import { scalingCurve } from "../../model/scaling-curve.ts";
import { groupOf } from "../../model/start.ts";
import { heat_kW } from "../../model/tune.ts";
import { farOff, HELD_AT_THE_DOOR } from "../aside-reason.ts";
import type { Services } from "../context.ts";
import type { FitAnswer, FitsAnswer, ListedFit, ScalingAnswer, ScalingPoint } from "../contract.ts";
import { ASKED_EACH_TIME, FOR_EVER, unchangedSince } from "../freshness.ts";
import { stateOf } from "../prepared.ts";
import { RequestProblem } from "../problem.ts";
import { fromText, readQuery } from "../query.ts";

/** Versions that are listed at most. */
const FITS_MOST = 100;

/** Points a chart gets at most. */
const POINTS_MOST = 2000;

export const scalingQuery = z.strictObject({
  heat_kW: fromText(heat_kW),
  end: z.enum(["low", "high"], { error: 'End must be "low" or "high".' }),
});

/** The published fit, its versions, and how settings scale with the air. */
export function fitRoutes(services: Services): Hono {
  const app = new Hono();

  app.get("/fit", async (c) => {
    const fit = await services.fit.current();
    return unchangedSince(c, fit.version, ASKED_EACH_TIME) ?? c.json(withSafety(fit));
  });

  app.get("/fits", async (c) => {
    const { version } = await services.fit.current();
    const unchanged = unchangedSince(c, `fits.${version}`);
    if (unchanged) return unchanged;
    // One more than listed, to compare the oldest of them with.
    const found = (await newestVersions(services.db, FITS_MOST + 1)).map(({ fit }) => fit);
    const listed = found.slice(0, FITS_MOST).map((fit, i) => listedFit(fit, found[i + 1]));
    return c.json({ fits: listed } satisfies FitsAnswer);
  });

  app.get("/fit/:version", async (c) => {
    const version = c.req.param("version");
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
      c.json(withSafety(fit))
    );
  });

  app.get("/scaling", async (c) => {
    const query = readQuery(c, scalingQuery);
    const fit = await services.fit.current();
    const state = stateOf(fit, await dataRevision(services.db));
    const unchanged = unchangedSince(c, state);
    if (unchanged) return unchanged;
    c.header("Content-Type", "application/json");
    return c.body(
      await services.prepared.answers.get(state, JSON.stringify(query), () => scaling(fit, query)),
    );
  });

  async function scaling(fit: PublishedFit, query: z.output<typeof scalingQuery>): Promise<string> {
    const { heat_kW, end } = query;
    const rows = await tunesOfClass(services.db, heat_kW, POINTS_MOST);
    const group = groupOf(fit, heat_kW, end);
    return JSON.stringify({
      ...query,
      fit: fit.version,
      prior_only: group.contributors === 0,
      demo: services.demo,
      points: rows.map((row) => pointOf(row, end, group)),
      points_total: await countOfClass(services.db, heat_kW),
      curve: scalingCurve(group),
      safety: SAFETY,
    } satisfies ScalingAnswer);
  }

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

function pointOf(row: PointRow, end: End, group: GroupFit): ScalingPoint {
  const own = fitRows(row).find((r) => r.end === end) as FitRow;
  const { pump_Hz, fan_rpm } = own;
  const held = row.verdict === "held";
  const aside = group.contributors > 0 ? asideOf(group, own) : null;
  return {
    contributor: row.pseudonym,
    elevation_m: shownElevation(row.elevation_m),
    density_kg_m3: row.density_kg_m3,
    pump_Hz,
    fan_rpm,
    pump_Hz_per_krpm: (pump_Hz * 1000) / fan_rpm,
    status: held ? "held" : aside ? "rejected" : "kept",
    reason: held
      ? "Held at the door; its contributor knows why."
      : aside && asideSentence(aside, end),
    aside: held ? HELD_AT_THE_DOOR : aside && farOff(aside, own),
  };
}
