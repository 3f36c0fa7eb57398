import type { End } from "../../../model/end.ts";
import type { Band } from "../../../model/fit/bands.ts";
import type { PublishedFit } from "../../../model/fit/group.ts";
import { halfBand_pct } from "../../../model/half-band.ts";
import { mixtureShift } from "../../../model/mixture.ts";
import type { OwnAside, OwnContradiction } from "../../../model/own-rows.ts";
import { ownStartTune, startForHeater } from "../../../model/own-start.ts";
import { wholePercent } from "../../../model/rounding.ts";
import { type StartTune, startTune } from "../../../model/start.ts";
import type { Question } from "../../base/question.ts";
import type { MyHeater } from "./my-heater.ts";

/** The answer for my heater, and what its tunes and settings say. */
export interface OwnView {
  /** Centred on it where it has tunes of its own. */
  tune: StartTune;
  /** How it would run left as it is, whole %: plus is rich. Null where it is not known what it is set to. */
  shifts_pct: Record<End, number> | null;
  /** What its own tunes add; null without any. */
  own: OwnTunesView | null;
}

export interface OwnTunesView {
  /** How many of them count. */
  tunes: number;
  /** Half the 80 % band of the wider end, %, with them and without. */
  half_pct: { mine: number; others: number };
  /** Where its best setting lies, 8 in 10 times; null while too few tell it. */
  best_Hz: Record<End, Band> | null;
  set_aside: OwnAside[];
  contradictions: OwnContradiction[];
}

/** From so many own tunes on it is said where the best setting lies; or from one that CO was seen to rise around. */
const TUNES_TELLING = 3;

/** Null where the figures cannot stand together. */
export function ownView(fit: PublishedFit, question: Question, mine: MyHeater): OwnView | null {
  try {
    const tune = startForHeater(fit, question, mine.own_tunes);
    return { tune, shifts_pct: shiftsOf(tune, mine), own: ownOf(fit, question, mine, tune) };
  } catch {
    return null;
  }
}

function shiftsOf(tune: StartTune, { settings }: MyHeater): Record<End, number> | null {
  if (!settings) return null;
  const shift = (end: End) => {
    const { pump_Hz_exact, fan_rpm } = tune[end];
    const now = settings[end].pump_Hz / settings[end].fan_rpm;
    return wholePercent(mixtureShift(now, pump_Hz_exact / fan_rpm));
  };
  return { low: shift("low"), high: shift("high") };
}

function ownOf(
  fit: PublishedFit,
  question: Question,
  { own_tunes, bracketed }: MyHeater,
  tune: StartTune,
): OwnTunesView | null {
  if (own_tunes.length === 0) return null;
  const { own_heater } = ownStartTune(fit, question, own_tunes);
  const { tunes, set_aside, contradictions } = own_heater;
  const tells = tunes >= TUNES_TELLING || (tunes > 0 && bracketed > 0);
  const best = (end: End) => own_heater[end].best_bands_Hz[0] as Band;
  return {
    tunes,
    half_pct: { mine: halfBand_pct(tune), others: halfBand_pct(startTune(fit, question)) },
    best_Hz: tells ? { low: best("low"), high: best("high") } : null,
    set_aside,
    contradictions,
  };
}
