import { type Context, Hono, type MiddlewareHandler } from "hono";
import {
  type DecisionRow,
  decisionsOn,
  findIdempotencyKey,
  findTune,
  fitRows,
  type IdempotencyRow,
  insertTune,
  reviseTune,
  type TuneRow,
  withdrawTune,
} from "../../db/tunes.ts";
import { forgetWithoutTunes } from "../../db/waiting.ts";
import { adviceOn } from "../../model/advice.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { asideOf } from "../../model/fit/standing.ts";
import { possibleAir } from "../../model/screen/possible-air.ts";
import type { Reason, Verdict } from "../../model/screen.ts";
import type { Tune } from "../../model/tune.ts";
import { readTune } from "../body.ts";
import type { Services } from "../context.ts";
import type { KeptTune, Submitted } from "../contract.ts";
import { inForce, reasonsOf } from "../in-force.ts";
import { randomId, randomReceipt, sha256 } from "../keys.ts";
import { NewKeys } from "../new-keys.ts";
import { full, RequestProblem } from "../problem.ts";
import { beside, type Judged, judge } from "../submission.ts";
import { writeLimit } from "../write-limit.ts";

const notKept: MiddlewareHandler = (c, next) => {
  c.header("Cache-Control", "no-store");
  return next();
};

/** Submit, read, revise, withdraw. */
export function tuneRoutes(services: Services): Hono {
  const { db, commit, storage, prepared, keys, now, clientAddress, afterWrite } = services;
  const limit = writeLimit(services.writeLimit, keys, now);
  const newKeys = new NewKeys({ db, keys, now, days: services.newKeyDays });
  const today = () => now().toISOString().slice(0, 10);
  const app = new Hono();

  // A receipt, and what it opens, is for nobody's cache.
  app.use("/tunes", notKept).use("/tunes/:id", notKept);

  app.post("/tunes", async (c) => {
    await limit(clientAddress(c));
    await requireRoom();
    const tune = await readTune(c);
    const key = await idempotency(c, tune);
    const again = key && (await answeredBefore(key, tune));
    if (again) return c.json(again, 201);
    const id = randomId();
    const receipt = key ? await keys.receiptFor(key.hash) : randomReceipt();
    const { kept, answer: judged } = await judge(services, tune);
    const row: TuneRow = { id, receipt_sha256: await sha256(receipt), ...kept };
    const { statements, counts_from } = await newKeys.arrival(row.contributor, clientAddress(c));
    const answer = { ...judged, counts_from };
    const decision = screeningDecision(id, answer.verdict, answer.reasons);
    const used = key && {
      key: key.hash,
      body_sha256: key.body,
      tune: id,
      answer: JSON.stringify(answer),
    };
    try {
      await commit([...insertTune(db, row, decision, used), ...statements]);
    } catch (error) {
      // The same key may have been used at the same moment; then the first answer holds for both.
      const first = key && (await answeredBefore(key, tune));
      if (!first) throw error;
      return c.json(first, 201);
    }
    afterWrite(c, id);
    return c.json({ id, receipt, ...answer } satisfies Submitted, 201, {
      Location: `/api/tunes/${id}`,
    });
  });

  app.get("/tunes/:id", async (c) => c.json(await keptTune(await authorised(c))));

  app.put("/tunes/:id", async (c) => {
    await limit(clientAddress(c));
    await requireRoom();
    const sent = await authorised(c);
    const judged = await judge(services, await readTune(c));
    const { kept, answer } = keptOutBySteward(await decisionsOn(db, sent.id))
      ? stillHeld(judged)
      : judged;
    const { id } = sent;
    const row = { id, receipt_sha256: sent.receipt_sha256, ...kept, ...asFirstSent(sent, kept) };
    const { statements, counts_from } = await newKeys.arrival(row.contributor, clientAddress(c));
    await commit([
      ...reviseTune(db, row, screeningDecision(id, answer.verdict, answer.reasons)),
      ...statements,
      // It may come under another key.
      forgetWithoutTunes(db, sent.contributor),
    ]);
    await storage.forget();
    afterWrite(c, id);
    return c.json({ id, ...answer, counts_from } satisfies Submitted);
  });

  app.delete("/tunes/:id", async (c) => {
    await limit(clientAddress(c));
    const sent = await authorised(c);
    await commit(withdrawTune(db, sent, today()));
    prepared.forget();
    await storage.forget();
    afterWrite(c, sent.id);
    return c.body(null, 204);
  });

  async function requireRoom(): Promise<void> {
    if (await storage.isShort()) throw full();
  }

  function screeningDecision(tune: string, verdict: Verdict, reasons: Reason[]) {
    return {
      tune,
      by: "screening",
      verdict,
      reasons: JSON.stringify(reasons),
      decided_on: today(),
    };
  }

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

  async function idempotency(c: Context, tune: Tune) {
    const text = c.req.header("Idempotency-Key");
    if (text === undefined) return undefined;
    if (!/^[\x21-\x7e]{8,200}$/.test(text)) {
      throw new RequestProblem(
        400,
        "Idempotency-Key must be 8 to 200 printable characters without spaces.",
      );
    }
    return {
      hash: await keys.hash("idempotency", `${tune.contributor}|${text}`),
      body: await sha256(JSON.stringify(tune)),
    };
  }

  async function answeredBefore(
    key: { hash: string; body: string },
    tune: Tune,
  ): Promise<Submitted | undefined> {
    const used: IdempotencyRow | undefined = await findIdempotencyKey(db, key.hash);
    if (!used) return undefined;
    // Withdrawn, a key is all that is left.
    const row = used.tune === "" ? undefined : await findTune(db, used.tune);
    if (!row) {
      throw new RequestProblem(
        409,
        "The tune sent with this Idempotency-Key was withdrawn. Use a new key to share it again.",
      );
    }
    if (used.body_sha256 !== key.body) {
      throw new RequestProblem(
        409,
        "This Idempotency-Key was sent with another tune. Use a new key for a new tune.",
      );
    }
    return {
      id: used.tune,
      receipt: await keys.receiptFor(key.hash),
      ...(used.answer === ""
        ? await answerAnew(row)
        : // An answer kept by an earlier version has neither of these.
          { advice: adviceOn(tune), counts_from: null, ...JSON.parse(used.answer) }),
    };
  }

  /** The answer to a submission whose own is not kept any more: the same verdict, beside today's fit. */
  async function answerAnew(row: TuneRow): Promise<Omit<Submitted, "id" | "receipt">> {
    const { verdict, reasons, counts_from, advice, air, compared, accepted_means, safety } =
      await keptTune(row);
    return {
      // A submission is answered with one of the two; reading the tune tells more.
      verdict: verdict === "accepted" ? verdict : "held",
      ...{ reasons, counts_from, advice, air, compared, accepted_means, safety },
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

  async function keptTune(row: TuneRow): Promise<KeptTune> {
    const fit = await services.fit.current();
    const tune: KeptTune["tune"] = JSON.parse(row.sent);
    const history = await decisionsOn(db, row.id);
    const stands = inForce(history).at(-1);
    const counts_from = await newKeys.countsFrom(row.contributor);
    const standing = (end: FitRow) => {
      const group = fit.groups.find((g) => g.heat_kW === row.heat_kW && g.end === end.end);
      if (row.verdict !== "accepted" || counts_from || !group) return "not in it";
      return asideOf(group, end) === null ? "kept" : "rejected";
    };
    const [low, high] = fitRows(row).map(standing) as [
      KeptTune["fit"]["low"],
      KeptTune["fit"]["low"],
    ];
    return {
      id: row.id,
      tune,
      cell: row.cell,
      verdict: row.verdict,
      reasons: stands ? reasonsOf(stands) : [],
      counts_from,
      fit: { version: fit.version, low, high },
      ...beside(fit, tune, possibleAir(row.elevation_m, tune.air ?? {}, row.elevation_sd_m ?? 0)),
      decisions: history.map((d) => ({
        decided_on: d.decided_on,
        by: d.by,
        verdict: d.verdict,
        reasons: reasonsOf(d),
      })),
    };
  }

  return app;
}
