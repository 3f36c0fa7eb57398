import { beliefOf, widestBand } from "./guards.ts";
import { levelsOver } from "./levels.ts";
import type { Level } from "./settling.ts";
import type { Sweep } from "./setup.ts";
import { pairsOf, weighed } from "./weighing.ts";

/** One bowl that explains the readings, drawn in proportion to how well. */
export interface Draw {
  minimum_Hz: number;
  ln_lowest: number;
  bowl: number;
}

/** What the readings and the start tune's bands say of the minimum. */
export interface Posterior {
  /** Places on an even grid of pump rates, and the probability of each. */
  places_Hz: Float64Array;
  probability: Float64Array;
  draws: Draw[];
}

/** Finer than a quarter of a step nobody needs; so many places at most. */
const PLACES_MOST = 50;
const DRAWS = 500;
/** The band is drawn out a little, so that a minimum at its edge is seen as one. */
const BEYOND_BAND = 0.04;
/** Levels in the first look over all of them, and in the second. */
const COARSE = 12;
const FINE = 18;

/** Posterior over place × bowl × level, and a fixed number of evenly spaced draws from it. */
export function posteriorOf(sweep: Sweep, levels: readonly Level[]): Posterior {
  const places_Hz = placesOf(sweep);
  const prior = placePrior(sweep, places_Hz);
  const all = pairsOf(places_Hz, prior, levels);
  // Twice: over all levels coarsely, then finely where there is anything.
  const coarse = weighed(all, levels, levelsOver(levels, COARSE));
  const fine = weighed(coarse.alive(), levels, coarse.around(FINE));
  return { places_Hz, ...fine.drawn(places_Hz, DRAWS) };
}

function placesOf(sweep: Sweep): Float64Array {
  const { lower, upper } = widestBand(sweep);
  const from = lower * (1 - BEYOND_BAND);
  const to = upper * (1 + BEYOND_BAND);
  const count = Math.min(PLACES_MOST, Math.max(8, Math.ceil((4 * (to - from)) / sweep.step_Hz)));
  return Float64Array.from({ length: count }, (_, i) => from + ((i + 0.5) * (to - from)) / count);
}

/** Student's t with 4 degrees of freedom: a heater far out in its band is not a surprise. */
function placePrior(sweep: Sweep, places_Hz: Float64Array): Float64Array {
  const { ln_centre, ln_sd } = beliefOf(sweep);
  return places_Hz.map((m) => -2.5 * Math.log(1 + ((Math.log(m) - ln_centre) / ln_sd) ** 2 / 4));
}
