import type { Lag } from "./lag.ts";
import { noise_ppm } from "./noise.ts";
import type { Sweep } from "./setup.ts";
import { type Look, STEADY_s, type Stay } from "./stays.ts";

/** What a stay says of the CO at its rate: a level with its spread in ln, or only a bound. */
export interface Level {
  pump_Hz: number;
  ppm: number;
  ln_sd: number;
  beyond?: "floor" | "ceiling";
}

export interface Settling {
  /** Missing while the readings say nothing yet. */
  level?: Level;
  settled: boolean;
  /** How long still to wait, s; 0 when settled. */
  wait_s: number;
}

/** What the meter has still to go may be this share of its noise. */
const REST = 0.6;
/** After so many time constants it is taken as settled, whatever it does. */
const LONGEST = 5.5;
/** Looks at one stay share the same wavering in part: together not better than this share of the best one's variance. */
const SHARED = 0.6;

/** A stay's level, drawn out along the meter's lag to where the readings are going. */
export function settlingOf(sweep: Sweep, stay: Stay, lag: Lag): Settling {
  const last = stay.looks.at(-1);
  const slow_s = lag.lag_s * Math.exp(lag.ln_sd);
  if (!last) return { settled: false, wait_s: restOf(3 * slow_s, 0) };
  if (last.beyond) return beyondRange(stay, last, slow_s);
  // Nobody can have seen it stand still sooner than a flame burns steadily.
  if (last.still && last.after_s >= STEADY_s) return standing(sweep, stay, last);
  const parts = stay.looks
    .filter(({ beyond }) => !beyond)
    .map((l) => drawnOut(sweep, stay, l, lag));
  const best = Math.min(...parts.map(({ variance }) => variance));
  const weight = parts.reduce((sum, { variance }) => sum + 1 / variance, 0);
  const mean = parts.reduce((sum, { ppm, variance }) => sum + ppm / variance, 0) / weight;
  const ppm = Math.max(mean, sweep.meter.floor_ppm / 2, 0.7);
  const noise = noise_ppm(sweep, ppm);
  const sd = Math.sqrt(Math.max(1 / weight, SHARED * best));
  const need_s =
    slow_s *
    Math.log(Math.max(1.01, (Math.abs(ppm - stay.from_ppm) + stay.from_sd_ppm) / (REST * noise)));
  const settled = last.after_s >= Math.min(need_s, LONGEST * slow_s);
  return {
    level: { pump_Hz: stay.pump_Hz, ppm, ln_sd: Math.min(2, sd / ppm) },
    settled,
    wait_s: settled ? 0 : restOf(Math.min(need_s, LONGEST * slow_s), last.after_s),
  };
}

/** A figure that was seen to stand still is the level itself. */
function standing(sweep: Sweep, { pump_Hz }: Stay, look: Look): Settling {
  const ppm = Math.max(look.ppm, sweep.meter.floor_ppm / 2, 0.7);
  const ln_sd = Math.min(2, noise_ppm(sweep, ppm) / ppm);
  return { level: { pump_Hz, ppm, ln_sd }, settled: true, wait_s: 0 };
}

/** Where one look is going, with the variance from noise and from the uncertain time constant. */
function drawnOut(sweep: Sweep, { from_ppm, from_sd_ppm }: Stay, { after_s, ppm }: Look, lag: Lag) {
  const turns = Math.max(0.05, after_s / lag.lag_s);
  const left = Math.exp(-turns);
  const done = 1 - left;
  const going_ppm = Math.max(0.3, (ppm - left * from_ppm) / done);
  const byNoise = noise_ppm(sweep, Math.max(ppm, going_ppm)) / done;
  const byLag = (Math.abs(ppm - from_ppm) * left * turns * lag.ln_sd) / done ** 2;
  const byStart = (from_sd_ppm * left) / done;
  return { ppm: going_ppm, variance: byNoise ** 2 + byLag ** 2 + byStart ** 2 };
}

/** Off the meter's scale: certain at once when it went there, after a while when it started there. */
function beyondRange(stay: Stay, { after_s, ppm, beyond }: Look, slow_s: number): Settling {
  const above = beyond === "ceiling";
  const wentThere = above ? stay.from_ppm < ppm : stay.from_ppm > ppm;
  const need_s = wentThere ? 0 : 2.5 * slow_s;
  const settled = after_s >= need_s;
  const level: Level = { pump_Hz: stay.pump_Hz, ppm, ln_sd: 0.1, ...(beyond && { beyond }) };
  return { ...(settled && { level }), settled, wait_s: settled ? 0 : restOf(need_s, after_s) };
}

/** To the next 5 s that a person can count, and at least 10. */
function restOf(need_s: number, after_s: number): number {
  return Math.max(10, 5 * Math.ceil((need_s - after_s) / 5));
}

/** How long a change from one reading to another will take until it has settled. */
export function settlingTime_s(sweep: Sweep, lag: Lag, from_ppm: number, to_ppm: number): number {
  const change = Math.abs(to_ppm - from_ppm) / (REST * noise_ppm(sweep, to_ppm));
  const slow_s = lag.lag_s * Math.exp(lag.ln_sd);
  return restOf(slow_s * Math.min(4, Math.log(Math.max(1, change))), 0);
}
