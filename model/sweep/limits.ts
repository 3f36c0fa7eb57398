import type { Band } from "../fit/bands.ts";
import { studentFactor } from "../numerics/student.ts";
import { onStep, stepsFrom, stepsNear, stepsUpTo, withoutDust } from "../rounding.ts";
import type { Way } from "./bracket.ts";
import type { Sweep } from "./setup.ts";
import { type Stay, steady } from "./stays.ts";

/** No rate outside of these is asked for. */
export interface Limits {
  lean_Hz: number;
  rich_Hz: number;
  /** The richest rate at which the flame went out; 0 where it never did. */
  out_Hz: number;
  /** Nothing leaner than this, because of it. */
  burning_Hz: number;
}

/** After so many flame-outs with their attempts to relight it is the manual's turn. */
export const RELIGHTS_MOST = 2;
/** One move of the pump at most, Hz: the coarse step of common practice at each end. */
const MOVE_MOST_Hz = { low: 0.2, high: 0.4 };
/** Near the bottom of the bowl half of it. */
const HALF = 0.5;
/** What is finer than this nobody needs, Hz (common practice). */
const FINE_Hz = 0.1;
/** A heater that burns is seldom best at less than half or more than twice its rate (our own working value). */
const FROM_PRESENT = 2;
/** Without bands, the spread in ln of where the minimum may lie (our own working value). */
const LN_SD_UNKNOWN = 0.15;
const WIDEST = 0.99;
/** Nothing nearer than this to a rate at which the flame went out, of that rate (our own working value), or a step. */
const FLAME_OUT_MARGIN = 0.04;

/** The longest move of the pump, Hz; a coarser controller moves by its own step. */
export function longestMove_Hz({ end, step_Hz }: Sweep): number {
  return Math.max(step_Hz, MOVE_MOST_Hz[end]);
}

/** The move near the bottom of the bowl, Hz. */
export function shortMove_Hz({ end, step_Hz }: Sweep): number {
  return Math.max(step_Hz, HALF * MOVE_MOST_Hz[end]);
}

export function finest_Hz({ step_Hz }: Sweep): number {
  return Math.max(step_Hz, FINE_Hz);
}

/**
 * Where to look: the 99 % new-heater band (as given, or the bands drawn out by the normal distribution), within half to
 * twice the present rate, and the present rate itself, since the heater burns there.
 */
export function windowOf(sweep: Sweep): { lower: number; upper: number } {
  return aroundPresent(sweep, widestOf(sweep));
}

/** Where to look while the meter has shown no figure yet: no farther than most heaters are, which is the narrowest band. */
export function blindWindowOf(sweep: Sweep): { lower: number; upper: number } {
  const [band] = [...sweep.bands_Hz].sort((a, b) => a.level - b.level);
  return aroundPresent(sweep, band ?? widestOf(sweep));
}

function aroundPresent({ present_Hz }: Sweep, { lower, upper }: Omit<Band, "level">) {
  return {
    lower: Math.min(present_Hz, Math.max(lower, present_Hz / FROM_PRESENT)),
    upper: Math.max(present_Hz, Math.min(upper, present_Hz * FROM_PRESENT)),
  };
}

function widestOf({ suggested_Hz, bands_Hz }: Sweep): Omit<Band, "level"> {
  const given = bands_Hz.find(({ level }) => level >= WIDEST);
  if (given) return given;
  const factor = (level: number) => studentFactor(level, Number.POSITIVE_INFINITY);
  const count = bands_Hz.length;
  const sum = (of: (band: Band) => number) => bands_Hz.reduce((s, band) => s + of(band), 0);
  const centre =
    count === 0
      ? Math.log(suggested_Hz)
      : sum(({ lower, upper }) => Math.log(lower * upper) / 2) / count;
  const sd =
    count === 0
      ? LN_SD_UNKNOWN
      : sum(({ level, lower, upper }) => Math.log(upper / lower) / 2 / factor(level)) / count;
  const reach = sd * factor(WIDEST);
  return { lower: Math.exp(centre - reach), upper: Math.exp(centre + reach) };
}

/** The limits after these stays, within a window. */
export function limitsOf(
  sweep: Sweep,
  stays: readonly Stay[],
  { lower, upper }: { lower: number; upper: number },
): Limits {
  const out_Hz = outAt_Hz(sweep, stays);
  const margin_Hz = Math.max(sweep.step_Hz, FLAME_OUT_MARGIN * out_Hz);
  const burning_Hz = out_Hz && out_Hz + Math.min(longestMove_Hz(sweep), margin_Hz);
  return {
    lean_Hz: Math.max(lower, burning_Hz),
    rich_Hz: Math.max(upper, burning_Hz),
    out_Hz,
    burning_Hz,
  };
}

function outAt_Hz({ flame_outs_Hz }: Sweep, stays: readonly Stay[]): number {
  const here = stays.filter(({ flame_out }) => flame_out).map(({ pump_Hz }) => pump_Hz);
  return Math.max(0, ...flame_outs_Hz, ...here);
}

/** Whether a rate is far enough from any at which the flame went out. */
export function isSafe({ burning_Hz }: Limits, pump_Hz: number): boolean {
  return pump_Hz > burning_Hz - 1e-6;
}

/** The leanest rate at which the flame was seen to burn on, above any at which it went out. */
export function leanestBurned_Hz(sweep: Sweep, stays: readonly Stay[]): number | undefined {
  const out_Hz = outAt_Hz(sweep, stays);
  const burned = stays.filter(steady).map(({ pump_Hz }) => pump_Hz);
  const safe = burned.filter((rate) => rate > out_Hz);
  return safe.length > 0 ? Math.min(...safe) : undefined;
}

/** The rate that a controller can be set to, so far from a rate on that side and no farther. */
export function moved(sweep: Sweep, from_Hz: number, by_Hz: number, way: Way): number {
  const { step_Hz } = sweep;
  const sign = way === "lean" ? -1 : 1;
  const wanted = from_Hz + sign * by_Hz;
  const to = onStep((way === "lean" ? stepsFrom : stepsUpTo)(wanted, step_Hz), step_Hz);
  // From a rate between two steps the next one may be as good as here.
  const further = withoutDust(to + sign * step_Hz);
  const isNoMove = Math.abs(to - from_Hz) < step_Hz / 2;
  const isShort = Math.abs(further - from_Hz) <= longestMove_Hz(sweep) + 1e-6;
  return isNoMove && isShort ? further : to;
}

/** The nearest rate that a controller can be set to within the limits. */
export function settable({ step_Hz }: Sweep, pump_Hz: number, limits: Limits): number {
  const first = stepsFrom(limits.lean_Hz, step_Hz);
  const last = Math.max(first, stepsUpTo(limits.rich_Hz, step_Hz));
  return onStep(Math.min(last, Math.max(first, stepsNear(pump_Hz, step_Hz))), step_Hz);
}
