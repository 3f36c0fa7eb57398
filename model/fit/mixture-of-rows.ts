import { exp } from "../ln-exp.ts";
import { FEET_AS_METRES } from "./feet-for-metres.ts";
import { R_MOST, REFERENCE_SLOPE, STEP_MOST } from "./grid.ts";
import type { Line } from "./normal-equations.ts";

/** How large a part of the votes each kind of row is taken to be. */
export interface Shares {
  /** Elevation in feet stated as metres: of those that are not anything at all, in a band as often as it makes them. */
  feet: number;
  /** Found once, carried everywhere unchanged: as a part of those that are none of the others. */
  never_retuned: number;
  /** Anything at all, spread evenly. */
  background: number;
}

/** What is believed of the shares before the rows speak, and how many votes that belief is worth. */
export const SHARE_PRIOR = {
  feet: { share: 0.03, votes: 20 },
  never_retuned: { share: 0.05, votes: 3 },
  background: { share: 0.03, votes: 10 },
  step_background: { share: 0.06, votes: 6 },
} as const;

export const USUAL_SHARES: Shares = {
  feet: SHARE_PRIOR.feet.share,
  never_retuned: SHARE_PRIOR.never_retuned.share,
  background: SHARE_PRIOR.background.share,
};

/** Feet for metres are taken to be no more than this part of the rows of all bands, or of one that few have been at. */
export const MOST_FEET = 0.5;

const ROOT_2PI = Math.sqrt(2 * Math.PI);
const FLAT = ROOT_2PI / (2 * R_MOST);
const FLAT_STEP = ROOT_2PI / (2 * STEP_MOST);

/** Probabilities that a row is of each kind. */
export interface Kinds {
  honest: number;
  feet: number;
  never_retuned: number;
  background: number;
}

/**
 * Kinds of a row in a band, from its residual q about the line, its x and the spread s. A slip of the elevation's unit
 * moves the row along the line by a known way in x; a tune carried unchanged stays at the line's height at x = 0.
 * @param feet_by_band how many times as frequent feet for metres are in each band as in all
 * @param into filled and returned, so that a loop over cells makes no objects
 */
export function kindsOf(
  q: number,
  x: number,
  band: number,
  { line, s, shares, feet_by_band }: RowBelief,
  into: Kinds,
): Kinds {
  const slope = REFERENCE_SLOPE + line.c;
  const { never_retuned, background } = shares;
  const feet = (1 - background) * feetShare(shares, feet_by_band[band] as number);
  const genuine = 1 - feet - background;
  const per_s = 1 / s;
  // Everything times s: a factor that the probabilities lose again.
  const honest = genuine * (1 - never_retuned) * bell(q * per_s);
  const asFeet = feet * bell((q - slope * (FEET_AS_METRES[band] as number)) * per_s);
  const carried = genuine * never_retuned * bell((q + slope * x) * per_s);
  const anything = background * FLAT * s;
  const total = honest + asFeet + carried + anything;
  into.honest = honest / total;
  into.feet = asFeet / total;
  into.never_retuned = carried / total;
  into.background = anything / total;
  return into;
}

interface RowBelief {
  line: Line;
  s: number;
  shares: Shares;
  feet_by_band: Float64Array;
}

/** The part that feet for metres are of a band's votes but those that are anything, so many times as frequent there. */
export function feetShare({ feet }: Shares, times: number): number {
  return Math.min(MOST_FEET, feet * times);
}

/** Kinds of a step: its heater re-tuned, left as it was, or one of its rows anything at all. */
export function stepKindsOf(
  dx: number,
  dr: number,
  { line, sd, never_retuned, background }: StepBelief,
  into: Kinds,
): Kinds {
  const per_sd = 1 / sd;
  const honest = (1 - background) * (1 - never_retuned) * bell((dr - line.c * dx) * per_sd);
  const carried = (1 - background) * never_retuned * bell((dr + REFERENCE_SLOPE * dx) * per_sd);
  const anything = background * FLAT_STEP * sd;
  const total = honest + carried + anything;
  into.honest = honest / total;
  into.never_retuned = carried / total;
  into.background = anything / total;
  return into;
}

interface StepBelief {
  line: Line;
  sd: number;
  never_retuned: number;
  background: number;
}

/** Beyond so many spreads nothing is left of the bell. */
const BELL_ENDS = 8;
/** Its values, 1/256 of a spread apart: between them a straight line errs by two millionths, and takes half the time. */
const PER_SPREAD = 256;
const BELL = Float64Array.from({ length: BELL_ENDS * PER_SPREAD + 2 }, (_, i) =>
  exp(-0.5 * (i / PER_SPREAD) ** 2),
);

function bell(z: number): number {
  const at = Math.abs(z) * PER_SPREAD;
  if (!(at < BELL_ENDS * PER_SPREAD)) return 0;
  const i = Math.floor(at);
  const here = BELL[i] as number;
  return here + (at - i) * ((BELL[i + 1] as number) - here);
}

export function noKinds(): Kinds {
  return { honest: 0, feet: 0, never_retuned: 0, background: 0 };
}

/** A share after so many votes of the kind among so many in all. */
export function share(prior: { share: number; votes: number }, of: number, among: number): number {
  return (prior.share * prior.votes + of) / (prior.votes + among);
}
