import { type CoReading, kindOfReading } from "../co-reading.ts";
import type { End } from "../end.ts";
import type { Band } from "../fit/bands.ts";
import { PUMP_STEP_Hz } from "../heater.ts";
import { requireFinite, requirePositive } from "../numerics/finite.ts";

/** The meter at the exhaust. What it shows is diluted by an unknown amount: only readings of one sweep compare. */
export interface SweepMeter {
  /** Seconds to most of a change: a guess, used for waiting times alone. */
  lag_s?: number | undefined;
  /** Smallest difference it shows, ppm. */
  resolution_ppm?: number | undefined;
  /** It shows nothing below this, ppm. Many room alarms: 30. */
  floor_ppm?: number | undefined;
  /** It shows nothing above this, ppm. */
  ceiling_ppm?: number | undefined;
}

/** What a sweep starts from, at one end with the fan fixed. */
export interface SweepSetup {
  end: End;
  /** What the pump is set to now: the heater burns there. */
  present_Hz: number;
  /** The pump rate of the starting settings: where to look first. */
  suggested_Hz: number;
  /** The starting settings' new-heater bands: where the minimum may lie. */
  bands_Hz: readonly Band[];
  /** What the controller can be set to. */
  step_Hz?: number | undefined;
  meter?: SweepMeter | undefined;
  /** Where the flame went out at this end before this sweep began. */
  flame_outs_Hz?: readonly number[] | undefined;
  /** Attempts to relight made so far, at this end and before it. */
  relights_used?: number | undefined;
}

/** What was read, or that the flame went out. In order of time. */
export interface SweepReading extends CoReading {
  pump_Hz: number;
  time_s: number;
  /** When the pump was set to this rate; default: at the reading before. */
  set_s?: number | undefined;
  flame_out?: boolean | undefined;
  /** Whoever reads has watched the figure stand still for half a minute. */
  still?: boolean | undefined;
  /** The pump was set here as the rate to stay at. */
  confirming?: boolean | undefined;
}

/** A setup with nothing left open. */
export interface Sweep {
  end: End;
  present_Hz: number;
  suggested_Hz: number;
  bands_Hz: readonly Band[];
  step_Hz: number;
  flame_outs_Hz: readonly number[];
  relights_used: number;
  meter: Required<{ [K in keyof SweepMeter]: number }>;
}

/** Our own working values for a cheap meter. */
const METER = { lag_s: 25, resolution_ppm: 1, floor_ppm: 0, ceiling_ppm: 1000 };

/** @throws RangeError naming the field that is no number, not positive, or a band upside down */
export function sweepOf(setup: SweepSetup): Sweep {
  const { end, present_Hz, suggested_Hz, bands_Hz } = setup;
  const { step_Hz = PUMP_STEP_Hz, flame_outs_Hz = [], relights_used = 0 } = setup;
  const meter = meterOf(setup.meter);
  requirePositive({ present_Hz, suggested_Hz, step_Hz });
  requireFinite({ relights_used });
  for (const flame_outs of flame_outs_Hz) requirePositive({ flame_outs_Hz: flame_outs });
  for (const { level, lower, upper } of bands_Hz) {
    requirePositive({ level, lower, upper });
    if (level >= 1 || lower >= upper)
      throw new RangeError("bands_Hz must widen from lower to upper.");
  }
  return {
    end,
    present_Hz,
    suggested_Hz,
    bands_Hz,
    step_Hz,
    flame_outs_Hz,
    relights_used,
    meter,
  };
}

/**
 * A meter with nothing left open.
 * @throws RangeError naming the field that is no number, not positive, or a floor above the ceiling
 */
export function meterOf(given: SweepMeter = {}): Sweep["meter"] {
  const meter = {
    lag_s: given.lag_s ?? METER.lag_s,
    resolution_ppm: given.resolution_ppm ?? METER.resolution_ppm,
    floor_ppm: given.floor_ppm ?? METER.floor_ppm,
    ceiling_ppm: given.ceiling_ppm ?? METER.ceiling_ppm,
  };
  const { floor_ppm, ...positive } = meter;
  requirePositive(positive);
  requireFinite({ floor_ppm });
  if (floor_ppm < 0 || floor_ppm >= meter.ceiling_ppm) {
    throw new RangeError("floor_ppm must be from 0 to below ceiling_ppm.");
  }
  return meter;
}

/** @throws RangeError naming the reading that is no reading or comes before the one before it */
export function requireReadings(readings: readonly SweepReading[]): void {
  let before = Number.NEGATIVE_INFINITY;
  for (const [i, reading] of readings.entries()) {
    const { pump_Hz, time_s, set_s, co_ppm, co_below_ppm, co_above_ppm, flame_out } = reading;
    requirePositive({ [`readings[${i}].pump_Hz`]: pump_Hz });
    requireFinite({
      [`readings[${i}].time_s`]: time_s,
      [`readings[${i}].set_s`]: set_s,
      [`readings[${i}].co_ppm`]: co_ppm,
      [`readings[${i}].co_below_ppm`]: co_below_ppm,
      [`readings[${i}].co_above_ppm`]: co_above_ppm,
    });
    if (time_s < before)
      throw new RangeError(`readings[${i}].time_s is before the reading before.`);
    if ((co_ppm ?? 0) < 0) throw new RangeError(`readings[${i}].co_ppm is below 0.`);
    if (!kindOfReading(reading) && !flame_out) {
      throw new RangeError(
        `readings[${i}] says neither co_ppm, co_below_ppm, co_above_ppm nor flame_out.`,
      );
    }
    before = time_s;
  }
}
