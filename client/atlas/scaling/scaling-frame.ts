import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../../server/contract.ts";
import { type Frame, type Place, type Span, widened } from "../../ui/charts/frame.ts";
import { toShown, type Unit } from "../../units.ts";

export type Over = "density" | "elevation";

/** Air that heaters are tuned in, and elevations that people sleep at: charts reach so far at least. */
export const DENSITY_FRAME_kg_m3: Span = [0.7, 1.4];
const ELEVATION_FRAME_m: Span = [-300, 5200];
/** Room above and below bands and tunes that count, as a factor. */
const ROOM = 1.12;

/** The figure on the horizontal axis. */
export function across(over: Over, unit: Unit) {
  return ({ density_kg_m3, elevation_m }: ScalingPoint | ScalingCurvePoint): number =>
    over === "density" ? density_kg_m3 : toShown(elevation_m, unit);
}

/**
 * The frame follows the bands and the tunes that count, since a slip may be anywhere: one decimal point or one
 * elevation in feet would squeeze all the rest into a corner.
 */
export function scalingFrame(scaling: ScalingAnswer, over: Over, unit: Unit): Frame {
  const kept = keptOf(scaling);
  const least =
    over === "density"
      ? DENSITY_FRAME_kg_m3
      : (ELEVATION_FRAME_m.map((m) => toShown(m, unit)) as unknown as Span);
  const x = widened(least, kept.map(across(over, unit)));
  const rates = [
    ...curveWithin(scaling.curve, across(over, unit), x).flatMap((d) =>
      d.new_heater_bands.flatMap(({ lower, upper }) => [lower, upper]),
    ),
    ...kept.map((point) => point.pump_Hz_per_krpm),
  ];
  return { x, y: [Math.min(...rates) / ROOM, Math.max(...rates) * ROOM] };
}

export function keptOf({ points }: ScalingAnswer): ScalingPoint[] {
  return points.filter(({ status }) => status === "kept");
}

/** Where each tune of the chart stands in figures, whether the frame has it or not. */
export function placesOf({ points }: ScalingAnswer, over: Over, unit: Unit): Place[] {
  const x = across(over, unit);
  return points.map((point) => ({ x: x(point), y: point.pump_Hz_per_krpm }));
}

/** The curve from edge to edge of a span: its points within, and one on each edge that it crosses. */
export function curveWithin(
  curve: readonly ScalingCurvePoint[],
  x: (d: ScalingCurvePoint) => number,
  [from, to]: Span,
): ScalingCurvePoint[] {
  const sorted = curve.toSorted((a, b) => x(a) - x(b));
  return sorted.flatMap((point, i) => {
    const next = sorted[i + 1];
    const here = x(point) >= from && x(point) <= to ? [point] : [];
    if (!next) return here;
    const crossed = [from, to].filter((edge) => x(point) < edge && edge < x(next));
    return [
      ...here,
      ...crossed.map((edge) => between(point, next, (edge - x(point)) / (x(next) - x(point)))),
    ];
  });
}

/** A share of the way from one point of the curve to the next: its steps are so small that a straight line is exact enough to draw. */
function between(a: ScalingCurvePoint, b: ScalingCurvePoint, share: number): ScalingCurvePoint {
  const mix = (from: number, to = from) => from + share * (to - from);
  const band = (from: ScalingCurvePoint["mean_band"], to = from) => ({
    level: from.level,
    lower: mix(from.lower, to.lower),
    upper: mix(from.upper, to.upper),
  });
  return {
    density_kg_m3: mix(a.density_kg_m3, b.density_kg_m3),
    elevation_m: mix(a.elevation_m, b.elevation_m),
    pump_Hz_per_krpm: mix(a.pump_Hz_per_krpm, b.pump_Hz_per_krpm),
    mean_band: band(a.mean_band, b.mean_band),
    new_heater_bands: a.new_heater_bands.map((one, i) => band(one, b.new_heater_bands[i])),
  };
}
