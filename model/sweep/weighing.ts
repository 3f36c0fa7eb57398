import { BOWLS, ln_rise } from "./bowl.ts";
import type { LnLevels } from "./levels.ts";
import { addLogLikelihood, spreadAt } from "./likelihood.ts";
import type { Draw } from "./posterior.ts";
import type { Level } from "./settling.ts";

/** A place of the minimum with a bowl, and how far that bowl rises at each reading. */
interface Pair {
  place: number;
  bowl: number;
  ln_prior: number;
  rises: number[];
}

/** Pairs and cells less likely than the best by this in ln count as nothing. */
const NOTHING = 11;
/** A coarse grid of levels must not fall between two: spreads are at least this share of its step. */
const SHARE_OF_STEP = 0.6;

/** Every place with every bowl. */
export function pairsOf(
  places_Hz: Float64Array,
  ln_prior: Float64Array,
  levels: readonly Level[],
): Pair[] {
  const pairs: Pair[] = [];
  for (const [place, minimum_Hz] of places_Hz.entries()) {
    const us = levels.map(({ pump_Hz }) => Math.log(pump_Hz / minimum_Hz));
    for (const [bowl, shape] of BOWLS.entries()) {
      pairs.push({
        place,
        bowl,
        ln_prior: (ln_prior[place] as number) + shape.ln_weight,
        rises: us.map((u) => ln_rise(shape, u)),
      });
    }
  }
  return pairs;
}

/** Pairs weighed by the readings at every level of the grid. */
export function weighed(pairs: readonly Pair[], levels: readonly Level[], lows: LnLevels) {
  const { count } = lows;
  const logs = new Float64Array(pairs.length * count);
  const least = SHARE_OF_STEP * lows.step;
  for (const [k, { ln_prior, rises }] of pairs.entries()) {
    const at = k * count;
    for (let l = 0; l < count; l++) logs[at + l] = ln_prior + (lows.prior[l] as number);
    for (const [i, level] of levels.entries()) {
      const rise = rises[i] as number;
      const sd = Math.max(least, spreadAt(level.ln_sd, rise));
      addLogLikelihood(level, rise, sd, lows.at, logs, at);
    }
  }
  let most = Number.NEGATIVE_INFINITY;
  for (const l of logs) if (l > most) most = l;
  let total = 0;
  for (let c = 0; c < logs.length; c++) {
    const above = (logs[c] as number) - most + NOTHING;
    logs[c] = above > 0 ? Math.exp(above) : 0;
    total += logs[c] as number;
  }
  const shares = logs;
  for (let c = 0; c < shares.length; c++) shares[c] = (shares[c] as number) / total;
  return {
    /** The pairs that count. */
    alive: (): Pair[] =>
      pairs.filter((_, k) => shares.subarray(k * count, (k + 1) * count).some((s) => s > 0)),
    /** A finer grid of levels over those that count. */
    around(fine: number): LnLevels {
      const mass = new Float64Array(count);
      for (let c = 0; c < shares.length; c++) {
        mass[c % count] = (mass[c % count] as number) + (shares[c] as number);
      }
      return lows.around(mass, fine);
    },
    /** Probability of each place, and draws evenly spaced over the cells, so that nothing is left to chance. */
    drawn(places_Hz: Float64Array, wanted: number) {
      const probability = new Float64Array(places_Hz.length);
      const draws: Draw[] = [];
      let sum = 0;
      for (const [k, { place, bowl }] of pairs.entries()) {
        for (let l = 0; l < count; l++) {
          const share = shares[k * count + l] as number;
          probability[place] = (probability[place] as number) + share;
          sum += share * wanted;
          while (draws.length + 0.5 < sum) {
            const minimum_Hz = places_Hz[place] as number;
            draws.push({ minimum_Hz, ln_lowest: lows.at[l] as number, bowl });
          }
        }
      }
      return { probability, draws };
    },
  };
}
