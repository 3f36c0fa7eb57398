import type { ComponentChildren } from "preact";
import type { AsideReason, ScalingPoint } from "../../../server/contract.ts";
import { asideWords, type Figure } from "../../texts/reasons.ts";
import { InEnglish } from "../../ui/in-english.tsx";
import { format } from "../../units.ts";

/** Decimals of what a reason is about, by the ending of its name; counts and percentages need none. */
const DECIMALS: readonly [ending: string, decimals: number][] = [
  ["_krpm", 3],
  ["_kg_m3", 3],
  ["_Hz", 2],
  ["", 0],
];

/** Why a tune does not count, in the page's language; a reason without words of its own as the atlas says it. */
export function asideSentence({ aside, reason }: ScalingPoint): ComponentChildren {
  return (aside && inWords(aside)) ?? <InEnglish>{reason}</InEnglish>;
}

/** A reason by its code and figures; null where this page does not know it, or it lacks a figure that it needs. */
export function inWords(
  { code, figures }: AsideReason,
  words: Record<string, (figure: Figure) => string> = asideWords,
): string | null {
  const say = Object.hasOwn(words, code) ? words[code] : undefined;
  if (!say) return null;
  let complete = true;
  const sentence = say((name) => {
    const value = figures[name];
    if (value === undefined) complete = false;
    const [, decimals = 0] = DECIMALS.find(([ending]) => name.endsWith(ending)) ?? [];
    // The words say which way it lies.
    return format(Math.abs(value ?? Number.NaN), decimals);
  });
  return complete ? sentence : null;
}
