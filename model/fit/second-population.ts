import { ln } from "../ln-exp.ts";
import type { Cells } from "./cells.ts";
import { R_MOST } from "./grid.ts";
import { type Scatter, studentDensity } from "./spread.ts";

/** A second crowd of heaters that best explains the residuals beside the first. */
export interface SecondPopulation {
  /** Gain in log-likelihood over one crowd, votes counted as tunes. */
  gain: number;
  /** Where it stands from the line, in ln of pump rate per fan speed: a wrong dose or heat class would do that. */
  shift: number;
  /** Its share of the votes. */
  share: number;
}

const BIN = 0.02;
const HALF = 40;
/** Shifts looked for: nearer the two could not be told apart, farther they are slips of the pen. */
const SHIFTS = [0.18, 0.22, 0.26, 0.3, 0.34, 0.38, 0.42, 0.46, 0.5].flatMap((d) => [d, -d]);
const ROUNDS = 12;

/**
 * Looks for a second crowd at each of some shifts from the line, scattered as the first (a mixture of two
 * against one, each beside the same flat background), its share by expectation–maximisation.
 * @param residual of each cell about the line; `background` the flat share
 */
export function secondPopulation(
  { w }: Cells,
  residual: Float64Array,
  { spread, tail_df }: Scatter,
  background: number,
): SecondPopulation {
  const shape = (z: number) => studentDensity(z / spread, tail_df) / spread;
  const votes = new Float64Array(2 * HALF + 1);
  for (let k = 0; k < w.length; k++) {
    const bin = Math.round((residual[k] as number) / BIN);
    if (Math.abs(bin) > HALF) continue;
    votes[bin + HALF] = (votes[bin + HALF] as number) + (w[k] as number);
  }
  const flat = background / (2 * R_MOST);
  const one = Float64Array.from(votes, (_, i) => (1 - background) * shape((i - HALF) * BIN));
  const alone = likelihood(votes, one, one, 0, flat);
  let best: SecondPopulation = { gain: 0, shift: 0, share: 0 };
  for (const shift of SHIFTS) {
    const other = one.map((_, i) => (1 - background) * shape((i - HALF) * BIN - shift));
    let share = 0.2;
    for (let round = 0; round < ROUNDS; round++) share = reshared(votes, one, other, share, flat);
    const gain = likelihood(votes, one, other, share, flat) - alone;
    if (gain > best.gain) best = { gain, shift, share };
  }
  return best;
}

function likelihood(
  votes: Float64Array,
  one: Float64Array,
  other: Float64Array,
  share: number,
  flat: number,
): number {
  let log = 0;
  for (let i = 0; i < votes.length; i++) {
    const v = votes[i] as number;
    const density = (1 - share) * (one[i] as number) + share * (other[i] as number) + flat;
    if (v > 0 && density > 0) log += v * ln(density);
  }
  return log;
}

function reshared(
  votes: Float64Array,
  one: Float64Array,
  other: Float64Array,
  share: number,
  flat: number,
): number {
  let theirs = 0;
  let both = 0;
  for (let i = 0; i < votes.length; i++) {
    const v = votes[i] as number;
    const a = (1 - share) * (one[i] as number);
    const b = share * (other[i] as number);
    const p = v / (a + b + flat || 1);
    theirs += p * b;
    both += p * (a + b);
  }
  return both > 0 ? theirs / both : share;
}
