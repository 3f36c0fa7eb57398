import type { Air, GivenAir } from "./air.ts";
import { ENDS, type End } from "./end.ts";
import type { PublishedFit } from "./fit/group.ts";
import { usualFans } from "./heater.ts";
import { type EndSetting, mixtureShift } from "./mixture.ts";
import { percentOutwards, settableFan, settablePump, wholePercent } from "./rounding.ts";
import { type StartSite, startTune } from "./start.ts";
import {
  type MixtureWindow,
  roomOf,
  type Standing,
  standingOf,
  WORKING_WINDOW,
} from "./trip/window.ts";

/** A tune that was found in one air and is to run in another at the same place. */
export interface NightQuestion {
  heat_kW: number;
  site: StartSite;
  /** The air it was found in. */
  air: GivenAir;
  /** The coming night's temperature; pressure and humidity are taken to stay. */
  night_C: number;
  tune: Record<End, EndSetting>;
  /** Smallest step of the pump rate that the controller can be set to. */
  step_Hz?: number | undefined;
  /** The same of the fan speed. */
  step_rpm?: number | undefined;
}

/** One end in the night's air. Shifts are whole %, against the mixture that was found best: plus is rich, minus is lean. */
export interface EndAtNight {
  /** Left as it is. */
  shift_pct: number;
  /** The nearest settable pump rate with the fan as it is, and the shift that is left. */
  pump_Hz: number;
  pump_shift_pct: number;
  /** The nearest settable fan speed with the pump as it is, and the shift that is left; missing where the fan ends before. */
  fan_rpm?: number;
  fan_shift_pct?: number;
  /** How much faster the fan would run, whole %. */
  fan_change_pct: number;
}

export interface TuneAtNight extends Record<End, EndAtNight> {
  found_in: Air;
  night: Air;
  /** The night's air against that of the tune, whole %: plus is denser. */
  denser_pct: number;
  /** How both ends, left as they are, stand in the window: as the worse of them; and what room it has, %. */
  standing: Standing;
  room_pct: number;
}

/**
 * How a tune found in one air sits in the coming night's, and what to set for it. The best pump rate per fan speed moves
 * with density as the fit has it, so the heater's own offset falls out: only the ratio of two start tunes counts.
 * @throws RangeError naming the number that cannot be used
 */
export function tuneAtNight(
  fit: PublishedFit,
  { heat_kW, site, air, night_C, tune, step_Hz, step_rpm }: NightQuestion,
  window: MixtureWindow = WORKING_WINDOW,
): TuneAtNight {
  const [low_fan_rpm, high_fan_rpm] = [tune.low.fan_rpm, tune.high.fan_rpm];
  const at = (here: GivenAir) =>
    startTune(fit, { heat_kW, site, air: here, low_fan_rpm, high_fan_rpm });
  const [now, night] = [at(air), at({ ...air, temperature_C: night_C })];
  const limit_rpm = usualFans(heat_kW).fan_limit_rpm;
  const endOf = (end: End): EndAtNight => {
    const { pump_Hz, fan_rpm } = tune[end];
    const gain = night[end].pump_Hz_exact / now[end].pump_Hz_exact;
    // Against the pump rate per fan speed that would be best in the night's air.
    const shift = (pump: number, fan: number) =>
      wholePercent(mixtureShift(pump / fan, (gain * pump_Hz) / fan_rpm));
    const pump = settablePump(gain * pump_Hz, step_Hz);
    const fan = settableFan(fan_rpm / gain, step_rpm);
    return {
      shift_pct: shift(pump_Hz, fan_rpm),
      pump_Hz: pump,
      pump_shift_pct: shift(pump, fan_rpm),
      fan_change_pct: wholePercent(100 / gain - 100),
      ...(fan <= Math.max(limit_rpm, fan_rpm) && {
        fan_rpm: fan,
        fan_shift_pct: shift(pump_Hz, fan),
      }),
    };
  };
  const ends = { low: endOf("low"), high: endOf("high") };
  const { density_kg_m3 } = now.air;
  const shifts = ENDS.map((end) => ends[end].shift_pct);
  // What both airs have in common falls out; what is left is a temperature that had to be assumed.
  const ln_sd = Math.sqrt(Math.max(0, now.air.ln_density_sd ** 2 - night.air.ln_density_sd ** 2));
  const unsure_pct = percentOutwards(196 * ln_sd);
  const standings = shifts.map((shift) => standingOf(shift, unsure_pct, window));
  return {
    ...ends,
    found_in: now.air,
    night: night.air,
    denser_pct: wholePercent(mixtureShift(night.air.density_kg_m3, density_kg_m3)),
    standing: (["beyond", "tight"] as const).find((one) => standings.includes(one)) ?? "roomy",
    room_pct: Math.min(...shifts.map((shift) => roomOf(shift, window))),
  };
}
