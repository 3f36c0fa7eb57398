import { exp, ln } from "../numerics/ln-exp.ts";
import type { Matrix } from "../numerics/matrix.ts";
import { logLikelihood } from "./likelihood.ts";
import { type Maximum, maximise } from "./maximise.ts";
import { ONE_CROWD, parameter, TWO_CROWDS } from "./parameters.ts";
import { covarianceAt, logPosterior, scoreCovariance } from "./posterior.ts";
import type { Prior } from "./prior.ts";
import { type Sample, thinned } from "./sample.ts";
import { NUMERICS } from "./settings.ts";
import { crowdStarts, exchanged, lineStarts } from "./starts.ts";

/** A maximum, without a second crowd or with one to either side, and its probability among them. */
export interface Model {
  t: Float64Array;
  covariance: Matrix;
  weight: number;
  /** Weight of owners by component: honest, never re-tuned, anything, second crowd. */
  components: Float64Array;
}

const ROUGH = 1e-2;
const FINE = 1e-5;
/** Steps from a part's maximum towards the whole's. */
const FROM_PART = 3;
/** A model of less probability says nothing. */
const NEGLIGIBLE = 1e-3;

/**
 * Fits one heater size and end: maximum a posteriori without and with a second crowd, from several starts, averaged by
 * Schwarz's criterion (1978; Raftery 1995).
 */
export function fitGroup(sample: Sample, prior: Prior): Model[] {
  const part = thinned(sample, NUMERICS.part);
  const rough = (t: Float64Array) => climbed(part, prior, t, 25, ROUGH);
  const fine = (t: Float64Array) => climbed(part, prior, t, 100, FINE);
  const line = highest(best(part, prior, lineStarts(part, prior), 2).map(rough));
  const one = fine(line.t);
  const seconds = [line.t, ...lineStarts(part, prior).slice(-1)]
    .flatMap(crowdStarts)
    .map((t) => honestFirst(part, prior, rough(t)))
    .filter((m) => m !== null);
  const schwarz = 0.5 * (TWO_CROWDS - ONE_CROWD) * ln(part.votes + 1);
  const isHopeless = ({ value }: Maximum) => value - line.value - schwarz < 2 * ln(NEGLIGIBLE);
  // A crowd to the rich side and one to the lean may explain the same rows: both count, by their evidence.
  const twos = [RICHER, LEANER].flatMap((side) => {
    const there = seconds.filter(({ t }) => side(parameter(t, "crowd_shift")));
    if (there.length === 0 || isHopeless(highest(there))) return [];
    const two = fine(highest(there).t);
    return honestIsMost(part, two.t) ? [two] : [];
  });
  const evidence = [one.value, ...twos.map(({ value }) => value - schwarz)];
  const most = Math.max(...evidence);
  const weights = evidence.map((v) => exp(v - most));
  const all = weights.reduce((sum, v) => sum + v, 0);
  return [one, ...twos]
    .map((m, k) => ({ ...m, weight: (weights[k] as number) / all }))
    .filter((m) => m.weight > NEGLIGIBLE)
    .map((m) => onAll(m, part, sample, prior));
}

const RICHER = (shift: number) => shift >= 0;
const LEANER = (shift: number) => shift < 0;

/**
 * From the maximum of a part to that of all rows; the curvature of the part's likelihood serves, scaled up. A part's
 * maximum is near enough for a step or two to be as good as the whole's (Le Cam 1956; van der Vaart 1998, ch. 5.7): what would
 * still move are shares of mistakes that nobody makes.
 */
function onAll(
  { t, weight }: Maximum & { weight: number },
  part: Sample,
  sample: Sample,
  prior: Prior,
): Model {
  const covariance = covarianceAt(t, part, sample, prior);
  let found = t;
  if (part !== sample) {
    found = maximise(logPosterior(sample, prior), t, {
      inverse: covariance,
      rounds: FROM_PART,
      tolerance: FINE,
    }).t;
  }
  const components = new Float64Array(4);
  logLikelihood(found, sample, { components });
  return { t: found, covariance, weight, components };
}

function climbed(
  sample: Sample,
  prior: Prior,
  t: Float64Array,
  rounds: number,
  tolerance: number,
): Maximum {
  const inverse = scoreCovariance(t, sample, prior);
  return maximise(logPosterior(sample, prior), t, { inverse, rounds, tolerance });
}

function best(sample: Sample, prior: Prior, starts: Float64Array[], count: number): Float64Array[] {
  const objective = logPosterior(sample, prior);
  return starts
    .map((t) => ({ t, value: objective(t, new Float64Array(t.length)) }))
    .sort((p, q) => q.value - p.value)
    .slice(0, count)
    .map(({ t }) => t);
}

/** The honest are more than any other crowd: else the two change places; null when that is no maximum either. */
function honestFirst(sample: Sample, prior: Prior, found: Maximum): Maximum | null {
  if (honestIsMost(sample, found.t)) return found;
  const other = climbed(sample, prior, exchanged(found.t), 25, ROUGH);
  return honestIsMost(sample, other.t) ? other : null;
}

function honestIsMost(sample: Sample, t: Float64Array): boolean {
  const components = new Float64Array(4);
  logLikelihood(t, sample, { components });
  return (components[0] as number) >= (components[3] as number);
}

function highest(found: readonly Maximum[]): Maximum {
  return found.reduce((p, q) => (q.value > p.value ? q : p));
}
