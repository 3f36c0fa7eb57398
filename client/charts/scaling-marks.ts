import * as Plot from "@observablehq/plot";
import type { ScalingCurvePoint, ScalingPoint } from "../../server/contract.ts";

/** Air that heaters are tuned in: charts over density reach so far at least. */
export const DENSITY_FRAME_kg_m3 = [0.7, 1.4] as const;

export function inFrame(curve: readonly ScalingCurvePoint[]): ScalingCurvePoint[] {
  const [thin, dense] = DENSITY_FRAME_kg_m3;
  return curve.filter(({ density_kg_m3: density }) => density >= thin && density <= dense);
}

/** Tunes as dots: what counts, what is held and what is set aside differ in form as well as in colour. */
export function tuneDots<T>(
  tunes: readonly T[],
  statusOf: (tune: T) => ScalingPoint["status"],
  at: { x: (tune: T) => number; y: (tune: T) => number },
): Plot.Dot[] {
  const of = (status: ScalingPoint["status"]) => tunes.filter((one) => statusOf(one) === status);
  return [
    Plot.dot(of("kept"), { ...at, r: 3, className: "kept" }),
    Plot.dot(of("held"), { ...at, r: 4.5, symbol: "square", className: "held" }),
    Plot.dot(of("rejected"), { ...at, r: 5, symbol: "times", className: "rejected" }),
  ];
}
