import { ln } from "../ln-exp.ts";
import { exactTerm } from "./exact-sum.ts";
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
/** Rows of one contributor that are sorted by insertion. */
const FEW = 12;
/** The steps of one contributor count at most as those of so many rows. */
const STEPS_AS_OF_ROWS = 4;

/** Where rows lie on the grid's coordinates, and the variances they bring along in ln of pump rate per fan speed, each at its slot. */
export interface PlacedRows {
  readonly x: Float64Array;
  readonly r: Float64Array;
  /** To seven digits: no doubt is known better. */
  readonly air: Float32Array;
  readonly co: Float32Array;
}

/**
 * Puts down at a slot where a row lies and what doubt it brings.
 * From the air: an error of x moves the row along the line, so the variance of ln density comes in times the slope
 * squared (errors in variables). From the CO: about its minimum CO rises with the square of the distance from it, so
 * a final reading of C against the usual 30 ppm says the tune may lie √(C/30 − 1) × 10 % from the heater's best.
 */
export function place(row: FitRow, rows: PlacedRows, slot: number): void {
  const { end, density_kg_m3, pump_Hz, fan_rpm, ln_density_sd = 0, co_ppm = 0 } = row;
  const x = xOf(density_kg_m3);
  const above = Math.max(0, co_ppm / USUAL_CO_ppm - 1);
  rows.x[slot] = x;
  rows.r[slot] = aboveReference(end, x, ln((pump_Hz * 1000) / fan_rpm));
  rows.air[slot] = (REFERENCE_SLOPE * ln_density_sd) ** 2;
  rows.co[slot] = Math.min(CO_VARIANCE_MOST, DOUBLES_AT ** 2 * above);
}

/** Votes that doubt about the air, and the CO, have cost. */
export interface Lost {
  air: number;
  co: number;
}

/**
 * Counts what one contributor says of one heat class and end: its rows share its vote, each worth less by the doubt
 * it brings; and its steps, weighted so that together they know as much of the slope as the rows' own scatter in x.
 * @param slots its rows' slots; put in order of x
 * @param lost votes lost to doubt are added here
 */
export function speak(
  tally: Tally,
  fold: number,
  rows: PlacedRows,
  slots: number[],
  vote: number,
  sign: Sign,
  lost: Lost,
): void {
  const share = vote / slots.length;
  let lostToAir = 0;
  let lostToCo = 0;
  if (slots.length > 1) sort(slots, rows);
  for (let i = 0; i < slots.length; i++) {
    const slot = slots[i] as number;
    const air = rows.air[slot] as number;
    const co = rows.co[slot] as number;
    const total = BETWEEN + air + co;
    const r = within(rows.r[slot] as number, R_MOST);
    tally.countRow(fold, rows.x[slot] as number, r, (share * BETWEEN) / total, sign);
    lostToAir += (share * air) / total;
    lostToCo += (share * co) / total;
  }
  lost.air += sign * exactTerm(lostToAir);
  lost.co += sign * exactTerm(lostToCo);
  if (slots.length > 1) countSteps(tally, fold, rows, evenly(slots), vote, sign);
}

function countSteps(
  tally: Tally,
  fold: number,
  { x, r, air, co }: PlacedRows,
  slots: readonly number[],
  vote: number,
  sign: Sign,
): void {
  const n = slots.length;
  const share = (vote / n) * Math.min(1, (STEPS_AS_OF_ROWS - 1) / (n - 1));
  for (let i = 0; i < n; i++) {
    const from = slots[i] as number;
    for (let j = i + 1; j < n; j++) {
      const to = slots[j] as number;
      const doubt =
        (air[from] as number) + (co[from] as number) + (air[to] as number) + (co[to] as number);
      const weight = (share * 2 * WITHIN) / (2 * WITHIN + doubt);
      const dx = (x[to] as number) - (x[from] as number);
      const dr = (r[to] as number) - (r[from] as number);
      tally.countStep(fold, dx, within(dr, STEP_MOST), weight, sign);
    }
  }
}

/** In order of x, ties by all else that counts, so that the order of rows means nothing. */
function sort(slots: number[], rows: PlacedRows): void {
  if (slots.length > FEW) {
    slots.sort((a, b) => order(rows, a, b));
    return;
  }
  // By insertion: nearly all contributors have a few rows, and there may be a million contributors.
  for (let i = 1; i < slots.length; i++) {
    const slot = slots[i] as number;
    let at = i;
    for (; at > 0 && order(rows, slots[at - 1] as number, slot) > 0; at--) {
      slots[at] = slots[at - 1] as number;
    }
    slots[at] = slot;
  }
}

function order(rows: PlacedRows, a: number, b: number): number {
  return (rows.x[a] as number) - (rows.x[b] as number) || orderAtOneX(rows, a, b);
}

function orderAtOneX({ r, air, co }: PlacedRows, a: number, b: number): number {
  return (
    (r[a] as number) - (r[b] as number) ||
    (air[a] as number) - (air[b] as number) ||
    (co[a] as number) - (co[b] as number)
  );
}

/** At most so many of a sorted list, first and last among them. */
function evenly(list: readonly number[]): readonly number[] {
  if (list.length <= STEPPING_ROWS) return list;
  const gap = (list.length - 1) / (STEPPING_ROWS - 1);
  return Array.from({ length: STEPPING_ROWS }, (_, k) => list[Math.round(k * gap)] as number);
}
