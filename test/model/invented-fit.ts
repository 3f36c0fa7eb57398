import { STANDARD_DENSITY_kg_m3 } from "../../model/air.ts";
import { ENDS } from "../../model/end.ts";
import { fitAtlas } from "../../model/fit/fit.ts";
import type { PublishedFit } from "../../model/fit/group.ts";
import type { FitRow } from "../../model/fit/row.ts";

/** A fit of invented crews, and the empty atlas: what start tunes and comparisons are tested on. */

export const TRUE_SLOPE = 0.9;
export const TRUE_PER_KRPM = { low: 0.75, high: 1.02 } as const;

/** Densities the invented crews tuned at, kg/m³. */
export const INVENTED_RANGE = [0.75, 1.3] as const;

export const EMPTY_ATLAS: PublishedFit = {
  version: "prior",
  published_at: null,
  code: "test",
  estimator: "test",
  settings: {},
  rows_sha256: null,
  demo: false,
  groups: [],
  alarms: [],
};

/** Forty invented crews of one heat class, 6 % apart, each at two densities; the same at every call. */
export function inventedFit(heat_kW = 5, crews = 40): PublishedFit {
  const rows: FitRow[] = [];
  const [thinnest, densest] = INVENTED_RANGE;
  for (let crew = 0; crew < crews; crew++) {
    // A low-discrepancy walk stands in for chance.
    const deviation = 0.06 * (2 * ((crew * 0.618034) % 1) - 1) * Math.sqrt(3);
    for (const visit of [0, 1]) {
      const share = (crew * 0.7548777 + visit * 0.5698403) % 1;
      const density_kg_m3 = thinnest + (densest - thinnest) * share;
      for (const end of ENDS) {
        const fan_rpm = end === "low" ? 1650 : 4400;
        const ratio = density_kg_m3 / STANDARD_DENSITY_kg_m3;
        const perKrpm = TRUE_PER_KRPM[end] * ratio ** TRUE_SLOPE * Math.exp(deviation);
        rows.push({
          row: `${crew}.${visit}.${end}`,
          contributor: `crew ${crew}`,
          cell: `place ${crew}`,
          heat_kW,
          end,
          density_kg_m3,
          fan_rpm,
          pump_Hz: (perKrpm * fan_rpm) / 1000,
        });
      }
    }
  }
  const { groups } = fitAtlas(rows);
  return { ...EMPTY_ATLAS, version: "2026-11-25.1", demo: true, groups };
}
