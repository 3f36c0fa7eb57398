import type { Sweep, SweepReading } from "./setup.ts";

/** What the meter showed at a look: a figure, or only that it is below the floor or above the ceiling. */
export interface Look {
  /** Time since the pump was set. */
  after_s: number;
  ppm: number;
  beyond?: "floor" | "ceiling";
  /** Seen to stand still. */
  still: boolean;
}

/** A time at one pump rate, from its setting to the next. */
export interface Stay {
  pump_Hz: number;
  /** What the meter showed when the pump was set; it moves on from there. */
  from_ppm: number;
  /** How far off that may be: above its ceiling a meter hides how high it has climbed. */
  from_sd_ppm: number;
  looks: Look[];
  flame_out: boolean;
  /** The pump was set here to confirm the choice. */
  confirming: boolean;
}

/** A flame that has burned so long at a rate is steady there (our own working value). */
export const STEADY_s = 30;

/** Readings gathered into stays: consecutive ones at the same rate belong together. */
export function staysOf(sweep: Sweep, readings: readonly SweepReading[]): Stay[] {
  const stays: Stay[] = [];
  let from = { from_ppm: 0, from_sd_ppm: 0 };
  let last_s = 0;
  let set_s = 0;
  for (const reading of readings) {
    let stay = stays.at(-1);
    if (!stay || stay.flame_out || !sameRate(sweep, stay.pump_Hz, reading.pump_Hz)) {
      set_s = Math.min(reading.set_s ?? last_s, reading.time_s);
      const { pump_Hz, confirming = false } = reading;
      stay = { pump_Hz, ...from, looks: [], flame_out: false, confirming };
      stays.push(stay);
    }
    last_s = reading.time_s;
    if (reading.flame_out) {
      stay.flame_out = true;
      continue;
    }
    const look = lookOf(sweep, reading, reading.time_s - set_s);
    stay.looks.push(look);
    from = startOf(look);
  }
  return stays;
}

/** Above the ceiling half as much again, give or take (our own working value). */
const HIDDEN = 0.5;

function startOf({ ppm, beyond }: Look) {
  if (beyond === "floor") return { from_ppm: ppm / 2, from_sd_ppm: 0 };
  if (beyond === undefined) return { from_ppm: ppm, from_sd_ppm: 0 };
  return { from_ppm: ppm * (1 + HIDDEN), from_sd_ppm: ppm * HIDDEN };
}

function lookOf({ meter }: Sweep, reading: SweepReading, after_s: number): Look {
  const { co_ppm, co_below_ppm, at_ceiling, still = false } = reading;
  if (at_ceiling || (co_ppm !== undefined && co_ppm >= meter.ceiling_ppm)) {
    return { after_s, still, ppm: meter.ceiling_ppm, beyond: "ceiling" };
  }
  if (co_ppm === undefined || co_ppm < meter.floor_ppm) {
    return { after_s, still, ppm: Math.max(co_below_ppm ?? meter.floor_ppm, 1), beyond: "floor" };
  }
  return { after_s, still, ppm: co_ppm };
}

/** Whether the flame was seen to burn on at this stay. */
export function steady({ flame_out, looks }: Stay): boolean {
  return !flame_out && (looks.at(-1)?.after_s ?? 0) >= STEADY_s;
}

export function sameRate({ step_Hz }: Sweep, a_Hz: number, b_Hz: number): boolean {
  return Math.abs(a_Hz - b_Hz) < step_Hz / 4;
}
