import { afterEach, expect, test } from "vitest";
import { letCount, waitingInTurn } from "../../db/waiting.ts";
import type { Tune } from "../../model/tune.ts";
import * as answers from "../../server/contract.ts";
import { turnOf } from "../../server/new-keys.ts";
import { openTestAtlas, post, type TestAtlas } from "./atlas.ts";
import { honestCrowd, tuneAt } from "./crowd.ts";
import { bearer, TOKEN } from "./stewards-atlas.ts";

const DAY_ms = 86_400_000;
const CROWD = 10;

let atlas: TestAtlas;
let open = false;
afterEach(async () => {
  if (open) await atlas.close();
  open = false;
});

/** An atlas of before new contributors had to wait, with its honest crowd, and then with the rule. */
async function openWithRule(newKeyDays = 6): Promise<void> {
  // Longer ago than a week, so that the atlas is used to them.
  const before = await openTestAtlas({ opened: "2026-11-10T12:00:00Z" });
  for (const tune of honestCrowd(CROWD, 1)) await post(before.app, tune);
  await before.stop();
  const { file } = before;
  atlas = await openTestAtlas({ file, newKeyDays, stewardToken: TOKEN });
  open = true;
  await atlas.fit.refresh();
}

interface Sent {
  id: string;
  receipt: string;
  verdict: string;
  counts_from: string | null;
}

async function submit(tune: Tune, client = "203.0.113.7"): Promise<Sent> {
  const response = await post(atlas.app, tune, { "X-Test-Client": client });
  expect(response.status).toBe(201);
  return response.json();
}

const newcomer = (n = 0) =>
  tuneAt(1300, 1.02, `newcomer-key-${String(n).padStart(4, "0")}`, { lat: 41.2, lon: 74.9 });

const tunesInFit = async () => (await atlas.fit.current()).groups[0]?.tunes ?? 0;
const text = async (path: string) => (await atlas.app.request(path)).text();
const read = async ({ id, receipt }: Sent) =>
  (await atlas.app.request(`/api/tunes/${id}`, { headers: bearer(receipt) })).json();

/** The whole hash of whoever has a place in the queue, from 0. */
const waitingNames = async (place: number) =>
  (await waitingInTurn(atlas.db, place + 1)).slice(place).map(({ contributor }) => contributor);

async function pass(days: number): Promise<void> {
  for (let day = 0; day < days; day++) {
    atlas.pass(DAY_ms);
    await atlas.fit.refresh();
  }
}

/** Where a tune that counts is to be seen. */
async function seenIn(id: string): Promise<string[]> {
  const near = "/api/tunes/near?heat_kW=5&elevation_m=1300&temperature_C=2";
  const csv = await text("/api/tunes.csv");
  const scaling = JSON.parse(await text("/api/scaling?heat_kW=5&end=low"));
  const cells = JSON.parse(await text("/api/cells/world"));
  return [
    csv.includes(id) && "CSV",
    (await text("/api/tunes.geojson")).includes(id) && "GeoJSON",
    (await text(near)).includes(id) && "near",
    scaling.points_total > CROWD && scaling.points.length > CROWD && "scaling",
    cells.cells.length > 0 && "cells",
    (await tunesInFit()) > CROWD && "fit",
  ].filter((place) => place !== false);
}

test("an honest newcomer's tune waits where only its owner sees it, and counts within a week, everywhere", async () => {
  await openWithRule();
  const sent = await submit(newcomer());
  expect([sent.verdict, sent.counts_from]).toEqual(["accepted", "2026-12-01"]);
  await pass(5);
  expect(await seenIn(sent.id)).toEqual([]);
  const waits = await read(sent);
  expect(waits).toMatchObject({ verdict: "accepted", counts_from: "2026-12-01" });
  expect(waits.fit).toMatchObject({ low: "not in it", high: "not in it" });
  const before = await atlas.app.request("/api/tunes.csv");
  await pass(1);
  expect(await seenIn(sent.id)).toEqual(["CSV", "GeoJSON", "near", "scaling", "cells", "fit"]);
  expect(await read(sent)).toMatchObject({ counts_from: null, fit: { low: "kept", high: "kept" } });
  // What a browser keeps of before is out of date.
  expect(before.headers.get("ETag")).not.toBe(
    (await atlas.app.request("/api/tunes.csv")).headers.get("ETag"),
  );
  // A second tune of a contributor who counts is no newcomer's.
  expect((await submit(newcomer())).counts_from).toBeNull();
});

test("who contributed before there was the rule counts as ever, and with NEW_KEY_DAYS=0 everybody does at once", async () => {
  await openWithRule();
  const [known] = honestCrowd(1, 1);
  expect((await submit(known as Tune)).counts_from).toBeNull();
  const sent = await submit(newcomer());
  await atlas.fit.refresh();
  expect(await tunesInFit()).toBe(CROWD + 1);
  await atlas.stop();
  atlas = await openTestAtlas({ file: atlas.file, newKeyDays: 0 });
  await atlas.fit.refresh();
  expect(await tunesInFit()).toBe(CROWD + 2);
  expect((await read(sent)).counts_from).toBeNull();
  expect((await submit(newcomer(1))).counts_from).toBeNull();
});

test("a restart forgets nobody who waits, nor since when", async () => {
  await openWithRule();
  const sent = await submit(newcomer());
  await pass(3);
  await atlas.stop();
  atlas = await openTestAtlas({
    file: atlas.file,
    newKeyDays: 6,
    opened: "2026-11-30T09:00:00Z",
  });
  await atlas.fit.refresh();
  expect((await read(sent)).counts_from).toBe("2026-12-01");
  expect(await tunesInFit()).toBe(CROWD);
  await pass(1);
  expect(await tunesInFit()).toBe(CROWD + 1);
});

test("a tune cannot be moved to a key that has not waited, and a withdrawn one leaves nobody waiting", async () => {
  await openWithRule();
  const [known] = honestCrowd(1, 1) as [Tune];
  const sent = await submit(known);
  const revised = await atlas.app.request(`/api/tunes/${sent.id}`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", ...bearer(sent.receipt) },
    body: JSON.stringify({ ...known, contributor: newcomer().contributor }),
  });
  expect((await revised.json()).counts_from).toBe("2026-12-01");
  await atlas.fit.refresh();
  expect(await tunesInFit()).toBe(CROWD);
  const waiting = async () => {
    const answer = await atlas.app.request("/api/steward/waiting", { headers: bearer(TOKEN) });
    return answers.waitingAnswer.parse(await answer.json()).waiting;
  };
  expect(await waiting()).toMatchObject([{ since: "2026-11-25", crowded: false }]);
  await atlas.app.request(`/api/tunes/${sent.id}`, {
    method: "DELETE",
    headers: bearer(sent.receipt),
  });
  expect(await waiting()).toEqual([]);
});

test("new keys of one network in one week wait thirty days, one a week; others pass them", async () => {
  await openWithRule();
  const same = [];
  for (let n = 0; n < 3; n++) same.push(await submit(newcomer(n), `203.0.113.${n}`));
  expect(same.map((sent) => sent.counts_from)).toEqual(["2026-12-01", "2026-12-25", "2027-01-01"]);
  // IPv6: one /48 is one network.
  const six = [];
  for (const n of [3, 4]) six.push(await submit(newcomer(n), `2001:db8:1:${n}::1`));
  expect(six.map((sent) => sent.counts_from)).toEqual(["2026-12-01", "2027-01-08"]);
  await pass(1);
  // Where fewer than 30 count a network is known for a week.
  expect((await submit(newcomer(6), "203.0.113.9")).counts_from).toBe("2027-01-15");
  const later = await submit(newcomer(7), "198.51.100.9");
  expect(later.counts_from).toBe("2026-12-02");
  const counts: string[] = [];
  for (let day = 1; day <= 45; day++) {
    const before = await tunesInFit();
    await pass(1);
    const more = (await tunesInFit()) - before;
    if (more > 0) counts.push(`${more} after ${day + 1} days`);
  }
  // Of the crowd one a week.
  expect(counts).toEqual([
    "2 after 6 days",
    "1 after 7 days",
    "1 after 30 days",
    "1 after 37 days",
    "1 after 44 days",
  ]);
  expect((await read(later)).counts_from).toBeNull();
  // Eight days later the network is a new one.
  expect((await submit(newcomer(8), "203.0.113.9")).counts_from).toBe("2027-01-16");
});

test("a dozen keys of one network hold up nobody of another, while a day's sixth network is a surge", async () => {
  await openWithRule();
  const crowded: boolean[] = [];
  const of = async (n: number, client: string) =>
    crowded.push(((await submit(newcomer(n), client)).counts_from as string) > "2026-12-24");
  for (let n = 0; n < 12; n++) await of(n, `203.0.113.${n}`);
  expect(crowded.splice(0)).toEqual([false, ...Array(11).fill(true)]);
  for (let n = 12; n < 18; n++) await of(n, `198.51.${n}.1`);
  // Where 10 count a day's surge begins behind five: the first of that network, and four of these.
  expect(crowded).toEqual([false, false, false, false, true, true]);
});

test("a steward lets a contributor count at once, with a reason that its owner reads", async () => {
  await openWithRule();
  const sent = await submit(newcomer());
  const steward = async (path: string, body?: unknown) =>
    atlas.app.request(`/api/steward/${path}`, {
      headers: { "Content-Type": "application/json", ...bearer(TOKEN) },
      ...(body !== undefined && { method: "POST", body: JSON.stringify(body) }),
    });
  const { waiting } = await (await steward("waiting")).json();
  const [{ contributor }] = waiting;
  for (const name of ["0123456789abcdef", "no-pseudonym", `${contributor}0`]) {
    const unknown = await steward(`contributors/${name}/count`, { reason: "A member of ours." });
    expect(unknown.status).toBe(404);
  }
  expect((await steward(`contributors/${contributor}/count`, { reason: "" })).status).toBe(422);
  const reason = "A member of the club whose heater we tuned together.";
  const done = await steward(`contributors/${contributor}/count`, { reason });
  expect(answers.countedAnswer.parse(await done.json())).toEqual({ contributor, tunes: 1 });
  await atlas.fit.settle();
  expect(await tunesInFit()).toBe(CROWD + 1);
  const mine = await read(sent);
  expect(mine.counts_from).toBeNull();
  expect(mine.decisions.at(-1)).toMatchObject({ by: "steward", reasons: [{ sentence: reason }] });
  // It takes nobody's turn.
  expect((await submit(newcomer(1), "198.51.100.1")).counts_from).toBe("2026-12-01");
  expect((await steward(`contributors/${contributor}/count`, { reason })).status).toBe(404);
});

test("a steward sees all who wait, a page at a time, also while some come to count", async () => {
  await openWithRule();
  for (let n = 0; n < 5; n++) {
    await submit(newcomer(n), n < 3 ? "203.0.113.7" : `198.51.${n}.1`);
    if (n === 3) await pass(1);
  }
  const page = async (query: string) => {
    const answer = await atlas.app.request(`/api/steward/waiting?${query}`, {
      headers: bearer(TOKEN),
    });
    return answers.waitingAnswer.parse(await answer.json());
  };
  const { waiting, next } = await page("limit=5");
  expect(next).toBeNull();
  expect(waiting.map(({ since, crowded }) => `${since} ${crowded}`)).toEqual([
    "2026-11-25 false",
    "2026-11-25 false",
    "2026-11-26 false",
    "2026-11-25 true",
    "2026-11-25 true",
  ]);
  const first = await page("limit=2");
  expect(first.waiting).toEqual(waiting.slice(0, 2));
  // Nobody is passed over, although the one behind whom the next page begins waits no more.
  await letCount(atlas.db, await waitingNames(1), "2026-11-26");
  const second = await page(`limit=2&after=${first.next}`);
  expect(second.waiting).toEqual(waiting.slice(2, 4));
  const third = await page(`limit=2&after=${second.next}`);
  expect(third).toMatchObject({ waiting: waiting.slice(4), next: null });
});

test("a queue's last comes to count on the day that letting so many count a week gives", () => {
  // By hand: two a week; two counted on the 24th and 25th, so the next are free on the 1st and 2nd.
  const recent = ["2026-11-24", "2026-11-25"];
  const due = ["2026-11-26", "2026-11-26", "2026-11-27", "2026-12-20"];
  const queue = due.map((day) => ({ due: day, aWeek: 2 }));
  const days = queue.map((_, n) => turnOf(queue.slice(0, n + 1), recent, "2026-11-26"));
  expect(days).toEqual(["2026-12-01", "2026-12-02", "2026-12-08", "2026-12-20"]);
  // Of a crowd, one a week: seven days after the last of the others.
  const last = [...queue, { due: "2026-12-21", aWeek: 1 }];
  expect(turnOf(last, recent, "2026-11-26")).toBe("2026-12-27");
});
