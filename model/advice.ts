import type { CoReading } from "./co-reading.ts";
import { atPower, ENDS, type End } from "./end.ts";
import { say } from "./screen/reason.ts";
import { COMMON_PRACTICE, isHigh } from "./sweep/common-practice.ts";

/** Something the owner of a heater should know of a tune, accepted or not: never a reason to hold it. */
export interface Advice {
  code: "final_co_high";
  /** Which figure it is about, such as "low.co_ppm", and that figure. */
  field: `${End}.co_ppm`;
  value: number;
  sentence: string;
}

const { usual_below_ppm } = COMMON_PRACTICE;

/**
 * What a tune's final CO says of the heater. Below 30 ppm near the exhaust is usual (common practice, no source). A tune
 * left higher may be plausible beside others, and its heater need not be safe to sleep beside.
 */
export function adviceOn(tune: Partial<Record<End, CoReading | undefined>>): Advice[] {
  return ENDS.flatMap((end): Advice[] => {
    const value = tune[end]?.co_ppm;
    if (value === undefined || !isHigh(value)) return [];
    const sentence =
      `The final CO of ${say(value)} ppm ${atPower(end)} is high: below ${usual_below_ppm} ppm is usual (common practice, no ` +
      "source). Usual causes: soot in the burner, a blocked air intake, a leak in the exhaust, the meter too close to the " +
      "exhaust. Check them. If it stays high, have the heater looked at before anyone sleeps beside it.";
    return [{ code: "final_co_high", field: `${end}.co_ppm`, value, sentence }];
  });
}
