import { exp, ln } from "../numerics/ln-exp.ts";
import type { Matrix } from "../numerics/matrix.ts";
import { LEAST_TAIL_DF } from "./nodes.ts";
import { AT, ONE_CROWD, type Parameter, parameter } from "./parameters.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";
import { SETTINGS as S } from "./settings.ts";

/**
 * Log prior density against that of its mode, so that models of more and of fewer parameters compare. Its gradient is
 * added, and its information to the diagonal.
 */
export function logPrior(
  t: Float64Array,
  sample: Sample,
  prior: Prior,
  { gradient, information }: { gradient?: Float64Array; information?: Matrix } = {},
): number {
  let total = 0;
  const rise = (name: Parameter, value: number, worth: number) => {
    const p = AT[name];
    if (gradient) gradient[p] = (gradient[p] as number) + value;
    const row = information?.[p];
    if (row) row[p] = (row[p] as number) + worth;
  };
  const student = (name: Parameter, mean: number, sd: number, df = Number.POSITIVE_INFINITY) => {
    const z = (parameter(t, name) - mean) / sd;
    if (df === Number.POSITIVE_INFINITY) {
      total -= 0.5 * z * z;
      rise(name, -z / sd, sd ** -2);
    } else {
      total -= 0.5 * (df + 1) * ln(1 + (z * z) / df);
      rise(name, (-(df + 1) * z) / ((df + z * z) * sd), (df + 1) / (df * sd * sd));
    }
  };
  /** Scaled inverse χ² of a variance, in ln sd. */
  const spread = (name: Parameter, usual: number, worth: number) => {
    const ratio = usual ** 2 * exp(-2 * parameter(t, name));
    total -= worth * (parameter(t, name) - ln(usual)) + 0.5 * worth * (ratio - 1);
    rise(name, worth * (ratio - 1), 2 * worth);
  };
  /** Dirichlet of the mixing proportions whose log-odds against the first are given. */
  const proportions = (names: readonly Parameter[]) => {
    const odds = names.map((name) => exp(parameter(t, name)));
    const all = odds.reduce((sum, v) => sum + v, 1);
    const honest = 1 - names.length * S.mistake_share;
    total -= S.worth * (ln(all) + honest * ln(honest));
    names.forEach((name, k) => {
      total += S.worth * S.mistake_share * (parameter(t, name) - ln(S.mistake_share));
      const share = (odds[k] as number) / all;
      rise(name, S.worth * (S.mistake_share - share), S.worth * share * (1 - share));
    });
  };
  student("level", prior.level, prior.level_sd, prior.df);
  student("slope", prior.slope, prior.slope_sd, prior.df);
  spread("ln_between", prior.between, prior.spread_worth);
  spread("ln_within", prior.within, prior.spread_worth);
  spread("ln_own_slope", prior.own_slope, prior.spread_worth);
  student("ln_tail", ln(S.tail_df - LEAST_TAIL_DF), S.weak_sd);
  student("never_level", S.slope * sample.x_mean, S.slope * sample.x_sd);
  student("night", 0, S.night_sd);
  student("feet_rise", S.feet_rise, S.feet_rise);
  const two = t.length > ONE_CROWD;
  proportions(two ? ["logit_never", "logit_other", "logit_crowd"] : ["logit_never", "logit_other"]);
  proportions(["logit_feet"]);
  proportions(["logit_slip"]);
  if (two) {
    student("crowd_odds", 0, S.weak_sd);
    student("crowd_shift", 0, S.level_sd);
    student("crowd_tilt", 0, S.level_sd);
    spread("ln_crowd", S.between, S.worth);
  }
  total += doses(t, sample, rise);
  return total;
}

/** The stated doses are the likelihood of their own mean; without any, its value is of no account. */
function doses(
  t: Float64Array,
  { dose, ln_dose, weight }: Sample,
  rise: (name: Parameter, value: number, worth: number) => void,
): number {
  const mean = parameter(t, "ln_dose");
  if (!dose) {
    rise("ln_dose", -mean, 1);
    return -0.5 * mean * mean;
  }
  let total = 0;
  for (let i = 0; i < ln_dose.length; i++) {
    const d = ln_dose[i] as number;
    if (Number.isNaN(d)) continue;
    const z = (d - mean) / dose.sd;
    total -= 0.5 * (weight[i] as number) * z * z;
    rise("ln_dose", ((weight[i] as number) * z) / dose.sd, (weight[i] as number) / dose.sd ** 2);
  }
  return total;
}
