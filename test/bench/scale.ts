import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { sql } from "drizzle-orm";
import { quantile } from "simple-statistics";
import { openDatabase } from "../../db/open.ts";
import { tunes } from "../../db/schema.ts";
import { acceptedTunes } from "../../db/shown-tunes.ts";
import type { TuneRow } from "../../db/tunes.ts";
import { type OwnServer, ownServer } from "../built/own-command.ts";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";
import { putTunes } from "../torture/many-tunes.ts";
import type { Result } from "./result.ts";

const SIZES = [1000, 100_000, 1_000_000];
const ASKED = 1000;
const CLIENTS = 64;
const READERS = 8;
const WRITING_s = 10;
const MB_kB = 1000;
const SECRET = { ATLAS_SECRET: "a secret for tests only" };

/** What is asked, n-th question: no two of the first five are the same, so that no kept answer is measured. */
const QUESTIONS = {
  start: (n: number) => `/api/start?heat_kW=5&elevation_m=${n % 4000}&temperature_C=${-(n % 20)}`,
  fit: () => "/api/fit",
  places: (n: number) => `/api/places?q=${["lon", "par", "san", "mont", "st"][n % 5]}`,
  near: (n: number) => `/api/tunes/near?heat_kW=5&elevation_m=${n % 4000}&lat=41.2&lon=74.9`,
  scaling: (n: number) => `/api/scaling?heat_kW=5&end=${n % 2 ? "low" : "high"}`,
  cells: () => "/api/cells/world",
} as const;
type Asked = keyof typeof QUESTIONS;
const EXPORTS = ["/api/tunes.csv", "/api/tunes.geojson", "/api/cells/world"];

/** What was measured of an atlas of so many tunes. */
interface Measured {
  tunes: number;
  /** From the start of the process until it says that it is ready, s. */
  ready_s: number;
  /** From a change until it is published, s: passes over all tunes, and the fit. */
  fit_s: number;
  /** Memory of the process (RSS), MB: when ready and quiet; with exports prepared; at its most. */
  memory_MB: { quiet: number; exports: number; most: number };
  /** So long took 99 in 100 answers at most, ms; and the very first. */
  p99_ms: Record<Asked, number>;
  first_ms: Record<Asked, number>;
  /** 99 in 100 start tunes while the fit is made again, while exports are prepared, and while eight clients read them, ms. */
  start_ms: { fitting: number; preparing: number; reading: number };
  /** Submissions a second by 64 clients, and single-row inserts a second one after another. */
  submissions: number;
  inserts: number;
}

/** Clients that read exports and cells for ever, in a process of their own; they do not unpack what they read. */
const READ = `
const http = require("node:http");
const [url, readers, ...paths] = process.argv.slice(1);
const read = (k, n) => http.get(url + paths[n % paths.length], { headers: { "Accept-Encoding": "gzip" } }, (answer) => {
  if (answer.statusCode !== 200) throw new Error(paths[n % paths.length] + ": " + answer.statusCode);
  answer.resume().on("end", () => { console.log(k); read(k, n + 1); });
});
for (let k = 0; k < Number(readers); k++) read(k, k);
`;

async function measure(count: number): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-scale-"));
  const file = join(folder, "atlas.db");
  try {
    const like = await fill(file, count);
    // The first start makes the first fit; what is measured is an atlas that has one.
    await stop(await ownServer(file, SECRET));
    const began = performance.now();
    const server = await ownServer(file, SECRET);
    await get(server, "/api/ready");
    const ready_s = (performance.now() - began) / 1000;
    await published(server);
    const quiet = memory_MB(server, "VmRSS");
    const first_ms = {} as Record<Asked, number>;
    const p99_ms = {} as Record<Asked, number>;
    for (const asked of Object.keys(QUESTIONS) as Asked[]) {
      first_ms[asked] = await timeOf(server, QUESTIONS[asked](0));
      p99_ms[asked] = await p99(server, asked);
    }
    const { preparing, reading } = await besideReaders(server);
    const exports = memory_MB(server, "VmRSS");
    const submissions = await submitted(server);
    const fitting = await p99(server, "start");
    const fit_s = await timeOfFit(server);
    const most = memory_MB(server, "VmHWM");
    await stop(server);
    return {
      ...{ tunes: count, ready_s, fit_s, memory_MB: { quiet, exports, most }, p99_ms, first_ms },
      ...{ start_ms: { fitting, preparing, reading }, submissions },
      inserts: await insertsOf(join(folder, "plain.db"), like),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export async function fill(file: string, count: number): Promise<TuneRow> {
  const model = await openTestAtlas();
  await post(model.app, goodTune());
  const [like] = (await acceptedTunes(model.db).next()).value as [TuneRow];
  await model.close();
  const { db, close } = await openDatabase(file);
  await db.run(sql`PRAGMA synchronous = OFF`);
  await putTunes(db, like, count);
  close();
  return like;
}

async function stop(server: OwnServer): Promise<void> {
  server.process.kill("SIGTERM");
  const how = await server.ended;
  if (how !== 0) throw new Error(`The atlas ended with ${how}: ${server.complaints()}`);
}

async function get({ url }: OwnServer, path: string): Promise<unknown> {
  const response = await fetch(`${url}${path}`);
  const text = await response.text();
  if (!response.ok) throw new Error(`${path}: ${response.status} ${text}`);
  return JSON.parse(text);
}

async function timeOf(server: OwnServer, path: string): Promise<number> {
  const began = performance.now();
  await get(server, path);
  return performance.now() - began;
}

async function p99(server: OwnServer, asked: Asked): Promise<number> {
  const took: number[] = [];
  for (let n = 1; n <= ASKED; n++) took.push(await timeOf(server, QUESTIONS[asked](n)));
  return quantile(took, 0.99);
}

/** Waits until all that was accepted is in the published fit. */
async function published(server: OwnServer): Promise<void> {
  while (((await get(server, "/api/health")) as { fit_pending: boolean }).fit_pending) {
    await setTimeout(100);
  }
}

/** From one more tune, with nothing else to do, until the version with it answers. */
async function timeOfFit(server: OwnServer): Promise<number> {
  await published(server);
  const version = async () => ((await get(server, "/api/fit")) as { version: string }).version;
  const before = await version();
  const began = performance.now();
  await send(server, goodTune(90_001));
  while ((await version()) === before) await setTimeout(50);
  return (performance.now() - began) / 1000;
}

function memory_MB({ process }: OwnServer, what: "VmRSS" | "VmHWM"): number {
  const status = readFileSync(`/proc/${process.pid}/status`, "utf8");
  return Number(new RegExp(`${what}:\\s+(\\d+)`).exec(status)?.[1]) / MB_kB;
}

async function besideReaders(server: OwnServer): Promise<{ preparing: number; reading: number }> {
  const readers = spawn(process.execPath, ["-e", READ, server.url, String(READERS), ...EXPORTS], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  let read = 0;
  readers.stdout.on("data", (lines: Buffer) => {
    read += lines.toString().split("\n").length - 1;
  });
  try {
    const preparing = await p99(server, "start");
    // Once the largest of them has been read, all are prepared.
    while (read < 2 * READERS) await goesOn(readers);
    return { preparing, reading: await p99(server, "start") };
  } finally {
    readers.kill();
    await once(readers, "exit");
  }
}

async function goesOn(readers: ChildProcess): Promise<void> {
  if (readers.exitCode !== null) throw new Error("The readers broke off.");
  await setTimeout(100);
}

async function send({ url }: OwnServer, tune: unknown): Promise<void> {
  const response = await fetch(`${url}/api/tunes`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(tune),
  });
  if (response.status !== 201) throw new Error(`${response.status}: ${await response.text()}`);
  await response.arrayBuffer();
}

/** Accepted submissions a second over HTTP, by many clients at once. */
async function submitted(server: OwnServer): Promise<number> {
  const end = performance.now() + 1000 * WRITING_s;
  let next = 0;
  const client = async () => {
    while (performance.now() < end) await send(server, goodTune(next++));
  };
  await Promise.all(Array.from({ length: CLIENTS }, client));
  return next / WRITING_s;
}

/** Single-row inserts a second by the same driver at the same durability, one after another. */
async function insertsOf(file: string, like: TuneRow): Promise<number> {
  const { db, close } = await openDatabase(file);
  const end = performance.now() + 1000 * WRITING_s;
  let next = 0;
  while (performance.now() < end) await db.insert(tunes).values({ ...like, id: `plain ${next++}` });
  close();
  return next / WRITING_s;
}

/** Atlases of a thousand, a hundred thousand and a million tunes, each a process of its own, asked by another one. */
export async function bench(): Promise<Result[]> {
  const all: Measured[] = [];
  for (const size of SIZES) {
    all.push(await measure(size));
    console.log(JSON.stringify(all.at(-1)));
  }
  const [small] = all as [Measured];
  return all.flatMap((at) => resultsOf(at, small));
}

function resultsOf(at: Measured, small: Measured): Result[] {
  const of = `${at.tunes.toLocaleString("en")} tunes`;
  const one = (name: string, ratio: number, limit: number, detail: string): Result => ({
    name: `${of}: ${name}`,
    ...{ ratio, limit, detail, better: "lower" },
  });
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  const { memory_MB, p99_ms, first_ms, start_ms, submissions, inserts } = at;
  return [
    one("ready after, s", at.ready_s, 3, `a fit until published ${at.fit_s.toFixed(1)} s`),
    one(
      "memory at its most, MB",
      memory_MB.most,
      700,
      `${memory_MB.quiet.toFixed(0)} when quiet, ${memory_MB.exports.toFixed(0)} with exports prepared`,
    ),
    ...(["start", "fit", "places", "near"] as const).map((asked) =>
      one(
        `99 in 100 answers of ${asked} ÷ those of an atlas of 1,000`,
        p99_ms[asked] / small.p99_ms[asked],
        2,
        `${ms(p99_ms[asked])}; the very first ${ms(first_ms[asked])}`,
      ),
    ),
    ...(["scaling", "cells"] as const).map((asked) =>
      one(
        `99 in 100 answers of ${asked}, ms`,
        p99_ms[asked],
        50,
        `the very first ${ms(first_ms[asked])}`,
      ),
    ),
    one(
      `start tunes beside ${READERS} readers of exports ÷ without, 99 in 100`,
      start_ms.reading / p99_ms.start,
      5,
      `${ms(start_ms.reading)}; ${ms(start_ms.preparing)} while they are prepared, ${ms(start_ms.fitting)} while the fit is made`,
    ),
    {
      name: `${of}: accepted submissions of ${CLIENTS} clients ÷ single-row inserts, a second`,
      ratio: submissions / inserts,
      limit: 0.5,
      better: "higher",
      detail: `${submissions.toFixed(0)} against ${inserts.toFixed(0)}`,
    },
  ];
}

// One size alone: node test/bench/scale.ts 100000
if (import.meta.main) console.log(JSON.stringify(await measure(Number(process.argv[2])), null, 1));
