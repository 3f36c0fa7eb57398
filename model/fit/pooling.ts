import { exp, ln } from "../ln-exp.ts";
import type { FittedGroup } from "./fit-group.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import { type GroupPrior, PHYSICS, PRIOR } from "./prior.ts";

/** What classes differ by before they tell, in ln, and how many of them that belief is worth. */
const SLOPES_DIFFER = { sd: 0.04, worth: 3 };
const INTERCEPTS_DIFFER = { sd: 0.12, worth: 3 };
/** Spreads of classes differ by a factor of e^±0.12; what others say of the spread is itself worth ten tunes of doubt. */
const SPREADS_DIFFER = 0.12;
const SPREAD_DOUBT_DF = 10;
/** Beyond so many expected squares a belief gives way to rows that contradict it. */
const SURPRISE = 3;

/** An estimate with its variance, free of the prior. */
interface Estimate {
  value: number;
  variance: number;
}

/**
 * What the other classes say of one before its own rows do (partial pooling: Gelman & Hill 2007, ch. 12). Slopes are
 * common to classes and ends, up to small differences; intercepts to classes at the same end; spreads likewise.
 * Differences are estimated from the classes; a class whose own rows contradict the others is left to itself.
 */
export function pooledPrior(of: FittedGroup, all: readonly FittedGroup[]): GroupPrior {
  // The other end of the same class is the same people and heaters again: it says nothing new.
  const others = all.filter((g) => g.fit.heat_kW !== of.fit.heat_kW);
  const sameEnd = others.filter((g) => g.fit.end === of.fit.end);
  const alone = others.length === 0;
  const slope = common(others.map(ownSlope), SLOPES_DIFFER, {
    value: PRIOR.slope - REFERENCE_SLOPE,
    variance: PRIOR.slope_sd ** 2,
  });
  const intercept = common(sameEnd.map(ownIntercept), INTERCEPTS_DIFFER, {
    value: 0,
    variance: PRIOR.intercept_sd ** 2,
  });
  const wider = {
    slope: apart(ownSlope(of), slope),
    intercept: apart(ownIntercept(of), intercept),
  };
  if (alone && wider.slope === 1 && wider.intercept === 1) return PHYSICS;
  return {
    above_reference: intercept.value,
    intercept_sd: Math.sqrt(intercept.variance * wider.intercept),
    slope: slope.value + REFERENCE_SLOPE,
    slope_sd: Math.sqrt(slope.variance * wider.slope),
    ...pooledSpread(sameEnd),
  };
}

function ownSlope({ own }: FittedGroup): Estimate {
  const information = own.cc - own.ac ** 2 / Math.max(own.aa, Number.MIN_VALUE);
  if (!(information > 1)) return NOTHING;
  return { value: (own.rc - (own.ac * own.ra) / own.aa) / information, variance: 1 / information };
}

function ownIntercept({ own, joint }: FittedGroup): Estimate {
  if (!(own.aa > 1)) return NOTHING;
  // At the slope that rows and prior agree on: the intercept alone would ride on a slope that few rows know.
  return { value: (own.ra - own.ac * joint.line.c) / own.aa, variance: 1 / own.aa };
}

const NOTHING: Estimate = { value: 0, variance: Number.POSITIVE_INFINITY };

/**
 * Mean of estimates that differ truly by some τ, under a prior for it, and the variance of one more: τ by moments,
 * shrunk to what is usual.
 */
function common(estimates: Estimate[], usual: typeof SLOPES_DIFFER, prior: Estimate): Estimate {
  const known = estimates.filter(({ variance }) => Number.isFinite(variance));
  if (known.length === 0) return prior;
  let tau2 = usual.sd ** 2;
  let mean = prior;
  for (let round = 0; round < 10; round++) {
    mean = known.reduce(
      (sum, { value, variance }) => add(sum, { value, variance: variance + tau2 }),
      prior,
    );
    let [squares, worth] = [usual.worth * usual.sd ** 2, usual.worth];
    for (const { value, variance } of known) {
      const seen = tau2 / (tau2 + variance);
      squares += seen * ((value - mean.value) ** 2 - variance);
      worth += seen;
    }
    tau2 = Math.max((usual.sd / 4) ** 2, squares / worth);
  }
  return { value: mean.value, variance: Math.min(prior.variance, mean.variance + tau2) };
}

function add(a: Estimate, b: Estimate): Estimate {
  const variance = 1 / (1 / a.variance + 1 / b.variance);
  return { value: variance * (a.value / a.variance + b.value / b.variance), variance };
}

/** How much wider, in variance, a belief must be for an estimate that it did not expect; 1 where it did. */
function apart(own: Estimate, belief: Estimate): number {
  if (!Number.isFinite(own.variance)) return 1;
  const z2 = (own.value - belief.value) ** 2 / (own.variance + belief.variance);
  return Math.max(1, z2 / SURPRISE) ** 2;
}

function pooledSpread(groups: readonly FittedGroup[]) {
  if (groups.length === 0) {
    return { spread: PHYSICS.spread, spread_log_sd: PHYSICS.spread_log_sd };
  }
  let [weight, log] = [SPREAD_DOUBT_DF, SPREAD_DOUBT_DF * ln(PHYSICS.spread)];
  for (const { fit } of groups) {
    weight += fit.spread_df;
    log += fit.spread_df * ln(fit.spread);
  }
  const doubt = PHYSICS.spread_log_sd ** 2 - SPREADS_DIFFER ** 2;
  const spread_log_sd = Math.sqrt(SPREADS_DIFFER ** 2 + (doubt * SPREAD_DOUBT_DF) / weight);
  return { spread: exp(log / weight), spread_log_sd };
}
