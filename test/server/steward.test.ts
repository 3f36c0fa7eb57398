import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { publishFit } from "../../db/fits.ts";
import { decide } from "../../db/steward.ts";
import { findTune, type TuneRow } from "../../db/tunes.ts";
import { ACCEPTED_MEANS } from "../../model/safety.ts";
import * as answers from "../../server/answers.ts";
import type { HeldTune, RecordedDecision } from "../../server/contract.ts";
import * as schemas from "../../server/steward-schemas.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "./atlas.ts";

const TOKEN = "steward-token-for-tests-only";

let atlas: TestAtlas;
beforeEach(async () => {
  atlas = await openTestAtlas({ stewardToken: TOKEN });
});
afterEach(() => atlas.close());

const bearer = (token: string) => ({ Authorization: `Bearer ${token}` });
const get = (path: string, headers: Record<string, string> = bearer(TOKEN)) =>
  atlas.app.request(path, { headers });
const json = async (path: string) => (await get(path)).json();
const decideOn = (id: string, body: unknown, headers: Record<string, string> = bearer(TOKEN)) =>
  atlas.app.request(`/api/steward/tunes/${id}/decision`, {
    method: "POST",
    headers: { "Content-Type": "application/json", ...headers },
    body: typeof body === "string" ? body : JSON.stringify(body),
  });
const submit = async (tune: unknown): Promise<{ id: string; receipt: string; verdict: string }> =>
  (await post(atlas.app, tune)).json();
/** Held at the door: its elevation was written in feet. */
const inFeet = (n = 0) => ({
  ...goodTune(n),
  site: { ...goodTune(n).site, elevation_m: 4265 },
});
const tunesInFit = async () => {
  await atlas.fit.refresh();
  const { groups } = await json("/api/fit");
  return groups[0]?.tunes ?? 0;
};

const READS = ["/api/steward/held", "/api/steward/decisions", "/api/steward/alarms"];

test("without a token in the configuration there is no such address, whatever is sent", async () => {
  const open = await openTestAtlas();
  for (const token of ["", "undefined", TOKEN]) {
    for (const path of READS) {
      expect((await open.app.request(path, { headers: bearer(token) })).status).toBe(404);
    }
  }
  const sent = await open.app.request("/api/steward/tunes/x/decision", { method: "POST" });
  expect(sent.status).toBe(404);
  const { paths, components } = await (await open.app.request("/api/openapi.json")).json();
  expect(Object.keys(paths).filter((p) => p.includes("steward"))).toEqual([]);
  expect(components.securitySchemes).not.toHaveProperty("steward");
  await open.close();
});

describe("whoever does not know the token", () => {
  const strangers: [string, Record<string, string>][] = [
    ["sends none", {}],
    ["sends another scheme", { Authorization: `Basic ${TOKEN}` }],
    ["sends a wrong one", bearer("wrong")],
    ["sends one that begins right", bearer(`${TOKEN}x`)],
    ["sends the beginning", bearer(TOKEN.slice(0, -1))],
  ];
  test.each(strangers)("%s: 401, nothing said, nothing written", async (_, headers) => {
    const { id } = await submit(inFeet());
    const refused = [
      ...(await Promise.all(READS.map((path) => get(path, headers)))),
      await get("/api/steward/nothing", headers),
      await decideOn(id, { verdict: "accepted", reason: "I should not be able to." }, headers),
    ];
    for (const response of refused) {
      expect(response.status).toBe(401);
      expect(response.headers.get("WWW-Authenticate")).toMatch(/^Bearer realm="steward"/);
      expect(response.headers.get("Content-Type")).toBe("application/problem+json");
      expect(response.headers.get("Cache-Control")).toBe("no-store");
      const text = await response.text();
      expect(text).not.toContain(id);
      expect(answers.problem.parse(JSON.parse(text)).title).toContain("steward");
    }
    expect((await json("/api/steward/decisions")).decisions.length).toBe(1);
  });

  test("is told apart from one whose token is wrong (RFC 6750 §3)", async () => {
    const challenge = async (headers: Record<string, string>) =>
      (await get("/api/steward/held", headers)).headers.get("WWW-Authenticate");
    expect(await challenge({})).not.toContain("error");
    expect(await challenge(bearer("wrong"))).toContain('error="invalid_token"');
  });

  test("is not looked at again for a minute after ten wrong tokens, however many come at once", async () => {
    const tries = await Promise.all(
      Array.from({ length: 25 }, (_, n) => get("/api/steward/held", bearer(`wrong-${n}`))),
    );
    const statuses = tries.map(({ status }) => status);
    expect(statuses.filter((status) => status === 401).length).toBe(10);
    const refused = tries.filter(({ status }) => status === 429);
    expect(refused.length).toBe(15);
    for (const response of refused) {
      expect(Number(response.headers.get("Retry-After"))).toBeGreaterThan(0);
      expect(answers.problem.parse(await response.json()).title).toBe("Too many wrong tokens");
    }
    // Not even the right one: whoever tries must not learn which of many it was.
    expect((await get("/api/steward/held")).status).toBe(429);
    atlas.pass(60_000);
    expect((await get("/api/steward/held")).status).toBe(200);
  });

  test("counts only wrong tokens", async () => {
    for (let n = 0; n < 30; n++) expect((await get("/api/steward/held")).status).toBe(200);
    for (let n = 0; n < 30; n++) expect((await get("/api/steward/held", {})).status).toBe(401);
    expect((await get("/api/steward/held")).status).toBe(200);
  });

  test("a receipt does not open the steward's routes", async () => {
    const { receipt } = await submit(goodTune());
    expect((await get("/api/steward/held", bearer(receipt))).status).toBe(401);
  });
});

describe("held tunes", () => {
  test("with reasons and decisions, and neither receipt nor the contributor's whole hash", async () => {
    await submit(goodTune(1));
    const { id, receipt } = await submit(inFeet());
    const row = (await findTune(atlas.db, id)) as TuneRow;
    const text = await (await get("/api/steward/held")).text();
    const { held, tunes, next, accepted_means } = schemas.heldAnswer.parse(JSON.parse(text));
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
      const tune = await submit(inFeet(n));
      ids.push(tune.id);
      if (n === 0) receipt = tune.receipt;
    }
    const seen: string[] = [];
    let after: number | null = 0;
    while (after !== null) {
      const page = await json(`/api/steward/held?limit=3&after=${after}`);
      expect(page.held).toBe(7);
      seen.push(...page.tunes.map((t: HeldTune) => t.id));
      after = page.next;
      // Held again, so it keeps its place.
      await atlas.app.request(`/api/tunes/${ids[0]}`, {
        method: "PUT",
        headers: { "Content-Type": "application/json", ...bearer(receipt) },
        body: JSON.stringify(inFeet(0)),
      });
    }
    expect(seen).toEqual(ids);
    await decideOn(ids[3] as string, { verdict: "accepted", reason: "Feet, looked up." });
    const left = (await json("/api/steward/held")).tunes.map((t: HeldTune) => t.id);
    expect(left).toEqual(ids.filter((_, n) => n !== 3));
  });

  test("a hundred on one page, as many as the edge's database can be asked about", async () => {
    await Promise.all(Array.from({ length: 101 }, (_, n) => submit(inFeet(n))));
    const { tunes, next } = await json("/api/steward/held?limit=100");
    expect(tunes.length).toBe(100);
    expect((await json(`/api/steward/held?limit=100&after=${next}`)).tunes.length).toBe(1);
  });
});

describe("a decision", () => {
  test("accepts a held tune, which then enters the published fit", async () => {
    await submit(goodTune(1));
    const { id, receipt } = await submit({ ...goodTune(2), tuned_on: "2026-12" });
    expect(await tunesInFit()).toBe(1);
    const reason = "The clock was a month ahead; all else agrees with its neighbours.";
    const response = await decideOn(id, { verdict: "accepted", reason: `  ${reason} ` });
    expect([response.status, response.headers.get("Cache-Control")]).toEqual([200, "no-store"]);
    const decided = schemas.decidedAnswer.parse(await response.json());
    expect(decided).toMatchObject({ id, verdict: "accepted", accepted_means: ACCEPTED_MEANS });
    expect(decided.safety.notice).toContain("Carbon monoxide kills");
    expect(decided.decisions.map((d) => [d.by, d.verdict])).toEqual([
      ["screening", "held"],
      ["steward", "accepted"],
    ]);
    expect(await tunesInFit()).toBe(2);
    expect(await (await get("/api/tunes.csv")).text()).toContain(id);
    expect((await json("/api/steward/held")).tunes).toEqual([]);
    // The contributor reads what was decided and why.
    const mine = await (await get(`/api/tunes/${id}`, bearer(receipt))).json();
    expect(mine).toMatchObject({ verdict: "accepted", reasons: [{ sentence: reason }] });
  });

  test("holds an accepted tune, which then leaves the published fit", async () => {
    await submit(goodTune(1));
    const { id } = await submit(goodTune(2));
    expect(await tunesInFit()).toBe(2);
    const reason = "Made up: sent by hand to try the atlas.";
    expect((await decideOn(id, { verdict: "held", reason })).status).toBe(200);
    expect(await tunesInFit()).toBe(1);
    expect(await (await get("/api/tunes.csv")).text()).not.toContain(id);
    const [held] = (await json("/api/steward/held")).tunes;
    expect(held).toMatchObject({
      id,
      reasons: [{ code: "held_by_steward", field: "tune", sentence: reason }],
    });
  });

  test("asks for a refresh of the fit by itself", async () => {
    const { id } = await submit(inFeet());
    await atlas.fit.settle();
    await decideOn(id, { verdict: "accepted", reason: "Feet, looked up." });
    expect(atlas.fit.pending).toBe(true);
    await atlas.fit.settle();
    expect((await json("/api/fit")).groups[0]).toMatchObject({ tunes: 1 });
  });

  test("on an unknown or withdrawn tune is 404, and none is recorded", async () => {
    const { id, receipt } = await submit(inFeet());
    await atlas.app.request(`/api/tunes/${id}`, { method: "DELETE", headers: bearer(receipt) });
    for (const unknown of [id, "0123456789abcdef01234567", "%27%3B--"]) {
      const response = await decideOn(unknown, { verdict: "accepted", reason: "Looks right." });
      expect(response.status).toBe(404);
      expect(response.headers.get("Cache-Control")).toBe("no-store");
      answers.problem.parse(await response.json());
    }
    const { decisions } = await json("/api/steward/decisions");
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
    expect((await json("/api/steward/decisions")).decisions).toEqual([]);
  });

  const bad: [string, unknown, number, string[]][] = [
    ["no reason", { verdict: "accepted" }, 422, ["reason"]],
    ["a short reason", { verdict: "accepted", reason: " ok " }, 422, ["reason"]],
    ["a long reason", { verdict: "held", reason: "x".repeat(301) }, 422, ["reason"]],
    ["another verdict", { verdict: "rejected", reason: "Looks odd." }, 422, ["verdict"]],
    ["both missing", {}, 422, ["verdict", "reason"]],
    ["kinds mixed up", { verdict: 1, reason: 2 }, 422, ["verdict", "reason"]],
    ["more than asked", { verdict: "held", reason: "Odd.", by: "fit" }, 422, ["by"]],
    ["no object", "[]", 422, ["decision"]],
    ["no JSON", "{", 400, []],
    ["nothing", "", 400, []],
    ["too much", `"${"x".repeat(70_000)}"`, 413, []],
  ];
  test.each(bad)("with %s is refused and named", async (_, body, status, fields) => {
    const { id } = await submit(inFeet());
    const response = await decideOn(id, body);
    expect(response.status).toBe(status);
    expect(response.headers.get("Cache-Control")).toBe("no-store");
    const { errors = [] } = answers.problem.parse(await response.json());
    expect(errors.map((e) => e.field)).toEqual(fields);
    expect((await json("/api/steward/held")).tunes[0].decisions.length).toBe(1);
  });

  test("of another content type is 415", async () => {
    const { id } = await submit(inFeet());
    const body = { verdict: "held", reason: "Looks odd." };
    const headers = { ...bearer(TOKEN), "Content-Type": "text/plain" };
    expect((await decideOn(id, body, headers)).status).toBe(415);
  });
});

describe("the audit trail", () => {
  test("newest first, a page at a time, by tune and by who decided; only ever longer", async () => {
    const { id } = await submit(inFeet(1));
    const other = await submit(inFeet(2));
    for (const verdict of ["accepted", "held", "accepted"]) {
      await decideOn(id, { verdict, reason: `Now ${verdict}.` });
    }
    const all = schemas.trailAnswer.parse(await json("/api/steward/decisions"));
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
      decided_on: "2026-11-25",
      reasons: [{ code: "accepted_by_steward", sentence: "Now accepted." }],
    });
    const seen: RecordedDecision[] = [];
    for (let after = ""; ; ) {
      const page = await json(`/api/steward/decisions?limit=2${after}`);
      seen.push(...page.decisions);
      if (page.next === null) break;
      after = `&after=${page.next}`;
    }
    expect(seen).toEqual(all.decisions);
    const counts = async (query: string) =>
      (await json(`/api/steward/decisions?${query}`)).decisions.length;
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
  ])("%s is 422 and names the field", async (query, field) => {
    const response = await get(`/api/steward/${query}`);
    expect([response.status, response.headers.get("Cache-Control")]).toEqual([422, "no-store"]);
    const { errors } = answers.problem.parse(await response.json());
    expect(errors?.map((e) => e.field)).toEqual([field]);
  });
});

test("alarms of the published fit, none before the first tune", async () => {
  expect(await json("/api/steward/alarms")).toEqual({ fit: "prior", alarms: [] });
  await submit(goodTune());
  await atlas.fit.refresh();
  const { version } = await json("/api/fit");
  const { fit } = schemas.alarmsAnswer.parse(await json("/api/steward/alarms"));
  expect(fit).toBe(version);
});

test("a tune that a steward holds stays held when its contributor revises it", async () => {
  const { id, receipt } = await submit(goodTune());
  await decideOn(id, { verdict: "held", reason: "Sent twice from one heater." });
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
  await decideOn(id, { verdict: "accepted", reason: "It is another heater." });
  expect(await tunesInFit()).toBe(1);
});

test("alarms that a version was published with", async () => {
  await submit(goodTune());
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
  expect(await json("/api/steward/alarms")).toEqual({ fit: "2026-11-25.2", alarms: [alarm] });
});

test("every answer is kept by nobody", async () => {
  for (const path of [...READS, "/api/steward/nothing"]) {
    expect((await get(path)).headers.get("Cache-Control")).toBe("no-store");
  }
});

test("with a token every route is described, and asks for it", async () => {
  const { paths, components } = await json("/api/openapi.json");
  expect(components.securitySchemes.steward).toMatchObject({ type: "http", scheme: "bearer" });
  const served = atlas.app.routes
    .filter((r) => r.method !== "ALL" && r.path.startsWith("/api/") && !r.path.includes("*"))
    .map((r) => `${r.method.toLowerCase()} ${r.path.replaceAll(/:(\w+)/g, "{$1}")}`);
  const described = Object.entries<object>(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((m) => `${m} ${path}`),
  );
  expect(new Set(described)).toEqual(new Set(served));
  const { get: held } = paths["/api/steward/held"];
  expect(held.security).toEqual([{ steward: [] }]);
  expect(
    held.parameters.map((p: { name: string; required: boolean }) => [p.name, p.required]),
  ).toEqual([
    ["after", false],
    ["limit", false],
  ]);
  const { post: decision } = paths["/api/steward/tunes/{id}/decision"];
  const { schema } = decision.requestBody.content["application/json"];
  expect(schema).toMatchObject({
    required: ["verdict", "reason"],
    properties: { reason: { minLength: 3, maxLength: 300 } },
  });
});
