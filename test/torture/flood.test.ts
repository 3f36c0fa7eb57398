import { pbkdf2Sync } from "node:crypto";
import { afterEach, expect, test } from "vitest";
import type { Tune } from "../../model/tune.ts";
import type { Challenge } from "../../server/contract/proof-of-work.ts";
import * as answers from "../../server/contract.ts";
import { FLOOD_LIMIT } from "../../server/flood.ts";
import { goodTune, openTestAtlas, post, type TestAtlas } from "../server/atlas.ts";
import { flood, floodAtlas } from "./flood.ts";

const MINUTE_ms = 60_000;
const LIMIT = 5;

let atlas: TestAtlas | undefined;
afterEach(async () => {
  await atlas?.close();
  atlas = undefined;
});

test("a flood from hundreds of networks: so many tunes get in and no more, but each owner's in the middle of it does", async () => {
  const { taken, refused, honest } = await floodAtlas(400, 4);
  expect(taken).toBe(FLOOD_LIMIT);
  expect([...refused]).toEqual([429]);
  expect(honest).toEqual([201, 201, 201, 201]);
});

/** An atlas in whose last minutes as many tunes came as it takes without a proof. */
async function openFlooded(): Promise<TestAtlas> {
  atlas = await openTestAtlas({ floodLimit: LIMIT });
  for (let n = 0; n < LIMIT; n++) expect((await flood(atlas, n)).status).toBe(201);
  return atlas;
}

async function challengeFor({ app }: TestAtlas, tune: Tune): Promise<Challenge> {
  const response = await post(app, tune);
  expect([response.status, response.headers.get("Retry-After")]).toEqual([429, "300"]);
  const { title, detail, challenge } = answers.problem.parse(await response.json());
  expect(title).toBe("A proof of work is needed");
  expect(detail).toMatch(/Nothing was stored; solve the challenge and send the tune again/);
  if (!challenge) throw new Error("There is no challenge.");
  return challenge;
}

/** PBKDF2 (RFC 8018) by OpenSSL, as the API's description says it: nothing of the library that the atlas and the page have. */
function solve({ parameters, signature }: Challenge, skip = 0): string {
  const { nonce, salt, cost, keyLength, keyPrefix } = parameters;
  for (let [counter, found] = [0, 0]; ; counter++) {
    const password = Buffer.alloc(20);
    password.write(nonce, "hex");
    password.writeUInt32BE(counter, 16);
    const salted = Buffer.from(salt, "hex");
    const derivedKey = pbkdf2Sync(password, salted, cost, keyLength, "sha256").toString("hex");
    if (!derivedKey.startsWith(keyPrefix) || found++ < skip) continue;
    return header({ challenge: { parameters, signature }, solution: { counter, derivedKey } });
  }
}

const header = (value: unknown) => Buffer.from(JSON.stringify(value)).toString("base64");

const send = async ({ app }: TestAtlas, tune: Tune, proof: string) => {
  const response = await post(app, tune, { "Proof-Of-Work": proof });
  return [response.status, (await response.json()).detail?.split(".")[0]];
};

test("a proof found by the description alone lets its tune in, once and no other; a forged, wrong, late or unreadable one does not", async () => {
  const here = await openFlooded();
  const mine = goodTune(1);
  const challenge = await challengeFor(here, mine);
  const proof = solve(challenge);

  expect(await send(here, goodTune(2), proof)).toEqual([
    429,
    "The Proof-Of-Work is for another tune",
  ]);
  const { parameters, signature } = challenge;
  const key = "00".repeat(32);
  const wrong = header({ challenge, solution: { counter: 0, derivedKey: key } });
  expect(await send(here, mine, wrong)).toEqual([
    429,
    "The Proof-Of-Work does not solve its challenge",
  ]);
  const easier = solve({ parameters: { ...parameters, cost: 1 }, signature });
  expect(await send(here, mine, easier)).toEqual([
    429,
    "The Proof-Of-Work is of no challenge of this atlas",
  ]);
  for (const unreadable of ["no", "e30=", header({ challenge, solution: { counter: "0" } })]) {
    expect(await send(here, mine, unreadable)).toEqual([429, "The Proof-Of-Work cannot be read"]);
  }
  expect((await send(here, mine, proof))[0]).toBe(201);
  // Another counter that solves it is no new proof.
  for (const again of [proof, solve(challenge, 1)]) {
    expect(await send(here, mine, again)).toEqual([429, "The Proof-Of-Work was used before"]);
  }

  const another = solve(await challengeFor(here, mine));
  here.pass(11 * MINUTE_ms);
  for (let n = 0; n < LIMIT; n++) expect((await flood(here, n)).status).toBe(201);
  expect(await send(here, mine, another)).toEqual([429, "The Proof-Of-Work is too late"]);
});

test("nobody is asked before the flood, when it is over, or whatever the clock does; a bad tune is told what is wrong with it", async () => {
  const here = await openFlooded();
  expect((await post(here.app, { ...goodTune(1), tuned_on: "soon" })).status).toBe(422);
  await challengeFor(here, goodTune(1));
  here.pass(4 * MINUTE_ms);
  await challengeFor(here, goodTune(1));
  here.pass(6 * MINUTE_ms);
  expect((await post(here.app, goodTune(1))).status).toBe(201);
  here.pass(-60 * MINUTE_ms);
  expect((await post(here.app, goodTune(2))).status).toBe(201);
});

test("withdrawing, revising and reading go on in a flood", async () => {
  atlas = await openTestAtlas({ floodLimit: LIMIT });
  const sent = await (await post(atlas.app, goodTune(1))).json();
  for (let n = 0; n < LIMIT; n++) await flood(atlas, n);
  await challengeFor(atlas, goodTune(2));
  const own = (method: string, body?: Tune) =>
    atlas?.app.request(`/api/tunes/${sent.id}`, {
      method,
      headers: { Authorization: `Bearer ${sent.receipt}`, "Content-Type": "application/json" },
      ...(body && { body: JSON.stringify(body) }),
    });
  expect((await own("PUT", goodTune(1)))?.status).toBe(200);
  expect((await own("GET"))?.status).toBe(200);
  expect((await own("DELETE"))?.status).toBe(204);
});
