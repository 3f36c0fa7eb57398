import { physicsPrior } from "./belief.ts";
import { fitGroup } from "./group-fit.ts";
import type { GroupFit } from "./published.ts";
import type { End, FitRow } from "./row.ts";
import { sampleOf } from "./sample.ts";
import { pooledPrior } from "./sizes.ts";
import { countRows } from "./standing.ts";
import { summaryOf } from "./summary.ts";

/**
 * Fits every heater size and end alone, then again with what the other sizes found as its prior. The same rows in any order
 * give the same bits.
 */
export function fitRows(rows: readonly FitRow[]): GroupFit[] {
  const groups = [...Map.groupBy(rows, ({ heat_kW, end }) => `${heat_kW} ${end}`).values()]
    .map((own) => {
      const { heat_kW, end } = own[0] as FitRow;
      return { heat_kW, end, rows: own, sample: sampleOf(own) };
    })
    .sort((p, q) => p.heat_kW - q.heat_kW || (p.end < q.end ? 1 : -1));
  const fit = (group: (typeof groups)[number], prior = physicsPrior(group.end)): GroupFit => {
    const summary = summaryOf(fitGroup(group.sample, prior), group.sample, prior);
    const { heat_kW, end } = group;
    const fitted = { heat_kW, end, ...summary, tunes: 0, rejected: 0, density_range: null };
    return { ...fitted, ...countRows(fitted, group.rows) };
  };
  const alone = groups.map((group) => fit(group));
  return groups.map((group, i) => {
    const others = alone.filter((g) => g.heat_kW !== group.heat_kW);
    return others.length === 0 ? (alone[i] as GroupFit) : fit(group, pooledPrior(group.end, others));
  });
}

export type { End };
