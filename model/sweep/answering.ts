import type { Minimum, NoMinimum, SetRate } from "./answer.ts";
import type { Basin } from "./basin.ts";
import { limbsOf } from "./enough.ts";
import { nearestRate } from "./guards.ts";
import { surelyFar } from "./needed.ts";
import * as say from "./sentences.ts";
import { settlingTime_s } from "./settling.ts";
import { expectedAt, type SweepState } from "./state.ts";
import { STEADY_s } from "./stays.ts";

/** From lighting until the heater burns as it will (our own working value). */
const WARM_UP_s = 180;
/** The nearest figure that the meter showed is so many times the lowest expected: its bottom was not seen. */
const UNSEEN = 1.5;

export function setTo(state: SweepState, pump_Hz: number, why: SetRate["why"]): SetRate {
  const { sweep, stays, lag } = state;
  const shown = stays.at(-1)?.looks.at(-1)?.ppm ?? 0;
  const settle = settlingTime_s(sweep, lag, shown, expectedAt(state, pump_Hz));
  // On the way to a minimum farther off it is enough to see the flame burn on.
  const here = stays.at(-1)?.pump_Hz ?? pump_Hz;
  const through = surelyFar(state, pump_Hz) === (pump_Hz < here ? "lean" : "rich");
  const wait_s =
    why === "flame-out"
      ? WARM_UP_s
      : through && why !== "start"
        ? STEADY_s
        : Math.max(STEADY_s, settle);
  return { kind: "set", pump_Hz, wait_s, why, ...said(state, say.sayingSet(why, pump_Hz, wait_s)) };
}

export function minimum(state: SweepState, basin: Basin): Minimum {
  const found = {
    kind: "minimum" as const,
    basin_Hz: { lower: basin.lower_Hz, upper: basin.upper_Hz },
    sit_Hz: basin.sit_Hz,
    sit_ppm: basin.sit_ppm,
    limbs: limbsOf(state),
    below_floor: hidden(state, basin),
    ...said(state, ""),
  };
  return { ...found, sentence: say.sayingMinimum(found, state.sweep.end) };
}

export function noMinimum(state: SweepState, why: NoMinimum["why"], basin: Basin): NoMinimum {
  const below = why === "below floor";
  const sit_Hz = below ? basin.sit_Hz : nearestRate(state.rates, state.sweep.start_Hz);
  const sentence = (below ? say.sayingBelowFloor : say.sayingAboveCeiling)(state, sit_Hz);
  return { kind: "no minimum", why, sit_Hz, ...said(state, sentence) };
}

export function said({ guards, estimate, lag, settled }: SweepState, sentence: string) {
  const guards_Hz = { lean: guards.lean_Hz, rich: guards.rich_Hz };
  return { sentence, guards_Hz, ...estimate, lag_s: lag.lag_s, settled };
}

function hidden({ levels }: SweepState, { lowest_ppm }: Basin): boolean {
  const shown = levels.filter(({ beyond }) => beyond !== "floor");
  return shown.length < levels.length && shown.every(({ ppm }) => ppm > UNSEEN * lowest_ppm);
}
