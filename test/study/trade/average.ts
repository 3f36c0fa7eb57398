import { generator, type Seeded } from "./draws.ts";
import { deviation } from "./heater.ts";
import { itinerary, tuneCount } from "./itinerary.ts";
import { anyMonth, night } from "./nights.ts";
import { drawOwner, type Owner } from "./owner.ts";
import { type Curve, curve } from "./polynomial.ts";
import { type End, lnRatio } from "./row.ts";
import { heaterVariance } from "./size.ts";
import { sizeOf, type Trade } from "./trade.ts";
import { type Tuned, tuneEnd } from "./tuning.ts";

/**
 * The average tune of a heater size at one end, over many simulated sweeps, as curves of ln(ratio × dose) over x. What
 * is large and known to average out (tolerances, wear, the burner) is taken off each heater first, so that few suffice.
 */
export interface Average {
  properly: Curve;
  reported: Curve;
  spread: number;
}

const FEWEST_SWEEPS = 2000;
const MOST_SWEEPS = 30_000;

export function averageOf(trade: Trade, seed: number, heat_kW: number, end: End): Average {
  const size = sizeOf(trade, heat_kW);
  const n = Math.min(MOST_SWEEPS, Math.max(FEWEST_SWEEPS, 3 * trade.options.owners));
  const draw = (random: Seeded) => drawOwner(random, trade, size);
  const proper = properSweeps(generator(seed), trade, end, n, draw);
  const properly = curve(proper.xs, proper.ys);
  let squares = 0;
  for (let i = 0; i < n; i++) {
    squares += ((proper.ys[i] ?? 0) - properly(proper.xs[i] ?? 0)) ** 2;
  }
  const hasEarly = trade.options.stopEarly > 0;
  const all = hasEarly ? asTheyCome(generator(seed + 1), trade, end, n, draw) : proper;
  return {
    properly,
    reported: hasEarly ? curve(all.xs, all.ys) : properly,
    spread: Math.sqrt(squares / n + heaterVariance(size, trade.burning)),
  };
}

interface Points {
  xs: Float64Array;
  ys: Float64Array;
}

/** ln(ratio × dose) without what sets this heater apart from the average one. */
const asAverage = (tuned: Tuned, { heater }: Owner, { burning }: Trade, end: End): number =>
  lnRatio(tuned) - deviation(heater, burning, end) + Math.log(heater.nominal_uL);

/** One proper sweep of each of n owners, from the sea to the highest camps, more of them lower down. */
function properSweeps(
  random: Seeded,
  trade: Trade,
  end: End,
  n: number,
  draw: (random: Seeded) => Owner,
): Points {
  const points = { xs: new Float64Array(n), ys: new Float64Array(n) };
  for (let i = 0; i < n; i++) {
    const owner = draw(random);
    const share = (i + random.uniform()) / n;
    const at = night(random, trade.climate, 4800 * share * share, anyMonth(random), false);
    points.xs[i] = at.x;
    points.ys[i] = asAverage(tuneEnd(random, trade, owner, end, at, "properly"), owner, trade, end);
  }
  return points;
}

/** The tunes of honest owners as they come, each started from where the last one left the heater. */
function asTheyCome(
  random: Seeded,
  trade: Trade,
  end: End,
  n: number,
  draw: (random: Seeded) => Owner,
): Points {
  const points = { xs: new Float64Array(n), ys: new Float64Array(n) };
  for (let i = 0; i < n; ) {
    const owner = draw(random);
    for (const stop of itinerary(random, trade, tuneCount(random)).slice(0, n - i)) {
      const tuned = tuneEnd(random, trade, owner, end, stop.night);
      owner.set_Hz[end] = tuned.pump_Hz;
      points.xs[i] = stop.night.x;
      points.ys[i] = asAverage(tuned, owner, trade, end);
      i++;
    }
  }
  return points;
}
