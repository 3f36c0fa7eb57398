import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { publishFit } from "../../db/fits.ts";
import { decide } from "../../db/steward.ts";
import { findTune, type TuneRow } from "../../db/tunes.ts";
import { ACCEPTED_MEANS } from "../../model/safety.ts";
import type { RecordedDecision, StewardsTune } from "../../server/contract.ts";
import * as answers from "../../server/contract.ts";
import { goodTune } from "./atlas.ts";
import { bearer, inFeet, openStewardsAtlas, type StewardsAtlas, TOKEN } from "./stewards-atlas.ts";

let atlas: StewardsAtlas;
beforeEach(async () => {
  atlas = await openStewardsAtlas();
});
afterEach(() => atlas.close());

const tunesInFit = async () => {
  await atlas.fit.refresh();
  const { groups } = await atlas.json("/api/fit");
  return groups[0]?.tunes ?? 0;
};

describe("held tunes", () => {
  test("with reasons and decisions, and neither receipt nor the contributor's whole hash", async () => {
    await atlas.submit(goodTune(1));
    const { id, receipt } = await atlas.submit(inFeet());
    const row = (await findTune(atlas.db, id)) as TuneRow;
    const text = await (await atlas.get("/api/steward/held")).text();
    const { held, tunes, next, accepted_means } = answers.heldAnswer.parse(JSON.parse(text));
    expect([held, tunes.length, next, accepted_means]).toEqual([1, 1, null, ACCEPTED_MEANS]);
    expect(tunes[0]).toMatchObject({ id, reasons: [{ code: "elevation_in_feet" }] });
    expect(tunes[0]?.decisions).toMatchObject([{ tune: id, by: "screening", verdict: "held" }]);
    for (const secret of [receipt, row.receipt_sha256, row.contributor, inFeet().contributor]) {
      expect(text).not.toContain(secret);
    }
    expect(tunes[0]?.contributor).toBe(row.contributor.slice(0, 16));
  });

  test("oldest first, a page at a time, also when one of them is revised or decided meanwhile", async () => {
    const ids: string[] = [];
    let receipt = "";
    for (let n = 0; n < 7; n++) {
      const tune = await atlas.submit(inFeet(n));
      ids.push(tune.id);
      if (n === 0) receipt = tune.receipt;
    }
    const seen: string[] = [];
    let after: number | null = 0;
    while (after !== null) {
      const page = await atlas.json(`/api/steward/held?limit=3&after=${after}`);
      expect(page.held).toBe(7);
      seen.push(...page.tunes.map((t: StewardsTune) => t.id));
      after = page.next;
      // Held again, so it keeps its place.
      await atlas.app.request(`/api/tunes/${ids[0]}`, {
        method: "PUT",
        headers: { "Content-Type": "application/json", ...bearer(receipt) },
        body: JSON.stringify(inFeet(0)),
      });
    }
    expect(seen).toEqual(ids);
    await atlas.decideOn(ids[3] as string, { verdict: "accepted", reason: "Feet, looked up." });
    const left = (await atlas.json("/api/steward/held")).tunes.map((t: StewardsTune) => t.id);
    expect(left).toEqual(ids.filter((_, n) => n !== 3));
  });

  test("a hundred on one page, as many as the edge's database can be asked about", async () => {
    await Promise.all(Array.from({ length: 101 }, (_, n) => atlas.submit(inFeet(n))));
    const { tunes, next } = await atlas.json("/api/steward/held?limit=100");
    expect(tunes.length).toBe(100);
    expect((await atlas.json(`/api/steward/held?limit=100&after=${next}`)).tunes.length).toBe(1);
  });
});

describe("a decision", () => {
  test("accepts a held tune, which then enters the published fit", async () => {
    await atlas.submit(goodTune(1));
    const { id, receipt } = await atlas.submit({ ...goodTune(2), tuned_on: "2026-12" });
    expect(await tunesInFit()).toBe(1);
    const reason = "The clock was a month ahead; all else agrees with its neighbours.";
    const response = await atlas.decideOn(id, { verdict: "accepted", reason: `  ${reason} ` });
    expect([response.status, response.headers.get("Cache-Control")]).toEqual([200, "no-store"]);
    const decided = answers.decidedAnswer.parse(await response.json());
    expect(decided).toMatchObject({ gone: [], accepted_means: ACCEPTED_MEANS });
    expect(decided.safety.notice).toContain("Carbon monoxide kills");
    expect(decided.decisions).toMatchObject([{ tune: id, by: "steward", verdict: "accepted" }]);
    expect(await tunesInFit()).toBe(2);
    expect(await (await atlas.get("/api/tunes.csv")).text()).toContain(id);
    expect((await atlas.json("/api/steward/held")).tunes).toEqual([]);
    // The contributor reads what was decided and why.
    const mine = await (await atlas.get(`/api/tunes/${id}`, bearer(receipt))).json();
    expect(mine).toMatchObject({ verdict: "accepted", reasons: [{ sentence: reason }] });
  });

  test("holds an accepted tune, which then leaves the published fit", async () => {
    await atlas.submit(goodTune(1));
    const { id } = await atlas.submit(goodTune(2));
    expect(await tunesInFit()).toBe(2);
    const reason = "Made up: sent by hand to try the atlas.";
    expect((await atlas.decideOn(id, { verdict: "held", reason })).status).toBe(200);
    expect(await tunesInFit()).toBe(1);
    expect(await (await atlas.get("/api/tunes.csv")).text()).not.toContain(id);
    const [held] = (await atlas.json("/api/steward/held")).tunes;
    expect(held).toMatchObject({
      id,
      reasons: [{ code: "held_by_steward", field: "tune", sentence: reason }],
    });
  });

  test("asks for a refresh of the fit by itself", async () => {
    const { id } = await atlas.submit(inFeet());
    await atlas.fit.settle();
    await atlas.decideOn(id, { verdict: "accepted", reason: "Feet, looked up." });
    expect(atlas.fit.pending).toBe(true);
    await atlas.fit.settle();
    expect((await atlas.json("/api/fit")).groups[0]).toMatchObject({ tunes: 1 });
  });

  test("on an unknown or withdrawn tune is 404, and none is recorded", async () => {
    const { id, receipt } = await atlas.submit(inFeet());
    await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) });
    for (const unknown of [id, "0123456789abcdef01234567", "%27%3B--"]) {
      const response = await atlas.decideOn(unknown, {
        verdict: "accepted",
        reason: "Looks right.",
      });
      expect(response.status).toBe(404);
      expect(response.headers.get("Cache-Control")).toBe("no-store");
      answers.problem.parse(await response.json());
    }
    const { decisions } = await atlas.json("/api/steward/decisions");
    expect(decisions).toMatchObject([{ tune: null, by: "contributor", verdict: "withdrawn" }]);
  });

  test("that a withdrawal overtakes leaves nothing behind: withdrawn means gone", async () => {
    const late = decide(atlas.db, {
      tune: "gone",
      verdict: "accepted",
      reasons: "[]",
      decided_on: "2026-11-25",
    });
    await atlas.db.batch(late as Parameters<typeof atlas.db.batch>[0]);
    expect((await atlas.json("/api/steward/decisions")).decisions).toEqual([]);
  });

  const bad: [string, unknown, number, string[]][] = [
    ["no reason", { verdict: "accepted" }, 422, ["reason"]],
    ["a short reason", { verdict: "accepted", reason: " ok " }, 422, ["reason"]],
    ["a long reason", { verdict: "held", reason: "x".repeat(301) }, 422, ["reason"]],
    ["another verdict", { verdict: "rejected", reason: "Looks odd." }, 422, ["verdict"]],
    ["both missing", {}, 422, ["verdict", "reason"]],
    ["kinds mixed up", { verdict: 1, reason: 2 }, 422, ["verdict", "reason"]],
    ["more than asked", { verdict: "held", reason: "Odd.", by: "fit" }, 422, ["by"]],
    ["no tunes", { tunes: [], verdict: "held", reason: "Odd." }, 422, ["tunes"]],
    [
      "too many tunes",
      { tunes: Array(101).fill("x"), verdict: "held", reason: "Odd." },
      422,
      ["tunes"],
    ],
    [
      "two reasons",
      { verdict: "removed", reason: "Odd.", usual_reason: "steward_mistyped" },
      422,
      ["reason"],
    ],
    [
      "another verdict's reason",
      { verdict: "held", usual_reason: "steward_mistyped" },
      422,
      ["usual_reason"],
    ],
    [
      "an unknown usual reason",
      { verdict: "held", usual_reason: "because" },
      422,
      ["usual_reason"],
    ],
    ["no object", "[]", 422, ["decision"]],
    ["no JSON", "{", 400, []],
    ["nothing", "", 400, []],
    ["too much", `"${"x".repeat(70_000)}"`, 413, []],
  ];
  test.each(bad)("with %s is refused and named", async (_, body, status, fields) => {
    const { id } = await atlas.submit(inFeet());
    const response = await atlas.decideOn(id, body);
    expect(response.status).toBe(status);
    expect(response.headers.get("Cache-Control")).toBe("no-store");
    const { errors = [] } = answers.problem.parse(await response.json());
    expect(errors.map((e) => e.field)).toEqual(fields);
    expect((await atlas.json("/api/steward/held")).tunes[0].decisions.length).toBe(1);
  });

  test("of another content type is 415", async () => {
    const { id } = await atlas.submit(inFeet());
    const body = { verdict: "held", reason: "Looks odd." };
    const headers = { ...bearer(TOKEN), "Content-Type": "text/plain" };
    expect((await atlas.decideOn(id, body, headers)).status).toBe(415);
  });
});

test("a tune that a steward holds stays held when its contributor revises it", async () => {
  const { id, receipt } = await atlas.submit(goodTune());
  await atlas.decideOn(id, { verdict: "held", reason: "Sent twice from one heater." });
  const revised = await atlas.app.request(`/api/tunes/${id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", ...bearer(receipt) },
    body: JSON.stringify(goodTune(1)),
  });
  expect(await revised.json()).toMatchObject({
    verdict: "held",
    reasons: [{ code: "held_by_steward", field: "tune" }],
  });
  expect(await tunesInFit()).toBe(0);
  await atlas.decideOn(id, { verdict: "accepted", reason: "It is another heater." });
  expect(await tunesInFit()).toBe(1);
});

describe("the audit trail", () => {
  test("newest first, a page at a time, by tune and by who decided; only ever longer", async () => {
    const { id } = await atlas.submit(inFeet(1));
    const other = await atlas.submit(inFeet(2));
    for (const verdict of ["accepted", "held", "accepted"]) {
      await atlas.decideOn(id, { verdict, reason: `Now ${verdict}.` });
    }
    const all = answers.trailAnswer.parse(await atlas.json("/api/steward/decisions"));
    expect(all.next).toBe(null);
    const numbers = all.decisions.map((d) => d.number);
    expect(numbers).toEqual(numbers.toSorted((a, b) => b - a));
    expect(all.decisions.map((d) => d.verdict)).toEqual([
      "accepted",
      "held",
      "accepted",
      "held",
      "held",
    ]);
    expect(all.decisions[0]).toMatchObject({
      tune: id,
      by: "steward",
      decided_on: "2026-11",
      reasons: [{ code: "accepted_by_steward", sentence: "Now accepted." }],
    });
    const seen: RecordedDecision[] = [];
    for (let after = ""; ; ) {
      const page = await atlas.json(`/api/steward/decisions?limit=2${after}`);
      seen.push(...page.decisions);
      if (page.next === null) break;
      after = `&after=${page.next}`;
    }
    expect(seen).toEqual(all.decisions);
    const counts = async (query: string) =>
      (await atlas.json(`/api/steward/decisions?${query}`)).decisions.length;
    expect(await counts(`tune=${id}`)).toBe(4);
    expect(await counts(`tune=${other.id}`)).toBe(1);
    expect(await counts("by=steward")).toBe(3);
    expect(await counts(`by=screening&tune=${id}`)).toBe(1);
    expect(await counts("tune=unknown")).toBe(0);
  });

  test.each([
    ["decisions?by=nobody", "by"],
    ["decisions?limit=0", "limit"],
    ["decisions?limit=101", "limit"],
    ["decisions?after=-1", "after"],
    ["held?after=x", "after"],
    ["held?limit=1.5", "limit"],
    ["held?tune=x", "tune"],
    ["waiting?limit=101", "limit"],
    ["waiting?after=20", "after"],
    ["waiting?tune=x", "tune"],
  ])("%s is 422 and names the field", async (query, field) => {
    const response = await atlas.get(`/api/steward/${query}`);
    expect([response.status, response.headers.get("Cache-Control")]).toEqual([422, "no-store"]);
    const { errors } = answers.problem.parse(await response.json());
    expect(errors?.map((e) => e.field)).toEqual([field]);
  });
});

test("alarms of the published fit, none before the first tune", async () => {
  expect(await atlas.json("/api/steward/alarms")).toEqual({
    fit: "prior",
    alarms: [],
    refused: null,
  });
  await atlas.submit(goodTune());
  await atlas.fit.refresh();
  const { version } = await atlas.json("/api/fit");
  const { fit } = answers.alarmsAnswer.parse(await atlas.json("/api/steward/alarms"));
  expect(fit).toBe(version);
});

test("alarms that a version was published with", async () => {
  await atlas.submit(goodTune());
  await atlas.fit.refresh();
  const alarm = {
    code: "drift",
    heat_kW: 5,
    end: "low",
    sentence: "The low end of 5 kW heaters drifts.",
    value: 3.2,
    threshold: 2.9,
  } as const;
  const today = await atlas.fit.current();
  await publishFit(atlas.db, { ...today, version: "2026-11-25.2", alarms: [alarm] });
  await atlas.fit.refresh();
  expect(await atlas.json("/api/steward/alarms")).toEqual({
    fit: "2026-11-25.2",
    alarms: [alarm],
    refused: null,
  });
});
