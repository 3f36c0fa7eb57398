import type { Minimum, SweepAnswer } from "./answer.ts";
import { said, setTo } from "./answering.ts";
import { noise_ppm, poorAbove_ppm } from "./noise.ts";
import { type Picture, pictureOf } from "./picture.ts";
import * as say from "./sentences.ts";
import type { SweepReading, SweepSetup } from "./setup.ts";
import { expectedAt, type SweepState, stateOf } from "./state.ts";
import { type Stay, sameRate } from "./stays.ts";
import { stepFrom } from "./sweep.ts";

/** After so many confirming stays the last good one is taken: neighbours in a flat bottom could go on trading places. */
const CONFIRMING_MOST = 3;
/** A figure that was not expected is looked at again, so often in all and after so long: it may have been a gust. */
const LOOKS_BEFORE_DOUBT = 3;
const AGAIN_s = 30;

/** The next step with what there is to draw beside it. */
export interface GuidedStep {
  answer: SweepAnswer;
  picture: Picture;
}

/**
 * As `nextStep`, and a minimum counts only once the meter has settled with the pump where it is to stay; a reading
 * there that is not what was expected opens the search again.
 * @throws RangeError naming what is wrong with the setup or a reading
 */
export function confirmedStep(setup: SweepSetup, readings: readonly SweepReading[]): GuidedStep {
  const state = stateOf(setup, readings);
  const answer = stepFrom(state);
  return {
    answer: answer.kind === "minimum" ? confirmed(state, answer) : answer,
    picture: pictureOf(state),
  };
}

function confirmed(state: SweepState, found: Minimum): SweepAnswer {
  const { stays, sweep, last } = state;
  const stay = stays.at(-1);
  if (!stay || !last?.settled || !last.level) return setTo(state, found.sit_Hz, "confirm");
  const atSeat = sameRate(sweep, stay.pump_Hz, found.sit_Hz);
  if (!atSeat && !standsIn(state, found, stay)) return setTo(state, found.sit_Hz, "confirm");
  const agrees = last.level.ppm <= poorAbove_ppm(sweep, found.sit_ppm);
  if (!agrees && stay.looks.length < LOOKS_BEFORE_DOUBT) {
    const wait_s = AGAIN_s;
    return {
      kind: "wait",
      pump_Hz: stay.pump_Hz,
      wait_s,
      ...said(state, say.sayingWait(wait_s)),
    };
  }
  return {
    ...found,
    sit_Hz: atSeat ? found.sit_Hz : stay.pump_Hz,
    sit_ppm: expectedAt(state, stay.pump_Hz),
    confirmed: { ...shownAt(stay), agrees },
  };
}

function shownAt({ looks }: Stay): { co_ppm?: number; co_below_ppm?: number } {
  const shown = looks.at(-1);
  if (!shown) return {};
  return shown.beyond === "floor" ? { co_below_ppm: shown.ppm } : { co_ppm: shown.ppm };
}

/** Chosen before this very reading moved the choice a little: as good, within the meter's noise. */
function standsIn(state: SweepState, { basin_Hz, sit_ppm }: Minimum, stay: Stay): boolean {
  const { sweep, rates, stays } = state;
  const here = stay.pump_Hz;
  if (!stay.confirming || !rates.some((rate) => sameRate(sweep, rate, here))) return false;
  if (stays.filter(({ confirming }) => confirming).length >= CONFIRMING_MOST) return true;
  const inBasin = here > basin_Hz.lower - 1e-6 && here < basin_Hz.upper + 1e-6;
  return inBasin && expectedAt(state, here) <= sit_ppm + noise_ppm(sweep, sit_ppm);
}
