import { ln } from "../ln-exp.ts";
import { aboveReference, R_MOST, REFERENCE_SLOPE, STEP_MOST, within, xOf } from "./grid.ts";
import type { FitRow } from "./group.ts";
import type { Sign, Tally } from "./tally.ts";

/** Variance between heaters, and within one, against which a row's own doubt is weighed. */
const BETWEEN = 0.1 ** 2;
const WITHIN = 0.05 ** 2;

/** Final CO, ppm, up to which a tune counts in full: "below 30 is usual" (common practice, no source). */
export const USUAL_CO_ppm = 30;
/** Mixture error, in ln, at which CO is twice the usual. */
export const DOUBLES_AT = 0.1;
const CO_VARIANCE_MOST = 0.3 ** 2;

/** Rows of one contributor of which steps are made; more add nothing that can be told apart. */
const STEPPING_ROWS = 8;
/** The steps of one contributor count at most as those of so many rows. */
const STEPS_AS_OF_ROWS = 4;

/** A row's place on the grid's coordinates, and the variances it brings along, in ln of pump rate per fan speed. */
export interface Placed {
  x: number;
  r: number;
  air: number;
  co: number;
}

/**
 * Where a row lies and what doubt it brings.
 * From the air: an error of x moves the row along the line, so the variance of ln density comes in times the slope
 * squared (errors in variables). From the CO: about its minimum CO rises with the square of the distance from it, so
 * a final reading of C against the usual 30 ppm says the tune may lie √(C/30 − 1) × 10 % from the heater's best.
 */
export function place(row: FitRow): Placed {
  const { end, density_kg_m3, pump_Hz, fan_rpm, ln_density_sd = 0, co_ppm = 0 } = row;
  const x = xOf(density_kg_m3);
  const above = Math.max(0, co_ppm / USUAL_CO_ppm - 1);
  return {
    x,
    r: aboveReference(end, x, ln((pump_Hz * 1000) / fan_rpm)),
    air: (REFERENCE_SLOPE * ln_density_sd) ** 2,
    co: Math.min(CO_VARIANCE_MOST, DOUBLES_AT ** 2 * above),
  };
}

/** Votes that doubt about the air, and the CO, have cost. */
export interface Lost {
  air: number;
  co: number;
}

/**
 * Counts what one contributor says of one heat class and end: its rows share its vote, each worth less by the doubt
 * it brings; and its steps, weighted so that together they know as much of the slope as the rows' own scatter in x.
 * @returns votes lost to doubt
 */
export function speak(
  tally: Tally,
  fold: number,
  rows: readonly Placed[],
  vote: number,
  sign: Sign,
): Lost {
  const share = vote / rows.length;
  const lost = { air: 0, co: 0 };
  for (const { x, r, air, co } of rows) {
    const total = BETWEEN + air + co;
    tally.countRow(fold, x, within(r, R_MOST), (share * BETWEEN) / total, sign);
    lost.air += (share * air) / total;
    lost.co += (share * co) / total;
  }
  if (rows.length > 1) countSteps(tally, fold, evenly(sorted(rows)), vote, sign);
  return lost;
}

function countSteps(
  tally: Tally,
  fold: number,
  rows: readonly Placed[],
  vote: number,
  sign: Sign,
): void {
  const n = rows.length;
  const share = (vote / n) * Math.min(1, (STEPS_AS_OF_ROWS - 1) / (n - 1));
  for (let i = 0; i < n; i++) {
    const from = rows[i] as Placed;
    for (let j = i + 1; j < n; j++) {
      const to = rows[j] as Placed;
      const doubt = from.air + from.co + to.air + to.co;
      const weight = (share * 2 * WITHIN) / (2 * WITHIN + doubt);
      tally.countStep(fold, to.x - from.x, within(to.r - from.r, STEP_MOST), weight, sign);
    }
  }
}

/** In order of x, ties by all else that counts, so that the order of rows means nothing. */
function sorted(rows: readonly Placed[]): Placed[] {
  const order = (a: Placed, b: Placed) => a.x - b.x || a.r - b.r || a.air - b.air || a.co - b.co;
  const [first, second] = rows as [Placed, Placed];
  if (rows.length === 2) return order(first, second) <= 0 ? [first, second] : [second, first];
  return rows.toSorted(order);
}

/** At most so many of a sorted list, first and last among them. */
function evenly(list: Placed[]): Placed[] {
  if (list.length <= STEPPING_ROWS) return list;
  const gap = (list.length - 1) / (STEPPING_ROWS - 1);
  return Array.from({ length: STEPPING_ROWS }, (_, k) => list[Math.round(k * gap)] as Placed);
}
