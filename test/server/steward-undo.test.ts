import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { USUAL_REASONS } from "../../model/steward-reasons.ts";
import type { RecordedDecision, StewardsTune } from "../../server/contract.ts";
import * as answers from "../../server/contract.ts";
import { goodTune } from "./atlas.ts";
import { bearer, inFeet, openStewardsAtlas, type StewardsAtlas } from "./stewards-atlas.ts";

let atlas: StewardsAtlas;
beforeEach(async () => {
  atlas = await openStewardsAtlas();
});
afterEach(() => atlas.close());

const decideOnAll = async (tunes: string[], verdict: string, reason = `Now ${verdict}.`) =>
  answers.decidedAnswer.parse(
    await (await atlas.send("/api/steward/decisions", { tunes, verdict, reason })).json(),
  );
const numbers = (decisions: RecordedDecision[]) => decisions.map(({ number }) => number);
const undo = (decisions: number[]) => atlas.send("/api/steward/undo", { decisions });
const undecided = async () =>
  (await atlas.json("/api/steward/held?undecided=true")).tunes.map(({ id }: StewardsTune) => id);
const read = async ({ id, receipt }: { id: string; receipt: string }) =>
  answers.keptTune.parse(await (await atlas.get(`/api/tunes/${id}`, bearer(receipt))).json());
const revise = (of: { id: string; receipt: string }, tune: unknown) =>
  atlas.app.request(`/api/tunes/${of.id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", ...bearer(of.receipt) },
    body: JSON.stringify(tune),
  });

describe("several tunes at once", () => {
  test("one decision each; what was withdrawn meanwhile is named and left out", async () => {
    const sent = [];
    for (let n = 0; n < 4; n++) sent.push(await atlas.submit(inFeet(n)));
    const ids = sent.map(({ id }) => id);
    const [gone = { id: "", receipt: "" }] = sent;
    await atlas.app.request(`/api/tunes/${gone.id}`, {
      method: "DELETE",
      headers: bearer(gone.receipt),
    });
    const made = await decideOnAll(ids, "removed");
    expect(made.gone).toEqual([gone.id]);
    expect(made.decisions.map((d) => d.tune)).toEqual(ids.slice(1));
    expect(await undecided()).toEqual([]);
    const log = (await atlas.json("/api/steward/decisions?by=steward")).decisions;
    expect(numbers(log).toReversed()).toEqual(numbers(made.decisions));
  });

  test("and one press takes all of it back", async () => {
    const ids = [];
    for (let n = 0; n < 3; n++) ids.push((await atlas.submit(inFeet(n))).id);
    const made = await decideOnAll(ids, "accepted");
    await atlas.fit.refresh();
    expect((await atlas.fit.current()).groups[0]?.tunes).toBe(3);
    const back = await undo(numbers(made.decisions));
    expect(answers.decidedAnswer.parse(await back.json()).decisions.length).toBe(3);
    expect(await undecided()).toEqual(ids);
    await atlas.fit.refresh();
    expect((await atlas.fit.current()).groups[0]?.tunes ?? 0).toBe(0);
  });
});

describe("a removed tune", () => {
  test("is seen by its owner alone, with the reason, and is in nothing public", async () => {
    const sent = await atlas.submit(goodTune());
    await atlas.submit(goodTune(1));
    await decideOnAll([sent.id], "removed", "Sent by hand to try the atlas.");
    await atlas.fit.refresh();
    expect(await read(sent)).toMatchObject({
      verdict: "removed",
      reasons: [{ code: "removed_by_steward", sentence: "Sent by hand to try the atlas." }],
      fit: { low: "not in it", high: "not in it" },
    });
    expect(await (await atlas.get("/api/tunes.csv")).text()).not.toContain(sent.id);
    expect((await atlas.json("/api/scaling?heat_kW=5&end=low")).points.length).toBe(1);
    expect((await atlas.json("/api/steward/held")).held).toBe(0);
  });

  test("is looked at again when its owner revises it", async () => {
    const sent = await atlas.submit(inFeet());
    await decideOnAll([sent.id], "removed");
    const revised = await revise(sent, goodTune());
    expect(await revised.json()).toMatchObject({
      verdict: "held",
      reasons: [{ code: "held_by_steward" }],
    });
    expect(await undecided()).toEqual([sent.id]);
  });
});

describe("the queue", () => {
  test("has what is held and no steward has decided on, in the order in which it came in", async () => {
    const sent = [];
    for (let n = 0; n < 4; n++) sent.push(await atlas.submit(inFeet(n)));
    const ids = sent.map(({ id }) => id) as [string, string, string, string];
    await decideOnAll([ids[1]], "held");
    await decideOnAll([ids[2]], "accepted");
    expect(await undecided()).toEqual([ids[0], ids[3]]);
    const { held, tunes } = answers.heldAnswer.parse(await atlas.json("/api/steward/held"));
    expect([held, tunes.map(({ id }) => id)]).toEqual([3, [ids[0], ids[1], ids[3]]]);
    // What a steward writes cannot put a tune back into it.
    const made = await decideOnAll([ids[0]], "held", 'It says "code":"undone_by_steward".');
    expect(await undecided()).toEqual([ids[3]]);
    await undo(numbers(made.decisions));
    expect(await undecided()).toEqual([ids[0], ids[3]]);
  });

  test("by contributor, by ids, each tune with what was decided on it", async () => {
    const mine = { ...inFeet(1), contributor: goodTune(7).contributor };
    const { id } = await atlas.submit(goodTune(7));
    const other = await atlas.submit(mine);
    const [seen] = (await atlas.json(`/api/steward/tunes?ids=${id}`)).tunes as [StewardsTune];
    expect([seen.verdict, seen.waits]).toEqual(["accepted", false]);
    const both = await atlas.json(`/api/steward/tunes?contributor=${seen.contributor}`);
    expect(answers.tunesAnswer.parse(both).tunes.map((t) => t.id)).toEqual(
      [id, other.id].toSorted(),
    );
    for (const query of ["", "ids=a&contributor=0123456789abcdef", "contributor=x", "ids=,"]) {
      expect((await atlas.get(`/api/steward/tunes?${query}`)).status).toBe(422);
    }
  });
});

describe("taking back", () => {
  test("restores the verdict and the reasons before it, and the log has both", async () => {
    const sent = await atlas.submit(inFeet());
    const before = await read(sent);
    const [first] = (await decideOnAll([sent.id], "removed")).decisions as [RecordedDecision];
    const [second] = (await decideOnAll([sent.id], "accepted")).decisions as [RecordedDecision];
    await undo([second.number]);
    expect((await read(sent)).verdict).toBe("removed");
    await undo([first.number]);
    const after = await read(sent);
    expect([after.verdict, after.reasons]).toEqual([before.verdict, before.reasons]);
    expect(after.decisions.map((d) => d.verdict)).toEqual([
      ...["held", "removed", "accepted", "removed", "held"],
    ]);
    expect(after.decisions.at(-1)?.reasons).toMatchObject([{ code: "undone_by_steward" }]);
    // Its owner may revise it as if a steward had never looked.
    expect(await (await revise(sent, goodTune())).json()).toMatchObject({ verdict: "accepted" });
  });

  test("of all but the last decision is refused, and so is twice", async () => {
    const { id } = await atlas.submit(inFeet());
    const other = await atlas.submit(inFeet(1));
    const [first] = (await decideOnAll([id], "accepted")).decisions as [RecordedDecision];
    const [more] = (await decideOnAll([other.id], "accepted")).decisions as [RecordedDecision];
    const [second] = (await decideOnAll([id], "held")).decisions as [RecordedDecision];
    const refused = await undo([more.number, first.number]);
    expect(refused.status).toBe(409);
    expect(answers.problem.parse(await refused.json()).detail).toContain("Nothing was taken back");
    expect((await undo([second.number])).status).toBe(200);
    expect((await undo([second.number])).status).toBe(409);
    expect((await undo([more.number])).status).toBe(200);
  });

  test("of what is no steward's decision is 404", async () => {
    await atlas.submit(inFeet());
    const { decisions } = await atlas.json("/api/steward/decisions");
    for (const number of [decisions[0].number, 99_999]) {
      expect((await undo([number])).status).toBe(404);
    }
    expect((await undo([])).status).toBe(422);
  });
});

test("every usual reason is taken for its verdict, and its owner reads it", async () => {
  for (const [verdict, usual] of Object.entries(USUAL_REASONS)) {
    for (const [usual_reason, sentence] of Object.entries(usual)) {
      const sent = await atlas.submit(goodTune());
      await atlas.send("/api/steward/decisions", { tunes: [sent.id], verdict, usual_reason });
      expect(await read(sent)).toMatchObject({
        verdict,
        reasons: [{ code: usual_reason, sentence }],
      });
    }
  }
});
