import { bracketed } from "./bracket.ts";
import { finest_Hz, isSafe, settable, shortMove_Hz } from "./limits.ts";
import { noise_ppm } from "./noise.ts";
import { belowFloor, sideOf } from "./sides.ts";
import type { ReadRate, SweepState } from "./state.ts";

/** A rate nearer than this to one that was read, of the finest step, tells nothing new. */
const NEW = 0.75;
/** From the rich edge at the low end (flame stability), lean of the centre at the high end (soot margin). */
const SIT_FROM_LEAN = { low: 0.75, high: 0.4 };

/** The rates around the best one that are as good within the meter's noise, and as well bracketed. */
export function flatOf({ sweep, rates, levels, limits }: SweepState): ReadRate[] {
  const safe = rates.filter(({ pump_Hz }) => isSafe(limits, pump_Hz));
  const proven = safe.filter(({ pump_Hz }) => bracketed(levels, pump_Hz));
  const pool = proven.length > 0 ? proven : safe;
  const [first] = pool;
  if (!first) return [];
  const best = pool.reduce((a, b) => (b.ppm < a.ppm ? b : a));
  const most = best.ppm + noise_ppm(sweep, best.ppm);
  const isGood = (rate: ReadRate | undefined) =>
    rate !== undefined && pool.includes(rate) && rate.ppm <= most;
  let from = rates.indexOf(best);
  let to = from;
  while (isGood(rates[from - 1])) from--;
  while (isGood(rates[to + 1])) to++;
  return rates.slice(from, to + 1);
}

/** Where the pump is to stay, as far as is known; never where the flame went out, or too near to it. */
export function seatOf(state: SweepState): number {
  const { limits, sweep } = state;
  const wanted = wantedSeat(state);
  return isSafe(limits, wanted) ? wanted : settable(sweep, wanted, limits);
}

function wantedSeat(state: SweepState): number {
  const { sweep, sight, limits, rates, best } = state;
  if (!best || sight === "above scale") return sweep.present_Hz;
  if (sight === "below floor") {
    const { lower, upper } = belowFloor(rates);
    const isRange = sideOf(state, "lean") === "rose" && sideOf(state, "rich") === "rose";
    const wanted = isRange ? (lower + upper) / 2 : sweep.suggested_Hz;
    const within = Math.min(upper, Math.max(lower, wanted));
    return within === lower || within === upper ? within : settable(sweep, within, limits);
  }
  const flat = flatOf(state);
  const [first, last] = [flat[0], flat.at(-1)];
  if (!first || !last) return settable(sweep, best.pump_Hz, limits);
  const wanted = first.pump_Hz + SIT_FROM_LEAN[sweep.end] * (last.pump_Hz - first.pump_Hz);
  // A rate that was read will do where one is near.
  const off = ({ pump_Hz }: ReadRate) => Math.abs(pump_Hz - wanted);
  const near = flat.reduce((a, b) => (off(b) < off(a) + 1e-6 ? b : a));
  if (off(near) < finest_Hz(sweep) + 1e-6) return near.pump_Hz;
  return Math.max(first.pump_Hz, Math.min(last.pump_Hz, settable(sweep, wanted, limits)));
}

/**
 * The bottom of the parabola in ln CO through the best rate and its neighbours (successive parabolic interpolation;
 * Brent, Algorithms for Minimization without Derivatives, 1973, ch. 5), and how much lower it is than the best, in ln.
 */
export function vertexOf({
  rates,
  best,
}: SweepState): { pump_Hz: number; gain: number } | undefined {
  const at = best ? rates.indexOf(best) : -1;
  const [left, middle, right] = [rates[at - 1], rates[at], rates[at + 1]];
  if (!left || !middle || !right) return undefined;
  const ln = ({ ppm }: ReadRate) => Math.log(Math.max(ppm, 1));
  const toLeft = middle.pump_Hz - left.pump_Hz;
  const toRight = right.pump_Hz - middle.pump_Hz;
  const left_slope = (ln(middle) - ln(left)) / toLeft;
  const right_slope = (ln(right) - ln(middle)) / toRight;
  const curvature = (right_slope - left_slope) / (toLeft + toRight);
  if (!(curvature > 0)) return { pump_Hz: middle.pump_Hz, gain: 0 };
  const slope = (left_slope * toRight + right_slope * toLeft) / (toLeft + toRight);
  const off = -slope / (2 * curvature);
  return { pump_Hz: middle.pump_Hz + off, gain: curvature * off * off };
}

/** A rate between those read that is worth a reading; undefined once the bottom is known as well as the meter can tell. */
export function between(state: SweepState): number | undefined {
  const { sweep, rates, best, limits } = state;
  const vertex = vertexOf(state);
  if (!best || !vertex) return undefined;
  const at = rates.indexOf(best);
  const neighbour = rates[vertex.pump_Hz < best.pump_Hz ? at - 1 : at + 1] as ReadRate;
  const middle = (neighbour.pump_Hz + best.pump_Hz) / 2;
  const gain_ppm = best.ppm * (1 - Math.exp(-vertex.gain));
  const isLower = gain_ppm > noise_ppm(sweep, best.ppm) / 2;
  const isWide = Math.abs(neighbour.pump_Hz - best.pump_Hz) > shortMove_Hz(sweep) + 1e-6;
  return [...(isLower ? [vertex.pump_Hz] : []), ...(isWide ? [middle] : [])]
    .map((rate) => settable(sweep, rate, limits))
    .find((rate) => rates.every((r) => Math.abs(r.pump_Hz - rate) > NEW * finest_Hz(sweep)));
}
