import { averageAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import type { GroupFit } from "../../../model/fit/group.ts";
import { priorGroup } from "../../../model/fit/prior.ts";
import { type FitRow, xOf } from "../../../model/fit/row.ts";
import { type SimulatedRow, TARGET } from "../crowd.ts";
import { tradeCrowd } from "../trade/crowd.ts";
import type { Copies } from "../trade/options.ts";
import type { TradeRow } from "../trade/row.ts";
import { TRADE_SCENARIOS, type TradeScenario } from "../trade/scenarios.ts";
import type { Scenario } from "./scenario.ts";

/** Crowds of the second generator, which was written from the trade's side without a look at the estimator. */
export const TRADE: readonly Scenario[] = TRADE_SCENARIOS.map((of) => ({
  id: `trade-${of.id}`,
  title: of.what,
  family: "trade",
  truth: "drawn",
  contributors: of.options.owners ?? 200,
  make: (random) => {
    const { rows, truth } = tradeCrowd(random, { ...of.options, ...copiesOf(of) });
    const average = (of.options.stopEarly ?? 0) > 0 ? truth.reported : truth.mean;
    const { heat_kW, end } = TARGET;
    return {
      rows: tradeRows(rows),
      truth: {
        mean: (x) => average(heat_kW, end, x),
        another: (more, xs) => xs.map((x) => truth.newHeater(more, heat_kW, end, x).lnRatio),
        one: (more, x) => {
          const { lnRatio, dose_uL } = truth.newHeater(more, heat_kW, end, x);
          return { y: lnRatio, dose_uL };
        },
      },
    };
  },
}));

/** Rows as the atlas has them, of the end that is asked about. */
export function tradeRows(rows: readonly TradeRow[]): SimulatedRow[] {
  return rows
    .filter(({ end }) => end === TARGET.end)
    .map((row) => ({
      ...row,
      month: row.month ?? "2026-01",
      temperature_assumed: !row.temperature_given,
      elevation_m: Number.NaN,
      night: 1,
    }));
}

/** Owners who copy are shown what the atlas's own fit of the rows so far suggests. */
function copiesOf({ copies }: TradeScenario): { copies?: Copies } {
  if (!copies) return {};
  let groups: GroupFit[] = [];
  return {
    copies: {
      ...copies,
      publish: (rows) => {
        groups = fitAtlas(tradeRows(rows) as FitRow[]).groups;
      },
      suggest: ({ heat_kW, end, density_kg_m3, fan_rpm, dose_uL }) => {
        const group = groups.find((g) => g.heat_kW === heat_kW && g.end === end);
        const { centre } = averageAt(
          group ?? priorGroup(heat_kW, end),
          xOf(density_kg_m3),
          dose_uL,
        );
        return (Math.exp(centre) * fan_rpm) / 1000;
      },
    },
  };
}
