import { airAt } from "../air.ts";
import { ENDS, type End } from "../end.ts";
import type { GroupFit, PublishedFit } from "../fit/group.ts";
import { exp, ln } from "../numerics/ln-exp.ts";
import { groupOf } from "../start.ts";
import { type CardGrid, type CardHeater, tuneAt } from "./card-table.ts";
import { rateTicks, type Tick, type TickGaps } from "./rate-ticks.ts";

/**
 * An alignment nomogram of parallel scales: a straight-edge from elevation through night temperature crosses the
 * pump rates of both ends. ln pump = ln fan + a + b·ln(ρ/1.225), and ln ρ = ln p(elevation) − ln T + const is a sum of
 * one term for each outer scale, so it is exact but for the moisture of the air, which is not quite a sum.
 * Thin air is at the top: up is higher and warmer, and the rate falls.
 */
export interface Nomogram {
  /** Where the three upright lines stand, in the unit of the size asked for; elevation at 0, temperature at its width. */
  x: { elevation: number; rate: number; temperature: number };
  /** Ticks with their distance from the top. */
  elevation: Tick[];
  temperature: Tick[];
  /** Pump rates at the low end and at the high end: two scales on the middle line. */
  low: Tick[];
  high: Tick[];
  /** The part of the middle line in air that somebody has tuned in, from the top; null where nobody has. */
  known: [from: number, to: number] | null;
  /** Greatest deviation of a perfect reading from the start tune, at either end and any site of the grid, %. */
  greatest_error_pct: number;
}

/** Ticks of the outer scales: every value is drawn, the labelled ones with their figures; the ends are the scale's. */
export interface NomogramGrid {
  elevations_m: readonly ScaleValue[];
  temperatures_C: readonly ScaleValue[];
}

export interface ScaleValue {
  value: number;
  labelled: boolean;
}

/** In any unit of length; the gaps are those of the pump rates. */
export interface NomogramSize extends TickGaps {
  width: number;
  /** Length of every scale. */
  height: number;
}

/** Sites at which the drawing is compared with the start tune, along each scale. */
const COMPARED = 9;

/**
 * The drawing for one heater, from its own tunes where it has any.
 * @throws RangeError when a scale has no extent, or the fit's slope is not positive
 */
export function nomogram(
  fit: PublishedFit,
  heater: CardHeater,
  grid: NomogramGrid,
  size: NomogramSize,
): Nomogram {
  const frame = frameOf(spanOf("elevations_m", grid), spanOf("temperatures_C", grid), size);
  const [low, high] = ENDS.map((end) => lineOf(fit, heater, end, frame)) as [RateLine, RateLine];
  const groups = ENDS.map((end) => groupOf(fit, heater.heat_kW, end));
  const ticks = (line: RateLine) => {
    const span = [rateAt(line, frame, 0), rateAt(line, frame, size.height)] as const;
    return rateTicks(span, (rate) => yOfRate(line, frame, rate), size);
  };
  return {
    x: { elevation: 0, rate: frame.rate_x, temperature: size.width },
    elevation: grid.elevations_m.map(({ value, labelled }) => ({
      value,
      labelled,
      y: frame.yOfElevation(value),
    })),
    temperature: grid.temperatures_C.map(({ value, labelled }) => ({
      value,
      labelled,
      y: frame.yOfTemperature(value),
    })),
    low: ticks(low),
    high: ticks(high),
    known: knownPart(groups, frame, size.height),
    greatest_error_pct: greatestError(fit, heater, frame, { low, high }),
  };
}

/** A line on which ln density falls evenly from bottom to top, and the two outer scales that lead to it. */
interface Frame {
  rate_x: number;
  elevations_m: Span;
  temperatures_C: Span;
  yOfElevation: (elevation_m: number) => number;
  yOfTemperature: (temperature_C: number) => number;
  yOfLnDensity: (lnDensity: number) => number;
  lnDensityAt: (y: number) => number;
  /** Where a straight-edge over both outer scales crosses the middle line, from the top. */
  crossing: (elevation_m: number, temperature_C: number) => number;
}

type Span = readonly [from: number, to: number];

/**
 * ln density is taken as f(elevation) + g(temperature): each the mean of the true one along both edges of the other
 * scale, which shares out what moisture makes of the rest evenly among the four corners.
 */
function frameOf(elevations_m: Span, temperatures_C: Span, size: NomogramSize): Frame {
  const { width, height } = size;
  const f = (z: number) => mean(temperatures_C.map((t) => lnDensity(z, t)));
  const centre = mean(elevations_m.map(f));
  const g = (t: number) => mean(elevations_m.map((z) => lnDensity(z, t))) - centre;
  const [densestF, thinnestF] = elevations_m.map(f) as [number, number];
  const [densestG, thinnestG] = temperatures_C.map(g) as [number, number];
  const reachF = densestF - thinnestF;
  const reachG = densestG - thinnestG;
  const thinnest = thinnestF + thinnestG;
  const reach = reachF + reachG;
  // All three scales are as long as the drawing is high; the middle one lies nearer to the one that moves it more.
  const share = reachG / reach;
  const yOfElevation = (z: number) => (height * (f(z) - thinnestF)) / reachF;
  const yOfTemperature = (t: number) => (height * (g(t) - thinnestG)) / reachG;
  return {
    rate_x: width * share,
    elevations_m,
    temperatures_C,
    yOfElevation,
    yOfTemperature,
    yOfLnDensity: (value) => (height * (value - thinnest)) / reach,
    lnDensityAt: (y) => thinnest + (reach * y) / height,
    crossing: (z, t) => yOfElevation(z) * (1 - share) + yOfTemperature(t) * share,
  };
}

/** Of moist air at standard pressure and the humidity that is taken when none is given, 50 %. */
function lnDensity(elevation_m: number, temperature_C: number): number {
  return ln(airAt(elevation_m, { temperature_C }).density_kg_m3);
}

/** ln pump rate over ln density. */
interface RateLine {
  intercept: number;
  slope: number;
}

/** Through the start tunes of the scales' two outer corners: for the average heater all others lie on it, for one with tunes of its own very nearly. */
function lineOf(fit: PublishedFit, heater: CardHeater, end: End, frame: Frame): RateLine {
  const [lowest, highest] = frame.elevations_m;
  const [coldest, warmest] = frame.temperatures_C;
  const corners = [tuneAt(fit, heater, lowest, coldest), tuneAt(fit, heater, highest, warmest)];
  const [dense, thin] = corners.map((tune) => ({
    x: ln(tune.air.density_kg_m3),
    y: ln(tune[end].pump_Hz_exact),
  })) as [Point, Point];
  const slope = (dense.y - thin.y) / (dense.x - thin.x);
  if (!(slope > 0)) throw new RangeError(`slope must be positive, not ${slope}.`);
  return { intercept: dense.y - slope * dense.x, slope };
}

interface Point {
  x: number;
  y: number;
}

function rateAt({ intercept, slope }: RateLine, frame: Frame, y: number): number {
  return exp(intercept + slope * frame.lnDensityAt(y));
}

function yOfRate({ intercept, slope }: RateLine, frame: Frame, pump_Hz: number): number {
  return frame.yOfLnDensity((ln(pump_Hz) - intercept) / slope);
}

/** Air in which both ends have been tuned, as the start tune counts it. */
function knownPart(groups: GroupFit[], frame: Frame, height: number): Nomogram["known"] {
  const ranges = groups.map(({ density_range }) => density_range);
  if (ranges.includes(null)) return null;
  const thinnest = Math.max(...ranges.map((range) => (range as [number, number])[0]));
  const densest = Math.min(...ranges.map((range) => (range as [number, number])[1]));
  const from = Math.max(0, frame.yOfLnDensity(ln(thinnest)));
  const to = Math.min(height, frame.yOfLnDensity(ln(densest)));
  return from < to ? [from, to] : null;
}

function greatestError(
  fit: PublishedFit,
  heater: CardHeater,
  frame: Frame,
  lines: Record<End, RateLine>,
): number {
  const errors = evenly(frame.elevations_m).flatMap((z) =>
    evenly(frame.temperatures_C).flatMap((t) => {
      const tune = tuneAt(fit, heater, z, t);
      return ENDS.map((end) => {
        const read = rateAt(lines[end], frame, frame.crossing(z, t));
        return Math.abs(read / tune[end].pump_Hz_exact - 1);
      });
    }),
  );
  return 100 * Math.max(...errors);
}

function evenly([from, to]: Span): number[] {
  return Array.from({ length: COMPARED }, (_, i) => from + ((to - from) * i) / (COMPARED - 1));
}

function spanOf(name: keyof NomogramGrid & keyof CardGrid, grid: NomogramGrid): Span {
  const values = grid[name].map(({ value }) => value);
  const span = [Math.min(...values), Math.max(...values)] as const;
  if (!(span[0] < span[1])) throw new RangeError(`${name} must hold at least two values.`);
  return span;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
