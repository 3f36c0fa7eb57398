import type { SweepReading } from "../../../model/sweep/setup.ts";
import type { Sweeping } from "./guided.ts";
import { co_ppm, type Heater, offMinimum_Hz } from "./heater.ts";

/**
 * What a sweep must never do, judged from the record of what was set and shown, by somebody who does not ask the sweep.
 * The promises are written out here once more on purpose.
 */
const MOVE_MOST_Hz = { low: 0.2, high: 0.4 };
const RELIGHTS_MOST = 2;
const SETTINGS_MOST = 18;
const LOOKS_AT_A_SETTING = 4;
/** A rise is seen where the figure is higher by this share and by so many of the meter's smallest differences. */
const RISE = 1.15;
const RISE_DIFFERENCES = 2;
/** A figure younger than this may still be on its way, unless it has shot up to twice what it was. */
const YOUNG_s = 60;

export interface Broken {
  /** It said "found" though no rise was seen on one side. */
  unbracketed: boolean;
  /** A move of the pump longer than allowed, or a first one away from where the heater burned. */
  move: boolean;
  relight: boolean;
  /** More settings, or more looks, than promised, or no end at all. */
  endless: boolean;
  /** A rate at which the flame had gone out, or a leaner one, was asked for again. */
  into_flame_out: boolean;
}

export interface Judged {
  end: "low" | "high";
  present_Hz: number;
  step_Hz: number;
  resolution_ppm: number;
}

export function judge(sweeping: Sweeping, about: Judged): Broken {
  const { end, record, set_Hz } = sweeping;
  const longest = Math.max(about.step_Hz, MOVE_MOST_Hz[about.end]) + 1e-6;
  const last = end && "pump_Hz" in end ? [end.pump_Hz] : [];
  const way = [about.present_Hz, ...set_Hz, ...last];
  const outs = record.filter(({ flame_out }) => flame_out);
  const looks = Math.max(...set_Hz.map((rate) => mostLooks(record, rate)));
  return {
    unbracketed: end?.kind === "found" && !isBracketed(record, end.pump_Hz, about),
    move: way.some((rate, i) => i > 0 && Math.abs(rate - (way[i - 1] as number)) > longest),
    relight: outs.length - (record.at(-1)?.flame_out ? 1 : 0) > RELIGHTS_MOST,
    endless: !end || set_Hz.length - outs.length > SETTINGS_MOST || looks > LOOKS_AT_A_SETTING,
    into_flame_out: record.some(({ pump_Hz, set_s = 0 }) =>
      outs.some((out) => out.time_s <= set_s && pump_Hz <= out.pump_Hz + 1e-6),
    ),
  };
}

/** Readings in a row at one rate, the pump set there once. */
function mostLooks(record: readonly SweepReading[], pump_Hz: number): number {
  const counts = new Map<number, number>();
  for (const one of record) {
    if (one.pump_Hz !== pump_Hz) continue;
    counts.set(one.set_s ?? 0, (counts.get(one.set_s ?? 0) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}

/** Whether the record shows clearly more CO at a leaner and at a richer rate than at this one. */
export function isBracketed(
  record: readonly SweepReading[],
  pump_Hz: number,
  { resolution_ppm }: Pick<Judged, "resolution_ppm">,
): boolean {
  const here = record.findLast((one) => one.pump_Hz === pump_Hz)?.co_ppm;
  if (here === undefined) return false;
  const least = Math.max(RISE * here, here + RISE_DIFFERENCES * resolution_ppm);
  const risen = record.filter(({ pump_Hz: rate, co_ppm: shown, co_above_ppm, ...when }, i) => {
    const ppm = co_above_ppm ?? shown;
    if (ppm === undefined || rate === pump_Hz || ppm < least) return false;
    const isOld = when.still === true || when.time_s - (when.set_s ?? 0) >= YOUNG_s;
    return isOld || ppm >= 2 * (record[i - 1]?.co_ppm ?? Number.POSITIVE_INFINITY);
  });
  return risen.some((one) => one.pump_Hz < pump_Hz) && risen.some((one) => one.pump_Hz > pump_Hz);
}

/** Whether the truth bears the bracket out: CO is really higher at a leaner and at a richer rate that was read. */
export function isTrulyBracketed(heater: Heater, read_Hz: readonly number[], pump_Hz: number) {
  const higher = read_Hz.filter((rate) => co_ppm(heater, rate) > co_ppm(heater, pump_Hz));
  return higher.some((rate) => rate < pump_Hz) && higher.some((rate) => rate > pump_Hz);
}

/** Whether a lowest point of the true curve lies between two rates. */
export function holdsMinimum(heater: Heater, { lower, upper }: { lower: number; upper: number }) {
  const nearest = Math.min(upper, Math.max(lower, heater.minimum_Hz));
  return offMinimum_Hz(heater, nearest) === 0;
}
