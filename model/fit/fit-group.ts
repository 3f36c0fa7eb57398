import { type Cells, levelCells, stepCells } from "./cells.ts";
import { breadOf, clusteredCovariance, type FoldPart, foldParts } from "./folds.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import type { End, GroupFit } from "./group.ts";
import { type Joint, jointFit } from "./joint.ts";
import { kindsOf, noKinds } from "./mixture-of-rows.ts";
import {
  asCovariance,
  inverse,
  type Normal,
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
 * What even the largest crowd's line is off by, for a mixture is never quite right, and an error of the density that
 * nobody states flattens the slope: by b·σ²/var(x), 0.6 % for one of 1 %.
 */
export const LEAST_BIAS = { intercept: 0.002, slope: 0.006 };

/** Rows against steps: up to so many standard errors harmless, beyond a bias of 3 % each; from simulated crowds. */
export const HARMLESS_AGAINST_STEPS = 1.4;
export const BIAS_AGAINST_STEPS = 0.03;

/** A few folds cannot tell how they scatter: the model's own covariance counts beside theirs as that of so many. */
const MODEL_FOLDS = 3;

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
  const bread = breadOf(levels, joint);
  const parts = foldParts(tally, levels, steps, joint);
  const clustered = sum(clusteredCovariance(parts, bread), priorsPart(bread, prior));
  const model = inverse(joint.normal);
  const own = without(joint.normal, priorNormal(prior));
  const { scatter, shares, votes, second_population } = judgeRows(
    levels,
    joint,
    prior,
    trace(model, own),
  );
  const unlike = Math.max(0, 1 - shares.honest - HARMLESS);
  const against = Math.max(0, Math.abs(joint.against_steps) - HARMLESS_AGAINST_STEPS);
  return {
    fit: {
      heat_kW,
      end,
      intercept: PRIOR.intercept[end] + joint.line.a,
      slope: REFERENCE_SLOPE + joint.line.c,
      covariance: asCovariance(blend(model, MODEL_FOLDS, clustered, parts.length)),
      bias: {
        intercept: Math.sqrt(LEAST_BIAS.intercept ** 2 + (BIAS_AGAINST_STEPS * against) ** 2),
        slope: Math.sqrt(LEAST_BIAS.slope ** 2 + (BIAS_PER_SHARE * unlike ** 2) ** 2),
      },
      against_steps: joint.against_steps,
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

/** Covariance that the prior's own doubt brings into the line: B⁻¹·P·B⁻¹, P its information. */
function priorsPart(bread: Symmetric, prior: GroupPrior): Symmetric {
  const { aa, cc } = priorNormal(prior);
  const b = inverse(bread);
  return {
    aa: b.aa * aa * b.aa + b.ac * cc * b.ac,
    ac: b.aa * aa * b.ac + b.ac * cc * b.cc,
    cc: b.ac * aa * b.ac + b.cc * cc * b.cc,
  };
}

function blend(p: Symmetric, m: number, q: Symmetric, n: number): Symmetric {
  const mix = (a: number, b: number) => (m * a + n * b) / (m + n);
  return { aa: mix(p.aa, q.aa), ac: mix(p.ac, q.ac), cc: mix(p.cc, q.cc) };
}

function sum(p: Symmetric, q: Symmetric): Symmetric {
  return { aa: p.aa + q.aa, ac: p.ac + q.ac, cc: p.cc + q.cc };
}

function judgeRows(cells: Cells, joint: Joint, prior: GroupPrior, fitted: number) {
  const { line, shares } = joint;
  const kinds = noKinds();
  const residual = new Float64Array(cells.w.length);
  const genuine = new Float64Array(cells.w.length);
  let [votes, honest] = [0, 0];
  for (let k = 0; k < cells.w.length; k++) {
    const [w, x] = [cells.w[k] as number, cells.x[k] as number];
    residual[k] = (cells.r[k] as number) - line.a - line.c * x;
    kindsOf(residual[k] as number, x, cells.band[k] as number, joint, kinds);
    genuine[k] = kinds.honest + kinds.background;
    votes += w;
    honest += w * kinds.honest;
  }
  const inflate = Math.sqrt(honest / Math.max(0.5, honest - fitted));
  const scatter: Scatter = scatterOf(cells, residual, genuine, shares.background, inflate, prior);
  const other = shares.background;
  const elevation_unit = shares.feet;
  const never_retuned = shares.never_retuned * (1 - elevation_unit - other);
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
