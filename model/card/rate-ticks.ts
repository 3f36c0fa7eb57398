import { isOnStep, onStep, stepsFrom, stepsUpTo } from "../rounding.ts";

/** A mark on a scale, with its distance from the scale's top. */
export interface Tick {
  value: number;
  y: number;
  labelled: boolean;
}

/** Least distance between neighbouring ticks, and between labelled ones. */
export interface TickGaps {
  tick_gap: number;
  label_gap: number;
}

/** Steps a person reads easily, Hz. */
const STEPS_Hz = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];

/**
 * Round pump rates between two, at the finest steps whose ticks and labels keep their distance everywhere.
 * The scale is logarithmic, so they are nearest at its fastest end.
 */
export function rateTicks(
  [slowest, fastest]: readonly [number, number],
  yOf: (pump_Hz: number) => number,
  { tick_gap, label_gap }: TickGaps,
): Tick[] {
  const gap = (step: number) => yOf(fastest) - yOf(Math.max(slowest / 2, fastest - step));
  const fine = STEPS_Hz.find((step) => gap(step) >= tick_gap) ?? 5;
  const labelled =
    STEPS_Hz.find((step) => step >= fine && isOnStep(step, fine) && gap(step) >= label_gap) ?? fine;
  const first = stepsFrom(slowest, fine);
  const last = stepsUpTo(fastest, fine);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const value = onStep(first + i, fine);
    return { value, y: yOf(value), labelled: isOnStep(value, labelled) };
  });
}
