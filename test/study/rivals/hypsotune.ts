import { STANDARD_DENSITY_kg_m3 } from "../../../model/air.ts";
import { bandsAt } from "../../../model/fit/bands.ts";
import { fitAtlas } from "../../../model/fit/fit.ts";
import { priorGroup } from "../../../model/fit/prior.ts";
import { LEVELS } from "../airs.ts";
import type { Estimator, Fitted } from "./estimator.ts";

type Target = Parameters<Estimator["fit"]>[1];

/** The atlas's own fit, given all that it would have: other classes and ends too. */
export const hypsotune: Estimator = { name: "Hypsotune", fit: atlasFit };

/** The atlas's own fit of the one class and end by itself, for what the others add. */
export const hypsotuneAlone: Estimator = {
  name: "Hypsotune, class and end alone",
  fit: (rows, target) => atlasFit(rows.filter(isOf(target)), target),
};

export function isOf({ heat_kW, end }: Target): (row: Target) => boolean {
  return (row) => row.heat_kW === heat_kW && row.end === end;
}

function atlasFit(rows: Parameters<Estimator["fit"]>[0], target: Target): Fitted {
  const { groups, rejected } = fitAtlas(rows);
  const group = groups.find(isOf(target)) ?? priorGroup(target.heat_kW, target.end);
  const logs = ({ lower, upper }: { lower: number; upper: number }) => ({
    lower: Math.log(lower),
    upper: Math.log(upper),
  });
  return {
    setAside: new Set(rejected.filter(isOf(target)).map(({ row }) => row)),
    at: (x) => {
      const bands = bandsAt(group, STANDARD_DENSITY_kg_m3 * Math.exp(x), {
        mean_levels: LEVELS,
        new_heater_levels: LEVELS,
      });
      return {
        centre: Math.log(bands.pump_Hz_per_krpm),
        mean: bands.mean_bands.map(logs),
        another: bands.new_heater_bands.map(logs),
      };
    },
  };
}
