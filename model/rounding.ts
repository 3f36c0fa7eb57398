import { FAN_STEP_rpm, PUMP_STEP_Hz } from "./heater.ts";

/**
 * The one rule of rounding for what is set on a controller and for shifts in percent: model, API and screen all use it, so
 * that one figure reads the same wherever it stands.
 *
 * Everything is counted in whole millionths first. What differs by less is the dust of binary fractions: 0.95 and
 * 0.9500000001 are one rate, and half a step is half a step whichever way it was worked out.
 *
 * Half a step goes to the leaner side, the pump down and the fan up: towards lean there is more room than towards soot and
 * carbon monoxide. Half a percent goes away from 0: no shift is called smaller than it is.
 */
const MILLION = 1e6;

function millionths(value: number): number {
  return Math.round(value * MILLION);
}

/** Without dust: to a millionth. */
export function withoutDust(value: number): number {
  return millionths(value) / MILLION;
}

/** Whole steps that are no more than a value. @example stepsUpTo(0.3, 0.1) // 3 */
export function stepsUpTo(value: number, step: number): number {
  return Math.floor(millionths(value) / millionths(step));
}

/** Whole steps that are no less than a value. @example stepsFrom(0.31, 0.1) // 4 */
export function stepsFrom(value: number, step: number): number {
  return Math.ceil(millionths(value) / millionths(step));
}

/** Whole steps nearest to a value; half a step goes down. @example stepsNear(0.95, 0.1) // 9 */
export function stepsNear(value: number, step: number): number {
  const below = stepsUpTo(value, step);
  return 2 * (millionths(value) - below * millionths(step)) > millionths(step) ? below + 1 : below;
}

/** What so many steps are. @example onStep(3, 0.1) // 0.3 */
export function onStep(steps: number, step: number): number {
  return withoutDust(steps * step);
}

/** The nearest whole step to a value, in its unit. @example toStep(1.0666, 0.01) // 1.07 */
export function toStep(value: number, step: number): number {
  return onStep(stepsNear(value, step), step);
}

/** Whether a value lies on a step. */
export function isOnStep(value: number, step: number): boolean {
  return millionths(value) % millionths(step) === 0;
}

/** The nearest pump rate, Hz, that a controller can be set to; never none at all. @example settablePump(0.96) // 1 */
export function settablePump(pump_Hz: number, step_Hz = PUMP_STEP_Hz): number {
  return onStep(Math.max(1, stepsNear(pump_Hz, step_Hz)), step_Hz);
}

/** The nearest fan speed, rpm, that a controller can be set to. @example settableFan(1655) // 1660 */
export function settableFan(fan_rpm: number, step_rpm = FAN_STEP_rpm): number {
  return 0 - onStep(stepsNear(-fan_rpm, step_rpm), step_rpm);
}

/** A shift or a share in the whole percents it is shown and judged in. @example wholePercent(-12.5) // -13 */
export function wholePercent(pct: number): number {
  // 0 less −0 is 0: nothing is written as minus nothing.
  const size = 0 - stepsNear(-Math.abs(pct), 1);
  return pct < 0 ? 0 - size : size;
}

/** The same for how far something may be off: never less than it is. @example percentOutwards(3.2) // 4 */
export function percentOutwards(pct: number): number {
  return stepsFrom(pct, 1);
}

/** Decimals that tell one step from the next. @example decimalsOfStep(0.05) // 2 */
export function decimalsOfStep(step: number): number {
  return `${withoutDust(step)}`.split(".")[1]?.length ?? 0;
}

/** Decimals of a rate that is set or was set: the controller's, or more where the rate has more, at most three. */
export function decimalsOfRate(pump_Hz: number, step_Hz = PUMP_STEP_Hz): number {
  const least = Math.max(1, decimalsOfStep(step_Hz));
  return Math.min(Math.max(3, least), Math.max(least, decimalsOfStep(pump_Hz)));
}

/** Decimals of rates that stand beside each other: those of the finest. @example decimalsOfRates([1.06, 3.9]) // 2 */
export function decimalsOfRates(rates_Hz: readonly number[], step_Hz = PUMP_STEP_Hz): number {
  return Math.max(1, ...rates_Hz.map((pump_Hz) => decimalsOfRate(pump_Hz, step_Hz)));
}

/** Decimals of a rate that nobody sets, worked out or the edge of a band: one finer than the controller's. */
export function decimalsOfFineRate(step_Hz = PUMP_STEP_Hz): number {
  return Math.max(1, decimalsOfStep(step_Hz)) + 1;
}
