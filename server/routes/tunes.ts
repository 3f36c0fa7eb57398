import type { Context, MiddlewareHandler } from "hono";
import { createMiddleware } from "hono/factory";
import type { BlankEnv } from "hono/types";
import { z } from "zod";
import { type DecisionRow, decisionsOn } from "../../db/decisions.ts";
import { findTune, reviseTune, type TuneRow, withdrawTune } from "../../db/tunes.ts";
import { forgetWithoutTunes } from "../../db/waiting.ts";
import type { Reason } from "../../model/screen.ts";
import { tuneSchema } from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { keptTune, submitted } from "../contract/tunes.ts";
import { api, bearer, declareRoute, json, jsonBody } from "../declare.ts";
import { inForce } from "../in-force.ts";
import { keptTuneOf } from "../kept-tune.ts";
import { sha256 } from "../keys.ts";
import { NewKeys } from "../new-keys.ts";
import { full, RequestProblem } from "../problem.ts";
import { type Judged, judge } from "../submission.ts";
import { screeningDecision, submit } from "../submit.ts";

const notKept: MiddlewareHandler = (c, next) => {
  c.header("Cache-Control", "no-store");
  return next();
};

const params = z.object({ id: z.string() });

const idempotencyKey = z
  .string()
  .regex(
    /^[\x21-\x7e]{8,200}$/,
    "Idempotency-Key must be 8 to 200 printable characters without spaces.",
  );

/** Submit, read, revise, withdraw. */
export function tuneRoutes(services: Services) {
  const { db, commit, storage, prepared, keys, now, limits, clientAddress, afterWrite } = services;
  const newKeys = new NewKeys({
    ...{ db, keys, now, days: services.newKeyDays },
    onSurge: () => services.onTrouble("surge"),
  });
  const today = () => now().toISOString().slice(0, 10);
  // A receipt, and what it opens, is for nobody's cache.
  const app = api();
  app.use("/tunes", notKept).use("/tunes/:id", notKept);
  app.openAPIRegistry.registerComponent("securitySchemes", "receipt", {
    type: "http",
    scheme: "bearer",
    description: "The receipt of one tune",
  });

  const countWrite: MiddlewareHandler<BlankEnv> = async (c, next) => {
    await limits.write(clientAddress(c));
    return next();
  };

  const requireRoom: MiddlewareHandler<BlankEnv> = async (c, next) => {
    if (await storage.isShort()) throw full(c.req);
    return next();
  };

  /** Opens the tune of an id with its receipt. */
  const opened = createMiddleware<{ Variables: { sent: TuneRow } }>(async (c, next) => {
    c.set("sent", await authorised(c));
    return next();
  });

  const submitRoute = declareRoute({
    method: "post",
    path: "/tunes",
    summary: "Submit a tune",
    middleware: [countWrite, requireRoom] as const,
    request: {
      headers: z.object({
        "Idempotency-Key": idempotencyKey
          .optional()
          .describe(
            "8 to 200 printable characters. The same key and tune get the same answer again, receipt included.",
          ),
        "Proof-Of-Work": z.string().optional().meta({
          description: "In a flood: what solves the challenge of a 429, as its schema says",
          maxLength: 2000,
        }),
      }),
      body: jsonBody(tuneSchema),
    },
    responses: { 201: json(submitted) },
    problems: [400, 409, 413, 415, 422, 429, 503, 507],
  });
  app.openapi(submitRoute, async (c) => {
    const tune = c.req.valid("json");
    const headers = c.req.valid("header");
    await limits.tune(tune, headers["Proof-Of-Work"]);
    const { answer, isNew } = await submit(services, newKeys, tune, {
      address: clientAddress(c),
      idempotencyKey: headers["Idempotency-Key"],
    });
    if (!isNew) return c.json(answer, 201);
    afterWrite(c);
    return c.json(answer, 201, { Location: `/api/tunes/${answer.id}` });
  });

  const readRoute = declareRoute({
    method: "get",
    path: "/tunes/{id}",
    summary: "Read a tune",
    security: bearer.receipt,
    middleware: opened,
    request: { params },
    responses: { 200: json(keptTune) },
    problems: [401, 404],
  });
  app.openapi(readRoute, async (c) =>
    c.json(await keptTuneOf(services, newKeys, c.get("sent")), 200),
  );

  const reviseRoute = declareRoute({
    method: "put",
    path: "/tunes/{id}",
    summary: "Revise a tune",
    security: bearer.receipt,
    middleware: [countWrite, requireRoom, opened] as const,
    request: { params, body: jsonBody(tuneSchema) },
    responses: { 200: json(submitted) },
    problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
  });
  app.openapi(reviseRoute, async (c) => {
    const sent = c.get("sent");
    const judged = await judge(services, c.req.valid("json"));
    const { kept, answer } = keptOutBySteward(await decisionsOn(db, sent.id))
      ? stillHeld(judged)
      : judged;
    const { id } = sent;
    const { receipt_sha256, imported } = sent;
    const row = { id, receipt_sha256, imported, ...kept, ...asFirstSent(sent, kept) };
    const { statements, ...waits } = await newKeys.arrival(row, clientAddress(c));
    await commit([
      ...reviseTune(db, row, screeningDecision(id, answer, now())),
      ...statements,
      // It may come under another key.
      ...forgetWithoutTunes(db, sent.contributor),
    ]);
    prepared.forget();
    await storage.forget();
    afterWrite(c);
    return c.json({ id, ...answer, ...waits }, 200);
  });

  const withdrawRoute = declareRoute({
    method: "delete",
    path: "/tunes/{id}",
    summary: "Withdraw a tune: gone from data, fit and export",
    security: bearer.receipt,
    middleware: [countWrite, opened] as const,
    request: { params },
    responses: { 204: { description: "Done" } },
    problems: [401, 404, 429, 503, 507],
  });
  app.openapi(withdrawRoute, async (c) => {
    const sent = c.get("sent");
    await storage.findRoomFor(() => commit(withdrawTune(db, sent, today())));
    prepared.forget();
    await storage.forget();
    afterWrite(c);
    return c.body(null, 204);
  });

  /**
   * A revision puts right what was said of a tune; it was found beside what the atlas answered when it was sent. Its home stays,
   * and another cell is a second one, for somebody may have kept what was shown before.
   */
  function asFirstSent(sent: TuneRow, kept: Judged["kept"]) {
    const { judged_version, low_suggested_Hz_per_krpm, high_suggested_Hz_per_krpm } = sent;
    return {
      ...{ judged_version, low_suggested_Hz_per_krpm, high_suggested_Hz_per_krpm },
      home: sent.home ?? kept.home,
      several_places: sent.several_places || (sent.home !== null && sent.cell !== kept.cell),
    };
  }

  /** Whether a steward holds a tune or has removed it. Screening a revision anew does not end that. */
  function keptOutBySteward(history: readonly DecisionRow[]): boolean {
    const last = inForce(history).findLast((d) => d.by === "steward");
    return last !== undefined && last.verdict !== "accepted";
  }

  /** A tune that a steward holds or has removed is held when it is revised: the steward looks at it again. */
  function stillHeld({ kept, answer }: Judged): Judged {
    const reason: Reason = {
      code: "held_by_steward",
      field: "tune",
      sentence:
        "A steward holds this tune. The revision is kept, and counts once a steward accepts it.",
    };
    return {
      kept: { ...kept, verdict: "held" },
      answer: { ...answer, verdict: "held", reasons: [...answer.reasons, reason] },
    };
  }

  /** The tune that this id and receipt open together; one answer for a wrong receipt and an unknown id. */
  async function authorised(c: Context): Promise<TuneRow> {
    const receipt = /^Bearer\s+(\S+)$/i.exec(c.req.header("Authorization") ?? "")?.[1];
    if (!receipt) {
      throw new RequestProblem(
        401,
        'Send the receipt of this tune as "Authorization: Bearer <receipt>".',
        {
          headers: { "WWW-Authenticate": "Bearer" },
        },
      );
    }
    const row = await findTune(db, c.req.param("id") ?? "");
    if (!row || row.receipt_sha256 !== (await sha256(receipt))) {
      throw new RequestProblem(
        404,
        "No tune answers to this id and receipt. It may have been withdrawn.",
      );
    }
    return row;
  }

  return app;
}
