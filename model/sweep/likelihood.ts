import type { Level } from "./settling.ts";

/** A limb is no exact power: the higher up, the less the bowl's shape is believed (our own working values). */
const SHAPE = 0.12;
const SHAPE_MOST = 0.4;

/** Spread in ln of a reading about a bowl that rises so far there. */
export function spreadAt(ln_sd: number, rise: number): number {
  return Math.hypot(ln_sd, Math.min(SHAPE_MOST, SHAPE * rise));
}

/** Student's t with 5 degrees of freedom: a gust now and then is no news of the minimum. */
const FREEDOM = 5;
const PER_UNIT = 16;
const FARTHEST = 40;
const MOST_CELL = FARTHEST * PER_UNIT;
const misses = Float64Array.from(
  { length: MOST_CELL + 1 },
  (_, i) => -((FREEDOM + 1) / 2) * Math.log(1 + (i / PER_UNIT) ** 2 / FREEDOM),
);
/** ln of the logistic stand-in for the normal distribution, and never surer than this of a bound. */
const LOGISTIC = 1.702;
const NEVER_SURER = 0.002;
const bounds = Float64Array.from({ length: 2 * MOST_CELL + 1 }, (_, i) =>
  Math.log(NEVER_SURER + (1 - NEVER_SURER) / (1 + Math.exp(-LOGISTIC * (i / PER_UNIT - FARTHEST)))),
);

/** Adds the log-likelihood of a reading, for bowls that rise so far there, to each level's sum from `at` on. */
export function addLogLikelihood(
  { ppm, beyond }: Pick<Level, "ppm" | "beyond">,
  rise: number,
  sd: number,
  ln_levels: Float64Array,
  sums: Float64Array,
  at: number,
): void {
  const per = PER_UNIT / sd;
  const off = rise - Math.log(ppm);
  const own = -Math.log(sd);
  const sign = beyond === "ceiling" ? 1 : -1;
  for (let l = 0; l < ln_levels.length; l++) {
    const z = ((ln_levels[l] as number) + off) * per;
    sums[at + l] =
      (sums[at + l] as number) + (beyond === undefined ? miss(z) + own : bound(sign * z));
  }
}

function miss(cell: number): number {
  const at = cell < 0 ? -cell : cell;
  return misses[at < MOST_CELL ? (at + 0.5) | 0 : MOST_CELL] as number;
}

function bound(cell: number): number {
  if (cell <= -MOST_CELL) return bounds[0] as number;
  return bounds[cell < MOST_CELL ? (cell + MOST_CELL + 0.5) | 0 : 2 * MOST_CELL] as number;
}
