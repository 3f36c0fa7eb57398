import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { quantile } from "simple-statistics";
import { assembleEdge } from "../../server/edge.ts";
import { openWorkerd, type Workerd } from "../edge/workerd.ts";
import { goodTune } from "../server/atlas.ts";
import type { Result } from "./result.ts";
import { fill } from "./scale.ts";

const SIZES = [10_000, 100_000, 1_000_000];
const WRITES = 200;
const ASKED = 100;
/** The runtime ends an alarm after so long, min. */
const ALARM_min = 15;
const MB_kB = 1000;
/** Of the processor's time in /proc: USER_HZ, which is 100 on Linux. */
const TICK_ms = 10;

const QUESTIONS = {
  start: (n: number) => `/api/start?heat_kW=5&elevation_m=${n % 4000}&temperature_C=${-(n % 20)}`,
  near: (n: number) => `/api/tunes/near?heat_kW=5&elevation_m=${n % 4000}&lat=41.2&lon=74.9`,
} as const;
/** Asked once: then the isolate keeps them, or takes as long again. */
const DEAR = {
  scaling: "/api/scaling?heat_kW=5&end=low",
  cells: "/api/cells/world",
  csv: "/api/tunes.csv",
} as const;
type Asked = keyof typeof QUESTIONS | keyof typeof DEAR;

/** What was measured of an atlas at the edge, as wrangler runs it on this machine; processor time is that of all its workerd processes. */
interface Measured {
  tunes: number;
  write: { cpu_ms: number; median_ms: number; p99_ms: number };
  /** From the cron until a version with one more tune is published; null where the runtime would have ended it before. */
  version: { s: number; cpu_s: number } | null;
  /** Memory of the largest workerd process (RSS), MB: before and at its most. */
  memory_MB: { quiet: number; most: number };
  cpu_ms: Record<Asked, number>;
}

async function measure(count: number): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), "hypsotune-edge-bench-"));
  const file = join(folder, "atlas.db");
  let edge: Workerd | undefined;
  try {
    await fill(file, count);
    const tables = ["tunes", "decisions"];
    const sql = [
      `ATTACH '${file}' AS filled`,
      ...tables.map((table) => `INSERT INTO ${table} SELECT * FROM filled.${table}`),
    ].join(";\n");
    const vars = { ATLAS_SECRET: "a secret for tests only", WRITE_LIMIT: 0, READ_LIMIT: 0 };
    edge = await openWorkerd({ ...vars, FLOOD_LIMIT: 0, NEW_KEY_DAYS: 0 }, { sql });
    return { tunes: count, ...(await measured(edge)) };
  } finally {
    await edge?.close();
    rmSync(folder, { recursive: true });
  }
}

async function measured(edge: Workerd): Promise<Omit<Measured, "tunes">> {
  await get(edge, "/api/ready");
  const quiet = memory_MB(edge, "VmRSS");
  // The first version, so that writes are judged beside one.
  await published(edge);
  const took: number[] = [];
  const writing = cpu_ms(edge);
  for (let n = 0; n < WRITES; n++) took.push(await timeOf(() => send(edge, n)));
  const write = {
    cpu_ms: (cpu_ms(edge) - writing) / WRITES,
    median_ms: quantile(took, 0.5),
    p99_ms: quantile(took, 0.99),
  };
  const fitting = cpu_ms(edge);
  const s = await published(edge);
  const version = s === null ? null : { s, cpu_s: (cpu_ms(edge) - fitting) / 1000 };
  const most = memory_MB(edge, "VmHWM");
  const asked = {} as Measured["cpu_ms"];
  for (const name of Object.keys(QUESTIONS) as (keyof typeof QUESTIONS)[]) {
    const before = cpu_ms(edge);
    for (let n = 0; n < ASKED; n++) await get(edge, QUESTIONS[name](n));
    asked[name] = (cpu_ms(edge) - before) / ASKED;
  }
  for (const name of Object.keys(DEAR) as (keyof typeof DEAR)[]) {
    const before = cpu_ms(edge);
    await get(edge, DEAR[name]);
    asked[name] = cpu_ms(edge) - before;
  }
  return { write, version, memory_MB: { quiet, most }, cpu_ms: asked };
}

/** Has a version made of what there is. @returns after how many seconds it answers; null when it did not in an alarm's time */
async function published(edge: Workerd): Promise<number | null> {
  const versionNow = async () =>
    (JSON.parse(await get(edge, "/api/fit")) as { version: string }).version;
  const before = await versionNow();
  const began = performance.now();
  const after_s = () => (performance.now() - began) / 1000;
  await edge.everyFiveMinutes();
  while ((await versionNow()) === before) {
    if (after_s() > ALARM_min * 60) return null;
    await setTimeout(200);
  }
  return after_s();
}

async function get({ ask }: Workerd, path: string): Promise<string> {
  const response = await ask(path);
  const text = await response.text();
  if (!response.ok) throw new Error(`${path}: ${response.status} ${text}`);
  return text;
}

async function send({ ask }: Workerd, n: number): Promise<void> {
  const response = await ask("/api/tunes", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(goodTune(n)),
  });
  if (response.status !== 201) throw new Error(`${response.status}: ${await response.text()}`);
  await response.arrayBuffer();
}

async function timeOf(run: () => Promise<void>): Promise<number> {
  const began = performance.now();
  await run();
  return performance.now() - began;
}

/** What the system tells of the workerd processes: their /proc folders. */
function workerds({ group }: Workerd): string[] {
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => {
      const stat = fileOf(`/proc/${pid}/stat`);
      // After the command, in brackets: state, parent, group.
      return stat.includes("(workerd)") && fieldsOf(stat)[2] === String(group);
    })
    .map((pid) => `/proc/${pid}`);
}

const fieldsOf = (stat: string) => stat.slice(stat.lastIndexOf(")") + 2).split(" ");

/** Empty where the process has ended. */
function fileOf(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

function cpu_ms(edge: Workerd): number {
  // Fields 14 and 15 of proc(5): in user mode and in the kernel.
  const ticks = workerds(edge).map((process) => {
    const fields = fieldsOf(fileOf(`${process}/stat`));
    return Number(fields[11]) + Number(fields[12]);
  });
  return TICK_ms * ticks.reduce((sum, one) => sum + one, 0);
}

function memory_MB(edge: Workerd, what: "VmRSS" | "VmHWM"): number {
  const found = workerds(edge).map((process) =>
    Number(new RegExp(`${what}:\\s+(\\d+)`).exec(fileOf(`${process}/status`))?.[1] ?? 0),
  );
  return Math.max(...found) / MB_kB;
}

/** Atlases of ten thousand, a hundred thousand and a million tunes on workerd and D1, as wrangler runs them on this machine. */
export async function bench(): Promise<Result[]> {
  await assembleEdge();
  const all: Measured[] = [];
  for (const size of SIZES) {
    all.push(await measure(size));
    console.log(JSON.stringify(all.at(-1)));
  }
  const [small] = all as [Measured];
  return all.flatMap((at) => resultsOf(at, small));
}

function resultsOf(at: Measured, small: Measured): Result[] {
  const { write, version, memory_MB, cpu_ms } = at;
  const of = `At the edge, ${at.tunes.toLocaleString("en")} tunes`;
  const told = Object.entries(cpu_ms).map(([name, ms]) => `${name} ${ms.toFixed(0)} ms`);
  const one = (name: string, ratio: number, detail: string): Result => ({
    name: `${of}: ${name}`,
    ...{ ratio, better: "lower", detail },
  });
  return [
    one(
      `processor time of a write ÷ that with ${small.tunes.toLocaleString("en")}`,
      write.cpu_ms / small.write.cpu_ms,
      `${write.cpu_ms.toFixed(1)} ms; answered after ${write.median_ms.toFixed(0)} ms, 99 in 100 within ${write.p99_ms.toFixed(0)}`,
    ),
    one(
      "a new version after, s",
      version?.s ?? Number.POSITIVE_INFINITY,
      version ? `processor time ${version.cpu_s.toFixed(1)} s` : `none within ${ALARM_min} min`,
    ),
    one(
      "memory of workerd at its most, MB",
      memory_MB.most,
      `${memory_MB.quiet.toFixed(0)} when quiet`,
    ),
    one("processor time of a start tune, ms", cpu_ms.start, told.join(", ")),
  ];
}

// One size alone: node test/bench/edge.ts 10000
if (import.meta.main) {
  await assembleEdge();
  console.log(JSON.stringify(await measure(Number(process.argv[2])), null, 1));
}
