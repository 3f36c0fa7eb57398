import type { Side } from "./answer.ts";
import { isOn, riseOn, type Way } from "./bracket.ts";
import {
  isSafe,
  leanestBurned_Hz,
  longestMove_Hz,
  moved,
  RELIGHTS_MOST,
  settable,
  shortMove_Hz,
} from "./limits.ts";
import type { SweepState } from "./state.ts";

/**
 * While the suggestion is a long move away and CO is above this, ppm, the bottom is not yet near: common practice has it
 * usually below 30, and a long move changes CO by about two (high end) to four times (low end), our own working values.
 */
const FAR_ABOVE_ppm = { low: 120, high: 60 };
/**
 * How far beyond the window, of its end (our own working value). Leaner only while CO still falls, since the flame may go out;
 * richer until CO rises, since all it costs is soot, and what shoots up is left at once.
 */
const BEYOND_WINDOW = 1.25;

/** How far a side has been looked at, as seen from the best rate or the range below the floor. */
export function sideOf(state: SweepState, way: Way): Side {
  if (roseOn(state, way)) return "rose";
  if (state.rates.length === 0) return "open";
  if (onward(state, way) !== undefined) return "open";
  return way === "lean" && state.limits.out_Hz > 0 ? "flame-out" : "limit";
}

function roseOn({ best, levels, rates, sight }: SweepState, way: Way): boolean {
  if (!best) return false;
  if (sight !== "below floor") return riseOn(levels, best.pump_Hz, way) !== undefined;
  const range = belowFloor(rates);
  const end = way === "lean" ? range.lower : range.upper;
  return rates.some(({ pump_Hz }) => isOn(way, pump_Hz, end));
}

/** From the leanest to the richest rate at which the meter showed nothing. */
export function belowFloor(rates: SweepState["rates"]): { lower: number; upper: number } {
  const below = rates.filter(({ beyond }) => beyond === "floor").map(({ pump_Hz }) => pump_Hz);
  return { lower: Math.min(...below), upper: Math.max(...below) };
}

/** The next rate farther out on a side than all that was read; undefined where nothing more may be asked for. */
export function onward(state: SweepState, way: Way): number | undefined {
  const { sweep, rates, limits, sight, relights_used } = state;
  const edge = way === "lean" ? rates[0] : rates.at(-1);
  if (!edge) return undefined;
  const from = edge.pump_Hz;
  if (way === "lean" && relights_used >= RELIGHTS_MOST && !mayGoLeaner(state)) return undefined;
  const inside = settable(sweep, moved(sweep, from, moveFrom(state, way), way), limits);
  if (isOn(way, inside, from)) return inside;
  const beyond = moved(sweep, from, shortMove_Hz(sweep), way);
  const { lean_Hz, rich_Hz } = limits;
  if (way === "rich") {
    return sight === "shown" && beyond <= rich_Hz * BEYOND_WINDOW ? beyond : undefined;
  }
  const isAllowed = isSafe(limits, beyond) && stillFalls(state);
  return isAllowed && beyond >= lean_Hz / BEYOND_WINDOW ? beyond : undefined;
}

/** A long move while the bottom is surely far; never leaner once the flame has gone out. */
function moveFrom({ sweep, rates, flame_outs, relights_used }: SweepState, way: Way): number {
  const short = shortMove_Hz(sweep);
  const edge = (way === "lean" ? rates[0] : rates.at(-1)) as { pump_Hz: number; ppm: number };
  const toSuggested = (way === "lean" ? 1 : -1) * (edge.pump_Hz - sweep.suggested_Hz);
  const isFar = toSuggested > longestMove_Hz(sweep) - 1e-6;
  const isSafe = way === "rich" || Math.max(flame_outs, relights_used) === 0;
  return isFar && isSafe && edge.ppm > FAR_ABOVE_ppm[sweep.end] ? longestMove_Hz(sweep) : short;
}

/** CO is lowest at the leanest rate that was read, and clearly higher at a richer one. */
function stillFalls({ best, rates, levels, sight }: SweepState): boolean {
  const [leanest] = rates;
  if (sight !== "shown" || !leanest || leanest !== best) return false;
  return riseOn(levels, leanest.pump_Hz, "rich") !== undefined;
}

/** With no attempt to relight left: where the flame has burned, and, if it never went out here, while CO still falls. */
function mayGoLeaner(state: SweepState): boolean {
  const { sweep, stays, rates, limits } = state;
  if (limits.out_Hz === 0) return rates.length === 1 || stillFalls(state);
  const burned = leanestBurned_Hz(sweep, stays);
  return burned !== undefined && isOn("lean", burned, rates[0]?.pump_Hz ?? 0);
}
