import { existsSync, statSync } from "node:fs";
import { sql } from "drizzle-orm";
import { expect, test } from "vitest";
import { decisions } from "../../db/schema.ts";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { TOKEN } from "../server/stewards-atlas.ts";

/** The file's end is reached after a few hundred tunes, by SQLite's own limit. */
const MOST_bytes = 3 * 1024 * 1024;

interface Taken {
  id: string;
  receipt: string;
}

const withdraw = async (app: TestAtlas["app"], { id, receipt }: Taken) =>
  app.request(`/api/tunes/${id}`, {
    method: "DELETE",
    headers: { Authorization: `Bearer ${receipt}` },
  });

test("no room left: new tunes are told so and lost by nobody, withdrawing works, readiness says it, and with room again tunes are taken", async () => {
  const told: string[] = [];
  const atlas = await openTestAtlas({
    most_bytes: MOST_bytes,
    onTrouble: ({ event }) => told.push(event),
  });
  const { app } = atlas;
  const ready = () => app.request("/api/ready");
  expect(answers.ready.parse(await (await ready()).json())).toEqual({ ready: true });
  const taken: Taken[] = [];
  let refused = await post(app, goodTune(0), { "Idempotency-Key": "number-00000000" });
  for (let n = 1; refused.status === 201; n++) {
    taken.push(await refused.json());
    refused = await post(app, goodTune(n), {
      "Idempotency-Key": `number-${String(n).padStart(8, "0")}`,
    });
  }
  expect(taken.length).toBeGreaterThan(50);
  expect(refused.status).toBe(507);
  expect((await post(app, goodTune(0))).status).toBe(507);
  // Whoever runs it is, too, once.
  expect(told).toEqual(["storage short"]);
  expect(Number(refused.headers.get("Retry-After"))).toBeGreaterThan(0);
  expect(answers.problem.parse(await refused.json()).detail).toMatch(/Nothing was stored/);
  const not = await ready();
  expect(not.status).toBe(503);
  expect(answers.problem.parse(await not.json()).errors).toMatchObject([{ code: "storage_short" }]);
  // Alive all the same: nobody should restart it for this.
  expect((await app.request("/api/health")).status).toBe(200);

  const half = taken.splice(0, Math.ceil(taken.length / 2));
  for (const one of half) expect((await withdraw(app, one)).status).toBe(204);
  expect((await ready()).status).toBe(200);
  expect((await post(app, goodTune(1))).status).toBe(201);
  await atlas.fit.settle();
  const { tunes } = answers.health.parse(await (await app.request("/api/health")).json());
  expect(tunes).toBe(taken.length + 1);
  await atlas.close();
});

test("the very end of the file met in the middle of writing: all or nothing, and what was there stays", async () => {
  const atlas = await openTestAtlas();
  const first = await (await post(atlas.app, goodTune(0))).json();
  const [[pages]] = (await atlas.db.values(sql`PRAGMA page_count`)) as [[number]];
  // Set behind the atlas's back, as a disk fills that others write to: it meets the end unprepared.
  await atlas.db.values(sql.raw(`PRAGMA max_page_count = ${pages + 1}`));
  const statuses: number[] = [];
  for (let n = 1; n < 40; n++) statuses.push((await post(atlas.app, goodTune(n))).status);
  expect(statuses.every((status) => status === 201 || status === 507)).toBe(true);
  expect(statuses).toContain(507);
  const stored = statuses.filter((status) => status === 201).length + 1;
  const { tunes } = await (await atlas.app.request("/api/health")).json();
  expect(tunes).toBe(stored);
  expect((await withdraw(atlas.app, first)).status).toBe(204);
  // With room again the fit makes up for what it could not write.
  await atlas.db.values(sql.raw(`PRAGMA max_page_count = ${2 ** 31}`));
  await atlas.fit.settle();
  const { groups } = await atlas.fit.current();
  expect(groups.map((group) => group.tunes)).toEqual([stored - 1, stored - 1]);
  await atlas.close();
});

test("full to the last page: the ballast makes room for a withdrawal and is there again; where it does not, the owner is told that the tune is still there", async () => {
  const atlas = await openTestAtlas({ disk_reserve_bytes: 0, stewardToken: TOKEN });
  const { app, db } = atlas;
  const taken: Taken[] = [];
  for (let n = 0; n < 40; n++) taken.push(await (await post(app, goodTune(n))).json());
  await atlas.fit.settle();
  const ballast = `${atlas.file}.ballast`;
  const isThere = () => {
    expect(statSync(ballast).size).toBe(2 * 1024 * 1024);
    expect(statSync(ballast).mode & 0o77).toBe(0);
  };
  isThere();
  /** Leaves no place in the newest page for what the log says of a withdrawal, and no further page. */
  const fill = async () => {
    const [[pages]] = (await db.values(sql`PRAGMA page_count`)) as [[number]];
    await db.values(sql.raw(`PRAGMA max_page_count = ${pages}`));
    for (const letters of [3000, 300, 2]) {
      const written = { tune: "", by: "contributor", verdict: "withdrawn" as const };
      const line = { ...written, reasons: "x".repeat(letters), decided_on: "2026-11-25" };
      for (let fits = true; fits; ) {
        fits = await db
          .insert(decisions)
          .values(line)
          .then(
            () => true,
            () => false,
          );
      }
    }
  };
  const grow = () => db.values(sql.raw(`PRAGMA max_page_count = ${2 ** 31}`));
  /** Withdraws a tune from the full file; where it may grow it does so once the ballast is gone, as a disk has room again then. */
  const withdrawn = async (one: Taken, mayGrow: boolean) => {
    await fill();
    let [isGiven, answer]: [boolean, Response | undefined] = [false, undefined];
    void withdraw(app, one).then((response) => {
      answer = response;
    });
    while (!answer) {
      if (mayGrow && !existsSync(ballast)) {
        isGiven = true;
        await grow();
      }
      await new Promise(setImmediate);
    }
    return { isGiven, answer: answer as Response };
  };
  // A tune may leave a page empty when it goes, and need no room: then the next one is tried.
  for (let isGiven = false; !isGiven; ) {
    const done = await withdrawn(taken.pop() as Taken, true);
    expect(done.answer.status).toBe(204);
    isGiven = done.isGiven;
  }
  isThere();
  await grow();
  await atlas.fit.settle();

  let [last, refused]: [Taken, Response | undefined] = [taken[0] as Taken, undefined];
  while (!refused || refused.status === 204) {
    last = taken.pop() as Taken;
    refused = (await withdrawn(last, false)).answer;
  }
  expect(refused.status).toBe(507);
  const { detail } = answers.problem.parse(await refused.json());
  expect(detail).toMatch(/The tune is not withdrawn/);
  expect(detail).not.toMatch(/still works/);
  const decided = await app.request("/api/steward/decisions", {
    method: "POST",
    headers: { Authorization: `Bearer ${TOKEN}`, "Content-Type": "application/json" },
    body: JSON.stringify({ tunes: [last.id], verdict: "held", reason: "r".repeat(200) }),
  });
  expect(decided.status).toBe(507);
  expect(answers.problem.parse(await decided.json()).detail).toMatch(/Nothing was decided/);
  isThere();
  await grow();
  expect((await withdraw(app, last)).status).toBe(204);
  await atlas.close();
});
