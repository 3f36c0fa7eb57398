import type { Cells } from "./cells.ts";
import { REFERENCE_SLOPE } from "./grid.ts";
import { type Joint, rowWorth, stepWorth } from "./joint.ts";
import { type Line, ofSlope, plus, type Symmetric } from "./normal-equations.ts";
import { PRIOR } from "./prior.ts";

/**
 * Standard deviation of ln density that every row has and none states: weather, a thermometer by a warm wall. Our own
 * working value.
 */
export const UNSTATED_DENSITY_SD = 0.01;

/**
 * What the slope has lost is given back once it is more than so many of the slope's standard errors. Before that the
 * belief, which is of what crowds show, holds the slope better than a correction would.
 */
export const CORRECTED_FROM = 0.6;

/** So much of the square of what is not given back counts as the slope's variance: it is a bias, of known sign. From simulated crowds. */
export const LEFT_AS_VARIANCE = 0.5;

/** Share of the slope that is lost at most: a crowd that saw so little of the air tells nothing of its errors. */
const MOST_LOST = 0.05;

/**
 * The line made as much steeper as errors of the densities have flattened it, turned about where the rows are; part of
 * what is not given back is added to its covariance.
 */
export function unflattened(
  levels: Cells,
  steps: Cells,
  joint: Joint,
  covariance: Symmetric,
): { line: Line; covariance: Symmetric } {
  const { line, normal } = joint;
  const lost = (REFERENCE_SLOPE + line.c) * shareLost(levels, steps, joint);
  const back = lost ** 4 / (lost ** 4 + CORRECTED_FROM ** 4 * covariance.cc ** 2);
  const c = Math.min(PRIOR.slope_bounds[1] - REFERENCE_SLOPE, line.c + back * lost);
  const middle = normal.ac / normal.aa;
  const left = LEFT_AS_VARIANCE * (lost - back * lost) ** 2;
  return {
    line: { a: line.a - (c - line.c) * middle, c },
    covariance: plus(covariance, ofSlope(left, middle)),
  };
}

/**
 * Regression dilution (Fuller 1987, § 1.1): the errors' part in what is known of the slope. A step has the errors of
 * two densities.
 */
function shareLost(levels: Cells, steps: Cells, joint: Joint): number {
  let weight = 0;
  for (let k = 0; k < levels.w.length; k++) {
    weight += (levels.w[k] as number) * rowWorth(joint, k, levels.band[k] as number);
  }
  for (let k = 0; k < steps.w.length; k++) {
    weight += 2 * (steps.w[k] as number) * stepWorth(joint, k, steps.x[k] as number);
  }
  const { aa, ac, cc } = joint.normal;
  return Math.min(MOST_LOST, (UNSTATED_DENSITY_SD ** 2 * weight) / (cc - ac ** 2 / aa));
}
