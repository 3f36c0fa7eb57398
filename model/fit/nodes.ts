import { exp, ln } from "../numerics/ln-exp.ts";
import { NUMERICS } from "./settings.ts";

const { node_step, node_reach } = NUMERICS;

/** A heater's own level in sds: evenly spaced nodes, on which a smooth integrand converges faster than any power of the spacing (Trefethen & Weideman 2014). */
export const NODES = Float64Array.from(
  { length: Math.round((2 * node_reach) / node_step) + 1 },
  (_, q) => q * node_step - node_reach,
);

/** Least degrees of freedom of Student's t between heaters: below 4 the kurtosis is infinite. */
export const LEAST_TAIL_DF = 4;

export interface NodeWeights {
  /** Probability of each node under Student's t scaled to sd 1, and the derivative of its logarithm by ln(df − 4). */
  weight: Float64Array;
  by_ln_tail: Float64Array;
}

/** @param ln_tail ln(degrees of freedom − 4) */
export function nodeWeights(ln_tail: number): NodeWeights {
  const above = exp(ln_tail);
  const df = LEAST_TAIL_DF + above;
  const half = (df + 1) / 2;
  const log = NODES.map((z) => -half * ln(1 + (z * z) / (df - 2)));
  const weight = log.map(exp);
  const sum = weight.reduce((total, w) => total + w, 0);
  const by_df = NODES.map((z, q) => {
    const g = (z * z) / (df - 2);
    return (log[q] as number) / (df + 1) + (half * g) / ((df - 2) * (1 + g));
  });
  for (let q = 0; q < weight.length; q++) weight[q] = (weight[q] as number) / sum;
  const mean = by_df.reduce((total, v, q) => total + v * (weight[q] as number), 0);
  return { weight, by_ln_tail: by_df.map((v) => above * (v - mean)) };
}
