import { STANDARD_DENSITY_kg_m3 } from "./air.ts";
import type { GroupFit } from "./fit/group.ts";
import { exp, ln } from "./numerics/ln-exp.ts";

/**
 * How far a pump rate per fan speed, Hz per 1,000 rpm, lies off what a fit expects in air of this density, %:
 * plus is above it.
 * @example residual_pct({ intercept: 0, slope: 1 }, 1.225, 1.1) // 10
 */
export function residual_pct(
  { intercept, slope }: Pick<GroupFit, "intercept" | "slope">,
  density_kg_m3: number,
  pump_Hz_per_krpm: number,
): number {
  const expected = exp(intercept + slope * ln(density_kg_m3 / STANDARD_DENSITY_kg_m3));
  return 100 * (pump_Hz_per_krpm / expected - 1);
}
