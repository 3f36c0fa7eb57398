import type { GroupFit } from "../../../model/fit/group.ts";
import { residual_pct } from "../../../model/residual.ts";
import type { ScalingAnswer } from "../../../server/contract.ts";
import { csvWithCaution } from "../../base/csv.ts";

/** The data behind the charts of the Scaling view: SI, units in the columns' names. */

/** Every tune of the chart with its residual against the fit. */
export function pointsCsv({ heat_kW, end, fit, points }: ScalingAnswer, group: GroupFit): string {
  return csvWithCaution(
    [
      ...["fit", "heat_kW", "end", "contributor", "elevation_m", "density_kg_m3", "pump_Hz"],
      ...["fan_rpm", "pump_Hz_per_krpm", "residual_pct", "status", "reason"],
    ],
    points.map((point) => [
      fit,
      heat_kW,
      end,
      point.contributor,
      point.elevation_m,
      rounded(point.density_kg_m3, 5),
      point.pump_Hz,
      point.fan_rpm,
      rounded(point.pump_Hz_per_krpm, 5),
      rounded(residual_pct(group, point.density_kg_m3, point.pump_Hz_per_krpm), 3),
      point.status,
      point.reason ?? "",
    ]),
  );
}

/** The curve and its bands, Hz per 1,000 rpm. */
export function curveCsv({ heat_kW, end, fit, curve }: ScalingAnswer): string {
  const [first] = curve;
  const bands = first?.new_heater_bands.map(({ level }) => `new_heater_${100 * level}`) ?? [];
  const mean = `mean_${100 * (first?.mean_band.level ?? 0.95)}`;
  return csvWithCaution(
    [
      ...["fit", "heat_kW", "end", "density_kg_m3", "elevation_m", "pump_Hz_per_krpm"],
      ...[mean, ...bands].flatMap((name) => [`${name}_lower`, `${name}_upper`]),
    ],
    curve.map((point) => [
      fit,
      heat_kW,
      end,
      rounded(point.density_kg_m3, 5),
      rounded(point.elevation_m, 1),
      ...[
        point.pump_Hz_per_krpm,
        ...[point.mean_band, ...point.new_heater_bands].flatMap((b) => [b.lower, b.upper]),
      ].map((value) => rounded(value, 5)),
    ]),
  );
}

function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
