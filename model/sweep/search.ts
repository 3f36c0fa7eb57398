import type { SetRate } from "./answer.ts";
import { between, seatOf } from "./bottom.ts";
import type { Way } from "./bracket.ts";
import { longestMove_Hz, shortMove_Hz } from "./limits.ts";
import { onward, sideOf } from "./sides.ts";
import type { SweepState } from "./state.ts";

/** Settings of the pump in one sweep at most, those on the way counted, those to relight not (our own working value). */
export const STEPS_MOST = 18;

/** Settings of the pump so far. */
export function stepsOf({ stays }: SweepState): number {
  return stays.filter((_, i) => !stays[i - 1]?.flame_out).length;
}

/** Where the pump is to go next, in one move or more. */
export interface Goal {
  pump_Hz: number;
  why: Extract<SetRate["why"], "start" | "leaner" | "richer" | "between" | "confirm">;
}

/** From all that has settled: farther out where CO was not seen to rise, then between, then to where the pump is to stay. */
export function goalOf(state: SweepState): Goal {
  const { stays, rates } = state;
  const here = stays.at(-1)?.pump_Hz as number;
  if (rates.length === 0) return { pump_Hz: here, why: "start" };
  const seat = seatOf(state);
  const wanted = searching(state);
  if (wanted) {
    const needed = moves(state, here, wanted.pump_Hz) + moves(state, wanted.pump_Hz, seat);
    if (stepsOf(state) + needed <= STEPS_MOST) return wanted;
  }
  return { pump_Hz: seat, why: "confirm" };
}

function searching(state: SweepState): Goal | undefined {
  const way = wayOf(state);
  if (way) {
    return { pump_Hz: onward(state, way) as number, why: way === "lean" ? "leaner" : "richer" };
  }
  const rate = state.sight === "shown" ? between(state) : undefined;
  return rate === undefined ? undefined : { pump_Hz: rate, why: "between" };
}

/** The side to look at next, if any is left to look at. */
function wayOf(state: SweepState): Way | undefined {
  const { sweep, rates, best, levels } = state;
  const open = (["lean", "rich"] as const).filter((way) => sideOf(state, way) === "open");
  if (open.length < 2 || !best) return open[0];
  if (rates.length === 1) {
    // Too rich is the usual case, so leaner, unless the suggestion is clearly richer.
    return sweep.suggested_Hz > best.pump_Hz + shortMove_Hz(sweep) / 2 ? "rich" : "lean";
  }
  const last = levels.at(-1)?.pump_Hz ?? best.pump_Hz;
  const toLean = last - (rates[0]?.pump_Hz ?? last);
  const toRich = (rates.at(-1)?.pump_Hz ?? last) - last;
  if (best === rates[0]) return "lean";
  if (best === rates.at(-1)) return "rich";
  return toRich < toLean ? "rich" : "lean";
}

/** In how many moves the pump comes from one rate to another. */
export function moves({ sweep }: SweepState, from_Hz: number, to_Hz: number): number {
  return Math.ceil(Math.abs(to_Hz - from_Hz) / longestMove_Hz(sweep) - 1e-6);
}
