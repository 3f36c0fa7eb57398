import { ENDS, type End } from "../end.ts";
import type { PublishedFit } from "../fit/group.ts";
import { SETTINGS } from "../fit/settings.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import type { EndSetting } from "../mixture.ts";
import { isOnStep } from "../rounding.ts";

/**
 * What is usual for pump rates and fan speeds, and how far outside a row lies: its oddness.
 * Every figure here is common practice without a source, or our own working value.
 */

export type Settings = Record<End, EndSetting>;
export type Range = readonly [number, number];

/** What is usual at each end in this air; mixture in Hz per 1,000 rpm. */
export interface Usual {
  pump_Hz: Record<End, Range>;
  fan_rpm: Record<End, Range>;
  mixture: Record<End, Range>;
}

const PUMP_Hz: Record<End, Range> = { low: [0.8, 2.5], high: [3, 7] };
const FAN_rpm: Record<End, Range> = { low: [1200, 2400], high: [3500, 5000] };

/** Heaters, doses and people differ from the physics prior by up to 1.5 of its standard deviations: 57 % either way. */
const TOLERANCE = Math.exp(1.5 * SETTINGS.level_sd);

/** How mixture follows density: from crews that never re-tune (0) to those that cut more than the density asks (1.2). */
const SLOPES = [0, 1.2] as const;

/** One unit of oddness: 10 % outside the usual range, on a logarithmic scale. */
const UNIT = 0.1;
const OUT_OF_ORDER = 100;

/**
 * What to expect of a heat class in this air. A fit can only widen it: many heaters may teach that something else is
 * usual too, never shut a heater out.
 */
export function usualIn(density_ratio: number, heat_kW: number, fit: PublishedFit | null): Usual {
  const shifts = SLOPES.map((slope) => density_ratio ** slope);
  const mixture = (end: End): Range => {
    const expected = Math.exp(end === "low" ? SETTINGS.level_low : SETTINGS.level_high);
    const group = fit?.groups.find((g) => g.heat_kW === heat_kW && g.end === end);
    const seen = group && group.contributors > 0 ? Math.exp(group.intercept) : expected;
    return [
      (Math.min(expected, seen) / TOLERANCE) * Math.min(...shifts),
      Math.max(expected, seen) * TOLERANCE * Math.max(...shifts),
    ];
  };
  return {
    pump_Hz: PUMP_Hz,
    fan_rpm: { low: lowFanIn(density_ratio), high: FAN_rpm.high },
    mixture: { low: mixture("low"), high: mixture("high") },
  };
}

/** Who keeps the heat in thin air raises the fan by 1/ratio; the high end is at the fan's limit already. */
function lowFanIn(density_ratio: number): Range {
  const [slowest, fastest] = FAN_rpm.low;
  return [slowest * Math.min(1, 1 / density_ratio), fastest * Math.max(1, 1 / density_ratio)];
}

/** Units by which a value lies outside a range: plus above, minus below, 0 inside. */
export function unitsOutside(value: number, [lower, upper]: Range): number {
  if (value > upper) return Math.log(value / upper) / UNIT;
  if (value < lower) return Math.log(value / lower) / UNIT;
  return 0;
}

function perKrpm({ pump_Hz, fan_rpm }: EndSetting): number {
  return pump_Hz / (fan_rpm / 1000);
}

/** Units by which a setting's mixture lies outside a range, its pump rate known no finer than it was set. */
export function mixtureOutside({ pump_Hz, fan_rpm }: EndSetting, range: Range): number {
  const half = resolution(pump_Hz) / 2;
  const outside = (Hz: number) => unitsOutside(perKrpm({ pump_Hz: Hz, fan_rpm }), range);
  return (
    Math.max(0, outside(Math.max(pump_Hz - half, pump_Hz / 2))) +
    Math.min(0, outside(pump_Hz + half))
  );
}

/** Hz: a rate in whole steps is as fine as the controller, any other was read finer than it. */
function resolution(pump_Hz: number): number {
  return isOnStep(pump_Hz, PUMP_STEP_Hz) ? PUMP_STEP_Hz : PUMP_STEP_Hz / 10;
}

/** Squared units outside what is usual, over both ends' fan speeds and mixtures; ends out of order add 100 each. */
export function oddness(settings: Settings, usual: Usual): number {
  let sum = 0;
  for (const end of ENDS) {
    sum += unitsOutside(settings[end].fan_rpm, usual.fan_rpm[end]) ** 2;
    sum += mixtureOutside(settings[end], usual.mixture[end]) ** 2;
  }
  if (settings.low.pump_Hz >= settings.high.pump_Hz) sum += OUT_OF_ORDER;
  if (settings.low.fan_rpm >= settings.high.fan_rpm) sum += OUT_OF_ORDER;
  return sum;
}

/** Distance from the middle of what is usual: decides only between repairs that leave nothing odd. */
export function offCentre(settings: Settings, usual: Usual): number {
  const off = (value: number, [lower, upper]: Range) => Math.log(value / Math.sqrt(lower * upper));
  return ENDS.reduce(
    (sum, end) =>
      sum +
      off(settings[end].fan_rpm, usual.fan_rpm[end]) ** 2 +
      off(perKrpm(settings[end]), usual.mixture[end]) ** 2,
    0,
  );
}
