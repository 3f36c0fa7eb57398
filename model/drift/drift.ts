import type { End } from "../end.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import { exp, ln } from "../numerics/ln-exp.ts";
import { type Logged, type Point, pointsOf } from "./logged.ts";
import { coSeriesOf, lnMixture, type Series, stretchesOf } from "./series.ts";
import { type Trend, type TrendPoint, trendOf } from "./trend.ts";

/**
 * What the entries of one heater say about its drift, at each end.
 *
 * On one footing: settings as ln(pump rate per 1,000 rpm), with the heater's own line over ln density beside; CO as
 * ln ppm, with the mixture's own effect beside, and only within one series: same stretch between cleanings, same meter
 * at the same spot, mixtures within 8 %. Over running hours, or over fuel burnt where hours are missing.
 *
 * False alarm. Four things are watched (CO and mixture, at two ends), each time an entry is made, as long as the
 * logbook is kept. A trend is spoken of when its evidence, which holds at every look (trend.ts), passes 40 for a rise of CO
 * (two-sided 1 in 40, upwards half of it: 1.25 % each) and 80 for the mixture (1.25 % each), times π²k²/6 in the k-th
 * series, so that cleanings and new meters open no further chances: under 5 % in all. Measured figures: docs/logbook.md.
 *
 * A reading below the meter's floor or at its ceiling is no number. It is left out of the trend, which cannot make a false
 * alarm (what is left is still alike over time) but hides a rise for as long as it lasts; it is counted and said.
 */

/** 100 h, or the 25 L that a small heater burns in about as long (common practice, no source): 1 of x. */
const PER = { hours: 100, fuel_L: 25 } as const;
export type Axis = keyof typeof PER;

const CO_EVIDENCE = 40;
const MIXTURE_EVIDENCE = 80;
/** Smallest difference a meter shows, ppm, and what reading in steps hides: step²/12. */
const METER_STEP_ppm = 1;
const LEAST_ppm = 1;

/** A change over a stretch, as a factor. */
export interface Change {
  /** Last ÷ first along the line. */
  factor: number;
  /** Holds at every look at once. */
  interval: { level: number; lower: number; upper: number };
  over: { axis: Axis; amount: number };
  points: number;
  /** Evidence, and what it takes. */
  evidence: number;
  needed: number;
  /** There is enough evidence: say it. */
  shown: boolean;
}

export interface CoDrift extends Change {
  from_ppm: number;
  to_ppm: number;
}

export interface EndDrift {
  co: CoDrift | null;
  /** Of the rate that was found best, on the heater's own line over density. */
  mixture: Change | null;
  /** CO readings of the newest series, and how many of them are no numbers. */
  readings: { seen: number; below_floor: number; at_ceiling: number };
  /** The newest reading is a number where all before it were below the floor. */
  risen_above_floor: { from_below_ppm: number; to_ppm: number } | null;
  /** Tunes of this stretch whose meter or spot is not known. */
  without_meter: number;
}

/** @throws RangeError naming the entry and the number that cannot be used */
export function driftOf(logged: readonly Logged[]): Record<End, EndDrift> {
  return { low: atEnd(logged, "low"), high: atEnd(logged, "high") };
}

/** An end's points, those of the present stretch, and the CO readings that can stand beside its newest. */
export function comparedAt(
  logged: readonly Logged[],
  end: End,
): { all: Point[]; now: Point[]; series: Series | undefined } {
  const all = pointsOf(logged, end);
  const cleanings = logged.filter(({ kind }) => kind === "cleaning").length;
  const now = all.filter(({ stretch }) => stretch === cleanings + 1);
  return { all, now, series: newest(coSeriesOf(all), now) };
}

function atEnd(logged: readonly Logged[], end: End): EndDrift {
  const { all, now, series } = comparedAt(logged, end);
  const readings = (series?.points ?? []).map(({ reading }) => reading);
  return {
    co: series ? coDrift(series) : null,
    mixture: mixtureDrift(newest(stretchesOf(all), now)),
    readings: {
      seen: readings.filter(({ co_ppm }) => co_ppm !== undefined).length,
      below_floor: readings.filter(({ co_below_ppm }) => co_below_ppm !== undefined).length,
      at_ceiling: readings.filter(({ co_above_ppm }) => co_above_ppm !== undefined).length,
    },
    risen_above_floor: risen(readings),
    without_meter: now.filter(({ meter }) => meter === undefined).length,
  };
}

/** The series that the stretch's newest comparable point belongs to. */
function newest(series: readonly Series[], now: readonly Point[]): Series | undefined {
  for (const point of [...now].reverse()) {
    const its = series.find(({ points }) => points.includes(point));
    if (its) return its;
  }
  return undefined;
}

function coDrift({ points, number }: Series): CoDrift | null {
  const seen = points.filter(({ reading }) => reading.co_ppm !== undefined);
  const y = (point: Point) => ln(Math.max(LEAST_ppm, point.reading.co_ppm ?? 0));
  const reading_variance = (point: Point) =>
    (METER_STEP_ppm / Math.max(LEAST_ppm, point.reading.co_ppm ?? 0)) ** 2 / 12;
  const change = changeOf(seen, y, lnMixture, reading_variance, CO_EVIDENCE * price(number));
  if (!change) return null;
  const middle = seen.reduce((sum, point) => sum + y(point), 0) / seen.length;
  const { first, last, mean } = change.x;
  return {
    ...change.change,
    shown: change.change.shown && change.trend.slope > 0,
    from_ppm: exp(middle + change.trend.slope * (first - mean)),
    to_ppm: exp(middle + change.trend.slope * (last - mean)),
  };
}

function mixtureDrift(series: Series | undefined): Change | null {
  if (!series) return null;
  const found = changeOf(
    series.points,
    ({ ln_rate }) => ln_rate,
    ({ ln_density }) => ln_density,
    ({ pump_Hz }) => (PUMP_STEP_Hz / pump_Hz) ** 2 / 12,
    MIXTURE_EVIDENCE * price(series.number),
  );
  return found?.change ?? null;
}

/** Σ 6/(π²k²) = 1: all series together spend what one may. */
const price = (number: number) => (Math.PI ** 2 * number ** 2) / 6;

function changeOf(
  points: readonly Point[],
  y: (point: Point) => number,
  z: (point: Point) => number,
  reading_variance: (point: Point) => number,
  needed: number,
): { change: Change; trend: Trend; x: { first: number; last: number; mean: number } } | null {
  const axis = axisOf(points);
  if (!axis) return null;
  const xs = points.map((point) => (point[axis] as number) / PER[axis]);
  const trend = trendOf(
    points.map(
      (point, i): TrendPoint => ({
        x: xs[i] as number,
        y: y(point),
        z: z(point),
        reading_variance: reading_variance(point),
      }),
    ),
  );
  if (!trend) return null;
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const factor = (slope: number) => exp(slope * (last - first));
  const { level, lower, upper } = trend.interval;
  return {
    trend,
    x: { first, last, mean: xs.reduce((sum, x) => sum + x, 0) / xs.length },
    change: {
      factor: factor(trend.slope),
      interval: {
        level,
        lower: Number.isFinite(lower) ? factor(lower) : 0,
        upper: Number.isFinite(upper) ? factor(upper) : Number.POSITIVE_INFINITY,
      },
      over: { axis, amount: (last - first) * PER[axis] },
      points: points.length,
      evidence: trend.evidence,
      needed,
      shown: trend.evidence >= needed,
    },
  };
}

/** Hours where every point has them, fuel where every point has that. */
function axisOf(points: readonly Point[]): Axis | undefined {
  if (points.length === 0) return undefined;
  if (points.every(({ hours }) => hours !== undefined)) return "hours";
  if (points.every(({ fuel_L }) => fuel_L !== undefined)) return "fuel_L";
  return undefined;
}

function risen(readings: readonly Point["reading"][]): EndDrift["risen_above_floor"] {
  const last = readings.at(-1);
  const before = readings.slice(0, -1);
  const floor = before[0]?.co_below_ppm;
  if (last?.co_ppm === undefined || floor === undefined) return null;
  const all = before.every(({ co_below_ppm }) => co_below_ppm !== undefined);
  return all && last.co_ppm >= floor ? { from_below_ppm: floor, to_ppm: last.co_ppm } : null;
}
