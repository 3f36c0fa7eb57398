import { expect, test } from "vitest";
import * as answers from "../../server/contract.ts";
import { goodTune, openTestAtlas, post } from "./atlas.ts";
import { ownTune } from "./fresh-atlas.ts";

test("writes beyond the limit wait, per client", async () => {
  const limited = await openTestAtlas({ writeLimit: 2 });
  const send = (client: string) => post(limited.app, goodTune(), { "X-Test-Client": client });
  expect([(await send("a")).status, (await send("a")).status]).toEqual([201, 201]);
  const refused = await send("a");
  expect(refused.status).toBe(429);
  expect(Number(refused.headers.get("Retry-After"))).toBeGreaterThan(0);
  expect((await send("b")).status).toBe(201);
  limited.pass(60_001);
  expect((await send("a")).status).toBe(201);
  await limited.close();
});

test("the addresses of one IPv6 line are one client, and a network of many clients has a limit of its own", async () => {
  const limited = await openTestAtlas({ writeLimit: 2 });
  const send = async (client: string) =>
    (await post(limited.app, goodTune(), { "X-Test-Client": client })).status;
  const line = await Promise.all([1, 2, 3].map((n) => send(`2001:db8:0:1::${n}`)));
  // Which of the three comes last is chance.
  expect(line.toSorted()).toEqual([201, 201, 429]);
  // Five clients' worth of writes for all of 203.0.113.0/24.
  for (let n = 0; n < 10; n++) expect([n, await send(`203.0.113.${n}`)]).toEqual([n, 201]);
  expect(await send("203.0.113.10")).toBe(429);
  expect(await send("198.51.100.1")).toBe(201);
  await limited.close();
});

test("what is dear to answer is limited per client, with a word on when to ask again; everything else is not", async () => {
  const limited = await openTestAtlas({ readLimit: 2 });
  const from = { "X-Test-Client": "a" };
  const read = (path: string, headers = {}) =>
    limited.app.request(path, { headers: { ...from, ...headers } });
  const csv = await read("/api/tunes.csv");
  expect([csv.status, (await read("/api/tunes.parquet")).status]).toEqual([200, 200]);
  const refused = await limited.app.request("/api/start", {
    method: "POST",
    headers: { ...from, "Content-Type": "application/json" },
    body: JSON.stringify({ heat_kW: 5, elevation_m: 2240, own_tunes: [ownTune()] }),
  });
  expect([refused.status, refused.headers.get("Retry-After")]).toEqual([429, "60"]);
  expect(answers.problem.parse(await refused.json())).toMatchObject({
    title: "Too many at once",
    detail: "At most 2 questions or downloads of this kind a minute. Ask again in 60 s.",
  });
  // Whoever has it already is told so at no cost.
  const known = { "If-None-Match": csv.headers.get("ETag") ?? "" };
  expect((await read("/api/tunes.csv", known)).status).toBe(304);
  for (let n = 0; n < 5; n++)
    for (const path of [`/api/start?heat_kW=5&elevation_m=${n}`, "/api/cells/world", "/api/data"])
      expect((await read(path)).status).toBe(200);
  expect((await read("/api/tunes.csv", { "X-Test-Client": "b" })).status).toBe(200);
  limited.pass(60_001);
  expect((await read("/api/tunes.csv")).status).toBe(200);
  await limited.close();
});
