import { type Cells, levelCells, stepCells } from "./cells.ts";
import { unflattened } from "./flattening.ts";
import {
  breadOf,
  expectedScatter,
  type FoldPart,
  foldParts,
  foldScatter,
  sandwich,
} from "./folds.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import type { End, GroupFit } from "./group.ts";
import { type Joint, jointFit } from "./joint.ts";
import { kindsOf, noKinds } from "./mixture-of-rows.ts";
import {
  asCovariance,
  inverse,
  type Normal,
  ofSlope,
  plus,
  priorNormal,
  type Symmetric,
} from "./normal-equations.ts";
import { type GroupPrior, PRIOR } from "./prior.ts";
import { secondPopulation } from "./second-population.ts";
import { type Scatter, scatterOf } from "./spread.ts";
import { startLine } from "./start-line.ts";
import type { Tally } from "./tally.ts";

/** Share of rows that are not honest tunes, up to which they leave no bias worth a band … */
export const HARMLESS = 0.06;
/** … and the standard deviation of the slope for each share beyond; from simulated crowds. */
export const BIAS_PER_SHARE = 0.45;

/**
 * Rows taken for something else than honest tunes pull the level by up to this, half of it at the second share: a
 * mixture is never quite right. From simulated crowds.
 */
export const LEVEL_BIAS = 0.003;
export const LEVEL_BIAS_HALF_AT = 0.03;

/** Rows against steps: up to so many standard errors harmless, beyond a bias of 3 % each; from simulated crowds. */
export const HARMLESS_AGAINST_STEPS = 1.4;
export const BIAS_AGAINST_STEPS = 0.03;

/** A few folds cannot tell how they scatter: what the model expects counts beside them as so many. */
export const MODEL_FOLDS = 8;

/**
 * Folds know unequally much, a few of them most of what is known of the slope: so many tell as much about the scatter as
 * one of equal folds would. From simulated crowds.
 */
export const FOLDS_AS_ONE = 1.6;

/**
 * Spreads, shares and voices answer a line that moves, and the bread has nothing of that: pushed, simulated crowds' slopes
 * go a little farther than it says. So much larger is the slope's variance.
 */
export const UNTOLD_SLOPE = 0.04;

/** What the rows of a class and end make of their prior, with all that later steps ask of it. */
export interface FittedGroup {
  fit: Omit<GroupFit, Counted>;
  joint: Joint;
  levels: Cells;
  steps: Cells;
  parts: FoldPart[];
  /** What the rows alone know of (a, c), the prior's part taken out. */
  own: Normal;
}

type Counted = "contributors" | "tunes" | "rejected" | "discounts" | "held" | "density_range";

/** Fits one heat class and end from its tally, under a prior. */
export function fitGroup(heat_kW: number, end: End, tally: Tally, prior: GroupPrior): FittedGroup {
  const levels = levelCells(tally);
  const steps = stepCells(tally);
  const joint = jointFit(levels, steps, prior, startLine(levels, steps, prior));
  const bread = breadOf(levels, steps, joint);
  const parts = foldParts(tally, levels, steps, joint);
  const own = without(joint.normal, priorNormal(prior));
  const { scatter, shares, votes, second_population } = judgeRows(
    levels,
    joint,
    prior,
    trace(inverse(joint.normal), own),
  );
  const scattered = blend(
    expectedScatter(levels, steps, joint, parts.length),
    MODEL_FOLDS,
    foldScatter(parts, bread),
    parts.length,
  );
  const outside = inverse(bread);
  const middle = joint.normal.ac / joint.normal.aa;
  const told = sandwich(outside, plus(scattered, priorNormal(prior)));
  const { line, covariance } = unflattened(
    levels,
    steps,
    joint,
    plus(told, ofSlope(UNTOLD_SLOPE * told.cc, middle)),
  );
  const unlike = 1 - shares.honest;
  const against = Math.max(0, Math.abs(joint.against_steps) - HARMLESS_AGAINST_STEPS);
  return {
    fit: {
      heat_kW,
      end,
      intercept: PRIOR.intercept[end] + line.a,
      slope: REFERENCE_SLOPE + line.c,
      covariance: asCovariance(covariance),
      bias: {
        intercept: Math.sqrt(
          ((LEVEL_BIAS * unlike) / (unlike + LEVEL_BIAS_HALF_AT)) ** 2 +
            (BIAS_AGAINST_STEPS * against) ** 2,
        ),
        slope: BIAS_PER_SHARE * Math.max(0, unlike - HARMLESS) ** 2,
      },
      against_steps: joint.against_steps,
      line_df: lineFreedom(scatter.spread_df, parts.length),
      spread: scatter.spread,
      spread_per_x: scatter.spread_per_x,
      spread_df: scatter.spread_df,
      tail_df: scatter.tail_df,
      votes,
      shares,
      second_population,
    },
    joint,
    levels,
    steps,
    parts,
    own,
  };
}

/** Degrees of freedom of the mix of model and folds (Satterthwaite 1946). */
function lineFreedom(spread_df: number, folds: number): number {
  return (MODEL_FOLDS + folds) ** 2 / (MODEL_FOLDS ** 2 / spread_df + FOLDS_AS_ONE * folds);
}

function without(all: Normal, part: Normal): Normal {
  return {
    aa: all.aa - part.aa,
    ac: all.ac - part.ac,
    cc: all.cc - part.cc,
    ra: all.ra - part.ra,
    rc: all.rc - part.rc,
  };
}

/** Trace of covariance × the rows' information: how many coefficients the rows, not the prior, have paid for. */
function trace(covariance: Symmetric, own: Symmetric): number {
  return covariance.aa * own.aa + 2 * covariance.ac * own.ac + covariance.cc * own.cc;
}

function blend(p: Symmetric, m: number, q: Symmetric, n: number): Symmetric {
  const mix = (a: number, b: number) => (m * a + n * b) / (m + n);
  return { aa: mix(p.aa, q.aa), ac: mix(p.ac, q.ac), cc: mix(p.cc, q.cc) };
}

function judgeRows(cells: Cells, joint: Joint, prior: GroupPrior, fitted: number) {
  const { line, shares } = joint;
  const kinds = noKinds();
  const residual = new Float64Array(cells.w.length);
  const genuine = new Float64Array(cells.w.length);
  let votes = 0;
  const of = noKinds();
  for (let k = 0; k < cells.w.length; k++) {
    const w = cells.w[k] as number;
    const x = cells.x[k] as number;
    residual[k] = (cells.r[k] as number) - line.a - line.c * x;
    kindsOf(residual[k] as number, x, cells.band[k] as number, joint, kinds);
    genuine[k] = kinds.honest + kinds.background;
    votes += w;
    of.honest += w * kinds.honest;
    of.feet += w * kinds.feet;
    of.never_retuned += w * kinds.never_retuned;
    of.background += w * kinds.background;
  }
  const inflate = Math.sqrt(of.honest / Math.max(0.5, of.honest - fitted));
  const scatter: Scatter = scatterOf(cells, residual, genuine, shares.background, inflate, prior);
  const elevation_unit = of.feet / votes;
  const never_retuned = of.never_retuned / votes;
  const other = of.background / votes;
  return {
    scatter,
    votes,
    second_population: secondPopulation(cells, residual, scatter, shares.background),
    shares: {
      honest: 1 - elevation_unit - never_retuned - other,
      elevation_unit,
      never_retuned,
      other,
    },
  };
}
