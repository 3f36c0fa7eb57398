import { sum } from "simple-statistics";
import type { FitRow } from "../../../model/fit/row.ts";
import { lnRatio } from "../airs.ts";
import type { Estimator } from "./estimator.ts";
import { isOf } from "./hypsotune.ts";
import { answers, type StraightLine } from "./straight-line.ts";

/** Ratios of the variance between owners to that within one, among which the likelihood is highest. */
const RATIOS = Array.from({ length: 41 }, (_, i) => 2 ** (i / 2 - 12));

/** Sums of one owner's rows: number, x, y, x², xy, y². */
type Sums = [n: number, x: number, y: number, xx: number, xy: number, yy: number];

/**
 * The textbook's hierarchical normal model, y = a + b·x + u + e, by maximum likelihood (Laird & Ware 1982): generalised least
 * squares for each ratio of the variances, the ratio by profile likelihood. No belief, no mistakes.
 */
export const hierarchicalNormal: Estimator = {
  name: "Hierarchical normal",
  fit: (rows, target) => {
    const owners = sumsByOwner(rows.filter(isOf(target)));
    if (owners.length < 3) return null;
    const fits = RATIOS.map((ratio) => profile(owners, ratio));
    const best = fits.reduce((p, q) => (q.likelihood > p.likelihood ? q : p));
    return best.line && { at: answers(best.line), setAside: null };
  },
};

function sumsByOwner(rows: readonly FitRow[]): Sums[] {
  const byOwner = new Map<string, Sums>();
  for (const row of rows) {
    const x = lnRatio(row.density_kg_m3);
    const y = Math.log((row.pump_Hz * 1000) / row.fan_rpm);
    const own = byOwner.get(row.contributor) ?? [0, 0, 0, 0, 0, 0];
    [1, x, y, x * x, x * y, y * y].forEach((v, k) => {
      own[k] = (own[k] as number) + v;
    });
    byOwner.set(row.contributor, own);
  }
  return [...byOwner.values()];
}

function profile(
  owners: readonly Sums[],
  ratio: number,
): { likelihood: number; line: StraightLine | null } {
  // With V = σ²(I + ratio·J), V⁻¹ = (I − shrink·J)/σ² and ln|V| = n ln σ² + ln(1 + n·ratio).
  const [n, sx, sy, sxx, sxy, syy] = [0, 1, 2, 3, 4, 5].map((k) =>
    sum(
      owners.map((own) => {
        const shrink = ratio / (1 + own[0] * ratio);
        const [p, q] = (
          [
            [0, 0],
            [0, 1],
            [0, 2],
            [1, 1],
            [1, 2],
            [2, 2],
          ] as const
        )[k] as [number, number];
        return (own[k] as number) - shrink * (own[p] as number) * (own[q] as number);
      }),
    ),
  ) as Sums;
  const rows = sum(owners.map(([count]) => count));
  const squares = sxx - (sx * sx) / n;
  if (!(squares > 0) || rows < 4) return { likelihood: Number.NEGATIVE_INFINITY, line: null };
  const slope = (sxy - (sx * sy) / n) / squares;
  const level = sy / n;
  const residual = syy - (sy * sy) / n - slope * (sxy - (sx * sy) / n);
  const variance = residual / rows;
  const determinants = sum(owners.map(([count]) => Math.log(1 + count * ratio)));
  return {
    likelihood: -0.5 * (rows * Math.log(variance) + determinants),
    line: {
      x_mean: sx / n,
      level,
      level_variance: variance / n,
      slope,
      slope_variance: variance / squares,
      point_variance: variance * (1 + ratio),
      df: owners.length - 2 || 1,
    },
  };
}
