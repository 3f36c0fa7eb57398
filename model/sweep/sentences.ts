import type { Minimum, SetRate } from "./answer.ts";
import type { SweepState } from "./state.ts";

const hz = (rate: number) => `${Number(rate.toFixed(2))} Hz`;
const span = (s: number) =>
  s < 90 ? `${Math.round(s)} seconds` : `${Number((s / 60).toFixed(1))} minutes`;

const SET: Record<SetRate["why"], string> = {
  start: "Begin here.",
  leaner: "A little leaner.",
  richer: "Richer.",
  confirm: "One more reading at the rate to stay at, before it counts.",
  spike: "CO shot up: back at once, and no richer than before.",
  "flame-out":
    "The flame went out; that rate is noted as too lean. Let the heater cool down by itself, do not cut its power. Then richer, at most two attempts to relight in all.",
};

export function sayingSet(why: SetRate["why"], pump_Hz: number, wait_s: number): string {
  return `${SET[why]} Set the pump to ${hz(pump_Hz)}, wait ${span(wait_s)}, then read the meter.`;
}

export function sayingWait(wait_s: number): string {
  return `Still settling: read again in ${span(wait_s)}, at the same rate.`;
}

export function sayingMinimum(found: Omit<Minimum, "sentence">, end: string): string {
  const [, wide] = found.intervals_Hz;
  const place = `The minimum is near ${hz(found.minimum_Hz)} (95 %: ${hz(wide?.lower ?? Number.NaN)} to ${hz(wide?.upper ?? Number.NaN)}).`;
  const { lower, upper } = found.basin_Hz;
  const flat =
    lower === upper
      ? `Leave the pump at ${hz(found.sit_Hz)}.`
      : `From ${hz(lower)} to ${hz(upper)} CO is the same within the meter's noise: leave the pump at ${hz(found.sit_Hz)}, ${SEAT[end] ?? ""}.`;
  const parts = [place, flat];
  if (found.below_floor)
    parts.push("Its bottom is below what this meter shows, so it is known from its sides only.");
  if (!found.limbs.lean)
    parts.push("CO was not seen to rise on the lean side: the lean guard ended the sweep there.");
  if (!found.limbs.rich) parts.push("CO was not seen to rise on the rich side.");
  return parts.join(" ");
}

const SEAT: Record<string, string> = {
  low: "towards the rich edge, where a low flame is steadier",
  high: "lean of the middle, away from soot",
};

export function sayingBelowFloor({ sweep }: SweepState, sit_Hz: number): string {
  return `Everything tried is below what this meter shows (${sweep.meter.floor_ppm} ppm), so it cannot tell a minimum. That is not 0. Leave the pump at ${hz(sit_Hz)}, or start again with the meter nearer to the exhaust or one that shows less.`;
}

export function sayingAboveCeiling({ sweep }: SweepState, sit_Hz: number): string {
  return `Everything tried is above what this meter shows (${sweep.meter.ceiling_ppm} ppm), so it cannot tell a minimum. Put the pump back to ${hz(sit_Hz)}, move the meter farther from the exhaust and start again; if it stays so, have the heater looked at.`;
}

export function sayingStop(flame_outs: number): string {
  return `The flame has gone out ${flame_outs} times. No further attempt here: let the heater cool down by itself, do not cut its power, and go by the maker's manual.`;
}
