import { studentFactor } from "../fit/student.ts";
import type { Sweep } from "./setup.ts";
import { type Stay, steady } from "./stays.ts";

/** Where the heater's minimum may lie, from the start tune: ln of pump rate, normal. */
export interface Belief {
  ln_centre: number;
  ln_sd: number;
}

/** With no bands at all (our own working value). */
const LN_SD_UNKNOWN = 0.15;
const WIDEST = 0.99;

export function beliefOf({ start_Hz, bands_Hz }: Sweep): Belief {
  if (bands_Hz.length === 0) return { ln_centre: Math.log(start_Hz), ln_sd: LN_SD_UNKNOWN };
  let centre = 0;
  let sd = 0;
  for (const { level, lower, upper } of bands_Hz) {
    centre += Math.log(lower * upper) / 2 / bands_Hz.length;
    sd += Math.log(upper / lower) / 2 / normalFactor(level) / bands_Hz.length;
  }
  return { ln_centre: centre, ln_sd: sd };
}

function normalFactor(level: number): number {
  return studentFactor(level, Number.POSITIVE_INFINITY);
}

/**
 * The 99 % new-heater band: as given, or the widest one drawn out by the normal distribution. Real tails
 * are wider, so drawn out it is a little narrow, which is the safe side.
 */
export function widestBand(sweep: Sweep): { lower: number; upper: number } {
  const { ln_centre, ln_sd } = beliefOf(sweep);
  const given = sweep.bands_Hz.filter(({ level }) => level >= WIDEST);
  const drawn = ln_sd * normalFactor(WIDEST);
  return {
    lower: Math.max(Math.exp(ln_centre - drawn), ...given.map(({ lower }) => lower)),
    upper: Math.exp(ln_centre + drawn),
  };
}

/** No recommendation lies outside of these. */
export interface Guards {
  lean_Hz: number;
  rich_Hz: number;
}

/** After a flame-out nothing nearer to it than this, of the rate (our own working value), or a step. */
const FLAME_OUT_MARGIN = 0.04;
/** Richer than the band only when the readings lead there, and not far (our own working value). */
const BEYOND_BAND = 1.1;

/** Guards after these stays; `spike_Hz`: the leanest rate at which CO shot up on the rich side. */
export function guardsOf(sweep: Sweep, stays: readonly Stay[], spike_Hz: number): Guards {
  const { step_Hz } = sweep;
  const band = widestBand(sweep);
  const burned = stays.filter(steady).map(({ pump_Hz }) => pump_Hz);
  const out = stays.filter(({ flame_out }) => flame_out).map(({ pump_Hz }) => pump_Hz);
  // Before anything has burned steadily, the start itself is the leanest.
  const leanest = burned.length > 0 ? Math.min(...burned) - step_Hz : sweep.start_Hz;
  const margin = (pump_Hz: number) => pump_Hz + Math.max(step_Hz, FLAME_OUT_MARGIN * pump_Hz);
  const lean = Math.max(band.lower, leanest, ...out.map(margin));
  return { lean_Hz: lean, rich_Hz: Math.min(band.upper * BEYOND_BAND, spike_Hz - step_Hz) };
}

/** Rates the controller can be set to within the guards; when they cross, the lean guard's own. */
export function ratesWithin({ step_Hz }: Sweep, { lean_Hz, rich_Hz }: Guards): number[] {
  const first = Math.ceil(lean_Hz / step_Hz - 1e-6);
  const last = Math.max(first, Math.floor(rich_Hz / step_Hz + 1e-6));
  return Array.from({ length: last - first + 1 }, (_, i) => onStep(step_Hz, first + i));
}

/** A number of steps as a rate, without the dust of binary fractions. */
export function onStep(step_Hz: number, steps: number): number {
  return Number((steps * step_Hz).toFixed(6));
}

/** Of these rates the nearest to a wanted one. */
export function nearestRate(rates: readonly number[], pump_Hz: number): number {
  return rates.reduce((a, b) => (Math.abs(b - pump_Hz) < Math.abs(a - pump_Hz) ? b : a));
}
