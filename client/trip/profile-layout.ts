import type { MixtureWindow } from "../../model/trip/window.ts";
import type { Shifts } from "./shown-shift.ts";

/** Where things stand in the drawing of a trip, in its own units: a column a stop, elevation above, shift below. */
export const COLUMN = 103;
const GROUND_TOP = 30;
const GROUND_BOTTOM = 140;
export const SHIFT_ZERO = 240;
const SHIFT_REACH = 68;
const HEIGHT = 330;
const LEAST_COLUMNS = 3;

/** A flat trip must not look like mountains, m. */
const LEAST_RANGE_m = 300;

export interface Layout {
  width: number;
  height: number;
  /** Outline of the ground. */
  ground: string;
  points: { x: number; y: number }[];
  shiftY: (shift_pct: number) => number;
  /** The window's edges, rich and lean. */
  windowY: [number, number];
}

export function layOut(
  elevations_m: readonly number[],
  shifts: Shifts,
  { rich_pct, lean_pct }: MixtureWindow,
): Layout {
  const columns = Math.max(LEAST_COLUMNS, elevations_m.length);
  const width = columns * COLUMN;
  const lowest = Math.min(0, ...elevations_m);
  const range = Math.max(LEAST_RANGE_m, Math.max(...elevations_m) - lowest);
  const points = elevations_m.map((elevation, i) => ({
    x: ((i + 0.5) * width) / elevations_m.length,
    y: GROUND_BOTTOM - ((elevation - lowest) / range) * (GROUND_BOTTOM - GROUND_TOP),
  }));
  const most = Math.max(5, rich_pct, lean_pct, ...[...shifts.low, ...shifts.high].map(Math.abs));
  const shiftY = (shift_pct: number) => SHIFT_ZERO - (shift_pct / most) * SHIFT_REACH;
  const line = points.map(({ x, y }) => `L${x} ${y}`).join("");
  const [first, last] = [points[0], points.at(-1)];
  return {
    width,
    height: HEIGHT,
    ground: `M0 ${GROUND_BOTTOM + 8}L0 ${first?.y}${line}L${width} ${last?.y}L${width} ${GROUND_BOTTOM + 8}Z`,
    points,
    shiftY,
    windowY: [shiftY(rich_pct), shiftY(-lean_pct)],
  };
}
