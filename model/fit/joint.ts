import { bisquareWeight } from "./bisquare.ts";
import { type Cells, votesByBand } from "./cells.ts";
import { FEET_AS_METRES, feetByBand } from "./feet-for-metres.ts";
import { BANDS, REFERENCE_SLOPE } from "./grid.ts";
import { leap, type Parameters, parametersOf } from "./leap.ts";
import {
  feetShare,
  type Kinds,
  kindsOf,
  MOST_FEET,
  noKinds,
  SHARE_PRIOR,
  type Shares,
  share,
  stepKindsOf,
  USUAL_SHARES,
} from "./mixture-of-rows.ts";
import { type Line, type Normal, priorNormal, solve } from "./normal-equations.ts";
import type { GroupPrior } from "./prior.ts";
import { levelNearCrowd, OWN_SLOPE, START_SPREAD, START_STEP_SPREAD } from "./start-line.ts";

/** Votes that the spread assumed at the start is worth, of rows and of steps. */
const SPREAD_VOTES = 8;
const STEP_SPREAD_VOTES = 6;
/** Bands scatter about the line by at least this, and before they tell, by the usual, worth so many bands. */
const LEAST_BAND_SCATTER = 0.003;
export const MOST_BAND_SCATTER = 0.03;
const USUAL_BAND_SCATTER = 0.02;
const BAND_SCATTER_VOTES = 4;
/** Tuning constant of the bisquare over bands. */
const BAND_C = 4;
/** Steps this long in x tell those who re-tune from those who never do. */
const TELLING_STEP = 0.12;
/** Where feet for metres would move a row by so many spreads, rows tell how common that is; elsewhere they look honest. */
export const TELLING_FEET = 1.5;
/** Bands with less than this have nothing to say. */
const LEAST_VOTES = 1e-6;
/** Square of the standardised difference of slopes beyond which the rows give way to the steps. */
export const STEPS_SURPRISE = 2;
const MOST_ROUNDS = 60;
/** A line that moved less than this in a round, in ln, has settled. */
const SETTLED = 2e-5;
/** Plain rounds before the first leap. */
const ROUNDS_ALONE = 3;

/** The state of the fit after a round, and what each cell is worth in it. */
export interface Joint {
  line: Line;
  /** Spread between tunes of different heaters, and within one heater, in ln. */
  s: number;
  within: number;
  shares: Shares;
  /** How many times as frequent feet for metres are in each band as in all. */
  feet_by_band: Float64Array;
  step_background: number;
  /** Probability that the rows of a cell are honest tunes; likewise of steps. */
  honest: Float64Array;
  honestStep: Float64Array;
  /** What a row's information is worth for its band being one voice among others. */
  voice: Float64Array;
  /** Scatter of bands about the line. */
  scatter: number;
  /** Slope of the rows less that of the steps, in standard errors. */
  against_steps: number;
  /** Information of the rows and steps with the prior's, at these weights. */
  normal: Normal;
}

/**
 * Line, spreads and shares that explain rows and steps together, by expectation–maximisation (Dempster, Laird & Rubin
 * 1977): each cell's rows count by the probability that they are honest tunes; each band of density is one voice
 * among the others, worth 1/(its variance + the bands' scatter), less if it stands apart (bisquare); steps within
 * contributors add what they know of the slope, free of what their heaters have of their own. Where these contradict
 * the rows, the start may have been drawn to those far off, and the level is looked for anew near the crowd.
 */
export function jointFit(levels: Cells, steps: Cells, prior: GroupPrior, start: Line): Joint {
  const joint: Joint = {
    line: start,
    s: START_SPREAD,
    within: START_STEP_SPREAD,
    shares: { ...USUAL_SHARES },
    feet_by_band: feetByBand(votesByBand(levels)),
    step_background: SHARE_PRIOR.step_background.share,
    honest: new Float64Array(levels.w.length),
    honestStep: new Float64Array(steps.w.length),
    voice: new Float64Array(BANDS).fill(1),
    scatter: USUAL_BAND_SCATTER,
    against_steps: 0,
    normal: priorNormal(prior),
  };
  const round = () => {
    const { a, c } = joint.line;
    weighSteps(joint, steps);
    weighRows(joint, levels);
    joint.voice = voices(joint, levels);
    joint.normal = normalEquations(joint, levels, steps, prior);
    joint.line = solve(joint.normal);
    return Math.max(Math.abs(joint.line.a - a), Math.abs(joint.line.c - c)) < SETTLED;
  };
  round();
  if (joint.against_steps ** 2 > STEPS_SURPRISE) {
    const { c } = joint.line;
    joint.line = { a: levelNearCrowd(levels, prior, c), c };
  }
  let trail: Parameters[] = [];
  for (let i = 0; i < MOST_ROUNDS; i++) {
    if (round()) break;
    trail.push(parametersOf(joint));
    if (i < ROUNDS_ALONE || trail.length < 3) continue;
    leap(joint, trail.slice(-3) as [Parameters, Parameters, Parameters]);
    trail = [];
  }
  return joint;
}

function weighRows(joint: Joint, { w, x, r, rr, band }: Cells): void {
  const kinds: Kinds = noKinds();
  const { line } = joint;
  const told = bandsOfSlips();
  let votes = 0;
  let background = 0;
  let honest = 0;
  let squares = 0;
  const slope = REFERENCE_SLOPE + line.c;
  for (let k = 0; k < w.length; k++) {
    const wk = w[k] as number;
    const xk = x[k] as number;
    const q = (r[k] as number) - line.a - line.c * xk;
    kindsOf(q, xk, band[k] as number, joint, kinds);
    joint.honest[k] = kinds.honest;
    votes += wk;
    const j = band[k] as number;
    const slipped = wk * kinds.feet;
    told.votes[j] = (told.votes[j] as number) + wk;
    told.slipped[j] = (told.slipped[j] as number) + slipped;
    told.off[j] = (told.off[j] as number) + slipped * (q - slope * (FEET_AS_METRES[j] as number));
    background += wk * kinds.background;
    honest += wk * kinds.honest;
    squares += kinds.honest * (wk * q * q + (rr[k] as number));
  }
  const feet = feetAmong(told, joint);
  joint.s = Math.sqrt((SPREAD_VOTES * START_SPREAD ** 2 + squares) / (SPREAD_VOTES + honest));
  joint.shares = {
    ...joint.shares,
    feet,
    background: share(SHARE_PRIOR.background, background, votes),
  };
}

/** Of each band: its votes, those of them taken for feet for metres, and Σ of these × how far off that slip's line. */
const bandsOfSlips = () => ({
  votes: new Float64Array(BANDS),
  slipped: new Float64Array(BANDS),
  off: new Float64Array(BANDS),
});

/**
 * The share of feet for metres, from the bands that can tell. Rows of one band count as such slips as far as they lie, on
 * average, where that slip puts them: a crowd that agrees on something else at one height is not one.
 */
function feetAmong(
  { votes, slipped, off }: ReturnType<typeof bandsOfSlips>,
  { line, s, scatter, shares, feet_by_band }: Joint,
): number {
  const slope = REFERENCE_SLOPE + line.c;
  let among = 0;
  let feet = 0;
  for (let j = 0; j < BANDS; j++) {
    if ((FEET_AS_METRES[j] as number) * slope <= TELLING_FEET * s) continue;
    // As many votes as there would be slips, were all of them slips.
    const times = feetShare(shares, feet_by_band[j] as number) / shares.feet;
    among += (1 - shares.background) * (votes[j] as number) * times;
    const f = slipped[j] as number;
    if (f < LEAST_VOTES) continue;
    feet +=
      f * bisquareWeight((off[j] as number) / f / Math.sqrt(s ** 2 / f + scatter ** 2), BAND_C);
  }
  return Math.min(MOST_FEET, share(SHARE_PRIOR.feet, feet, among));
}

/** Standard deviation of a step's dr about the line, of its length. */
export function stepSd(within: number, dx: number): number {
  return Math.sqrt(2 * within ** 2 + (OWN_SLOPE * dx) ** 2);
}

function weighSteps(joint: Joint, { w, x, r, rr }: Cells): void {
  const kinds: Kinds = noKinds();
  const { line, within, step_background, shares } = joint;
  const belief = { line, sd: 0, never_retuned: shares.never_retuned, background: step_background };
  let votes = 0;
  let honest = 0;
  let squares = 0;
  let background = 0;
  let telling = 0;
  let carried = 0;
  for (let k = 0; k < w.length; k++) {
    const wk = 2 * (w[k] as number);
    const dx = x[k] as number;
    const dr = r[k] as number;
    belief.sd = stepSd(within, dx);
    stepKindsOf(dx, dr, belief, kinds);
    joint.honestStep[k] = kinds.honest;
    const q = dr - line.c * dx;
    const beyondOwnSlope = Math.max(
      0,
      wk * (q * q - (OWN_SLOPE * dx) ** 2) + 2 * (rr[k] as number),
    );
    votes += wk;
    honest += wk * kinds.honest;
    squares += (kinds.honest * beyondOwnSlope) / 2;
    background += wk * kinds.background;
    if (dx < TELLING_STEP) continue;
    telling += wk * (kinds.honest + kinds.never_retuned);
    carried += wk * kinds.never_retuned;
  }
  joint.within = Math.sqrt(
    (STEP_SPREAD_VOTES * START_STEP_SPREAD ** 2 + squares) / (STEP_SPREAD_VOTES + honest),
  );
  joint.step_background = share(SHARE_PRIOR.step_background, background, votes);
  joint.shares.never_retuned = share(SHARE_PRIOR.never_retuned, carried, telling);
}

/** Each band's worth as one voice, from its votes and how far it stands from the line. */
function voices(joint: Joint, { w, x, r, band }: Cells): Float64Array {
  const { line, s, honest } = joint;
  const votes = new Float64Array(BANDS);
  const residual = new Float64Array(BANDS);
  for (let k = 0; k < w.length; k++) {
    const j = band[k] as number;
    const weight = (w[k] as number) * (honest[k] as number);
    votes[j] = (votes[j] as number) + weight;
    const q = (r[k] as number) - line.a - line.c * (x[k] as number);
    residual[j] = (residual[j] as number) + weight * q;
  }
  // Halfway only: line and scatter answer each other, and would swing.
  joint.scatter = (joint.scatter + bandScatter(votes, residual, joint)) / 2;
  return votes.map((v, j) => {
    if (v < LEAST_VOTES) return 1;
    const variance = s ** 2 / v + joint.scatter ** 2;
    const mean = (residual[j] as number) / v;
    return (s ** 2 / v / variance) * bisquareWeight(mean / Math.sqrt(variance), BAND_C);
  });
}

/** Scatter of the bands beyond what their votes explain, by moments, shrunk to the usual. */
function bandScatter(votes: Float64Array, residual: Float64Array, { s, scatter }: Joint): number {
  let sum = BAND_SCATTER_VOTES * USUAL_BAND_SCATTER ** 2;
  let worth = BAND_SCATTER_VOTES;
  for (let j = 0; j < BANDS; j++) {
    const v = votes[j] as number;
    if (v < LEAST_VOTES) continue;
    const mean = (residual[j] as number) / v;
    const noise = s ** 2 / v;
    const seen = scatter ** 2 / (noise + scatter ** 2);
    const tame = bisquareWeight(mean / Math.sqrt(noise + scatter ** 2), BAND_C);
    sum += seen * tame * (mean ** 2 - noise);
    worth += seen * tame;
  }
  const own = Math.sqrt(Math.max(0, sum / worth));
  return Math.min(MOST_BAND_SCATTER, Math.max(LEAST_BAND_SCATTER, own));
}

function normalEquations(joint: Joint, levels: Cells, steps: Cells, prior: GroupPrior): Normal {
  const rows: Normal = { aa: 0, ac: 0, cc: 0, ra: 0, rc: 0 };
  const { w, x, r, xx, xr, band } = levels;
  for (let k = 0; k < w.length; k++) {
    const worth = rowWorth(joint, k, band[k] as number);
    const g = (w[k] as number) * worth;
    const xk = x[k] as number;
    const rk = r[k] as number;
    rows.aa += g;
    rows.ac += g * xk;
    rows.cc += g * xk * xk + worth * (xx[k] as number);
    rows.ra += g * rk;
    rows.rc += g * xk * rk + worth * (xr[k] as number);
  }
  let cc = 0;
  let rc = 0;
  for (let k = 0; k < steps.w.length; k++) {
    const dx = steps.x[k] as number;
    const g = (steps.w[k] as number) * stepWorth(joint, k, dx);
    cc += g * dx * dx;
    rc += g * dx * (steps.r[k] as number);
  }
  const { normal, against } = reconciled(rows, { cc, rc });
  joint.against_steps = against;
  const known = priorNormal(prior);
  return {
    aa: known.aa + normal.aa,
    ac: normal.ac,
    cc: known.cc + normal.cc + cc,
    ra: known.ra + normal.ra,
    rc: known.rc + normal.rc + rc,
  };
}

/**
 * Rows' equations, their say on the slope cut where it contradicts the steps. Heaters' own steps are free of whatever
 * the heaters differ by, and a crowd of single rows that agree on a lie up high has none.
 */
function reconciled(rows: Normal, steps: { cc: number; rc: number }) {
  const information = rows.aa > 0 ? rows.cc - rows.ac ** 2 / rows.aa : 0;
  if (!(information > 0 && steps.cc > 0)) return { normal: rows, against: 0 };
  const slope = (rows.rc - (rows.ac * rows.ra) / rows.aa) / information;
  const apart = slope - steps.rc / steps.cc;
  const against = apart / Math.sqrt(1 / information + 1 / steps.cc);
  const left = information * Math.min(1, STEPS_SURPRISE / against ** 2) ** 2;
  return {
    normal: {
      ...rows,
      cc: rows.ac ** 2 / rows.aa + left,
      rc: (rows.ac * rows.ra) / rows.aa + left * slope,
    },
    against,
  };
}

/** Information of one vote in a cell of rows. */
export function rowWorth({ honest, voice, s }: Joint, k: number, band: number): number {
  return ((honest[k] as number) * (voice[band] as number)) / s ** 2;
}

/** Information of one vote in a cell of steps, to be taken times dx². */
export function stepWorth({ honestStep, within }: Joint, k: number, dx: number): number {
  return (2 * (honestStep[k] as number)) / stepSd(within, dx) ** 2;
}
