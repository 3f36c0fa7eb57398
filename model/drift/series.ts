import type { Point } from "./logged.ts";

/** Readings that can stand beside each other. */
export interface Series {
  /** Counted from 1 in order of time, over the whole logbook: later ones need more evidence. */
  number: number;
  points: Point[];
}

/** Mixtures within this of the series' first are alike, ln (our own working value). */
export const LIKE_MIXTURE = 0.08;

/** Stretches from cleaning to cleaning: what the settings are compared in. */
export function stretchesOf(points: readonly Point[]): Series[] {
  return gathered(points, (point, first) => point.stretch === first.stretch);
}

/**
 * Series of CO: same stretch, same meter at the same spot, like mixture. Where meter or spot is not known nothing can be
 * compared. Who belongs to whom follows from settings, air and meter alone, never from the readings.
 */
export function coSeriesOf(points: readonly Point[]): Series[] {
  return gathered(
    points.filter(({ meter }) => meter !== undefined),
    (point, first) =>
      point.stretch === first.stretch &&
      point.meter === first.meter &&
      Math.abs(lnMixture(point) - lnMixture(first)) <= LIKE_MIXTURE,
  );
}

export function lnMixture({ ln_rate, ln_density }: Point): number {
  return ln_rate - ln_density;
}

function gathered(
  points: readonly Point[],
  belongs: (point: Point, first: Point) => boolean,
): Series[] {
  const series: Series[] = [];
  for (const point of points) {
    const its = series.find(({ points: [first] }) => first && belongs(point, first));
    if (its) its.points.push(point);
    else series.push({ number: series.length + 1, points: [point] });
  }
  return series;
}
