import { exp } from "../ln-exp.ts";
import { averageAt, heaterVariance } from "./bands.ts";
import { MISTAKEN } from "./likelihood.ts";
import type { GroupFit } from "./published.ts";
import type { FitRow } from "./row.ts";
import { xOf, yOf } from "./sample.ts";

/** Why a row does not count, in figures. */
export interface Aside {
  code: "far_richer" | "far_leaner";
  /** Pump rate per fan speed as a multiple of the average heater's in this air. */
  times: number;
  /** How many other owners tuned this size. */
  others: number;
}

/** Residual of a row from the published line, and how it scatters, in ln. */
export function residualOf(group: GroupFit, row: FitRow): { residual: number; variance: number } {
  const x = xOf(row.density_kg_m3);
  return {
    residual: yOf(row) - averageAt(group, x, row.dose_uL).centre,
    variance: heaterVariance(group, x, row.dose_uL) + group.within ** 2,
  };
}

/**
 * Why the published fit sets a row aside: taken alone, it is more probably a mistake, or of the second crowd, than a good
 * tune. It depends on nothing but the row and the fit, so that a row comes back by itself when later tunes support it.
 * Null when it counts.
 */
export function asideOf(group: GroupFit, row: FitRow): Aside | null {
  const { residual, variance } = residualOf(group, row);
  const { shares, second_crowd } = group;
  let mistaken = (shares.anything + (1 - shares.anything) * shares.slips) * MISTAKEN;
  if (second_crowd) {
    const off = second_crowd.shift + second_crowd.tilt * xOf(row.density_kg_m3);
    mistaken += shares.second_crowd * normal(residual - off, second_crowd.sd ** 2);
  }
  const good = (1 - shares.anything - shares.second_crowd) * (1 - shares.slips);
  if (good * normal(residual, variance) >= mistaken) return null;
  return {
    code: residual > 0 ? "far_richer" : "far_leaner",
    times: exp(residual),
    others: Math.max(0, group.contributors - 1),
  };
}

/** The reason in a sentence that a person can act on. */
export function asideSentence({ code, times, others }: Aside, row: FitRow): string {
  const way = code === "far_richer" ? "richer" : "leaner";
  const similar = others === 0 ? "than usual tunes" : `than ${others} similar tunes`;
  const share = times >= 2 ? `${times.toFixed(1)} times` : `${Math.round(100 * times)} % of`;
  return `Far ${way} ${similar} in such air: ${share} their pump rate at this fan speed, at the ${row.end === "low" ? "lowest" : "highest"} power. Check pump rate, fan speed and elevation.`;
}

/** How many rows count, how many are set aside, and between which densities those that count lie. */
export function countRows(group: GroupFit, rows: readonly FitRow[]) {
  let tunes = 0;
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const row of rows) {
    if (asideOf(group, row)) continue;
    tunes++;
    least = Math.min(least, row.density_kg_m3);
    most = Math.max(most, row.density_kg_m3);
  }
  const density_range: [number, number] | null = tunes > 0 ? [least, most] : null;
  return { tunes, rejected: rows.length - tunes, density_range };
}

function normal(residual: number, variance: number): number {
  return exp((-0.5 * residual * residual) / variance) / Math.sqrt(TWO_PI * variance);
}

const TWO_PI = 6.283_185_307_179_586;

