import { afterEach, expect, test, vi } from "vitest";
import { waitingSizes } from "../../db/schema.ts";
import { ownersOfWaitingSizes } from "../../db/waiting.ts";
import type { Tune } from "../../model/tune.ts";
import * as answers from "../../server/contract.ts";
import { HOUR_ms, openWith, submit, suffer } from "../study/poisoning/attack.ts";
import { openTestAtlas, type TestAtlas } from "./atlas.ts";
import { honestCrowd, tuneAt } from "./crowd.ts";
import { bearer, TOKEN } from "./stewards-atlas.ts";

/** A size of which an atlas of ten owners of another one knows little or nothing. */
const SIZE_kW = 8;
/** Owners of a size that its tunes wait for. */
const OWNERS = 3;
/** A week of one client, as much as it may send. */
const ATTACK = { days: 7, tunes: 29, keys: 29, clients: 1, heat_kW: SIZE_kW };
/** How many honest owners of the size there are, and how many times the right pump rate is told: far off, and near enough to be believed. */
const AGAINST = [
  { few: 0, times: 1.35 },
  { few: 1, times: 1.35 },
  { few: 1, times: 1.15 },
  { few: 3, times: 0.75 },
];

let atlas: TestAtlas;
const warned = vi.spyOn(console, "warn").mockImplementation(() => {});
afterEach(async () => {
  warned.mockClear();
  await atlas.close();
});

const ofSize = (tune: Tune, contributor: string): Tune => ({
  ...tune,
  heater: { heat_kW: SIZE_kW },
  contributor,
});
/** Honest owners of the second size. */
const owners = (count: number) =>
  honestCrowd(count, 7).map((tune, n) => ofSize(tune, `owner-of-eight-${1000 + n}`));

const json = async (path: string) => (await atlas.app.request(path)).json();
const start = async () =>
  answers.startTune.parse(await json(`/api/start?heat_kW=${SIZE_kW}&elevation_m=3000`));
const exported = async () => (await atlas.app.request("/api/tunes.csv")).text();

async function pass(days: number): Promise<void> {
  for (let hour = 0; hour < 24 * days; hour += 6) {
    atlas.pass(6 * HOUR_ms);
    await atlas.fit.refresh();
  }
}

test("one client moves the average of a size that nobody has tuned not at all within a week, and of one with few owners by less than 2 %", async () => {
  for (const [n, { few, times }] of AGAINST.entries()) {
    if (n > 0) await atlas.close();
    atlas = await openWith(10, 6, 1, owners(few));
    const { moved_pct } = await suffer(atlas, ATTACK, { times, elevation_m: 4000 });
    const against = `${few} owners, ${times} times`;
    if (few === 0) expect(moved_pct, against).toBe(0);
    else expect(moved_pct, against).toBeLessThan(2);
  }
});

test("an owner who counts moves nothing of a size that waits, either", async () => {
  atlas = await openWith(10);
  const [known] = honestCrowd(1, 1) as [Tune];
  const before = await start();
  const sent = await submit(
    atlas,
    ofSize(tuneAt(4000, 1.35, ""), known.contributor),
    "203.0.113.7",
  );
  expect(sent).toMatchObject({ verdict: "accepted", counts_from: null, owners_needed: OWNERS });
  await pass(1);
  expect(await start()).toEqual(before);
  expect(await exported()).not.toContain(sent.id);
});

test("tunes of a new size count together once three of its owners do; each is told what it waits for", async () => {
  atlas = await openWith(10);
  const read = async ({ id, receipt }: { id: string; receipt: string }) =>
    answers.keptTune.parse(
      await (await atlas.app.request(`/api/tunes/${id}`, { headers: bearer(receipt) })).json(),
    );
  const sent = [];
  for (const [n, tune] of owners(OWNERS).entries()) {
    sent.push(await submit(atlas, tune, `198.51.${n}.1`));
    await pass(1);
  }
  expect(sent).toMatchObject(Array(OWNERS).fill({ owners_needed: OWNERS }));
  const [first] = sent as [(typeof sent)[number]];
  await pass(4);
  expect(await read(first)).toMatchObject({
    ...{ counts_from: null, owners_needed: OWNERS },
    fit: { low: "not in it", high: "not in it" },
  });
  const scaling = `/api/scaling?heat_kW=${SIZE_kW}&end=low`;
  expect(await json(scaling)).toMatchObject({ points: [], points_total: 0 });
  expect((await start()).basis.prior_only).toBe(true);
  await pass(2);
  expect((await start()).basis).toMatchObject({ contributors: OWNERS, prior_only: false });
  expect(await json(scaling)).toMatchObject({ points_total: OWNERS });
  expect(await read(first)).toMatchObject({ owners_needed: null, fit: { low: "kept" } });
  const csv = await exported();
  for (const { id } of sent) expect(csv).toContain(id);
  // The next one waits as anybody does.
  const next = ofSize(tuneAt(500, 1, ""), "owner-of-eight-9999");
  expect(await submit(atlas, next, "192.0.2.1")).toMatchObject({ owners_needed: null });
});

test("a steward who lets an owner count lets the size count, too", async () => {
  atlas = await openWith(10);
  const [one] = owners(1) as [Tune];
  const sent = await submit(atlas, one, "198.51.1.1");
  const steward = { "Content-Type": "application/json", ...bearer(TOKEN) };
  const path = "/api/steward";
  const listed = await atlas.app.request(`${path}/waiting`, { headers: steward });
  const [newcomer] = answers.waitingAnswer.parse(await listed.json()).waiting;
  await atlas.app.request(`${path}/contributors/${newcomer?.contributor}/count`, {
    method: "POST",
    headers: steward,
    body: JSON.stringify({ reason: "A member of the club whose heater we tuned together." }),
  });
  await atlas.fit.settle();
  expect((await start()).basis).toMatchObject({ contributors: 1, prior_only: false });
  expect(await exported()).toContain(sent.id);
});

test("a steward sees the sizes that wait with their owners, and may let one count who waits for nothing else", async () => {
  atlas = await openWith(10);
  const [known] = honestCrowd(1, 1) as [Tune];
  const [newcomer] = owners(1) as [Tune];
  await submit(atlas, ofSize(tuneAt(500, 1, ""), known.contributor), "203.0.113.7");
  await submit(atlas, newcomer, "198.51.1.1");
  const headers = { "Content-Type": "application/json", ...bearer(TOKEN) };
  const seen = async () => {
    const answer = await atlas.app.request("/api/steward/waiting", { headers });
    return answers.waitingAnswer.parse(await answer.json());
  };
  const { waiting, sizes } = await seen();
  const name = expect.stringMatching(/^[0-9a-f]{16}$/);
  expect(sizes).toEqual([
    {
      heat_kW: SIZE_kW,
      owners_needed: OWNERS,
      owners: [
        { contributor: name, tunes: 1, waits: false },
        { contributor: waiting[0]?.contributor, tunes: 1, waits: true },
      ],
    },
  ]);
  // However many new ones there are, whoever is not new is told.
  expect(await ownersOfWaitingSizes(atlas.db, 1)).toMatchObject([
    { heat_kW: SIZE_kW, waits: false },
  ]);
  const letCount = () =>
    atlas.app.request(`/api/steward/contributors/${sizes[0]?.owners[0]?.contributor}/count`, {
      method: "POST",
      headers,
      body: JSON.stringify({ reason: "We tuned it together." }),
    });
  // With those that count already.
  expect(answers.countedAnswer.parse(await (await letCount()).json()).tunes).toBeGreaterThan(1);
  await atlas.fit.settle();
  expect((await start()).basis).toMatchObject({ contributors: 1, prior_only: false });
  // The newcomer goes on waiting.
  expect(await seen()).toEqual({ waiting, next: null, sizes: [] });
  expect((await letCount()).status).toBe(404);
});

test("where new contributors do not wait no size does, and a size that nobody waits with any more is forgotten", async () => {
  atlas = await openWith(10);
  const [one, two] = owners(2) as [Tune, Tune];
  const sizes = () => atlas.db.$count(waitingSizes);
  const sent = await submit(atlas, one, "198.51.1.1");
  expect(await sizes()).toBe(1);
  await atlas.app.request(`/api/tunes/${sent.id}`, {
    method: "DELETE",
    headers: bearer(sent.receipt),
  });
  expect(await sizes()).toBe(0);
  await submit(atlas, two, "198.51.1.2");
  await atlas.stop();
  atlas = await openTestAtlas({ file: atlas.file, newKeyDays: 0 });
  await atlas.fit.refresh();
  expect((await start()).basis.contributors).toBe(1);
  expect(await submit(atlas, one, "198.51.1.1")).toMatchObject({ owners_needed: null });
});
