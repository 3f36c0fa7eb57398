import { logPrior } from "./belief.ts";
import { logLikelihood } from "./likelihood.ts";
import { diagonal, inverse, type Matrix } from "./matrix.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";

/** Log posterior density up to a constant, and its gradient. */
export function logPosterior(sample: Sample, prior: Prior) {
  return (t: Float64Array, gradient: Float64Array): number => {
    gradient.fill(0);
    return logLikelihood(t, sample, { gradient }) + logPrior(t, sample, prior, gradient);
  };
}

/** Steps of the differences: small against what the data leave open, large against rounding. */
const DIFFERENCE = 0.1;

/**
 * Covariance of the parameters at the maximum: the inverse of the observed information, by central differences of the
 * gradient over a tenth of each parameter's own uncertainty (Efron & Hinkley 1978).
 * @param part owners whose likelihood is looked at; it counts for as many votes as the whole has
 * @param uncertainty rough sd of each parameter
 */
export function covarianceAt(
  t: Float64Array,
  part: Sample,
  whole: Sample,
  prior: Prior,
  uncertainty: Float64Array,
): Matrix {
  const each = whole.votes / part.votes;
  const objective = (at: Float64Array, gradient: Float64Array) => {
    logLikelihood(at, part, { gradient });
    for (let p = 0; p < gradient.length; p++) gradient[p] = each * (gradient[p] as number);
    logPrior(at, whole, prior, gradient);
  };
  const rows = Array.from(t, (_, p) => {
    const h = DIFFERENCE * (uncertainty[p] as number);
    const gradientAt = (by: number) => {
      const at = t.slice();
      at[p] = (at[p] as number) + by;
      const gradient = new Float64Array(t.length);
      objective(at, gradient);
      return gradient;
    };
    const [up, down] = [gradientAt(h), gradientAt(-h)];
    return up.map((v, k) => ((down[k] as number) - v) / (2 * h));
  });
  const information = rows.map((row, i) =>
    row.map((v, j) => (v + ((rows[j] as Float64Array)[i] as number)) / 2),
  );
  // A maximum at which the curvature vanishes along some parameter: what the prior knows is added until it does not.
  for (let extra = 0; ; extra = extra === 0 ? 1e-3 : 10 * extra) {
    const raised = information.map((row, i) =>
      row.map((v, j) => (i === j ? v + extra / (uncertainty[i] as number) ** 2 : v)),
    );
    const covariance = inverse(raised);
    if (covariance) return covariance;
    if (extra > 1e6) return diagonal(uncertainty.map((sd) => sd * sd));
  }
}
