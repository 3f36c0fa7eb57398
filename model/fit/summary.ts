import { exp } from "../numerics/ln-exp.ts";
import { at } from "../numerics/matrix.ts";
import type { GroupFit } from "./group.ts";
import type { Model } from "./group-fit.ts";
import { logistic } from "./likelihood.ts";
import { LEAST_TAIL_DF } from "./nodes.ts";
import { AT, parameter } from "./parameters.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";

type Summary = Omit<GroupFit, "heat_kW" | "end" | "tunes" | "rejected" | "density_range">;

/**
 * What is published of a group: moments of the posterior averaged over the models (Hoeting et al. 1999). Where the models
 * disagree about the line, its covariance says so.
 */
export function summaryOf(models: readonly Model[], sample: Sample, prior: Prior): Summary {
  const mean = (of: (m: Model) => number) => models.reduce((sum, m) => sum + m.weight * of(m), 0);
  const value = (m: Model, p: keyof typeof AT) => parameter(m.t, p);
  const intercept = mean((m) => value(m, "level"));
  const slope = mean((m) => value(m, "slope"));
  const [a, b, d] = [AT.level, AT.slope, AT.ln_dose];
  const off = (m: Model) => [value(m, "level") - intercept, value(m, "slope") - slope] as const;
  const aa = mean((m) => at(m.covariance, a, a) + off(m)[0] ** 2);
  const ab = mean((m) => at(m.covariance, a, b) + off(m)[0] * off(m)[1]);
  const bb = mean((m) => at(m.covariance, b, b) + off(m)[1] ** 2);
  const known = mean((m) => (m.components[0] as number) * (1 - logistic(value(m, "logit_slip"))));
  const line_df = 2 * prior.spread_worth + known;
  // Coefficients that the data paid for leave less scatter about them (restricted likelihood, Patterson & Thompson 1971).
  const paid = 2 - Math.min(2, aa / prior.level_sd ** 2 + bb / prior.slope_sd ** 2);
  const restricted = line_df / (line_df - paid);
  const between2 = restricted * mean((m) => exp(2 * value(m, "ln_between")));
  const within2 = restricted * mean((m) => exp(2 * value(m, "ln_within")));
  const [two] = models
    .filter((m) => m.t.length > AT.logit_crowd)
    .sort((p, q) => q.weight - p.weight);
  const share = (k: number) => mean((m) => m.components[k] as number) / sample.votes;
  return {
    intercept,
    slope,
    covariance: [
      [aa, ab],
      [ab, bb],
    ],
    line_df,
    spread: Math.sqrt(between2 + within2 + (sample.dose ? sample.dose.sd ** 2 : 0)),
    between: Math.sqrt(between2),
    own_slope: Math.sqrt(mean((m) => exp(2 * value(m, "ln_own_slope")))),
    within: Math.sqrt(within2),
    step_Hz: sample.step_Hz,
    spread_df: spreadFreedom(models, between2, within2),
    tail_df: LEAST_TAIL_DF + exp(mean((m) => value(m, "ln_tail"))),
    dose: sample.dose && {
      ln_uL: mean((m) => value(m, "ln_dose")),
      ln_sd: sample.dose.sd,
      covariance: [
        mean((m) => at(m.covariance, d, d)),
        mean((m) => at(m.covariance, a, d)),
        mean((m) => at(m.covariance, b, d)),
      ],
    },
    night: mean((m) => value(m, "night")),
    shares: {
      honest: share(0),
      never_retuned: share(1),
      anything: share(2),
      second_crowd: share(3),
      feet: mean((m) => logistic(value(m, "logit_feet"))),
      slips: mean((m) => logistic(value(m, "logit_slip"))),
    },
    second_crowd: two
      ? {
          probability: two.weight,
          shift: value(two, "crowd_shift"),
          tilt: value(two, "crowd_tilt"),
          sd: exp(value(two, "ln_crowd")),
        }
      : null,
    contributors: sample.owners,
    votes: sample.votes,
    may_copy:
      sample.may_copy.reduce((sum, v, i) => sum + v * (sample.weight[i] as number), 0) /
      sample.votes,
  };
}

/** Degrees of freedom of the sum of two variances: 2 ÷ the variance of its logarithm, by the delta method (Satterthwaite 1946). */
function spreadFreedom(models: readonly Model[], between2: number, within2: number): number {
  const p = (2 * between2) / (between2 + within2);
  const q = (2 * within2) / (between2 + within2);
  const [i, j] = [AT.ln_between, AT.ln_within];
  let variance = 0;
  for (const { weight, covariance: c } of models) {
    variance += weight * (p * p * at(c, i, i) + 2 * p * q * at(c, i, j) + q * q * at(c, j, j));
  }
  return Math.max(4, 2 / variance);
}
