import type { Context } from "hono";
import {
  auditTrail,
  decide,
  decisionsByNumber,
  decisionsOnEach,
  tunesByIds,
  UNDONE,
} from "../../../db/steward.ts";
import { COUNTED_BY_STEWARD } from "../../../db/waiting.ts";
import { CAUTIONS } from "../../../model/safety.ts";
import { type StewardVerdict, USUAL_REASONS } from "../../../model/steward-reasons.ts";
import type { Services } from "../../context.ts";
import { type Decided, decidedAnswer, trailAnswer } from "../../contract/steward-answers.ts";
import { decisionBody, PAGE, trailQuery, undoBody } from "../../contract/steward-requests.ts";
import { api, bearer, declareRoute, json, jsonBody } from "../../declare.ts";
import { inForce, reasonsOf } from "../../in-force.ts";
import { RequestProblem } from "../../problem.ts";
import { recorded } from "./seen-tunes.ts";

const trailRoute = declareRoute({
  method: "get",
  path: "/steward/decisions",
  summary: "The audit trail: every decision, newest first",
  security: bearer.steward,
  request: { query: trailQuery },
  responses: { 200: json(trailAnswer) },
  problems: [401, 422, 429],
});

const decideRoute = declareRoute({
  method: "post",
  path: "/steward/decisions",
  summary: "Accept, hold or remove tunes, and say why",
  security: bearer.steward,
  request: { body: jsonBody(decisionBody) },
  responses: { 200: json(decidedAnswer) },
  problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
});

const undoRoute = declareRoute({
  method: "post",
  path: "/steward/undo",
  summary: "Take decisions of a steward back, by decisions that say so",
  security: bearer.steward,
  request: { body: jsonBody(undoBody) },
  responses: { 200: json(decidedAnswer) },
  problems: [400, 401, 404, 409, 413, 415, 422, 429, 503, 507],
});

/** What was decided on tunes, and deciding. */
export function decisionRoutes(services: Services) {
  const { db, commit, now, afterWrite } = services;
  const today = () => now().toISOString().slice(0, 10);
  const app = api("decision");

  app.openapi(trailRoute, async (c) => {
    const { after, limit = PAGE, ...filter } = c.req.valid("query");
    const found = await auditTrail(db, { ...filter, olderThan: after }, limit + 1);
    const shown = found.slice(0, limit);
    return c.json(
      {
        decisions: shown.map(recorded),
        next: found.length > limit ? (shown.at(-1)?.id ?? null) : null,
      },
      200,
    );
  });

  app.openapi(decideRoute, async (c) => {
    const { tunes, verdict, ...why } = c.req.valid("json");
    const usual = why.usual_reason && USUAL_REASONS[verdict][why.usual_reason];
    const reason =
      usual === undefined
        ? { code: `${verdict}_by_steward`, field: "tune", sentence: why.reason ?? "" }
        : { code: why.usual_reason ?? "", field: "tune", sentence: usual };
    const reasons = JSON.stringify([reason]);
    const verdicts = new Map(tunes.map((tune) => [tune, { verdict, reasons }]));
    return c.json(await decided(c, verdicts), 200);
  });

  app.openapi(undoRoute, async (c) => {
    const numbers = c.req.valid("json").decisions;
    const asked = (await decisionsByNumber(db, numbers)).filter(
      (d) => d.by === "steward" && d.tune !== "" && reasonsOf(d)[0]?.code !== COUNTED_BY_STEWARD,
    );
    if (asked.length === 0) {
      throw new RequestProblem(
        404,
        "No decision of a steward on a tune has such a number. GET /api/steward/decisions lists them.",
      );
    }
    const history = await decisionsOnEach(
      db,
      asked.map(({ tune }) => tune),
    );
    const back = new Map<string, { verdict: StewardVerdict; reasons: string }>();
    for (const { id, tune } of asked) {
      const stands = inForce(history.get(tune) ?? []);
      const before = stands.at(-2);
      if (stands.at(-1)?.id !== id || !before) {
        throw new RequestProblem(
          409,
          `Decision ${id} is not the one in force on its tune: take back the later one first. Nothing was taken back.`,
          { title: "Not the last decision" },
        );
      }
      const sentence = `A steward took decision ${id} back.`;
      const reasons = JSON.stringify([{ code: UNDONE, field: "tune", sentence }]);
      back.set(tune, { verdict: before.verdict, reasons });
    }
    return c.json(await decided(c, back), 200);
  });

  /** Writes a verdict on each of these tunes, and answers the decisions that came of it. */
  async function decided(
    c: Context,
    verdicts: ReadonlyMap<string, { verdict: StewardVerdict; reasons: string }>,
  ): Promise<Decided> {
    const asked = [...verdicts.keys()];
    const there = await tunesByIds(db, asked);
    if (there.length === 0) {
      throw new RequestProblem(
        404,
        asked.length === 1
          ? "No tune has this id. It may have been withdrawn."
          : "No tune has any of these ids. They may have been withdrawn.",
      );
    }
    const before = await decisionsOnEach(db, asked);
    const statements = [...verdicts].flatMap(([tune, of]) =>
      decide(db, { tune, ...of, decided_on: today() }),
    );
    await commit(statements);
    // What was withdrawn at the same moment has none: then nothing was written, and there is nothing to speak of.
    const after = await decisionsOnEach(db, asked);
    const made = asked.flatMap((tune) => {
      const last = before.get(tune)?.at(-1)?.id ?? 0;
      const now = after.get(tune)?.findLast(({ id, by }) => by === "steward" && id > last);
      return now ? [now] : [];
    });
    const written = new Set(made.map(({ tune }) => tune));
    // Files of an older revision may hold what is not to be seen any more.
    services.prepared.forget();
    afterWrite(c);
    return {
      decisions: made.map(recorded),
      gone: asked.filter((id) => !written.has(id)),
      ...CAUTIONS,
    };
  }

  return app;
}
