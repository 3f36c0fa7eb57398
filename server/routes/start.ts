import { Hono } from "hono";
import { z } from "zod";
import { MOST_OWN_ROWS } from "../../model/own-heater.ts";
import { ownStartTune } from "../../model/own-start.ts";
import { startTune } from "../../model/start.ts";
import * as field from "../../model/tune.ts";
import { readBody } from "../body.ts";
import type { Services } from "../context.ts";
import { unchangedSince } from "../freshness.ts";
import { fromTexts, readQuery } from "../query.ts";
import { questionFields, questionOf } from "../question.ts";

/** What GET /api/start understands. */
export const startQuery = z.strictObject(fromTexts(questionFields));

/** What POST /api/start understands: the same question of a heater that has tunes of its own. */
export const startBody = z.strictObject(
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
