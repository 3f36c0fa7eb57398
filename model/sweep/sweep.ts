import type { CoReading } from "../co-reading.ts";
import { onStep, stepsFrom, stepsUpTo } from "../rounding.ts";
import type { Outcome, SetRate, SweepAnswer } from "./answer.ts";
import { flatOf, vertexOf } from "./bottom.ts";
import { bracketed, riseOn } from "./bracket.ts";
import { isSafe, leanestBurned_Hz, longestMove_Hz, moved, RELIGHTS_MOST } from "./limits.ts";
import { goalOf, moves, STEPS_MOST, stepsOf } from "./search.ts";
import type { SweepReading, SweepSetup } from "./setup.ts";
import { belowFloor, onward, sideOf } from "./sides.ts";
import { type SweepState, stateOf } from "./state.ts";
import { firstLook_s, nextLook_s, STEADY_s, type Stay, sameRate, steady } from "./stays.ts";

/** From relighting until the heater burns as it will (our own working value). */
const WARM_UP_s = 180;
/** A rate at which the flame went out is beside one that is no more than this share richer (our own working value). */
const BESIDE = 1.15;

/**
 * The next step of a guided sweep at one end with the fan fixed: set a rate, wait, or how it ends.
 * Same readings, same answer; a reading more or less only changes the list.
 * @throws RangeError naming what is wrong with the setup or a reading
 */
export function nextStep(setup: SweepSetup, readings: readonly SweepReading[]): SweepAnswer {
  return stepFrom(stateOf(setup, readings));
}

/** The next step from all that is known. */
export function stepFrom(state: SweepState): SweepAnswer {
  const { sweep, stays, flame_outs } = state;
  const stay = stays.at(-1);
  if (!stay) return setTo(state, sweep.present_Hz, "start", firstLook_s(sweep));
  if (stay.flame_out) {
    if (flame_outs > RELIGHTS_MOST) return { kind: "stopped", flame_outs, ...said(state) };
    return setTo(state, relightAt_Hz(state, stay), "flame-out", WARM_UP_s);
  }
  const goal = goalOf(state);
  const isThere = sameRate(stay.pump_Hz, goal.pump_Hz);
  const isOnTheWay = state.rates.length > 0 && !isThere && steady(stay);
  if (!stay.level && !isOnTheWay) {
    const wait_s = nextLook_s(sweep, stay);
    return { kind: "wait", pump_Hz: stay.pump_Hz, wait_s, ...said(state) };
  }
  if (goal.why === "confirm" && (isThere || standsIn(state, stay))) {
    return outcomeAt(state, stay.pump_Hz);
  }
  if (stepsOf(state) >= STEPS_MOST) return outcomeAt(state, lastResort_Hz(state, stay), false);
  const next = towards(state, stay.pump_Hz, goal.pump_Hz);
  const isPassed = !sameRate(next, goal.pump_Hz);
  const why = stay.spike ? "spike" : isPassed ? "on the way" : goal.why;
  return setTo(state, next, why, isPassed ? STEADY_s : firstLook_s(sweep));
}

/** Chosen to stay at before this very reading moved the choice a little: as good, within the meter's noise. */
function standsIn(state: SweepState, { pump_Hz, confirming, level }: Stay): boolean {
  if (!confirming || !level || state.sight !== "shown") return false;
  return flatOf(state).some((rate) => rate.pump_Hz === pump_Hz);
}

/** Out of steps away from where the pump was to stay: the best of what lies within one move. */
function lastResort_Hz(state: SweepState, { pump_Hz }: Stay): number {
  const { rates, levels, limits } = state;
  const near = rates.filter(
    (rate) => moves(state, pump_Hz, rate.pump_Hz) <= 1 && isSafe(limits, rate.pump_Hz),
  );
  const proven = near.filter((rate) => bracketed(levels, rate.pump_Hz));
  const pool = proven.length > 0 ? proven : near;
  return pool.reduce((a, b) => (b.ppm < a.ppm ? b : a), pool[0] ?? { pump_Hz, ppm: 0 }).pump_Hz;
}

/** Back to the leanest rate that burned, or, where none did, a little richer. */
function relightAt_Hz({ sweep, stays }: SweepState, { pump_Hz }: Stay): number {
  return leanestBurned_Hz(sweep, stays) ?? moved(sweep, pump_Hz, longestMove_Hz(sweep), "rich");
}

/** One move towards a rate. */
function towards({ sweep }: SweepState, here_Hz: number, to_Hz: number): number {
  const most = longestMove_Hz(sweep);
  if (Math.abs(to_Hz - here_Hz) <= most + 1e-6) return to_Hz;
  return moved(sweep, here_Hz, most, to_Hz < here_Hz ? "lean" : "rich");
}

function setTo(state: SweepState, pump_Hz: number, why: SetRate["why"], wait_s: number): SetRate {
  const { step, ...rest } = said(state);
  return { kind: "set", pump_Hz, wait_s, why, ...rest, step: step + (why === "flame-out" ? 0 : 1) };
}

function said(state: SweepState) {
  return {
    step: stepsOf(state),
    steps_most: STEPS_MOST,
    lean: sideOf(state, "lean"),
    rich: sideOf(state, "rich"),
    limits_Hz: reach(state),
    settled: state.levels.length,
  };
}

/** The leanest and the richest rate that may be asked for as things stand, or that was read. */
function reach(state: SweepState): { lean: number; rich: number } {
  const { sweep, rates, limits } = state;
  const read = rates.map(({ pump_Hz }) => pump_Hz);
  const next = (["lean", "rich"] as const).flatMap((way) => onward(state, way) ?? []);
  const lean = onStep(stepsFrom(limits.lean_Hz, sweep.step_Hz), sweep.step_Hz);
  const rich = onStep(stepsUpTo(limits.rich_Hz, sweep.step_Hz), sweep.step_Hz);
  return {
    lean: Math.max(limits.burning_Hz, Math.min(lean, ...next, ...read)),
    rich: Math.max(rich, ...next, ...read),
  };
}

/** How the sweep ends with the pump at this rate. */
function outcomeAt(state: SweepState, pump_Hz: number, isThere = true): Outcome {
  const { levels, rates, sight } = state;
  const left = {
    pump_Hz,
    ...shownAt(state, pump_Hz),
    ...besideFlameOut(state, pump_Hz),
    ...said(state),
  };
  if (sight === "above scale") return { kind: "above scale", ...left };
  if (sight === "below floor") return { kind: "below floor", ...left, below_Hz: belowFloor(rates) };
  const [lower, upper] = [riseOn(levels, pump_Hz, "lean"), riseOn(levels, pump_Hz, "rich")];
  // A minimum counts only where it was read last: what was read before may have drifted.
  if (!isThere || !bracketed(levels, pump_Hz) || lower === undefined || upper === undefined) {
    const tried = rates.map((rate) => rate.pump_Hz);
    const read_Hz = { lower: Math.min(...tried), upper: Math.max(...tried) };
    return { kind: "not bracketed", ...left, read_Hz };
  }
  const flat = flatOf(state).map((rate) => rate.pump_Hz);
  const minimum_Hz = Math.min(upper, Math.max(lower, vertexOf(state)?.pump_Hz ?? pump_Hz));
  return {
    kind: "found",
    ...left,
    minimum_Hz,
    between_Hz: { lower, upper },
    flat_Hz: { lower: Math.min(pump_Hz, ...flat), upper: Math.max(pump_Hz, ...flat) },
  };
}

/** What the meter showed at a rate last. */
function shownAt({ stays }: SweepState, pump_Hz: number): CoReading {
  const last = stays.findLast((stay) => stay.pump_Hz === pump_Hz && stay.level)?.looks.at(-1);
  if (!last) return {};
  if (last.beyond === "floor") return { co_below_ppm: last.ppm };
  return last.beyond === "ceiling" ? { co_above_ppm: last.ppm } : { co_ppm: last.ppm };
}

function besideFlameOut({ limits: { out_Hz } }: SweepState, pump_Hz: number) {
  return out_Hz > 0 && pump_Hz <= out_Hz * BESIDE ? { flame_out_Hz: out_Hz } : {};
}
