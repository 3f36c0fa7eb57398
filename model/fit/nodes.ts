import { exp, ln } from "../numerics/ln-exp.ts";
import { NUMERICS } from "./settings.ts";

const { node_step, node_reach, rows_of_one } = NUMERICS;

/**
 * Nodes of a heater's own level, in sds, by its number of rows: evenly spaced, on which a smooth integrand converges faster than any
 * power of the spacing (Trefethen & Weideman 2014). What n rows say of the level is √n times narrower, and so is the spacing.
 */
const NODES = Array.from({ length: rows_of_one }, (_, i) => {
  const half = Math.ceil((node_reach * Math.sqrt(i + 1)) / node_step);
  return Float64Array.from({ length: 2 * half + 1 }, (_, q) => ((q - half) * node_reach) / half);
});
export const MOST_NODES = Math.max(...NODES.map(({ length }) => length));

/** Least degrees of freedom of Student's t between heaters: below 4 the kurtosis is infinite. */
export const LEAST_TAIL_DF = 4;

export interface Nodes {
  /** Evenly spaced, and by how much. */
  at: Float64Array;
  step: number;
  /** Probability of each node under Student's t scaled to sd 1, and the derivative of its logarithm by ln(df − 4). */
  weight: Float64Array;
  by_ln_tail: Float64Array;
}

/** The nodes of heaters by their number of rows. @param ln_tail ln(degrees of freedom − 4) */
export function weightedNodes(ln_tail: number): (rows: number) => Nodes {
  const known: Nodes[] = [];
  return (rows) => {
    known[rows] ??= weighted(NODES[rows - 1] as Float64Array, ln_tail);
    return known[rows];
  };
}

function weighted(at: Float64Array, ln_tail: number): Nodes {
  const above = exp(ln_tail);
  const df = LEAST_TAIL_DF + above;
  const half = (df + 1) / 2;
  const log = at.map((z) => -half * ln(1 + (z * z) / (df - 2)));
  const weight = log.map(exp);
  const sum = weight.reduce((total, w) => total + w, 0);
  const by_df = at.map((z, q) => {
    const g = (z * z) / (df - 2);
    return (log[q] as number) / (df + 1) + (half * g) / ((df - 2) * (1 + g));
  });
  for (let q = 0; q < weight.length; q++) weight[q] = (weight[q] as number) / sum;
  const mean = by_df.reduce((total, v, q) => total + v * (weight[q] as number), 0);
  const step = (at[1] as number) - (at[0] as number);
  return { at, step, weight, by_ln_tail: by_df.map((v) => above * (v - mean)) };
}
