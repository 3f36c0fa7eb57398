import * as Plot from "@observablehq/plot";
import type { ScalingAnswer, ScalingCurvePoint } from "../../../server/contract.ts";
import { t } from "../../texts/app.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { APART_px, axisTicks } from "../../ui/charts/axis-ticks.ts";
import { edgeNotes } from "../../ui/charts/edge-notes.ts";
import { countBeyond, placeWithin, sideBeyond } from "../../ui/charts/frame.ts";
import { onePicture } from "../../ui/charts/one-picture.ts";
import type { DrawnPlot } from "../../ui/charts/readable-chart.tsx";
import type { Unit } from "../../units.ts";
import { averageReachesBeyond } from "./average-band.ts";
import { byContributor } from "./by-contributor.ts";
import { across, curveWithin, type Over, placesOf, scalingFrame } from "./scaling-frame.ts";
import { tuneDots } from "./scaling-marks.ts";

export interface ScalingChartOptions {
  scaling: ScalingAnswer;
  over: Over;
  /** Unit of elevation. */
  unit: Unit;
  width: number;
}

/**
 * Pump rate per fan speed over density or elevation: bands, curve, every tune, and lines that join one contributor's.
 * What lies beyond the frame is drawn at its edge, with how many there are.
 */
export function scalingChart(options: ScalingChartOptions): DrawnPlot {
  const { scaling, over, unit, width } = options;
  const frame = scalingFrame(scaling, over, unit);
  const x = across(over, unit);
  const places = placesOf(scaling, over, unit);
  const tunes = scaling.points.map((point, i) => {
    const place = places[i] as (typeof places)[0];
    return { ...point, ...placeWithin(frame, place), seen: sideBeyond(frame, place) === null };
  });
  const at = { x: (tune: (typeof tunes)[0]) => tune.x, y: (tune: (typeof tunes)[0]) => tune.y };
  const curve = curveWithin(scaling.curve, x, frame.x);
  const lines = [...byContributor(tunes.filter(({ seen }) => seen)).values()].filter(
    ({ length }) => length > 1,
  );
  const height = Math.max(260, Math.min(420, width * 0.6));
  const svg = Plot.plot({
    width,
    height,
    marginTop: 24,
    marginLeft: 48,
    ariaLabel: scalingWords.chartLabel(t.endWord[scaling.end], scalingWords[over]),
    x: { domain: frame.x, label: null, ...axisTicks(frame.x, width, APART_px.x) },
    y: { domain: frame.y, label: null, grid: true, ...axisTicks(frame.y, height, APART_px.y) },
    marks: [
      ...bandAreas(curve, x, averageByItsEdges(scaling.curve)),
      Plot.line(lines.flat(), {
        ...at,
        z: "contributor",
        sort: "x",
        className: "contributor-lines",
        strokeOpacity: faintness(lines.length),
      }),
      Plot.line(curve, { x, y: "pump_Hz_per_krpm", className: "curve", strokeWidth: 2.5 }),
      ...tuneDots(tunes, ({ status }) => status, at, width),
      Plot.frame({ className: "chart-frame" }),
    ],
  }) as DrawnPlot;
  svg.append(...edgeNotes(svg, countBeyond(frame, places)));
  return onePicture(svg, "scaling-chart");
}

/** A few lines are drawn clearly; hundreds together as a tint that shows their common slope and leaves the tunes in sight. */
function faintness(lines: number): number {
  const [FEW, CLEAR, FAINTEST] = [12, 0.5, 0.07];
  return Math.max(FAINTEST, Math.min(CLEAR, (CLEAR * FEW) / Math.max(1, lines)));
}

/** Bands from the widest to the narrowest; the average's by its edges where it would hide the band of most heaters. */
function bandAreas(
  curve: ScalingCurvePoint[],
  x: (d: ScalingCurvePoint) => number,
  byEdges: boolean,
) {
  const area = (
    className: string,
    band: (d: ScalingCurvePoint) => { lower: number; upper: number } | undefined,
  ) =>
    Plot.areaY(curve, {
      x,
      y1: (d) => band(d)?.lower,
      y2: (d) => band(d)?.upper,
      className,
    });
  const edge = (side: "lower" | "upper") =>
    Plot.line(curve, { x, y: (d) => d.mean_band[side], className: "edge-mean" });
  return [
    area("area-outer", (d) => d.new_heater_bands[1]),
    area("area-inner", (d) => d.new_heater_bands[0]),
    ...(byEdges ? [edge("lower"), edge("upper")] : [area("area-mean", (d) => d.mean_band)]),
  ];
}

/** Whether the average's band is drawn by its edges: all along the curve, if it must be anywhere. */
export function averageByItsEdges(curve: readonly ScalingCurvePoint[]): boolean {
  return curve.some(({ mean_band, new_heater_bands: [inner] }) =>
    averageReachesBeyond(mean_band, inner),
  );
}
