import { type ChildProcess, spawn } from "node:child_process";
import autocannon from "autocannon";
import { median } from "simple-statistics";
import type { Result } from "./result.ts";

const ROUNDS = 3;
const ROUND_s = 3;
const CONNECTIONS = 10;

/**
 * GET /api/start against a bare Hono route with the same JSON ready, over HTTP: questions as people ask them (500
 * that come again), and questions that were never asked before.
 */
export async function bench(): Promise<Result[]> {
  const servers = await Promise.all(["atlas", "bare"].map(open));
  const [atlas, bare] = servers as [Server, Server];
  await rate(atlas, again);
  await rate(bare, again);
  const rounds: { again: number; fresh: number; bare: number }[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    rounds.push({
      again: await rate(atlas, again),
      bare: await rate(bare, again),
      fresh: await rate(atlas, fresh(round)),
    });
  }
  for (const { child } of servers) child.kill();
  const result = (kind: "again" | "fresh", words: string): Result => ({
    name: `GET /api/start ÷ a bare route with the same JSON ready, ${words}`,
    ratio: median(rounds.map((r) => r[kind] / r.bare)),
    limit: 0.5,
    better: "higher",
    detail: `${median(rounds.map((r) => r[kind])).toFixed(0)} against ${median(rounds.map((r) => r.bare)).toFixed(0)} a second, medians of ${ROUNDS} rounds of ${ROUND_s} s, ${CONNECTIONS} connections`,
  });
  return [result("again", "500 questions"), result("fresh", "each question new")];
}

interface Server {
  child: ChildProcess;
  url: string;
}

function open(kind: string): Promise<Server> {
  const child = spawn(process.execPath, ["test/bench/served.ts", kind]);
  return new Promise((opened) =>
    child.stdout.once("data", (port) =>
      opened({ child, url: `http://localhost:${String(port).trim()}` }),
    ),
  );
}

interface Question {
  path: string;
}

const question = (i: number, fan_rpm: number): Question => ({
  path: `/api/start?heat_kW=5&elevation_m=${i % 5000}&temperature_C=${-(i % 25)}&high_fan_rpm=${fan_rpm}`,
});

const again = Array.from({ length: 500 }, (_, i) => question(10 * i, 4400));

/** More questions than a round asks, none asked before. */
function fresh(round: number): Question[] {
  return Array.from({ length: 100_000 }, (_, i) =>
    question(i, 4401 + 100 * round + Math.floor(i / 5000)),
  );
}

async function rate({ url }: Server, questions: Question[]): Promise<number> {
  const { requests, non2xx, errors } = await autocannon({
    url,
    // One connection per stream of questions: autocannon walks the list on each of them.
    connections: questions.length > 1000 ? 1 : CONNECTIONS,
    pipelining: questions.length > 1000 ? CONNECTIONS : 1,
    duration: ROUND_s,
    requests: questions,
  });
  if (non2xx + errors > 0) throw new Error(`${non2xx} bad answers, ${errors} errors from ${url}`);
  return requests.average;
}
