import type { ScalingAnswer, ScalingPoint } from "../../../server/contract.ts";
import { scalingWords } from "../../texts/scaling.ts";
import { type Place, placeWithin } from "../../ui/charts/frame.ts";
import type { Reading } from "../../ui/charts/readable-chart.tsx";
import { format, formatIn, formatRate, type Unit } from "../../units.ts";
import { byContributor } from "./by-contributor.ts";
import { placeOf, type Residual, residualFrame } from "./residual-chart.ts";
import { across, type Over, placesOf, scalingFrame } from "./scaling-frame.ts";
import { signed } from "./scaling-tables.tsx";

/** A reading, and the tune that it is of, if it is one's. */
export interface TuneReading extends Reading {
  tune?: ScalingPoint;
}

/** What a chart's curve and tunes say, in words with units, in the order of the axis. */

export function curveReadings(scaling: ScalingAnswer, over: Over, unit: Unit): TuneReading[] {
  const [from, to] = scalingFrame(scaling, over, unit).x;
  const x = across(over, unit);
  return scaling.curve
    .filter((d) => x(d) >= from && x(d) <= to)
    .map((d) => ({
      x: x(d),
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

/** Tunes at the places where they are drawn, each with the others of its contributor. */
export function tuneReadings(scaling: ScalingAnswer, over: Over, unit: Unit): TuneReading[] {
  const frame = scalingFrame(scaling, over, unit);
  const places = placesOf(scaling, over, unit);
  const tunes = scaling.points
    .map((point, i) => ({ ...point, ...placeWithin(frame, places[i] as Place) }))
    .sort((a, b) => a.x - b.x);
  const groups = byContributor(tunes);
  return tunes.map((tune) => ({
    x: tune.x,
    y: tune.y,
    text: tuneText(tune, unit),
    tune,
    joined: groups.get(tune.contributor) ?? [],
  }));
}

export function residualReadings(
  scaling: ScalingAnswer,
  residuals: readonly Residual[],
  unit: Unit,
): Reading[] {
  const frame = residualFrame(scaling, residuals);
  return residuals.map((residual) => ({
    ...placeWithin(frame, placeOf(residual)),
    text: scalingWords.residuals.reading(
      signed(residual.residual_pct),
      tuneText(residual.point, unit),
    ),
  }));
}

function tuneText(point: ScalingPoint, unit: Unit): string {
  return scalingWords.tuneReading(
    format(point.density_kg_m3, 3),
    formatIn(point.elevation_m, unit),
    formatRate(point.pump_Hz),
    format(point.fan_rpm),
    format(point.pump_Hz_per_krpm, 3),
    scalingWords.status[point.status],
  );
}
