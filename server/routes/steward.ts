import { type Context, Hono } from "hono";
import { allowNext, findRefusal, keepBack } from "../../db/refusal.ts";
import {
  auditTrail,
  countHeld,
  decide,
  decisionsByNumber,
  decisionsOnEach,
  heldTunes,
  newestTunes,
  type SeenRow,
  TUNES_AT_ONCE,
  tunesByIds,
  tunesByPseudonym,
  UNDONE,
} from "../../db/steward.ts";
import { type DecisionRow, fitRows, stewardsName } from "../../db/tunes.ts";
import {
  COUNTED_BY_STEWARD,
  letCountBySteward,
  tunesOfContributors,
  waitingByPseudonym,
  waitingInTurn,
} from "../../db/waiting.ts";
import { type AlikeTune, clustersOf } from "../../model/clusters.ts";
import { averageAt } from "../../model/fit/bands.ts";
import type { GroupFit, PublishedFit } from "../../model/fit/group.ts";
import { type FitRow, xOf } from "../../model/fit/row.ts";
import { ACCEPTED_MEANS, SAFETY } from "../../model/safety.ts";
import { possibleAir } from "../../model/screen/possible-air.ts";
import { groupOf } from "../../model/start.ts";
import { type StewardVerdict, USUAL_REASONS } from "../../model/steward-reasons.ts";
import { twoFits } from "../../model/two-fits.ts";
import { readBody } from "../body.ts";
import type { Services } from "../context.ts";
import type {
  AlarmsAnswer,
  AuditTrail,
  ClustersAnswer,
  Counted,
  Decided,
  HeldTunes,
  Publication,
  RecordedDecision,
  StewardsTune,
  StewardsTunes,
  WaitingAnswer,
  WithoutAnswer,
} from "../contract.ts";
import { inForce, reasonsOf } from "../in-force.ts";
import { RequestProblem } from "../problem.ts";
import { readQuery } from "../query.ts";
import {
  decisionBody,
  heldQuery,
  PAGE,
  reasonBody,
  trailQuery,
  tunesQuery,
  undoBody,
  waitingQuery,
  withoutBody,
} from "../steward-schemas.ts";
import { stewardOnly } from "../steward-token.ts";
import { beside } from "../submission.ts";

/** Clusters are looked for among so many of the newest tunes, and so many are shown. */
const LOOKED_AT_MOST = 5000;
const CLUSTERS_MOST = 30;
/** Fits without a selection that may be asked for at once: each takes a core for as long as the published one. */
const TRIALS_MOST = 3;

const cautions = { accepted_means: ACCEPTED_MEANS, safety: SAFETY };

/** What whoever looks after the atlas sees and decides. Without a token in the configuration there is none of it. */
export function stewardRoutes(services: Services): Hono {
  const { db, commit, now, afterWrite, stewardToken } = services;
  const today = () => now().toISOString().slice(0, 10);
  let trials = 0;
  const app = new Hono();
  if (!stewardToken) return app;
  app.use("/steward/*", stewardOnly(stewardToken, services));

  app.get("/steward/held", async (c) => {
    const { after = 0, limit = PAGE, ...of } = readQuery(c, heldQuery);
    const undecided = of.undecided === "true";
    // One more than shown tells whether there is a next page.
    const found = await heldTunes(db, { after, undecided }, limit + 1);
    const shown = found.slice(0, limit);
    return c.json({
      held: await countHeld(db, undecided),
      tunes: await asSeen(shown),
      next: found.length > limit ? (shown.at(-1)?.number ?? null) : null,
      ...cautions,
    } satisfies HeldTunes);
  });

  app.get("/steward/tunes", async (c) => {
    const { contributor, ids = "" } = readQuery(c, tunesQuery);
    const found = await (contributor === undefined
      ? tunesByIds(db, ids.split(","))
      : tunesByPseudonym(db, contributor, TUNES_AT_ONCE));
    return c.json({ tunes: await asSeen(found), ...cautions } satisfies StewardsTunes);
  });

  app.get("/steward/clusters", async (c) => {
    const fit = await services.fit.current();
    const newest = await newestTunes(db, LOOKED_AT_MOST);
    const clusters = clustersOf(
      newest.filter(({ row }) => row.verdict !== "removed").map((tune) => alike(fit, tune)),
      (heat_kW, end) => groupOf(fit, heat_kW, end).spread,
    );
    return c.json({
      clusters: clusters.slice(0, CLUSTERS_MOST).map(({ shift, tunes, ...cluster }) => ({
        ...cluster,
        tunes: tunes.slice(0, TUNES_AT_ONCE),
        shift_pct: { low: 100 * Math.expm1(shift.low), high: 100 * Math.expm1(shift.high) },
      })),
      looked_at: newest.length,
    } satisfies ClustersAnswer);
  });

  app.post("/steward/without", async (c) => {
    const { tunes } = await readBody(c, "left_out", withoutBody);
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
      return c.json({
        fit: published.version,
        left_out,
        tunes: left,
        compared: twoFits(
          published,
          { groups },
          [...new Set(sizes)].toSorted((a, b) => a - b),
        ),
      } satisfies WithoutAnswer);
    } finally {
      trials -= 1;
    }
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

  app.post("/steward/decisions", async (c) => {
    const { tunes, verdict, ...why } = await readBody(c, "decision", decisionBody);
    const usual = why.usual_reason && USUAL_REASONS[verdict][why.usual_reason];
    const reason =
      usual === undefined
        ? { code: `${verdict}_by_steward`, field: "tune", sentence: why.reason ?? "" }
        : { code: why.usual_reason ?? "", field: "tune", sentence: usual };
    const reasons = JSON.stringify([reason]);
    return c.json(await decided(c, new Map(tunes.map((tune) => [tune, { verdict, reasons }]))));
  });

  app.post("/steward/undo", async (c) => {
    const numbers = (await readBody(c, "undo", undoBody)).decisions;
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
    return c.json(await decided(c, back));
  });

  app.get("/steward/waiting", async (c) => {
    const { limit = PAGE } = readQuery(c, waitingQuery);
    const found = await waitingInTurn(db, limit);
    return c.json({
      waiting: found.map(({ contributor, since, crowded }) => ({
        contributor: stewardsName(contributor),
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
      { code: COUNTED_BY_STEWARD, field: "contributor", sentence: reason },
    ]);
    await commit(letCountBySteward(db, waits.contributor, reasons, today()));
    const tunes = await tunesOfContributors(db, [waits.contributor]);
    afterWrite(c);
    return c.json({ contributor: name, tunes: tunes.length } satisfies Counted);
  });

  app.get("/steward/alarms", async (c) => {
    const fit = await services.fit.current();
    const refusal = await findRefusal(db);
    return c.json({
      fit: fit.version,
      alarms: fit.alarms,
      refused: refusal && {
        since: refusal.since,
        alarms: JSON.parse(refusal.alarms),
        kept_back_on: refusal.kept_back_on,
        let_through: refusal.allowed,
      },
    } satisfies AlarmsAnswer);
  });

  app.post("/steward/publish", (c) => publication(c, "published_by_steward", allowNext, 202));
  app.post("/steward/keep-back", (c) => publication(c, "kept_back_by_steward", keepBack, 200));

  async function publication(c: Context, code: string, say: typeof allowNext, status: 200 | 202) {
    const { reason } = await readBody(c, "decision", reasonBody);
    if (!(await findRefusal(db))) {
      throw new RequestProblem(409, "No version is held back: the published one is the newest.", {
        title: "Nothing waits to be published",
      });
    }
    const reasons = JSON.stringify([{ code, field: "fit", sentence: reason }]);
    await commit(say(db, reasons, today()));
    afterWrite(c);
    return c.json({ fit: (await services.fit.current()).version } satisfies Publication, status);
  }

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
      decisions: made.map(record),
      gone: asked.filter((id) => !written.has(id)),
      ...cautions,
    };
  }

  async function asSeen(found: readonly SeenRow[]): Promise<StewardsTune[]> {
    const fit = await services.fit.current();
    const history = await decisionsOnEach(
      db,
      found.map(({ row }) => row.id),
    );
    return found.map(({ row, waits }) => {
      const decisions = history.get(row.id) ?? [];
      const tune: StewardsTune["tune"] = JSON.parse(row.sent);
      const at = possibleAir(row.elevation_m, tune.air ?? {}, row.elevation_sd_m ?? 0);
      const { air, compared } = beside(fit, tune, at);
      const stands = inForce(decisions).at(-1);
      return {
        id: row.id,
        contributor: stewardsName(row.contributor),
        waits,
        submitted_on: row.submitted_on,
        tune,
        ...{ cell: row.cell, verdict: row.verdict, air, compared },
        reasons: stands ? reasonsOf(stands) : [],
        decisions: decisions.map(record),
      };
    });
  }

  return app;
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

function record(d: DecisionRow): RecordedDecision {
  return {
    number: d.id,
    tune: d.tune || null,
    decided_on: d.decided_on,
    by: d.by,
    verdict: d.verdict,
    reasons: reasonsOf(d),
  };
}
