import type { StudyOwnHeaters } from "../../client/atlas/bands/report.ts";
import { standardDensity } from "../../model/air.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { GroupFit } from "../../model/fit/group.ts";
import { priorGroup } from "../../model/fit/prior.ts";
import { stepVariance } from "../../model/fit/row.ts";
import { PUMP_STEP_Hz, usualFans } from "../../model/heater.ts";
import { exp } from "../../model/numerics/ln-exp.ts";
import { type Mixture, ownHeaterAt, quantileOf } from "../../model/own-heater.ts";
import { lnRatio } from "./airs.ts";
import { crowd, TARGET } from "./crowd.ts";
import { FIXED, heaterOf, type Seeded, seeded, tuned } from "./population.ts";
import { tradeRows } from "./scenarios/trade.ts";
import { tradeCrowd } from "./trade/crowd.ts";

/** Sd of ln density that a complete record leaves open. */
const AIR_SD = 0.01;
const OWN_TUNES = [0, 1, 2, 3, 6];
export const HEATERS_EACH = 40;
const X = [0, 3000, 4500].map((m) => lnRatio(standardDensity(m)));

/** A heater that can be tuned again, and its best setting. */
interface Tunable {
  next(x: number): number;
  best(x: number): number;
}

interface World {
  group: GroupFit;
  /** In which its owners set their pumps, Hz; 0 without steps. */
  step_Hz: number;
  heater(): Tunable;
}

/** Clean crowds of 200, and heaters beside them with a few tunes of their own. */
export function ownHeaters(crowds: number, seed: number): StudyOwnHeaters[] {
  if (crowds === 0) return [];
  return (["first", "trade"] as const).flatMap((generator) => {
    const worlds = Array.from({ length: crowds }, (_, run) => {
      const random = seeded(seed + run);
      return { random, world: generator === "first" ? first(random) : trade(random) };
    });
    return OWN_TUNES.flatMap((own_tunes) =>
      (own_tunes === 0 ? [false] : [false, true]).map((one_doubled) =>
        figures(worlds, { generator, own_tunes, one_doubled }),
      ),
    );
  });
}

function first(random: Seeded): World {
  const group = fitAtlas(crowd(random, FIXED, 200)).groups[0] as GroupFit;
  return {
    group,
    step_Hz: 0,
    heater: () => {
      const heater = heaterOf(random, FIXED);
      return {
        next: (x) => tuned(random, FIXED, heater, x),
        best: (x) => FIXED.intercept + heater.slope * x + heater.own,
      };
    },
  };
}

function trade(random: Seeded): World {
  const { rows, truth } = tradeCrowd(random, { owners: 200 });
  const { heat_kW, end } = TARGET;
  const { groups } = fitAtlas(tradeRows(rows));
  return {
    group: groups.find((g) => g.heat_kW === heat_kW) ?? priorGroup(heat_kW, end),
    step_Hz: PUMP_STEP_Hz,
    heater: () => {
      const own = truth.ownHeater(random, heat_kW);
      return {
        next: (x) => own.next(random, end, x),
        best: (x) => own.best(end, x),
      };
    },
  };
}

function figures(
  worlds: readonly { random: Seeded; world: World }[],
  of: Pick<StudyOwnHeaters, "generator" | "own_tunes" | "one_doubled">,
): StudyOwnHeaters {
  const none = () => X.map(() => 0);
  const counts = {
    next80: none(),
    next95: none(),
    nextHalf: none(),
    best80: none(),
    best95: none(),
    bestHalf: none(),
  };
  const add = (list: number[], air: number, value: number) => {
    list[air] = (list[air] as number) + value;
  };
  for (const { random, world } of worlds) {
    for (let h = 0; h < HEATERS_EACH; h++) {
      const heater = world.heater();
      const rows = Array.from({ length: of.own_tunes }, (_, k) => {
        const height_m = random.uniform() < 0.55 ? 500 * random.uniform() : 4000 * random.uniform();
        const x = lnRatio(standardDensity(height_m));
        const doubled = of.one_doubled && k === 0 ? Math.LN2 : 0;
        const y = heater.next(x) + doubled;
        const rate_Hz = (exp(y) * usualFans(TARGET.heat_kW).low_fan_rpm) / 1000;
        const variance = AIR_SD ** 2 + stepVariance(rate_Hz, world.step_Hz);
        return { x, y, variance };
      });
      X.forEach((x, air) => {
        const own = ownHeaterAt(world.group, rows, x);
        const [next80, next95] = [band(own.next, 0.8), band(own.next, 0.95)];
        const [best80, best95] = [band(own.best, 0.8), band(own.best, 0.95)];
        const [next, best] = [heater.next(x), heater.best(x)];
        add(counts.next80, air, holds(next80, next));
        add(counts.next95, air, holds(next95, next));
        add(counts.nextHalf, air, (next95[1] - next95[0]) / 2);
        add(counts.best80, air, holds(best80, best));
        add(counts.best95, air, holds(best95, best));
        add(counts.bestHalf, air, (best95[1] - best95[0]) / 2);
      });
    }
  }
  const heaters = worlds.length * HEATERS_EACH;
  const pct = (list: number[]) => list.map((v) => Math.round((1e4 * v) / heaters) / 100);
  return {
    ...of,
    heaters,
    next_80_held_pct: pct(counts.next80),
    next_95_held_pct: pct(counts.next95),
    next_95_half_pct: pct(counts.nextHalf),
    best_80_held_pct: pct(counts.best80),
    best_95_held_pct: pct(counts.best95),
    best_95_half_pct: pct(counts.bestHalf),
  };
}

type Interval = [lower: number, upper: number];

const band = (mixture: Mixture, level: number): Interval => [
  quantileOf(mixture, (1 - level) / 2),
  quantileOf(mixture, (1 + level) / 2),
];

const holds = ([lower, upper]: Interval, y: number) => Number(y > lower && y < upper);
