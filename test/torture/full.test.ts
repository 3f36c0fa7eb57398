import { sql } from "drizzle-orm";
import { expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

/** The file's end is reached after a few hundred tunes, by SQLite's own limit. */
const MOST_bytes = 3 * 1024 * 1024;

test("no room left: new tunes are told so and lost by nobody, withdrawing works, readiness says it, and with room again tunes are taken", async () => {
  const atlas = await openTestAtlas({ most_bytes: MOST_bytes });
  const { app } = atlas;
  const ready = () => app.request("/api/ready");
  expect(answers.ready.parse(await (await ready()).json())).toEqual({ ready: true });
  const taken: { id: string; receipt: string }[] = [];
  let refused = await post(app, goodTune(0), { "Idempotency-Key": "number-00000000" });
  for (let n = 1; refused.status === 201; n++) {
    taken.push(await refused.json());
    refused = await post(app, goodTune(n), {
      "Idempotency-Key": `number-${String(n).padStart(8, "0")}`,
    });
  }
  expect(taken.length).toBeGreaterThan(50);
  expect(refused.status).toBe(507);
  expect(Number(refused.headers.get("Retry-After"))).toBeGreaterThan(0);
  expect(answers.problem.parse(await refused.json()).detail).toMatch(/Nothing was stored/);
  const not = await ready();
  expect(not.status).toBe(503);
  expect(answers.problem.parse(await not.json()).errors).toMatchObject([{ code: "storage_short" }]);
  // Alive all the same: nobody should restart it for this.
  expect((await app.request("/api/health")).status).toBe(200);

  const withdraw = ({ id, receipt }: { id: string; receipt: string }) =>
    app.request(`/api/tunes/${id}`, {
      method: "DELETE",
      headers: { Authorization: `Bearer ${receipt}` },
    });
  const half = taken.splice(0, Math.ceil(taken.length / 2));
  for (const one of half) expect((await withdraw(one)).status).toBe(204);
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
  const gone = await atlas.app.request(`/api/tunes/${first.id}`, {
    method: "DELETE",
    headers: { Authorization: `Bearer ${first.receipt}` },
  });
  expect(gone.status).toBe(204);
  // With room again the fit makes up for what it could not write.
  await atlas.db.values(sql.raw(`PRAGMA max_page_count = ${2 ** 31}`));
  await atlas.fit.settle();
  const { groups } = await atlas.fit.current();
  expect(groups.map((group) => group.tunes)).toEqual([stored - 1, stored - 1]);
  await atlas.close();
});
