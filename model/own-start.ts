import type { Air } from "./air.ts";
import { ENDS, type End } from "./end.ts";
import type { Band, Bands } from "./fit/bands.ts";
import type { PublishedFit } from "./fit/group.ts";
import { exp } from "./numerics/ln-exp.ts";
import { type Mixture, MOST_OWN_ROWS, quantileOf } from "./own-heater.ts";
import { type KnownEnd, knownEnd, type OwnAside, type OwnContradiction } from "./own-rows.ts";
import { screen } from "./screen.ts";
import {
  groupOf,
  MEAN_LEVEL,
  NEW_HEATER_LEVELS,
  type StartQuestion,
  type StartTune,
  startFrom,
  startTune,
} from "./start.ts";
import type { OwnTune } from "./tune.ts";

/** One end for the heater itself, bands in Hz. */
export interface OwnEnd {
  fan_rpm: number;
  /** Rounded to what a controller can be set to. */
  pump_Hz: number;
  pump_Hz_exact: number;
  /** Where its next tune is expected, found as the earlier ones were. */
  next_tune_bands_Hz: Band[];
  /** Where its best setting lies: narrower, for no tune hits it. */
  best_bands_Hz: Band[];
}

/** What a heater's own tunes add to the answer. */
export interface OwnHeater extends Record<End, OwnEnd> {
  /** How many of them count at one end at least. */
  tunes: number;
  set_aside: OwnAside[];
  contradictions: OwnContradiction[];
}

/** The answer for a heater with tunes of its own, beside that for one more heater. */
export type OwnStartTune = StartTune & { own_heater: OwnHeater };

/**
 * The start tune, and what the heater's own tunes add to it: what it drew in other air tells how it differs from the
 * average. Own tunes are screened as shared ones are; mistaken ones are recognised and named.
 * @throws RangeError naming the field that cannot be used, or for no own tune or more than {@link MOST_OWN_ROWS}
 */
export function ownStartTune(
  fit: PublishedFit,
  question: StartQuestion,
  own_tunes: readonly OwnTune[],
): OwnStartTune {
  const start = startTune(fit, question);
  const { known, set_aside } = knownHeater(fit, question, own_tunes);
  const own = centred(fit, question, known);
  const endOf = (end: End): OwnEnd => {
    const { fan_rpm, pump_Hz, pump_Hz_exact, new_heater_bands_Hz } = own[end];
    const { best } = known[end].at(start.air);
    return {
      fan_rpm,
      pump_Hz,
      pump_Hz_exact,
      next_tune_bands_Hz: new_heater_bands_Hz,
      best_bands_Hz: bandsOf(best, NEW_HEATER_LEVELS).map((band) => times(band, fan_rpm / 1000)),
    };
  };
  return {
    ...start,
    own_heater: {
      tunes: countingIn(known),
      set_aside: [...set_aside, ...ENDS.flatMap((end) => known[end].asides)],
      contradictions: ENDS.flatMap((end) => known[end].contradictions),
      low: endOf("low"),
      high: endOf("high"),
    },
  };
}

/**
 * The start tune centred on the heater itself where it has tunes of its own: what a trip, a card and a sweep begin from. A
 * new heater's bands give way to those of its next tune, the mean's to that of its best setting.
 * @throws RangeError as {@link ownStartTune} does, but for no own tune
 */
export function startForHeater(
  fit: PublishedFit,
  question: StartQuestion,
  own_tunes: readonly OwnTune[] = [],
): StartTune {
  if (own_tunes.length === 0) return startTune(fit, question);
  return centred(fit, question, knownHeater(fit, question, own_tunes).known);
}

/**
 * How many of a heater's own tunes count, at one end at least: that is the same in any air.
 * @throws RangeError for more own tunes than are taken
 */
export function ownTunesCounting(
  fit: PublishedFit,
  question: Pick<StartQuestion, "heat_kW" | "dose_uL">,
  own_tunes: readonly OwnTune[] = [],
): number {
  return own_tunes.length === 0 ? 0 : countingIn(knownHeater(fit, question, own_tunes).known);
}

type Known = Record<End, KnownEnd>;

function countingIn(known: Known): number {
  return new Set(ENDS.flatMap((end) => known[end].counting)).size;
}

function knownHeater(
  fit: PublishedFit,
  { heat_kW, dose_uL }: Pick<StartQuestion, "heat_kW" | "dose_uL">,
  own_tunes: readonly OwnTune[],
): { known: Known; set_aside: OwnAside[] } {
  if (own_tunes.length === 0 || own_tunes.length > MOST_OWN_ROWS) {
    throw new RangeError(`own_tunes must be 1 to ${MOST_OWN_ROWS}, not ${own_tunes.length}.`);
  }
  const screened = own_tunes.map((tune, i) => ({
    name: i + 1,
    tune,
    reasons: screen({ ...tune, heater: { heat_kW, dose_uL }, contributor: "" }, { fit }).reasons,
  }));
  const good = screened.filter(({ reasons }) => reasons.length === 0);
  const endOf = (end: End) => knownEnd(groupOf(fit, heat_kW, end), good, dose_uL);
  return {
    known: { low: endOf("low"), high: endOf("high") },
    set_aside: screened.flatMap(({ name, reasons }) =>
      reasons.map(({ code, field, sentence }) => ({
        tune: name,
        end: null,
        code,
        field,
        sentence: `Own tune ${name} does not count. ${sentence}`,
      })),
    ),
  };
}

function centred(fit: PublishedFit, question: StartQuestion, known: Known): StartTune {
  return startFrom(fit, question, (_, air: Air, end): Bands => {
    const { next, best } = known[end].at(air);
    return {
      pump_Hz_per_krpm: exp(quantileOf(next, 0.5)),
      mean_bands: bandsOf(best, [MEAN_LEVEL]),
      new_heater_bands: bandsOf(next, NEW_HEATER_LEVELS),
    };
  });
}

/** Bands of a mixture of ln(Hz per 1,000 rpm), equal tails, in Hz per 1,000 rpm. */
function bandsOf(mixture: Mixture, levels: readonly number[]): Band[] {
  return levels.map((level) => ({
    level,
    lower: exp(quantileOf(mixture, (1 - level) / 2)),
    upper: exp(quantileOf(mixture, (1 + level) / 2)),
  }));
}

function times({ level, lower, upper }: Band, factor: number): Band {
  return { level, lower: lower * factor, upper: upper * factor };
}
