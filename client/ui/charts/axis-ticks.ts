import { format } from "../../units.ts";

/** Round values from one to another, about so many at most: steps of 1, 2 or 5 times a power of ten. */
export function roundTicks(from: number, to: number, most: number): number[] {
  const least = (to - from) / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(least));
  const step = power * ([1, 2, 5].find((times) => times * power >= least * (1 - 1e-9)) ?? 10);
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.max(0, Math.floor(to / step + 1e-9) - first + 1);
  // Through its digits, since 3 × 0.1 is not 0.3.
  return Array.from({ length: count }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** Figures at the ticks of an axis, as people of the page's language write them and all with as many decimals. */
export function figuresAt(ticks: readonly number[]): (value: number) => string {
  const decimals = decimalsOf(ticks);
  return (value) => format(value, decimals);
}

/** Beyond so many nobody reads an axis. */
const MOST_DECIMALS = 4;

function decimalsOf(values: readonly number[]): number {
  const enough = (decimals: number) =>
    values.every((value) => Math.abs(value - Number(value.toFixed(decimals))) < 1e-9);
  let decimals = 0;
  while (decimals < MOST_DECIMALS && !enough(decimals)) decimals++;
  return decimals;
}

/** Between two ticks at least, so that their figures stand apart. */
export const APART_px = { x: 80, y: 35 };

/** Ticks and their figures for an axis of so many pixels; two ticks are at least so far apart. */
export function axisTicks(
  [from, to]: readonly [number, number],
  length_px: number,
  apart_px: number,
) {
  const ticks = roundTicks(from, to, length_px / apart_px);
  return { ticks, tickFormat: figuresAt(ticks) };
}
