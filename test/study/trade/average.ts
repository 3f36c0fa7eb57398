import { BENT, type Curve, curve, LINE } from "./curve.ts";
import { generator, type Seeded } from "./draws.ts";
import { bestPumpRate, deviation } from "./heater.ts";
import { itinerary, tuneCount } from "./itinerary.ts";
import { anyMonth, type Night, night } from "./nights.ts";
import { drawOwner, type Owner } from "./owner.ts";
import { type End, lnRatio } from "./row.ts";
import { heaterVariance } from "./size.ts";
import { sizeOf, type Trade } from "./trade.ts";
import { type Tuned, tuneEnd } from "./tuning.ts";

/**
 * The average tune of a heater size at one end, over many simulated sweeps, as curves of ln(ratio × dose) over x. It is
 * the sum of two: the best setting, which bends with the air, but is known exactly for each heater; and how far owners
 * end up from it, which scatters, but hardly depends on the air. What is large and known to average out (tolerances,
 * wear, the burner) is taken off each heater first. So few sweeps suffice.
 */
export interface Average {
  properly: Curve;
  /** The same with the tunes that stop early, which depend on the air: who comes up from the sea starts rich. */
  reported: Curve;
  spread: number;
}

const FEWEST_SWEEPS = 1000;
const MOST_SWEEPS = 30_000;

export function averageOf(trade: Trade, seed: number, heat_kW: number, end: End): Average {
  const { burning, options } = trade;
  const size = sizeOf(trade, heat_kW);
  const n = Math.min(MOST_SWEEPS, Math.max(FEWEST_SWEEPS, 3 * options.owners));
  const draw = (random: Seeded) => drawOwner(random, trade, size);
  const proper = properSweeps(generator(seed), trade, end, n, draw);
  const best = curve(proper.xs, proper.best, BENT);
  const swept = curve(proper.xs, proper.off, LINE);
  const properly: Curve = (x) => best(x) + swept(x);
  let reported = properly;
  if (options.stopEarly > 0) {
    const come = asTheyCome(generator(seed + 1), trade, end, n, draw);
    const off = curve(come.xs, come.off, BENT);
    reported = (x) => best(x) + off(x);
  }
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const tune = (proper.best[i] ?? 0) + (proper.off[i] ?? 0);
    squares += (tune - properly(proper.xs[i] ?? 0)) ** 2;
  }
  const variance = squares / n + burning.again_sd ** 2 + heaterVariance(size, burning);
  return { properly, reported, spread: Math.sqrt(variance) };
}

/** Of each tune: its air, its heater's best setting made average, and ln of what was set over the best. */
interface Tunes {
  xs: Float64Array;
  best: Float64Array;
  off: Float64Array;
}

const noTunes = (n: number): Tunes => ({
  xs: new Float64Array(n),
  best: new Float64Array(n),
  off: new Float64Array(n),
});

function note(
  tunes: Tunes,
  i: number,
  { burning }: Trade,
  { heater }: Owner,
  end: End,
  night: Night,
  tuned: Tuned,
): void {
  const { fan_rpm } = tuned;
  const best = lnRatio({ pump_Hz: bestPumpRate(heater, burning, end, fan_rpm, night), fan_rpm });
  tunes.xs[i] = night.x;
  tunes.best[i] = best - deviation(heater, burning, end) + Math.log(heater.nominal_uL);
  tunes.off[i] = Math.log(tuned.pump_Hz / tuned.best_Hz);
}

/** One proper sweep of each of n owners, from the sea to the highest camps, more of them lower down. */
function properSweeps(
  random: Seeded,
  trade: Trade,
  end: End,
  n: number,
  draw: (random: Seeded) => Owner,
): Tunes {
  const tunes = noTunes(n);
  for (let i = 0; i < n; i++) {
    const owner = draw(random);
    const share = (i + random.uniform()) / n;
    const at = night(random, trade.climate, 4800 * share * share, anyMonth(random), false);
    note(tunes, i, trade, owner, end, at, tuneEnd(random, trade, owner, end, at, "properly"));
  }
  return tunes;
}

/** The tunes of honest owners as they come, each started from where the last one left the heater. */
function asTheyCome(
  random: Seeded,
  trade: Trade,
  end: End,
  n: number,
  draw: (random: Seeded) => Owner,
): Tunes {
  const tunes = noTunes(n);
  for (let i = 0; i < n; ) {
    const owner = draw(random);
    for (const stop of itinerary(random, trade, tuneCount(random)).slice(0, n - i)) {
      const tuned = tuneEnd(random, trade, owner, end, stop.night);
      owner.set_Hz[end] = tuned.pump_Hz;
      note(tunes, i++, trade, owner, end, stop.night, tuned);
    }
  }
  return tunes;
}
