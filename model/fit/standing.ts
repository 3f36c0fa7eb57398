import type { End } from "../end.ts";
import { exp } from "../numerics/ln-exp.ts";
import { averageAt, heaterVariance, type Line } from "./bands.ts";
import type { GroupFit } from "./group.ts";
import { type FitRow, stepVariance, xOf, yOf } from "./row.ts";
import { MISTAKEN } from "./settings.ts";

/** Why a row does not count, in figures. */
export interface Aside {
  code: "far_richer" | "far_leaner";
  /** Pump rate per fan speed as a multiple of the average heater's in this air. */
  times: number;
  /** How many other owners tuned this size. */
  others: number;
}

/** What of a published group tells where its rows stand. */
type Standards = Line & Pick<GroupFit, "shares" | "second_crowd" | "contributors">;

/** Residual of a row from the published line, and how it scatters, in ln. */
export function residualOf(group: Line, row: FitRow): { residual: number; variance: number } {
  const x = xOf(row.density_kg_m3);
  return {
    residual: yOf(row) - averageAt(group, x, row.dose_uL).centre,
    variance: heaterVariance(group, x, row.dose_uL) + group.within ** 2 + stepVariance(row.pump_Hz),
  };
}

/**
 * Why the published fit sets a row aside: taken alone, it is more probably a mistake, or of the second crowd, than a good
 * tune. It depends on nothing but the row and the fit, so that a row comes back by itself when later tunes support it.
 * Null when it counts.
 */
export function asideOf(group: Standards, row: FitRow): Aside | null {
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
export function asideSentence({ code, times, others }: Aside, end: End): string {
  const way = code === "far_richer" ? "richer" : "leaner";
  const than = others > 0 ? `${others} similar tunes` : "usual tunes";
  const share = `${Math.round(100 * times)} % of the pump rate they have at this fan speed`;
  return `Far ${way} than ${than} at the ${end === "low" ? "lowest" : "highest"} power: ${share}. Check pump rate, fan speed and elevation.`;
}

function normal(residual: number, variance: number): number {
  return exp((-0.5 * residual * residual) / variance) / Math.sqrt(2 * Math.PI * variance);
}
