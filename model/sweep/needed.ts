import { between } from "./estimate.ts";
import type { SweepState } from "./state.ts";
import { sameRate } from "./stays.ts";

/** Surely the minimum is on this side of a rate; beyond it there is nothing to look for. */
const SURELY = 0.97;
/** On the rich side less is enough: what a limb would tell beyond it costs soot. */
const SURELY_RICH = 0.9;
/** One move to the rich side is no longer than this share of the rate (our own working value). */
const RICH_MOVE = 0.12;
/** A stay still settling is left when the minimum is surely this many steps away. */
const FAR_STEPS = 1.5;
const SURE_OF_SIDE = 0.85;
/** Off the scale, leaner than the start by this share before the rich side is tried (our own working value). */
const LEAN_SEARCH = 0.08;

/**
 * Rates worth going to from here: within the guards, no leaner and no richer than needed. A limb that has
 * been climbed is climbed; a meter off its scale at the top tells the side by being led leaner, in small moves.
 */
export function ratesNeeded(state: SweepState, here_Hz: number): number[] {
  const { sweep, rates, posterior, levels } = state;
  const others = rates.filter((rate) => !sameRate(sweep, rate, here_Hz));
  if (offScale(state)) return searching(state, here_Hz, others);
  const pumps = levels.map(({ pump_Hz }) => pump_Hz);
  const onLean = pumps.filter((p) => between(posterior, p, Number.POSITIVE_INFINITY) > SURELY);
  const onRich = pumps.filter((p) => between(posterior, 0, p) > SURELY_RICH);
  const furthest = Math.max(here_Hz, ...pumps) * (1 + RICH_MOVE) + sweep.step_Hz / 2;
  const from = onLean.length > 0 ? Math.min(...onLean) : 0;
  const to = onRich.length > 0 ? Math.max(...onRich) : furthest;
  return others.filter((rate) => rate > from - 1e-6 && rate < to + 1e-6);
}

/** Whether the meter has shown nothing yet but the top of its scale. */
export function offScale({ levels }: SweepState): boolean {
  return levels.length > 0 && levels.every(({ beyond }) => beyond === "ceiling");
}

/**
 * Off the top of the scale the readings do not tell the side. Too rich is the usual case: leaner first, step
 * by step and not far; then richer than anything tried; then what is left of the lean side.
 */
function searching({ sweep, stays }: SweepState, here_Hz: number, others: number[]): number[] {
  // A rate left at once, because CO shot up, is tried as well.
  const tried = stays.map(({ pump_Hz }) => pump_Hz);
  const untried = others.filter((rate) => !tried.some((p) => sameRate(sweep, p, rate)));
  const leaner = untried.filter((rate) => rate < Math.min(here_Hz, ...tried));
  if (leaner.length > 0 && Math.min(...tried) > sweep.start_Hz * (1 - LEAN_SEARCH)) return leaner;
  const top = Math.max(here_Hz, ...tried);
  const reach = top * (1 + RICH_MOVE) + sweep.step_Hz / 2;
  const richer = untried.filter((rate) => rate > top && rate <= reach);
  return richer.length > 0 ? richer.slice(-1) : leaner;
}

/** On which side of a rate the minimum surely lies, and not near. */
export function surelyFar(
  { posterior, sweep }: SweepState,
  here_Hz: number,
): "lean" | "rich" | undefined {
  const far = FAR_STEPS * sweep.step_Hz;
  if (between(posterior, 0, here_Hz - far) > SURE_OF_SIDE) return "lean";
  if (between(posterior, here_Hz + far, Number.POSITIVE_INFINITY) > SURE_OF_SIDE) return "rich";
  return undefined;
}
