import { chance, type Seeded } from "./draws.ts";
import { type Bowl, exhaustCO, type Meter, reading } from "./meter.ts";
import type { End } from "./row.ts";

/** How an owner looks for the least CO at one end, the fan fixed. Controllers step by 0.1 Hz. */

const STEP_Hz = 0.1;
/** Leaner than this the flame goes out; nobody reads there. */
const FLAME_OUT = -0.3;
/** So rich that it smokes. */
const SMOKE = 0.6;
/** Coarse steps (common practice, no source: 0.2–0.4 Hz). */
const COARSE: Record<End, number> = { low: 2, high: 3 };

export const onStep = (pump_Hz: number): number => Math.max(STEP_Hz, Math.round(pump_Hz * 10) / 10);

export interface AtTheHeater {
  random: Seeded;
  meter: Meter;
  bowl: Bowl;
  end: End;
  best_Hz: number;
}

const off = (at: AtTheHeater, steps: number): number => (steps * STEP_Hz) / at.best_Hz - 1;
const runs = (at: AtTheHeater, steps: number): boolean => {
  const share = off(at, steps);
  return steps > 0 && share > FLAME_OUT && share < SMOKE;
};
export const read = (at: AtTheHeater, steps: number): number =>
  reading(at.random, at.meter, exhaustCO(at.bowl, off(at, steps)));

/** A reading that is surely above the lowest, and not the meter's noise. */
const isWorse = (ppm: number, least: number): boolean => ppm > 1.35 * least + 4;
const isAsGood = (ppm: number, least: number): boolean => ppm <= 1.12 * least + 1;

/** Where a start that smokes or goes out at once is put, by ear, before anything is read. */
function byEar(at: AtTheHeater, start_Hz: number): number {
  const share = start_Hz / at.best_Hz - 1;
  const usable = share < -0.2 ? -0.15 : share > 0.45 ? 0.4 : share;
  return Math.max(1, Math.round((at.best_Hz * (1 + usable)) / STEP_Hz));
}

/**
 * A proper sweep: coarse steps until both sides have climbed, then every 0.1 Hz across what was good between them.
 * @param habit where in the good range the owner settles: 0 its middle, −1 its lean edge, 1 its rich edge
 * @returns the pump rate set, Hz
 */
export function sweepProperly(at: AtTheHeater, start_Hz: number, habit: number): number {
  const coarse = COARSE[at.end];
  const start = byEar(at, start_Hz);
  let lean = MIDDLE;
  let rich = MIDDLE;
  let least = read(at, start);
  let lowest = MIDDLE;
  coarsely[MIDDLE] = least;
  const look = (i: number): number => {
    const ppm = read(at, start + (i - MIDDLE) * coarse);
    coarsely[i] = ppm;
    if (ppm < least) {
      least = ppm;
      lowest = i;
    }
    return ppm;
  };
  const canGo = (i: number) => runs(at, start + (i - MIDDLE) * coarse);
  while (canGo(lean - 1) && !isWorse(look(--lean), least));
  while (!isWorse(coarsely[rich] ?? 0, least) && canGo(rich + 1)) look(++rich);
  // A start far out on the rich side leaves readings that are beyond what was good.
  let from = lowest;
  let to = lowest;
  while (from > lean && !isWorse(coarsely[from] ?? 0, least)) from--;
  while (to < rich && !isWorse(coarsely[to] ?? 0, least)) to++;
  return finely(at, start + (from - MIDDLE) * coarse, start + (to - MIDDLE) * coarse, habit);
}

/** Coarse readings, the start in the middle. */
const MIDDLE = 64;
const coarsely = new Float64Array(2 * MIDDLE);
const fine = new Float64Array(256);

function finely(at: AtTheHeater, lean: number, rich: number, habit: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let s = lean; s <= rich; s++) {
    const ppm = runs(at, s) ? read(at, s) : Number.POSITIVE_INFINITY;
    fine[s - lean] = ppm;
    if (ppm < least) least = ppm;
  }
  let count = 0;
  let sum = 0;
  for (let s = lean; s <= rich; s++) {
    if (isAsGood(fine[s - lean] ?? 0, least)) {
      count++;
      sum += s;
    }
  }
  if (count === 0) return onStep(lean * STEP_Hz);
  return onStep((sum / count + (habit * count) / 2) * STEP_Hz);
}

/** Stopping early: down from the start until it is good enough, or the first reading that is higher than the last. */
export function stopEarly(at: AtTheHeater, start_Hz: number, goodEnough_ppm: number): number {
  const step = chance(at.random, 0.5) ? 1 : 2;
  let now = byEar(at, start_Hz);
  let last = read(at, now);
  while (last > goodEnough_ppm && runs(at, now - step)) {
    const ppm = read(at, now - step);
    if (ppm > last) break;
    now -= step;
    last = ppm;
  }
  return onStep(now * STEP_Hz);
}
