import { noise_ppm } from "./noise.ts";
import type { Sweep, SweepReading } from "./setup.ts";

/** What the meter showed once: a figure, or only that it is below the floor or above the ceiling. */
interface Look {
  /** Time since the pump was set. */
  after_s: number;
  ppm: number;
  beyond?: "floor" | "ceiling";
  /** Watched to stand still. */
  still: boolean;
}

/** What the meter settled at with the pump at a rate. */
export interface Level {
  pump_Hz: number;
  /** The meter's end where the reading is beyond it. */
  ppm: number;
  sd_ppm: number;
  beyond?: "floor" | "ceiling";
  /** At the end of its scale since before the pump was set here: it may only not have come down yet. */
  stuck?: boolean;
}

/** A time at one pump rate, from its setting to the next. */
export interface Stay {
  pump_Hz: number;
  looks: Look[];
  flame_out: boolean;
  /** The pump was set here as the rate to stay at. */
  confirming: boolean;
  /** Missing until the figure has stood still. */
  level?: Level;
  /** CO shot up here: no need to wait until it stands still. */
  spike: boolean;
}

/** A flame that has burned so long at a rate is steady there (our own working value). */
export const STEADY_s = 30;
/** A first-order meter has 5 % of a change left after three time constants, and 22 % of the rest after one and a half. */
const FIRST_LOOK = 3;
const NEXT_LOOK = 1.5;
/** Two looks agree within so many standard deviations of one. */
const AGREE = 2;
/** After so many looks a figure that will not stand still is taken as it is, with its own spread. */
export const LOOKS_MOST = 4;
/** A figure so high that shot up to twice the one before, ppm (our own working values). */
const SPIKE_ppm = 400;
const SPIKE_RISE = 2;

/** Readings gathered into stays: consecutive ones at the same rate belong together. */
export function staysOf(sweep: Sweep, readings: readonly SweepReading[]): Stay[] {
  const stays: Stay[] = [];
  let last_s = 0;
  let set_s = 0;
  for (const reading of readings) {
    let stay = stays.at(-1);
    if (!stay || stay.flame_out || !sameRate(stay.pump_Hz, reading.pump_Hz)) {
      set_s = Math.min(reading.set_s ?? last_s, reading.time_s);
      const { confirming = false } = reading;
      // A rate come back to is the same rate, whatever its last binary digits.
      const known = stays.find((one) => sameRate(one.pump_Hz, reading.pump_Hz));
      const { pump_Hz } = known ?? reading;
      stay = { pump_Hz, looks: [], flame_out: false, confirming, spike: false };
      stays.push(stay);
    }
    last_s = reading.time_s;
    if (reading.flame_out) stay.flame_out = true;
    else stay.looks.push(lookOf(sweep, reading, reading.time_s - set_s));
  }
  const done: Stay[] = [];
  for (const stay of stays) done.push(settled(sweep, stay, done));
  return done;
}

function lookOf({ meter }: Sweep, reading: SweepReading, after_s: number): Look {
  const { co_ppm, co_below_ppm, co_above_ppm, still = false } = reading;
  if (co_above_ppm !== undefined || (co_ppm !== undefined && co_ppm >= meter.ceiling_ppm)) {
    return { after_s, still, ppm: meter.ceiling_ppm, beyond: "ceiling" };
  }
  if (co_ppm === undefined || co_ppm < meter.floor_ppm) {
    return { after_s, still, ppm: Math.max(co_below_ppm ?? meter.floor_ppm, 1), beyond: "floor" };
  }
  return { after_s, still, ppm: co_ppm };
}

/** A stay with the level that its looks amount to, if they do. */
function settled(sweep: Sweep, stay: Stay, done: readonly Stay[]): Stay {
  const last = stay.looks.at(-1);
  const before = done.at(-1);
  if (stay.flame_out || !last) return stay;
  const levelAt = (ppm: number, sd_ppm = noise_ppm(sweep, ppm)): Level => ({
    pump_Hz: stay.pump_Hz,
    ppm,
    sd_ppm,
    ...(last.beyond && { beyond: last.beyond }),
  });
  // A figure that moves is known no better than it moves.
  const spreadOver = (other: Look) => {
    const ppm = last.beyond ? last.ppm : (other.ppm + last.ppm) / 2;
    return levelAt(ppm, Math.max(noise_ppm(sweep, ppm), Math.abs(last.ppm - other.ppm)));
  };
  // The meter is still climbing: what it shows is the least that it will settle at.
  if (isSpike(sweep, last, before)) return { ...stay, spike: true, level: levelAt(last.ppm) };
  if (last.after_s < STEADY_s) return stay;
  if (isStuck(stay, before)) {
    // At the end of its scale it stands still while it still comes down from what it does not show.
    const isOff = done.every(({ level }) => !level || level.beyond === "ceiling");
    return isOff && stay.looks.length > 1
      ? { ...stay, level: { ...levelAt(last.ppm), stuck: true } }
      : stay;
  }
  // Down from beyond its scale a slow meter seems to stand still: then it takes two looks.
  if (last.still && !wasOff(before)) return { ...stay, level: levelAt(last.ppm) };
  const earlier = stay.looks.findLast(({ after_s }) => last.after_s - after_s >= apart_s(sweep));
  if (earlier && agree(sweep, earlier, last)) {
    return { ...stay, level: spreadOver(earlier) };
  }
  if (stay.looks.length < LOOKS_MOST) return stay;
  return { ...stay, level: spreadOver(stay.looks.at(-2) as Look) };
}

function isStuck({ looks }: Stay, before: Stay | undefined): boolean {
  const isOff = looks.every(({ beyond }) => beyond === "ceiling");
  return wasOff(before) && isOff && looks.length < LOOKS_MOST;
}

function wasOff(before: Stay | undefined): boolean {
  return before?.looks.at(-1)?.beyond === "ceiling";
}

function isSpike({ meter }: Sweep, last: Look, before: Stay | undefined): boolean {
  const from = before?.level;
  if (!from || from.beyond === "ceiling") return false;
  return last.ppm >= Math.min(SPIKE_ppm, meter.ceiling_ppm) && last.ppm >= SPIKE_RISE * from.ppm;
}

function agree(sweep: Sweep, a: Look, b: Look): boolean {
  if (a.beyond || b.beyond) return a.beyond === b.beyond;
  return Math.abs(a.ppm - b.ppm) <= AGREE * noise_ppm(sweep, Math.max(a.ppm, b.ppm));
}

/** Looks nearer to each other than this say nothing of whether the figure stands still. */
function apart_s({ meter }: Sweep): number {
  return Math.max(20, meter.lag_s);
}

/** How long to wait after setting the pump before the first look, s. */
export function firstLook_s({ meter }: Sweep): number {
  return counted(Math.max(STEADY_s, FIRST_LOOK * meter.lag_s));
}

/** How long to wait until the next look at the same rate, s: longer each time. */
export function nextLook_s({ meter }: Sweep, { looks }: Stay): number {
  return counted(looks.length * Math.max(STEADY_s, NEXT_LOOK * meter.lag_s));
}

/** To the next 5 s that a person can count. */
function counted(seconds: number): number {
  return 5 * Math.ceil(seconds / 5);
}

/** Whether the flame was seen to burn on at this stay. */
export function steady({ flame_out, looks }: Stay): boolean {
  return !flame_out && (looks.at(-1)?.after_s ?? 0) >= STEADY_s;
}

/** The same but for the dust of binary fractions: no controller's steps are so fine. */
export function sameRate(a_Hz: number, b_Hz: number): boolean {
  return Math.abs(a_Hz - b_Hz) < 1e-3;
}
