import { at, diagonal, inverse, type Matrix } from "../numerics/matrix.ts";
import { logPrior } from "./belief.ts";
import { logLikelihood } from "./likelihood.ts";
import type { Prior } from "./prior.ts";
import type { Sample } from "./sample.ts";

/** Log posterior density up to a constant, and its gradient. */
export function logPosterior(sample: Sample, prior: Prior) {
  return (t: Float64Array, gradient: Float64Array): number => {
    gradient.fill(0);
    return logLikelihood(t, sample, { gradient }) + logPrior(t, sample, prior, { gradient });
  };
}

/** Inverse of the information that the owners' scores (Berndt, Hall, Hall & Hausman 1974) and the prior hold at a point. */
export function scoreCovariance(t: Float64Array, sample: Sample, prior: Prior): Matrix {
  const information = diagonal(new Float64Array(t.length));
  logLikelihood(t, sample, { information });
  logPrior(t, sample, prior, { information });
  // The prior knows something of every parameter.
  return inverse(information) as Matrix;
}

/** Steps of the differences: small against what the data leave open, large against rounding. */
const DIFFERENCE = 0.1;

/**
 * Covariance of the parameters at the maximum: the inverse of the observed information, by central differences of the
 * gradient over a tenth of each parameter's own uncertainty (Efron & Hinkley 1978). Where the curvature vanishes along some
 * parameter, what the scores tell stands for it.
 * @param part owners whose likelihood is looked at; it counts for as many votes as the whole has
 */
export function covarianceAt(t: Float64Array, part: Sample, whole: Sample, prior: Prior): Matrix {
  const each = whole.votes / part.votes;
  const gradientAt = (at: Float64Array) => {
    const gradient = new Float64Array(t.length);
    logLikelihood(at, part, { gradient });
    for (let p = 0; p < gradient.length; p++) gradient[p] = each * (gradient[p] as number);
    logPrior(at, whole, prior, { gradient });
    return gradient;
  };
  const byScores = scoreCovariance(t, part, prior);
  const rows = Array.from(t, (_, p) => {
    const h = DIFFERENCE * Math.sqrt(at(byScores, p, p) / each);
    const by = (step: number) => gradientAt(t.map((v, k) => (k === p ? v + step : v)));
    const [up, down] = [by(h), by(-h)];
    return up.map((v, k) => ((down[k] as number) - v) / (2 * h));
  });
  const information = rows.map((row, i) => row.map((v, j) => (v + at(rows, j, i)) / 2));
  return inverse(information) ?? byScores.map((row) => row.map((v) => v / each));
}
