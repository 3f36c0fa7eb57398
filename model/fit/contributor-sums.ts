import { exactSum, exactTerm } from "./exact-sum.ts";
import { type Covariance, type Line, type LinePrior, lineFrom, type Sums } from "./line.ts";

/** Exact weighted sums of the kept rows, per contributor and in all. */
export interface ContributorSums {
  /** Contributors with at least one kept row. */
  each: Sums[];
  total: Sums;
  /** Σ over kept rows of vote share × squared residual about a line. */
  squares: number;
  /** (Σ votes)² ÷ Σ votes²: as how many equal votes they count (Kish). */
  effective: number;
}

/** Adds up the kept rows. `keep[i]` is 1 for rows that count. */
export function addUp(
  rows: { x: Float64Array; y: Float64Array; owner: Int32Array; share: Float64Array },
  keep: Uint8Array,
  contributors: number,
  { intercept, slope }: Line,
): ContributorSums {
  const columns = Array.from({ length: 5 }, () => new Float64Array(contributors));
  const [w, x, y, xx, xy] = columns as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let squares = 0;
  for (let i = 0; i < keep.length; i++) {
    if (!keep[i]) continue;
    const c = rows.owner[i] as number;
    const [wi, xi, yi] = [rows.share[i] as number, rows.x[i] as number, rows.y[i] as number];
    w[c] = (w[c] as number) + exactTerm(wi);
    x[c] = (x[c] as number) + exactTerm(wi * xi);
    y[c] = (y[c] as number) + exactTerm(wi * yi);
    xx[c] = (xx[c] as number) + exactTerm(wi * xi * xi);
    xy[c] = (xy[c] as number) + exactTerm(wi * xi * yi);
    squares += exactTerm(wi * (yi - intercept - slope * xi) ** 2);
  }
  const each: Sums[] = [];
  const total: Sums = { w: 0, x: 0, y: 0, xx: 0, xy: 0 };
  let voteSquares = 0;
  for (let c = 0; c < contributors; c++) {
    const votes = w[c] as number;
    if (votes === 0) continue;
    const sums: Sums = {
      w: votes,
      x: x[c] as number,
      y: y[c] as number,
      xx: xx[c] as number,
      xy: xy[c] as number,
    };
    each.push(sums);
    for (const key of ["w", "x", "y", "xx", "xy"] as const) total[key] += sums[key];
    voteSquares += exactTerm(sums.w ** 2);
  }
  return { each, total, squares, effective: voteSquares ? total.w ** 2 / voteSquares : 0 };
}

/** What leaving out one contributor at a time says of the mean. */
export interface LeftOut {
  covariance: Covariance;
  fourth_moments: [number, number, number, number, number];
}

/**
 * Jackknife over contributors, in closed form from their sums, prior and slope bounds kept: Σδδᵀ of the
 * deviations δ = (δa, δb), and the coefficients of Σ(δa + δb·x)⁴ in x.
 */
export function leaveOut(
  { each, total }: ContributorSums,
  scale: number,
  prior: LinePrior,
): LeftOut {
  const whole = lineFrom(total, scale, prior);
  const da = new Float64Array(each.length);
  const db = new Float64Array(each.length);
  each.forEach((own, c) => {
    const rest = {
      w: total.w - own.w,
      x: total.x - own.x,
      y: total.y - own.y,
      xx: total.xx - own.xx,
      xy: total.xy - own.xy,
    };
    const line = lineFrom(rest, scale, prior);
    da[c] = line.intercept - whole.intercept;
    db[c] = line.slope - whole.slope;
  });
  const moment = (a: number, b: number) =>
    exactSum(da.map((d, c) => d ** a * (db[c] as number) ** b));
  const ab = moment(1, 1);
  return {
    covariance: [
      [moment(2, 0), ab],
      [ab, moment(0, 2)],
    ],
    fourth_moments: [
      moment(4, 0),
      4 * moment(3, 1),
      6 * moment(2, 2),
      4 * moment(1, 3),
      moment(0, 4),
    ],
  };
}
