import type { End } from "../end.ts";
import { exp, ln } from "../numerics/ln-exp.ts";
import type { GroupFit } from "./group.ts";
import { LEAST_TAIL_DF } from "./nodes.ts";
import { type Prior, physicsPrior } from "./prior.ts";
import { SETTINGS as S } from "./settings.ts";

/** What of the other sizes' fits is used. */
type Found = Pick<
  GroupFit,
  "end" | "intercept" | "slope" | "covariance" | "line_df" | "between" | "within"
>;

/** What a size's own rows say of a coefficient, with its variance. */
type Estimate = readonly [value: number, variance: number];

/**
 * The prior of one heater size and end given the fits of other sizes, each made alone: empirical Bayes of a normal
 * hierarchical model (Gelman et al. 2013, ch. 5). Slopes are alike at both ends, levels and spreads at one.
 */
export function pooledPrior(end: End, others: readonly Found[]): Prior {
  const physics = physicsPrior(end);
  const same = others.filter((g) => g.end === end);
  const slope = common(
    others.map((g) => ownEstimates(g).slope),
    [S.slope, S.slope_sd ** 2],
    S.own_slope,
  );
  const level = common(
    same.map((g) => ownEstimates(g).level),
    [physics.level, S.level_sd ** 2],
    S.between,
  );
  const pool = (of: (g: Found) => number, usual: number) => {
    let [worth, sum] = [S.worth, S.worth * ln(usual)];
    for (const g of same) {
      worth += g.line_df ?? 0;
      sum += (g.line_df ?? 0) * ln(of(g));
    }
    return exp(sum / worth);
  };
  return {
    ...physics,
    level: level[0],
    level_sd: Math.sqrt(level[1]),
    slope: slope[0],
    slope_sd: Math.sqrt(slope[1]),
    // Heavy tails: a size's own rows can contradict what the others found.
    df: LEAST_TAIL_DF,
    between: pool((g) => g.between, S.between),
    within: pool((g) => g.within, S.within),
    spread_worth: same.length > 0 ? 3 * S.worth : S.worth,
  };
}

/** Level and slope without the prior, which would otherwise be counted once for each size. */
function ownEstimates({ intercept, slope, covariance, end }: Found): {
  level: Estimate;
  slope: Estimate;
} {
  const prior = physicsPrior(end);
  const [[aa, ab], [, bb]] = covariance;
  const det = aa * bb - ab * ab;
  const paa = bb / det - prior.level_sd ** -2;
  const pab = -ab / det;
  const pbb = aa / det - prior.slope_sd ** -2;
  const ra = paa * intercept + pab * slope + (intercept - prior.level) / prior.level_sd ** 2;
  const rb = pab * intercept + pbb * slope + (slope - prior.slope) / prior.slope_sd ** 2;
  const own = Math.max(1e-9, paa * pbb - pab * pab);
  return {
    level: [(pbb * ra - pab * rb) / own, pbb / own],
    slope: [(paa * rb - pab * ra) / own, paa / own],
  };
}

const ROUNDS = 20;

/** Mean and variance of the next size's coefficient; the variance between sizes by EM under a scaled inverse χ². */
function common(known: readonly Estimate[], prior: Estimate, usual: number): Estimate {
  let between = usual ** 2;
  let mean = prior[0];
  let variance = prior[1];
  for (let round = 0; round < ROUNDS; round++) {
    let [precision, sum] = [1 / prior[1], prior[0] / prior[1]];
    for (const [value, own] of known) {
      precision += 1 / (own + between);
      sum += value / (own + between);
    }
    [mean, variance] = [sum / precision, 1 / precision];
    let [squares, worth] = [S.worth * usual ** 2, S.worth + known.length];
    for (const [value, own] of known) {
      const shrink = between / (between + own);
      squares += (shrink * (value - mean)) ** 2 + shrink * own;
    }
    between = squares / worth;
  }
  return [mean, Math.min(prior[1], variance + between)];
}
