import { spawnSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { linearRegression } from "simple-statistics";
import { fitBounded } from "../../model/bounded-fit.ts";
import type { FitRow } from "../../model/fit/row.ts";
import { seeded } from "../model/fit/simulated-crowd.ts";
import type { Result } from "./result.ts";

const SIZES = [
  { tunes: 100_000, limit: 1 },
  { tunes: 1_000_000, limit: 0.5 },
];
/** What R is asked: the plain mixed model, and the seconds that it took. */
const LMER = `suppressMessages(library(lme4)); d <- read.csv(commandArgs(TRUE)[1]);
cat(system.time(lmer(y ~ x + (1 | contributor), d))[["elapsed"]])`;

/** A fit from cold, as the atlas makes it, against R's plain mixed model of the same rows where R has lme4, else against one least-squares pass. */
export async function bench(): Promise<Result[]> {
  return SIZES.map(({ tunes, limit }) => {
    const rows = someRows(tunes, ["low"]);
    const began = performance.now();
    const { groups } = fitBounded(rows);
    const fit_s = (performance.now() - began) / 1000;
    if (!Number.isFinite(groups[0]?.slope)) throw new Error("The fit did not answer.");
    const name = `cold fit of ${tunes.toLocaleString("en")} rows`;
    const lmer_s = secondsOfLmer(rows);
    if (lmer_s === null) {
      const pass_s = secondsOfPass(rows);
      return {
        name: `${name} ÷ one least-squares pass (no R with lme4 here)`,
        ratio: fit_s / pass_s,
        limit: Number.POSITIVE_INFINITY,
        better: "lower",
        detail: `${fit_s.toFixed(1)} s against ${pass_s.toFixed(2)} s`,
      };
    }
    return {
      name: `${name} ÷ R's lmer(y ~ x + (1 | contributor))`,
      ratio: fit_s / lmer_s,
      limit,
      better: "lower",
      detail: `${fit_s.toFixed(1)} s against ${lmer_s.toFixed(1)} s, once each`,
    };
  });
}

function pairsOf(rows: readonly FitRow[]): [number, number][] {
  return rows.map((r) => [
    Math.log(r.density_kg_m3 / 1.225),
    Math.log((r.pump_Hz * 1000) / r.fan_rpm),
  ]);
}

function secondsOfLmer(rows: readonly FitRow[]): number | null {
  const file = join(mkdtempSync(join(tmpdir(), "hypsotune-bench-")), "rows.csv");
  const pairs = pairsOf(rows);
  const lines = rows.map((r, i) => `${r.contributor},${pairs[i]?.join(",")}`);
  writeFileSync(file, `contributor,x,y\n${lines.join("\n")}\n`);
  const { status, stdout } = spawnSync("Rscript", ["-e", LMER, file], { encoding: "utf8" });
  return status === 0 ? Number(stdout) : null;
}

function secondsOfPass(rows: readonly FitRow[]): number {
  const began = performance.now();
  linearRegression(pairsOf(rows));
  return (performance.now() - began) / 1000;
}

function someRows(tunes: number, ends: readonly FitRow["end"][], prefix = ""): FitRow[] {
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
