import { exp, ln } from "../numerics/ln-exp.ts";
import type { Matrix } from "../numerics/matrix.ts";
import { MOST_NODES, type Nodes, weightedNodes } from "./nodes.ts";
import { AT, ONE_CROWD, type Parameter, parameter } from "./parameters.ts";
import type { Sample } from "./sample.ts";
import { MISTAKEN, NUMERICS, SETTINGS } from "./settings.ts";

const INV_ROOT_2PI = 0.398_942_280_401_432_7;
const MOST = NUMERICS.rows_of_one;

/** What a pass over the rows is asked for beside the log-likelihood. */
export interface Asked {
  /** Its gradient, the sum of the owners' scores, is added. */
  gradient?: Float64Array;
  /** The sum of the scores' outer products is added: Fisher's information, estimated (Berndt et al. 1974). */
  information?: Matrix;
  /** Filled with the weight of owners by component: honest, never re-tuned, anything, second crowd. */
  components?: Float64Array;
}

// Of the owner at hand, by row: x with the night's offset, variance, odds of feet, density in the second crowd.
const rowX = new Float64Array(MOST);
const rowS = new Float64Array(MOST);
const rowOdds = new Float64Array(MOST);
const rowCrowd = new Float64Array(MOST);
// By row and node: density of a good row, of one in feet, of an honest owner's row of any kind; the same of one never re-tuned.
const good = new Float64Array(MOST * MOST_NODES);
const inFeet = new Float64Array(MOST * MOST_NODES);
const honestRow = new Float64Array(MOST * MOST_NODES);
const never = new Float64Array(MOST * MOST_NODES);
const neverRow = new Float64Array(MOST * MOST_NODES);
/** By node: the product over the rows, times the node's weight. */
const honestAt = new Float64Array(MOST_NODES);
const neverAt = new Float64Array(MOST_NODES);
/** Posterior moments 0–2 of z = u/τ over the nodes, of one row's being of one kind. */
const moment = new Float64Array(3);

/**
 * Log-likelihood of the mixture of docs/method.md,
 *   Σ_i w_i ln Σ_k π_k ∫ Π_j p_k(y_ij | u) dF(u),
 * the integral over a heater's own level u as a sum over nodes. Components k: honest, never re-tuned, anything, second
 * crowd. Rows j of an honest owner: good, in feet for metres, or a slip. A heater's own slope enters as variance
 * v²x² of each row.
 * @param t the parameters, with or without those of a second crowd
 */
export function logLikelihood(t: Float64Array, sample: Sample, asked: Asked = {}): number {
  const { gradient, information, components } = asked;
  const deep = gradient !== undefined || information !== undefined;
  const { first, x, y, variance, assumed, feet_shift } = sample;
  const value = (name: Parameter) => parameter(t, name);
  const [a, b, night] = [value("level"), value("slope"), value("night")];
  const [neverLevel, lnDose, logitFeet] = [
    value("never_level"),
    value("ln_dose"),
    value("logit_feet"),
  ];
  const fitted = { between: exp(2 * value("ln_between")), within: exp(2 * value("ln_within")) };
  const own2 = exp(2 * value("ln_own_slope"));
  const dose2 = sample.dose ? sample.dose.sd ** 2 : 0;
  const [oddsNever, oddsOther] = [exp(value("logit_never")), exp(value("logit_other"))];
  const rise = value("feet_rise") / sample.x_sd;
  const slip = logistic(value("logit_slip"));
  const slipped = slip * MISTAKEN;
  const top = (1 - slip) * INV_ROOT_2PI;
  const two = t.length > ONE_CROWD;
  const [logitCrowd, crowdOdds] = [value("logit_crowd"), value("crowd_odds")];
  const [shift, tilt] = [value("crowd_shift"), value("crowd_tilt")];
  const crowd2 = exp(2 * value("ln_crowd"));
  const nodesOf = weightedNodes(value("ln_tail"));
  const score = new Float64Array(t.length);
  const add = (p: number, v: number) => {
    score[p] = (score[p] as number) + v;
  };
  let total = 0;
  for (let i = 0; i < sample.owners; i++) {
    const from = first[i] as number;
    const n = (first[i + 1] as number) - from;
    const several = n > 1 ? 1 : 0;
    // Who may have copied must not narrow a spread below its prior.
    const held = sample.may_copy[i] === 1;
    const freeB = held && fitted.between < SETTINGS.between ** 2 ? 0 : 1;
    const freeW = held && fitted.within < SETTINGS.within ** 2 ? 0 : 1;
    const b2 = freeB ? fitted.between : SETTINGS.between ** 2;
    const s2 = freeW ? fitted.within : SETTINGS.within ** 2;
    const dosed = !Number.isNaN(sample.ln_dose[i] as number);
    const offset = a - (dosed ? (sample.ln_dose[i] as number) - lnDose : 0);
    const tau2 = b2 + (dosed ? 0 : dose2);
    const tau = Math.sqrt(tau2);
    const nodes = nodesOf(n);
    const count = nodes.at.length;
    const step = nodes.step * tau;
    const oddsCrowd = two ? exp(logitCrowd + crowdOdds * (sample.standing[i] as number)) : 0;
    const all = 1 + several * oddsNever + oddsOther + oddsCrowd;
    honestAt.set(nodes.weight);
    neverAt.set(nodes.weight);
    let crowd = 1;
    for (let j = 0; j < n; j++) {
      const row = from + j;
      const at = j * count;
      const xj = (x[row] as number) + night * (assumed[row] as number);
      const s = s2 + (variance[row] as number) + own2 * xj * xj;
      const odds = exp(logitFeet - rise * ((x[row] as number) - sample.x_mean));
      rowX[j] = xj;
      rowS[j] = s;
      rowOdds[j] = odds;
      const r = (y[row] as number) - offset - b * xj;
      const height = top / Math.sqrt(s);
      const bend = exp((-step * step) / s);
      const feet = r - b * (feet_shift[row] as number);
      bell(good, at, nodes, r, tau, s, height / (1 + odds), bend);
      bell(inFeet, at, nodes, feet, tau, s, (height * odds) / (1 + odds), bend);
      for (let q = 0; q < count; q++) {
        const m = (good[at + q] as number) + (inFeet[at + q] as number) + slipped;
        honestRow[at + q] = m;
        honestAt[q] = (honestAt[q] as number) * m;
      }
      if (several) {
        bell(never, at, nodes, (y[row] as number) - offset - neverLevel, tau, s, height, bend);
        for (let q = 0; q < count; q++) {
          const m = (never[at + q] as number) + slipped;
          neverRow[at + q] = m;
          neverAt[q] = (neverAt[q] as number) * m;
        }
      }
      if (two) {
        const sc = crowd2 + (variance[row] as number);
        const rc = r - shift - tilt * xj;
        const density = (top / Math.sqrt(sc)) * exp((-0.5 * rc * rc) / sc);
        rowCrowd[j] = density;
        crowd *= density + slipped;
      }
    }
    const honest = sumOf(honestAt, count);
    const lazy = several * sumOf(neverAt, count);
    const other = exp(n * LN_MISTAKEN);
    const like = honest + oddsNever * lazy + oddsOther * other + oddsCrowd * crowd;
    const w = sample.weight[i] as number;
    total += w * ln(like / all);
    const pHonest = honest / like;
    const pNever = (oddsNever * lazy) / like;
    const pOther = (oddsOther * other) / like;
    const pCrowd = (oddsCrowd * crowd) / like;
    if (components) {
      [pHonest, pNever, pOther, pCrowd].forEach((p, k) => {
        components[k] = (components[k] as number) + w * p;
      });
    }
    if (!deep) continue;
    score.fill(0);
    add(AT.logit_never, pNever - (several * oddsNever) / all);
    add(AT.logit_other, pOther - oddsOther / all);
    if (two) {
      add(AT.logit_crowd, pCrowd - oddsCrowd / all);
      add(AT.crowd_odds, (pCrowd - oddsCrowd / all) * (sample.standing[i] as number));
    }
    const ofNever = several * oddsNever;
    for (let q = 0; q < count; q++) {
      // From here on these are the posterior probabilities of the nodes.
      honestAt[q] = (honestAt[q] as number) / like;
      neverAt[q] = (ofNever * (neverAt[q] as number)) / like;
      add(
        AT.ln_tail,
        ((honestAt[q] as number) + (neverAt[q] as number)) * (nodes.by_ln_tail[q] as number),
      );
    }
    for (let j = 0; j < n; j++) {
      const row = from + j;
      const at = j * count;
      const xj = rowX[j] as number;
      const s = rowS[j] as number;
      const odds = rowOdds[j] as number;
      const byFeet = feet_shift[row] as number;
      const r = (y[row] as number) - offset - b * xj;
      let level = 0;
      let slope = 0;
      let squares = 0;
      let byTau = 0;
      /** Adds a kind of row whose residual is `e`; answers its score by the level. */
      const addKind = (e: number, dx: number) => {
        const m0 = moment[0] as number;
        const m1 = moment[1] as number;
        const m2 = moment[2] as number;
        const byLevel = (e * m0 - tau * m1) / s;
        level += byLevel;
        slope += byLevel * dx;
        squares += (e * e * m0 - 2 * e * tau * m1 + tau2 * m2) / s - m0;
        byTau += (tau * e * m1 - tau2 * m2) / s;
        return byLevel;
      };
      moments(good, honestRow, honestAt, at, nodes);
      const isGood = moment[0] as number;
      addKind(r, xj);
      moments(inFeet, honestRow, honestAt, at, nodes);
      const isInFeet = moment[0] as number;
      addKind(r - b * byFeet, xj + byFeet);
      let onNight = level * b;
      let isNever = 0;
      if (several) {
        moments(never, neverRow, neverAt, at, nodes);
        isNever = moment[0] as number;
        add(AT.never_level, addKind((y[row] as number) - offset - neverLevel, 0));
      }
      const byS = (0.5 * squares) / s;
      onNight += byS * 2 * own2 * xj;
      add(AT.ln_between, freeB * byTau * (b2 / tau2));
      add(AT.ln_within, freeW * byS * 2 * s2);
      add(AT.ln_own_slope, byS * 2 * own2 * xj * xj);
      const moreFeet = isInFeet - (odds / (1 + odds)) * (isGood + isInFeet);
      add(AT.logit_feet, moreFeet);
      add(AT.feet_rise, (-moreFeet * ((x[row] as number) - sample.x_mean)) / sample.x_sd);
      let kept = isGood + isInFeet + isNever;
      if (two) {
        const sc = crowd2 + (variance[row] as number);
        const rc = r - shift - tilt * xj;
        const density = rowCrowd[j] as number;
        const isCrowd = (pCrowd * density) / (density + slipped);
        const byLevel = (isCrowd * rc) / sc;
        level += byLevel;
        slope += byLevel * xj;
        onNight += byLevel * (b + tilt);
        add(AT.crowd_shift, byLevel);
        add(AT.crowd_tilt, byLevel * xj);
        add(AT.ln_crowd, (isCrowd * ((rc * rc) / sc - 1) * crowd2) / sc);
        kept += isCrowd;
      }
      add(AT.level, level);
      add(AT.slope, slope);
      add(AT.night, onNight * (assumed[row] as number));
      if (dosed) add(AT.ln_dose, level);
      add(AT.logit_slip, (1 - slip) * (1 - pOther) - kept);
    }
    if (gradient) addTimes(gradient, score, w);
    information?.forEach((rowOf, p) => {
      addTimes(rowOf, score, w * (score[p] as number));
    });
  }
  return total;
}

const LN_MISTAKEN = ln(MISTAKEN);

export function logistic(l: number): number {
  return 1 / (1 + exp(-l));
}

function sumOf(values: Float64Array, count: number): number {
  let sum = 0;
  for (let q = 0; q < count; q++) sum += values[q] as number;
  return sum;
}

function addTimes(to: Float64Array, values: Float64Array, factor: number): void {
  for (let p = 0; p < values.length; p++) {
    to[p] = (to[p] as number) + factor * (values[p] as number);
  }
}

/** Fills {@link moment} for the kind of row whose densities by node are `of`, among `all` of that row. */
function moments(
  of: Float64Array,
  all: Float64Array,
  node: Float64Array,
  at: number,
  { at: nodes }: Nodes,
): void {
  let m0 = 0;
  let m1 = 0;
  let m2 = 0;
  for (let q = 0; q < nodes.length; q++) {
    const p = ((node[q] as number) * (of[at + q] as number)) / (all[at + q] as number);
    const z = nodes[q] as number;
    m0 += p;
    m1 += p * z;
    m2 += p * z * z;
  }
  moment[0] = m0;
  moment[1] = m1;
  moment[2] = m2;
}

/**
 * Normal density of residual r − τz at each node z, by recurrence outwards from the node nearest its peak: underflow
 * then only cuts the tails.
 */
function bell(
  out: Float64Array,
  at: number,
  { at: nodes, step: spacing }: Nodes,
  r: number,
  tau: number,
  s: number,
  height: number,
  bend: number,
): void {
  const step = spacing * tau;
  const count = nodes.length;
  const lowest = nodes[0] as number;
  const nearest = Math.max(0, Math.min(count - 1, Math.round((r / tau - lowest) / spacing)));
  const e = r - tau * (nodes[nearest] as number);
  const peak = height * exp((-0.5 * e * e) / s);
  const first = exp((e * step - 0.5 * step * step) / s);
  let v = peak;
  let ratio = first;
  for (let q = nearest; q < count; q++) {
    out[at + q] = v;
    v *= ratio;
    ratio *= bend;
  }
  v = peak;
  ratio = bend / first;
  for (let q = nearest - 1; q >= 0; q--) {
    v *= ratio;
    out[at + q] = v;
    ratio *= bend;
  }
}
