import { Hono } from "hono";
import { allowNext, findRefusal } from "../../db/refusal.ts";
import { auditTrail, countHeld, decide, decisionsOnEach, heldTunes } from "../../db/steward.ts";
import {
  type DecisionRow,
  decisionsOn,
  findTune,
  pseudonym,
  type TuneRow,
} from "../../db/tunes.ts";
import {
  letCountBySteward,
  tunesOfContributors,
  waitingByPseudonym,
  waitingInTurn,
} from "../../db/waiting.ts";
import { ACCEPTED_MEANS, SAFETY } from "../../model/safety.ts";
import { possibleAir } from "../../model/screen/possible-air.ts";
import { readBody } from "../body.ts";
import type { Services } from "../context.ts";
import type {
  AlarmsAnswer,
  AuditTrail,
  Counted,
  Decided,
  HeldTune,
  HeldTunes,
  Published,
  RecordedDecision,
  WaitingAnswer,
} from "../contract.ts";
import { RequestProblem } from "../problem.ts";
import { readQuery } from "../query.ts";
import {
  decisionBody,
  heldQuery,
  PAGE,
  reasonBody,
  trailQuery,
  waitingQuery,
} from "../steward-schemas.ts";
import { stewardOnly } from "../steward-token.ts";
import { beside } from "../submission.ts";

/** What whoever looks after the atlas sees and decides. Without a token in the configuration there is none of it. */
export function stewardRoutes(services: Services): Hono {
  const { db, commit, now, afterWrite, stewardToken } = services;
  const app = new Hono();
  if (!stewardToken) return app;
  app.use("/steward/*", stewardOnly(stewardToken, services));

  app.get("/steward/held", async (c) => {
    const { after = 0, limit = PAGE } = readQuery(c, heldQuery);
    const fit = await services.fit.current();
    // One more than shown tells whether there is a next page.
    const found = await heldTunes(db, after, limit + 1);
    const shown = found.slice(0, limit);
    const history = await decisionsOnEach(
      db,
      shown.map(({ row }) => row.id),
    );
    const heldTune = (row: TuneRow): HeldTune => {
      const decisions = history.get(row.id) ?? [];
      const tune: HeldTune["tune"] = JSON.parse(row.sent);
      const at = possibleAir(row.elevation_m, tune.air ?? {}, row.elevation_sd_m ?? 0);
      const { air, compared } = beside(fit, tune, at);
      return {
        id: row.id,
        contributor: pseudonym(row.contributor),
        submitted_on: row.submitted_on,
        tune,
        cell: row.cell,
        reasons: JSON.parse(decisions.findLast((d) => d.by !== "fit")?.reasons ?? "[]"),
        air,
        compared,
        decisions: decisions.map(record),
      };
    };
    return c.json({
      held: await countHeld(db),
      tunes: shown.map(({ row }) => heldTune(row)),
      next: found.length > limit ? (shown.at(-1)?.number ?? null) : null,
      accepted_means: ACCEPTED_MEANS,
      safety: SAFETY,
    } satisfies HeldTunes);
  });

  app.get("/steward/decisions", async (c) => {
    const { after, limit = PAGE, ...filter } = readQuery(c, trailQuery);
    const found = await auditTrail(db, { ...filter, olderThan: after }, limit + 1);
    const shown = found.slice(0, limit);
    return c.json({
      decisions: shown.map(record),
      next: found.length > limit ? (shown.at(-1)?.id ?? null) : null,
    } satisfies AuditTrail);
  });

  app.post("/steward/tunes/:id/decision", async (c) => {
    const { verdict, reason } = await readBody(c, "decision", decisionBody);
    const id = c.req.param("id");
    await tuneOf(id);
    const reasons = JSON.stringify([
      { code: `${verdict}_by_steward`, field: "tune", sentence: reason },
    ]);
    const decided_on = now().toISOString().slice(0, 10);
    await commit(decide(db, { tune: id, verdict, reasons, decided_on }));
    // Withdrawn at the same moment: then nothing was written, and there is nothing to speak of.
    await tuneOf(id);
    afterWrite(c, id);
    return c.json({
      id,
      verdict,
      decisions: (await decisionsOn(db, id)).map(record),
      accepted_means: ACCEPTED_MEANS,
      safety: SAFETY,
    } satisfies Decided);
  });

  app.get("/steward/waiting", async (c) => {
    const { limit = PAGE } = readQuery(c, waitingQuery);
    const found = await waitingInTurn(db, limit);
    return c.json({
      waiting: found.map(({ contributor, since, crowded }) => ({
        contributor: pseudonym(contributor),
        since,
        crowded,
      })),
    } satisfies WaitingAnswer);
  });

  app.post("/steward/contributors/:pseudonym/count", async (c) => {
    const { reason } = await readBody(c, "decision", reasonBody);
    const name = c.req.param("pseudonym");
    const waits = /^[0-9a-f]{16}$/.test(name) ? await waitingByPseudonym(db, name) : undefined;
    if (!waits) {
      throw new RequestProblem(
        404,
        "No contributor waits under this pseudonym. GET /api/steward/waiting names those who do.",
      );
    }
    const reasons = JSON.stringify([
      { code: "counted_by_steward", field: "contributor", sentence: reason },
    ]);
    const today = now().toISOString().slice(0, 10);
    await commit(letCountBySteward(db, waits.contributor, reasons, today));
    const tunes = await tunesOfContributors(db, [waits.contributor]);
    for (const id of tunes) afterWrite(c, id);
    return c.json({ contributor: name, tunes: tunes.length } satisfies Counted);
  });

  app.get("/steward/alarms", async (c) => {
    const fit = await services.fit.current();
    const { refusal } = services.fit;
    return c.json({
      fit: fit.version,
      alarms: fit.alarms,
      refused: refusal && { since: refusal.since, alarms: refusal.alarms },
    } satisfies AlarmsAnswer);
  });

  app.post("/steward/publish", async (c) => {
    const { reason } = await readBody(c, "decision", reasonBody);
    if (!(await findRefusal(db))) {
      throw new RequestProblem(409, "No version is held back: the published one is the newest.", {
        title: "Nothing waits to be published",
      });
    }
    const reasons = JSON.stringify([
      { code: "published_by_steward", field: "fit", sentence: reason },
    ]);
    await commit(allowNext(db, reasons, now().toISOString().slice(0, 10)));
    afterWrite(c);
    return c.json({ fit: (await services.fit.current()).version } satisfies Published, 202);
  });

  async function tuneOf(id: string): Promise<TuneRow> {
    const row = await findTune(db, id);
    if (!row) throw new RequestProblem(404, "No tune has this id. It may have been withdrawn.");
    return row;
  }

  return app;
}

function record(d: DecisionRow): RecordedDecision {
  return {
    number: d.id,
    tune: d.tune || null,
    decided_on: d.decided_on,
    by: d.by,
    verdict: d.verdict,
    reasons: JSON.parse(d.reasons),
  };
}
