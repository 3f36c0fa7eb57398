import type { Context } from "hono";
import { allowNext, findRefusal, keepBack } from "../../../db/refusal.ts";
import { tunesByIds } from "../../../db/steward.ts";
import { twoFits } from "../../../model/two-fits.ts";
import type { Services } from "../../context.ts";
import {
  type Alarm,
  alarmsAnswer,
  publicationAnswer,
  withoutAnswer,
} from "../../contract/steward-answers.ts";
import { reasonBody, withoutBody } from "../../contract/steward-requests.ts";
import { api, bearer, declareRoute, json, jsonBody } from "../../declare.ts";
import { RequestProblem } from "../../problem.ts";

/** Fits without a selection that may be asked for at once: each takes a core for as long as the published one. */
const TRIALS_MOST = 3;

const withoutRoute = declareRoute({
  method: "post",
  path: "/steward/without",
  summary: "What the fit would be without some tunes, beside the published one; changes nothing",
  security: bearer.steward,
  request: { body: jsonBody(withoutBody) },
  responses: { 200: json(withoutAnswer) },
  problems: [400, 401, 413, 415, 422, 429, 503, 507],
});

const alarmsRoute = declareRoute({
  method: "get",
  path: "/steward/alarms",
  summary: "What the published fit warns its steward of, and why a newer one is not published",
  security: bearer.steward,
  responses: { 200: json(alarmsAnswer) },
  problems: [401, 429],
});

/** What either answer to a version that is held back takes. */
const onWhatIsHeldBack = {
  method: "post",
  security: bearer.steward,
  request: { body: jsonBody(reasonBody) },
  problems: [400, 401, 409, 413, 415, 422, 429, 503, 507],
} as const;

const publishRoute = declareRoute({
  ...onWhatIsHeldBack,
  path: "/steward/publish",
  summary: "Publish what an alarm holds back, and say why",
  responses: { 202: json(publicationAnswer) },
});

const keepBackRoute = declareRoute({
  ...onWhatIsHeldBack,
  path: "/steward/keep-back",
  summary: "Hold back what an alarm holds back for another week, and say why",
  responses: { 200: json(publicationAnswer) },
});

/** What the fit would be without some tunes, what it warns of, and whether a version that is held back is published. */
export function publicationRoutes(services: Services) {
  const { db, commit, now, afterWrite } = services;
  let trials = 0;

  /** Keeps what a steward says of a version that is held back. @returns the one published until then */
  async function said(c: Context, code: string, say: typeof allowNext, reason: string) {
    if (!(await findRefusal(db))) {
      throw new RequestProblem(409, "No version is held back: the published one is the newest.", {
        title: "Nothing waits to be published",
      });
    }
    const reasons = JSON.stringify([{ code, field: "fit", sentence: reason }]);
    await commit(say(db, reasons, now().toISOString().slice(0, 10)));
    afterWrite(c);
    return { fit: (await services.fit.current()).version };
  }

  return api("decision")
    .openapi(withoutRoute, async (c) => {
      const { tunes } = c.req.valid("json");
      if (trials >= TRIALS_MOST) {
        throw new RequestProblem(429, "Such fits are being made already. Try again in a while.", {
          title: "Too many fits at once",
          headers: { "Retry-After": "10" },
        });
      }
      trials += 1;
      try {
        const published = await services.fit.current();
        const sizes = (await tunesByIds(db, tunes)).map(({ row }) => row.heat_kW);
        const { groups, left_out, left } = await services.fit.without(tunes);
        const asked = [...new Set(sizes)].toSorted((a, b) => a - b);
        const compared = twoFits(published, { groups }, asked);
        return c.json({ fit: published.version, left_out, tunes: left, compared }, 200);
      } finally {
        trials -= 1;
      }
    })
    .openapi(alarmsRoute, async (c) => {
      const fit = await services.fit.current();
      const refusal = await findRefusal(db);
      return c.json(
        {
          fit: fit.version,
          alarms: fit.alarms,
          refused: refusal && {
            since: refusal.since,
            alarms: JSON.parse(refusal.alarms) as Alarm[],
            kept_back_on: refusal.kept_back_on,
            let_through: refusal.allowed,
          },
        },
        200,
      );
    })
    .openapi(publishRoute, async (c) => {
      const { reason } = c.req.valid("json");
      return c.json(await said(c, "published_by_steward", allowNext, reason), 202);
    })
    .openapi(keepBackRoute, async (c) => {
      const { reason } = c.req.valid("json");
      return c.json(await said(c, "kept_back_by_steward", keepBack, reason), 200);
    });
}
