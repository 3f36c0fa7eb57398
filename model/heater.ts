/**
 * What heaters of a heat class are usually like. All figures here are common practice, no source,
 * or our own working values: starting points for people, never limits of a particular heater.
 */

/** Fan speeds the atlas assumes when none are given, rpm, and where a fan usually ends. */
export interface UsualFans {
  low_fan_rpm: number;
  high_fan_rpm: number;
  fan_limit_rpm: number;
}

/** Heat classes offered by name, kW (nominal full heat output). Others are accepted as numbers. */
export const HEAT_CLASSES_kW = [2, 3, 4, 5, 8] as const;

/** The class most people mean when they do not know: shown first. */
export const USUAL_CLASS_kW = 5;

/** Usual fan speeds of a heat class, rpm (common practice, no source; our own rounding). */
export function usualFans(heat_kW: number): UsualFans {
  return heat_kW < 4
    ? { low_fan_rpm: 1700, high_fan_rpm: 4600, fan_limit_rpm: 5000 }
    : { low_fan_rpm: 1650, high_fan_rpm: 4400, fan_limit_rpm: 5000 };
}

/** What a controller can usually be set to: 0.1 Hz, 10 rpm (common practice, no source). */
export const PUMP_STEP_Hz = 0.1;
export const FAN_STEP_rpm = 10;
