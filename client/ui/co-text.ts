import type { CoReadingKind } from "../../model/co-reading.ts";
import { coWords } from "../texts/co.ts";
import { format } from "../units.ts";

/** A reading as the page or the API has it. */
type Shown = { [Kind in CoReadingKind]?: number | null | undefined };

/** What a CO meter showed, without its unit; undefined where nothing was noted. @example "12", "below 30" */
export function coText({ co_ppm, co_below_ppm, co_above_ppm }: Shown): string | undefined {
  if (co_ppm != null) return format(co_ppm, Number.isInteger(co_ppm) ? 0 : 1);
  if (co_below_ppm != null) return coWords.below(format(co_below_ppm));
  return co_above_ppm == null ? undefined : coWords.above(format(co_above_ppm));
}

/** The same with its unit. @example "below 30 ppm" */
export function coInPpm(shown: Shown): string | undefined {
  const text = coText(shown);
  return text && `${text} ppm`;
}
