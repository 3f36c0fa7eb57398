import type { Context, MiddlewareHandler } from "hono";
import { z } from "zod";
import { MOST_OWN_ROWS } from "../../model/own-heater.ts";
import { ownStartTune as ownStartTuneOf } from "../../model/own-start.ts";
import { type StartTune, startTune as startTuneOf } from "../../model/start.ts";
import * as field from "../../model/tune.ts";
import type { Services } from "../context.ts";
import { fromTexts } from "../contract/from-text.ts";
import { ownStartTune, startTune } from "../contract/start.ts";
import { api, declareRoute, json, jsonBody } from "../declare.ts";
import { unchangedSince } from "../freshness.ts";
import { type JsonText, jsonText, sendText } from "../json-text.ts";
import { questionFields, questionOf } from "../question.ts";

/** The question of a heater that has tunes of its own. */
const startBody = z.strictObject(
  {
    ...questionFields,
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

/** Start tunes, of the average heater and of one with tunes of its own. */
export function startRoutes(services: Services) {
  let kept = { version: "", answers: new Map<string, JsonText<StartTune>>() };

  /** Answers kept for a version of the fit, by the question as it was asked. */
  function answersOf(version: string): Map<string, JsonText<StartTune>> {
    if (kept.version !== version) kept = { version, answers: new Map() };
    return kept.answers;
  }

  const questionText = (c: Context) => c.req.url.slice(c.req.url.indexOf("?"));

  /** What was asked in the same words before is neither read nor worked out again. */
  const answerKept: MiddlewareHandler = async (c, next) => {
    const { version } = await services.fit.current();
    const answer = answersOf(version).get(questionText(c));
    if (answer === undefined) return next();
    return unchangedSince(c, version) ?? sendText(c, answer);
  };

  const startRoute = declareRoute({
    method: "get",
    path: "/start",
    summary: "Start tune at a place: elevation_m, or lat and lon",
    request: { query: z.strictObject(fromTexts(questionFields)) },
    responses: { 200: json(startTune) },
    problems: [404, 422],
    middleware: answerKept,
  });

  /** Own tunes take the thread that answers for a tenth of a second. */
  const countRead: MiddlewareHandler = async (c, next) => {
    await services.limits.read(services.clientAddress(c));
    return next();
  };

  const ownStartRoute = declareRoute({
    method: "post",
    path: "/start",
    summary: "The same for a heater that has tunes of its own; nothing is stored",
    middleware: countRead,
    request: { body: jsonBody(startBody) },
    responses: { 200: json(ownStartTune) },
    problems: [400, 404, 413, 415, 422, 429],
  });

  const app = api("question");
  app.openapi(startRoute, async (c) => {
    const question = await questionOf(services, c.req.valid("query"));
    const fit = await services.fit.current();
    const answer = jsonText(startTuneOf(fit, question));
    const answers = answersOf(fit.version);
    if (answers.size >= ANSWERS_KEPT) answers.delete(answers.keys().next().value as string);
    answers.set(questionText(c), answer);
    return unchangedSince(c, fit.version) ?? sendText(c, answer);
  });
  app.openapi(ownStartRoute, async (c) => {
    const { own_tunes, ...query } = c.req.valid("json");
    const question = await questionOf(services, query);
    // Own tunes are answered and forgotten: no copy of theirs anywhere, in no cache on the way either.
    c.header("Cache-Control", "no-store");
    return c.json(ownStartTuneOf(await services.fit.current(), question, own_tunes), 200);
  });
  return app;
}
