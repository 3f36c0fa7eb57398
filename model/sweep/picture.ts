import { ln_coAt } from "./estimate.ts";
import type { Level } from "./settling.ts";
import type { SweepState } from "./state.ts";

/** CO over pump rate as far as it is known, for a chart. */
export interface Picture {
  /** Over an even grid of pump rates: the middle of what is believed, and where 80 % of it lies. */
  curve: { pump_Hz: number; co_ppm: number; lower_ppm: number; upper_ppm: number }[];
  /** What each stay settled at or is going to. */
  levels: Level[];
}

const POINTS = 41;
/** Beyond the 95 % interval, the rates tried and the start, this share of the rate more. */
const MARGIN = 0.04;
const INSIDE = 0.8;

export function pictureOf({ sweep, posterior, estimate, levels }: SweepState): Picture {
  const known = [
    sweep.start_Hz,
    ...levels.map(({ pump_Hz }) => pump_Hz),
    ...estimate.intervals_Hz.flatMap(({ lower, upper }) => [lower, upper]),
  ];
  const from = Math.min(...known) * (1 - MARGIN);
  const to = Math.max(...known) * (1 + MARGIN);
  const { draws } = posterior;
  const at = (sorted: Float64Array, share: number) =>
    Math.exp(sorted[Math.round(share * (sorted.length - 1))] as number);
  const curve = Array.from({ length: POINTS }, (_, i) => {
    const pump_Hz = from + ((to - from) * i) / (POINTS - 1);
    const logs = Float64Array.from(draws, (draw) => ln_coAt(draw, pump_Hz)).sort();
    return {
      pump_Hz,
      co_ppm: at(logs, 0.5),
      lower_ppm: at(logs, (1 - INSIDE) / 2),
      upper_ppm: at(logs, (1 + INSIDE) / 2),
    };
  });
  return { curve, levels };
}
