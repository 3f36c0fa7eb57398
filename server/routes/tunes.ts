import { type Context, Hono, type MiddlewareHandler } from "hono";
import {
  type DecisionRow,
  decisionsOn,
  findTune,
  reviseTune,
  type TuneRow,
  withdrawTune,
} from "../../db/tunes.ts";
import { forgetWithoutTunes } from "../../db/waiting.ts";
import type { Reason } from "../../model/screen.ts";
import { readTune } from "../body.ts";
import type { Services } from "../context.ts";
import type { Submitted } from "../contract.ts";
import { inForce } from "../in-force.ts";
import { keptTune } from "../kept-tune.ts";
import { sha256 } from "../keys.ts";
import { NewKeys } from "../new-keys.ts";
import { full, RequestProblem } from "../problem.ts";
import { type Judged, judge } from "../submission.ts";
import { screeningDecision, submit } from "../submit.ts";

const notKept: MiddlewareHandler = (c, next) => {
  c.header("Cache-Control", "no-store");
  return next();
};

/** Submit, read, revise, withdraw. */
export function tuneRoutes(services: Services): Hono {
  const { db, commit, storage, prepared, keys, now, limits, clientAddress, afterWrite } = services;
  const newKeys = new NewKeys({
    ...{ db, keys, now, days: services.newKeyDays },
    onSurge: () => services.onTrouble("surge"),
  });
  const today = () => now().toISOString().slice(0, 10);
  const app = new Hono();

  // A receipt, and what it opens, is for nobody's cache.
  app.use("/tunes", notKept).use("/tunes/:id", notKept);

  app.post("/tunes", async (c) => {
    await limits.write(clientAddress(c));
    await requireRoom(c);
    const tune = await readTune(c);
    await limits.tune(tune, c.req.header("Proof-Of-Work"));
    const { answer, isNew } = await submit(services, newKeys, tune, {
      address: clientAddress(c),
      idempotencyKey: idempotencyKey(c),
    });
    if (!isNew) return c.json(answer, 201);
    afterWrite(c);
    return c.json(answer, 201, { Location: `/api/tunes/${answer.id}` });
  });

  app.get("/tunes/:id", async (c) =>
    c.json(await keptTune(services, newKeys, await authorised(c))),
  );

  app.put("/tunes/:id", async (c) => {
    await limits.write(clientAddress(c));
    await requireRoom(c);
    const sent = await authorised(c);
    const judged = await judge(services, await readTune(c));
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
    return c.json({ id, ...answer, ...waits } satisfies Submitted);
  });

  app.delete("/tunes/:id", async (c) => {
    await limits.write(clientAddress(c));
    const sent = await authorised(c);
    await storage.findRoomFor(() => commit(withdrawTune(db, sent, today())));
    prepared.forget();
    await storage.forget();
    afterWrite(c);
    return c.body(null, 204);
  });

  async function requireRoom(c: Context): Promise<void> {
    if (await storage.isShort()) throw full(c.req);
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

function idempotencyKey(c: Context): string | undefined {
  const text = c.req.header("Idempotency-Key");
  if (text === undefined || /^[\x21-\x7e]{8,200}$/.test(text)) return text;
  throw new RequestProblem(
    400,
    "Idempotency-Key must be 8 to 200 printable characters without spaces.",
  );
}
