import type { SweepAnswer } from "./answer.ts";
import { minimum, noMinimum, said, setTo } from "./answering.ts";
import { basinOf } from "./basin.ts";
import { enough } from "./enough.ts";
import { nearestRate } from "./guards.ts";
import { offScale, ratesNeeded, surelyFar } from "./needed.ts";
import { candidates } from "./next-rate.ts";
import * as say from "./sentences.ts";
import type { SweepReading, SweepSetup } from "./setup.ts";
import { type SweepState, stateOf } from "./state.ts";
import { steady } from "./stays.ts";

/** After this many flame-outs it is the manual's turn. */
const FLAME_OUTS_MOST = 3;
const RELIGHT_RICHER = 1.1;
/** So many rates off the meter's scale, and no other, are enough to say that it cannot see. */
const UNSEEN_ENOUGH = 3;

/**
 * The next step of a guided sweep at one end with the fan fixed: set a rate, wait, or the minimum.
 * Same readings, same answer; a reading more or less only changes the list.
 * @throws RangeError naming what is wrong with the setup or a reading
 */
export function nextStep(setup: SweepSetup, readings: readonly SweepReading[]): SweepAnswer {
  return stepFrom(stateOf(setup, readings));
}

/** The next step from all that is known. */
export function stepFrom(state: SweepState): SweepAnswer {
  const { sweep, stays, last } = state;
  const stay = stays.at(-1);
  if (!stay || !last) return setTo(state, nearestRate(state.rates, sweep.start_Hz), "start");
  const flame_outs = stays.filter(({ flame_out }) => flame_out).length;
  if (flame_outs >= FLAME_OUTS_MOST) {
    return { kind: "stop", flame_outs, ...said(state, say.sayingStop(flame_outs)) };
  }
  const here = stay.pump_Hz;
  if (stay.flame_out)
    return setTo(state, nearestRate(state.rates, relightAt(state, here)), "flame-out");
  const moving = onwardFrom(state, here);
  if (!moving) {
    const { wait_s } = last;
    return { kind: "wait", pump_Hz: here, wait_s, ...said(state, say.sayingWait(wait_s)) };
  }
  const basin = basinOf(sweep, state.posterior, seats(state));
  const [best] = candidates(sweep, state.posterior, moving);
  if (!state.spike && unseen(state, "floor")) return noMinimum(state, "below floor", basin);
  if (!best || (!state.spike && enough(state, basin, best))) {
    return offScale(state) ? noMinimum(state, "above ceiling", basin) : minimum(state, basin);
  }
  const why = state.spike ? "spike" : best.pump_Hz < here ? "leaner" : "richer";
  return setTo(state, best.pump_Hz, why);
}

/** Rates to go on to; none while waiting is better. A stay is left before it has settled only towards the minimum. */
function onwardFrom(state: SweepState, here_Hz: number): number[] | undefined {
  const needed = ratesNeeded(state, here_Hz);
  if (state.spike || state.last?.settled) return needed;
  const stay = state.stays.at(-1);
  const way = stay && steady(stay) ? surelyFar(state, here_Hz) : undefined;
  if (!way) return undefined;
  const onward = needed.filter((rate) => rate < here_Hz === (way === "lean"));
  return onward.length > 0 ? onward : undefined;
}

/** Rates to sit at: only where the flame was seen to burn, or richer. */
function seats({ stays, rates }: SweepState): number[] {
  const burned = Math.min(...stays.filter(steady).map(({ pump_Hz }) => pump_Hz));
  const seen = rates.filter((rate) => rate > burned - 1e-6);
  return seen.length > 0 ? seen : rates.slice(-1);
}

/** Where to relight: the leanest rate that burned steadily, or clearly richer than the one that did not. */
function relightAt({ stays }: SweepState, out_Hz: number): number {
  const burned = stays.filter(steady).map(({ pump_Hz }) => pump_Hz);
  return burned.length > 0 ? Math.min(...burned) : RELIGHT_RICHER * out_Hz;
}

function unseen({ levels, settled }: SweepState, end: "floor" | "ceiling"): boolean {
  return settled >= UNSEEN_ENOUGH && levels.every(({ beyond }) => beyond === end);
}
