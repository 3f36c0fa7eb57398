import { linearRegression } from "simple-statistics";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { FitRow } from "../../model/fit/group.ts";
import { seeded } from "../model/fit/simulated-crowd.ts";
import type { Result } from "./run.ts";

const ROWS = 100_000;
const CONTRIBUTORS = 40_000;
const ROUNDS = 15;

/** A robust fit of 10⁵ rows against one least-squares pass of simple-statistics over the same rows. */
export async function bench(): Promise<Result[]> {
  const { normal, uniform } = seeded(7);
  const rows: FitRow[] = Array.from({ length: ROWS }, (_, row) => {
    const x = -0.45 * uniform() ** 2 + 0.03 * normal();
    return {
      row,
      contributor: `c${Math.floor(uniform() * CONTRIBUTORS)}`,
      cell: `p${Math.floor(uniform() * 4000)}`,
      heat_kW: 5,
      end: "low",
      density_kg_m3: 1.225 * Math.exp(x),
      pump_Hz: 1.1 * Math.exp(0.85 * x + 0.1 * normal()),
      fan_rpm: 1650,
    };
  });
  // Both start from the same rows: a plain least-squares pass needs their logarithms too.
  const pairsOf = () =>
    rows.map((r) => [Math.log(r.density_kg_m3 / 1.225), Math.log((r.pump_Hz * 1000) / r.fan_rpm)]);
  let sink = 0;
  const fit_ms: number[] = [];
  const pass_ms: number[] = [];
  const regression_ms: number[] = [];
  for (let round = -3; round < ROUNDS; round++) {
    const t0 = performance.now();
    sink += fitAtlas(rows).groups[0]?.slope ?? 0;
    const t1 = performance.now();
    const pairs = pairsOf();
    const t2 = performance.now();
    sink += linearRegression(pairs).m;
    const t3 = performance.now();
    if (round < 0) continue;
    fit_ms.push(t1 - t0);
    pass_ms.push(t3 - t1);
    regression_ms.push(t3 - t2);
  }
  if (!Number.isFinite(sink)) throw new Error("The fits did not answer.");
  const [fit, pass] = [median(fit_ms), median(pass_ms)];
  return [
    {
      name: "robust fit of 100,000 rows ÷ one least-squares pass",
      ratio: fit / pass,
      limit: 40,
      better: "lower",
      detail: `${fit.toFixed(1)} ms against ${pass.toFixed(2)} ms from the same rows (${median(regression_ms).toFixed(2)} ms of it the regression itself), medians of ${ROUNDS} rounds`,
    },
  ];
}

function median(values: number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}
