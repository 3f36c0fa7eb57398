import type { End } from "./end.ts";
import { FAN_STEP_rpm, PUMP_STEP_Hz } from "./heater.ts";
import { type EndSetting, mixtureShift } from "./mixture.ts";
import { requirePositive } from "./numerics/finite.ts";
import { onStep, settableFan, stepsFrom, stepsUpTo, wholePercent } from "./rounding.ts";
import type { StartTune } from "./start.ts";

/** The smallest steps that a heater's controller can be set in. */
export interface Steps {
  step_Hz?: number | undefined;
  step_rpm?: number | undefined;
}

/** A pump rate with the fan speed that makes up for its step, and what is left, whole %: plus is rich. */
export interface SettablePair extends EndSetting {
  shift_pct: number;
}

/** Beyond so large a change of fan speed it is another heat, not a correction: our own working value, whole %. */
const FAN_CHANGE_MOST_pct = 15;

/**
 * What can be set in place of a pump rate that lies between two steps: the step below and the one above, each with the fan
 * speed at which the mixture stays the same; the nearer one first. One pair alone where the rate lies on a step, or where
 * the other one's fan would be beyond its limit or too far from where it was.
 * @param exact the pump rate at its fan speed, Hz and rpm
 * @param fan_limit_rpm where the fan ends
 * @throws RangeError naming the number that is not positive
 * @example settablePairs({ pump_Hz: 0.96, fan_rpm: 1650 }, 5000)
 * // [{ pump_Hz: 1, fan_rpm: 1720, shift_pct: 0 }, { pump_Hz: 0.9, fan_rpm: 1550, shift_pct: 0 }]
 */
export function settablePairs(
  exact: EndSetting,
  fan_limit_rpm: number,
  { step_Hz = PUMP_STEP_Hz, step_rpm = FAN_STEP_rpm }: Steps = {},
): SettablePair[] {
  const { pump_Hz, fan_rpm } = exact;
  requirePositive({ pump_Hz, fan_rpm, fan_limit_rpm, step_Hz, step_rpm });
  const steps = [...new Set([stepsUpTo(pump_Hz, step_Hz), stepsFrom(pump_Hz, step_Hz)])];
  const most_rpm = Math.max(fan_limit_rpm, fan_rpm);
  const pairs = steps
    .filter((count) => count > 0)
    .map((count): SettablePair => {
      const pump = onStep(count, step_Hz);
      const fan = settableFan((fan_rpm * pump) / pump_Hz, step_rpm);
      const shift_pct = wholePercent(mixtureShift(pump / fan, pump_Hz / fan_rpm));
      return { pump_Hz: pump, fan_rpm: fan, shift_pct };
    })
    .sort((p, q) => Math.abs(p.pump_Hz - pump_Hz) - Math.abs(q.pump_Hz - pump_Hz));
  const near = pairs.filter(
    (pair) =>
      pair.fan_rpm <= most_rpm &&
      Math.abs(mixtureShift(pair.fan_rpm, fan_rpm)) <= FAN_CHANGE_MOST_pct,
  );
  return near.length > 0 ? near : pairs.slice(0, 1);
}

/** What can be set for one end of a start tune, up to the fan's limit that it tells. @throws RangeError as {@link settablePairs} does */
export function settablePairsOf(tune: StartTune, end: End, steps: Steps): SettablePair[] {
  const { pump_Hz_exact: pump_Hz, fan_rpm } = tune[end];
  return settablePairs({ pump_Hz, fan_rpm }, tune.strategies.keep_heat.fan_limit_rpm, steps);
}
