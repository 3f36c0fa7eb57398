import type { Basin } from "./basin.ts";
import { between, ln_coAt } from "./estimate.ts";
import { offScale } from "./needed.ts";
import type { Candidate } from "./next-rate.ts";
import { noise_ppm } from "./noise.ts";
import { expectedAt, type SweepState } from "./state.ts";
import { sameRate } from "./stays.ts";

/** Our own working values, found by simulation (test/study/sweep). */
const SURE_OF_SIDE = { lean: 0.9, rich: 0.85 };
const SETTLED_MOST = 14;
const STAYS_MOST = 28;

/** Which limbs of the bowl were climbed: a reading there, clearly above the lowest or the guard's own. */
export interface Limbs {
  lean: boolean;
  rich: boolean;
}

export function limbsOf(state: SweepState): Limbs {
  const { levels, posterior, rates, sweep, guards } = state;
  const pumps = levels.map(({ pump_Hz }) => pump_Hz);
  const leanest = Math.min(...pumps);
  const richest = Math.max(...pumps);
  const isLast = (rate: number | undefined) =>
    rate !== undefined && pumps.some((p) => sameRate(sweep, p, rate));
  // At a guard that cannot move any more there is no further limb to climb.
  const leanFixed = guards.lean_Hz > leanest - sweep.step_Hz * 0.99;
  return {
    lean:
      between(posterior, leanest, Number.POSITIVE_INFINITY) > SURE_OF_SIDE.lean ||
      (leanFixed && isLast(rates[0])),
    rich: between(posterior, 0, richest) > SURE_OF_SIDE.rich || isLast(rates.at(-1)),
  };
}

/** Whether the sweep can stop: both limbs climbed, and another reading would gain less than the meter's noise. */
export function enough(state: SweepState, basin: Basin, next: Candidate | undefined): boolean {
  const { sweep, settled } = state;
  if (!next || settled >= SETTLED_MOST || state.stays.length >= STAYS_MOST) return true;
  if (offScale(state)) return false;
  const limbs = limbsOf(state);
  if (!limbs.lean || !limbs.rich) return false;
  return gain_ppm(state, basin) < noise_ppm(sweep, basin.lowest_ppm);
}

/** How much lower CO is expected to be if the minimum were known exactly, ppm. */
function gain_ppm(state: SweepState, { sit_Hz }: Basin): number {
  const { posterior, rates, sweep } = state;
  const { draws } = posterior;
  const capped = (ln_ppm: number) => Math.min(sweep.meter.ceiling_ppm, Math.exp(ln_ppm));
  const best = draws.reduce(
    (sum, d) => sum + Math.min(...rates.map((rate) => capped(ln_coAt(d, rate)))),
    0,
  );
  return expectedAt(state, sit_Hz) - best / draws.length;
}
