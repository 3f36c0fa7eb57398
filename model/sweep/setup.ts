import { requireFinite, requirePositive } from "../finite.ts";
import type { Band } from "../fit/bands.ts";
import type { End } from "../fit/group.ts";
import { PUMP_STEP_Hz } from "../heater.ts";

/** The meter at the exhaust. What it shows is diluted by an unknown amount: only readings of one sweep compare. */
export interface SweepMeter {
  /** Time constant of its first-order lag, s: a guess, corrected by the readings as they settle. */
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
  /** The start tune's pump rate. */
  start_Hz: number;
  /** The start tune's new-heater bands: where the minimum may lie. */
  bands_Hz: readonly Band[];
  /** What the controller can be set to. */
  step_Hz?: number | undefined;
  meter?: SweepMeter | undefined;
  /** A reading above this while going richer sends back at once, ppm. */
  spike_ppm?: number | undefined;
}

/** What was read, or that the flame went out. In order of time. */
export interface SweepReading {
  pump_Hz: number;
  time_s: number;
  /** When the pump was set to this rate; default: at the reading before. */
  set_s?: number | undefined;
  co_ppm?: number | undefined;
  /** The meter showed nothing: below this. */
  co_below_ppm?: number | undefined;
  at_ceiling?: boolean | undefined;
  flame_out?: boolean | undefined;
  /** Whoever reads has seen the figure stand still: settled, whatever the lag is thought to be. */
  still?: boolean | undefined;
  /** Taken at the chosen pump rate, to confirm it. */
  confirming?: boolean | undefined;
}

/** A setup with nothing left open. */
export interface Sweep {
  end: End;
  start_Hz: number;
  bands_Hz: readonly Band[];
  step_Hz: number;
  spike_ppm: number;
  meter: Required<{ [K in keyof SweepMeter]: number }>;
}

/** Our own working values for a cheap meter. */
const METER = { lag_s: 25, resolution_ppm: 1, floor_ppm: 0, ceiling_ppm: 1000 };
/** Above this nothing is learnt that is worth the soot (our own working value). */
const SPIKE_ppm = 400;

/** @throws RangeError naming the field that is no number, not positive, or a band upside down */
export function sweepOf(setup: SweepSetup): Sweep {
  const { end, start_Hz, bands_Hz, step_Hz = PUMP_STEP_Hz, spike_ppm = SPIKE_ppm } = setup;
  const given = setup.meter ?? {};
  const meter = {
    lag_s: given.lag_s ?? METER.lag_s,
    resolution_ppm: given.resolution_ppm ?? METER.resolution_ppm,
    floor_ppm: given.floor_ppm ?? METER.floor_ppm,
    ceiling_ppm: given.ceiling_ppm ?? METER.ceiling_ppm,
  };
  const { floor_ppm, ...positive } = meter;
  requirePositive({ start_Hz, step_Hz, spike_ppm, ...positive });
  requireFinite({ floor_ppm });
  if (floor_ppm < 0 || floor_ppm >= meter.ceiling_ppm) {
    throw new RangeError("floor_ppm must be from 0 to below ceiling_ppm.");
  }
  for (const { level, lower, upper } of bands_Hz) {
    requirePositive({ level, lower, upper });
    if (level >= 1 || lower >= upper)
      throw new RangeError("bands_Hz must widen from lower to upper.");
  }
  return { end, start_Hz, bands_Hz, step_Hz, spike_ppm, meter };
}

/** @throws RangeError naming the reading that is no reading or comes before the one before it */
export function requireReadings(readings: readonly SweepReading[]): void {
  let before = Number.NEGATIVE_INFINITY;
  for (const [i, reading] of readings.entries()) {
    const { pump_Hz, time_s, set_s, co_ppm, co_below_ppm, at_ceiling, flame_out } = reading;
    requirePositive({ [`readings[${i}].pump_Hz`]: pump_Hz });
    requireFinite({
      [`readings[${i}].time_s`]: time_s,
      [`readings[${i}].set_s`]: set_s,
      [`readings[${i}].co_ppm`]: co_ppm,
      [`readings[${i}].co_below_ppm`]: co_below_ppm,
    });
    if (time_s < before)
      throw new RangeError(`readings[${i}].time_s is before the reading before.`);
    if ((co_ppm ?? 0) < 0) throw new RangeError(`readings[${i}].co_ppm is below 0.`);
    if (co_ppm === undefined && co_below_ppm === undefined && !at_ceiling && !flame_out) {
      throw new RangeError(
        `readings[${i}] says neither co_ppm, co_below_ppm, at_ceiling nor flame_out.`,
      );
    }
    before = time_s;
  }
}
