import { exp, ln } from "../ln-exp.ts";
import { xOf } from "./grid.ts";
import type { FitRow, GroupFit } from "./group.ts";
import { studentFactor } from "./student.ts";

/** So much of the scatter between heaters is kept: 2.8 standard deviations of the normal distribution. */
export const KEPT_SHARE = 0.995;

/** Robust spread between heaters at x, and how many of them a row may lie from the line and be kept. */
export function robustSpread({ spread, spread_per_x }: GroupFit, x: number): number {
  return Math.sqrt(spread ** 2 + (spread_per_x * x) ** 2);
}

export function mostSpreads({ tail_df }: GroupFit): number {
  return studentFactor(KEPT_SHARE, tail_df ?? Number.POSITIVE_INFINITY);
}

/** How far a row stands from the published line, in robust spreads: plus is rich, minus is lean. */
export function spreadsFrom(group: GroupFit, row: FitRow): number {
  const x = xOf(row.density_kg_m3);
  const y = ln((row.pump_Hz * 1000) / row.fan_rpm);
  return (y - group.intercept - group.slope * x) / robustSpread(group, x);
}

/**
 * Why the published fit sets a row aside, in a sentence with the numbers; null when it counts. It depends on nothing
 * but the row and the fit: a row comes back by itself when later tunes support it.
 */
export function reasonAside(group: GroupFit, row: FitRow): string | null {
  const spreads = spreadsFrom(group, row);
  if (Math.abs(spreads) <= mostSpreads(group)) return null;
  const expected = exp(group.intercept + group.slope * xOf(row.density_kg_m3));
  const got = (row.pump_Hz * 1000) / row.fan_rpm;
  const others = Math.max(0, group.contributors - 1);
  return (
    `${Math.abs(spreads).toFixed(1)} robust spreads ${spreads > 0 ? "richer" : "leaner"} than ` +
    `${others} others at this density (${row.density_kg_m3.toFixed(3)} kg/m³): ` +
    `${got.toFixed(3)} against ${expected.toFixed(3)} Hz per 1,000 rpm at the ${row.end} end.`
  );
}
