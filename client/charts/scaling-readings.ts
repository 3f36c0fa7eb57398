import type { ScalingAnswer, ScalingPoint } from "../../server/contract.ts";
import { scalingWords } from "../texts/scaling.ts";
import { format, formatIn, toShown, type Unit } from "../units.ts";
import type { Reading } from "./readable-chart.tsx";
import type { Residual } from "./residual-chart.ts";
import type { Over } from "./scaling-chart.ts";
import { inFrame } from "./scaling-marks.ts";
import { signed } from "./scaling-tables.tsx";

/** What a chart's curve and tunes say, in words with units, in the order of the axis. */

export function curveReadings({ curve }: ScalingAnswer, over: Over, unit: Unit): Reading[] {
  return inFrame(curve)
    .map((d) => ({
      x: over === "density" ? d.density_kg_m3 : toShown(d.elevation_m, unit),
      y: d.pump_Hz_per_krpm,
      text: scalingWords.curveReading(
        format(d.density_kg_m3, 3),
        formatIn(d.elevation_m, unit),
        format(d.pump_Hz_per_krpm, 3),
        [d.mean_band, ...d.new_heater_bands].map(
          ({ lower, upper }) => `${format(lower, 3)}–${format(upper, 3)}`,
        ),
      ),
    }))
    .sort((a, b) => a.x - b.x);
}

/** @param drawn where a rate beyond the frame is drawn */
export function tuneReadings(
  { points }: ScalingAnswer,
  over: Over,
  unit: Unit,
  drawn: (pump_Hz_per_krpm: number) => number,
): Reading[] {
  return points
    .map((point) => ({
      x: over === "density" ? point.density_kg_m3 : toShown(point.elevation_m, unit),
      y: drawn(point.pump_Hz_per_krpm),
      text: tuneText(point, unit),
    }))
    .sort((a, b) => a.x - b.x);
}

export function residualReadings(
  residuals: readonly Residual[],
  unit: Unit,
  drawn: (residual_pct: number) => number,
): Reading[] {
  return residuals.map(({ point, residual_pct }) => ({
    x: point.density_kg_m3,
    y: drawn(residual_pct),
    text: scalingWords.residuals.reading(signed(residual_pct), tuneText(point, unit)),
  }));
}

function tuneText(point: ScalingPoint, unit: Unit): string {
  return scalingWords.tuneReading(
    format(point.density_kg_m3, 3),
    formatIn(point.elevation_m, unit),
    format(point.pump_Hz, 2),
    format(point.fan_rpm),
    format(point.pump_Hz_per_krpm, 3),
    scalingWords.status[point.status],
  );
}
