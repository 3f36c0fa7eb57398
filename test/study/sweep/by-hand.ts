import { onStep } from "../../../model/rounding.ts";
import type { SweepReading } from "../../../model/sweep/setup.ts";
import type { AtTheHeater } from "./at-the-heater.ts";

/** Coarse, then fine (common practice, no source), in steps of 0.1 Hz. */
const COARSE = 3;
const STEP_Hz = 0.1;
/** A person looks again after so long, until two looks in a row agree this well, so often at most. */
const LOOK_s = 30;
const ALIKE = 0.05;
const LOOKS_MOST = 6;
/** Rises less than this are not taken for one. */
const RISE = 1.1;

/** How a search by hand went. */
export interface ByHand {
  minimum_Hz: number;
  record: SweepReading[];
  set_Hz: number[];
  flame_outs: number;
  minutes: number;
}

/**
 * The usual stepping: leaner in coarse steps while CO falls; if the first step rises, richer instead; then
 * every fine step around the lowest. The lowest reading wins.
 */
export function byHand(start_Hz: number, heater: AtTheHeater, resolution_ppm: number): ByHand {
  const seen = new Map<number, number>();
  const record: SweepReading[] = [];
  const at = (steps: number): number => {
    const known = seen.get(steps);
    if (known !== undefined) return known;
    let before = Number.NaN;
    let now = Number.NaN;
    for (let k = 0; k < LOOKS_MOST; k++) {
      const reading = heater.read(onStep(steps, STEP_Hz), LOOK_s);
      record.push(reading);
      before = now;
      now = shown(reading);
      if (now === Number.POSITIVE_INFINITY) break;
      if (Math.abs(now - before) <= Math.max(resolution_ppm, ALIKE * now)) break;
    }
    seen.set(steps, now);
    return now;
  };
  heater.warm(start_Hz);
  const start = Math.round(start_Hz / STEP_Hz);
  let best = start;
  for (const way of [-COARSE, COARSE]) {
    for (let next = start + way; ; next += way) {
      if (next <= COARSE || next > 2 * start) break;
      const there = at(next);
      if (there < at(best)) best = next;
      if (there > RISE * at(best) || there === Number.POSITIVE_INFINITY) break;
    }
    // A fall on the lean side makes the rich side known already: the start was higher.
    if (best !== start) break;
  }
  const centre = best;
  for (let next = centre - COARSE + 1; next < centre + COARSE; next++) {
    if (next > 0 && at(next) < at(best)) best = next;
  }
  return {
    minimum_Hz: onStep(best, STEP_Hz),
    record,
    set_Hz: [...seen.keys()].map((steps) => onStep(steps, STEP_Hz)),
    flame_outs: heater.flame_outs,
    minutes: heater.time_s / 60,
  };
}

function shown({ co_ppm, co_below_ppm, flame_out }: SweepReading): number {
  if (flame_out) return Number.POSITIVE_INFINITY;
  return co_ppm ?? (co_below_ppm === undefined ? 9999 : co_below_ppm / 2);
}
