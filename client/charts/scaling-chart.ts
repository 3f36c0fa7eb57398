import * as Plot from "@observablehq/plot";
import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../server/contract.ts";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { toShown, type Unit } from "../units.ts";
import { onePicture } from "./one-picture.ts";
import type { DrawnPlot } from "./readable-chart.tsx";
import { DENSITY_FRAME_kg_m3, inFrame, tuneDots } from "./scaling-marks.ts";

export type Over = "density" | "elevation";

export interface ScalingChartOptions {
  scaling: ScalingAnswer;
  over: Over;
  /** Unit of elevation. */
  unit: Unit;
  width: number;
}

const ELEVATION_FRAME_m = [-300, 5200] as const;
/** Room above and below bands and tunes that count, as a factor. */
const ROOM = 1.12;

/**
 * Pump rate per fan speed over density or elevation: bands, curve, every tune, and lines that join one contributor's.
 * What lies beyond the frame is drawn at its edge, so that one decimal slip does not flatten all the rest.
 */
export function scalingChart(options: ScalingChartOptions): DrawnPlot {
  const { scaling, over, unit, width } = options;
  const shown = (elevation_m: number) => toShown(elevation_m, unit);
  const x = (d: ScalingPoint | ScalingCurvePoint) =>
    over === "density" ? d.density_kg_m3 : shown(d.elevation_m);
  const frame = over === "density" ? DENSITY_FRAME_kg_m3 : ELEVATION_FRAME_m.map(shown);
  const xs = scaling.points.map(x);
  const xDomain = [Math.min(frame[0] as number, ...xs), Math.max(frame[1] as number, ...xs)];
  const yDomain = yFrame(scaling, (d) => inside(x(d), xDomain));
  const y = (d: ScalingPoint) => clamp(d.pump_Hz_per_krpm, yDomain);
  const curve = scaling.curve.filter((d) => inside(x(d), xDomain));
  const svg = Plot.plot({
    width,
    height: Math.max(300, Math.min(520, width * 0.6)),
    marginLeft: 48,
    marginBottom: 44,
    ariaLabel: scalingWords.chartLabel(t.endWord[scaling.end], scalingWords[over]),
    x: { domain: xDomain, label: axisLabel(over, unit), labelAnchor: "center", labelArrow: "none" },
    y: { domain: yDomain, label: scalingWords.rateAxis, labelArrow: "none", grid: true },
    marks: [
      ...bandAreas(curve, x),
      Plot.line(scaling.points, {
        x,
        y,
        z: "contributor",
        sort: x,
        className: "contributor-lines",
        strokeWidth: 0.7,
        strokeOpacity: 0.55,
      }),
      Plot.line(curve, { x, y: "pump_Hz_per_krpm", className: "curve", strokeWidth: 2.5 }),
      ...tuneDots(scaling.points, ({ status }) => status, { x, y }),
      Plot.frame({ className: "chart-frame" }),
    ],
  }) as DrawnPlot;
  return onePicture(svg, "scaling-chart");
}

/** Where a rate is drawn over density: what lies beyond the frame, at its edge. */
export function drawnRate(scaling: ScalingAnswer): (pump_Hz_per_krpm: number) => number {
  const frame = yFrame(scaling, () => true);
  return (rate) => clamp(rate, frame);
}

/** How many tunes lie beyond the frame and are drawn at its edge. */
export function beyondFrame(scaling: ScalingAnswer): number {
  const frame = yFrame(scaling, () => true);
  return scaling.points.filter((p) => !inside(p.pump_Hz_per_krpm, frame)).length;
}

function bandAreas(curve: ScalingCurvePoint[], x: (d: ScalingCurvePoint) => number) {
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
  return [
    area("area-outer", (d) => d.new_heater_bands[1]),
    area("area-inner", (d) => d.new_heater_bands[0]),
    area("area-mean", (d) => d.mean_band),
  ];
}

function yFrame(scaling: ScalingAnswer, seen: (d: ScalingCurvePoint) => boolean): number[] {
  const bands = inFrame(scaling.curve)
    .filter(seen)
    .flatMap((d) => d.new_heater_bands.flatMap(({ lower, upper }) => [lower, upper]));
  const kept = scaling.points.filter((p) => p.status === "kept").map((p) => p.pump_Hz_per_krpm);
  const all = [...bands, ...kept];
  return [Math.min(...all) / ROOM, Math.max(...all) * ROOM];
}

function axisLabel(over: Over, unit: Unit): string {
  return over === "density" ? scalingWords.densityAxis : scalingWords.elevationAxis(unit.name);
}

function inside(value: number, [from, to]: readonly number[]): boolean {
  return value >= (from as number) && value <= (to as number);
}

function clamp(value: number, [from, to]: readonly number[]): number {
  return Math.min(to as number, Math.max(from as number, value));
}
