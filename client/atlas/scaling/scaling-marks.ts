import * as Plot from "@observablehq/plot";
import type { ScalingPoint } from "../../../server/contract.ts";
import { NARROW_px } from "../../ui/charts/narrow.ts";

/**
 * Tunes as dots: what counts, what is held and what is set aside differ in form as well as in colour. On a narrow chart
 * they are smaller, since a crowd of them would hide the bands.
 */
export function tuneDots<T>(
  tunes: readonly T[],
  statusOf: (tune: T) => ScalingPoint["status"],
  at: { x: (tune: T) => number; y: (tune: T) => number },
  width: number,
): Plot.Dot[] {
  const of = (status: ScalingPoint["status"]) => tunes.filter((one) => statusOf(one) === status);
  const size = width < NARROW_px ? 0.7 : 1;
  return [
    Plot.dot(of("kept"), { ...at, r: 3 * size, className: "kept" }),
    Plot.dot(of("held"), { ...at, r: 4.5 * size, symbol: "square", className: "held" }),
    Plot.dot(of("rejected"), { ...at, r: 5 * size, symbol: "times", className: "rejected" }),
  ];
}
