import type { Minimum, NoMinimum, SetRate, SweepAnswer } from "./answer.ts";
import { type Basin, basinOf } from "./basin.ts";
import { enough, limbsOf } from "./enough.ts";
import { between } from "./estimate.ts";
import { offScale, ratesNeeded } from "./needed.ts";
import { candidates } from "./next-rate.ts";
import * as say from "./sentences.ts";
import { settlingTime_s } from "./settling.ts";
import type { SweepReading, SweepSetup } from "./setup.ts";
import { expectedAt, type SweepState, stateOf } from "./state.ts";
import { STEADY_s, steady } from "./stays.ts";

/** A stay still settling is left when the minimum is surely this many steps away. */
const FAR_STEPS = 1.5;
const SURELY = 0.85;
/** After this many flame-outs it is the manual's turn. */
const FLAME_OUTS_MOST = 3;
const WARM_UP_s = 180;
/** So many rates off the meter's scale, and no other, are enough to say that it cannot see. */
const UNSEEN_ENOUGH = 3;

/**
 * The next step of a guided sweep at one end with the fan fixed: set a rate, wait, or the minimum.
 * Same readings, same answer; a reading more or less only changes the list.
 * @throws RangeError naming what is wrong with the setup or a reading
 */
export function nextStep(setup: SweepSetup, readings: readonly SweepReading[]): SweepAnswer {
  const state = stateOf(setup, readings);
  const { sweep, stays, last } = state;
  const stay = stays.at(-1);
  if (!stay || !last) return setTo(state, nearestRate(state, sweep.start_Hz), "start");
  const flame_outs = stays.filter(({ flame_out }) => flame_out).length;
  if (flame_outs >= FLAME_OUTS_MOST) {
    return { kind: "stop", flame_outs, ...said(state, say.sayingStop(flame_outs)) };
  }
  const here = stay.pump_Hz;
  if (stay.flame_out) return setTo(state, nearestRate(state, leanestSteady(state)), "flame-out");
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

function leanestSteady({ stays, guards }: SweepState): number {
  const burned = stays.filter(steady).map(({ pump_Hz }) => pump_Hz);
  return burned.length > 0 ? Math.min(...burned) : guards.rich_Hz;
}

function nearestRate({ rates }: SweepState, pump_Hz: number): number {
  return rates.reduce((a, b) => (Math.abs(b - pump_Hz) < Math.abs(a - pump_Hz) ? b : a));
}

/** On which side of a rate the minimum surely lies, and not near. */
function surelyFar({ posterior, sweep }: SweepState, here_Hz: number): "lean" | "rich" | undefined {
  const far = FAR_STEPS * sweep.step_Hz;
  if (between(posterior, 0, here_Hz - far) > SURELY) return "lean";
  if (between(posterior, here_Hz + far, Number.POSITIVE_INFINITY) > SURELY) return "rich";
  return undefined;
}

function unseen({ levels, settled }: SweepState, end: "floor" | "ceiling"): boolean {
  return settled >= UNSEEN_ENOUGH && levels.every(({ beyond }) => beyond === end);
}

function setTo(state: SweepState, pump_Hz: number, why: SetRate["why"]): SetRate {
  const { sweep, stays, lag } = state;
  const shown = stays.at(-1)?.looks.at(-1)?.ppm ?? 0;
  const settle = settlingTime_s(sweep, lag, shown, expectedAt(state, pump_Hz));
  // On the way to a minimum farther off it is enough to see the flame burn on.
  const here = stays.at(-1)?.pump_Hz ?? pump_Hz;
  const through = surelyFar(state, pump_Hz) === (pump_Hz < here ? "lean" : "rich");
  const wait_s =
    why === "flame-out"
      ? WARM_UP_s
      : through && why !== "start"
        ? STEADY_s
        : Math.max(STEADY_s, settle);
  return { kind: "set", pump_Hz, wait_s, why, ...said(state, say.sayingSet(why, pump_Hz, wait_s)) };
}

function minimum(state: SweepState, basin: Basin): Minimum {
  const found = {
    kind: "minimum" as const,
    basin_Hz: { lower: basin.lower_Hz, upper: basin.upper_Hz },
    sit_Hz: basin.sit_Hz,
    sit_ppm: basin.sit_ppm,
    limbs: limbsOf(state),
    below_floor: state.levels.every(
      ({ beyond, ppm }) => beyond === "floor" || ppm > 1.5 * basin.lowest_ppm,
    ),
    ...said(state, ""),
  };
  return { ...found, sentence: say.sayingMinimum(found, state.sweep.end) };
}

function noMinimum(state: SweepState, why: NoMinimum["why"], basin: Basin): NoMinimum {
  const below = why === "below floor";
  const sit_Hz = below ? basin.sit_Hz : nearestRate(state, state.sweep.start_Hz);
  const sentence = (below ? say.sayingBelowFloor : say.sayingAboveCeiling)(state, sit_Hz);
  return { kind: "no minimum", why, sit_Hz, ...said(state, sentence) };
}

function said({ guards, estimate, lag, settled }: SweepState, sentence: string) {
  const guards_Hz = { lean: guards.lean_Hz, rich: guards.rich_Hz };
  return { sentence, guards_Hz, ...estimate, lag_s: lag.lag_s, settled };
}
