import * as Plot from "@observablehq/plot";
import type { GroupFit } from "../../model/fit/group.ts";
import { residual_pct } from "../../model/residual.ts";
import type { ScalingAnswer, ScalingCurvePoint, ScalingPoint } from "../../server/contract.ts";
import { t } from "../texts/app.ts";
import { scalingWords } from "../texts/scaling.ts";
import { onePicture } from "./one-picture.ts";
import type { DrawnPlot } from "./readable-chart.tsx";
import { DENSITY_FRAME_kg_m3, inFrame, tuneDots } from "./scaling-marks.ts";

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

/** Where a residual is drawn: what lies beyond the frame, at its edge. */
export function residualFrame(scaling: ScalingAnswer, residuals: readonly Residual[]) {
  const off = residuals
    .filter(({ point }) => point.status === "kept")
    .map((residual) => Math.abs(residual.residual_pct));
  const bands = inFrame(scaling.curve).flatMap((d) =>
    d.new_heater_bands.map(({ upper }) => 100 * (upper / d.pump_Hz_per_krpm - 1)),
  );
  const reach = ROOM * Math.max(...off, ...bands);
  return (value: number) => Math.min(reach, Math.max(-reach, value));
}

/** Residuals over density, with the new-heater bands around the fit's zero. */
export function residualChart(
  scaling: ScalingAnswer,
  residuals: readonly Residual[],
  width: number,
): DrawnPlot {
  const clamp = residualFrame(scaling, residuals);
  const x = ({ point }: Residual) => point.density_kg_m3;
  const y = ({ residual_pct: value }: Residual) => clamp(value);
  const densities = residuals.map(x);
  const [thin, dense] = DENSITY_FRAME_kg_m3;
  const area = (className: string, i: number) =>
    Plot.areaY(inFrame(scaling.curve), {
      x: "density_kg_m3",
      y1: (d: ScalingCurvePoint) => off(d, d.new_heater_bands[i]?.lower),
      y2: (d: ScalingCurvePoint) => off(d, d.new_heater_bands[i]?.upper),
      className,
    });
  const svg = Plot.plot({
    width,
    height: Math.max(260, Math.min(400, width * 0.45)),
    marginLeft: 48,
    marginBottom: 44,
    ariaLabel: scalingWords.residuals.chart(t.endWord[scaling.end]),
    x: {
      domain: [Math.min(thin, ...densities), Math.max(dense, ...densities)],
      label: scalingWords.densityAxis,
      labelAnchor: "center",
      labelArrow: "none",
    },
    y: {
      domain: [clamp(-1e9), clamp(1e9)],
      label: scalingWords.residuals.axis,
      labelArrow: "none",
      grid: true,
    },
    marks: [
      area("area-outer", 1),
      area("area-inner", 0),
      Plot.ruleY([0], { className: "curve" }),
      ...tuneDots(residuals, ({ point }) => point.status, { x, y }),
      Plot.frame({ className: "chart-frame" }),
    ],
  }) as DrawnPlot;
  return onePicture(svg, "residual-chart");
}

function off(d: ScalingCurvePoint, rate: number | undefined): number {
  return 100 * ((rate ?? d.pump_Hz_per_krpm) / d.pump_Hz_per_krpm - 1);
}
