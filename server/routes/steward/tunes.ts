import { fitRows } from "../../../db/fit-rows.ts";
import {
  countHeld,
  heldTunes,
  newestTunes,
  stewardsName,
  TUNES_AT_ONCE,
  tunesByIds,
  tunesByPseudonym,
} from "../../../db/steward.ts";
import { type AlikeTune, clustersOf } from "../../../model/clusters.ts";
import { averageAt } from "../../../model/fit/bands.ts";
import type { GroupFit, PublishedFit } from "../../../model/fit/group.ts";
import { type FitRow, xOf } from "../../../model/fit/row.ts";
import { CAUTIONS } from "../../../model/safety.ts";
import { groupOf } from "../../../model/start.ts";
import type { Services } from "../../context.ts";
import { clustersAnswer, heldAnswer, tunesAnswer } from "../../contract/steward-answers.ts";
import { heldQuery, PAGE, tunesQuery } from "../../contract/steward-requests.ts";
import { api, bearer, declareRoute, json } from "../../declare.ts";
import { seenTunes } from "./seen-tunes.ts";

/** Clusters are looked for among so many of the newest tunes, and so many are shown. */
const LOOKED_AT_MOST = 5000;
const CLUSTERS_MOST = 30;

const heldRoute = declareRoute({
  method: "get",
  path: "/steward/held",
  summary: "Held tunes, oldest first",
  security: bearer.steward,
  request: { query: heldQuery },
  responses: { 200: json(heldAnswer) },
  problems: [401, 422, 429],
});

const tunesRoute = declareRoute({
  method: "get",
  path: "/steward/tunes",
  summary: "Tunes by their ids, or a contributor's, whatever was decided on them",
  security: bearer.steward,
  request: { query: tunesQuery },
  responses: { 200: json(tunesAnswer) },
  problems: [401, 422, 429],
});

const clustersRoute = declareRoute({
  method: "get",
  path: "/steward/clusters",
  summary: "Tunes of one place, month and size that agree more than heaters do, under new keys",
  security: bearer.steward,
  responses: { 200: json(clustersAnswer) },
  problems: [401, 429],
});

/** Tunes as a steward looks at them: those held, some or a contributor's, and those that agree too well. */
export function stewardsTuneRoutes(services: Services) {
  const { db } = services;
  return api()
    .openapi(heldRoute, async (c) => {
      const { after = 0, limit = PAGE, ...of } = c.req.valid("query");
      const undecided = of.undecided === "true";
      // One more than shown tells whether there is a next page.
      const found = await heldTunes(db, { after, undecided }, limit + 1);
      const shown = found.slice(0, limit);
      return c.json(
        {
          held: await countHeld(db, undecided),
          tunes: await seenTunes(services, shown),
          next: found.length > limit ? (shown.at(-1)?.number ?? null) : null,
          ...CAUTIONS,
        },
        200,
      );
    })
    .openapi(tunesRoute, async (c) => {
      const { contributor, ids = "" } = c.req.valid("query");
      const found = await (contributor === undefined
        ? tunesByIds(db, ids.split(","))
        : tunesByPseudonym(db, contributor, TUNES_AT_ONCE));
      return c.json({ tunes: await seenTunes(services, found), ...CAUTIONS }, 200);
    })
    .openapi(clustersRoute, async (c) => {
      const fit = await services.fit.current();
      const newest = await newestTunes(db, LOOKED_AT_MOST);
      const clusters = clustersOf(
        newest.filter(({ row }) => row.verdict !== "removed").map((tune) => alike(fit, tune)),
        (heat_kW, end) => groupOf(fit, heat_kW, end).spread,
      );
      return c.json(
        {
          clusters: clusters.slice(0, CLUSTERS_MOST).map(({ shift, tunes, ...cluster }) => ({
            ...cluster,
            tunes: tunes.slice(0, TUNES_AT_ONCE),
            shift_pct: { low: 100 * Math.expm1(shift.low), high: 100 * Math.expm1(shift.high) },
          })),
          looked_at: newest.length,
        },
        200,
      );
    });
}

/** A tune as the search for clusters looks at it. */
function alike(
  fit: PublishedFit,
  { row, isNew }: Awaited<ReturnType<typeof newestTunes>>[number],
): AlikeTune {
  const shiftOf = (end: FitRow, group: GroupFit) => {
    const { centre } = averageAt(group, xOf(row.density_kg_m3), row.dose_uL ?? undefined);
    return Math.log((end.pump_Hz * 1000) / end.fan_rpm) - centre;
  };
  const [low, high] = fitRows(row);
  const of = { low: groupOf(fit, row.heat_kW, "low"), high: groupOf(fit, row.heat_kW, "high") };
  return {
    id: row.id,
    contributor: stewardsName(row.contributor),
    place: row.place,
    month: row.submitted_on,
    heat_kW: row.heat_kW,
    shift: { low: shiftOf(low, of.low), high: shiftOf(high, of.high) },
    step: { low: of.low.step_Hz / low.pump_Hz, high: of.high.step_Hz / high.pump_Hz },
    isNew,
    as_suggested: row.found === "as suggested",
  };
}
