import type { End } from "../end.ts";
import { exp } from "../numerics/ln-exp.ts";
import { type Axis, type CoDrift, comparedAt, driftOf } from "./drift.ts";
import type { Logged, Point } from "./logged.ts";
import { lnMixture } from "./series.ts";

/** A tune's end on one footing with the others. */
export interface PicturePoint {
  id: string;
  at: string;
  /** Hours on the counter, or litres burnt. */
  x: number;
  /** Its mixture against the first one's, %: what the air asked for is taken out; plus is richer. */
  mixture_pct: number;
  reading: Point["reading"];
  /** Its CO can stand beside the newest: same stretch, meter and spot, like mixture. */
  compares: boolean;
}

/** An end's mixture and CO over the heater's use. */
export interface DriftPicture {
  axis: Axis;
  points: PicturePoint[];
  /** Where it was cleaned. */
  cleanings: number[];
  /** Along the readings that compare, ppm at both ends of their line; {@link CoDrift} says what it is worth. */
  co_line: { from: { x: number; ppm: number }; to: { x: number; ppm: number } } | null;
  /** Tunes that do not say how long the heater had run. */
  left_out: number;
}

/** A picture shows how two things differ at the least. */
const LEAST_POINTS = 2;

/**
 * What {@link driftOf} judges, to be drawn: over running hours, or over the fuel burnt since the last cleaning where too few
 * tunes say the hours; null where neither is known of two tunes.
 * @throws RangeError naming the entry and the number that cannot be used
 */
export function driftPictureOf(logged: readonly Logged[], end: End): DriftPicture | null {
  const { all, now, series } = comparedAt(logged, end);
  const compared = new Set(series?.points.map(({ id }) => id));
  const drawn = over("hours", all) ?? over("fuel_L", now);
  if (!drawn) return null;
  const { axis, points } = drawn;
  const first = points[0] as Point;
  const of = axis === "hours" ? all : now;
  return {
    axis,
    points: points.map((point) => ({
      id: point.id,
      at: point.at,
      x: point[axis] as number,
      mixture_pct: 100 * (exp(lnMixture(point) - lnMixture(first)) - 1),
      reading: point.reading,
      compares: compared.has(point.id),
    })),
    cleanings:
      axis === "hours"
        ? logged.flatMap(({ kind, hours }) =>
            kind === "cleaning" && hours !== undefined ? [hours] : [],
          )
        : [],
    co_line: lineOf(driftOf(logged)[end].co, axis, series?.points ?? []),
    left_out: of.length - points.length,
  };
}

function over(axis: Axis, points: readonly Point[]): { axis: Axis; points: Point[] } | undefined {
  const known = points.filter((point) => point[axis] !== undefined);
  return known.length >= LEAST_POINTS ? { axis, points: known } : undefined;
}

function lineOf(co: CoDrift | null, axis: Axis, points: readonly Point[]): DriftPicture["co_line"] {
  if (!co || co.over.axis !== axis) return null;
  const xs = points
    .filter(({ reading }) => reading.co_ppm !== undefined)
    .map((point) => point[axis] as number);
  return {
    from: { x: Math.min(...xs), ppm: co.from_ppm },
    to: { x: Math.max(...xs), ppm: co.to_ppm },
  };
}
