import { exactSum, exactTerm } from "./exact-sum.ts";
import { type Covariance, type Line, type LinePrior, lineInClosedForm, type Sums } from "./line.ts";

/** Exact weighted sums of the kept rows, per contributor and in all. */
export interface ContributorSums {
  /** Contributors with at least one kept row. */
  each: Sums[];
  total: Sums;
  /** Σ vote share × y² over the kept rows. */
  yy: number;
  /** (Σ votes)² ÷ Σ votes²: as how many equal votes they count (Kish). */
  effective: number;
}

/** Rows as columns: coordinates, contributor, and share of its vote. */
export interface Columns {
  x: Float64Array;
  y: Float64Array;
  owner: Int32Array;
  share: Float64Array;
}

const SUMS = 5;

/** Adds up the kept rows. `keep[i]` is 1 for rows that count. */
export function addUp(rows: Columns, keep: Uint8Array, contributors: number): ContributorSums {
  // One contributor's five sums lie side by side.
  const sums = new Float64Array(SUMS * contributors);
  let yy = 0;
  const add = (at: number, term: number) => {
    sums[at] = (sums[at] as number) + exactTerm(term);
  };
  for (let i = 0; i < keep.length; i++) {
    if (!keep[i]) continue;
    const at = SUMS * (rows.owner[i] as number);
    const [w, x, y] = [rows.share[i] as number, rows.x[i] as number, rows.y[i] as number];
    add(at, w);
    add(at + 1, w * x);
    add(at + 2, w * y);
    add(at + 3, w * x * x);
    add(at + 4, w * x * y);
    yy += exactTerm(w * y * y);
  }
  return { ...gatherSums(sums), yy };
}

function gatherSums(sums: Float64Array) {
  const each: Sums[] = [];
  const total: Sums = { w: 0, x: 0, y: 0, xx: 0, xy: 0 };
  let voteSquares = 0;
  for (let at = 0; at < sums.length; at += SUMS) {
    const [w, x, y, xx, xy] = sums.subarray(at, at + SUMS) as unknown as Five;
    if (w === 0) continue;
    each.push({ w, x, y, xx, xy });
    total.w += w;
    total.x += x;
    total.y += y;
    total.xx += xx;
    total.xy += xy;
    voteSquares += exactTerm(w * w);
  }
  return { each, total, effective: voteSquares ? total.w ** 2 / voteSquares : 0 };
}

type Five = [number, number, number, number, number];

/** Σ vote share × squared residual of the kept rows about a line. */
export function squaresAbout(
  { total, yy }: ContributorSums,
  { intercept: a, slope: b }: Line,
): number {
  const { w, x, y, xx, xy } = total;
  return Math.max(0, yy - 2 * (a * y + b * xy) + a * a * w + 2 * a * b * x + b * b * xx);
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
  const whole = lineInClosedForm(total, scale, prior);
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
    const line = lineInClosedForm(rest, scale, prior);
    da[c] = line.intercept - whole.intercept;
    db[c] = line.slope - whole.slope;
  });
  const moment = (of: (a: number, b: number) => number) => {
    const terms = new Float64Array(da.length);
    for (let c = 0; c < terms.length; c++) terms[c] = of(da[c] as number, db[c] as number);
    return exactSum(terms);
  };
  const ab = moment((a, b) => a * b);
  return {
    covariance: [
      [moment((a) => a * a), ab],
      [ab, moment((_, b) => b * b)],
    ],
    fourth_moments: [
      moment((a) => a * a * a * a),
      4 * moment((a, b) => a * a * a * b),
      6 * moment((a, b) => a * a * b * b),
      4 * moment((a, b) => a * b * b * b),
      moment((_, b) => b * b * b * b),
    ],
  };
}
