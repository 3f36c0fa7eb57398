import { exp, ln } from "../ln-exp.ts";
import { NODES, nodeWeights } from "./nodes.ts";
import { AT, ONE_CROWD, parameter } from "./parameters.ts";
import type { Sample } from "./sample.ts";
import { MISTAKEN, NUMERICS, SETTINGS } from "./settings.ts";

const Q = NODES.length;
const STEP = NUMERICS.node_step;
const FIRST_NODE = NODES[0] as number;
const INV_ROOT_2PI = 0.398_942_280_401_432_7;

/** What a pass over the rows is asked for beside the log-likelihood. */
export interface Asked {
  /** Its gradient is added. */
  gradient?: Float64Array;
  /** By row: filled with the posterior probability that its elevation is in feet. */
  feet?: Float64Array;
  /** Filled with the weight of owners by component: honest, never re-tuned, anything, second crowd. */
  components?: Float64Array;
}

/** Columns of one owner's rows by node, long enough for the most rows of one owner seen so far. */
const room = { good: new Float64Array(0), feet: new Float64Array(0), never: new Float64Array(0) };
const honestAt = new Float64Array(Q);
const neverAt = new Float64Array(Q);

/**
 * Log-likelihood of the mixture of DESIGN's lines 1–6,
 *   Σ_i w_i ln Σ_k π_k ∫ Π_j p_k(y_ij | u) dF(u),
 * the integral over a heater's own level u as a sum over nodes. Components k: honest, never re-tuned, anything, second
 * crowd. Rows j of an honest owner: good, in feet for metres, or a slip. A heater's own slope enters as variance
 * v²x² of each row.
 * @param t the parameters, with or without those of a second crowd
 */
export function logLikelihood(t: Float64Array, sample: Sample, asked: Asked = {}): number {
  const { gradient, feet, components } = asked;
  const { owners, first, x, y, variance, assumed, feet_shift, weight, power } = sample;
  const deep = gradient !== undefined || feet !== undefined;
  const a = parameter(t, "level");
  const b = parameter(t, "slope");
  const night = parameter(t, "night");
  const never = parameter(t, "never_level");
  const ln_dose = parameter(t, "ln_dose");
  const between2 = exp(2 * parameter(t, "ln_between"));
  const within2 = exp(2 * parameter(t, "ln_within"));
  const own2 = exp(2 * parameter(t, "ln_own_slope"));
  const floor2 = { between: SETTINGS.between ** 2, within: SETTINGS.within ** 2 };
  const dose2 = sample.dose ? sample.dose.sd ** 2 : 0;
  const odds_never = exp(parameter(t, "logit_never"));
  const odds_other = exp(parameter(t, "logit_other"));
  const logit_feet = parameter(t, "logit_feet");
  const rise = parameter(t, "feet_rise") / sample.x_sd;
  const slip = logistic(parameter(t, "logit_slip"));
  const slipped = slip * MISTAKEN;
  const two = t.length > ONE_CROWD;
  const shift = parameter(t, "crowd_shift");
  const tilt = parameter(t, "crowd_tilt");
  const crowd2 = exp(2 * parameter(t, "ln_crowd"));
  const nodes = nodeWeights(parameter(t, "ln_tail"));
  const g = new Float64Array(t.length);
  let total = 0;
  for (let i = 0; i < owners; i++) {
    const from = first[i] as number;
    const to = first[i + 1] as number;
    const n = to - from;
    const several = n > 1 ? 1 : 0;
    const c = power[i] as number;
    const w = weight[i] as number;
    ensureRoom(n);
    // Who may have copied must not narrow a spread below its prior.
    const held = sample.may_copy[i] as number;
    const freeB = held && between2 < floor2.between ? 0 : 1;
    const freeW = held && within2 < floor2.within ? 0 : 1;
    const b2 = freeB ? between2 : floor2.between;
    const s2 = freeW ? within2 : floor2.within;
    const d = sample.ln_dose[i] as number;
    const dosed = sample.dose !== null && !Number.isNaN(d);
    const tau2 = b2 + (dosed ? 0 : dose2);
    const tau = Math.sqrt(tau2);
    const offset = a - (dosed ? d - ln_dose : 0);
    const odds_crowd = two
      ? exp(
          parameter(t, "logit_crowd") + parameter(t, "crowd_odds") * (sample.standing[i] as number),
        )
      : 0;
    const all = 1 + several * odds_never + odds_other + odds_crowd;
    honestAt.fill(c < 1 ? 0 : 1);
    neverAt.fill(c < 1 ? 0 : 1);
    let crowdLog = 0;
    let crowdAt = 1;
    for (let j = from; j < to; j++) {
      const at = (j - from) * Q;
      const xj = (x[j] as number) + night * (assumed[j] as number);
      const s = s2 + (variance[j] as number) + own2 * xj * xj;
      const of = exp(logit_feet - rise * ((x[j] as number) - sample.x_mean));
      const r = (y[j] as number) - offset - b * xj;
      const height = ((1 - slip) * INV_ROOT_2PI) / Math.sqrt(s);
      const step = STEP * tau;
      const bend = exp((-step * step) / s);
      bell(room.good, at, r, tau, s, height / (1 + of), bend);
      bell(
        room.feet,
        at,
        r - b * (feet_shift[j] as number),
        tau,
        s,
        (height * of) / (1 + of),
        bend,
      );
      for (let q = 0; q < Q; q++) {
        const m = (room.good[at + q] as number) + (room.feet[at + q] as number) + slipped;
        honestAt[q] = c < 1 ? (honestAt[q] as number) + c * ln(m) : (honestAt[q] as number) * m;
      }
      if (several) {
        bell(room.never, at, (y[j] as number) - offset - never, tau, s, height, bend);
        for (let q = 0; q < Q; q++) {
          const m = (room.never[at + q] as number) + slipped;
          neverAt[q] = c < 1 ? (neverAt[q] as number) + c * ln(m) : (neverAt[q] as number) * m;
        }
      }
      if (two) {
        const sc = crowd2 + (variance[j] as number);
        const rc = r - shift - tilt * xj;
        const top = ((1 - slip) * INV_ROOT_2PI) / Math.sqrt(sc);
        const m = top * exp((-0.5 * rc * rc) / sc) + slipped;
        if (c < 1) crowdLog += c * ln(m);
        else crowdAt *= m;
      }
    }
    const scale = c < 1 ? fromLogs(several) : 0;
    let honest = 0;
    let lazy = 0;
    for (let q = 0; q < Q; q++) {
      honestAt[q] = (honestAt[q] as number) * (nodes.weight[q] as number);
      honest += honestAt[q] as number;
      if (!several) continue;
      neverAt[q] = (neverAt[q] as number) * (nodes.weight[q] as number);
      lazy += neverAt[q] as number;
    }
    const other = exp(n * c * LN_MISTAKEN - scale);
    const crowd = two ? (c < 1 ? exp(crowdLog - scale) : crowdAt) : 0;
    const like =
      (honest + several * odds_never * lazy + odds_other * other + odds_crowd * crowd) / all;
    total += w * (ln(like) + scale);
    const pH = honest / (like * all);
    const pN = (several * odds_never * lazy) / (like * all);
    const pO = (odds_other * other) / (like * all);
    const pC = (odds_crowd * crowd) / (like * all);
    if (components) {
      components[0] = (components[0] as number) + w * pH;
      components[1] = (components[1] as number) + w * pN;
      components[2] = (components[2] as number) + w * pO;
      components[3] = (components[3] as number) + w * pC;
    }
    if (!deep) continue;
    add(g, AT.logit_never, w * (pN - (several * odds_never) / all));
    add(g, AT.logit_other, w * (pO - odds_other / all));
    if (two) {
      const rise = w * (pC - odds_crowd / all);
      add(g, AT.logit_crowd, rise);
      add(g, AT.crowd_odds, rise * (sample.standing[i] as number));
    }
    const fH = pH / honest;
    const fN = several ? pN / lazy : 0;
    let tail = 0;
    for (let q = 0; q < Q; q++) {
      tail +=
        (fH * (honestAt[q] as number) + (several ? fN * (neverAt[q] as number) : 0)) *
        (nodes.by_ln_tail[q] as number);
    }
    add(g, AT.ln_tail, w * tail);
    for (let j = from; j < to; j++) {
      const at = (j - from) * Q;
      const xj = (x[j] as number) + night * (assumed[j] as number);
      const s = s2 + (variance[j] as number) + own2 * xj * xj;
      const of = exp(logit_feet - rise * ((x[j] as number) - sample.x_mean));
      const r = (y[j] as number) - offset - b * xj;
      const rf = r - b * (feet_shift[j] as number);
      const rn = (y[j] as number) - offset - never;
      // Posterior moments of z = u/τ over the nodes, for a good row, one in feet, one never re-tuned.
      let g0 = 0;
      let g1 = 0;
      let g2 = 0;
      let f0 = 0;
      let f1 = 0;
      let f2 = 0;
      for (let q = 0; q < Q; q++) {
        const z = NODES[q] as number;
        const good = room.good[at + q] as number;
        const infeet = room.feet[at + q] as number;
        const p = (honestAt[q] as number) / (good + infeet + slipped);
        const pg = p * good;
        const pf = p * infeet;
        g0 += pg;
        g1 += pg * z;
        g2 += pg * z * z;
        f0 += pf;
        f1 += pf * z;
        f2 += pf * z * z;
      }
      let n0 = 0;
      let n1 = 0;
      let n2 = 0;
      if (several) {
        for (let q = 0; q < Q; q++) {
          const z = NODES[q] as number;
          const good = room.never[at + q] as number;
          const pn = ((neverAt[q] as number) / (good + slipped)) * good;
          n0 += pn;
          n1 += pn * z;
          n2 += pn * z * z;
        }
      }
      const k = w * c;
      if (feet) feet[j] = fH * f0;
      if (!gradient) continue;
      g0 *= fH * k;
      g1 *= fH * k;
      g2 *= fH * k;
      f0 *= fH * k;
      f1 *= fH * k;
      f2 *= fH * k;
      n0 *= fN * k;
      n1 *= fN * k;
      n2 *= fN * k;
      const eg = (r * g0 - tau * g1) / s;
      const ef = (rf * f0 - tau * f1) / s;
      const en = (rn * n0 - tau * n1) / s;
      let level = eg + ef + en;
      let slope = eg * xj + ef * (xj + (feet_shift[j] as number));
      let onNight = (eg + ef) * b;
      const squares =
        (r * r * g0 - 2 * r * tau * g1 + tau2 * g2) / s +
        (rf * rf * f0 - 2 * rf * tau * f1 + tau2 * f2) / s +
        (rn * rn * n0 - 2 * rn * tau * n1 + tau2 * n2) / s;
      const by_s = (0.5 * (squares - g0 - f0 - n0)) / s;
      onNight += by_s * 2 * own2 * xj;
      const by_tau = (tau * (r * g1 + rf * f1 + rn * n1) - tau2 * (g2 + f2 + n2)) / s;
      add(g, AT.ln_between, freeB * by_tau * (b2 / tau2));
      add(g, AT.ln_within, freeW * by_s * 2 * s2);
      add(g, AT.ln_own_slope, by_s * 2 * own2 * xj * xj);
      add(g, AT.never_level, en);
      const byFeet = f0 - (of / (1 + of)) * (g0 + f0);
      add(g, AT.logit_feet, byFeet);
      add(g, AT.feet_rise, (-byFeet * ((x[j] as number) - sample.x_mean)) / sample.x_sd);
      let slips = (pH + pN) * k - g0 - f0 - n0;
      let kept = (pH + pN) * k;
      if (two) {
        const sc = crowd2 + (variance[j] as number);
        const rc = r - shift - tilt * xj;
        const top = ((1 - slip) * INV_ROOT_2PI) / Math.sqrt(sc);
        const density = top * exp((-0.5 * rc * rc) / sc);
        const c0 = (pC * k * density) / (density + slipped);
        const ec = (c0 * rc) / sc;
        level += ec;
        slope += ec * xj;
        onNight += ec * (b + tilt);
        add(g, AT.crowd_shift, ec);
        add(g, AT.crowd_tilt, ec * xj);
        add(g, AT.ln_crowd, (c0 * ((rc * rc) / sc - 1) * crowd2) / sc);
        slips += pC * k - c0;
        kept += pC * k;
      }
      add(g, AT.level, level);
      add(g, AT.slope, slope);
      add(g, AT.night, onNight * (assumed[j] as number));
      if (dosed) add(g, AT.ln_dose, level);
      add(g, AT.logit_slip, slips - slip * kept);
    }
  }
  if (gradient) for (let p = 0; p < g.length; p++) add(gradient, p, g[p] as number);
  return total;
}

const LN_MISTAKEN = ln(MISTAKEN);

export function logistic(l: number): number {
  return 1 / (1 + exp(-l));
}

function add(g: Float64Array, p: number, v: number): void {
  g[p] = (g[p] as number) + v;
}

function ensureRoom(rows: number): void {
  if (room.good.length >= rows * Q) return;
  for (const kind of ["good", "feet", "never"] as const) {
    room[kind] = new Float64Array(2 * rows * Q);
  }
}

/**
 * Normal density of residual r − τz at each node z, by recurrence outwards from the node nearest its peak: underflow
 * then only cuts the tails.
 */
function bell(
  out: Float64Array,
  at: number,
  r: number,
  tau: number,
  s: number,
  height: number,
  bend: number,
): void {
  const step = STEP * tau;
  const nearest = Math.max(0, Math.min(Q - 1, Math.round((r / tau - FIRST_NODE) / STEP)));
  const e = r - tau * (NODES[nearest] as number);
  const peak = height * exp((-0.5 * e * e) / s);
  let ratio = exp((e * step - 0.5 * step * step) / s);
  let down = bend / ratio;
  let v = peak;
  for (let q = nearest; q < Q; q++) {
    out[at + q] = v;
    v *= ratio;
    ratio *= bend;
  }
  v = peak;
  for (let q = nearest - 1; q >= 0; q--) {
    v *= down;
    out[at + q] = v;
    down *= bend;
  }
}

/** Turns sums of logarithms at the nodes into densities relative to the largest; answers its logarithm. */
function fromLogs(several: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let q = 0; q < Q; q++) {
    most = Math.max(most, honestAt[q] as number, several ? (neverAt[q] as number) : most);
  }
  for (let q = 0; q < Q; q++) {
    honestAt[q] = exp((honestAt[q] as number) - most);
    neverAt[q] = several ? exp((neverAt[q] as number) - most) : 0;
  }
  return most;
}
