import type { PublishedFit } from "./fit/group.ts";
import { halfBand_pct } from "./half-band.ts";
import { startForHeater } from "./own-start.ts";
import type { StartQuestion } from "./start.ts";
import type { OwnTune } from "./tune.ts";

/**
 * What each own tune did to the band of the answer: {@link halfBand_pct} before any, and after each in the order given.
 * @throws RangeError as {@link startForHeater} does
 */
export function bandByTune_pct(
  fit: PublishedFit,
  question: StartQuestion,
  own_tunes: readonly OwnTune[],
): number[] {
  return Array.from({ length: own_tunes.length + 1 }, (_, count) =>
    halfBand_pct(startForHeater(fit, question, own_tunes.slice(0, count))),
  );
}
