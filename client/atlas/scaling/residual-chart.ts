import * as Plot from "@observablehq/plot";
import type { GroupFit } from "../../../model/fit/group.ts";
import { residual_pct } from "../../../model/residual.ts";
import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../../server/contract.ts";
import { t } from "../../texts/app.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { APART_px, axisTicks } from "../../ui/charts/axis-ticks.ts";
import { edgeNotes } from "../../ui/charts/edge-notes.ts";
import {
  countBeyond,
  type Frame,
  type Place,
  placeWithin,
  widened,
} from "../../ui/charts/frame.ts";
import { onePicture } from "../../ui/charts/one-picture.ts";
import type { DrawnPlot } from "../../ui/charts/readable-chart.tsx";
import { curveWithin, DENSITY_FRAME_kg_m3 } from "./scaling-frame.ts";
import { tuneDots } from "./scaling-marks.ts";

export interface Residual {
  point: ScalingPoint;
  residual_pct: number;
}

/** Every tune against what the fit expects in its air, from thin to dense. */
export function residualsOf(scaling: ScalingAnswer, group: GroupFit): Residual[] {
  return scaling.points
    .map((point) => ({
      point,
      residual_pct: residual_pct(group, point.density_kg_m3, point.pump_Hz_per_krpm),
    }))
    .sort((a, b) => a.point.density_kg_m3 - b.point.density_kg_m3);
}

const ROOM = 1.15;
const density = ({ density_kg_m3 }: ScalingCurvePoint) => density_kg_m3;

/** The frame follows the bands and the tunes that count, as that of the rates does. */
export function residualFrame(scaling: ScalingAnswer, residuals: readonly Residual[]): Frame {
  const kept = residuals.filter(({ point }) => point.status === "kept");
  const x = widened(
    DENSITY_FRAME_kg_m3,
    kept.map(({ point }) => point.density_kg_m3),
  );
  const bands = curveWithin(scaling.curve, density, x).flatMap((d) =>
    d.new_heater_bands.map(({ upper }) => off(d, upper)),
  );
  const reach = ROOM * Math.max(...kept.map((r) => Math.abs(r.residual_pct)), ...bands);
  return { x, y: [-reach, reach] };
}

export function placeOf({ point, residual_pct: value }: Residual): Place {
  return { x: point.density_kg_m3, y: value };
}

/** Residuals over density, with the new-heater bands around the fit's zero. */
export function residualChart(
  scaling: ScalingAnswer,
  residuals: readonly Residual[],
  width: number,
): DrawnPlot {
  const frame = residualFrame(scaling, residuals);
  const curve = curveWithin(scaling.curve, density, frame.x);
  const places = residuals.map(placeOf);
  const area = (className: string, i: number) =>
    Plot.areaY(curve, {
      x: "density_kg_m3",
      y1: (d: ScalingCurvePoint) => off(d, d.new_heater_bands[i]?.lower),
      y2: (d: ScalingCurvePoint) => off(d, d.new_heater_bands[i]?.upper),
      className,
    });
  const height = Math.max(240, Math.min(400, width * 0.45));
  const svg = Plot.plot({
    width,
    height,
    marginTop: 24,
    marginLeft: 48,
    ariaLabel: scalingWords.residuals.chart(t.endWord[scaling.end]),
    x: { domain: frame.x, label: null, ...axisTicks(frame.x, width, APART_px.x) },
    y: { domain: frame.y, label: null, grid: true, ...axisTicks(frame.y, height, APART_px.y) },
    marks: [
      area("area-outer", 1),
      area("area-inner", 0),
      Plot.ruleY([0], { className: "curve" }),
      ...tuneDots(
        residuals,
        ({ point }) => point.status,
        {
          x: (one) => placeWithin(frame, placeOf(one)).x,
          y: (one) => placeWithin(frame, placeOf(one)).y,
        },
        width,
      ),
      Plot.frame({ className: "chart-frame" }),
    ],
  }) as DrawnPlot;
  svg.append(...edgeNotes(svg, countBeyond(frame, places)));
  return onePicture(svg, "residual-chart");
}

function off(d: ScalingCurvePoint, rate: number | undefined): number {
  return 100 * ((rate ?? d.pump_Hz_per_krpm) / d.pump_Hz_per_krpm - 1);
}
