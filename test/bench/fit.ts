import { linearRegression } from "simple-statistics";
import { AtlasLedger } from "../../model/fit/atlas-ledger.ts";
import { ENDS } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { seeded } from "../model/fit/simulated-crowd.ts";
import type { Result } from "./run.ts";

const MILLION = 1_000_000;
const THOUSAND = 1000;
const REBUILDS = 5;
const REFRESHES = 200;

/** A full rebuild of a million rows against one least-squares pass, and a refresh among a million tunes against a thousand. */
export async function bench(): Promise<Result[]> {
  return [rebuild(), refresh()];
}

function rebuild(): Result {
  const rows = someRows(MILLION, ["low"]);
  // Both start from the same rows: a plain least-squares pass needs their logarithms too.
  const pairsOf = () =>
    rows.map((r) => [Math.log(r.density_kg_m3 / 1.225), Math.log((r.pump_Hz * 1000) / r.fan_rpm)]);
  let sink = 0;
  const fit_ms: number[] = [];
  const pass_ms: number[] = [];
  for (let round = -1; round < REBUILDS; round++) {
    const t0 = performance.now();
    const ledger = new AtlasLedger();
    ledger.load(rows);
    sink += ledger.fit()[0]?.slope ?? 0;
    const t1 = performance.now();
    sink += linearRegression(pairsOf()).m;
    const t2 = performance.now();
    if (round < 0) continue;
    fit_ms.push(t1 - t0);
    pass_ms.push(t2 - t1);
  }
  if (!Number.isFinite(sink)) throw new Error("The fits did not answer.");
  const [fit, pass] = [median(fit_ms), median(pass_ms)];
  return {
    name: "full rebuild of 1,000,000 rows ÷ one least-squares pass",
    ratio: fit / pass,
    limit: 15,
    better: "lower",
    detail: `${fit.toFixed(0)} ms against ${pass.toFixed(0)} ms from the same rows, medians of ${REBUILDS} rounds`,
  };
}

/** One more tune and the new fit, in turn with a tune taken out again. */
function refresh(): Result {
  const [few, many] = [THOUSAND, MILLION].map((tunes) => {
    const rows = someRows(tunes, ENDS);
    const ledger = new AtlasLedger();
    ledger.load(rows);
    ledger.fit([]);
    return { ledger, ms: [] as number[] };
  }) as [Timed, Timed];
  const fresh = someRows(REFRESHES, ENDS, "new ");
  for (let i = 0; i < REFRESHES; i++) {
    for (const { ledger, ms } of [few, many]) {
      const began = performance.now();
      for (const row of fresh.slice(2 * i, 2 * i + 2)) ledger.put(row);
      ledger.fit([]);
      ms.push(performance.now() - began);
    }
  }
  const [small, large] = [few, many].map(({ ms }) => median(ms.slice(REFRESHES / 4))) as [
    number,
    number,
  ];
  return {
    name: "refresh after one more tune among 1,000,000 ÷ among 1,000",
    ratio: large / small,
    limit: 1.5,
    better: "lower",
    detail: `${large.toFixed(1)} ms against ${small.toFixed(1)} ms, in turn, medians of ${0.75 * REFRESHES} after warm-up`,
  };
}

interface Timed {
  ledger: AtlasLedger;
  ms: number[];
}

export function someRows(tunes: number, ends: readonly FitRow["end"][], prefix = ""): FitRow[] {
  const { normal, uniform } = seeded(7 + tunes);
  // By contributor, as the database hands them over.
  const contributors = Array.from(
    { length: tunes },
    () => `${prefix}c${Math.floor(0.4 * tunes * uniform())}`,
  ).sort();
  return contributors.flatMap((name, row) => {
    // Made when its row is, as a database driver does: rows that follow each other lie side by side.
    const contributor = Buffer.from(name).toString();
    const x = -0.45 * uniform() ** 2 + 0.03 * normal();
    const density_kg_m3 = 1.225 * Math.exp(x);
    const cell = `p${Math.floor(uniform() * 4000)}`;
    const month = `2026-${String(1 + Math.floor(12 * uniform())).padStart(2, "0")}`;
    const slip = uniform() < 0.03 ? 2 : 1;
    return ends.map((end) => ({
      row: `${prefix}${row}`,
      contributor,
      cell,
      month,
      heat_kW: 5,
      end,
      density_kg_m3,
      pump_Hz: slip * (end === "low" ? 1.1 : 4.2) * Math.exp(0.85 * x + 0.1 * normal()),
      fan_rpm: end === "low" ? 1650 : 4400,
    }));
  });
}

function median(values: number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}
